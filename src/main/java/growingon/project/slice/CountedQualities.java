package growingon.project.slice;

import growingon.nursery.market.Quality;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Plants of each quality as they were counted.
 *
 * @param plants how many of each
 * @param total how many in all, more than 0
 */
record CountedQualities(Map<Quality, Double> plants, double total) {
  /**
   * Streams in the proportions counted; plants of a quality that nobody knew of are like all the
   * others.
   *
   * @param streams the streams as they were thought to be
   * @param all plants of all of them, more than 0
   */
  List<Stream> of(Streams streams, double all, GrowthStart start) {
    int slices = start.slices();
    Map<Integer, double[]> shapes = shapes(streams, slices);
    List<Stream> sorted = new ArrayList<>();
    for (Quality each : Quality.values()) {
      double target = all * plants.getOrDefault(each, 0.0) / total;
      double there = streams.sum(each);
      for (int stream = streams.from(each); stream < streams.until(each); stream++) {
        streams.take(stream, there == 0 ? 0 : 1 - target / there);
        sorted.add(streams.stream(stream, slices));
      }
      if (there == 0 && target > 0) {
        shapes.forEach(
            (from, shape) -> sorted.add(start.stream(each, from, scaled(shape, target / all))));
      }
    }
    return sorted;
  }

  /** Plants of each slice that are sold from a grade upwards, whatever their quality. */
  private static Map<Integer, double[]> shapes(Streams streams, int slices) {
    Map<Integer, double[]> shapes = new TreeMap<>();
    for (int stream = 0; stream < streams.size(); stream++) {
      int from = streams.sellsFrom(stream);
      streams.addTo(shapes.computeIfAbsent(from, each -> new double[slices]), stream);
    }
    return shapes;
  }

  private static double[] scaled(double[] values, double factor) {
    return Arrays.stream(values).map(each -> each * factor).toArray();
  }
}
