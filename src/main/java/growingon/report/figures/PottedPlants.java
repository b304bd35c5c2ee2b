package growingon.report.figures;

import growingon.project.history.Happening;
import growingon.whole.WholeLot;
import java.util.HashMap;
import java.util.Map;

/** Whole plants potted into pots that were taken from the store: as many pots. */
public final class PottedPlants {
  private final Map<String, int[]> byPot = new HashMap<>();
  private final int months;

  private PottedPlants(int months) {
    this.months = months;
  }

  public static PottedPlants of(Context context) {
    PottedPlants potted = new PottedPlants(context.accounts().projection().horizon().months());
    for (WholeLot lot : context.whole().lots()) {
      for (int i = 0; i < lot.history().happenings().size(); i++) {
        potted.add(lot.history().happenings().get(i), pots(lot, i));
      }
    }
    return potted;
  }

  private void add(Happening done, int pots) {
    if (pots > 0) {
      byPot.computeIfAbsent(done.pot().orElseThrow(), pot -> new int[months])[done.month()] += pots;
    }
  }

  /** Pots that a lot takes over the whole plan. */
  public static int of(WholeLot lot) {
    int sum = 0;
    for (int i = 0; i < lot.history().happenings().size(); i++) {
      sum += pots(lot, i);
    }
    return sum;
  }

  /** Pots of a kind that a lot takes in a month. */
  public static int of(WholeLot lot, int month, String pot) {
    int sum = 0;
    for (int i = 0; i < lot.history().happenings().size(); i++) {
      Happening done = lot.history().happenings().get(i);
      boolean isIts = done.month() == month && done.pot().filter(pot::equals).isPresent();
      sum += isIts ? pots(lot, i) : 0;
    }
    return sum;
  }

  private static int pots(WholeLot lot, int happening) {
    return lot.history().happenings().get(happening).potsUsed() > 0 ? lot.workedOn(happening) : 0;
  }

  /** Pots of a kind taken in each month. */
  int[] byMonth(String pot) {
    return byPot.getOrDefault(pot, new int[months]);
  }
}
