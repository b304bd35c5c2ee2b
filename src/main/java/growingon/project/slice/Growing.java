package growingon.project.slice;

import growingon.nursery.lot.QualityShares;
import growingon.nursery.market.Quality;
import growingon.nursery.number.Negligible;
import growingon.nursery.species.Curve;
import growingon.project.history.BeforeCount;
import growingon.project.history.GradedPlants;
import growingon.project.history.MonthStock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The plants of one lot as they grow: K representative plants, and how many plants each stands for.
 * {@link GrowthClock} knows their trunks, {@link Grading} what they may be sold as.
 */
public final class Growing {
  private static final double NOT_YET = -1;

  /** A trunk that is a part smaller than another is so whatever rounding did to both. */
  private static final double SURELY_LESS = 1 - 1e-9;

  private final GrowthStart start;
  private final int slices;
  private final GrowthClock clock;
  private final Grading grading;
  private QualityShares quality;
  private Streams streams;
  private double kept;
  private double alive;
  private double notKept;
  private boolean changed = true;
  private double squaredTrunk;
  private double squaredAt = NOT_YET;

  /** The plants of a lot before they grow, their trunks thicker by a factor than stated. */
  public Growing(GrowthStart start, QualityShares quality, double thicker) {
    this.start = start;
    this.slices = start.slices();
    this.clock = new GrowthClock(start.trunks);
    this.grading = new Grading(start.trunks, clock);
    begin(quality, thicker);
  }

  /** Begins a run, in the memory of the last. */
  public void begin(QualityShares sorts, double thicker) {
    clock.begin(thicker);
    grading.begin();
    quality = sorts;
    kept = start.kept();
    alive = 1;
    consistOf(start.streams(sorts, streams));
  }

  /** The same so far, for a lot that goes on apart. */
  public Growing(Growing same) {
    this.start = same.start;
    this.quality = same.quality;
    this.slices = same.slices;
    this.clock = new GrowthClock(same.clock);
    this.streams = same.streams.copy();
    this.grading = new Grading(same.grading, clock, streams);
    this.kept = same.kept;
    this.alive = same.alive;
    this.notKept = same.notKept;
    this.changed = same.changed;
    this.squaredTrunk = same.squaredTrunk;
    this.squaredAt = same.squaredAt;
  }

  /** Plants alive now, kept ones among them. */
  public double living() {
    return alive * (kept + notKept());
  }

  /** Whether nothing is left but what rounding left of dividing. */
  public boolean isEmpty() {
    return Negligible.is(living());
  }

  /** Kept plants alive now. */
  public double keptLiving() {
    return alive * kept;
  }

  /** Plants alive now, added up slice by slice: the same number by another way. */
  public double count() {
    double sum = kept;
    for (int stream = 0; stream < streams.size(); stream++) {
      sum += streams.count(stream);
    }
    return alive * sum;
  }

  /** There are other plants than before, or other numbers of them. */
  private void noteChange() {
    changed = true;
    squaredAt = NOT_YET;
  }

  /** The same, otherwise than by a sale: what is ready to be sold must be worked out once more. */
  private void noteOtherPlants() {
    noteChange();
    grading.of(streams);
  }

  private double notKept() {
    if (changed) {
      notKept = streams.sum();
      changed = false;
    }
    return notKept;
  }

  /** So many plants die, all alike; gives how many. */
  public double die(double plants) {
    if (plants == 0) {
      return 0;
    }
    double living = living();
    double died = Math.min(plants, living);
    alive *= living == 0 ? 1 : 1 - died / living;
    return died;
  }

  /** Culls every plant of a quality that is not kept; gives how many. */
  public double cullAll(Quality of) {
    noteOtherPlants();
    double culled = 0;
    for (int stream = streams.from(of); stream < streams.until(of); stream++) {
      culled += alive * streams.sum(stream);
      streams.take(stream, 1);
    }
    return culled;
  }

