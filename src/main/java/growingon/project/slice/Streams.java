package growingon.project.slice;

import growingon.nursery.market.Quality;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * How many plants each stream of a lot has of each slice, and how many of them may be sold as each
 * grade. Plants are those at arrival, less what was culled and sold since; deaths, which fall on
 * all alike, are kept as one factor in {@link Growing}. All stands in one array, so that a run of a
 * lot begins with one copy, and a sale walks through memory in order. The innermost loops of a draw
 * are here, so they take what they read into variables: the quick compiler does not do so itself.
 */
final class Streams {
  private final Sorting sorting;
  private final int grades;
  // Plants of every entry, then those ready of every stream and grade, then those of every stream.
  private final double[] plants;
  private final int readyFrom;
  private final int sumFrom;

  private Streams(Sorting sorting, int grades, double[] plants) {
    this.sorting = sorting;
    this.grades = grades;
    this.plants = plants;
    this.readyFrom = sorting.entries();
    this.sumFrom = readyFrom + sorting.streams() * grades;
  }

  /** Streams of a lot with so many slices, firsts before seconds; nothing is graded yet. */
  static Streams of(List<Stream> streams, int slices, int grades) {
    Sorting sorting = new Sorting(streams, slices);
    int all = sorting.streams();
    Streams made = new Streams(sorting, grades, new double[sorting.entries() + all * grades + all]);
    for (int entry = 0; entry < sorting.entries(); entry++) {
      made.plants[entry] = streams.get(sorting.stream[entry]).plants()[sorting.slice[entry]];
    }
    for (int stream = 0; stream < all; stream++) {
      made.addUp(stream);
    }
    return made;
  }

  /** The same with a sorting that says the same. */
  Streams sortedAs(UnaryOperator<Sorting> known) {
    return new Streams(known.apply(sorting), grades, plants);
  }

  /** The same plants as they are now. */
  Streams copy() {
    return new Streams(sorting, grades, plants.clone());
  }

  /** The same in the memory of others, null for none, if they are sorted alike. */
  Streams copyInto(Streams others) {
    if (others == null || others.sorting != sorting) {
      return copy();
    }
    System.arraycopy(plants, 0, others.plants, 0, plants.length);
    return others;
  }

  /** Number of streams. */
  int size() {
    return sorting.streams();
  }

  /** Quality of a stream. */
  Quality quality(int stream) {
    return sorting.quality[stream];
  }

  /** Whether the plants of a stream reach grades. */
  boolean mayGrade(int stream) {
    return sorting.mayGrade[stream];
  }

  /** Lowest grade at which a stream is sold. */
  int sellsFrom(int stream) {
    return sorting.sellsFrom[stream];
  }

  /** First stream of a quality; its last is before the first of the next quality. */
  int from(Quality of) {
    return sorting.fromOf[of.ordinal()];
  }

  /** The stream after the last of a quality. */
  int until(Quality of) {
    return sorting.fromOf[of.ordinal() + 1];
  }

  /** Plants of a stream. */
  double sum(int stream) {
    return plants[sumFrom + stream];
  }

  /** Plants of a quality. */
  double sum(Quality of) {
    double sum = 0;
    for (int stream = from(of); stream < until(of); stream++) {
      sum += plants[sumFrom + stream];
    }
    return sum;
  }

  /** Plants of all streams. */
  double sum() {
    double sum = 0;
    for (int i = sumFrom; i < plants.length; i++) {
      sum += plants[i];
    }
    return sum;
  }

  /** The slices of a stream added up anew, for the check of what was kept up step by step. */
  double count(int stream) {
    double[] weights = plants;
    int end = sorting.from[stream + 1];
    double total = 0;
    for (int entry = sorting.from[stream]; entry < end; entry++) {
      total += weights[entry];
    }
    return total;
  }

  private void addUp(int stream) {
    plants[sumFrom + stream] = count(stream);
  }

  /** A stream as it is now. */
  Stream stream(int which, int slices) {
    double[] ofSlice = new double[slices];
    addTo(ofSlice, which);
    return new Stream(
        sorting.quality[which], sorting.mayGrade[which], sorting.sellsFrom[which], ofSlice);
  }

  /** Adds the plants of all streams to those of each slice. */
  void addTo(double[] ofSlice) {
    for (int stream = 0; stream < size(); stream++) {
      addTo(ofSlice, stream);
    }
  }

  /** Adds the plants of a stream to those of each slice. */
  void addTo(double[] ofSlice, int stream) {
    for (int entry = sorting.from[stream]; entry < sorting.from[stream + 1]; entry++) {
      ofSlice[sorting.slice[entry]] += plants[entry];
    }
  }

  /** Adds the plants of a stream up by how many grades their slices are thick enough for. */
  void addUp(int stream, short[] thick, double[] sums) {
    double[] weights = plants;
    int[] slice = sorting.slice;
    int end = sorting.from[stream + 1];
    int last = 0;
    double sum = sums[0];
    for (int entry = sorting.from[stream]; entry < end; entry++) {
      int now = thick[slice[entry]];
      // Neighbours mostly are as thick as each other, so the sum need not be put down each time.
      if (now != last) {
        sums[last] = sum;
        sum = sums[now];
        last = now;
      }
      sum += weights[entry];
    }
    sums[last] = sum;
  }

