package growingon.report.words;

import growingon.chance.Chances;
import growingon.chance.Gamble;
import growingon.chance.LuckAlone;
import growingon.chance.Quantiles;
import growingon.chance.WorthMeasuring;
import growingon.money.Accounts;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Trunks;
import growingon.nursery.market.MarketSure;
import growingon.nursery.species.Sure;
import growingon.nursery.time.Horizon;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.figures.SeasonFigures;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How much of what the draws say is luck, and how much not knowing; and what to measure first. */
public final class NotKnownTables {
  /** A rough figure is told to the nearest twentieth. */
  private static final double ROUGHLY = 20;

  /** Of a spread of which more is luck, nothing is said of measuring. */
  private static final double MOSTLY = 0.85;

  /**
   * All that could be measured takes so little off that it is not worth saying what comes first.
   */
  private static final double LITTLE = 0.05;

  /** What is told as 0 %. */
  private static final double NOTHING = 0.005;

  private final Context context;
  private final Chances chances;
  private final Accounts accounts;
  private final Horizon horizon;
  private final String currency;
  private final Phrases say;

  public NotKnownTables(Context context) {
    this.say = context.say();
    this.context = context;
    this.chances = context.chances().orElseThrow();
    this.accounts = context.accounts();
    this.horizon = accounts.projection().horizon();
    this.currency = context.inputs().scenario().nursery().settings().currency();
  }

  /** The two tables, as far as there is something to tell. */
  public List<Table> tables() {
    List<Table> tables = new ArrayList<>();
    chances.luckAlone().map(this::notKnown).ifPresent(tables::add);
    chances
        .worthMeasuring()
        .filter(worth -> !worth.rows().isEmpty())
        .map(this::worthMeasuring)
        .ifPresent(tables::add);
    return tables;
  }

  /** A figure with luck and not knowing, and with luck alone. */
  private record Figure(
      String figure, String season, double plan, Quantiles both, Quantiles luck) {}

  private Table notKnown(LuckAlone luck) {
    return TableOf.<Figure>table("not-known", "Luck, and what is not known")
        .note(
            "P10 to P90 with luck and not knowing; with luck alone, growth, losses and all else that is"
                + " not known being what the plan takes them for (%s); and the share of the spread that is not knowing."
                    .formatted(say.counted(luck.draws(), "draw", "draws")))
        .note(
            "Seasons and losses differ by luck, which nobody can learn; how fast trees grow here on"
                + " average can be measured.")
        .text("figure", Figure::figure)
        .column(Rows.season(), Figure::season)
        .column("plan", "plan's line", "", Kind.NUMBER, each -> whole(each.plan))
        .column("P10", "", Kind.NUMBER, each -> whole(each.both.p10()))
        .column("P50", "", Kind.NUMBER, each -> whole(each.both.p50()))
        .column("P90", "", Kind.NUMBER, each -> whole(each.both.p90()))
        .column("luck_p10", "P10, luck alone", "", Kind.NUMBER, each -> whole(each.luck.p10()))
        .column("luck_p90", "P90, luck alone", "", Kind.NUMBER, each -> whole(each.luck.p90()))
        .column(
            "share",
            "not knowing",
            "",
            Kind.SHARE,
            each ->
                chances.draws() < Chances.FEW
                    ? null
                    : LuckAlone.shareNotKnown(each.both, each.luck))
        .of(figures(luck));
  }

  private List<Figure> figures(LuckAlone luck) {
    List<Figure> figures = new ArrayList<>();
    for (int season = 0; season < horizon.seasons(); season++) {
      figures.addAll(season(luck, season));
    }
    for (int i = 0; i < chances.gambles().size(); i++) {
      Gamble gamble = chances.gambles().get(i);
      figures.add(
          new Figure(
              "gain of %s, %s".formatted(gamble.bought().lot().name(), currency),
              horizon.seasonName(gamble.bought().ending().judgedAt()),
              gamble.bought().judged().presentValue(),
              gamble.gain(),
              luck.gains().get(i)));
    }
    return figures;
  }

  private List<Figure> season(LuckAlone luck, int season) {
    int last = horizon.seasonLast(season);
    String label = horizon.seasonLabel(season);
    SeasonFigures figures = context.seasons();
    return List.of(
        new Figure(
            "cash at its end, " + currency,
            label,
            accounts.cash().balances()[last],
            chances.cash().get(last),
            luck.cash().get(last)),
        new Figure(
            "sales, " + currency,
            label,
            figures.money(season),
            chances.sales().get(season),
            luck.sales().get(season)),
        new Figure(
            "plants at its end",
            label,
            figures.standing(season).exact(),
            chances.standing().get(season),
            luck.standing().get(season)));
  }

  /** Money and plants stand in one column, both shown whole. */
  private static Shown whole(double number) {
    return new Shown(number, Math.rint(number));
  }

  private Table worthMeasuring(WorthMeasuring worth) {
    return TableOf.<WorthMeasuring.Row>table("worth-measuring", "What to measure first")
        .note(
            "%d trunks marked there, read this October and next: how sure the growth would then be,"
                    .formatted(WorthMeasuring.TRUNKS)
                + " and what that takes off the spread of cash at the end of the plan.")
        .note(
            "Drawn: the draws were made once more. Rough: ranked by what each does to cash in the draws,"
                + " which is right in its order and flatters; to the nearest 5 %.")
        .text("species", WorthMeasuring.Row::species)
        .text("condition", WorthMeasuring.Row::condition)
        .column("plants", "", Kind.COUNT, each -> Math.round(each.plants()))
        .column(
            "mm_low",
            "mm a season, low",
            "",
            Kind.MM,
            each -> each.mmASeason() / Sure.factor(each.sure()))
        .column("mm", "as planned", "", Kind.MM, WorthMeasuring.Row::mmASeason)
        .column("mm_high", "high", "", Kind.MM, each -> each.mmASeason() * Sure.factor(each.sure()))
        .column("sure", "", Kind.SHARE, WorthMeasuring.Row::sure)
        .column("sure after", "", Kind.SHARE, WorthMeasuring.Row::sureAfter)
        .column("narrowing", "narrower by", "", Kind.SHARE, each -> narrowing(each))
        .text("told", "how found", each -> told(each))
        .of(worth.rows());
  }

