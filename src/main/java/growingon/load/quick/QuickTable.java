package growingon.load.quick;

import growingon.load.cell.Heading;
import growingon.load.source.TableFormat;

/**
 * The table of the quick sheet.
 *
 * <pre>
 * line       a line of {@link QuickLines}
 * fill in    its value; empty lines have their usual value
 * example, usual, meaning, moves   not read
 * </pre>
 */
public final class QuickTable {
  /** Which of the lines it is. */
  public static final Heading<String> LINE = Heading.text("line").means("What is asked");

  /** What was filled in. */
  public static final Heading<String> FILLED =
      Heading.text("fill in")
          .means(
              "Yours: the ten lines at the top are enough. As soon as one is filled in, the question is answered by itself and the other sheets are not read");

  /** Its columns. */
  public static final TableFormat FORMAT =
      TableFormat.of(
          "quick",
          LINE.needed(),
          FILLED.needed(),
          Heading.text("example").means("How it may be filled in"),
          Heading.text("usual").means("What holds if you leave it empty"),
          Heading.text("meaning").means("What it is"),
          Heading.text("moves").means("What the usual value moves"));

  private QuickTable() {}
}
