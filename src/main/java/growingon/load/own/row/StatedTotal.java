package growingon.load.own.row;

/**
 * A total that a list states, and what its rows add up to.
 *
 * @param why reason of a difference, empty if there is none or it is not known
 */
public record StatedTotal(String sheet, int row, long stated, long read, String why) {
  /** Whether the two are the same. */
  public boolean agrees() {
    return stated == read;
  }
}
