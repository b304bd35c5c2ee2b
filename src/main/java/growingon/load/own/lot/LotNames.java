package growingon.load.own.lot;

import growingon.load.own.text.Keys;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Names of lots that will be the same next month: the list's own code; else plant and stated
 * arrival; where two are alike the place, then the row.
 */
public final class LotNames {
  private static final int LONGEST = 100;

  private LotNames() {}

  public static List<OwnLot> named(List<OwnLot> lots) {
    List<OwnLot> named = new ArrayList<>(lots.stream().map(lot -> lot.named(first(lot))).toList());
    parted(
        named,
        lot ->
            lot.lot()
                + (lot.lot().equals(first(lot)) && !lot.place().isEmpty()
                    ? " (" + lot.place() + ")"
                    : ""));
    parted(named, lot -> lot.lot() + " row " + lot.row());
    if (named.stream().map(OwnLot::sheet).distinct().count() > 1) {
      parted(named, lot -> lot.lot() + " " + lot.sheet());
    }
    Set<String> seen = new HashSet<>();
    List<OwnLot> unique = new ArrayList<>();
    for (OwnLot lot : named) {
      String name = cut(lot.lot());
      int number = 2;
      while (!seen.add(Keys.of(name))) {
        name = cut(lot.lot()) + " " + number++;
      }
      unique.add(lot.named(name));
    }
    return unique;
  }

  private static String first(OwnLot lot) {
    if (!lot.lot().isEmpty()) {
      return lot.lot();
    }
    String plant = lot.ownName().isEmpty() ? "lot" : lot.ownName();
    return cut(plant + lot.arrived().map(month -> " " + month).orElse(""));
  }

  private static String cut(String name) {
    return name.length() > LONGEST - 8 ? name.substring(0, LONGEST - 8).strip() : name;
  }

  /** Gives those whose names are alike further ones. */
  static void parted(List<OwnLot> lots, Function<OwnLot, String> further) {
    Map<String, Integer> times = new HashMap<>();
    lots.forEach(lot -> times.merge(Keys.of(lot.lot()), 1, Integer::sum));
    for (int i = 0; i < lots.size(); i++) {
      if (times.get(Keys.of(lots.get(i).lot())) > 1) {
        lots.set(i, lots.get(i).named(further.apply(lots.get(i))));
      }
    }
  }
}
