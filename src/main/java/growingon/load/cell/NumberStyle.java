package growingon.load.cell;

/** How numbers are written as text in a file. */
public enum NumberStyle {
  /** Decimal point: CSV with commas, and JSON. */
  POINT,
  /** Decimal comma, or point where it can mean nothing else: CSV with semicolons. */
  COMMA,
  /** Either, where it can mean one thing only: text cells of a workbook. */
  EITHER,
  /** Numbers of plants, wherever they stand: a mark before three digits parts thousands. */
  PLANTS
}
