package growingon.report.text;

/**
 * A number that is shown otherwise than it is: money that stands with its whole plants, litres and
 * metres that add up as they are shown.
 *
 * @param exact full precision; written to figures.json
 * @param shown as shown
 */
public record Shown(double exact, double shown) {
  public static final Shown NOTHING = new Shown(0, 0);

  public Shown plus(Shown other) {
    return plus(other.exact, other.shown);
  }

  public Shown plus(double moreExact, double moreShown) {
    return new Shown(exact + moreExact, shown + moreShown);
  }
}