  /**
   * Culls a share of the plants that are not kept; gives how many.
   *
   * @param share share of the living that are not kept
   * @param worstFirst whether qualities are known, so that the worst go first
   */
  public double cull(double share, boolean worstFirst) {
    double wanted = notKept() * share;
    if (wanted == 0) {
      return 0;
    }
    noteOtherPlants();
    if (!worstFirst) {
      streams.take(share);
      return alive * wanted;
    }
    double left = wanted;
    for (int q = Quality.values().length - 1; q >= 0 && left > 0; q--) {
      left -= cullOf(Quality.values()[q], left);
    }
    return alive * (wanted - left);
  }

  private double cullOf(Quality of, double wanted) {
    double there = streams.sum(of);
    if (there == 0) {
      return 0;
    }
    double part = Math.min(1, wanted / there);
    for (int stream = streams.from(of); stream < streams.until(of); stream++) {
      streams.take(stream, part);
    }
    return part * there;
  }

  /** Culls so many plants of a quality, as far as there are any; gives how many. */
  public double cullPlants(Quality of, double plants) {
    double culled = plants == 0 || alive == 0 ? 0 : alive * cullOf(of, plants / alive);
    noteOtherPlants();
    return culled;
  }

  /** Takes so many plants that are not kept, of every kind alike; gives how many. */
  double takeAlike(double plants) {
    double there = alive * notKept();
    double taken = Math.min(plants, there);
    if (taken > 0) {
      streams.take(taken / there);
      noteOtherPlants();
    }
    return taken;
  }

  /** Leaves a part of the plants only: the others are told of elsewhere. */
  public void keepPart(double part) {
    if (part == 1) {
      return;
    }
    kept *= part;
    streams.take(1 - part);
    noteOtherPlants();
  }

