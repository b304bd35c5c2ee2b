package growingon.report.chart;

import growingon.chance.Chances;
import growingon.chance.Gamble;
import growingon.chance.Gamble.Swing;
import growingon.chance.Quantiles;
import growingon.money.bought.BoughtLot;
import growingon.money.bought.Ending;
import growingon.nursery.time.Horizon;
import growingon.report.figures.Context;
import growingon.report.figures.GainClasses;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Mark;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.report.model.Colours;
import growingon.report.text.Odds;
import growingon.report.text.Phrases;
import growingon.report.words.EndingWords;
import growingon.report.words.VerdictWords;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Charts of lots bought as gambles, and the bands of the other charts. */
public final class ChanceCharts {
  static final String GAINS = "lot-gains";
  static final String ENDINGS = "lot-endings";
  static final String SWINGS = "swings";

  /** So many lots have charts of their own. */
  private static final int LOTS = 8;

  /** So many assumptions are drawn, the widest first. */
  private static final int SWINGS_DRAWN = 10;

  private ChanceCharts() {}

  /** Lower and upper edge of what eight draws of ten lie between. */
  static List<Series> band(List<Quantiles> drawn, String group, int colour) {
    return List.of(
        new Series("P10", Role.LOW, values(drawn, Quantiles::p10), group, colour),
        new Series("P90", Role.HIGH, values(drawn, Quantiles::p90), group, colour));
  }

  /** The band of luck alone, to lie within that of luck and not knowing. */
  static List<Series> luckBand(List<Quantiles> drawn, String group, int colour) {
    return List.of(
        new Series("P10, luck alone", Role.LOW, values(drawn, Quantiles::p10), group, colour),
        new Series("P90, luck alone", Role.HIGH, values(drawn, Quantiles::p90), group, colour));
  }

  /** What a band means, for a subtitle. */
  static String within(String mark) {
    return " Eight draws of ten lie within the %s.".formatted(mark);
  }

  private static List<Double> values(List<Quantiles> drawn, ToDoubleFunction<Quantiles> value) {
    return drawn.stream().map(value::applyAsDouble).toList();
  }

  /** Names of the charts of gains. */
  public static List<String> gains(List<Gamble> gambles) {
    return IntStream.range(0, Math.min(LOTS, gambles.size()))
        .mapToObj(i -> name(GAINS, i))
        .toList();
  }

  /** Names of the charts of swings. */
  public static List<String> swings(List<Gamble> gambles) {
    return IntStream.range(0, Math.min(LOTS, gambles.size()))
        .filter(i -> !gambles.get(i).swings().isEmpty())
        .mapToObj(i -> name(SWINGS, i))
        .toList();
  }

  private static String name(String what, int index) {
    return index == 0 ? what : what + "-" + (index + 1);
  }

  static List<Chart> of(Context context) {
    List<Chart> charts = new ArrayList<>();
    List<Gamble> gambles = context.chances().map(Chances::gambles).orElse(List.of());
    String currency = context.inputs().scenario().nursery().settings().currency();
    for (int i = 0; i < Math.min(LOTS, context.bought().size()); i++) {
      charts.add(endings(context, context.bought().get(i), name(ENDINGS, i), currency));
    }
    for (int i = 0; i < Math.min(LOTS, gambles.size()); i++) {
      charts.add(spread(gambles.get(i), name(GAINS, i), context.say()));
      if (!gambles.get(i).swings().isEmpty()) {
        charts.add(swings(gambles.get(i), name(SWINGS, i), context.say()));
      }
    }
    return charts;
  }

  /** Names of the charts of endings. */
  public static List<String> endings(List<BoughtLot> bought) {
    return IntStream.range(0, Math.min(LOTS, bought.size()))
        .mapToObj(i -> name(ENDINGS, i))
        .toList();
  }

