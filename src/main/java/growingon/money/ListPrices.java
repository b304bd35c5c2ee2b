package growingon.money;

import growingon.nursery.Nursery;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Demand;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Quality;
import growingon.project.history.SeasonStock;
import growingon.project.lot.LotHistory;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;

/** List prices: of a species' own demand rows the dearest, else of the rows for any species. */
public final class ListPrices {
  private final Nursery nursery;
  private final Map<Key, OptionalDouble> known = new ConcurrentHashMap<>();

  private record Key(String species, String grade) {}

  /** The prices of a nursery's demand table. */
  public ListPrices(Nursery nursery) {
    this.nursery = nursery;
  }

  /** List price of a first of a grade; empty if no row prices it. */
  public OptionalDouble of(Lot lot, String grade) {
    return known.computeIfAbsent(new Key(lot.species(), grade), key -> find(lot, grade));
  }

  private OptionalDouble find(Lot lot, String grade) {
    OptionalDouble own = dearest(lot, grade, true);
    return own.isPresent() ? own : dearest(lot, grade, false);
  }

  private OptionalDouble dearest(Lot lot, String grade, boolean ownRows) {
    String ladder = nursery.ladderOf(lot).name();
    return nursery.demand().stream()
        .filter(row -> row.ladder().equals(ladder) && row.grade().equals(grade))
        .filter(row -> row.species().isPresent() == ownRows)
        .filter(row -> row.species().map(lot.species()::equals).orElse(true))
        .mapToDouble(Demand::price)
        .max();
  }

  /**
   * What a plant of a lot would fetch by quality and grade, plan currency, less what selling costs.
   *
   * @return [quality][0 = no grade, then grades from the lowest]; 0 where there is no price
   */
  public double[][] net(Lot lot) {
    return prices(lot, 1 - nursery.settings().sellingCostShare());
  }

  /** The same before what selling costs: [quality][0 = no grade, then grades from the lowest]. */
  public double[][] gross(Lot lot) {
    return prices(lot, 1);
  }

  private double[][] prices(Lot lot, double kept) {
    List<Grade> grades = nursery.ladderOf(lot).grades();
    double[][] table = new double[Quality.values().length][grades.size() + 1];
    for (Quality quality : Quality.values()) {
      double share = nursery.qualities().get(quality).priceShare();
      for (int grade = 0; grade < grades.size(); grade++) {
        double price = of(lot, grades.get(grade).name()).orElse(0);
        table[quality.ordinal()][grade + 1] = price * share * kept;
      }
    }
    return table;
  }

  /** Index of the highest grade that has a price; −1 if none has. */
  int topPriced(Lot lot) {
    List<Grade> grades = nursery.ladderOf(lot).grades();
    for (int grade = grades.size() - 1; grade >= 0; grade--) {
      if (of(lot, grades.get(grade).name()).isPresent()) {
        return grade;
      }
    }
    return -1;
  }

  /** Plants standing at the end of the plan that are not kept and have a grade, at list price. */
  double unsold(LotHistory history) {
    List<SeasonStock> seasons = history.seasons();
    if (seasons.isEmpty()) {
      return 0;
    }
    SeasonStock end = seasons.get(seasons.size() - 1);
    double sum = 0;
    for (int grade = 0; grade < history.grades().size(); grade++) {
      double price = of(history.lot(), history.grades().get(grade).name()).orElse(0);
      for (Quality quality : Quality.values()) {
        double share = nursery.qualities().get(quality).priceShare();
        sum += end.standing().of(quality, grade) * price * share;
      }
    }
    return sum;
  }
}
