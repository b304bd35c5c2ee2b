package growingon.report.review;

import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Mark;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.report.model.Colours;
import growingon.report.text.Phrases;
import growingon.review.Review;
import growingon.review.bought.BoughtReview;
import growingon.review.bought.CausePart;
import growingon.review.kept.Range;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Two charts of each bought lot: its money, planned and real, and the causes of the difference. */
final class ReviewCharts {
  private static final String MONEY = "lot-money";
  private static final String BRIDGE = "lot-causes";

  /** So many lots have charts of their own: those that differ most. */
  private static final int LOTS = 8;

  private final Review review;
  private final String currency;
  private final Phrases say;
  private final List<BoughtReview> drawn;

  ReviewCharts(Review review, Phrases say) {
    this.say = say;
    this.review = review;
    this.currency = say.currency();
    List<BoughtReview> most =
        review.bought().stream()
            .sorted(Comparator.comparingLong(each -> -Math.abs(each.differenceCents())))
            .limit(LOTS)
            .toList();
    this.drawn = review.bought().stream().filter(most::contains).toList();
  }

  /** Lots that have charts, in order. */
  List<BoughtReview> drawn() {
    return drawn;
  }

  static String name(String what, int index) {
    return index == 0 ? what : what + "-" + (index + 1);
  }

  /** Names of the charts on the first sheet: those of the lot that differs most. */
  List<String> first() {
    return IntStream.range(0, drawn.size())
        .boxed()
        .max(Comparator.comparingLong(i -> Math.abs(drawn.get(i).differenceCents())))
        .map(i -> List.of(name(MONEY, i), name(BRIDGE, i)))
        .orElse(List.of());
  }

  List<String> money() {
    return IntStream.range(0, drawn.size()).mapToObj(i -> name(MONEY, i)).toList();
  }

  List<String> bridges() {
    return IntStream.range(0, drawn.size()).mapToObj(i -> name(BRIDGE, i)).toList();
  }

  List<Chart> all() {
    List<Chart> charts = new ArrayList<>();
    for (int i = 0; i < drawn.size(); i++) {
      charts.add(money(drawn.get(i), name(MONEY, i)));
      charts.add(bridge(drawn.get(i), name(BRIDGE, i)));
    }
    return charts;
  }

  private Chart money(BoughtReview bought, String name) {
    BoughtReview.Money money = bought.money();
    int months = money.planned().size();
    int real = (int) ChronoUnit.MONTHS.between(review.firstMonth(), review.through());
    List<Series> series = new ArrayList<>(band(money.range()));
    series.add(line("real", part(money.expected(), 0, real), Colours.CASH));
    if (real + 1 < months) {
      series.add(
          line("expected", part(money.expected(), Math.max(0, real), months), Colours.SPACE));
    }
    series.add(line("planned", money.planned(), Colours.KEPT));
    return new Chart(
        name,
        "%s: money so far and expected, against the plan".formatted(bought.lot().name()),
        "Sales less all costs up to the end of each month; without VAT."
            + (money.range().isEmpty()
                ? ""
                : " In eight of ten of the plan's draws it lay within the band."),
        ChartKind.LINES,
        currency,
        IntStream.range(0, months)
            .mapToObj(month -> review.firstMonth().plusMonths(month).toString())
            .toList(),
        series,
        List.of(today(real)));
  }

  /** What the plan's own draws said, if it had any. */
  private static List<Series> band(List<Range> range) {
    if (range.isEmpty()) {
      return List.of();
    }
    List<Double> low = range.stream().map(Range::p10).toList();
    List<Double> high = range.stream().map(Range::p90).toList();
    return List.of(
        new Series("plan's P10", Role.LOW, low, "", Colours.REST),
        new Series("plan's P90", Role.HIGH, high, "", Colours.REST));
  }

  /** Today, as far as the records know: the end of the daybook's last month. */
  private Mark today(int real) {
    return Mark.upright("today: records to " + say.month(review.through()), real + 1);
  }

  private static Series line(String name, List<Double> values, int colour) {
    return new Series(name, Role.VALUE, values, "", colour);
  }

  /** The values of some months, last included; the others have none. */
  private static List<Double> part(List<Double> values, int first, int last) {
    return IntStream.range(0, values.size())
        .mapToObj(month -> month < first || month > last ? (Double) Double.NaN : values.get(month))
        .toList();
  }

  private Chart bridge(BoughtReview bought, String name) {
    List<CausePart> causes = bought.causes();
    int bars = causes.size() + 2;
    List<Double> ends = gaps(bars);
    List<Double> better = gaps(bars);
    List<Double> worse = gaps(bars);
    List<String> labels = new ArrayList<>(List.of("planned"));
    ends.set(0, bought.expected() - bought.differenceCents() / 100.0);
    for (int i = 0; i < causes.size(); i++) {
      labels.add(causes.get(i).cause().toString());
      (causes.get(i).cents() < 0 ? worse : better).set(i + 1, causes.get(i).amount());
    }
    labels.add("expected");
    ends.set(bars - 1, bought.expected());
    return new Chart(
        name,
        "%s: why it differs from the plan".formatted(bought.lot().name()),
        "From the planned result to the one expected now, cause by cause; without VAT.",
        ChartKind.BRIDGE,
        currency,
        labels,
        List.of(
            line("result", ends, Colours.CASH),
            line("better", better, Colours.BETTER),
            line("worse", worse, Colours.LOSS)));
  }

  private static List<Double> gaps(int bars) {
    return new ArrayList<>(Collections.nCopies(bars, Double.NaN));
  }
}
