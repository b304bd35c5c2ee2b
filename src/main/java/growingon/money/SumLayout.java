package growingon.money;

import growingon.nursery.Nursery;
import growingon.nursery.Scenario;
import growingon.nursery.market.HorizonValue;
import growingon.nursery.time.Horizon;
import growingon.project.history.Use;
import growingon.project.need.Stores;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Where each sum over the lots of a run stands in one array, so that what a lot adds can be kept
 * and added up again in another run. Made once for a nursery and plan; it never changes.
 */
final class SumLayout {
  final int months;
  final int seasons;
  final int places;
  final int grades;
  final boolean isWhole;
  final HorizonValue horizonValue;
  final int countedMonths;
  final int[] season;
  final int flows;
  final int sales;
  final int hours;
  final int space;
  final int stores;
  final int costs;
  final int salesBySeason;
  final int unitsBySeason;
  final int stockBySeason;
  final int size;
  private final int back;
  private final Stores items;
  private final Map<String, Integer> placeIndex = new HashMap<>();

  /**
   * A layout.
   *
   * @param counted results of lots count up to the end of so many seasons
   * @param isWhole whether the sums by kind of cost and by season have a place in it too
   */
  SumLayout(Scenario scenario, GradeNumbers numbers, int counted, boolean isWhole) {
    Nursery nursery = scenario.nursery();
    Horizon horizon = scenario.horizon();
    this.isWhole = isWhole;
    this.months = horizon.months();
    this.seasons = horizon.seasons();
    this.grades = numbers.size();
    this.horizonValue = scenario.plan().horizonValue();
    this.countedMonths = horizon.seasonLast(counted - 1) + 1;
    this.season = new int[months];
    for (int month = 0; month < months; month++) {
      season[month] = horizon.season(month);
    }
    nursery.places().keySet().forEach(place -> placeIndex.put(place, placeIndex.size()));
    this.places = placeIndex.size();
    this.items = new Stores(nursery, months);
    int used = items.items().size() * months;
    this.flows = 0;
    this.sales = flows + months;
    this.hours = sales + months;
    this.space = hours + months;
    this.stores = space + (places + 1) * months;
    this.back = stores + used;
    this.costs = back + used;
    this.salesBySeason = costs + CostKind.values().length;
    this.unitsBySeason = salesBySeason + seasons;
    this.stockBySeason = unitsBySeason + grades * seasons;
    this.size = isWhole ? stockBySeason + grades * seasons : costs;
  }

  /** Square metres of a place in a month. */
  int space(Optional<String> place, int month) {
    return space + place.map(placeIndex::get).orElse(places) * months + month;
  }

  /** What is used of an item in a month. */
  int used(Use.Kind kind, String item, int month) {
    return stores + items.number(kind, item) * months + month;
  }

  /** What comes back of an item in a month. */
  int back(Use.Kind kind, String item, int month) {
    return back + items.number(kind, item) * months + month;
  }

  /** Share of a material that comes back. */
  double comesBackShare(String material) {
    return items.comesBackShare(material);
  }
}