  /** Gain by season of ending; what still stands is written at the foot. */
  private static Chart endings(Context context, BoughtLot bought, String name, String currency) {
    Phrases say = context.say();
    Ending ending = bought.ending();
    Horizon horizon = context.accounts().projection().horizon();
    int seasons = ending.judgedAt() + 1;
    List<Ending.BySeason> shown = ending.seasons().subList(0, seasons);
    List<Series> series = new ArrayList<>();
    EndingWords.gamble(context, bought)
        .ifPresent(
            gamble ->
                series.addAll(band(gamble.byEnding().subList(0, seasons), "", Colours.SPACE)));
    series.add(
        new Series(
            "plan's line",
            Role.VALUE,
            shown.stream().map(Ending.BySeason::gain).toList(),
            "",
            Colours.CASH));
    series.add(new Series("nil", Role.LIMIT, Collections.nCopies(seasons, 0.0), "", Colours.KEPT));
    List<String> labels =
        IntStream.range(0, seasons)
            .mapToObj(
                i ->
                    "%s\u00a0(%s)"
                        .formatted(horizon.seasonName(i), say.whole(shown.get(i).standing())))
            .toList();
    return new Chart(
        name,
        "When " + bought.lot().name() + " pays",
        "Gain if the plan ended with that season; in brackets, plants still unsold. Later seasons"
            + " know of no other purchase.",
        ChartKind.LINES,
        "gain in " + currency,
        labels,
        series,
        List.of(Mark.upright("end of the plan", ending.planEnd() + 0.5)));
  }

  private static Chart spread(Gamble gamble, String name, Phrases say) {
    String currency = say.currency();
    GainClasses classes = GainClasses.of(gamble.gains());
    List<Series> series = new ArrayList<>();
    if (classes.first() < 0) {
      series.add(new Series("does not pay", Role.VALUE, classes.shares(false), "", Colours.LOSS));
    }
    if (gamble.gains()[gamble.gains().length - 1] >= 0) {
      series.add(new Series("pays", Role.VALUE, classes.shares(true), "", Colours.CASH));
    }
    return new Chart(
        name,
        "What " + gamble.bought().lot().name() + " gains",
        "Pays %s; plan's line %s."
            .formatted(
                Odds.in(gamble.chancePays(), gamble.gains().length),
                say.money(gamble.bought().judged().presentValue())),
        ChartKind.HISTOGRAM,
        "draws of 100, by gain in " + currency,
        classes.edges(say),
        series,
        List.of(
            upright("mean", gamble.gain().mean(), classes, say),
            upright("P10", gamble.gain().p10(), classes, say),
            upright("P90", gamble.gain().p90(), classes, say)));
  }

  private static Mark upright(String what, double gain, GainClasses classes, Phrases say) {
    return Mark.upright(what + " " + say.whole(gain), classes.at(gain));
  }

  private static Chart swings(Gamble gamble, String name, Phrases say) {
    String currency = say.currency();
    List<Swing> widest = gamble.swings().stream().limit(SWINGS_DRAWN).toList();
    List<Series> series = new ArrayList<>();
    series.add(ends("at P10", Role.LOW, Colours.SPACE, widest, false, each -> each.gainAtLow()));
    series.add(ends("at P90", Role.HIGH, Colours.CASH, widest, false, each -> each.gainAtHigh()));
    if (widest.stream().anyMatch(VerdictWords::isWholeFailure)) {
      series.add(
          ends("if it fails", Role.EVENT, Colours.KEPT, widest, true, each -> each.gainAtLow()));
    }
    double plan = gamble.bought().judged().presentValue();
    series.add(
        new Series(
            "plan's line", Role.LINE, Collections.nCopies(widest.size(), plan), "", Colours.KEPT));
    int more = gamble.swings().size() - widest.size();
    return new Chart(
        name,
        "What moves the gain of " + gamble.bought().lot().name(),
        "One assumption at a time at its P10 and P90 (in brackets), the others as planned."
            + (more > 0
                ? " The sheet Swings has %s."
                    .formatted(say.counted(more, "smaller one", "smaller ones"))
                : ""),
        ChartKind.SWINGS,
        "gain in " + currency,
        widest.stream().map(swing -> row(swing, gamble, say)).toList(),
        series);
  }

  /** One end of each swing; whole failure happens or does not, and so has no ends. */
  private static Series ends(
      String name,
      Role role,
      int colour,
      List<Swing> swings,
      boolean failure,
      ToDoubleFunction<Swing> gain) {
    List<Double> values =
        swings.stream()
            .map(
                swing ->
                    VerdictWords.isWholeFailure(swing) == failure
                        ? gain.applyAsDouble(swing)
                        : (Double) Double.NaN)
            .toList();
    return new Series(name, role, values, "", colour);
  }

  private static String row(Swing swing, Gamble gamble, Phrases say) {
    if (VerdictWords.isWholeFailure(swing)) {
      return "%s (chance %s)".formatted(swing.says(), say.percent(gamble.chanceFails()));
    }
    return "%s (%s, %s)"
        .formatted(swing.assumption().briefly(swing.species()), swing.low(), swing.high());
  }
}
