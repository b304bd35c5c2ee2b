package growingon.project.lot;

import growingon.nursery.place.Care;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import java.util.List;
import java.util.Optional;

/** Care of a square metre in use, by kind of place and month; several care rows add up. */
public final class CareRates {
  private static final int NO_PLACE = PlaceKind.values().length;

  private final double[][] minutes = new double[NO_PLACE + 1][12];
  private final double[][] cost = new double[NO_PLACE + 1][12];

  public CareRates(List<Care> rows) {
    for (Care row : rows) {
      for (int kind = 0; kind <= NO_PLACE; kind++) {
        boolean applies = row.kind().isEmpty() || row.kind().get().ordinal() == kind;
        for (int month = 0; applies && month < 12; month++) {
          if (row.months().contains(month + 1)) {
            minutes[kind][month] += row.minutesPerM2();
            cost[kind][month] += row.costPerM2();
          }
        }
      }
    }
  }

  /** Minutes for a square metre in a month (0 = January). */
  public double minutes(int kind, int month) {
    return minutes[kind][month];
  }

  /** Cost of a square metre in a month (0 = January). */
  public double cost(int kind, int month) {
    return cost[kind][month];
  }

  /** The kind of a place, as the tables count kinds; one of its own for no place. */
  static int kind(Optional<Place> place) {
    return place.isPresent() ? place.get().kind().ordinal() : NO_PLACE;
  }
}
