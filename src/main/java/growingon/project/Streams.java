package growingon.project;

import growingon.nursery.Quality;
import java.util.Arrays;
import java.util.List;

/**
 * The streams of a lot, and where to find the plants of a slice in them: a slice has plants in one
 * stream or in a few that stand side by side.
 */
final class Streams {
  final Stream[] all;
  private final Stream[][] ofQuality;
  private final byte[] first;
  private final byte[] last;

  private Streams(Stream[] all, byte[] first, byte[] last) {
    this.all = all;
    this.first = first;
    this.last = last;
    this.ofQuality = new Stream[Quality.values().length][];
    for (Quality quality : Quality.values()) {
      ofQuality[quality.ordinal()] =
          Arrays.stream(all).filter(each -> each.quality == quality).toArray(Stream[]::new);
    }
  }

  /** Streams of a lot with so many slices, firsts before seconds. */
  static Streams of(List<Stream> streams, int slices) {
    Stream[] all = streams.toArray(new Stream[0]);
    byte[] first = new byte[slices];
    byte[] last = new byte[slices];
    for (int slice = 0; slice < slices; slice++) {
      first[slice] = (byte) all.length;
      last[slice] = -1;
      for (byte i = 0; i < all.length; i++) {
        if (all[i].weight(slice) > 0) {
          first[slice] = first[slice] < i ? first[slice] : i;
          last[slice] = i;
        }
      }
    }
    return new Streams(all, first, last);
  }

  /** The same plants anew; only of streams of which nothing was sold or culled yet. */
  Streams copy() {
    return new Streams(Arrays.stream(all).map(Stream::copy).toArray(Stream[]::new), first, last);
  }

  /** The same plants as they are now. */
  Streams goingOn() {
    return new Streams(Arrays.stream(all).map(Stream::goingOn).toArray(Stream[]::new), first, last);
  }

  /** Streams of a quality. */
  Stream[] of(Quality quality) {
    return ofQuality[quality.ordinal()];
  }

  /** Index of the first stream with plants of a slice. */
  int first(int slice) {
    return first[slice];
  }

  /** Index of the last stream with plants of a slice; below {@link #first} if there is none. */
  int last(int slice) {
    return last[slice];
  }
}
