package growingon.project;

import growingon.growth.Flow;
import growingon.nursery.Curve;
import growingon.nursery.Grade;
import growingon.nursery.Quality;
import growingon.nursery.QualityShares;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.DoubleStream;

/**
 * The plants of one lot as they grow: K representative plants, their trunks, and how many plants
 * each stands for.
 *
 * <p>Everything that speeds or slows a lot multiplies its growth time, and only vigour differs
 * between its slices. So a lot needs one growth clock: slice i stands at flow(trunk0_i, vigour_i ×
 * clock), and it reaches a grade when the clock passes a value worked out once. A month costs an
 * addition, not K exponentials; trunks are worked out where something asks for them.
 */
final class Growing {
  /** Twelve twelfths of a year's growth may fall short of a year by this much of rounding. */
  private static final double ROUNDING = 1e-12;

  private static final double NOT_YET = -1;

  /** Training months of plants whose training neither started nor is to start by a dated step. */
  static final int UNTRAINED = Integer.MIN_VALUE;

  private static final int QUALITIES = Quality.values().length;

  /** Fewer plants than this are the dust of dividing. */
  private static final double LEAST_PLANTS = 1e-9;

  private final GrowthStart start;
  private final Grade[] grades;
  private final int slices;
  private final double[] vigour;
  private final int[] thick;
  private final int[] slicesThickFor;
  private final int[] sellsAs;
  private final int[] saleTable;
  private final QualityShares quality;
  private final double[] byThickness;
  private Streams streams;
  private double kept;
  private double[] trunkAtZero;
  private double[] coordinates;
  private double[] gradeCoordinates;
  private double[] trunks;
  private double trunksAt = NOT_YET;
  private double squaredTrunk;
  private double squaredAt = NOT_YET;
  private Crossings crossings;
  private double notKept;
  private boolean changed = true;
  private double alive = 1;
  private double clock;
  private long readyCells;
  private int tableFrom = Integer.MAX_VALUE;
  private int tableUntil = Integer.MIN_VALUE;
  private boolean graded;
  private Curve curve;
  private Flow flow;

  Growing(LotPlan plan, QualityShares quality) {
    this.start = plan.growthStart;
    this.grades = start.grades;
    this.slices = start.trunks.length;
    this.trunkAtZero = start.trunks;
    this.vigour = start.vigour;
    this.thick = new int[slices];
    this.slicesThickFor = new int[grades.length];
    this.sellsAs = new int[slices];
    this.saleTable = new int[grades.length + 1];
    this.kept = plan.lot.kept();
    this.quality = quality;
    this.streams = start.streams(quality);
    this.byThickness = new double[grades.length + 1];
  }

  /** Plants alive now, kept ones among them. */
  double living() {
    return alive * (kept + notKept());
  }

  /** Whether nothing is left but the dust of dividing. */
  boolean isEmpty() {
    return living() < LEAST_PLANTS;
  }

  /** Kept plants alive now. */
  double keptLiving() {
    return alive * kept;
  }

  /** Plants alive now, added up slice by slice: the same number by another way. */
  double count() {
    double sum = kept;
    for (Stream stream : streams.all) {
      sum += stream.count();
    }
    return alive * sum;
  }

  /** There are other plants than before, or other numbers of them. */
  private void noteChange() {
    changed = true;
    squaredAt = NOT_YET;
  }

  private double notKept() {
    if (changed) {
      double sum = 0;
      for (Stream stream : streams.all) {
        sum += stream.sum;
      }
      notKept = sum;
      changed = false;
    }
    return notKept;
  }

  /** So many plants die, all alike; gives how many. */
  double die(double plants) {
    double living = living();
    double died = Math.min(plants, living);
    alive *= living == 0 ? 1 : 1 - died / living;
    return died;
  }

  /** Culls every plant of a quality that is not kept; gives how many. */
  double cullAll(Quality quality) {
    noteChange();
    graded = false;
    double culled = 0;
    for (Stream stream : streams.of(quality)) {
      culled += alive * stream.sum;
      stream.take(1);
    }
    return culled;
  }

