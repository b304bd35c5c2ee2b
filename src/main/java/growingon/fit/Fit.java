package growingon.fit;

import growingon.fit.evidence.Saleable;
import growingon.fit.past.FitRecords;
import growingon.fit.score.ForecastScore;
import growingon.fit.score.Scored;
import growingon.fit.value.SiteSpeed;
import growingon.fit.value.Value;
import growingon.fit.value.Value.Verdict;
import growingon.fit.value.Value.What;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.problem.Problem;
import growingon.review.kept.KeptPlan;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the records of a nursery say of its assumptions.
 *
 * @param covers how much was read
 * @param values every assumption held against the records
 * @param records every interval and every row not used
 * @param losses units of the losses, by species
 * @param seasons how well plants grew in each season
 * @param checked how well growth after root work and in small pots was assumed
 * @param ahead the first assumptions one count ahead, by species
 * @param heldBack the last season by a fit without it, where there are seasons enough
 * @param saleable plants for sale by old and new assumptions
 * @param scores how good kept plans were
 * @param scored every figure scored
 * @param otherSales figures of kept plans that were not scored as sales were other than planned
 * @param assumed species as they were assumed first
 * @param proposed species as proposed
 * @param siteSpeed how fast library species grow here, where enough of them were measured
 * @param problems what is wrong in the records, each with its row
 */
public record Fit(
    Covers covers,
    List<Value> values,
    List<RecordRow> records,
    List<LossUnit> losses,
    List<Season> seasons,
    List<Checked> checked,
    List<Ahead> ahead,
    Optional<HeldBack> heldBack,
    List<Saleable> saleable,
    List<ForecastScore> scores,
    List<Scored> scored,
    int otherSales,
    Map<String, Species> assumed,
    Map<String, Species> proposed,
    Optional<SiteSpeed> siteSpeed,
    List<Problem> problems) {

  /**
   * How much was read.
   *
   * @param first month of the earliest record
   * @param last month of the last one
   * @param lists stock lists of different months
   * @param counts counts of lots
   * @param lots lots counted
   * @param sales lines of sales
   * @param receipts receipts
   * @param tagged tagged plants
   * @param used intervals used
   * @param refused intervals refused
   * @param seasons seasons with growth in some interval used
   * @param keptPlans kept plans that were scored
   */
  public record Covers(
      YearMonth first,
      YearMonth last,
      int lists,
      int counts,
      int lots,
      int sales,
      int receipts,
      int tagged,
      int used,
      int refused,
      int seasons,
      int keptPlans) {}

  /**
   * A unit of a loss.
   *
   * @param species its species
   * @param what first-year or later loss
   * @param unit the lot or season
   * @param exposure plant-years
   * @param deaths plants that died
   * @param expected plants that were expected to
   */
  public record LossUnit(
      String species, What what, String unit, double exposure, double deaths, double expected) {}

  /** How well a species grew in a season, as a factor. */
  public record Season(String season, String species, double factor, double p10, double p90) {}

  /** How growth in a state of roots and pots compared with what was assumed. */
  public record Checked(String species, String state, int intervals, double meanZ) {}

  /**
   * The first assumptions one count ahead.
   *
   * @param species of one species; empty for all
   * @param intervals how many
   * @param meanZ mean of the differences in standard deviations
   * @param rootMeanSquareZ root of the mean of their squares
   * @param inside how many lay from P10 to P90
   */
  public record Ahead(
      String species, int intervals, double meanZ, double rootMeanSquareZ, int inside) {}

  /**
   * The last season by a fit without it.
   *
   * @param season the season
   * @param counts counts of it
   * @param oldMm root mean square of their differences by the first assumptions, mm
   * @param newMm the same by those fitted without it
   * @param measuringMm how much of it is measuring alone
   */
  public record HeldBack(
      String season, int counts, double oldMm, double newMm, double measuringMm) {}

  public Fit {
    values = List.copyOf(values);
    records = List.copyOf(records);
    losses = List.copyOf(losses);
    seasons = List.copyOf(seasons);
    checked = List.copyOf(checked);
    ahead = List.copyOf(ahead);
    saleable = List.copyOf(saleable);
    scores = List.copyOf(scores);
    scored = List.copyOf(scored);
    problems = List.copyOf(problems);
  }

  /**
   * Learns from the records of a nursery.
   *
   * @param records the records
   * @param kept plans that were kept, to be scored
   */
  public static Fit of(FitRecords records, List<KeptPlan> kept) {
    return new Fitting(records, kept).fit();
  }

  /** Whether there is anything that growth or losses could be learnt from. */
  public boolean hasRecords() {
    return covers.used() > 0
        || losses.stream().anyMatch(each -> each.exposure() > 0)
        || records.stream().anyMatch(RecordRow::isInterval);
  }

  /** Values that go into the proposal; another curve is left to the grower. */
  public List<Value> changed() {
    return values.stream().filter(each -> each.isChanged() && each.what() != What.CURVE).toList();
  }

  /** Values of a verdict, in the order of all. */
  public List<Value> with(Verdict verdict) {
    return values.stream().filter(each -> each.verdict() == verdict).toList();
  }

  /** How the species of the nursery are proposed, given what is changed. */
  static Map<String, Species> proposed(Map<String, Species> assumed, List<Value> values) {
    Map<String, Species> proposed = new LinkedHashMap<>();
    assumed.forEach((name, species) -> proposed.put(name, proposed(species, values)));
    return proposed;
  }

  private static Species proposed(Species species, List<Value> values) {
    Map<What, Double> inFile = new TreeMap<>();
    Map<String, Curve> growth = new LinkedHashMap<>(species.growth());
    for (Value value : values) {
      if (!value.species().equals(species.name())
          || !value.isChanged()
          || value.what() == What.CURVE) {
        continue;
      }
      if (value.what() == What.GROWTH) {
        growth.computeIfPresent(
            value.condition(), (condition, curve) -> curve.faster(value.inFile()));
      } else {
        inFile.put(value.what(), value.inFile() / 100);
      }
    }
    return species
        .withGrowth(growth)
        .losing(
            inFile.getOrDefault(What.FIRST_YEAR_LOSS, species.firstYearLoss()),
            inFile.getOrDefault(What.LATER_LOSS, species.laterLoss()))
        .varyingBy(
            inFile.getOrDefault(What.VIGOUR_SPREAD, species.vigourSpread()),
            inFile.getOrDefault(What.YEAR_SPREAD, species.yearSpread()),
            inFile.getOrDefault(What.LOSS_SPREAD, species.lossSpread()));
  }
}
