package growingon.load.own.text;

import java.util.List;
import java.util.Objects;

/**
 * What a heading stands for.
 *
 * @param ours column of the stock table or one of the list's own, "?" where it is open
 * @param unit mm, cm, m, in, ft, litres, gallons, %, count, money, money incl VAT, ask; empty if
 *     none
 * @param rank of two columns that claim one of ours the lower wins
 * @param choices what it may be where it is open or in doubt, in the order in which it is offered
 */
public record Meaning(String ours, String unit, int rank, List<String> choices) {
  public static final String OPEN = "?";
  public static final String NOT_READ = "not read";

  public Meaning {
    Objects.requireNonNull(ours);
    Objects.requireNonNull(unit);
    choices = List.copyOf(choices);
  }

  public static Meaning of(String ours, String unit) {
    return new Meaning(ours, unit, 1, List.of());
  }

  public boolean isOpen() {
    return ours.equals(OPEN);
  }

  /** Whether it is taken as ours, but may be something else. */
  public boolean isInDoubt() {
    return !isOpen() && !choices.isEmpty();
  }

  /** What it is, or may be where it is open. */
  public List<String> possible() {
    return isOpen() ? choices : List.of(ours);
  }

  public Meaning inUnit(String other) {
    return new Meaning(ours, other, rank, choices);
  }

  /** One of the choices; its unit is the usual one of that column. */
  Meaning as(String chosen) {
    return new Meaning(chosen, Units.usualOf(chosen, unit), rank, List.of());
  }

  /** Whether it is a place, or where in a place. */
  public boolean isPlace() {
    return ours.equals("place") || ours.equals("place detail");
  }
}
