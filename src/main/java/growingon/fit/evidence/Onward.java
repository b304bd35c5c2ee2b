package growingon.fit.evidence;

import growingon.fit.past.Past;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.species.Species;
import growingon.nursery.time.Horizon;
import growingon.project.Projector;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;

/**
 * What the nursery grows on from, to see what it will have for sale: the grower's own plan where
 * that begins with what was counted last, so that a plan on the proposal has the same figures to
 * the last digit; else the past, with all that is known.
 *
 * @param scenario the nursery and its lots
 * @param facts what is known to have happened since it begins
 * @param season the first full season after the last record
 */
record Onward(Scenario scenario, Facts facts, int season) {
  static Onward of(Past past) {
    Horizon horizon = past.horizon();
    int last = past.lastRecord();
    int season = horizon.season(last) + 1;
    YearMonth begins = horizon.month(horizon.seasonFirst(season));
    Scenario plan = past.records().inputs().scenario();
    if (!isNews(plan, horizon.month(last), begins)) {
      return new Onward(past.scenario(), past.facts(), season);
    }
    Horizon planned = plan.horizon();
    int first = planned.season(planned.offset(begins));
    int seasons = Math.max(planned.seasons(), first + Past.SEASONS_AFTER);
    return new Onward(plan.withPlan(plan.plan().withSeasons(seasons)), Facts.NONE, first);
  }

  /** Whether a plan begins with what was counted after the last record, in time for a season. */
  private static boolean isNews(Scenario plan, YearMonth lastRecord, YearMonth season) {
    YearMonth first = plan.horizon().firstMonth();
    return first.isAfter(lastRecord)
        && !first.isAfter(season)
        && plan.lots().stream().allMatch(lot -> isNews(lot, lastRecord, first));
  }

  private static boolean isNews(Lot lot, YearMonth lastRecord, YearMonth first) {
    boolean isListed = lot.counted().isAfter(lastRecord) && !lot.counted().isAfter(first);
    return lot.purchase().isPresent() || isListed;
  }

  /** How its lots grow on by some assumptions. */
  List<LotHistory> grownBy(Map<String, Species> species) {
    Scenario grown = scenario.in(scenario.nursery().withSpecies(species));
    return Projector.projectKnown(grown, facts).lots();
  }

  Horizon horizon() {
    return scenario.horizon();
  }

  boolean isAsked(int other) {
    return other >= season && other < season + Past.SEASONS_AFTER;
  }
}
