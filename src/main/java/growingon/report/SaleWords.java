package growingon.report;

import growingon.project.LotHistory;
import growingon.project.Missed;
import growingon.project.Sale;
import growingon.project.SeasonStock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** What is said about what can be sold and what it brings. */
final class SaleWords {
  private static final int NAMED = 5;
  private static final int SEASONS_NAMED = 10;

  private final Context context;
  private final SeasonFigures figures;
  private final String currency;
  private final int next;

  SaleWords(Context context, SeasonFigures figures) {
    this.context = context;
    this.figures = figures;
    this.currency = context.inputs().scenario().nursery().settings().currency();
    this.next = figures.next();
  }

  /** What is saleable in the first full season. */
  String saleable() {
    long plants = Math.round(figures.saleable(next));
    if (plants == 0) {
      return seasonAhead() + " no plant is ready to be sold.";
    }
    String can = Phrases.plants(plants) + " can be sold: " + named(kinds(), NAMED) + ".";
    return seasonAhead() + " " + can + " " + soldOfThem(plants);
  }

  private String seasonAhead() {
    String which = figures.isFull(next) ? "first full season" : "only season";
    return "In %s, the %s,".formatted(figures.label(next), which);
  }

  private String soldOfThem(long plants) {
    long sold = Math.round(figures.sold(next));
    String money = Phrases.money(currency, figures.money(next));
    if (sold == 0) {
      return "The plan sells none of them: the demand table asks for none.";
    }
    return sold == plants
        ? "The plan sells them all, for " + money + "."
        : "The plan sells " + Labels.whole(sold) + " of them, for " + money + ".";
  }

  /** Expected sales by season. */
  String bySeason() {
    if (context.inputs().scenario().nursery().demand().isEmpty()) {
      return "No sales are expected: the nursery has no demand table.";
    }
    double sum = IntStream.range(0, figures.seasons()).mapToDouble(figures::money).sum();
    String seasons = Phrases.list(seasonSales(), SEASONS_NAMED, "seasons");
    String all = figures.seasons() == 1 ? "" : "; in all " + Phrases.money(currency, sum);
    return "Sales expected: %s%s, without VAT.%s".formatted(seasons, all, missed());
  }

  private List<String> seasonSales() {
    return IntStream.range(0, figures.seasons())
        .mapToObj(s -> figures.label(s) + " " + Phrases.money(currency, figures.money(s)))
        .toList();
  }

  private String missed() {
    double missed =
        context.accounts().projection().missed().stream().mapToDouble(Missed::units).sum();
    return Math.round(missed) == 0
        ? ""
        : " The demand table asks for " + Phrases.plants(missed) + " more than are ready in time.";
  }

  /** The lines for the terminal. */
  List<String> headlines() {
    List<String> lines = new ArrayList<>();
    String season = figures.label(next);
    if (Math.round(figures.saleable(next)) == 0) {
      lines.add("Saleable in " + season + ": nothing.");
    } else {
      String plants = Phrases.plants(figures.saleable(next));
      List<Count> kinds = kinds();
      lines.add(
          Phrases.fitted(
              kinds.size(),
              Headlines.WIDTH,
              most -> "Saleable in %s: %s (%s).".formatted(season, plants, named(kinds, most))));
      lines.add(
          "Sold of them: %s, for %s."
              .formatted(
                  Phrases.plants(figures.sold(next)),
                  Phrases.money(currency, figures.money(next))));
    }
    List<String> sales = seasonSales();
    lines.add(
        Phrases.fitted(
            sales.size(),
            Headlines.WIDTH,
            most -> "Expected sales: " + Phrases.list(sales, most, "seasons") + "."));
    return lines;
  }

  /** The most numerous by name, and how many plants the others are. */
  private static String named(List<Count> kinds, int most) {
    List<String> words = new ArrayList<>(kinds.stream().limit(most).map(Count::text).toList());
    long others = kinds.stream().skip(most).mapToLong(each -> each.plants().whole()).sum();
    if (others > 0) {
      words.add(Phrases.counted(others, "other", "others"));
    }
    return Phrases.list(words);
  }

  /** So many plants of a species and grade. */
  private record Count(String name, Plants plants) {
    String text() {
      return Labels.whole(plants.whole()) + " " + name;
    }
  }

  /** Saleable plants of the first full season by species and grade, most first. */
  private List<Count> kinds() {
    Map<String, Double> sums = new LinkedHashMap<>();
    for (LotHistory lot : context.accounts().projection().lots()) {
      addSaleable(lot, sums);
    }
    double[] exact = sums.values().stream().mapToDouble(Double::doubleValue).toArray();
    List<Plants> whole = WholePlants.round(exact);
    List<String> names = List.copyOf(sums.keySet());
    return IntStream.range(0, exact.length)
        .mapToObj(i -> new Count(names.get(i), whole.get(i)))
        .filter(count -> count.plants().whole() > 0)
        .sorted(Comparator.comparingLong((Count count) -> -count.plants().whole()))
        .toList();
  }

  private void addSaleable(LotHistory lot, Map<String, Double> sums) {
    int from = context.accounts().projection().horizon().seasonFirst(next);
    int to = context.accounts().projection().horizon().seasonLast(next);
    for (Sale sale : lot.sales()) {
      if (sale.month() >= from && sale.month() <= to) {
        sums.merge(name(lot, sale.grade()), sale.units(), Double::sum);
      }
    }
    for (SeasonStock stock : lot.seasons()) {
      for (int grade = 0; stock.season() == next && grade < lot.grades().size(); grade++) {
        for (double[] ready : stock.ready()) {
          if (ready[grade] > 0) {
            sums.merge(name(lot, grade), ready[grade], Double::sum);
          }
        }
      }
    }
  }

  private static String name(LotHistory lot, int grade) {
    return lot.lot().species() + " " + lot.grades().get(grade).name();
  }
}
