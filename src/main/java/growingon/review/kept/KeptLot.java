package growingon.review.kept;

import growingon.money.CostKind;
import io.soabase.recordbuilder.core.RecordBuilder;
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
@RecordBuilder
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
    Optional<KeptJudging> judging)
    implements KeptLotBuilder.With {
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

  /** A lot of which nothing else is kept yet: no plants, no sales, no costs in no month. */
  public static KeptLotBuilder named(String name, String species) {
    return KeptLotBuilder.builder()
        .name(name)
        .species(species)
        .supplier("")
        .living(List.of())
        .trunkMm(List.of())
        .trunkSpread(List.of())
        .byQuality(Map.of())
        .byGrade(Map.of())
        .sales(List.of())
        .hours(List.of())
        .costs(Map.of())
        .result(List.of())
        .chances(KeptChances.NONE);
  }
}