  /**
   * Culls a share of the plants that are not kept; gives how many.
   *
   * @param share share of the living that are not kept
   * @param worstFirst whether qualities are known, so that the worst go first
   */
  double cull(double share, boolean worstFirst) {
    double wanted = notKept() * share;
    if (wanted == 0) {
      return 0;
    }
    noteChange();
    graded = false;
    if (!worstFirst) {
      for (Stream stream : streams.all) {
        stream.take(share);
      }
      return alive * wanted;
    }
    double left = wanted;
    for (int q = Quality.values().length - 1; q >= 0 && left > 0; q--) {
      left -= cullOf(Quality.values()[q], left);
    }
    return alive * (wanted - left);
  }

  private double cullOf(Quality quality, double wanted) {
    double there = 0;
    for (Stream stream : streams.of(quality)) {
      there += stream.sum;
    }
    if (there == 0) {
      return 0;
    }
    double part = Math.min(1, wanted / there);
    for (Stream stream : streams.of(quality)) {
      stream.take(part);
    }
    return part * there;
  }

  /** Lets the lot go on by another law from where its trunks stand now. */
  void growBy(Curve law) {
    if (law == curve || law.equals(curve)) {
      return;
    }
    boolean fromStart = curve == null;
    trunkAtZero = fromStart ? trunkAtZero : trunks().clone();
    curve = law;
    flow = Flow.of(law);
    clock = 0;
    trunksAt = NOT_YET;
    squaredAt = NOT_YET;
    if (fromStart) {
      coordinates = start.coordinates(law);
      crossings = start.crossings(law);
    } else {
      lookAhead();
    }
  }

  /** Awaits the crossings from where the trunks stand now. */
  private void lookAhead() {
    coordinates = DoubleStream.of(trunkAtZero).map(flow::coordinate).toArray();
    gradeCoordinates = start.gradeCoordinates(flow);
    crossings = new AwaitedCrossings(thick, this::clockTo);
  }

  /** Growth clock at which a slice is thick enough for a grade; never for one that is not there. */
  private double clockTo(int slice, int grade) {
    if (grade == grades.length) {
      return Double.POSITIVE_INFINITY;
    }
    double least = grades[grade].leastTrunkMm();
    return flow.yearsTo(trunkAtZero[slice], coordinates[slice], least, gradeCoordinates[grade])
        / vigour[slice];
  }

  /** Advances the growth clock, in growth years of a plant of vigour 1. */
  void grow(double growthYears) {
    clock += growthYears;
  }

  /** Trunk of a slice now, mm. */
  double trunk(int slice) {
    return flow.advance(trunkAtZero[slice], coordinates[slice], vigour[slice] * clock);
  }

  /** Mean trunk of the living plants, mm; 0 for an empty lot. */
  double meanTrunk() {
    return mean(1);
  }

  /**
   * Mean of the squared trunk of the living plants, mm²; 0 for an empty lot. It stays while they
   * neither grow nor are sold or culled, as in winter.
   */
  double meanSquaredTrunk() {
    if (squaredAt != clock) {
      squaredTrunk = mean(2);
      squaredAt = clock;
    }
    return squaredTrunk;
  }

  /** No plant's squared trunk is more than this, mm²: that of a thickest and strongest one. */
  double squaredTrunkAtMost() {
    double most = flow.advance(max(trunkAtZero), max(vigour) * clock);
    return most * most;
  }

  private static double max(double[] values) {
    double max = 0;
    for (double value : values) {
      max = Math.max(max, value);
    }
    return max;
  }

  private double mean(int power) {
    double[] now = trunks();
    double plants = 0;
    double sum = 0;
    if (kept > 0) {
      plants = kept;
      for (double trunk : now) {
        sum += kept / slices * (power == 1 ? trunk : trunk * trunk);
      }
    }
    for (Stream stream : streams.all) {
      plants += stream.sum;
      sum += power == 1 ? stream.sum(now) : stream.sumOfSquares(now);
    }
    return plants == 0 ? 0 : sum / plants;
  }

  /** Leaves a part of the plants only: the others are told of elsewhere. */
  void keepPart(double part) {
    if (part == 1) {
      return;
    }
    kept *= part;
    for (Stream stream : streams.all) {
      stream.take(1 - part);
    }
    anew();
  }

