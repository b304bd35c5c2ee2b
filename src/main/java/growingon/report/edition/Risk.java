package growingon.report.edition;

import growingon.chance.Chances;
import growingon.chance.Gamble;
import growingon.chance.Quantiles;
import growingon.money.CashItem;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.time.Horizon;
import growingon.report.build.ColumnOf;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import growingon.report.text.Odds;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import growingon.report.words.ChanceWords;
import growingon.report.words.NotKnownTables;
import growingon.report.words.VerdictWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * The chances of a plan as an edition tells them: the plan's own draws, of a bought lot its odds
 * and never what it costs or gains in money.
 */
final class Risk {
  private static final double SOME_SALES = 1;

  private final Optional<Context> whole;
  private final Optional<Chances> chances;
  private final Function<Lot, String> name;

  /**
   * The chances of a plan.
   *
   * @param whole the plan as its grower sees it; empty where nothing is told of its chances
   * @param name what a bought lot is called in the edition
   */
  Risk(Optional<Context> whole, Function<Lot, String> name) {
    this.whole = whole;
    this.chances = whole.flatMap(Context::chances);
    this.name = name;
  }

  /** Whether there are draws to tell of. */
  boolean isKnown() {
    return chances.isPresent();
  }

  /** The chance that the limit of cash is passed, and the odds of each bought lot. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    chances.ifPresent(
        drawn -> {
          new ChanceWords(context()).limitOfCash().ifPresent(sentences::add);
          new NotKnownTables(context()).cashOfAnother().ifPresent(sentences::add);
          drawn.gambles().forEach(gamble -> sentences.add(odds(drawn, gamble)));
          if (!drawn.gambles().isEmpty() && !scenario().isKnown()) {
            sentences.add("Odds of bought lots hold both luck and what is not known.");
          }
        });
    return sentences;
  }

  private Scenario scenario() {
    return context().inputs().scenario();
  }

  /** What the draws differ by, for a note. */
  private String differing() {
    return whole.isEmpty() || scenario().isKnown()
        ? "Draws differ by luck."
        : "Draws differ by luck and by what is not known of growth and losses.";
  }

  private String odds(Chances drawn, Gamble gamble) {
    return "%s: %s; it pays %s%s."
        .formatted(
            Phrases.sentence(name.apply(gamble.bought().lot())),
            new VerdictWords(context(), gamble).told(),
            Odds.in(gamble.chancePays(), drawn.draws()),
            band(gamble));
  }

  /** What it loses and gains beside the sales of the whole plan, which the reader sees. */
  private String band(Gamble gamble) {
    if (allSales() < SOME_SALES) {
      return "";
    }
    double worst = gamble.gain().p10();
    double best = gamble.gain().p90();
    String bad =
        worst < 0
            ? "in the worst tenth of draws it loses %s of the plan's sales or more"
                .formatted(ofSales(worst))
            : "even in the worst tenth of draws it loses nothing";
    String good =
        best < 0
            ? "in nine of ten it loses at least " + ofSales(best)
            : "in the best tenth it gains %s or more".formatted(ofSales(best));
    return "; %s, %s".formatted(bad, good);
  }

  private String ofSales(double amount) {
    return Math.max(1, Math.round(100 * Math.abs(amount) / allSales())) + " %";
  }

  private double allSales() {
    return context().accounts().cash().total(CashItem.SALES);
  }

  /** The odds of each bought lot; without a row where there are none. */
  Table bought() {
    return TableOf.<Gamble>table("bought-lots", "What bought lots risk")
        .note(
            "Pays: draws of 100 in which the nursery is better off with the lot than without it."
                + " Worst and best tenth: what it then gains at most, and at least, as % of all"
                + " the plan's sales; below nil it loses. "
                + differing())
        .text("lot", gamble -> name.apply(gamble.bought().lot()))
        .longText("verdict", gamble -> new VerdictWords(context(), gamble).told())
        .column("pays %", "", Kind.COUNT, gamble -> Odds.whole(gamble.chancePays()))
        .column("worst tenth %", "", Kind.COUNT, gamble -> percentOfSales(gamble.gain().p10()))
        .column("best tenth %", "", Kind.COUNT, gamble -> percentOfSales(gamble.gain().p90()))
        .of(chances.map(Chances::gambles).orElse(List.of()));
  }

  private Long percentOfSales(double gain) {
    double sales = allSales();
    return sales >= SOME_SALES ? (Long) Math.round(100 * gain / sales) : null;
  }

  /** Sales and cash of a season in the draws. */
  private record Season(String label, Quantiles sales, Quantiles cash) {}

  /** Sales and cash of each season in the draws; without a row where there are none. */
  Table seasons() {
    return TableOf.<Season>table("seasons-chances", "Sales and cash of each season in the draws")
        .note(
            "One draw in ten lies below P10, half below P50, nine in ten below P90. "
                + differing()
                + " "
                + Sentences.WITHOUT_VAT)
        .text("season", Season::label)
        .columns(quantiles("sales", Season::sales))
        .columns(quantiles("cash", Season::cash))
        .of(chances.map(this::seasons).orElse(List.of()));
  }

  private List<ColumnOf<Season>> quantiles(String what, Function<Season, Quantiles> of) {
    return List.of(
        quantile(what, "10", each -> of.apply(each).p10()),
        quantile(what, "50", each -> of.apply(each).p50()),
        quantile(what, "90", each -> of.apply(each).p90()));
  }

  private ColumnOf<Season> quantile(String what, String share, Function<Season, Double> of) {
    return new ColumnOf<>(
        Column.of(what + "_p" + share, what + " P" + share, currency(), Kind.MONEY), of);
  }

  private List<Season> seasons(Chances drawn) {
    Horizon horizon = context().accounts().projection().horizon();
    return IntStream.range(0, horizon.seasons())
        .mapToObj(
            season ->
                new Season(
                    horizon.seasonLabel(season),
                    drawn.sales().get(season),
                    drawn.cash().get(horizon.seasonLast(season))))
        .toList();
  }

  private Context context() {
    return whole.orElseThrow();
  }

  private String currency() {
    return whole.map(each -> each.inputs().scenario().nursery().settings().currency()).orElse("");
  }
}
