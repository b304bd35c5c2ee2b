package growingon.review.kept;

import growingon.money.CostKind;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A lot of a plan as it was frozen. Lists hold a value for each month of the plan; a month before
 * the lot is there holds 0.
 *
 * @param name of the lot
 * @param species its species
 * @param supplier who it came from, empty if not said
 * @param bought whether the plan buys it
 * @param quantity plants it starts with
 * @param spentBefore its cost to date before the plan
 * @param living plants alive at the month's end, kept ones among them
 * @param trunkMm mean trunk of the living at the month's end, mm
 * @param trunkSpread their spread, as a share of the mean
 * @param byQuality plants alive at the month's end by quality (first, second, third), kept ones
 *     left out
 * @param byGrade plants alive at the month's end by grade, lowest first, those without one under an
 *     empty name, kept ones among them
 * @param sales what it sells
 * @param hours hours of work in the month
 * @param costs costs of the month by kind, as {@link CostKind} writes them
 * @param result sales less all costs up to the month's end, those before the plan left out
 * @param chances quantiles; every list empty where there were no draws
 * @param judging how luck is told from more than luck; empty without draws and in older files
 */
public record KeptLot(
    String name,
    String species,
    String supplier,
    boolean bought,
    double quantity,
    double spentBefore,
    List<Double> living,
    List<Double> trunkMm,
    List<Double> trunkSpread,
    Map<String, List<Double>> byQuality,
    Map<String, List<Double>> byGrade,
    List<KeptSale> sales,
    List<Double> hours,
    Map<String, List<Double>> costs,
    List<Double> result,
    KeptChances chances,
    Optional<KeptJudging> judging) {
  public KeptLot {
    living = List.copyOf(living);
    trunkMm = List.copyOf(trunkMm);
    trunkSpread = List.copyOf(trunkSpread);
    byQuality = Collections.unmodifiableMap(new LinkedHashMap<>(byQuality));
    byGrade = Collections.unmodifiableMap(new LinkedHashMap<>(byGrade));
    sales = List.copyOf(sales);
    hours = List.copyOf(hours);
    costs = Collections.unmodifiableMap(new LinkedHashMap<>(costs));
    result = List.copyOf(result);
    int months = living.size();
    boolean even =
        Stream.of(
                Stream.of(trunkMm, trunkSpread, hours, result),
                byQuality.values().stream(),
                byGrade.values().stream(),
                costs.values().stream())
            .flatMap(each -> each)
            .allMatch(each -> each.size() == months);
    if (!even || !(quantity >= 0)) {
      throw new IllegalArgumentException(
          even
              ? "%,.0f plants of %s".formatted(quantity, name)
              : "lists of unlike length of " + name);
    }
  }

  /** A lot of which nothing else is kept yet. */
  public static Builder named(String name, String species) {
    Builder builder = new Builder();
    builder.name = name;
    builder.species = species;
    return builder;
  }

  /** The parts of this one, of which some can be put in place of others. */
  public Builder but() {
    Builder builder = new Builder();
    builder.name = name;
    builder.species = species;
    builder.supplier = supplier;
    builder.bought = bought;
    builder.quantity = quantity;
    builder.spentBefore = spentBefore;
    builder.living = living;
    builder.trunkMm = trunkMm;
    builder.trunkSpread = trunkSpread;
    builder.byQuality = byQuality;
    builder.byGrade = byGrade;
    builder.sales = sales;
    builder.hours = hours;
    builder.costs = costs;
    builder.result = result;
    builder.chances = chances;
    builder.judging = judging;
    return builder;
  }

  /** Its parts by name; what is not said has its usual value. */
  public static final class Builder {
    private String name;
    private String species;
    private String supplier = "";
    private boolean bought = false;
    private double quantity = 0;
    private double spentBefore = 0;
    private List<Double> living = List.of();
    private List<Double> trunkMm = List.of();
    private List<Double> trunkSpread = List.of();
    private Map<String, List<Double>> byQuality = Map.of();
    private Map<String, List<Double>> byGrade = Map.of();
    private List<KeptSale> sales = List.of();
    private List<Double> hours = List.of();
    private Map<String, List<Double>> costs = Map.of();
    private List<Double> result = List.of();
    private KeptChances chances = KeptChances.NONE;
    private Optional<KeptJudging> judging = Optional.empty();

    private Builder() {}

    public Builder supplier(String value) {
      this.supplier = value;
      return this;
    }

    public Builder bought(boolean value) {
      this.bought = value;
      return this;
    }

    public Builder quantity(double value) {
      this.quantity = value;
      return this;
    }

    public Builder spentBefore(double value) {
      this.spentBefore = value;
      return this;
    }

    public Builder living(List<Double> value) {
      this.living = value;
      return this;
    }

    public Builder trunkMm(List<Double> value) {
      this.trunkMm = value;
      return this;
    }

    public Builder trunkSpread(List<Double> value) {
      this.trunkSpread = value;
      return this;
    }

    public Builder byQuality(Map<String, List<Double>> value) {
      this.byQuality = value;
      return this;
    }

    public Builder byGrade(Map<String, List<Double>> value) {
      this.byGrade = value;
      return this;
    }

    public Builder sales(List<KeptSale> value) {
      this.sales = value;
      return this;
    }

    public Builder hours(List<Double> value) {
      this.hours = value;
      return this;
    }

    public Builder costs(Map<String, List<Double>> value) {
      this.costs = value;
      return this;
    }

    public Builder result(List<Double> value) {
      this.result = value;
      return this;
    }

    public Builder chances(KeptChances value) {
      this.chances = value;
      return this;
    }

    public Builder judging(Optional<KeptJudging> value) {
      this.judging = value;
      return this;
    }

    public KeptLot build() {
      return new KeptLot(
          name,
          species,
          supplier,
          bought,
          quantity,
          spentBefore,
          living,
          trunkMm,
          trunkSpread,
          byQuality,
          byGrade,
          sales,
          hours,
          costs,
          result,
          chances,
          judging);
    }
  }
}
