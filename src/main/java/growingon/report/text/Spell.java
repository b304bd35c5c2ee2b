package growingon.report.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * A run of months in which something is short or too much.
 *
 * @param first offset of its first month
 * @param last offset of its last month
 * @param worst offset of its worst month, the first of several
 * @param most how much in the worst month
 * @param sum how much in all its months together
 */
public record Spell(int first, int last, int worst, double most, double sum) {
  /**
   * Every run of months above a value that shows.
   *
   * @param months number of months
   * @param value by month offset
   */
  public static List<Spell> of(int months, IntToDoubleFunction value) {
    List<Spell> spells = new ArrayList<>();
    int month = 0;
    while (month < months) {
      if (value.applyAsDouble(month) > Phrases.NEGLIGIBLE) {
        Spell spell = from(month, months, value);
        spells.add(spell);
        month = spell.last();
      }
      month++;
    }
    return spells;
  }

  private static Spell from(int first, int months, IntToDoubleFunction value) {
    int worst = first;
    int month = first;
    double sum = 0;
    while (month < months && value.applyAsDouble(month) > Phrases.NEGLIGIBLE) {
      worst = value.applyAsDouble(month) > value.applyAsDouble(worst) ? month : worst;
      sum += value.applyAsDouble(month);
      month++;
    }
    return new Spell(first, month - 1, worst, value.applyAsDouble(worst), sum);
  }

  /** Number of months. */
  int months() {
    return last - first + 1;
  }

  /** The worst of several, the first of equals. */
  public static Spell worst(List<Spell> spells) {
    return spells.stream().reduce((a, b) -> b.most() > a.most() ? b : a).orElseThrow();
  }

  /** Months of all spells together. */
  static int months(List<Spell> spells) {
    return spells.stream().mapToInt(Spell::months).sum();
  }
}
