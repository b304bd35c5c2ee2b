package growingon.money.bought;

import growingon.money.GradeNumbers;
import growingon.money.ListPrices;
import growingon.money.Tally;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Quality;
import growingon.nursery.time.Horizon;
import growingon.project.Programme;
import growingon.project.history.GradedPlants;
import growingon.project.lot.Luck;
import java.util.ArrayList;
import java.util.List;

/**
 * A plan run on beyond its end, to see when its bought lots pay. Nothing looks ahead in a run, so
 * one long run holds every shorter one. Later seasons know of no purchase after the plan's own, so
 * they have less competition than there will be.
 */
final class Beyond {
  private static final int MORE_SEASONS = 10;

  private final Scenario plan;
  private Tally with;

  Beyond(Scenario plan) {
    this.plan = plan;
  }

  /** What a bought lot brings if the plan ends with this or that season. */
  Ending ending(Lot lot) {
    Tally longest = with();
    Tally without = run(longest.programme().without(lot.name()));
    double[] gains = longest.gainsByEnding(without);
    int index = plan.lots().indexOf(lot);
    List<Ending.BySeason> seasons = new ArrayList<>();
    for (int season = 0; season < gains.length; season++) {
      seasons.add(bySeason(lot, gains[season], longest.standing(index, season)));
    }
    return Ending.of(lot, plan.plan().seasons() - 1, seasons);
  }

  private synchronized Tally with() {
    if (with == null) {
      int seasons = Math.min(plan.plan().seasons() + MORE_SEASONS, Horizon.MOST_SEASONS);
      with = run(Programme.of(plan.withPlan(plan.plan().withSeasons(seasons))));
    }
    return with;
  }

  private Tally run(Programme programme) {
    Tally tally = new Tally(programme, new GradeNumbers(plan.nursery()));
    tally.run(Luck.NONE);
    return tally;
  }

  private Ending.BySeason bySeason(Lot lot, double gain, GradedPlants standing) {
    double[][] prices = new ListPrices(plan.nursery()).gross(lot);
    double plants = 0;
    double saleable = 0;
    double graded = 0;
    double worth = 0;
    for (Quality quality : Quality.values()) {
      boolean priced = plan.nursery().qualities().get(quality).priceShare() > 0;
      for (int grade = GradedPlants.NO_GRADE; grade < standing.grades(); grade++) {
        double there = standing.of(quality, grade);
        plants += there;
        saleable += priced ? there : 0;
        graded += grade >= 0 && priced ? there : 0;
        worth += there * prices[quality.ordinal()][grade + 1];
      }
    }
    return new Ending.BySeason(gain, plants, saleable, graded, worth);
  }
}
