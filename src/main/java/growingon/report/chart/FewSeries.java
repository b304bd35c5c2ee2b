package growingon.report.chart;

import growingon.nursery.number.Negligible;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.report.model.Colours;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;

/** As many series as one stack can tell apart: the largest by name, the others added up. */
public final class FewSeries {
  private FewSeries() {}

  /**
   * The series of a stack, largest first.
   *
   * @param byName values of each thing
   * @param rest what the others are called together
   */
  public static List<Series> of(Map<String, double[]> byName, String rest) {
    List<Map.Entry<String, double[]>> sorted =
        byName.entrySet().stream()
            .filter(each -> !Negligible.is(sum(each.getValue())))
            .sorted(Comparator.comparingDouble(each -> -sum(each.getValue())))
            .toList();
    int named = sorted.size() > Colours.STEPS ? Colours.STEPS - 1 : sorted.size();
    List<Series> series = new ArrayList<>();
    for (Map.Entry<String, double[]> each : sorted.subList(0, named)) {
      series.add(series(each.getKey(), each.getValue(), Colours.of(series.size())));
    }
    if (named < sorted.size()) {
      List<double[]> others =
          sorted.subList(named, sorted.size()).stream().map(Map.Entry::getValue).toList();
      series.add(series(rest, added(others), Colours.REST));
    }
    return series;
  }

  private static double sum(double[] values) {
    return Arrays.stream(values).filter(Double::isFinite).sum();
  }

  private static double[] added(Collection<double[]> all) {
    double[] sums = new double[all.iterator().next().length];
    all.forEach(each -> Arrays.setAll(sums, i -> sums[i] + each[i]));
    return sums;
  }

  private static Series series(String name, double[] values, int colour) {
    return new Series(name, Role.VALUE, DoubleStream.of(values).boxed().toList(), "", colour);
  }
}
