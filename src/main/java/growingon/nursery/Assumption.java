package growingon.nursery;

import java.util.Objects;
import java.util.Optional;

/**
 * A value the plan used, and where it came from.
 *
 * @param table table or file it belongs to, e.g. {@code species}
 * @param subject the row or thing it is of, e.g. {@code Field maple}; empty for settings
 * @param what heading or key
 * @param value as used
 * @param unit its unit, may be empty
 * @param source file, sheet and row it was read from, "default", "usual" with its row, or "library"
 *     with its sources
 * @param grounds what a value of the library of species rests on; empty for any other
 */
public record Assumption(
    String table,
    String subject,
    String what,
    String value,
    String unit,
    String source,
    Optional<Grounds> grounds) {
  /** What the source of such a value begins with that was laid out around a list. */
  public static final String USUAL = "usual";

  public Assumption {
    Objects.requireNonNull(table);
    Objects.requireNonNull(subject);
    Objects.requireNonNull(what);
    Objects.requireNonNull(value);
    Objects.requireNonNull(unit);
    Objects.requireNonNull(source);
    Objects.requireNonNull(grounds);
  }

  /** Whether it was laid out around a list of the grower's own, and is as it was. */
  public boolean isUsual() {
    return source.startsWith(USUAL);
  }

  /** A value that was typed, or a default. */
  public Assumption(
      String table, String subject, String what, String value, String unit, String source) {
    this(table, subject, what, value, unit, source, Optional.empty());
  }

  /**
   * What a value of the library rests on.
   *
   * @param range where it lies in 8 of 10 nurseries, such as 3.5 to 12.8; may be empty
   * @param basis such as measured, or common practice; may be empty
   */
  public record Grounds(String range, String basis) {
    public Grounds {
      Objects.requireNonNull(range);
      Objects.requireNonNull(basis);
    }
  }
}
