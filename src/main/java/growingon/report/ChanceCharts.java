package growingon.report;

import growingon.chance.Chances;
import growingon.chance.Gamble;
import growingon.chance.Gamble.Swing;
import growingon.chance.Quantiles;
import growingon.report.Chart.ChartKind;
import growingon.report.Chart.Role;
import growingon.report.Chart.Series;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Charts of lots bought as gambles, and the bands of the other charts. */
final class ChanceCharts {
  static final String GAINS = "lot-gains";
  static final String SWINGS = "swings";

  /** So many lots have charts of their own. */
  private static final int LOTS = 8;

  private static final int CLASSES = 16;

  private ChanceCharts() {}

  /** Lower and upper edge of what eight draws of ten lie between. */
  static List<Series> band(List<Quantiles> drawn, String group, int colour) {
    return List.of(
        new Series("P10", Role.LOW, values(drawn, Quantiles::p10), group, colour),
        new Series("P90", Role.HIGH, values(drawn, Quantiles::p90), group, colour));
  }

  private static List<Double> values(List<Quantiles> drawn, ToDoubleFunction<Quantiles> value) {
    return drawn.stream().map(value::applyAsDouble).toList();
  }

  /** Names of the charts of gains. */
  static List<String> gains(List<Gamble> gambles) {
    return IntStream.range(0, Math.min(LOTS, gambles.size()))
        .mapToObj(i -> name(GAINS, i))
        .toList();
  }

  /** Names of the charts of swings. */
  static List<String> swings(List<Gamble> gambles) {
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
    for (int i = 0; i < Math.min(LOTS, gambles.size()); i++) {
      charts.add(spread(gambles.get(i), name(GAINS, i), currency));
      if (!gambles.get(i).swings().isEmpty()) {
        charts.add(swings(gambles.get(i), name(SWINGS, i), currency));
      }
    }
    return charts;
  }

  private static Chart spread(Gamble gamble, String name, String currency) {
    double[] gains = gamble.gains();
    double step = step(gains);
    int first = (int) Math.floor(gains[0] / step);
    int classes = (int) Math.floor(gains[gains.length - 1] / step) - first + 2;
    double[] draws = new double[classes];
    for (double gain : gains) {
      draws[(int) Math.floor(gain / step) - first]++;
    }
    List<String> edges = new ArrayList<>();
    List<Double> losing = new ArrayList<>();
    List<Double> paying = new ArrayList<>();
    for (int i = 0; i < classes; i++) {
      double share = 100 * draws[i] / gains.length;
      edges.add(Labels.whole((first + i) * step));
      losing.add(first + i < 0 ? share : Double.NaN);
      paying.add(first + i < 0 ? Double.NaN : share);
    }
    List<Series> series = new ArrayList<>();
    if (first < 0) {
      series.add(new Series("does not pay", Role.VALUE, losing, "", Colours.LOSS));
    }
    if (gains[gains.length - 1] >= 0) {
      series.add(new Series("pays", Role.VALUE, paying, "", Colours.CASH));
    }
    return new Chart(
        name,
        "What " + gamble.bought().lot().name() + " gains",
        "Pays %s; mean %s, P10 %s, P90 %s; plan's line %s."
            .formatted(
                Odds.in(gamble.chancePays(), gains.length),
                Phrases.money(currency, gamble.gain().mean()),
                Labels.whole(gamble.gain().p10()),
                Labels.whole(gamble.gain().p90()),
                Labels.whole(gamble.bought().presentValue())),
        ChartKind.HISTOGRAM,
        "draws of 100, by gain in " + currency,
        edges,
        series);
  }

  /** A round width of class, 1, 2 or 5 times a power of ten, that gives at most CLASSES of them. */
  private static double step(double[] gains) {
    double span = Math.max(1, gains[gains.length - 1] - gains[0]);
    double step = Math.pow(10, Math.floor(Math.log10(span / CLASSES)));
    for (double factor : new double[] {1, 2, 5, 10}) {
      if (span / (step * factor) <= CLASSES) {
        return Math.max(1, step * factor);
      }
    }
    throw new IllegalStateException("no class holds " + span);
  }

  private static Chart swings(Gamble gamble, String name, String currency) {
    List<String> rows = new ArrayList<>();
    List<Double> low = new ArrayList<>();
    List<Double> high = new ArrayList<>();
    for (Swing swing : gamble.swings()) {
      rows.add(row(swing, gamble));
      low.add(swing.gainAtLow());
      high.add(swing.gainAtHigh());
    }
    double plan = gamble.bought().presentValue();
    return new Chart(
        name,
        "What moves the gain of " + gamble.bought().lot().name(),
        "One assumption at a time at its P10 and P90 (in brackets), the others as planned.",
        ChartKind.SWINGS,
        currency,
        rows,
        List.of(
            new Series("at P10", Role.LOW, low, "", Colours.LOSS),
            new Series("at P90", Role.HIGH, high, "", Colours.CASH),
            new Series(
                "plan's line",
                Role.LINE,
                Collections.nCopies(rows.size(), plan),
                "",
                Colours.KEPT)));
  }

  private static String row(Swing swing, Gamble gamble) {
    if (VerdictWords.isWholeFailure(swing)) {
      return "%s (chance %s)".formatted(swing.assumption(), Phrases.percent(gamble.chanceFails()));
    }
    String assumption = swing.assumption().replace(", mean of the seasons", "");
    return "%s (%s, %s)".formatted(assumption, swing.low(), swing.high());
  }
}
