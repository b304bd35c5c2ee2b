package growingon.nursery;

import java.util.Objects;

/**
 * A value the plan used, and where it came from.
 *
 * @param table table or file it belongs to, e.g. {@code species}
 * @param subject the row or thing it is of, e.g. {@code Field maple}; empty for settings
 * @param what heading or key
 * @param value as used
 * @param unit its unit, may be empty
 * @param source file, sheet and row it was read from, or "default"
 */
public record Assumption(
    String table, String subject, String what, String value, String unit, String source) {
  public Assumption {
    Objects.requireNonNull(table);
    Objects.requireNonNull(subject);
    Objects.requireNonNull(what);
    Objects.requireNonNull(value);
    Objects.requireNonNull(unit);
    Objects.requireNonNull(source);
  }
}
