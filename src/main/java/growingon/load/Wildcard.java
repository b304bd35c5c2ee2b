package growingon.load;

/** The star that stands for "every". */
final class Wildcard {
  private static final String STAR = "*";

  private Wildcard() {}

  /** Whether the cell holds the star; if so it is listed among the values used. */
  static boolean isIn(Row row, String heading) {
    return row.cell(heading).shown().equals(STAR) && row.find(heading, As.TEXT).isPresent();
  }
}
