package growingon.nursery.species;

import growingon.nursery.number.Check;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

/**
 * An autonomous growth law of the trunk, d in mm, t in growth years, as data; the closed-form flow
 * maps are in the package {@code growth}.
 */
public sealed interface Curve {
  /** Name used in species.json. */
  String word();

  /**
   * The same law with its rate (g, k or r) times a factor; sizes and shapes stay. It is the same as
   * the law itself with all growth times by that factor.
   */
  Curve faster(double factor);

  /** Its rate: g, k or r. */
  double rate();

  /**
   * Its parameters by their names in species.json, as they are written there; of a steady law
   * without the size at which it ends.
   */
  Map<String, Double> parameters();

  /** Name of its rate: g, k or r. */
  default String rateName() {
    return Stream.of("g", "k", "r").filter(parameters()::containsKey).findFirst().orElseThrow();
  }

  /**
   * d' = g up to {@code mostMm}.
   *
   * @param gMmAYear g, mm a year
   * @param mostMm trunk at which growth stops; infinite if none is given
   */
  record Steady(double gMmAYear, double mostMm) implements Curve {
    public Steady {
      Check.notNegative(gMmAYear, "steady growth g");
      Check.that(mostMm > 0, "most mm must be more than 0", mostMm);
    }

    @Override
    public double rate() {
      return gMmAYear;
    }

    @Override
    public Map<String, Double> parameters() {
      return Map.of("g", gMmAYear);
    }

    @Override
    public String word() {
      return "steady";
    }

    @Override
    public Curve faster(double factor) {
      return new Steady(gMmAYear * factor, mostMm);
    }
  }

  /** d' = k (D − d); D in mm, k a year. */
  record Levelling(double finalMm, double k) implements Curve {
    public Levelling {
      Check.positive(finalMm, "levelling D");
      Check.notNegative(k, "levelling k");
    }

    @Override
    public double rate() {
      return k;
    }

    @Override
    public Map<String, Double> parameters() {
      return Curve.parameters(finalMm, "k", k);
    }

    @Override
    public String word() {
      return "levelling";
    }

    @Override
    public Curve faster(double factor) {
      return new Levelling(finalMm, k * factor);
    }
  }

  /** d' = r d (1 − d/D); D in mm, r a year. */
  record Logistic(double finalMm, double r) implements Curve {
    public Logistic {
      Check.positive(finalMm, "logistic D");
      Check.notNegative(r, "logistic r");
    }

    @Override
    public double rate() {
      return r;
    }

    @Override
    public Map<String, Double> parameters() {
      return Curve.parameters(finalMm, "r", r);
    }

    @Override
    public String word() {
      return "logistic";
    }

    @Override
    public Curve faster(double factor) {
      return new Logistic(finalMm, r * factor);
    }
  }

  /** d' = r d ln(D/d); D in mm, r a year. */
  record Gompertz(double finalMm, double r) implements Curve {
    public Gompertz {
      Check.positive(finalMm, "gompertz D");
      Check.notNegative(r, "gompertz r");
    }

    @Override
    public double rate() {
      return r;
    }

    @Override
    public Map<String, Double> parameters() {
      return Curve.parameters(finalMm, "r", r);
    }

    @Override
    public String word() {
      return "gompertz";
    }

    @Override
    public Curve faster(double factor) {
      return new Gompertz(finalMm, r * factor);
    }
  }

  /** Chapman–Richards, d = D (1 − e^(−k a))^p; D in mm, k a year, p without unit. */
  record Richards(double finalMm, double k, double p) implements Curve {
    public Richards {
      Check.positive(finalMm, "richards D");
      Check.notNegative(k, "richards k");
      Check.positive(p, "richards p");
    }

    @Override
    public double rate() {
      return k;
    }

    @Override
    public Map<String, Double> parameters() {
      return Curve.parameters(finalMm, "k", k, "p", p);
    }

    @Override
    public String word() {
      return "richards";
    }

    @Override
    public Curve faster(double factor) {
      return new Richards(finalMm, k * factor, p);
    }
  }

  /** d' = (r/q) d (1 − (d/D)^q); D in mm, r a year, q without unit. */
  record ThetaLogistic(double finalMm, double r, double q) implements Curve {
    public ThetaLogistic {
      Check.positive(finalMm, "theta-logistic D");
      Check.notNegative(r, "theta-logistic r");
      Check.positive(q, "theta-logistic q");
    }

    @Override
    public double rate() {
      return r;
    }

    @Override
    public Map<String, Double> parameters() {
      return Curve.parameters(finalMm, "r", r, "q", q);
    }

    @Override
    public String word() {
      return "theta-logistic";
    }

    @Override
    public Curve faster(double factor) {
      return new ThetaLogistic(finalMm, r * factor, q);
    }
  }

  private static Map<String, Double> parameters(double finalMm, String rate, double value) {
    Map<String, Double> named = new LinkedHashMap<>();
    named.put("D", finalMm);
    named.put(rate, value);
    return named;
  }

  private static Map<String, Double> parameters(
      double finalMm, String rate, double value, String shape, double power) {
    Map<String, Double> named = parameters(finalMm, rate, value);
    named.put(shape, power);
    return named;
  }
}
