package growingon.fit.past;

import growingon.fit.value.Value;
import growingon.nursery.Inputs;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.Reading;
import growingon.nursery.record.Receipt;
import growingon.nursery.record.StockList;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.problem.Where;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * All that a nursery's assumptions are learnt from, as data.
 *
 * @param inputs the nursery as its files give it now, its plan (of which only K is used), its
 *     offers, and its daybook
 * @param lists stock lists of different months, today's among them, in any order; lots match by
 *     name
 * @param readings the table of tagged plants and samples, in any order
 * @param measured how many trunks the mean of a row is of, for those rows of the daybook that say
 *     so; usually the smaller of 20 and the plants alive
 * @param priors what was assumed before anything was learnt, by species; empty for those whose
 *     assumptions are still the first ones
 * @param receipts what a till or the bookkeeping has of sales
 * @param until last month that is looked at
 */
public record FitRecords(
    Inputs inputs,
    List<StockList> lists,
    List<Reading> readings,
    Map<Where, Integer> measured,
    Map<String, Prior> priors,
    List<Receipt> receipts,
    YearMonth until) {
  /** What a growing condition stands behind among what was assumed before. */
  public static final String GROWTH = "growth ";

  public FitRecords {
    Objects.requireNonNull(inputs);
    lists = List.copyOf(lists);
    readings = List.copyOf(readings);
    measured = Map.copyOf(measured);
    priors = Map.copyOf(priors);
    receipts = List.copyOf(receipts);
    Objects.requireNonNull(until);
  }

  /** Records without receipts. */
  public FitRecords(
      Inputs inputs,
      List<StockList> lists,
      List<Reading> readings,
      Map<Where, Integer> measured,
      Map<String, Prior> priors,
      YearMonth until) {
    this(inputs, lists, readings, measured, priors, List.of(), until);
  }

  /**
   * What was assumed of a species before anything was learnt, and how sure that was. A fit always
   * starts from it with all records, so that a fit without new records changes nothing.
   *
   * @param species the first assumptions
   * @param growthSure how sure its growth is in each condition, above 0 to 1
   * @param firstYearSure how sure its first-year loss is
   * @param laterSure how sure its later loss is
   */
  public record Prior(
      Species species, Map<String, Double> growthSure, double firstYearSure, double laterSure) {
    public Prior {
      Objects.requireNonNull(species);
      growthSure = Map.copyOf(growthSure);
    }

    /** Assumptions that are as sure as the nursery's files say. */
    public static Prior asRead(Species species) {
      Sure sure = species.sure();
      return new Prior(species, sure.growth(), sure.firstYearLoss(), sure.laterLoss());
    }

    /** The same with another value in place of that of the setting. */
    Prior asSureAs(double sure, double setting) {
      Map<String, Double> growth = new HashMap<>(growthSure);
      growth.replaceAll((condition, now) -> now == setting ? sure : now);
      return new Prior(
          species,
          growth,
          firstYearSure == setting ? sure : firstYearSure,
          laterSure == setting ? sure : laterSure);
    }

    public double growthSure(String condition) {
      return Objects.requireNonNull(growthSure.get(condition), condition);
    }
  }

  /** Whether there is anything to learn from: two lists, a count, or a reading. */
  public boolean hasAny() {
    return lists.stream().map(StockList::month).distinct().count() > 1
        || !readings.isEmpty()
        || inputs.daybook().stream().anyMatch(line -> line.what() == DaybookLine.What.COUNTED);
  }

  /** The same where every figure that is as sure as the setting says is as sure as that. */
  public FitRecords asSureAs(double sure) {
    double setting = inputs.scenario().nursery().settings().assumptionsSure();
    Map<String, Prior> others = new HashMap<>();
    inputs
        .scenario()
        .nursery()
        .species()
        .forEach((name, species) -> others.put(name, prior(name).asSureAs(sure, setting)));
    return new FitRecords(inputs, lists, readings, measured, others, receipts, until);
  }

  /**
   * What was assumed before anything was learnt, as the nursery's files say.
   *
   * @param written what was assumed, by species and key of species.json
   * @param sures how sure that was, per cent, by the same
   */
  public static Map<String, Prior> priors(
      Map<String, Species> species,
      Map<String, Map<String, Double>> written,
      Map<String, Map<String, Double>> sures) {
    Map<String, Prior> priors = new HashMap<>();
    written.forEach(
        (name, values) ->
            priors.put(name, prior(species.get(name), values, sures.getOrDefault(name, Map.of()))));
    return priors;
  }

  private static Prior prior(Species now, Map<String, Double> written, Map<String, Double> sures) {
    Map<String, Curve> growth = new HashMap<>(now.growth());
    growth.replaceAll(
        (condition, curve) -> {
          Double rate = written.get(GROWTH + condition);
          return rate == null || curve.rate() == 0 ? curve : curve.faster(rate / curve.rate());
        });
    Species first =
        now.withGrowth(growth)
            .losing(
                share(written, Value.What.FIRST_YEAR_LOSS, now.firstYearLoss()),
                share(written, Value.What.LATER_LOSS, now.laterLoss()))
            .varyingBy(
                share(written, Value.What.VIGOUR_SPREAD, now.vigourSpread()),
                share(written, Value.What.YEAR_SPREAD, now.yearSpread()),
                share(written, Value.What.LOSS_SPREAD, now.lossSpread()));
    Map<String, Double> growthSure = new HashMap<>(now.sure().growth());
    growthSure.replaceAll((condition, sure) -> sure(sures, GROWTH + condition, sure));
    return new Prior(
        first,
        growthSure,
        sure(sures, Value.What.FIRST_YEAR_LOSS.toString(), now.sure().firstYearLoss()),
        sure(sures, Value.What.LATER_LOSS.toString(), now.sure().laterLoss()));
  }

  private static double sure(Map<String, Double> written, String key, double now) {
    Double percent = written.get(key);
    return percent == null ? now : Math.max(1, Math.min(100, percent)) / 100;
  }

  private static double share(Map<String, Double> written, Value.What what, double now) {
    return written.containsKey(what.toString()) ? written.get(what.toString()) / 100 : now;
  }

  /** What was first assumed of a species of the nursery. */
  public Prior prior(String species) {
    Species now = Objects.requireNonNull(inputs.scenario().nursery().species().get(species));
    return priors.getOrDefault(species, Prior.asRead(now));
  }
}
