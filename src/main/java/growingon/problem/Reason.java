package growingon.problem;

/** The kind of fault, for grouping and for tests; the sentence carries the particulars. */
public enum Reason {
  /** A file or folder is not there, cannot be opened, or is not what its name says. */
  UNREADABLE,
  /** A needed file, table, heading or value is missing. */
  MISSING,
  /** A name that nothing defines: a heading, key, species, route, pot, place, grade ... */
  UNKNOWN_NAME,
  /** A value that cannot be read as what it should be (number, date, month, word of a list). */
  WRONG_VALUE,
  /** A value that reads well but lies outside what is possible. */
  OUT_OF_RANGE,
  /** The same thing given twice. */
  DUPLICATE,
  /** Two values, each fine by itself, that cannot both be true. */
  CONTRADICTION,
  /** A value was worked out, scaled or assumed. */
  ASSUMED
}
