package growingon.report.figures;

import growingon.nursery.time.Horizon;
import growingon.project.lot.LotHistory;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.whole.WholeLot;
import growingon.whole.WholeSale;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What can be sold in the first full season, by species and grade. */
public final class SeasonAhead {
  /** So many plants of a species and grade, or of a grade. */
  public record Count(String name, Plants plants) {
    public String text(Phrases say) {
      return say.whole(plants.whole()) + " " + name;
    }
  }

  private final SeasonFigures figures;
  private final int from;
  private final int to;
  private final Map<String, Plants> plants = new LinkedHashMap<>();
  private final Map<String, Double> money = new LinkedHashMap<>();

  public SeasonAhead(Context context) {
    Horizon horizon = context.accounts().projection().horizon();
    this.figures = context.seasons();
    this.from = horizon.seasonFirst(figures.next());
    this.to = horizon.seasonLast(figures.next());
    context.whole().lots().forEach(this::add);
  }

  private void add(WholeLot lot) {
    for (WholeSale sale : lot.sales()) {
      if (sale.month() >= from && sale.month() <= to) {
        String name = name(lot.history(), sale.grade());
        plants.merge(name, Plants.of(sale.units(), sale.whole()), Plants::plus);
        money.merge(name, sale.money(), Double::sum);
      }
    }
    for (int i = 0; i < lot.seasons().size(); i++) {
      SeasonEnd end = new SeasonEnd(lot, i);
      for (int grade = 0; end.season() == figures.next() && grade < end.grades(); grade++) {
        plants.merge(name(lot.history(), grade), end.ready(grade), Plants::plus);
      }
    }
  }

  private static String name(LotHistory lot, int grade) {
    return lot.lot().species() + " " + lot.grades().get(grade).name();
  }

  /** Saleable plants by species and grade, most first. */
  public List<Count> kinds() {
    return counts(plants);
  }

  /** Saleable plants by grade, most first. */
  public List<Count> grades() {
    Map<String, Plants> byGrade = new LinkedHashMap<>();
    List<Grades.Named> all = figures.grades().all();
    for (int grade = 0; grade < all.size(); grade++) {
      byGrade.put(all.get(grade).label(), figures.saleable(grade, figures.next()));
    }
    return counts(byGrade);
  }

  private static List<Count> counts(Map<String, Plants> plants) {
    return plants.entrySet().stream()
        .map(each -> new Count(each.getKey(), each.getValue()))
        .filter(count -> count.plants().whole() > 0)
        .sorted(Comparator.comparingLong((Count count) -> -count.plants().whole()))
        .toList();
  }

  /** Species and grades sold, what brings most money first. */
  public List<String> kindsByMoney() {
    return money.entrySet().stream()
        .filter(each -> each.getValue() > 0)
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
        .map(Map.Entry::getKey)
        .toList();
  }
}
