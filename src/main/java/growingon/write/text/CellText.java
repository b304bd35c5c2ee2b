package growingon.write.text;

import growingon.nursery.number.Writing;
import growingon.problem.MarkedText;
import growingon.report.model.Kind;

/** The text of a cell for people; other programs are given a cell's text as it is. */
public final class CellText {
  private CellText() {}

  /** Empty for a cell that holds no text. */
  public static String of(Object cell, Kind kind, Writing writing) {
    if (cell instanceof MarkedText said) {
      return writing.told(said);
    }
    String text = cell instanceof String typed ? typed : "";
    return kind == Kind.VALUE ? writing.value(text) : text;
  }
}
