package growingon.report.review;

import growingon.report.build.FilledSheet;
import growingon.report.build.TableBuilder;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
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
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

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
    this.said = ComparedCells.said(review);
    this.lots = lots;
    this.currency = currency;
    this.prefix = prefix;
  }

  static Sheet of(Review review, ReviewWords words, Phrases say) {
    String currency = say.currency();
    List<String> sentences = new ArrayList<>(words.basis());
    sentences.add(ComparedCells.note(review));
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
    TableBuilder table = TableBuilder.table(prefix + name, title).text("lot").text("species");
    ComparedCells.columns(table, unit, kind, said);
    for (LotReview lot : lots) {
      table.row(ComparedCells.row(figure.apply(lot), kind, lot.lot().name(), lot.lot().species()));
    }
    return ComparedCells.built(table);
  }

  /** The same of trunks, of which there are none where no plant was to stand any more. */
  private Table trunks(
      String name, String title, String unit, Kind kind, Function<LotReview, Compared> figure) {
    TableBuilder table = TableBuilder.table(prefix + name, title).text("lot").text("species");
    ComparedCells.columns(table, unit, kind, said);
    for (LotReview lot : lots) {
      Compared trunks = figure.apply(lot);
      Object[] names = {lot.lot().name(), lot.lot().species()};
      if (trunks.real() > 0) {
        table.row(
            trunks.planned() > 0
                ? ComparedCells.row(trunks, kind, names)
                : ComparedCells.unplanned(trunks, names));
      }
    }
    return ComparedCells.built(table);
  }

  private Table qualities() {
    TableBuilder table =
        TableBuilder.table(prefix + "qualities", "Plants alive by quality")
            .note("Kept plants are left out.")
            .text("lot")
            .text("quality");
    ComparedCells.columns(table, "", Kind.PLANTS, said);
    for (LotReview lot : lots) {
      lot.qualities()
          .forEach(
              (quality, plants) ->
                  table.row(
                      ComparedCells.row(
                          plants, Kind.PLANTS, lot.lot().name(), quality.toString())));
    }
    return ComparedCells.built(table);
  }

  private Table grades() {
    TableBuilder table =
        TableBuilder.table(prefix + "grades", "Plants alive by grade").text("lot").text("grade");
    ComparedCells.columns(table, "", Kind.PLANTS, said);
    for (LotReview lot : lots) {
      for (LotReview.OfGrade each : lot.grades()) {
        if (ComparedCells.saysAnything(each.plants())) {
          String grade = each.grade().isEmpty() ? "no grade yet" : each.grade();
          table.row(ComparedCells.row(each.plants(), Kind.PLANTS, lot.lot().name(), grade));
        }
      }
    }
    return ComparedCells.built(table);
  }

  private Table costs() {
    TableBuilder table =
        TableBuilder.table(prefix + "cost-kinds", "Costs by kind")
            .note("Hours count at the hourly rate, whoever worked them.")
            .text("lot")
            .text("kind");
    ComparedCells.columns(table, currency, Kind.MONEY, said);
    for (LotReview lot : lots) {
      lot.costs()
          .forEach(
              (kind, amount) ->
                  table.row(
                      ComparedCells.row(amount, Kind.MONEY, lot.lot().name(), kind.toString())));
    }
    return ComparedCells.built(table);
  }

  private Table balance() {
    TableBuilder table =
        TableBuilder.table(prefix + "balance", "Where the plants of each lot went")
            .note(
                "Arrived + split in + returned + found = died + culled + sold + used + split out +"
                    + " lost + standing.")
            .text("lot")
            .plants("arrived")
            .plants("split in")
            .plants("returned")
            .plants("found")
            .plants("died")
            .plants("culled")
            .plants("sold")
            .plants("used")
            .plants("split out")
            .plants("lost")
            .plants("standing");
    for (LotReview lot : lots) {
      table.row(
          lot.lot().name(),
          plants(lot, Whereabouts::arrived),
          plants(lot, Whereabouts::splitIn),
          plants(lot, Whereabouts::returned),
          plants(lot, Whereabouts::found),
          plants(lot, Whereabouts::died),
          plants(lot, Whereabouts::culled),
          plants(lot, Whereabouts::sold),
          plants(lot, Whereabouts::used),
          plants(lot, Whereabouts::splitOut),
          plants(lot, Whereabouts::lost),
          plants(lot, Whereabouts::standing));
    }
    return table.build();
  }

  private static Plants plants(LotReview lot, ToDoubleFunction<Whereabouts> what) {
    return Plants.of(
        what.applyAsDouble(lot.balance()), (long) what.applyAsDouble(lot.wholeBalance()));
  }

  private Table living() {
    TableBuilder table =
        TableBuilder.table(prefix + "cost-to-date", "What a plant has cost so far")
            .note(
                "All that was spent on the lot so far, before the plan too, for each plant that"
                    + " lived to stand, be sold or be used.")
            .text("lot")
            .text("split from")
            .text("place")
            .text("last count")
            .plants("alive")
            .summed("cost to date", currency, Kind.MONEY)
            .column("of each that lived", currency, Kind.MONEY_EACH);
    for (LotReview lot : lots) {
      table.row(
          lot.lot().name(),
          lot.splitFrom().orElse(null),
          Rows.text(lot.place()),
          lot.lastCount().map(LocalDate::toString).orElse(null),
          ComparedCells.real(lot.alive()),
          lot.costToDate(),
          lot.costPerLiving().isPresent() ? (Double) lot.costPerLiving().getAsDouble() : null);
    }
    return table.build();
  }
}
