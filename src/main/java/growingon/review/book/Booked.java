package growingon.review.book;

import growingon.nursery.lot.Lot;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What can be learnt from the daybook's book of one lot. Months are offsets from the plan's first
 * month.
 *
 * @param lot the lot
 * @param splitFrom the lot it was split off, if it was
 * @param root the first lot of the line it was split off; itself if it was not
 * @param part share of the root's plants that it is of, 0 to 1
 * @param alive plants alive by all lines
 * @param counts its counts in order of time; those of before it was split off are its parent's
 * @param dead plants of each month that died by a line, or were lost otherwise than by theft
 * @param joined plants of each month that joined it and of whom nobody knows how thick they were
 */
public record Booked(
    Lot lot,
    Optional<String> splitFrom,
    String root,
    double part,
    double alive,
    List<Count> counts,
    Map<Integer, Double> dead,
    Map<Integer, Double> joined) {
  public Booked {
    counts = List.copyOf(counts);
    dead = Map.copyOf(dead);
    joined = Map.copyOf(joined);
  }

  /**
   * One count.
   *
   * @param lot the lot that was counted
   * @param month offset of its month, for whose end it holds
   * @param counted what was counted
   * @param before plants alive just before it, by the lines up to then
   * @param alive plants alive at it, counted or by the lines before
   */
  public record Count(String lot, int month, Counted counted, double before, double alive) {}
}
