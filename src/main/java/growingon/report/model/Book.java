package growingon.report.model;

/** The two workbooks of a report. */
public enum Book {
  /** What one acts on: few pages, to print and hand over. */
  PLAN,
  /** All that stands behind it, to look things up in. */
  DETAILS
}
