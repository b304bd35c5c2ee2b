package growingon.money;

import growingon.nursery.Scenario;
import growingon.project.Programme;
import growingon.project.SideBySide;
import growingon.project.lot.Luck;
import growingon.project.need.Stores;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Runs programmes of the lots of one grade ladder and gives what those lots alone cause: the rest
 * is left to {@link AllLadders}, which adds the ladders of a plan up. Used by one thread at a time.
 */
public final class LadderRuns {
  private final Prices prices;
  private final SumLayout layout;
  private final Stores stores;
  private final double[] sums;

  /**
   * Of lots of a scenario's nursery and plan.
   *
   * @param prices those of the nursery over the plan
   */
  public LadderRuns(Scenario scenario, Prices prices) {
    this.prices = prices;
    this.layout = new SumLayout(scenario, prices.grades(), scenario.plan().seasons(), false);
    this.stores = new Stores(scenario.nursery(), layout.months);
    this.sums = new double[layout.size];
  }

  /** Runs a programme once. */
  public LadderSums of(Programme programme, Luck luck) {
    Arrays.fill(sums, 0);
    LotTally[] lots = new LotTally[programme.scenario().lots().size()];
    programme.run(luck, lot -> lots[lot] = note(programme, lot, luck, sums));
    return sums(lots);
  }

  /**
   * Runs a programme and others that differ from it in some lots once on the same luck: the same as
   * one after the other, in less time.
   *
   * @return the first one's sums and then those of the others
   */
  public List<LadderSums> of(Programme first, List<Programme> others, Luck luck) {
    List<Programme> all = new ArrayList<>(List.of(first));
    all.addAll(others);
    List<LadderSums> found = new ArrayList<>();
    for (SideBySide.Told told :
        first.runBeside(others, luck, (number, lot) -> note(all.get(number), lot, luck, null))) {
      LotTally[] lots = new LotTally[told.lots().length];
      for (int lot = 0; lot < lots.length; lot++) {
        lots[lot] = (LotTally) told.lots()[lot];
      }
      addUp(lots, told.turns(), sums);
      found.add(sums(lots));
    }
    return found;
  }

  private LotTally note(Programme programme, int lot, Luck luck, double[] to) {
    return new LotTally(programme.scenario(), lot, prices, layout, luck, to);
  }

  /**
   * Adds up what lots have kept, in the order in which their parts come; forgets what was there.
   */
  static void addUp(LotTally[] lots, int[] turns, double[] sums) {
    Arrays.fill(sums, 0);
    int[] next = new int[lots.length];
    for (int turn : turns) {
      if (turn == SideBySide.EVERY_LOT) {
        for (int lot = 0; lot < lots.length; lot++) {
          lots[lot].addPart(next[lot]++, sums);
        }
      } else {
        lots[turn].addPart(next[turn]++, sums);
      }
    }
  }

  private LadderSums sums(LotTally[] lots) {
    double worth = 0;
    for (LotTally lot : lots) {
      worth += lot.endStock(layout.seasons - 1).worth(layout.horizonValue);
    }
    double[][] needed = new double[layout.places + 1][];
    for (int place = 0; place < needed.length; place++) {
      double[] m2 = months(layout.space + place * layout.months);
      needed[place] = Arrays.stream(m2).anyMatch(each -> each > 0) ? m2 : LadderSums.NONE;
    }
    stores.fill(sums, layout.stores);
    return new LadderSums(
        months(layout.flows),
        months(layout.sales),
        months(layout.hours),
        needed,
        stores.movements(),
        worth);
  }

  private double[] months(int from) {
    return Arrays.copyOfRange(sums, from, from + layout.months);
  }
}
