package growingon.project.need;

import growingon.nursery.place.Place;
import growingon.project.Projection;
import growingon.project.history.Stood;
import growingon.project.lot.LotHistory;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Space (m²) and load (kg, kg/m²) by place and month, after the steps of the month: the sums of
 * what lots take there. Nothing is dropped: lots without a place have a line of their own.
 */
public final class SpaceUse {
  private final Map<Optional<String>, List<PlaceMonth>> byPlace;

  /**
   * A place in a month.
   *
   * @param place name; none for lots without a place
   * @param month offset from the first month
   * @param plants plants standing
   * @param neededM2 square metres needed
   * @param capacityM2 square metres usable; 0 while closed and for lots without a place
   * @param kg weight of the plants in pots
   * @param heaviestKgPerM2 load where the heaviest lot stands
   * @param heaviestLot name of that lot, empty if none weighs anything
   */
  public record PlaceMonth(
      Optional<String> place,
      int month,
      double plants,
      double neededM2,
      double capacityM2,
      double kg,
      double heaviestKgPerM2,
      String heaviestLot) {
    /** Square metres by which it does not fit. */
    public double overflowM2() {
      return Math.max(0, neededM2 - capacityM2);
    }

    /** Square metres still free. */
    public double roomM2() {
      return Math.max(0, capacityM2 - neededM2);
    }

    /** Mean load of the area in use, kg per m²; 0 when empty. */
    public double meanKgPerM2() {
      return neededM2 == 0 ? 0 : kg / neededM2;
    }
  }

  private SpaceUse(Map<Optional<String>, List<PlaceMonth>> byPlace) {
    this.byPlace = byPlace;
  }

  /** Adds up a projection. */
  public static SpaceUse of(Projection projection) {
    Map<Optional<String>, List<PlaceMonth>> byPlace = new LinkedHashMap<>();
    Map<String, Place> places = projection.scenario().nursery().places();
    int months = projection.horizon().months();
    Map<Optional<String>, Sums> sums = new LinkedHashMap<>();
    places.keySet().forEach(name -> sums.put(Optional.of(name), new Sums(months)));
    for (LotHistory lot : projection.lots()) {
      for (int month = lot.start(); month < months; month++) {
        Stood stood = lot.stood(month);
        if (stood != null) {
          sums.computeIfAbsent(stood.place(), name -> new Sums(months)).add(lot, stood);
        }
      }
    }
    sums.forEach(
        (name, sum) -> {
          List<PlaceMonth> list = new ArrayList<>(months);
          for (int month = 0; month < months; month++) {
            YearMonth when = projection.horizon().month(month);
            double capacity =
                name.map(places::get).map(place -> place.capacityM2(when)).orElse(0.0);
            list.add(sum.month(name, month, capacity));
          }
          byPlace.put(name, List.copyOf(list));
        });
    return new SpaceUse(byPlace);
  }

  private static final class Sums {
    final double[] plants;
    final double[] m2;
    final double[] kg;
    final double[] heaviest;
    final String[] heaviestLot;

    Sums(int months) {
      plants = new double[months];
      m2 = new double[months];
      kg = new double[months];
      heaviest = new double[months];
      heaviestLot = new String[months];
    }

    void add(LotHistory lot, Stood stood) {
      int month = stood.month();
      plants[month] += stood.plants();
      m2[month] += stood.m2();
      kg[month] += stood.plants() * stood.weight().kg();
      double load = stood.kgPerM2();
      if (load > heaviest[month]) {
        heaviest[month] = load;
        heaviestLot[month] = lot.lot().name();
      }
    }

    PlaceMonth month(Optional<String> name, int month, double capacity) {
      return new PlaceMonth(
          name,
          month,
          plants[month],
          m2[month],
          capacity,
          kg[month],
          heaviest[month],
          heaviestLot[month] == null ? "" : heaviestLot[month]);
    }
  }

  /** Names in the order of the places table; none at the end if a lot has no place. */
  public List<Optional<String>> places() {
    return List.copyOf(byPlace.keySet());
  }

  /**
   * A place's months, one entry for each month of the plan.
   *
   * @param place one of the nursery's
   * @return [month], offsets from the plan's first
   */
  public List<PlaceMonth> months(Place place) {
    return months(Optional.of(place.name()));
  }

  /**
   * A place's months, or those of lots without one.
   *
   * @param place one of {@link #places}
   * @return [month], one entry for each month of the plan; null for a place that is none of them
   */
  public List<PlaceMonth> months(Optional<String> place) {
    return byPlace.get(place);
  }
}
