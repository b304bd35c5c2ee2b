package growingon.chance.luck;

import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.species.Species;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The spreads of a scenario's losses, each worked out once. */
public final class Spreads {
  private record Key(double mean, double deviation) {}

  private final Map<Key, LogitNormal> known = new ConcurrentHashMap<>();

  /** A share with a mean and standard deviation, at a standard normal score. */
  public double share(double mean, double deviation, double score) {
    if (mean <= 0 || mean >= 1 || deviation <= 0) {
      return mean;
    }
    return known
        .computeIfAbsent(new Key(mean, deviation), key -> LogitNormal.of(mean, deviation))
        .at(score);
  }

  /**
   * How many plants seen a degree of sureness is worth: 10 s/(1 − s). A grower who is 80 % sure of
   * the shares in an unseen lot is as sure as if 40 of its trees had been dug up and sorted; 50 %
   * is 10 trees, 90 % is 90. At least one.
   *
   * @param sure 0 to below 1
   */
  public static double plantsSeen(double sure) {
    return Math.max(1, 10 * sure / (1 - sure));
  }

  /** Standard deviation of a consignment's loss: that of a share known from so many plants seen. */
  public static double consignmentDeviation(Lot lot, double mean) {
    double sure = lot.purchase().isPresent() ? lot.purchase().get().lossSure() : 1;
    return sure >= 1 ? 0 : Math.sqrt(mean * (1 - mean) / (plantsSeen(sure) + 1));
  }

  /** Coefficient of variation of growth between lots of a species: its own, else the nursery's. */
  public static double ofLots(Species species, Settings settings) {
    return species.lotSpread().orElse(settings.lotSpread());
  }
}
