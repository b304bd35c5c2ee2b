package growingon.chance;

import growingon.chance.luck.Draws;
import growingon.money.Finance;
import growingon.money.Tally;
import growingon.money.bought.BoughtLot;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.project.Programme;
import growingon.project.lot.Luck;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;

/**
 * Draws a plan many times, with every lot bought and, on the same luck, without each of them, so
 * that what a lot crowds out counts.
 */
final class Drawing {
  /** A lot that is never paid back within the plan. */
  static final int NEVER = Integer.MAX_VALUE;

  private final Scenario scenario;
  private final Scenario longest;
  private final List<BoughtLot> bought;
  private final Samples samples;
  private final Programme with;
  private final List<Programme> without = new ArrayList<>();
  private final Draws draws;
  private final int[] places;

  Drawing(Scenario scenario, List<BoughtLot> bought, Samples samples) {
    this.scenario = scenario;
    this.longest = scenario.withPlan(scenario.plan().withSeasons(endings(scenario, bought)));
    this.bought = bought;
    this.samples = samples;
    this.draws = new Draws(scenario);
    List<String> lots = scenario.lots().stream().map(Lot::name).toList();
    this.places = bought.stream().mapToInt(each -> lots.indexOf(each.lot().name())).toArray();
    this.with = Programme.of(longest);
    bought.forEach(lot -> without.add(with.without(lot.lot().name())));
  }

  /** Seasons to be run: the plan's, or more until every bought lot is judged. */
  static int endings(Scenario scenario, List<BoughtLot> bought) {
    return bought.stream()
        .mapToInt(lot -> lot.ending().judgedAt() + 1)
        .reduce(scenario.plan().seasons(), Math::max);
  }

  /** Draws on so many threads; which thread makes which draw changes no number. */
  void run(int threads, IntConsumer done) {
    Workers.draw(scenario.plan().draws(), threads, this::worker, done);
  }

  /** What one thread draws with: tallies of its own. */
  private IntConsumer worker() {
    Tally tally = tally(with);
    List<Tally> others = without.stream().map(this::tally).toList();
    return draw -> make(draw, tally, others);
  }

  private Tally tally(Programme programme) {
    return new Tally(programme, samples.grades, scenario.plan().seasons());
  }

  private void make(int draw, Tally tally, List<Tally> others) {
    Luck luck = draws.luck(draw);
    if (others.isEmpty()) {
      tally.run(luck);
    } else {
      tally.runBeside(others, luck);
    }
    samples.take(draw, tally);
    for (int i = 0; i < bought.size(); i++) {
      int judgedAt = bought.get(i).ending().judgedAt();
      double[] gains = tally.gainsByEnding(others.get(i));
      Samples.copy(gains, samples.gainsByEnding[i], draw);
      samples.gains[i][draw] = gains[judgedAt];
      samples.endWorths[i][draw] = tally.endWorth(places[i], judgedAt);
      samples.paybacks[i][draw] =
          Finance.payback(tally.gainOver(others.get(i), judgedAt)).orElse(NEVER);
    }
  }
}
