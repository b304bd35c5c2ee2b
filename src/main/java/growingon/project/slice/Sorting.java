package growingon.project.slice;

import growingon.nursery.market.Quality;
import java.util.Arrays;
import java.util.List;

/**
 * Which streams the plants of a lot are sorted into, and which slices each has plants of. A slice
 * is of one quality, but for the few on a border, so a stream lists only the slices it has plants
 * of: one entry each, stream after stream. It never changes, so all runs in which a lot sorts alike
 * share it.
 */
final class Sorting {
  /** There is no entry. */
  static final int NONE = -1;

  /** Quality of each stream; streams of a quality stand together, firsts before seconds. */
  final Quality[] quality;

  /** Whether the plants of each stream reach grades. */
  final boolean[] mayGrade;

  /** Lowest grade at which each stream is sold. */
  final int[] sellsFrom;

  /** The same, but beyond all grades for a stream whose plants reach none. */
  final int[] offeredFrom;

  /** First entry of each stream; in the end the number of entries. */
  final int[] from;

  /** Slice of each entry. */
  final int[] slice;

  /** Stream of each entry. */
  final int[] stream;

  /** First stream of each quality; in the end the number of streams. */
  final int[] fromOf;

  /** First entry of each slice, {@link #NONE} for one without plants. */
  final int[] first;

  /** The entry of the same slice in the next stream that has plants of it, or {@link #NONE}. */
  final int[] next;

  /** The sorting of streams of a lot with so many slices; those of a quality stand together. */
  Sorting(List<Stream> streams, int slices) {
    int all = streams.size();
    this.quality = streams.stream().map(Stream::quality).toArray(Quality[]::new);
    this.sellsFrom = streams.stream().mapToInt(Stream::sellsFrom).toArray();
    this.mayGrade = new boolean[all];
    this.offeredFrom = new int[all];
    this.from = new int[all + 1];
    for (int i = 0; i < all; i++) {
      mayGrade[i] = streams.get(i).mayGrade();
      offeredFrom[i] = mayGrade[i] ? sellsFrom[i] : Integer.MAX_VALUE;
      from[i + 1] = from[i] + streams.get(i).slices();
    }
    this.slice = new int[from[all]];
    this.stream = new int[slice.length];
    for (int i = 0; i < all; i++) {
      int entry = from[i];
      for (int each = 0; each < slices; each++) {
        if (streams.get(i).plants()[each] > 0) {
          stream[entry] = i;
          slice[entry++] = each;
        }
      }
    }
    int[] ofQuality = Arrays.stream(quality).mapToInt(Enum::ordinal).toArray();
    this.fromOf = starts(ofQuality, Quality.values().length);
    this.first = new int[slices];
    this.next = new int[slice.length];
    Arrays.fill(first, NONE);
    for (int entry = slice.length - 1; entry >= 0; entry--) {
      next[entry] = first[slice[entry]];
      first[slice[entry]] = entry;
    }
  }

  /** Where each number would start were some numbers sorted, and in the end how many there are. */
  private static int[] starts(int[] numbers, int below) {
    int[] starts = new int[below + 1];
    for (int number : numbers) {
      starts[number + 1]++;
    }
    for (int number = 0; number < below; number++) {
      starts[number + 1] += starts[number];
    }
    return starts;
  }

  /** Number of streams. */
  int streams() {
    return quality.length;
  }

  /** Number of entries of all streams. */
  int entries() {
    return slice.length;
  }

  /** Whether it has the same streams, made of the same slices. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Sorting that
        && first.length == that.first.length
        && Arrays.equals(quality, that.quality)
        && Arrays.equals(offeredFrom, that.offeredFrom)
        && Arrays.equals(sellsFrom, that.sellsFrom)
        && Arrays.equals(from, that.from)
        && Arrays.equals(slice, that.slice);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(slice) + Arrays.hashCode(from);
  }
}
