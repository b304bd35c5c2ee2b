package growingon.fit.past;

import growingon.problem.Where;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * A mean trunk that was measured, and how well it is known. Two that are equal are one and the same
 * measurement.
 *
 * @param rows the rows it was read in
 * @param meanMm the mean, mm
 * @param spread spread of the trunks as a share of their mean
 * @param plants plants there were
 * @param measured how many of them were measured
 * @param unitMm unit in which trunks are given in that file, mm
 * @param classWidthMm width of the size class that stands for the mean, mm; 0 if it was measured
 * @param tagged the tagged plants that it is the mean of; empty for a sample of a lot
 * @param occasion what was measured when; means of two occasions share no error
 */
public record Measured(
    List<Where> rows,
    double meanMm,
    double spread,
    double plants,
    double measured,
    double unitMm,
    double classWidthMm,
    Set<String> tagged,
    String occasion) {
  /** Between two occasions the same plants differ by so much, as a share (own choice). */
  private static final double OCCASION = 0.015;

  /** Standard deviation of one reading, mm (own choice). */
  public static final double READING_MM = 0.5;

  public Measured {
    rows = List.copyOf(rows);
    tagged = Set.copyOf(tagged);
    Objects.requireNonNull(occasion);
  }

  /** So many trunks are measured where nothing is said (own choice). */
  static double usuallyMeasured(double plants) {
    return Math.max(1, Math.min(20, plants));
  }

  /**
   * Variance of the mean about the one of all plants, mm²: occasion, sample, reading and rounding.
   * A mean of tagged plants is no sample; a size class is taken as right within a sixth of its
   * width (own choice).
   */
  public double variance() {
    if (classWidthMm > 0) {
      return classWidthMm * classWidthMm / 36;
    }
    double deviation = spread * meanMm;
    double sampled =
        tagged.isEmpty() ? deviation * deviation / measured * (1 - measured / plants) : 0;
    return sampled + errors(meanMm * meanMm, 1 / measured);
  }

  private double errors(double squareMm2, double readings) {
    return OCCASION * OCCASION * squareMm2
        + READING_MM * READING_MM * readings
        + unitMm * unitMm / 12;
  }

  /**
   * Covariance of the errors of two means, mm²: of one measurement its variance; of tagged plants
   * of one day what they share; else nil.
   *
   * @param other of the same plants and day, if any
   */
  public double covariance(Measured other) {
    if (equals(other)) {
      return variance();
    }
    if (!occasion.equals(other.occasion)) {
      return 0;
    }
    Set<String> both = new HashSet<>(tagged);
    both.retainAll(other.tagged);
    return both.isEmpty()
        ? 0
        : errors(meanMm * other.meanMm, both.size() / (measured * other.measured));
  }
}
