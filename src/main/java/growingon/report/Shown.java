package growingon.report;

/**
 * A number that is shown otherwise than it is: money that stands with its whole plants, litres and
 * metres that add up as they are shown.
 *
 * @param exact full precision; written to figures.json
 * @param shown as shown
 */
public record Shown(double exact, double shown) {
  static final Shown NOTHING = new Shown(0, 0);

  Shown plus(Shown other) {
    return plus(other.exact, other.shown);
  }

  Shown plus(double moreExact, double moreShown) {
    return new Shown(exact + moreExact, shown + moreShown);
  }
}
