package growingon.report.edition;

import growingon.chance.Chances;
import growingon.chance.Gamble;
import growingon.chance.Quantiles;
import growingon.money.CashItem;
import growingon.nursery.Horizon;
import growingon.nursery.Lot;
import growingon.nursery.Scenario;
import growingon.report.build.TableBuilder;
import growingon.report.figures.Context;
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
    TableBuilder table =
        TableBuilder.table("bought-lots", "What bought lots risk")
            .note(
                "Pays: draws of 100 in which the nursery is better off with the lot than without it."
                    + " Worst and best tenth: what it then gains at most, and at least, as % of all"
                    + " the plan's sales; below nil it loses. "
                    + differing())
            .text("lot")
            .longText("verdict")
            .column("pays %", "", Kind.COUNT)
            .column("worst tenth %", "", Kind.COUNT)
            .column("best tenth %", "", Kind.COUNT);
    chances.ifPresent(drawn -> drawn.gambles().forEach(gamble -> row(table, gamble)));
    return table.build();
  }

  private void row(TableBuilder table, Gamble gamble) {
    double sales = allSales();
    boolean told = sales >= SOME_SALES;
    table.row(
        name.apply(gamble.bought().lot()),
        new VerdictWords(context(), gamble).told(),
        Odds.whole(gamble.chancePays()),
        told ? (Long) Math.round(100 * gamble.gain().p10() / sales) : null,
        told ? (Long) Math.round(100 * gamble.gain().p90() / sales) : null);
  }

  /** Sales and cash of each season in the draws; without a row where there are none. */
  Table seasons() {
    TableBuilder table =
        TableBuilder.table("seasons-chances", "Sales and cash of each season in the draws")
            .note(
                "One draw in ten lies below P10, half below P50, nine in ten below P90. "
                    + differing()
                    + " "
                    + Sentences.WITHOUT_VAT)
            .text("season");
    for (String what : List.of("sales", "cash")) {
      for (String quantile : List.of("P10", "P50", "P90")) {
        table.column(what + " " + quantile, currency(), Kind.MONEY);
      }
    }
    chances.ifPresent(drawn -> seasons(table, drawn));
    return table.build();
  }

  private void seasons(TableBuilder table, Chances drawn) {
    Horizon horizon = context().accounts().projection().horizon();
    for (int season = 0; season < horizon.seasons(); season++) {
      Quantiles sales = drawn.sales().get(season);
      Quantiles cash = drawn.cash().get(horizon.seasonLast(season));
      table.row(
          horizon.seasonLabel(season),
          sales.p10(),
          sales.p50(),
          sales.p90(),
          cash.p10(),
          cash.p50(),
          cash.p90());
    }
  }

  private Context context() {
    return whole.orElseThrow();
  }

  private String currency() {
    return whole.map(each -> each.inputs().scenario().nursery().settings().currency()).orElse("");
  }
}
