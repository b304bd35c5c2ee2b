package growingon.project;

import growingon.project.history.PartRecorder;
import growingon.project.lot.LotPlan;
import growingon.project.lot.Luck;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Runs a programme and others that differ from it in some lots, side by side on the same luck. Lots
 * meet only in the market. So a lot that another programme has too is run once for both, until the
 * month in which it would sell otherwise there; from then on the other has one of its own. Nothing
 * is worked out otherwise than in a run of its own, so no digit differs from it.
 */
public final class SideBySide {
  /** Stands in {@link Told#turns} for a part of every lot in their order. */
  public static final int EVERY_LOT = -1;

  private final Run run;
  private final Course first;
  private final List<Course> others = new ArrayList<>();

  /** Gives the recorders of the lots that a programme runs itself. */
  @FunctionalInterface
  public interface Recorders {
    /**
     * The recorder of a lot.
     *
     * @param programme number of the programme, 0 for the first
     * @param lot index of the lot in its scenario
     */
    PartRecorder of(int programme, int lot);
  }

  /**
   * What the lots of a programme were told.
   *
   * @param lots recorders, in the order of the scenario; of a lot that several programmes have run
   *     alike to the end they are the same
   * @param turns whose part it is, one part after another: the index of a lot, or {@link
   *     #EVERY_LOT}
   */
  public record Told(PartRecorder[] lots, int[] turns) {}

  SideBySide(Programme first, List<Programme> others, Luck luck, Recorders recorders) {
    this.run = new Run(first, luck);
    this.first = new Course(first, run, lot -> recorders.of(0, lot));
    Map<LotPlan, Integer> known = new IdentityHashMap<>();
    first.lots().forEach(plan -> known.put(plan, known.size()));
    for (int i = 0; i < others.size(); i++) {
      int number = i + 1;
      this.others.add(
          new Course(others.get(i), this.first, known, lot -> recorders.of(number, lot)));
    }
  }

  /** Runs all months. */
  List<Told> run() {
    int months = run.programme().horizon().months();
    int next = 0;
    while (next < months) {
      int sale = first.nextSale(next);
      first.goOn(next, sale);
      for (Course other : others) {
        other.goOn(next, sale);
      }
      sell(sale);
      next = sale + 1;
    }
    List<Told> told = new ArrayList<>();
    told.add(first.end(months - 1));
    for (Course other : others) {
      told.add(other.end(months - 1));
    }
    return told;
  }

  /** All agree before anything leaves: they look at what stands in lots that they share. */
  private void sell(int month) {
    first.agree(month);
    for (Course other : others) {
      other.agree(month);
    }
    first.deliver();
    for (Course other : others) {
      other.deliver();
    }
  }
}