  /** Plants come, like those that are there, or like those of the start where none is left. */
  public void come(double plants) {
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
      streams.take(1 - plants / there);
      noteOtherPlants();
    } else {
      double[] even = new double[slices];
      Arrays.fill(even, plants / slices);
      consistOf(start.streams(List.of(start.stream(Quality.FIRST, 0, even))));
    }
  }

  /** Lets the plants that are not kept be those of some streams. */
  private void consistOf(Streams all) {
    streams = all;
    noteOtherPlants();
  }

  /** So many plants are there; kept ones among them. */
  public void countAs(double plants) {
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
  public void sortAs(Map<Quality, Double> counted) {
    double total = counted.values().stream().mapToDouble(Double::doubleValue).sum();
    double all = notKept();
    if (total > 0 && all > 0) {
      consistOf(start.streams(new CountedQualities(counted, total).of(streams, all, start)));
    }
  }

  /** Lets the lot go on by another law from where its trunks stand now. */
  public void growBy(Curve law) {
    if (clock.goesBy(law)) {
      return;
    }
    boolean isFirst = clock.isNew();
    clock.goBy(law);
    squaredAt = NOT_YET;
    if (isFirst && clock.isAsStated()) {
      grading.start();
    } else {
      grading.lookAhead();
    }
  }

  /** Advances the growth clock, in growth years of a plant of vigour 1. */
  public void grow(double growthYears) {
    clock.grow(growthYears);
  }

  /** The trunks were measured: lets the plants grow on from there, each with its own vigour. */
  public void measured(double meanMm, OptionalDouble spread) {
    clock.measured(
        new Remeasured(clock.trunks(), weights(), start.trunkScores()).to(meanMm, spread));
    grading.startAnew();
    noteOtherPlants();
  }

  /** Plants of each slice but for deaths, which fall on all alike. */
  private double[] weights() {
    double[] weights = new double[slices];
    Arrays.fill(weights, kept / slices);
    streams.addTo(weights);
    return weights;
  }

  /** Trunk of a slice now, mm. */
  public double trunk(int slice) {
    return clock.trunk(slice);
  }

  /** Mean trunk of the living plants, mm; 0 for an empty lot. */
  public double meanTrunk() {
    return mean(1);
  }

  /** Whether the mean trunk of the living plants is so many mm; the thickest often tells. */
  public boolean reaches(double mm) {
    return clock.trunkAtMost() > mm * SURELY_LESS && meanTrunk() >= mm;
  }

  /**
   * Mean of the squared trunk of the living plants, mm²; 0 for an empty lot. It stays while they
   * neither grow nor are sold or culled, as in winter.
   */
  public double meanSquaredTrunk() {
    if (squaredAt != clock.now()) {
      squaredTrunk = mean(2);
      squaredAt = clock.now();
    }
    return squaredTrunk;
  }

  /** No plant's squared trunk is more than this, mm². */
  public double squaredTrunkAtMost() {
    double most = clock.trunkAtMost();
    return most * most;
  }

  private double mean(int power) {
    double[] now = clock.trunks();
    double plants = 0;
    double sum = 0;
    if (kept > 0) {
      plants = kept;
      for (double trunk : now) {
        sum += kept / slices * (power == 1 ? trunk : trunk * trunk);
      }
    }
    for (int stream = 0; stream < streams.size(); stream++) {
      plants += streams.sum(stream);
      sum += power == 1 ? streams.sum(stream, now) : streams.sumOfSquares(stream, now);
    }
    return plants == 0 ? 0 : sum / plants;
  }

  /** How its plants stand before a count. */
  public BeforeCount beforeCount() {
    return isEmpty()
        ? new BeforeCount(0, 0, 0)
        : new BeforeCount(living(), meanTrunk(), Remeasured.spread(clock.trunks(), weights()));
  }

  /**
   * How the lot stands.
   *
   * @param trainingMonths whole months since training started, −1 if it has not
   * @param ready plants that may be sold, by quality and grade
   */
  public MonthStock stock(int trainingMonths, GradedPlants ready) {
    boolean empty = isEmpty();
    double[] now = clock.trunks();
    double spread = empty ? 0 : Remeasured.spread(now, weights());
    double most = Arrays.stream(now).max().orElse(0);
    return new MonthStock(
        standing(trainingMonths), ready, empty ? 0 : meanTrunk(), spread, most, trainingMonths);
  }

  /** Grades the lot for sale, as {@link Grading#forSale}. */
  public long gradeForSale(int trainingMonths) {
    return grading.forSale(trainingMonths);
  }

  /** Plants of a quality that may be sold as a grade now; after {@link #gradeForSale}. */
  public double ready(Quality of, int grade) {
    return alive * streams.ready(of, grade);
  }

  /**
   * The same as far as they count. Where they do not, they are not asked for again until others
   * have grown into the grade: deaths only make them fewer.
   */
  public double offered(Quality of, int grade) {
    double ready = ready(of, grade);
    if (Negligible.is(ready)) {
      grading.nothingReady(of, grade);
      return 0;
    }
    return ready;
  }

  /** The same once some shares of them were sold one after another. */
  public double readyAfter(Quality of, int grade, double[] sold, int sales) {
    return alive * grading.readyAfter(of, grade, sold, sales);
  }

  /** Mm above the grade's least, summed over the plants of a quality ready as a grade. */
  public double mmAboveLeast(Quality of, int grade) {
    return alive * grading.mmAboveLeast(of, grade);
  }

  /** Sells a share of the plants of a quality that are ready as a grade, every slice alike. */
  public void sell(Quality of, int grade, double share) {
    noteChange();
    grading.sell(of, grade, share);
  }

  /** Plants standing by grade, as {@link Grading#standing}. */
  public GradedPlants standing(int trainingMonths) {
    return grading.standing(trainingMonths, alive, kept);
  }

  /** Share of the slices that a grade fits by now, as {@link Grading#shareGraded}. */
  public double shareGraded(int grade, int trainingMonths) {
    return grading.shareGraded(grade, trainingMonths);
  }
}
