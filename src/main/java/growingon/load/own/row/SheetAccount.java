package growingon.load.own.row;

/**
 * What became of every filled row of a list.
 *
 * @param read yes, or no and why
 * @param rows filled rows; the others add up to them
 */
public record SheetAccount(
    String file,
    String sheet,
    String read,
    int rows,
    int titles,
    int headings,
    int headingsAgain,
    int lots,
    int groups,
    int totals,
    int notes,
    int struckOut,
    int gone,
    int asked,
    int notRead) {
  public SheetAccount {
    int sum =
        titles
            + headings
            + headingsAgain
            + lots
            + groups
            + totals
            + notes
            + struckOut
            + gone
            + asked
            + notRead;
    if (sum != rows) {
      throw new IllegalStateException(
          "%s, %s: %d of %d rows are accounted for".formatted(file, sheet, sum, rows));
    }
  }
}
