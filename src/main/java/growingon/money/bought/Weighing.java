package growingon.money.bought;

import growingon.money.CostKind;
import growingon.money.Finance;
import growingon.money.GradeNumbers;
import growingon.money.Tally;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.number.Negligible;
import growingon.nursery.place.Place;
import growingon.project.Programme;
import growingon.project.lot.Luck;
import growingon.project.need.HoursUse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Weighs lots bought within a plan, each against the plan without it, and joins what they gain. */
final class Weighing {
  private final Scenario scenario;
  private final GradeNumbers grades;
  private final Tally with;
  private final Beyond beyond;

  Weighing(Programme programme) {
    this(programme, Optional.empty());
  }

  private Weighing(Programme programme, Optional<Beyond> known) {
    this.scenario = programme.scenario();
    this.grades = new GradeNumbers(scenario.nursery());
    this.with = tally(programme);
    this.beyond = known.orElseGet(() -> new Beyond(scenario));
  }

  private Tally tally(Programme programme) {
    Tally tally = new Tally(programme, grades);
    tally.run(Luck.NONE);
    return tally;
  }

  /** Weighs every lot bought, in the order of the scenario, on all processors. */
  ValueJoin weigh() {
    List<Lot> bought =
        scenario.lots().stream()
            .filter(lot -> lot.purchase().isPresent() && lot.quantity() > 0)
            .toList();
    List<BoughtLot> weighed = bought.parallelStream().map(this::weigh).toList();
    Programme nothing = with.programme();
    for (Lot lot : bought) {
      nothing = nothing.without(lot.name());
    }
    Tally none = bought.isEmpty() ? with : tally(nothing);
    double places = presentValue(with.flowsOfNoLot(true));
    double other = presentValue(with.flowsOfNoLot(false));
    return new ValueJoin(
        weighed,
        presentValue(none.flowsWithHorizonValue()) - places - other,
        places,
        other,
        presentValue(with.flowsWithHorizonValue()));
  }

  private double presentValue(double[] flows) {
    return Finance.presentValue(flows, scenario.nursery().settings().discountRate());
  }

  private BoughtLot.Bridge bridge(Lot lot, double[] flows, double value, Tally without) {
    int index = scenario.lots().indexOf(lot);
    double sum = 0;
    for (double flow : flows) {
      sum += flow;
    }
    double others = 0;
    double[] results = with.lotResults();
    for (int i = 0; i < results.length; i++) {
      others += i == index ? 0 : results[i];
    }
    for (double result : without.lotResults()) {
      others -= result;
    }
    double used = 0;
    for (CostKind kind : CostKind.values()) {
      used += kind.isInPacks() ? with.cost(kind) - without.cost(kind) : 0;
    }
    double labour = with.cost(CostKind.LABOUR) - without.cost(CostKind.LABOUR);
    return new BoughtLot.Bridge(
        value,
        sum - value,
        with.horizonValue() - without.horizonValue(),
        labour * (1 - scenario.nursery().settings().paidShare()),
        with.cost(CostKind.PLACE) - without.cost(CostKind.PLACE),
        used - (with.packsBought() - without.packsBought()),
        others,
        results[index]);
  }

  /** The lot weighed, with what it brings if the plan ends with another season. */
  private BoughtLot weigh(Lot lot) {
    Ending ending = beyond.ending(lot);
    Optional<BoughtLot> later =
        ending.isJudgedLater()
            ? Optional.of(upTo(ending.judgedAt()).weigh(lot, ending, Optional.empty()))
            : Optional.empty();
    return weigh(lot, ending, later);
  }

  /** The same plan to the end of another season. */
  private Weighing upTo(int season) {
    Scenario longer = scenario.withPlan(scenario.plan().withSeasons(season + 1));
    return new Weighing(Programme.of(longer), Optional.of(beyond));
  }

  private BoughtLot weigh(Lot lot, Ending ending, Optional<BoughtLot> later) {
    Tally without = tally(with.programme().without(lot.name()));
    double[] flows = with.gainOver(without);
    double value = Finance.presentValue(flows, scenario.nursery().settings().discountRate());
    return new BoughtLot(
        lot,
        lot.purchase().get().landed(lot.quantity()),
        flows,
        value,
        Finance.ratesOfReturn(flows),
        Finance.payback(flows),
        overflows(without),
        hoursShort(without),
        new Bargaining(lot, with, without, grades, value).bargain(),
        ending,
        later,
        bridge(lot, flows, value, without));
  }

  private double[] hoursShort(Tally without) {
    double[] more = new double[with.hours().length];
    Optional<double[]> available =
        HoursUse.available(scenario.nursery().settings(), scenario.horizon());
    for (int month = 0; month < more.length && available.isPresent(); month++) {
      double hours = available.get()[month];
      double before = Math.max(0, without.hours()[month] - hours);
      more[month] = Math.max(0, Math.max(0, with.hours()[month] - hours) - before);
    }
    return more;
  }

  private List<BoughtLot.Overflow> overflows(Tally without) {
    List<Place> places = List.copyOf(scenario.nursery().places().values());
    List<BoughtLot.Overflow> list = new ArrayList<>();
    for (int place = 0; place <= places.size(); place++) {
      for (int month = 0; month < with.hours().length; month++) {
        boolean isPlace = place < places.size();
        double capacity =
            isPlace ? places.get(place).capacityM2(scenario.horizon().month(month)) : 0;
        double before = Math.max(0, without.space()[place][month] - capacity);
        double more = Math.max(0, with.space()[place][month] - capacity) - before;
        if (!Negligible.is(more)) {
          list.add(
              new BoughtLot.Overflow(
                  isPlace ? Optional.of(places.get(place).name()) : Optional.empty(), month, more));
        }
      }
    }
    return list;
  }
}
