package growingon.load.own.usual;

import growingon.load.own.lot.OwnLot;
import growingon.load.own.size.PotSize;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Grades, prices and units of a nursery that has stated none: the list's own prices by species and
 * the grade that its lots have now, else usual ones times the list's level. Common practice, no
 * source.
 */
final class UsualMarket {
  /** Grades from the lowest. */
  static final String[] GRADES = {"young", "starter", "branched", "specimen"};

  private static final double[] LEAST_MM = {10, 18, 28, 42};
  private static final int[] LEAST_MONTHS = {0, 6, 18, 36};
  private static final double[] PRICES = {12, 45, 95, 210};
  private static final double SEASONS_TO_SELL = 6;

  private final List<OwnLot> lots;
  private final ToDoubleFunction<OwnLot> trunkMm;
  private final java.util.function.Function<OwnLot, String> ladder;

  UsualMarket(
      List<OwnLot> lots,
      ToDoubleFunction<OwnLot> trunkMm,
      java.util.function.Function<OwnLot, String> ladder) {
    this.lots = lots;
    this.trunkMm = trunkMm;
    this.ladder = ladder;
  }

  static List<Map<String, String>> grades(Set<String> ladders) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (String ladder : ladders) {
      for (int i = 0; i < GRADES.length; i++) {
        Map<String, String> row = new LinkedHashMap<>();
        row.put("ladder", ladder);
        row.put("grade", GRADES[i]);
        row.put("rank", Integer.toString(i + 1));
        row.put("least trunk mm", PotSize.plain(LEAST_MM[i]));
        row.put("least training months", Integer.toString(LEAST_MONTHS[i]));
        rows.add(row);
      }
    }
    return rows;
  }

  private int gradeOf(OwnLot lot) {
    double mm = trunkMm.applyAsDouble(lot);
    int grade = -1;
    for (int i = 0; i < GRADES.length; i++) {
      grade = mm >= LEAST_MM[i] ? i : grade;
    }
    return grade;
  }

  /** The middle of the list's prices over the usual ones of the same grades. */
  double level() {
    double[] levels =
        lots.stream()
            .filter(lot -> lot.sellingPrice().orElse(0) > 0)
            .mapToDouble(
                lot -> lot.sellingPrice().getAsDouble() / PRICES[Math.max(0, gradeOf(lot))])
            .sorted()
            .toArray();
    return levels.length == 0 ? 1 : levels[levels.length / 2];
  }

  List<Map<String, String>> demand(Set<String> ladders) {
    List<Map<String, String>> rows = new ArrayList<>();
    Map<String, List<OwnLot>> bySpecies = new LinkedHashMap<>();
    lots.forEach(
        lot -> bySpecies.computeIfAbsent(lot.called(), each -> new ArrayList<>()).add(lot));
    bySpecies.forEach(
        (species, its) -> {
          for (int grade = 0; grade < GRADES.length; grade++) {
            own(species, its, grade, rows);
          }
        });
    double level = level();
    for (String each : ladders) {
      for (int i = 0; i < GRADES.length; i++) {
        int grade = i;
        rows.add(
            row(
                "*",
                each,
                grade,
                PRICES[grade] * level,
                units(lots.stream().filter(lot -> ladder.apply(lot).equals(each)), grade)));
      }
    }
    return rows;
  }

  private void own(String species, List<OwnLot> its, int grade, List<Map<String, String>> rows) {
    List<OwnLot> priced =
        its.stream()
            .filter(lot -> gradeOf(lot) == grade && lot.sellingPrice().orElse(0) > 0)
            .toList();
    OptionalDouble price =
        priced.stream()
            .mapToDouble(lot -> lot.sellingPrice().getAsDouble())
            .sorted()
            .skip(priced.size() / 2)
            .findFirst();
    if (price.isPresent()) {
      rows.add(
          row(
              species,
              ladder.apply(priced.get(0)),
              grade,
              price.getAsDouble(),
              units(its.stream(), grade)));
    }
  }

  /** Plants whose trunk is in the grade or the one below, over six. */
  private long units(Stream<OwnLot> which, int grade) {
    long plants =
        which
            .filter(lot -> gradeOf(lot) == grade || gradeOf(lot) == grade - 1)
            .mapToLong(lot -> lot.quantity().orElse(0))
            .sum();
    return Math.max(1, Math.round(plants / SEASONS_TO_SELL));
  }

  private static Map<String, String> row(
      String species, String ladder, int grade, double price, long units) {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("species", species);
    row.put("ladder", ladder);
    row.put("grade", GRADES[grade]);
    row.put("price", PotSize.plain(Math.rint(price * 100) / 100));
    row.put("units", Long.toString(units));
    return row;
  }
}
