package growingon.load.row;

/** The star that stands for "every". */
public final class Wildcard {
  private static final String STAR = "*";

  private Wildcard() {}

  /** Whether the cell holds the star; if so it is listed among the values used. */
  public static boolean isIn(Row row, Heading<?> heading) {
    return row.cell(heading).shown().equals(STAR) && row.find(heading.as(As.TEXT)).isPresent();
  }
}
