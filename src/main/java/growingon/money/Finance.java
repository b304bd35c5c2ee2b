package growingon.money;

import growingon.nursery.number.Negligible;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Value of monthly flows: present value, internal rates of return and payback, as any textbook of
 * investment has them. Flow t comes t months after the first, which is not discounted; flows are in
 * plan currency, rates are parts of one (0.05 is 5 %).
 */
public final class Finance {
  private static final double LOWEST_RATE = -0.99;
  private static final double HIGHEST_RATE = 10;

  private Finance() {}

  /** Rate a month that compounds to a rate a year: (1 + r)^(1/12) − 1. */
  public static double monthRate(double yearRate) {
    return Math.expm1(Math.log1p(yearRate) / 12);
  }

  /**
   * Net present value: Σ flow_t / (1 + m)^t, m = {@link #monthRate}.
   *
   * @param flows by month, the first at time 0
   * @param yearRate discount rate a year, above −1
   */
  public static double presentValue(double[] flows, double yearRate) {
    double growth = Math.log1p(yearRate) / 12;
    double sum = 0;
    for (int t = 0; t < flows.length; t++) {
      sum += flows[t] == 0 ? 0 : flows[t] * Math.exp(-growth * t);
    }
    return sum;
  }

  /**
   * Yearly internal rates of return: every rate from −99 % to 1000 % at which the present value
   * changes its sign.
   *
   * @param flows by month
   * @return rising; empty if there is none, several if the flows change sign more than once
   */
  public static List<Double> ratesOfReturn(double[] flows) {
    DoubleUnaryOperator value = rate -> presentValue(flows, rate);
    List<Double> rates = new ArrayList<>();
    double before = LOWEST_RATE;
    double valueBefore = value.applyAsDouble(before);
    for (int i = 1; i <= STEPS; i++) {
      double rate = gridRate(i);
      double valueNow = value.applyAsDouble(rate);
      if (valueNow == 0 && valueBefore != 0) {
        rates.add(rate);
      } else if (valueBefore * valueNow < 0) {
        rates.add(
            new BrentSolver(1e-13, 1e-13, 1e-15).solve(200, value::applyAsDouble, before, rate));
      }
      before = rate;
      valueBefore = valueNow;
    }
    return rates;
  }

  private static final int STEPS = 600;

  /** Rates evenly spaced on the scale of ln(1 + rate), where flows bend evenly. */
  private static double gridRate(int step) {
    double low = Math.log1p(LOWEST_RATE);
    double high = Math.log1p(HIGHEST_RATE);
    return Math.expm1(low + (high - low) * step / STEPS);
  }

  /**
   * First month from which the running sum of the flows stays at or above 0 to the end; not before
   * the first flow, since what is not paid yet cannot be back.
   *
   * @param flows by month
   * @return month offset; empty if the sum is below 0 at the end
   */
  public static OptionalInt payback(double[] flows) {
    double sum = 0;
    int since = firstFlow(flows);
    for (int t = since; t < flows.length; t++) {
      sum += flows[t];
      if (!Negligible.is(-sum)) {
        since = t + 1;
      }
    }
    return since < flows.length ? OptionalInt.of(since) : OptionalInt.empty();
  }

  /** Month of the first flow that is not nil; 0 where there is none. */
  private static int firstFlow(double[] flows) {
    for (int t = 0; t < flows.length; t++) {
      if (!Negligible.is(Math.abs(flows[t]))) {
        return t;
      }
    }
    return 0;
  }
}
