package growingon.project;

import growingon.nursery.Quality;
import java.util.Arrays;

/**
 * Plants of one lot that sort and sell alike: one quality, either free or held back. Weights are
 * plants of each slice at arrival, less what was culled and sold since; deaths, which fall on all
 * alike, are kept as one factor in {@link Growing}.
 */
final class Stream {
  final Quality quality;
  final boolean mayGrade;
  final double priceShare;
  final int sellsFrom;
  final double[] weights;
  final double[] ready;
  double sum;

  /**
   * A stream.
   *
   * @param quality its quality
   * @param priceShare share of the list price it fetches; a third without a price does not grade
   * @param sellsFrom lowest grade at which it is sold
   * @param weights plants of each slice
   * @param grades number of grades on the ladder
   */
  Stream(Quality quality, double priceShare, int sellsFrom, double[] weights, int grades) {
    this.quality = quality;
    this.mayGrade = quality != Quality.THIRD || priceShare > 0;
    this.priceShare = priceShare;
    this.sellsFrom = sellsFrom;
    this.weights = weights;
    this.ready = new double[grades];
    addUp();
  }

  /** The same plants anew. */
  Stream copy() {
    return new Stream(quality, priceShare, sellsFrom, weights.clone(), ready.length);
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
      if (sellsAs[i] >= sellsFrom) {
        ready[sellsAs[i]] += weights[i];
      }
    }
  }

  /** Takes a share of the plants that sell as a grade away. */
  void sell(int grade, int[] sellsAs, double share) {
    if (ready[grade] == 0) {
      return;
    }
    double left = 1 - share;
    for (int i = 0; i < weights.length; i++) {
      weights[i] *= sellsAs[i] == grade ? left : 1;
    }
    sum = Math.max(0, sum - ready[grade] * share);
    ready[grade] *= left;
  }
}
