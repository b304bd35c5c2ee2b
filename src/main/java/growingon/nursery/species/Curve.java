package growingon.nursery.species;

import growingon.nursery.number.Check;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * An autonomous growth law of the trunk, d in mm, t in growth years, as data; the closed-form flow
 * maps are in the package {@code growth}.
 */
public sealed interface Curve {
  /** Its law. */
  Law law();

  /** All its parameters. */
  Map<Parameter, Double> values();

  /**
   * The same law with its rate (g, k or r) times a factor; sizes and shapes stay. It is the same as
   * the law itself with all growth times by that factor.
   */
  default Curve faster(double factor) {
    Map<Parameter, Double> values = new EnumMap<>(values());
    values.put(law().rate(), rate() * factor);
    return law().of(values);
  }

  /** Its rate: g, mm a year, or k or r, a year. */
  default double rate() {
    return values().get(law().rate());
  }

  /**
   * Its parameters by their names in species.json, as they are written there; without those that
   * may be left out, such as the size at which a steady law ends.
   */
  default Map<String, Double> parameters() {
    Map<String, Double> named = new LinkedHashMap<>();
    law().parameters().forEach(each -> named.put(each.toString(), values().get(each)));
    return named;
  }

  /** Name of its rate: g, k or r. */
  default String rateName() {
    return law().rate().toString();
  }

  /** What a law has a value of; its text is its name in species.json. */
  enum Parameter {
    FINAL_MM("D", Sort.SIZE),
    MOST_MM("most mm", Sort.SIZE),
    STEADY_MM("g", Sort.RATE),
    RATE_K("k", Sort.RATE),
    RATE_R("r", Sort.RATE),
    POWER_P("p", Sort.SHAPE),
    POWER_Q("q", Sort.SHAPE);

    private enum Sort {
      SIZE,
      RATE,
      SHAPE
    }

    private final String name;
    private final Sort sort;

    Parameter(String name, Sort sort) {
      this.name = name;
      this.sort = sort;
    }

    /** Whether it is how fast a trunk grows; a rate may be 0, all else is more. */
    public boolean isRate() {
      return sort == Sort.RATE;
    }

    /** Whether it is an exponent, without unit. */
    public boolean isShape() {
      return sort == Sort.SHAPE;
    }

    @Override
    public String toString() {
      return name;
    }
  }

  /** The growth laws: the one list that reading, the schema, flow maps and fitting follow. */
  enum Law {
    STEADY(
        "steady",
        "d' = g",
        List.of(Parameter.STEADY_MM),
        List.of(Parameter.MOST_MM),
        of ->
            new Steady(
                of.get(Parameter.STEADY_MM),
                of.getOrDefault(Parameter.MOST_MM, Double.POSITIVE_INFINITY))),
    LEVELLING(
        "levelling",
        "d' = k (D - d)",
        List.of(Parameter.FINAL_MM, Parameter.RATE_K),
        of -> new Levelling(of.get(Parameter.FINAL_MM), of.get(Parameter.RATE_K))),
    LOGISTIC(
        "logistic",
        "d' = r d (1 - d/D)",
        List.of(Parameter.FINAL_MM, Parameter.RATE_R),
        of -> new Logistic(of.get(Parameter.FINAL_MM), of.get(Parameter.RATE_R))),
    GOMPERTZ(
        "gompertz",
        "d' = r d ln(D/d)",
        List.of(Parameter.FINAL_MM, Parameter.RATE_R),
        of -> new Gompertz(of.get(Parameter.FINAL_MM), of.get(Parameter.RATE_R))),
    RICHARDS(
        "richards",
        "d = D (1 - e^(-k a))^p",
        List.of(Parameter.FINAL_MM, Parameter.RATE_K, Parameter.POWER_P),
        of ->
            new Richards(
                of.get(Parameter.FINAL_MM), of.get(Parameter.RATE_K), of.get(Parameter.POWER_P))),
    THETA_LOGISTIC(
        "theta-logistic",
        "d' = (r/q) d (1 - (d/D)^q)",
        List.of(Parameter.FINAL_MM, Parameter.RATE_R, Parameter.POWER_Q),
        of ->
            new ThetaLogistic(
                of.get(Parameter.FINAL_MM), of.get(Parameter.RATE_R), of.get(Parameter.POWER_Q)));

