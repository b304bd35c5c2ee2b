package growingon.money;

import growingon.nursery.Nursery;
import growingon.nursery.Settings;
import growingon.nursery.place.Place;
import growingon.nursery.supply.Component;
import growingon.nursery.supply.Material;
import growingon.nursery.supply.Pot;
import growingon.nursery.time.Horizon;
import growingon.project.history.Use;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/**
 * What lots are charged for in a nursery: prices of one pot, litre and unit, of an hour, and of a
 * square metre in each month; plan currency. It never changes, so runs may share it.
 */
public final class Tariff {
  static final double[] NO_CHARGES = {};

  private final Map<Use.Kind, Map<String, Double>> unitPrices = new EnumMap<>(Use.Kind.class);
  private final Map<String, double[]> charges = new HashMap<>();
  private final Settings settings;
  private final int months;

  /** The prices of a nursery over a plan. */
  public Tariff(Nursery nursery, Horizon horizon) {
    this.settings = nursery.settings();
    this.months = horizon.months();
    for (Use.Kind kind : Use.Kind.values()) {
      unitPrices.put(kind, new HashMap<>());
    }
    for (Pot pot : nursery.pots().values()) {
      unitPrices.get(Use.Kind.POT).put(pot.name(), pot.price());
    }
    for (Component each : nursery.components().values()) {
      unitPrices.get(Use.Kind.COMPONENT).put(each.name(), each.bagPrice() / each.bagLitres());
    }
    for (Material each : nursery.materials().values()) {
      unitPrices.get(Use.Kind.MATERIAL).put(each.name(), each.packPrice() / each.pack());
    }
    for (Place place : nursery.places().values()) {
      double[] ofMonth = new double[months];
      for (int month = 0; month < months; month++) {
        ofMonth[month] = place.chargePerM2(horizon.month(month));
      }
      charges.put(place.name(), ofMonth);
    }
  }

  /** Number of months of the plan. */
  int months() {
    return months;
  }

  /** Price of one pot, of a litre of a component, or of a unit of a material. */
  double unitPrice(Use.Kind kind, String item) {
    return unitPrices.get(kind).get(item);
  }

  /** Cost of an hour of work. */
  double hourlyRate() {
    return settings.hourlyRate();
  }

  /** What a square metre in use of a place is charged in each month. */
  double[] chargesPerM2(String place) {
    return charges.get(place);
  }

  /** What selling costs for so much money. */
  double sellingCost(double receipts) {
    return receipts * settings.sellingCostShare();
  }
}
