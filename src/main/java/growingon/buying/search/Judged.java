package growingon.buying.search;

import growingon.buying.limit.Change;

/**
 * What a move is worth.
 *
 * @param gain value gained, less the price of what it is over limits where they have one; an
 *     estimate where {@code isDropped}
 * @param fits whether what it leads to keeps within the limits
 * @param isDropped whether it was given up before all draws were made
 * @param change what it changes
 */
record Judged(double gain, boolean fits, boolean isDropped, Change change) {
  boolean helps(double least) {
    return fits && !isDropped && gain > least;
  }
}
