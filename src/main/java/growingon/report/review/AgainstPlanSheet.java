package growingon.report.review;

import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.review.ComparedColumns.Line;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.review.Compared;
import growingon.review.LotReview;
import growingon.review.Review;
import growingon.review.Whereabouts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Each lot as planned and as it came: plants, trunks, qualities, grades, sales, hours, costs. */
final class AgainstPlanSheet {
  static final String NAME = "Lots against plan";

  /** More lots than this stand in tables/ only, but for those that differ most. */
  private static final int LOTS = 300;

  private final List<LotReview> lots;
  private final String currency;
  private final String prefix;
  private final String said;

  /**
   * Tables of some lots.
   *
   * @param prefix begins their names
   */
  private AgainstPlanSheet(Review review, List<LotReview> lots, String currency, String prefix) {
    this.said = ComparedColumns.said(review);
    this.lots = lots;
    this.currency = currency;
    this.prefix = prefix;
  }

  static Sheet of(Review review, ReviewWords words, Phrases say) {
    String currency = say.currency();
    List<String> sentences = new ArrayList<>(words.basis());
    sentences.add(ComparedColumns.note(review));
    List<LotReview> shown = review.lots();
    if (isLong(review)) {
      shown = mostUnlike(review.lots());
      sentences.add(
          "Shown are the %d lots of %s whose result differs most; all of them stand in tables/."
              .formatted(LOTS, say.whole(review.lots().size())));
    }
    List<Table> tables = new AgainstPlanSheet(review, shown, currency, "lots-").tables();
    List<Table> all = new ArrayList<>();
    all.add(LuckTable.of(review));
    all.addAll(tables);
    return FilledSheet.of(NAME, sentences, all.toArray(Table[]::new));
  }

  /** Tables of all lots, where the sheet shows only some. */
  static List<Table> allLots(Review review, String currency) {
    return isLong(review)
        ? new AgainstPlanSheet(review, review.lots(), currency, "all-lots-").tables()
        : List.of();
  }

  private static boolean isLong(Review review) {
    return review.lots().size() > LOTS;
  }

  /** Those whose result differs most, in the order of all. */
  private static List<LotReview> mostUnlike(List<LotReview> lots) {
    Set<LotReview> most = Collections.newSetFromMap(new IdentityHashMap<>());
    lots.stream()
        .sorted(Comparator.comparingDouble(each -> -Math.abs(each.result().difference())))
        .limit(LOTS)
        .forEach(most::add);
    return lots.stream().filter(most::contains).toList();
  }

  private List<Table> tables() {
    return List.of(
        figure("alive", "Plants alive", "", Kind.PLANTS, LotReview::alive),
        trunks("trunk", "Mean trunk", "mm", Kind.MM, LotReview::trunkMm),
        trunks("spread", "Spread of trunks", "", Kind.SHARE, LotReview::trunkSpread),
        figure("sold", "Plants sold", "", Kind.PLANTS, LotReview::unitsSold),
        figure("sales", "Sales", currency, Kind.MONEY, LotReview::sales),
        figure("hours", "Hours", "hours", Kind.HOURS, LotReview::hours),
        figure("costs", "All costs", currency, Kind.MONEY, LotReview::allCosts),
        figure("result", "Sales less costs", currency, Kind.MONEY, LotReview::result),
        qualities(),
        grades(),
        costs(),
        balance(),
        living());
  }

  /** One figure of every lot. */
  private Table figure(
      String name, String title, String unit, Kind kind, Function<LotReview, Compared> figure) {
    return ComparedColumns.of(
        bySpecies(name, title),
        unit,
        kind,
        said,
        lots.stream()
            .map(lot -> Line.of(lot.lot().name(), lot.lot().species(), figure.apply(lot), kind))
            .toList());
  }

  private TableOf<Line> bySpecies(String name, String title) {
    return TableOf.<Line>table(prefix + name, title)
        .text("lot", Line::first)
        .text("species", Line::second);
  }

  /** The same of trunks, of which there are none where no plant was to stand any more. */
  private Table trunks(
      String name, String title, String unit, Kind kind, Function<LotReview, Compared> figure) {
    return ComparedColumns.of(
        bySpecies(name, title),
        unit,
        kind,
        said,
        lots.stream()
            .filter(lot -> figure.apply(lot).real() > 0)
            .map(lot -> trunk(lot, figure.apply(lot), kind))
            .toList());
  }

