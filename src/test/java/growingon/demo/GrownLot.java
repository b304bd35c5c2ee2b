package growingon.demo;

import growingon.growth.Flow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;

/**
 * A lot of single plants that is grown by the flow of its law, a month at a time. Each plant has
 * its vigour and the lot its luck; they die one by one, are sold as the buyer likes, and are
 * measured with errors. Neither the projection nor the fit is used, so that these may be held
 * against it.
 */
public final class GrownLot {
  private static final double VIGOUR_SPREAD = 0.2;
  private static final double LOT_SPREAD = 0.08;
  private static final double OCCASION = 0.015;
  private static final double READING_MM = 0.5;
  private static final int MEASURED = 20;

  /**
   * A plant.
   *
   * @param tag its name; empty for one that is not tagged
   */
  public record Plant(double trunk, double vigour, String tag) {
    public boolean isTagged() {
      return !tag.isEmpty();
    }
  }

  /** A mean trunk that was measured, with the spread of those measured as a share. */
  public record Sample(double meanMm, double spread) {}

  private final Random random;
  private final Flow flow;
  private final double luck;
  private List<Plant> plants = new ArrayList<>();

  /**
   * A lot.
   *
   * @param flow the law that its plants really grow by
   * @param meanMm mean trunk at the beginning
   * @param tagged how many of the plants are tagged
   * @param tag their names but for the number
   */
  public GrownLot(
      Random random,
      Flow flow,
      int quantity,
      double meanMm,
      double spread,
      int tagged,
      String tag) {
    this.random = random;
    this.flow = flow;
    this.luck = lognormal(random, LOT_SPREAD);
    for (int i = 0; i < quantity; i++) {
      double trunk = meanMm * lognormal(random, spread);
      String name = i < tagged ? "%s%02d".formatted(tag, i + 1) : "";
      plants.add(new Plant(trunk, lognormal(random, VIGOUR_SPREAD), name));
    }
  }

  /** A factor of mean 1 that varies by a share of itself. */
  public static double lognormal(Random random, double spread) {
    double variance = Math.log1p(spread * spread);
    return Math.exp(random.nextGaussian() * Math.sqrt(variance) - variance / 2);
  }

  public int size() {
    return plants.size();
  }

  public List<Plant> tagged() {
    return plants.stream().filter(Plant::isTagged).toList();
  }

  /**
   * Grows a month and loses some.
   *
   * @param clock growth years of the month, the season's luck within
   * @param dies share that dies in it
   * @return how many died
   */
  public int grow(double clock, double dies) {
    int before = plants.size();
    List<Plant> left = new ArrayList<>();
    for (Plant plant : plants) {
      if (random.nextDouble() >= dies) {
        double trunk = flow.advance(plant.trunk, plant.vigour * clock * luck);
        left.add(new Plant(trunk, plant.vigour, plant.tag));
      }
    }
    plants = left;
    return before - left.size();
  }

  /** Sells a share of those that a buyer may have, whichever he likes; gives how many. */
  public int sell(Predicate<Plant> which, double share) {
    List<Plant> some =
        new ArrayList<>(plants.stream().filter(each -> !each.isTagged()).filter(which).toList());
    Collections.shuffle(some, random);
    int sold = (int) Math.round(some.size() * share);
    plants.removeAll(some.subList(0, sold));
    return sold;
  }

  /** Measures twenty of them. */
  public Sample measure() {
    List<Plant> some = new ArrayList<>(plants);
    some.sort(Comparator.comparing(Plant::trunk));
    Collections.shuffle(some, random);
    double occasion = 1 + OCCASION * random.nextGaussian();
    double[] read =
        some.stream()
            .limit(MEASURED)
            .mapToDouble(each -> each.trunk * occasion + READING_MM * random.nextGaussian())
            .toArray();
    double mean = Arrays.stream(read).average().orElse(0);
    double squares = Arrays.stream(read).map(each -> (each - mean) * (each - mean)).sum();
    return new Sample(mean, Math.sqrt(squares / Math.max(1, read.length - 1)) / mean);
  }

  /** Reads the trunks of the tagged ones, in their order. */
  public double[] read() {
    double occasion = 1 + OCCASION * random.nextGaussian();
    return tagged().stream()
        .mapToDouble(each -> each.trunk * occasion + READING_MM * random.nextGaussian())
        .toArray();
  }
}
