package growingon.project;

import growingon.nursery.Quality;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Plants of one lot that sort and sell alike: one quality, either free or held back. A slice of the
 * lot is of one quality, but for the few on a border, so a stream lists only the slices it has
 * plants of. Weights are plants of each at arrival, less what was culled and sold since; deaths,
 * which fall on all alike, are kept as one factor in {@link Growing}.
 */
final class Stream {
  private static final int NOT_IN_IT = -1;

  final Quality quality;
  final boolean mayGrade;
  final int sellsFrom;
  private final int[] slices;
  private final int[] position;
  private final double[] weights;
  final double[] ready;
  double sum;

  /**
   * A stream.
   *
   * @param quality its quality
   * @param mayGrade whether its plants reach grades
   * @param sellsFrom lowest grade at which it is sold
   * @param plants plants of each slice of the lot
   * @param grades number of grades on the ladder
   */
  Stream(Quality quality, boolean mayGrade, int sellsFrom, double[] plants, int grades) {
    this.quality = quality;
    this.mayGrade = mayGrade;
    this.sellsFrom = sellsFrom;
    this.slices = IntStream.range(0, plants.length).filter(i -> plants[i] > 0).toArray();
    this.weights = IntStream.of(slices).mapToDouble(slice -> plants[slice]).toArray();
    this.position = new int[plants.length];
    Arrays.fill(position, NOT_IN_IT);
    for (int i = 0; i < slices.length; i++) {
      position[slices[i]] = i;
    }
    this.ready = new double[grades];
    addUp();
  }

  private Stream(Stream same) {
    this.quality = same.quality;
    this.mayGrade = same.mayGrade;
    this.sellsFrom = same.sellsFrom;
    this.slices = same.slices;
    this.weights = same.weights.clone();
    this.position = same.position;
    this.ready = new double[same.ready.length];
    this.sum = same.sum;
  }

  /** The same plants anew; only for a stream of which nothing was sold or culled yet. */
  Stream copy() {
    return new Stream(this);
  }

  /** The same plants as they are now. */
  Stream goingOn() {
    Stream same = new Stream(this);
    System.arraycopy(ready, 0, same.ready, 0, ready.length);
    return same;
  }

  /** Plants of a slice of the lot. */
  double weight(int slice) {
    int at = position[slice];
    return at == NOT_IN_IT ? 0 : weights[at];
  }

  /** Adds its plants up by a number that each slice of the lot has. */
  void addUp(int[] numberOf, double[] sums) {
    for (int i = 0; i < weights.length; i++) {
      sums[numberOf[slices[i]]] += weights[i];
    }
  }

  private void addUp() {
    sum = count();
  }

  /** Adds the slices up anew, for the check of what was kept up to date step by step. */
  double count() {
    double total = 0;
    for (double weight : weights) {
      total += weight;
    }
    return total;
  }

  /** Adds a number of each plant up, given one for every slice of the lot. */
  double sum(double[] ofSlice) {
    double total = 0;
    for (int i = 0; i < weights.length; i++) {
      total += weights[i] * ofSlice[slices[i]];
    }
    return total;
  }

  /** Adds the square of a number of each plant up, given the number of every slice of the lot. */
  double sumOfSquares(double[] ofSlice) {
    double total = 0;
    for (int i = 0; i < weights.length; i++) {
      double each = ofSlice[slices[i]];
      total += weights[i] * each * each;
    }
    return total;
  }

  /** Takes the same share of every slice away. */
  void take(double share) {
    for (int i = 0; i < weights.length; i++) {
      weights[i] *= 1 - share;
    }
    for (int grade = 0; grade < ready.length; grade++) {
      ready[grade] *= 1 - share;
    }
    addUp();
  }

  /** Adds up the plants that could be sold at each grade. */
  void readyByGrade(int[] sellsAs) {
    Arrays.fill(ready, 0);
    if (sum == 0 || !mayGrade) {
      return;
    }
    for (int i = 0; i < weights.length; i++) {
      int grade = sellsAs[slices[i]];
      if (grade >= sellsFrom) {
        ready[grade] += weights[i];
      }
    }
  }

  /** Adds up by how many mm the trunks of the plants that sell as a grade are above its least. */
  double mmAbove(double least, int grade, int[] sellsAs, GrowthClock clock) {
    double total = 0;
    for (int i = 0; i < weights.length; i++) {
      if (sellsAs[slices[i]] == grade && weights[i] > 0) {
        total += weights[i] * (clock.trunk(slices[i]) - least);
      }
    }
    return total;
  }

  /** Takes a share of the plants that sell as a grade away. */
  void sell(int grade, int[] sellsAs, double share) {
    if (ready[grade] == 0) {
      return;
    }
    double left = 1 - share;
    for (int i = 0; i < weights.length; i++) {
      if (sellsAs[slices[i]] == grade) {
        weights[i] *= left;
      }
    }
    sum = Math.max(0, sum - ready[grade] * share);
    ready[grade] *= left;
  }
}
