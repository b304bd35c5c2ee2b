package growingon.report.edition;

import growingon.nursery.time.Horizon;
import growingon.project.need.HoursUse;
import growingon.report.build.TableOf;
import growingon.report.chart.Charts;
import growingon.report.figures.Context;
import growingon.report.model.Chart;
import growingon.report.model.Colours;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Work by month as a share of the hours available, or of the busiest month where these are not
 * stated: hours themselves, beside money, would tell what an hour costs.
 */
final class HoursShare {
  private final HoursUse hours;
  private final Horizon horizon;
  private final boolean stated;
  private final double most;
  private final Phrases say;

  HoursShare(Context context) {
    this.say = context.say();
    this.hours = context.accounts().hours();
    this.horizon = context.accounts().projection().horizon();
    this.stated = hours.available(0).isPresent();
    this.most = IntStream.range(0, horizon.months()).mapToDouble(hours::needed).max().orElse(0);
  }

  /** The sheet; empty where the plan needs no hours. */
  Sheet sheet() {
    return most == 0
        ? Sheet.of("Hours")
        : new Sheet("Hours", List.of(sentence()), List.of(table()), List.of(), true);
  }

  private Table table() {
    return TableOf.<Integer>table("hours-share", "Work by month")
        .note(stated ? "% of the hours available." : "% of the busiest month.")
        .month("month", horizon::month)
        .column("work %", "", Kind.COUNT, month -> Math.round(percent(month)))
        .of(IntStream.range(0, horizon.months()).boxed().toList());
  }

  private double percent(int month) {
    double of = hours.available(month).orElse(most);
    return of > 0 ? 100 * hours.needed(month) / of : 0;
  }

  /** When work is most, and whether the hours suffice. */
  String sentence() {
    if (most == 0) {
      return "The plan needs no hours.";
    }
    int busiest =
        IntStream.range(0, horizon.months())
            .reduce((a, b) -> percent(b) > percent(a) ? b : a)
            .orElseThrow();
    long tooMuch = IntStream.range(0, horizon.months()).filter(m -> percent(m) > 100).count();
    String when = say.month(horizon, busiest);
    return stated
        ? "Work takes most of the hours available in %s, %d %%; %s."
            .formatted(
                when,
                Math.round(percent(busiest)),
                tooMuch == 0
                    ? "they suffice in every month"
                    : "they do not suffice in " + say.counted((int) tooMuch, "month", "months"))
        : "There is most work in %s.".formatted(when);
  }

  /** The chart; none where the plan needs no hours. */
  Optional<Chart> chart() {
    if (most == 0) {
      return Optional.empty();
    }
    List<Double> shares = IntStream.range(0, horizon.months()).mapToObj(this::percent).toList();
    List<String> months = Charts.months(horizon);
    return Optional.of(
        new Chart(
            Charts.HOURS,
            "Work by month",
            stated ? "As % of the hours available." : "As % of the busiest month.",
            Chart.ChartKind.STACKED_BARS,
            "%",
            months,
            List.of(new Chart.Series("work", Chart.Role.VALUE, shares, "", Colours.CASH))));
  }
}
