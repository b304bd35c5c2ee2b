package growingon.load.own.lot;

import growingon.load.own.text.Keys;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Names of offers that a buyer knows again in an order: plant and size as the supplier writes them;
 * where two are alike the month, then the row.
 */
public final class OfferNames {
  private static final int LONGEST = 90;

  private OfferNames() {}

  public static List<OwnLot> named(List<OwnLot> offers) {
    List<OwnLot> named = new ArrayList<>(offers);
    named.replaceAll(offer -> offer.named(first(offer)));
    LotNames.parted(
        named, offer -> offer.lot() + offer.arrived().map(month -> " " + month).orElse(""));
    LotNames.parted(named, offer -> offer.lot() + " row " + offer.row());
    LotNames.parted(named, offer -> offer.lot() + " " + offer.sheet());
    Set<String> seen = new HashSet<>();
    named.replaceAll(
        offer -> {
          String name = offer.lot();
          for (int i = 2; !seen.add(Keys.of(name)); i++) {
            name = offer.lot() + " " + i;
          }
          return offer.named(name);
        });
    return named;
  }

  private static String first(OwnLot offer) {
    String plant = offer.ownName().isEmpty() ? "offer" : offer.ownName();
    String size = offer.terms().size();
    String name = size.isEmpty() || plant.contains(size) ? plant : plant + " " + size;
    return name.length() > LONGEST ? name.substring(0, LONGEST).strip() : name;
  }
}