  /** Plants come, like those that are there, or like those of the start where none is left. */
  void come(double plants) {
    if (plants > 0 && isEmpty()) {
      refill(plants);
    } else {
      alive *= 1 + (plants == 0 ? 0 : plants / living());
    }
  }

  private void refill(double plants) {
    kept = 0;
    alive = 1;
    consistOf(start.streams(quality));
    double there = notKept();
    if (there > 0) {
      for (Stream stream : streams.all) {
        stream.take(1 - plants / there);
      }
      anew();
    } else {
      double[] even = new double[slices];
      Arrays.fill(even, plants / slices);
      consistOf(Streams.of(List.of(start.stream(Quality.FIRST, 0, even)), slices));
    }
  }

  /** Lets the plants that are not kept be those of some streams. */
  private void consistOf(Streams all) {
    streams = all;
    anew();
  }

  /** So many plants are there; kept ones among them. */
  void countAs(double plants) {
    double living = living();
    if (plants > living) {
      come(plants - living);
    } else {
      die(living - plants);
    }
  }

  /**
   * The plants that are not kept are of these qualities, in these proportions; plants of a quality
   * that nobody knew of are like all the others.
   */
  void sortAs(Map<Quality, Double> counted) {
    double total = counted.values().stream().mapToDouble(Double::doubleValue).sum();
    double all = notKept();
    if (total == 0 || all == 0) {
      return;
    }
    Map<Integer, double[]> shapes = shapes();
    List<Stream> sorted = new ArrayList<>();
    for (Quality each : Quality.values()) {
      double target = all * counted.getOrDefault(each, 0.0) / total;
      double there = sumOf(each);
      for (Stream stream : streams.of(each)) {
        stream.take(there == 0 ? 0 : 1 - target / there);
        sorted.add(stream);
      }
      if (there == 0 && target > 0) {
        shapes.forEach(
            (from, shape) -> sorted.add(start.stream(each, from, scaled(shape, target / all))));
      }
    }
    consistOf(Streams.of(sorted, slices));
  }

  /** Plants of each slice that are sold from a grade upwards, whatever their quality. */
  private Map<Integer, double[]> shapes() {
    Map<Integer, double[]> shapes = new TreeMap<>();
    for (Stream stream : streams.all) {
      double[] shape = shapes.computeIfAbsent(stream.sellsFrom, from -> new double[slices]);
      for (int i = 0; i < slices; i++) {
        shape[i] += stream.weight(i);
      }
    }
    return shapes;
  }

  private static double[] scaled(double[] values, double factor) {
    return Arrays.stream(values).map(each -> each * factor).toArray();
  }

  private double sumOf(Quality of) {
    double sum = 0;
    for (Stream stream : streams.of(of)) {
      sum += stream.sum;
    }
    return sum;
  }

  /** Culls so many plants of a quality, as far as there are any; gives how many. */
  double cullPlants(Quality of, double plants) {
    double culled = plants == 0 || alive == 0 ? 0 : alive * cullOf(of, plants / alive);
    anew();
    return culled;
  }

  /** Takes so many plants that are not kept, of every kind alike; gives how many. */
  double takeAlike(double plants) {
    double there = alive * notKept();
    double taken = Math.min(plants, there);
    if (taken > 0) {
      for (Stream stream : streams.all) {
        stream.take(taken / there);
      }
      anew();
    }
    return taken;
  }

  /** The trunks were measured: lets the plants grow on from there, each with its own vigour. */
  void measured(double meanMm, OptionalDouble spread) {
    trunkAtZero = new Remeasured(trunks(), weights(), start.trunkScores()).to(meanMm, spread);
    Arrays.fill(thick, 0);
    Arrays.fill(slicesThickFor, 0);
    clock = 0;
    trunksAt = NOT_YET;
    lookAhead();
    anew();
  }

  /**
   * Trunk of every slice, mm, as given before any growth; worked out anew where the plants have
   * grown since it was asked.
   */
  private double[] trunks() {
    if (flow == null) {
      return trunkAtZero;
    }
    if (trunksAt != clock) {
      trunks = trunks == null ? new double[slices] : trunks;
      for (int i = 0; i < slices; i++) {
        trunks[i] = trunk(i);
      }
      trunksAt = clock;
    }
    return trunks;
  }

