package growingon.load.own.usual;

import growingon.load.own.lot.OwnLot;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * How a nursery usually grows on: which route a lot is on, and the steps of each route. Common
 * practice, no source.
 */
final class UsualRoutes {
  private static final String YEARS_IN_A_POT = "36 months after ";
  private static final double LARGE_POT = 10;
  private static final double THICK_MM = 20;
  private static final int A_BED_OF = 250;
  private static final int MONTHS_SETTLED = 12;

  private UsualRoutes() {}

  /** The route of a lot. */
  static String of(OwnLot lot, double trunkMm, boolean evergreen, int monthsStood) {
    return base(lot, trunkMm, monthsStood) + (evergreen ? ", evergreen" : "");
  }

  /** The route of what comes without a pot to be potted. */
  static String lifted(boolean evergreen) {
    return "lift and pot" + (evergreen ? ", evergreen" : "");
  }

  private static String base(OwnLot lot, double trunkMm, int monthsStood) {
    if (lot.potLitres().isEmpty()) {
      boolean bed = lot.quantity().orElse(0) > A_BED_OF;
      return trunkMm >= THICK_MM ? "as it stands" : bed ? "in the bed" : "lift and pot";
    }
    double litres = lot.potLitres().getAsDouble();
    if (litres >= LARGE_POT || trunkMm >= THICK_MM) {
      return "in training " + lot.pot();
    }
    String when = monthsStood >= MONTHS_SETTLED ? "next spring" : "in two years";
    return litres < 2
        ? "young under 2 litre"
        : (litres <= 5 ? "young 2 to 5 litre " : "young 7.5 litre ") + when;
  }

  /** Whether its lots count as in training. */
  static boolean isTraining(String route) {
    return route.startsWith("in training") || route.startsWith("as it stands");
  }

  /** The steps of the routes that lots are on. */
  static List<Map<String, String>> rows(Set<String> routes, boolean south) {
    List<Map<String, String>> rows = new ArrayList<>();
    routes.forEach(route -> rows.addAll(steps(route)));
    if (south) {
      rows.forEach(row -> row.computeIfPresent("when", (key, when) -> southern(when)));
    }
    return rows;
  }

  /** South of the equator the same work falls half a year later. */
  private static String southern(String when) {
    for (Month month : Month.values()) {
      String name = month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
      if (when.contains(name)) {
        return when.replace(name, month.plus(6).getDisplayName(TextStyle.FULL, Locale.ENGLISH));
      }
    }
    return when;
  }

  private static List<Map<String, String>> steps(String route) {
    String month = route.endsWith(", evergreen") ? "April" : "March";
    String base = route.replace(", evergreen", "");
    List<Map<String, String>> rows = new ArrayList<>();
    if (base.startsWith("young")) {
      young(route, base, month, rows);
    } else if (base.startsWith("in training")) {
      training(route, base.substring("in training ".length()), month, rows);
    } else if (base.equals("lift and pot")) {
      rows.add(
          with(
              pot(route, "lift and pot", month + " once trunk 20", "14", "15 litre", "4"),
              "lifted ball litres",
              "3",
              "sort",
              "yes",
              "training starts",
              "yes"));
      potAgain(route, "lift and pot", rows);
    }
    if (base.equals("in the bed")) {
      rows.add(step(route, "look over", "every year in June", "0.3"));
      return rows;
    }
    if (!base.equals("as it stands")) {
      rows.add(
          with(step(route, "wiring", "every 2 years in February", "15"), "materials", "2 m wire"));
    }
    rows.add(step(route, "summer pruning", "every year in June", "5"));
    return rows;
  }

  private static void young(
      String route, String base, String month, List<Map<String, String>> rows) {
    String soon = base.endsWith("in two years") ? month + " year 2" : month + " once trunk 1";
    String last = "";
    if (base.equals("young under 2 litre")) {
      rows.add(pot(route, "pot up", month + " once trunk 1", "4", "3 litre", "2"));
      last = "pot up";
    }
    if (!base.startsWith("young 7.5")) {
      String when = last.isEmpty() ? soon : "24 months after " + last;
      rows.add(pot(route, "pot on", when, "6", "7.5 litre", "2"));
      last = "pot on";
    }
    String when = last.isEmpty() ? soon : "24 months after " + last;
    rows.add(
        with(pot(route, "reduce and pot", when, "12", "15 litre", "2"), "training starts", "yes"));
    potAgain(route, "reduce and pot", rows);
  }

  /** Roots in a pot are worked on every third year, as those in training are. */
  private static void potAgain(String route, String after, List<Map<String, String>> rows) {
    rows.add(pot(route, "re-pot", YEARS_IN_A_POT + after, "12", "15 litre", "1"));
    rows.add(pot(route, "re-pot again", YEARS_IN_A_POT + "re-pot", "12", "15 litre", "1"));
  }

  private static void training(
      String route, String pot, String month, List<Map<String, String>> rows) {
    rows.add(pot(route, "re-pot", "every 3 years in " + month, "12", pot, "1"));
    boolean small = pot.endsWith(" litre") && Double.parseDouble(pot.replace(" litre", "")) < 30;
    if (small) {
      rows.add(pot(route, "pot on", month + " once trunk 45", "12", "30 litre", "1"));
    }
  }

  private static Map<String, String> step(String route, String step, String when, String minutes) {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("route", route);
    row.put("step", step);
    row.put("when", when);
    row.put("minutes", minutes);
    return row;
  }

  private static Map<String, String> pot(
      String route, String step, String when, String minutes, String pot, String loss) {
    return with(
        step(route, step, when, minutes),
        "pot",
        pot,
        "mix",
        "pot mix",
        "root work",
        "yes",
        "loss %",
        loss,
        "gap mm",
        gap(pot));
  }

  private static String gap(String pot) {
    boolean small =
        pot.endsWith(" litre") && Double.parseDouble(pot.replace(" litre", "")) < LARGE_POT;
    return small ? "0" : "80";
  }

  private static Map<String, String> with(Map<String, String> row, String... more) {
    for (int i = 0; i < more.length; i += 2) {
      row.put(more[i], more[i + 1]);
    }
    return row;
  }
}
