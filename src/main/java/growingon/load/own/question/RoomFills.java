package growingon.load.own.question;

import growingon.load.own.lot.OwnLot;
import growingon.load.own.usual.UsualNursery;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is asked of room and hours. */
final class RoomFills {
  private static final String ROOM = ToFill.ROOM;
  private static final int FIRST_PLACES = 7;

  private RoomFills() {}

  /** The rows in order: the places with most plants, hours, cash, the ground, other places. */
  static List<Fill> of(UsualNursery usual, String currency) {
    List<Fill> places = places(usual);
    int first = Math.min(FIRST_PLACES, places.size());
    List<Fill> fills = new ArrayList<>(places.subList(0, first));
    fills.add(
        ofSettings(
            "40",
            "How many hours of work are there in a week?",
            "hours",
            "what can be done",
            "hours a week"));
    fills.add(
        ofSettings(
            "0", "How much cash is there now?", currency, "the lowest cash", "opening cash"));
    inGround(usual, fills);
    fills.addAll(places.subList(first, places.size()));
    return fills;
  }

  private static Fill ofSettings(
      String its, String question, String unit, String moves, String setting) {
    return new Fill(its, question, unit, moves, "settings", setting, "value", ROOM, false);
  }

  private static List<Fill> places(UsualNursery usual) {
    Map<String, Long> plants = new LinkedHashMap<>();
    for (OwnLot lot : usual.lots()) {
      plants.merge(lot.place(), (long) lot.quantity().orElse(0), Long::sum);
    }
    return usual.tables().get("places").stream()
        .sorted(
            Comparator.comparing(
                (Map<String, String> row) -> -plants.getOrDefault(row.get("place"), 0L)))
        .map(row -> size(row, plants.getOrDefault(row.get("place"), 0L)))
        .toList();
  }

  private static Fill size(Map<String, String> place, long plants) {
    return new Fill(
        place.get("square metres"),
        "How large is %s, a %s?".formatted(place.get("place"), place.get("kind")),
        "m²",
        Fill.plants(plants),
        "places",
        place.get("place"),
        "square metres",
        ROOM,
        false);
  }

  private static void inGround(UsualNursery usual, List<Fill> fills) {
    long plants =
        usual.lots().stream()
            .filter(lot -> lot.potLitres().isEmpty())
            .mapToLong(lot -> lot.quantity().orElse(0))
            .sum();
    if (plants > 0) {
      fills.add(
          new Fill(
                  "by size",
                  "Are the trees in the ground to be lifted and potted? type the route: lift and pot, as it stands, in the bed",
                  "",
                  Fill.plants(plants),
                  "stock",
                  "no pot",
                  "route",
                  ROOM,
                  false)
              .choosing(List.of("lift and pot", "as it stands", "in the bed")));
    }
  }
}