  /** Plants of each slice but for deaths, which fall on all alike. */
  private double[] weights() {
    double[] weights = new double[slices];
    Arrays.fill(weights, kept / slices);
    for (Stream stream : streams.all) {
      for (int i = 0; i < slices; i++) {
        weights[i] += stream.weight(i);
      }
    }
    return weights;
  }

  /**
   * How the lot stands.
   *
   * @param trainingMonths whole months since training started, −1 if it has not
   */
  MonthStock stock(int trainingMonths) {
    boolean empty = isEmpty();
    double spread = empty ? 0 : Remeasured.spread(trunks(), weights());
    return new MonthStock(
        standing(trainingMonths), empty ? 0 : meanTrunk(), spread, max(trunks()), trainingMonths);
  }

  /** Everything that was kept up to date step by step is to be worked out once more. */
  private void anew() {
    noteChange();
    graded = false;
  }

  /** Notes which slices have grown thick enough for one grade more by now. */
  void measure() {
    double now = clock + ROUNDING;
    for (int slice = crossings.next(now); slice != Crossings.NONE; slice = crossings.next(now)) {
      int was = thick[slice]++;
      slicesThickFor[was]++;
      if (graded && saleTable[was] != saleTable[was + 1]) {
        moveUp(slice, saleTable[was], saleTable[was + 1]);
      }
    }
  }

  /** A slice sells as another grade from now on; −1 stands for none. */
  private void moveUp(int slice, int from, int to) {
    sellsAs[slice] = to;
    int last = streams.last(slice);
    for (int i = streams.first(slice); i <= last; i++) {
      moveUp(streams.all[i], streams.all[i].weight(slice), from, to);
    }
  }

  private void moveUp(Stream stream, double weight, int from, int to) {
    if (weight == 0 || !stream.mayGrade) {
      return;
    }
    if (from >= stream.sellsFrom) {
      add(stream, from, -weight);
    }
    if (to >= stream.sellsFrom) {
      readyCells |= cellBit(stream.quality, to);
      add(stream, to, weight);
    }
  }

  private void add(Stream stream, int grade, double weight) {
    double ready = stream.ready[grade] + weight;
    stream.ready[grade] = ready > 0 ? ready : 0;
  }

  /**
   * Grades the lot for sale: works out for every stream how many plants may be sold at each grade.
   * Where no plant moved up and training changes nothing, all is as it was.
   *
   * @param trainingMonths whole months since training started; negative where it is to start so
   *     many months from now, {@link #UNTRAINED} where it is not
   * @return the bits of {@link #cellBit} of all grades and qualities in which plants may be ready
   */
  long gradeForSale(int trainingMonths) {
    measure();
    boolean otherwise = fillSaleTable(trainingMonths);
    if (otherwise || !graded) {
      gradeAnew();
      graded = true;
    }
    return readyCells;
  }

  /**
   * A bit for a grade and quality. On a ladder of more than 21 grades two may share a bit, so it
   * tells surely only that nothing is ready.
   */
  static long cellBit(Quality quality, int grade) {
    return 1L << (grade * QUALITIES + quality.ordinal());
  }

  private void gradeAnew() {
    for (int i = 0; i < slices; i++) {
      sellsAs[i] = saleTable[thick[i]];
    }
    readyCells = 0;
    for (Stream stream : streams.all) {
      stream.readyByGrade(sellsAs);
      for (int grade = 0; grade < grades.length; grade++) {
        readyCells |= stream.ready[grade] > 0 ? cellBit(stream.quality, grade) : 0;
      }
    }
  }

  /**
   * For each number of grades a trunk is thick enough for: the grade it sells as, −1 for none.
   * Gives whether any entry changed.
   */
  private boolean fillSaleTable(int trainingMonths) {
    if (trainingMonths >= tableFrom && trainingMonths < tableUntil) {
      return false;
    }
    tableFrom = trainingMonths;
    tableUntil = nextChange(trainingMonths);
    boolean otherwise = false;
    for (int thickFor = 0; thickFor <= grades.length; thickFor++) {
      int best = highestMet(thickFor, trainingMonths);
      int sells = waits(best, thickFor, trainingMonths) ? -1 : best;
      otherwise |= saleTable[thickFor] != sells;
      saleTable[thickFor] = sells;
    }
    return otherwise;
  }

