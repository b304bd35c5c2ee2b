package growingon.chance.luck;

import growingon.nursery.Inputs;
import growingon.nursery.Nursery;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import java.util.stream.Stream;

/** Whether anything in what was read has a spread. */
public final class Luckless {
  private Luckless() {}

  /** Whether nothing is left to luck but which whole plants die: the plan's line says it all. */
  public static boolean is(Inputs inputs) {
    Nursery nursery = inputs.scenario().nursery();
    Settings settings = nursery.settings();
    boolean market =
        nursery.demand().stream().anyMatch(row -> row.unitsSpread() > 0 || row.priceSpread() > 0);
    boolean growth =
        nursery.species().values().stream()
            .anyMatch(
                each ->
                    each.yearSpread() > 0
                        || each.lossSpread() > 0
                        || Spreads.ofLots(each, settings) > 0);
    boolean offers =
        inputs.offers().stream().anyMatch(offer -> offer.lossSure() < 1 || offer.fails() > 0);
    Stream<Lot> lots =
        Stream.concat(inputs.scenario().lots().stream(), inputs.offers().stream().map(Offer::lot));
    boolean quality = lots.anyMatch(lot -> !lot.quality().sorted() && lot.quality().sure() < 1);
    return inputs.scenario().isKnown()
        && !market
        && !growth
        && !offers
        && !quality
        && settings.labourSpread() == 0
        && settings.exchangeSpread() == 0;
  }
}
