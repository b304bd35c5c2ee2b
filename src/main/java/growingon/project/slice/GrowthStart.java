package growingon.project.slice;

import growingon.nursery.lot.Hold;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.market.Ladder;
import growingon.nursery.market.Quality;
import growingon.nursery.market.QualityRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * How the representative plants of a lot start: their trunks and vigour, and how many plants each
 * stands for. The same for every run of a lot, so it is worked out once and never changed.
 */
public final class GrowthStart {
  private final Lot lot;
  private final Optional<Hold> hold;
  private final int holdFrom;
  private final Lattice lattice;
  private final Map<Quality, QualityRule> qualities;
  private final int slices;
  private final Streams expectedStreams;
  final StartingTrunks trunks;

  /**
   * How a lot starts.
   *
   * @param ladder the ladder it is sold by
   * @param vigourSpread coefficient of variation of vigour
   */
  public GrowthStart(
      Lot lot,
      Ladder ladder,
      double vigourSpread,
      Lattice lattice,
      Map<Quality, QualityRule> qualities) {
    this.lot = lot;
    this.hold = lot.hold();
    this.holdFrom = hold.map(Hold::grade).map(ladder::indexOf).orElse(0);
    this.lattice = lattice;
    this.qualities = qualities;
    this.slices = lattice.slices();
    this.trunks = lattice.starting(lot.trunks(), vigourSpread, ladder.grades());
    this.expectedStreams = layOut(lot.quality()).sortedAs(lattice::shared);
  }

  /** Plants of the lot that are kept. */
  double kept() {
    return lot.kept();
  }

  /** Number of slices. */
  int slices() {
    return slices;
  }

  /** Fresh streams for a run in which the lot sorts as stated. */
  Streams streams(QualityShares shares) {
    return streams(shares, null);
  }

  /** The same in the memory of streams that are done with, null for none, where they fit. */
  Streams streams(QualityShares shares, Streams done) {
    return shares.equals(lot.quality()) ? expectedStreams.copyInto(done) : layOut(shares);
  }

  private Streams layOut(QualityShares shares) {
    double heldShare = hold.map(Hold::share).orElse(0.0);
    double[] cuts = {0, shares.first(), Math.min(1, shares.first() + shares.second()), 1};
    double perSlice = (double) (lot.quantity() - lot.kept()) / slices;
    List<Stream> streams = new ArrayList<>();
    for (Quality quality : Quality.values()) {
      double from = cuts[quality.ordinal()];
      double to = cuts[quality.ordinal() + 1];
      for (boolean held : new boolean[] {false, true}) {
        double share = held ? heldShare : 1 - heldShare;
        if (to > from && share > 0) {
          double[] weights = parts(from, to, held, share);
          for (int i = 0; i < weights.length; i++) {
            weights[i] *= perSlice;
          }
          streams.add(stream(quality, held ? holdFrom : 0, weights));
        }
      }
    }
    return streams(streams);
  }

  /** Streams as they are listed, firsts before seconds. */
  Streams streams(List<Stream> listed) {
    return Streams.of(listed, slices, trunks.grades.length);
  }

  /** What part of each slice is of a quality and is held, or is free. */
  private double[] parts(double from, double to, boolean held, double share) {
    double[] parts = new double[slices];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = lattice.shareBelow(to, i) - lattice.shareBelow(from, i);
    }
    if (hold.filter(each -> each.which() == Hold.Which.BEST).isEmpty()) {
      for (int i = 0; i < parts.length; i++) {
        parts[i] *= share;
      }
      return parts;
    }
    double left = share * DoubleStream.of(parts).sum();
    for (int n = 0; n < parts.length; n++) {
      // Slices are numbered from the thinnest trunk to the thickest.
      int slice = held ? parts.length - 1 - n : n;
      parts[slice] = Math.max(0, Math.min(parts[slice], left));
      left -= parts[slice];
    }
    return parts;
  }

  /** A stream of plants of a quality that are sold from a grade upwards. */
  Stream stream(Quality quality, int sellsFrom, double[] weights) {
    boolean mayGrade = quality != Quality.THIRD || qualities.get(quality).priceShare() > 0;
    return new Stream(quality, mayGrade, sellsFrom, weights);
  }

  /** Standard normal scores of the slices' trunks. */
  double[] trunkScores() {
    return IntStream.range(0, slices).mapToDouble(lattice::trunkScore).toArray();
  }
}