  /** Training months at which the table may change next. */
  private int nextChange(int trainingMonths) {
    if (trainingMonths == UNTRAINED) {
      return UNTRAINED + 1;
    }
    int next = Integer.MAX_VALUE;
    for (Grade grade : grades) {
      int reached = grade.leastTrainingMonths();
      int waitedFor = reached - grade.waitMonths();
      next = reached > trainingMonths ? Math.min(next, reached) : next;
      next = waitedFor > trainingMonths ? Math.min(next, waitedFor) : next;
    }
    return next;
  }

  private int highestMet(int thickFor, int trainingMonths) {
    int best = thickFor - 1;
    while (best >= 0 && !isTrained(best, trainingMonths)) {
      best--;
    }
    return best;
  }

  private boolean isTrained(int grade, int trainingMonths) {
    return grades[grade].leastTrainingMonths() <= Math.max(0, trainingMonths);
  }

  private boolean waits(int best, int thickFor, int trainingMonths) {
    if (trainingMonths == UNTRAINED) {
      return false;
    }
    for (int grade = best + 1; grade < thickFor; grade++) {
      int lacking = grades[grade].leastTrainingMonths() - trainingMonths;
      if (lacking <= grades[grade].waitMonths()) {
        return true;
      }
    }
    return false;
  }

  /** Plants of a quality that may be sold as a grade now; after {@link #gradeForSale}. */
  double ready(Quality quality, int grade) {
    double ready = 0;
    for (Stream stream : streams.of(quality)) {
      ready += stream.ready[grade];
    }
    return alive * ready;
  }

  /** Mm above the grade's least, summed over the plants of a quality ready as a grade. */
  double mmAboveLeast(Quality quality, int grade) {
    double least = grades[grade].leastTrunkMm();
    double sum = 0;
    for (Stream stream : streams.of(quality)) {
      if (stream.ready[grade] > 0) {
        sum += stream.sum(grade, sellsAs, slice -> trunk(slice) - least);
      }
    }
    return alive * sum;
  }

  /** Sells a share of the plants of a quality that are ready as a grade, every slice alike. */
  void sell(Quality quality, int grade, double share) {
    noteChange();
    for (Stream stream : streams.of(quality)) {
      stream.sell(grade, sellsAs, share);
    }
    readyCells &= share == 1 ? ~cellBit(quality, grade) : -1;
  }

  /**
   * Plants standing by grade, waiting ones at the grade they have.
   *
   * @param trainingMonths whole months since training started, −1 if it has not
   * @return [quality][0 = no grade, then grades from the lowest]; kept plants, whose quality does
   *     not matter, in a fourth row
   */
  double[][] standing(int trainingMonths) {
    measure();
    int[] gradeOf = new int[grades.length + 1];
    for (int thickFor = 0; thickFor <= grades.length; thickFor++) {
      gradeOf[thickFor] = highestMet(thickFor, trainingMonths) + 1;
    }
    double[][] standing = new double[QUALITIES + 1][grades.length + 1];
    for (Stream stream : streams.all) {
      Arrays.fill(byThickness, 0);
      stream.addUp(thick, byThickness);
      double[] row = standing[stream.quality.ordinal()];
      for (int thickFor = 0; thickFor <= grades.length; thickFor++) {
        row[stream.mayGrade ? gradeOf[thickFor] : 0] += alive * byThickness[thickFor];
      }
    }
    if (kept > 0) {
      for (int i = 0; i < slices; i++) {
        standing[QUALITIES][gradeOf[thick[i]]] += alive * kept / slices;
      }
    }
    return standing;
  }

  /**
   * Share of the slices that a grade fits by now, as they would stand without sales and losses.
   *
   * @param grade index of the grade
   * @param trainingMonths whole months since training started, −1 if it has not
   */
  double shareGraded(int grade, int trainingMonths) {
    if (!isTrained(grade, trainingMonths)) {
      return 0;
    }
    measure();
    return (double) slicesThickFor[grade] / slices;
  }
}