  /** Adds a number of each plant of a stream up, given one for every slice of the lot. */
  double sum(int stream, double[] ofSlice) {
    double[] weights = plants;
    int[] slice = sorting.slice;
    int end = sorting.from[stream + 1];
    double total = 0;
    for (int entry = sorting.from[stream]; entry < end; entry++) {
      total += weights[entry] * ofSlice[slice[entry]];
    }
    return total;
  }

  /** Adds the square of a number of each plant of a stream up, given one for every slice. */
  double sumOfSquares(int stream, double[] ofSlice) {
    double total = 0;
    for (int entry = sorting.from[stream]; entry < sorting.from[stream + 1]; entry++) {
      double each = ofSlice[sorting.slice[entry]];
      total += plants[entry] * each * each;
    }
    return total;
  }

  /** Takes the same share of every slice of a stream away. */
  void take(int stream, double share) {
    for (int entry = sorting.from[stream]; entry < sorting.from[stream + 1]; entry++) {
      plants[entry] *= 1 - share;
    }
    for (int grade = 0; grade < grades; grade++) {
      plants[readyAt(stream, grade)] *= 1 - share;
    }
    addUp(stream);
  }

  /** Takes the same share of all plants away. */
  void take(double share) {
    for (int stream = 0; stream < size(); stream++) {
      take(stream, share);
    }
  }

  private int readyAt(int stream, int grade) {
    return readyFrom + stream * grades + grade;
  }

  /** Plants of a stream that may be sold as a grade. */
  double ready(int stream, int grade) {
    return plants[readyAt(stream, grade)];
  }

  /** Plants of a quality that may be sold as a grade. */
  double ready(Quality of, int grade) {
    int until = until(of);
    double ready = 0;
    for (int stream = from(of); stream < until; stream++) {
      ready += plants[readyAt(stream, grade)];
    }
    return ready;
  }

  /**
   * Adds up the plants that could be sold at each grade.
   *
   * @param thick for each slice, how many grades it is thick enough for
   * @param sellsAs the grade that a slice thick enough for so many sells as, −1 for none
   * @return the bits of {@link Grading#cellBit} of all grades and qualities of which there are any
   */
  long grade(short[] thick, int[] sellsAs) {
    Arrays.fill(plants, readyFrom, sumFrom, 0);
    long cells = 0;
    for (int stream = 0; stream < size(); stream++) {
      if (sum(stream) == 0 || !sorting.mayGrade[stream]) {
        continue;
      }
      addUpReady(stream, thick, sellsAs);
      for (int grade = 0; grade < grades; grade++) {
        cells |= ready(stream, grade) > 0 ? Grading.cellBit(quality(stream), grade) : 0;
      }
    }
    return cells;
  }

  private void addUpReady(int stream, short[] thick, int[] sellsAs) {
    double[] weights = plants;
    int[] slice = sorting.slice;
    int lowest = sorting.sellsFrom[stream];
    int at = readyAt(stream, 0);
    int end = sorting.from[stream + 1];
    for (int entry = sorting.from[stream]; entry < end; entry++) {
      int grade = sellsAs[thick[slice[entry]]];
      if (grade >= lowest) {
        weights[at + grade] += weights[entry];
      }
    }
  }

  /**
   * A slice sells as another grade from now on; −1 stands for none.
   *
   * @return the bits of {@link Grading#cellBit} of the qualities of its plants in the new grade
   */
  long moveUp(int slice, int from, int to) {
    long cells = 0;
    for (int entry = sorting.first[slice]; entry != Sorting.NONE; entry = sorting.next[entry]) {
      int stream = sorting.stream[entry];
      double weight = plants[entry];
      if (weight == 0) {
        continue;
      }
      int lowest = sorting.offeredFrom[stream];
      if (from >= lowest) {
        addReady(readyAt(stream, from), -weight);
      }
      if (to >= lowest) {
        cells |= Grading.cellBit(quality(stream), to);
        addReady(readyAt(stream, to), weight);
      }
    }
    return cells;
  }

  private void addReady(int at, double weight) {
    double ready = plants[at] + weight;
    plants[at] = ready > 0 ? ready : 0;
  }

  /**
   * Takes a share of the plants of a stream that sell as a grade away.
   *
   * @param left by how many grades its slice is thick enough for, what is left of a plant; 1 where
   *     it does not sell as the grade, which leaves it as it is to the last digit
   */
  void sell(int stream, int grade, short[] thick, double[] left, double share) {
    int at = readyAt(stream, grade);
    double ready = plants[at];
    if (ready == 0) {
      return;
    }
    double[] weights = plants;
    int[] slice = sorting.slice;
    int end = sorting.from[stream + 1];
    for (int entry = sorting.from[stream]; entry < end; entry++) {
      weights[entry] *= left[thick[slice[entry]]];
    }
    plants[sumFrom + stream] = Math.max(0, sum(stream) - ready * share);
    plants[at] = ready * (1 - share);
  }

  /**
   * Adds up by how many mm the trunks of the plants of a stream that sell as a grade are above its
   * least.
   */
  double mmAbove(
      int stream, double least, int grade, short[] thick, int[] sellsAs, GrowthClock clock) {
    double[] weights = plants;
    int[] slice = sorting.slice;
    int end = sorting.from[stream + 1];
    double total = 0;
    for (int entry = sorting.from[stream]; entry < end; entry++) {
      if (sellsAs[thick[slice[entry]]] == grade && weights[entry] > 0) {
        total += weights[entry] * (clock.trunk(slice[entry]) - least);
      }
    }
    return total;
  }
}
