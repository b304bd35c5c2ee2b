package growingon.report.words;

import growingon.money.Accounts;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.project.need.SpaceUse.PlaceMonth;
import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where plants could stand in a month that do not fit where they are to stand. Nothing is moved
 * there by itself.
 *
 * @param places places that together could take them, or all that have room if even these are not
 *     enough
 * @param missingM2 square metres missing
 */
public record RoomElsewhere(List<PlaceMonth> places, double missingM2) {
  private static final int NAMED = 4;

  private record Other(Place place, PlaceMonth month) {}

  /**
   * Looks for room: in places of the same condition first, then of the same kind, then where most
   * is. Field beds stand in for field beds only, and quarantine for quarantine.
   */
  public static RoomElsewhere of(Place tooSmall, int month, double missingM2, Accounts accounts) {
    List<PlaceMonth> taken = new ArrayList<>();
    double room = 0;
    for (Other other : others(tooSmall, month, accounts)) {
      if (room < missingM2) {
        taken.add(other.month());
        room += other.month().roomM2();
      }
    }
    return new RoomElsewhere(taken, missingM2);
  }

  private static List<Other> others(Place tooSmall, int month, Accounts accounts) {
    return accounts.projection().scenario().nursery().places().values().stream()
        .filter(other -> !other.name().equals(tooSmall.name()))
        .filter(other -> other.kind() == tooSmall.kind() || isForAll(other) && isForAll(tooSmall))
        .map(other -> new Other(other, accounts.space().months(other).get(month)))
        .filter(other -> other.month().roomM2() > Phrases.NEGLIGIBLE)
        .sorted(
            Comparator.comparing(
                    (Other other) -> !other.place().condition().equals(tooSmall.condition()))
                .thenComparing(other -> other.place().kind() != tooSmall.kind())
                .thenComparing(other -> -other.month().roomM2()))
        .toList();
  }

  private static boolean isForAll(Place place) {
    return place.kind() != PlaceKind.QUARANTINE && place.kind() != PlaceKind.FIELD_BED;
  }

  /** Square metres free in these places. */
  public double roomM2() {
    return places.stream().mapToDouble(PlaceMonth::roomM2).sum();
  }

  /** Names of these places, in the order in which they come to mind. */
  public String names() {
    return Phrases.list(places.stream().map(each -> each.place().orElseThrow()).toList());
  }

  /** The end of a sentence. */
  String told(PlaceKind kind, Phrases say) {
    if (places.isEmpty()) {
      String other = kind == PlaceKind.QUARANTINE ? "quarantine place" : "place";
      return "no other " + other + " has room then";
    }
    List<String> free =
        places.stream()
            .map(
                each ->
                    each.place().orElseThrow() + " (" + say.squareMetres(each.roomM2()) + " free)")
            .toList();
    String named = Phrases.list(free, NAMED, "places");
    if (roomM2() < missingM2) {
      return "%s could take %s of it".formatted(named, say.squareMetres(roomM2()));
    }
    return named + (places.size() == 1 ? " could take it" : " together could take it");
  }
}
