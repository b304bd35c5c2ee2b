package growingon.project;

import growingon.project.known.LotFacts;
import growingon.project.known.MonthFacts;
import growingon.project.lot.HeadCount;
import java.util.List;

/** Lets what is known to have happened to a lot take the place of what was to be expected. */
final class KnownPast {
  private final LotState lot;
  private final LotFacts facts;
  private final HeadCount heads;
  private final MonthFacts[] months;

  KnownPast(LotState lot, LotFacts facts, HeadCount heads) {
    this.lot = lot;
    this.facts = facts;
    this.heads = heads;
    this.months = facts.monthByMonth();
  }

  private MonthFacts month(int month) {
    return month >= 0 && month < months.length ? months[month] : MonthFacts.NOTHING;
  }

  /** Whether anything is known. */
  boolean isThere() {
    return facts != LotFacts.NONE;
  }

  /** Share of the lot's plants that it is of. */
  double part() {
    return facts.part();
  }

  /** Whether only what is known died or was culled in a month. */
  boolean rules(int month) {
    return month <= facts.goneThrough();
  }

  /** Whether only what is known was sold in a month. */
  boolean rulesSales(int month) {
    return month <= facts.soldThrough();
  }

  /** Takes up a month before the plan; from the last one that is known, what is there counts. */
  void beforeThePlan(int month) {
    if (month == Math.min(facts.goneThrough(), lot.plan.start - 1)) {
      double before = lot.plants.living();
      facts.atStart().ifPresent(lot.plants::countAs);
      heads.diedBefore(before - lot.plants.living());
    }
  }

  /** What came and went after the month's last cull: after its steps. */
  void afterSteps(int month) {
    MonthFacts known = month(month);
    comeAndGo(month, known.changes().subList(known.afterLastCull(), known.changes().size()));
  }

  /** What came and went by what is known of a month up to its last cull: before its steps. */
  void beforeSteps(int month) {
    MonthFacts known = month(month);
    comeAndGo(month, known.changes().subList(0, known.afterLastCull()));
  }

  private void comeAndGo(int month, List<MonthFacts.Change> changes) {
    for (MonthFacts.Change change : changes) {
      switch (change.way()) {
        case CAME -> came(month, change.plants());
        case DIED -> heads.died(month, lot.plants.die(change.plants()));
        case CULLED -> culled(month, change);
        case WENT -> heads.went(month, lot.plants.die(change.plants()));
      }
    }
  }

  private void came(int month, double more) {
    lot.plants.come(more);
    heads.came(month, more);
  }

  private void culled(int month, MonthFacts.Change change) {
    double wanted = change.plants();
    double ofQuality =
        change.quality().map(quality -> lot.plants.cullPlants(quality, wanted)).orElse(0.0);
    double culled = ofQuality + cullWorst(wanted - ofQuality);
    heads.culled(month, culled);
    lot.work.freePots(month, culled);
  }

  /** Culls so many plants, the worst first, and kept ones last. */
  private double cullWorst(double wanted) {
    double saleable = lot.plants.living() - lot.plants.keptLiving();
    double share = saleable > 0 ? Math.max(0, Math.min(1, wanted / saleable)) : 0;
    double culled = lot.plants.cull(share, true);
    return culled + lot.plants.die(Math.max(0, wanted - culled));
  }

  /** What is known to have been sold and used in a month. */
  List<MonthFacts.Leaving> leaving(int month) {
    return month(month).leaving();
  }

  /** Plants that left were alive: what the model took for dead of them is found again. */
  void makeSure(int month, double leaving) {
    double found = leaving - lot.plants.living();
    if (found > 0) {
      came(month, found);
    }
  }

  /** Starts anew from what was counted and measured in a month. */
  void takeCount(int month) {
    month(month).count().ifPresent(count -> takeCount(month, count));
  }

  private void takeCount(int month, MonthFacts.Count count) {
    lot.noteBeforeCount(month);
    double before = lot.plants.living();
    count.living().ifPresent(lot.plants::countAs);
    double more = lot.plants.living() - before;
    if (more > 0) {
      heads.came(month, more);
    } else {
      heads.went(month, -more);
    }
    lot.plants.sortAs(count.qualities());
    boolean measured = count.trunkMm().isPresent() || count.trunkSpread().isPresent();
    if (measured && !lot.isEmpty()) {
      lot.plants.measured(count.trunkMm().orElseGet(lot.plants::meanTrunk), count.trunkSpread());
    }
  }
}
