package growingon.buying.engine;

import growingon.nursery.lot.Lot;
import java.util.List;
import java.util.stream.Collectors;

/** Names of candidates in what is told of a fault. */
final class CandidateNames {
  private CandidateNames() {}

  /**
   * The lots, so that they can be run again: purchases with their number, holds with their share.
   */
  static String of(List<Lot> lots) {
    return lots.stream()
        .map(
            lot ->
                lot.name()
                    + lot.purchase().map(any -> " " + lot.quantity()).orElse("")
                    + lot.hold()
                        .map(
                            hold ->
                                " (%s %s of %s)"
                                    .formatted(hold.share(), hold.which(), hold.grade()))
                        .orElse(""))
        .collect(Collectors.joining(", "));
  }
}
