package growingon.fit.growth;

import java.util.Comparator;

/**
 * Plants that one growth speed is fitted for.
 *
 * @param species their species
 * @param condition their growing condition
 */
record Kind(String species, String condition) implements Comparable<Kind> {
  private static final Comparator<Kind> IN_ORDER =
      Comparator.comparing(Kind::species).thenComparing(Kind::condition);

  @Override
  public int compareTo(Kind other) {
    return IN_ORDER.compare(this, other);
  }
}
