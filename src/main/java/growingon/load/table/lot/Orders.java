package growingon.load.table.lot;

import growingon.load.table.Defined;
import growingon.nursery.lot.Offer;
import growingon.nursery.market.OtherCash;
import growingon.nursery.time.Horizon;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The orders that offers stand for: those that come again have one for each time. */
public final class Orders {
  private Orders() {}

  /** Every order, under its own name; the first of an offer has the offer's. */
  public static Defined<Offer> of(Defined<Offer> offers, Horizon horizon) {
    Defined<Offer> orders = new Defined<>(offers.names().copy(), new LinkedHashMap<>());
    for (Offer offer : offers.values().values()) {
      for (Offer order : offer.orders(horizon)) {
        orders.names().add(order.name());
        orders.values().put(order.name(), order);
      }
    }
    return orders;
  }

  /** Other cash of an offer is that of each of its orders. */
  public static List<OtherCash> ofEach(
      List<OtherCash> cash, Defined<Offer> offers, Horizon horizon) {
    Map<String, List<Offer>> byOffer = new LinkedHashMap<>();
    offers.values().forEach((name, offer) -> byOffer.put(name, offer.orders(horizon)));
    List<OtherCash> all = new ArrayList<>();
    for (OtherCash row : cash) {
      List<Offer> orders = row.lot().map(byOffer::get).orElse(List.of());
      if (orders.isEmpty()) {
        all.add(row);
      }
      orders.forEach(order -> all.add(row.of(Optional.of(order.name()))));
    }
    return all;
  }
}
