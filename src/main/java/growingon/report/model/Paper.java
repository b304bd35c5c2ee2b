package growingon.report.model;

/** The paper that a sheet is printed on. */
public enum Paper {
  /** Usual. */
  A4,
  /** For the wall. */
  A3
}
