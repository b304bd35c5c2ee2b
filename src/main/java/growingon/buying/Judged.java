package growingon.buying;

/**
 * What a move is worth.
 *
 * @param gain value gained, as far as it was looked at; an estimate where {@code isDropped}
 * @param fits whether what it leads to keeps within the limits
 * @param isDropped whether it was given up before all draws were made
 */
record Judged(double gain, boolean fits, boolean isDropped) {
  boolean helps(double least) {
    return fits && !isDropped && gain > least;
  }
}
