package growingon.report.chart;

import growingon.nursery.time.Horizon;
import growingon.project.need.HoursUse;
import growingon.report.figures.Context;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Mark;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.report.model.Colours;
import growingon.report.text.Phrases;
import growingon.report.text.Spell;
import growingon.report.words.HoursWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Hours of work by month and job against the hours available. */
final class HoursChart {
  private final HoursUse hours;
  private final Horizon horizon;
  private final boolean stated;
  private final Phrases say;

  private HoursChart(Context context) {
    this.say = context.say();
    this.hours = context.accounts().hours();
    this.horizon = context.accounts().projection().horizon();
    this.stated = hours.available(0).isPresent();
  }

  static Optional<Chart> of(Context context, List<String> months) {
    return new HoursChart(context).chart(months);
  }

  private Optional<Chart> chart(List<String> months) {
    List<Series> series = new ArrayList<>(FewSeries.of(hours.byJob(), HoursWords.OTHER_WORK));
    if (series.isEmpty()) {
      return Optional.empty();
    }
    if (stated) {
      series.add(new Series("available", Role.LIMIT, available(), "", Colours.KEPT));
    }
    return Optional.of(
        new Chart(
            Charts.HOURS,
            "Hours of work by month",
            stated ? "Above the line hours are short." : "By job.",
            ChartKind.STACKED_BARS,
            "hours",
            months,
            series,
            stated ? marks() : List.of()));
  }

  private List<Double> available() {
    return IntStream.range(0, horizon.months())
        .mapToObj(month -> hours.available(month).orElse(Double.NaN))
        .toList();
  }

  /** The worst month of each run of months in which hours are short, the shortest of all first. */
  private List<Mark> marks() {
    return Spell.of(horizon.months(), hours::shortBy).stream()
        .sorted(Comparator.comparingDouble((Spell each) -> -each.most()))
        .map(each -> Mark.beyond(label(each), each.worst(), hours.needed(each.worst()), ""))
        .toList();
  }

  private String label(Spell spell) {
    return "%s short, %s".formatted(say.hours(spell.most()), say.month(horizon, spell.worst()));
  }
}
