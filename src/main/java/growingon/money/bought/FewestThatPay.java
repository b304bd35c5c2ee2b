package growingon.money.bought;

import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;

/**
 * Finds the least whole number from 0 to 100 at which something that rises with it does not lose.
 * Each value is a run of the whole plan, so they are few: values lie nearly on a line, and the next
 * guess is where the line through the nearest two crosses nil. If three guesses have not halved the
 * numbers left, the middle of them is next.
 */
final class FewestThatPay {
  private static final int ALL = 100;
  private static final int PATIENCE = 3;
  private static final double ROUNDING = 1e-9;

  private record Point(double at, double value) {}

  private final IntToDoubleFunction value;
  private final Point known;
  private int fails = -1;
  private int pays = ALL;
  private Point nearest;
  private Point other;

  /**
   * A search.
   *
   * @param value value at a whole number, rising
   * @param known a number at which the value is known, 0 to 100, whole or not
   * @param knownValue the value there
   */
  FewestThatPay(IntToDoubleFunction value, double known, double knownValue) {
    this.value = value;
    this.known = new Point(known, knownValue);
  }

  /** The least number; empty if it loses at 100 too. */
  OptionalInt find() {
    boolean knowsAll = known.at() >= ALL - ROUNDING;
    nearest = knowsAll ? known : new Point(ALL, value.applyAsDouble(ALL));
    if (nearest.value() < 0) {
      return OptionalInt.empty();
    }
    if (!knowsAll) {
      learn(known);
    }
    int left = pays - fails;
    for (int guess = 1; pays - fails > 1; guess++) {
      boolean slow = guess % PATIENCE == 0 && pays - fails > left / 2;
      left = guess % PATIENCE == 0 ? pays - fails : left;
      int number = slow || other == null ? (pays + fails) / 2 : onTheLine();
      learn(new Point(number, value.applyAsDouble(number)));
    }
    return OptionalInt.of(pays);
  }

  /** Where the line crosses nil, rounded up, but within what is not known yet. */
  private int onTheLine() {
    double rise = (nearest.value() - other.value()) / (nearest.at() - other.at());
    double nil = rise > 0 ? nearest.at() - nearest.value() / rise : (pays + fails) / 2.0;
    return (int) Math.max(fails + 1, Math.min(pays - 1, Math.ceil(nil)));
  }

  private void learn(Point point) {
    if (point.value() < 0) {
      other = point;
      fails = Math.max(fails, (int) Math.floor(point.at() + ROUNDING));
    } else {
      other = other == null || other.value() >= 0 ? nearest : other;
      nearest = point;
      pays = Math.min(pays, (int) Math.ceil(point.at() - ROUNDING));
    }
  }
}
