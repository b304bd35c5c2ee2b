package growingon.load.own.usual;

import growingon.load.own.lot.OwnLot;
import growingon.load.own.size.PotSize;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Places as their names say what they are, as large as what stands there needs. */
final class UsualPlaces {
  private static final Pattern TUNNEL =
      Pattern.compile("(?i).*(?:tunnel|poly|glass|house|haus|serre|serra|\\bkas\\b|invernadero).*");
  private static final Pattern BENCH = Pattern.compile("(?i).*(?:bench|table|tisch|tablet).*");
  private static final Pattern BED =
      Pattern.compile(
          "(?i).*(?:\\bbed|beet|field|\\brow|feld|quartier|parcelle|campo|veld|\\bblock).*");
  private static final Pattern SIDES =
      Pattern.compile(
          "(\\d+(?:[.,]\\d+)?)\\s*m?\\s*[x×]\\s*(\\d+(?:[.,]\\d+)?)\\s*m(?![\\p{L}\\d])");
  private static final double USABLE = 0.8;
  private static final double SPARE = 0.8;
  private static final double GAP_MM = 80;
  private static final double LARGE_POT = 10;

  private UsualPlaces() {}

  /** Whether a lot stands by its plants a square metre, not by its pot. */
  static double plantsAM2(OwnLot lot, double trunkMm) {
    return trunkMm < 6 ? 40 : trunkMm < 10 ? 20 : trunkMm < 20 ? 9 : trunkMm < 30 ? 3 : 1;
  }

  static List<Map<String, String>> rows(List<OwnLot> lots) {
    Map<String, List<OwnLot>> byPlace = new LinkedHashMap<>();
    for (OwnLot lot : lots) {
      if (!lot.place().isEmpty()) {
        byPlace.computeIfAbsent(lot.place(), each -> new java.util.ArrayList<>()).add(lot);
      }
    }
    return byPlace.entrySet().stream().map(each -> row(each.getKey(), each.getValue())).toList();
  }

  private static Map<String, String> row(String place, List<OwnLot> lots) {
    Map<String, String> row = new LinkedHashMap<>();
    String kind = kind(place, lots);
    row.put("place", place);
    row.put("kind", kind);
    row.put(
        "square metres",
        sides(place)
            .orElseGet(
                () -> Long.toString((long) Math.max(1, Math.ceil(needed(lots) / USABLE / SPARE)))));
    row.put("usable %", "80");
    row.put("condition", kind.equals("field bed") ? "field" : "");
    row.put("minutes a sale", kind.equals("field bed") ? "25" : "3");
    return row;
  }

  /** Square metres of a place whose name says its two sides: Big tunnel (24 x 6 m). */
  private static Optional<String> sides(String place) {
    Matcher sides = SIDES.matcher(place);
    return sides.find()
        ? Optional.of(
            PotSize.plain(
                Double.parseDouble(sides.group(1).replace(',', '.'))
                    * Double.parseDouble(sides.group(2).replace(',', '.'))))
        : Optional.empty();
  }

  static String kind(String place, List<OwnLot> lots) {
    long potted =
        lots.stream()
            .filter(lot -> lot.potLitres().isPresent())
            .mapToLong(lot -> lot.quantity().orElse(0))
            .sum();
    long all = lots.stream().mapToLong(lot -> lot.quantity().orElse(0)).sum();
    if (BENCH.matcher(place).matches()) {
      return "bench";
    }
    if (TUNNEL.matcher(place).matches()) {
      return "tunnel";
    }
    boolean bed = BED.matcher(place).matches() && potted * 2 <= all;
    return bed || potted == 0 ? "field bed" : "standing ground";
  }

  private static double needed(List<OwnLot> lots) {
    double sum = 0;
    for (OwnLot lot : lots) {
      double plants = lot.quantity().orElse(0);
      if (lot.stated().plantsAM2().isPresent()) {
        sum += plants / lot.stated().plantsAM2().getAsDouble();
      } else if (lot.potLitres().isPresent()) {
        double litres = lot.potLitres().getAsDouble();
        double usual = litres < LARGE_POT ? 0 : GAP_MM;
        double side = new PotSize("", litres).topMm() + lot.stated().gapMm().orElse(usual);
        sum += plants * side * side / 1e6;
      } else {
        sum += plants / plantsAM2(lot, UsualNursery.trunkMm(lot));
      }
    }
    return sum;
  }
}