    private final String word;
    private final String equation;
    private final List<Parameter> parameters;
    private final List<Parameter> optional;
    private final Parameter rate;
    private final Optional<Parameter> shape;
    private final Function<Map<Parameter, Double>, Curve> curve;

    Law(
        String word,
        String equation,
        List<Parameter> parameters,
        Function<Map<Parameter, Double>, Curve> curve) {
      this(word, equation, parameters, List.of(), curve);
    }

    Law(
        String word,
        String equation,
        List<Parameter> parameters,
        List<Parameter> optional,
        Function<Map<Parameter, Double>, Curve> curve) {
      this.word = word;
      this.equation = equation;
      this.parameters = parameters;
      this.optional = optional;
      this.rate = parameters.stream().filter(Parameter::isRate).findFirst().orElseThrow();
      this.shape = parameters.stream().filter(Parameter::isShape).findFirst();
      this.curve = curve;
    }

    /** Its equation, d in mm, d' in mm a year, a in growth years from nothing. */
    public String equation() {
      return equation;
    }

    /** The parameters that it needs: size first, then rate, then shape. */
    public List<Parameter> parameters() {
      return parameters;
    }

    /** All that may be stated: those that it needs, and then those that it does not. */
    public List<Parameter> allParameters() {
      return Stream.concat(parameters.stream(), optional.stream()).toList();
    }

    /** Which of its parameters is its rate. */
    public Parameter rate() {
      return rate;
    }

    /** Which of its parameters is its exponent, if it has one. */
    public Optional<Parameter> shape() {
      return shape;
    }

    /** The curve of some parameters: all that it needs, and any that it does not. */
    public Curve of(Map<Parameter, Double> values) {
      return curve.apply(values);
    }

    /** The word used in species.json. */
    @Override
    public String toString() {
      return word;
    }
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
    public Law law() {
      return Law.STEADY;
    }

    @Override
    public Map<Parameter, Double> values() {
      return Map.of(Parameter.STEADY_MM, gMmAYear, Parameter.MOST_MM, mostMm);
    }
  }

  /** d' = k (D − d); D in mm, k a year. */
  record Levelling(double finalMm, double k) implements Curve {
    public Levelling {
      Check.positive(finalMm, "levelling D");
      Check.notNegative(k, "levelling k");
    }

    @Override
    public Law law() {
      return Law.LEVELLING;
    }

    @Override
    public Map<Parameter, Double> values() {
      return Map.of(Parameter.FINAL_MM, finalMm, Parameter.RATE_K, k);
    }
  }

  /** d' = r d (1 − d/D); D in mm, r a year. */
  record Logistic(double finalMm, double r) implements Curve {
    public Logistic {
      Check.positive(finalMm, "logistic D");
      Check.notNegative(r, "logistic r");
    }

    @Override
    public Law law() {
      return Law.LOGISTIC;
    }

    @Override
    public Map<Parameter, Double> values() {
      return Map.of(Parameter.FINAL_MM, finalMm, Parameter.RATE_R, r);
    }
  }

  /** d' = r d ln(D/d); D in mm, r a year. */
  record Gompertz(double finalMm, double r) implements Curve {
    public Gompertz {
      Check.positive(finalMm, "gompertz D");
      Check.notNegative(r, "gompertz r");
    }

    @Override
    public Law law() {
      return Law.GOMPERTZ;
    }

    @Override
    public Map<Parameter, Double> values() {
      return Map.of(Parameter.FINAL_MM, finalMm, Parameter.RATE_R, r);
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
    public Law law() {
      return Law.RICHARDS;
    }

    @Override
    public Map<Parameter, Double> values() {
      return Map.of(Parameter.FINAL_MM, finalMm, Parameter.RATE_K, k, Parameter.POWER_P, p);
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
    public Law law() {
      return Law.THETA_LOGISTIC;
    }

    @Override
    public Map<Parameter, Double> values() {
      return Map.of(Parameter.FINAL_MM, finalMm, Parameter.RATE_R, r, Parameter.POWER_Q, q);
    }
  }
}
