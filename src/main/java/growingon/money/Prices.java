package growingon.money;

import growingon.nursery.Nursery;
import growingon.nursery.lot.Lot;
import growingon.nursery.time.Horizon;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Prices of a nursery over a plan, worked out once for all tallies. */
public final class Prices {
  private final Tariff tariff;
  private final GradeNumbers grades;
  private final ListPrices list;
  private final Map<String, double[][]> net = new ConcurrentHashMap<>();

  /** The prices of a nursery over the months of a plan. */
  public Prices(Nursery nursery, Horizon horizon) {
    this(nursery, horizon, new GradeNumbers(nursery));
  }

  Prices(Nursery nursery, Horizon horizon, GradeNumbers grades) {
    this.tariff = new Tariff(nursery, horizon);
    this.grades = grades;
    this.list = new ListPrices(nursery);
  }

  Tariff tariff() {
    return tariff;
  }

  GradeNumbers grades() {
    return grades;
  }

  /** List prices less selling cost of a lot's species, as {@link ListPrices#net}. */
  double[][] net(Lot lot) {
    double[][] known = net.get(lot.species());
    return known != null ? known : net.computeIfAbsent(lot.species(), any -> list.net(lot));
  }
}
