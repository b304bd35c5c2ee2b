package growingon.buying.question;

import java.util.Arrays;

/**
 * A candidate on some draws; both arrays are as long as there are draws. They are read, never
 * changed.
 *
 * @param values [draw] present value, plan currency, what is unsold at the end counted in
 * @param lowest [draw] lowest cash at the end of a month, plan currency
 */
public record Sample(double[] values, double[] lowest) {
  /** The same with more draws behind. */
  public Sample and(Sample more) {
    return new Sample(joined(values, more.values), joined(lowest, more.lowest));
  }

  private static double[] joined(double[] one, double[] other) {
    double[] all = Arrays.copyOf(one, one.length + other.length);
    System.arraycopy(other, 0, all, one.length, other.length);
    return all;
  }

  /** The first draws alone; at most as many as there are. */
  public Sample first(int draws) {
    return new Sample(Arrays.copyOf(values, draws), Arrays.copyOf(lowest, draws));
  }

  /**
   * Share of the draws in which cash falls below a limit, 0 to 1.
   *
   * @param limit plan currency; −infinite for none
   */
  public double below(double limit) {
    return (double) Arrays.stream(lowest).filter(each -> each < limit - 1e-9).count()
        / lowest.length;
  }

  /** Mean of some values, in their unit; NaN of none. */
  public static double mean(double[] values) {
    return Arrays.stream(values).sum() / values.length;
  }

  /**
   * What its values are over those of another, draw by draw, plan currency.
   *
   * @param other on the same draws, at least as many
   */
  public double[] over(Sample other) {
    double[] differences = new double[values.length];
    for (int draw = 0; draw < differences.length; draw++) {
      differences[draw] = values[draw] - other.values[draw];
    }
    return differences;
  }

  /** Standard error of the mean of differences, s/√n, in their unit; 0 of one. */
  public static double error(double[] differences) {
    double mean = mean(differences);
    double squares = Arrays.stream(differences).map(each -> (each - mean) * (each - mean)).sum();
    int count = differences.length;
    return count < 2 ? 0 : Math.sqrt(squares / (count - 1) / count);
  }
}
