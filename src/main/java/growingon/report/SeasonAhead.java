package growingon.report;

import growingon.money.Accounts;
import growingon.project.LotHistory;
import growingon.project.Projection;
import growingon.project.Sale;
import growingon.project.SeasonStock;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** What can be sold in the first full season, by species and grade. */
final class SeasonAhead {
  /** So many plants of a species and grade, or of a grade. */
  record Count(String name, Plants plants) {
    String text() {
      return Labels.whole(plants.whole()) + " " + name;
    }
  }

  private final SeasonFigures figures;
  private final int from;
  private final int to;
  private final Map<String, Double> plants = new LinkedHashMap<>();
  private final Map<String, Double> money = new LinkedHashMap<>();

  SeasonAhead(Accounts accounts, SeasonFigures figures) {
    Projection projection = accounts.projection();
    this.figures = figures;
    this.from = projection.horizon().seasonFirst(figures.next());
    this.to = projection.horizon().seasonLast(figures.next());
    projection.lots().forEach(this::add);
  }

  private void add(LotHistory lot) {
    for (Sale sale : lot.sales()) {
      if (sale.month() >= from && sale.month() <= to) {
        plants.merge(name(lot, sale.grade()), sale.units(), Double::sum);
        money.merge(name(lot, sale.grade()), sale.money(), Double::sum);
      }
    }
    for (SeasonStock stock : lot.seasons()) {
      for (int grade = 0;
          stock.season() == figures.next() && grade < lot.grades().size();
          grade++) {
        addReady(stock, grade, name(lot, grade));
      }
    }
  }

  private void addReady(SeasonStock stock, int grade, String name) {
    for (double[] ready : stock.ready()) {
      if (ready[grade] > 0) {
        plants.merge(name, ready[grade], Double::sum);
      }
    }
  }

  private static String name(LotHistory lot, int grade) {
    return lot.lot().species() + " " + lot.grades().get(grade).name();
  }

  /** Saleable plants by species and grade, most first. */
  List<Count> kinds() {
    double[] exact = plants.values().stream().mapToDouble(Double::doubleValue).toArray();
    return counts(List.copyOf(plants.keySet()), exact);
  }

  /** Saleable plants by grade, most first. */
  List<Count> grades() {
    List<String> names = figures.grades().all().stream().map(Grades.Named::label).toList();
    double[] exact =
        IntStream.range(0, names.size())
            .mapToDouble(grade -> figures.saleable(grade, figures.next()))
            .toArray();
    return counts(names, exact);
  }

  private static List<Count> counts(List<String> names, double[] exact) {
    List<Plants> whole = WholePlants.round(exact);
    return IntStream.range(0, exact.length)
        .mapToObj(i -> new Count(names.get(i), whole.get(i)))
        .filter(count -> count.plants().whole() > 0)
        .sorted(Comparator.comparingLong((Count count) -> -count.plants().whole()))
        .toList();
  }

  /** Species and grades sold, what brings most money first. */
  List<String> kindsByMoney() {
    return money.entrySet().stream()
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
        .map(Map.Entry::getKey)
        .toList();
  }
}