  private static Double narrowing(WorthMeasuring.Row row) {
    return switch (row.told()) {
      case DRAWN -> row.narrowing();
      case ROUGH -> Math.round(row.narrowing() * ROUGHLY) / ROUGHLY;
      case TOO_SMALL -> null;
    };
  }

  private String told(WorthMeasuring.Row row) {
    return row.told() == WorthMeasuring.Told.TOO_SMALL
        ? "too small to tell in %s".formatted(say.counted(chances.draws(), "draw", "draws"))
        : row.told().toString();
  }

  /** Cash at the end with both, and with luck alone; then what to measure. */
  List<String> summary() {
    List<String> sentences = new ArrayList<>();
    cash().ifPresent(sentences::add);
    worth().ifPresent(sentences::add);
    return sentences;
  }

  /** Cash at the end with luck and not knowing, and with luck alone. */
  Optional<String> cash() {
    return chances.luckAlone().map(luck -> cash(luck, "your trees"));
  }

  /** The same for a reader to whom the nursery does not belong. */
  public Optional<String> cashOfAnother() {
    return chances.luckAlone().map(luck -> cash(luck, "its trees"));
  }

  private String cash(LuckAlone luck, String trees) {
    int last = horizon.months() - 1;
    Quantiles both = chances.cash().get(last);
    Quantiles alone = luck.cash().get(last);
    String split =
        chances.draws() < Chances.FEW
            ? ""
            : ": %s of the spread is not knowing %s"
                .formatted(
                    share(LuckAlone.shareNotKnown(both, alone)), Phrases.list(notKnown(trees)));
    return "Cash at the end of %s: %s to %s (P10 to P90). With luck alone %s to %s%s."
        .formatted(
            horizon.seasonName(horizon.seasons() - 1),
            say.money(both.p10()),
            say.whole(both.p90()),
            say.whole(alone.p10()),
            say.whole(alone.p90()),
            split);
  }

  /** What is not known, in words, beside losses. */
  private List<String> notKnown(String trees) {
    Scenario scenario = context.inputs().scenario();
    MarketSure market = scenario.nursery().settings().market();
    List<String> parts = new ArrayList<>(List.of("how fast %s grow".formatted(trees)));
    if (scenario.lots().stream().anyMatch(lot -> lot.trunks() instanceof Trunks.Usual)) {
      parts.add("how thick they are");
    }
    if (market.demand() < 1) {
      parts.add("how many are wanted");
    }
    if (market.prices() < 1) {
      parts.add("what they fetch");
    }
    return parts;
  }

  /** A share in words, the nearest of a few. */
  static String share(double share) {
    if (share >= 0.85) {
      return "nearly all";
    }
    if (share < 0.15) {
      return "hardly any";
    }
    double[] values = {1.0 / 3, 0.5, 2.0 / 3};
    String[] words = {"a third", "half", "two thirds"};
    int nearest = 0;
    for (int i = 1; i < values.length; i++) {
      nearest = Math.abs(share - values[i]) < Math.abs(share - values[nearest]) ? i : nearest;
    }
    return words[nearest];
  }

  /** Which trunks to mark first, and what it brings; that it brings little, where it does. */
  Optional<String> worth() {
    if (chances.worthMeasuring().isEmpty() || chances.worthMeasuring().get().rows().isEmpty()) {
      return Optional.empty();
    }
    int last = horizon.months() - 1;
    double luck =
        1
            - chances
                .luckAlone()
                .map(
                    each ->
                        LuckAlone.shareNotKnown(chances.cash().get(last), each.cash().get(last)))
                .orElse(0.0);
    return Optional.of(worth(chances.worthMeasuring().get(), luck));
  }

  /** In one sentence, with the share of the spread of cash that is luck. */
  String worth(WorthMeasuring worth, double luck) {
    WorthMeasuring.Row first = worth.rows().get(0);
    double all = worth.all().orElse(0);
    if (luck > MOSTLY) {
      return "Measuring would change little: nine tenths of the spread of cash is luck.";
    }
    if (all < LITTLE) {
      return "Measuring trunks would change little: all of the table %s off the spread of cash%s."
          .formatted(say.percent(Math.max(0, all)), otherwise());
    }
    if (first.told() != WorthMeasuring.Told.DRAWN || first.narrowing() < NOTHING) {
      return "Worth measuring: %d marked trunks in each of the %d rows of the table, this October and next, %s off the spread of cash; one row alone brings little."
          .formatted(WorthMeasuring.TRUNKS, worth.rows().size(), say.percent(all));
    }
    return "Worth measuring first: %d marked trunks of %s in the condition %s, this October and next (sure %s → %s): %s off the spread of cash%s."
        .formatted(
            WorthMeasuring.TRUNKS,
            first.species(),
            first.condition(),
            say.whole(100 * first.sure()),
            say.percent(first.sureAfter()),
            say.percent(first.narrowing()),
            worth.rows().size() == 1
                ? ""
                : "; all %d of the table %s".formatted(worth.rows().size(), say.percent(all)));
  }

  /** What the spread rests on where growth matters little. */
  private String otherwise() {
    List<String> parts = notKnown("");
    return parts.size() == 1
        ? ""
        : "; more of it is " + Phrases.list(parts.subList(1, parts.size()));
  }
}
