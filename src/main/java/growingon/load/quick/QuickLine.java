package growingon.load.quick;

/**
 * A line of the quick sheet.
 *
 * @param name as it stands in the sheet
 * @param example as it may be filled in; empty for a line with a usual value
 * @param usual the value that holds if the line is empty, as typed; empty if there is none or if it
 *     depends on another line
 * @param meaning what it is
 * @param moves what a usual value moves; empty for a line that has none
 */
public record QuickLine(String name, String example, String usual, String meaning, String moves) {
  static QuickLine asked(String name, String example, String meaning) {
    return new QuickLine(name, example, "", meaning, "");
  }

  static QuickLine usual(String name, String usual, String meaning, String moves) {
    return new QuickLine(name, "", usual, meaning, moves);
  }

  /** Whether the grower is asked for it: one of the ten, or the eleventh. */
  public boolean isAsked() {
    return moves.isEmpty();
  }
}
