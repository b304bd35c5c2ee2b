package growingon.write.folder;

/** How far the writing of a report has come. */
public enum Stage {
  /** The new report is whole, beside its folder. */
  WRITTEN,
  /** The report before is laid aside: the first of two renames. */
  LAID_ASIDE,
  /** What is not the program's has gone over to the new report. */
  CARRIED_OVER,
  /** The new report is in its place: the second rename. */
  IN_PLACE,
  /** What the program had made of the report before is deleted. */
  CLEARED
}