  private static Line trunk(LotReview lot, Compared trunks, Kind kind) {
    return new Line(lot.lot().name(), lot.lot().species(), trunks, kind, trunks.planned() > 0);
  }

  private Table qualities() {
    return ComparedColumns.of(
        TableOf.<Line>table(prefix + "qualities", "Plants alive by quality")
            .note("Kept plants are left out.")
            .text("lot", Line::first)
            .text("quality", Line::second),
        "",
        Kind.PLANTS,
        said,
        lots.stream().flatMap(lot -> lines(lot, lot.qualities(), Kind.PLANTS)).toList());
  }

  private static <K> Stream<Line> lines(LotReview lot, Map<K, Compared> figures, Kind kind) {
    return figures.entrySet().stream()
        .map(each -> Line.of(lot.lot().name(), each.getKey().toString(), each.getValue(), kind));
  }

  private Table grades() {
    return ComparedColumns.of(
        TableOf.<Line>table(prefix + "grades", "Plants alive by grade")
            .text("lot", Line::first)
            .text("grade", Line::second),
        "",
        Kind.PLANTS,
        said,
        lots.stream().flatMap(AgainstPlanSheet::byGrade).toList());
  }

  private static Stream<Line> byGrade(LotReview lot) {
    return lot.grades().stream()
        .filter(each -> ComparedColumns.saysAnything(each.plants()))
        .map(
            each ->
                Line.of(
                    lot.lot().name(),
                    each.grade().isEmpty() ? "no grade yet" : each.grade(),
                    each.plants(),
                    Kind.PLANTS));
  }

  private Table costs() {
    return ComparedColumns.of(
        TableOf.<Line>table(prefix + "cost-kinds", "Costs by kind")
            .note("Hours count at the hourly rate, whoever worked them.")
            .text("lot", Line::first)
            .text("kind", Line::second),
        currency,
        Kind.MONEY,
        said,
        lots.stream().flatMap(lot -> lines(lot, lot.costs(), Kind.MONEY)).toList());
  }

  private Table balance() {
    return TableOf.<LotReview>table(prefix + "balance", "Where the plants of each lot went")
        .note(
            "Arrived + split in + returned + found = died + culled + sold + used + split out +"
                + " lost + standing.")
        .text("lot", lot -> lot.lot().name())
        .plants("arrived", lot -> plants(lot, Whereabouts::arrived))
        .plants("split in", lot -> plants(lot, Whereabouts::splitIn))
        .plants("returned", lot -> plants(lot, Whereabouts::returned))
        .plants("found", lot -> plants(lot, Whereabouts::found))
        .plants("died", lot -> plants(lot, Whereabouts::died))
        .plants("culled", lot -> plants(lot, Whereabouts::culled))
        .plants("sold", lot -> plants(lot, Whereabouts::sold))
        .plants("used", lot -> plants(lot, Whereabouts::used))
        .plants("split out", lot -> plants(lot, Whereabouts::splitOut))
        .plants("lost", lot -> plants(lot, Whereabouts::lost))
        .plants("standing", lot -> plants(lot, Whereabouts::standing))
        .of(lots);
  }

  private static Plants plants(LotReview lot, ToDoubleFunction<Whereabouts> what) {
    return Plants.of(
        what.applyAsDouble(lot.balance()), (long) what.applyAsDouble(lot.wholeBalance()));
  }

  private Table living() {
    return TableOf.<LotReview>table(prefix + "cost-to-date", "What a plant has cost so far")
        .note(
            "All that was spent on the lot so far, before the plan too, for each plant that"
                + " lived to stand, be sold or be used.")
        .text("lot", lot -> lot.lot().name())
        .text("split from", lot -> lot.splitFrom().orElse(null))
        .text("place", lot -> lot.place().orElse(null))
        .text("last count", lot -> lot.lastCount().map(LocalDate::toString).orElse(null))
        .plants("alive", lot -> ComparedColumns.real(lot.alive()))
        .summed("cost to date", currency, Kind.MONEY, LotReview::costToDate)
        .column(
            "of each that lived",
            currency,
            Kind.MONEY_EACH,
            lot ->
                lot.costPerLiving().isPresent() ? (Double) lot.costPerLiving().getAsDouble() : null)
        .of(lots);
  }
}
