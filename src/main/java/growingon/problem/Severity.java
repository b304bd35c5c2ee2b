package growingon.problem;

/** How bad a problem is. */
public enum Severity {
  /** The plan cannot be made; exit code 3. */
  ERROR("error"),
  /** The plan is made, but the user should look. */
  WARNING("warning"),
  /** Something was assumed or worked out; good to know. */
  NOTICE("notice");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  @Override
  public String toString() {
    return word;
  }
}
