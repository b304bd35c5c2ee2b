package growingon.report.model;

import growingon.report.text.Plants;

/** What kind of value a column holds; it decides how the value is written. */
public enum Kind {
  /** Text. */
  TEXT,
  /** Text of a value as the grower's files have it; where people read, in the report's marks. */
  VALUE,
  /** Long text that wraps. */
  LONG_TEXT,
  /** {@link java.time.YearMonth}, shown as Mar 2027. */
  MONTH,
  /** Whole number. */
  COUNT,
  /** Plants: a {@link Plants}, shown whole. */
  PLANTS,
  /** Money, whole units of currency shown; cents are kept. */
  MONEY,
  /** Money of one plant or item, two decimals shown. */
  MONEY_EACH,
  /** Share 0 to 1, shown in percent. */
  SHARE,
  /** Litres. */
  LITRES,
  /** Hours. */
  HOURS,
  /** Square metres. */
  SQUARE_METRES,
  /** Kilograms. */
  KG,
  /** Millimetres. */
  MM,
  /** Any other number, one or two decimals as needed. */
  NUMBER,
  /** An empty box to tick or cell to fill by hand. */
  TO_FILL;

  /** Whether it is words, as wide as they need. */
  public boolean isText() {
    return this == TEXT || this == VALUE || this == LONG_TEXT;
  }
}
