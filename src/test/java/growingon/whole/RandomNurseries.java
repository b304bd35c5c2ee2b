package growingon.whole;

import growingon.nursery.lot.Lot;
import growingon.nursery.market.Demand;
import growingon.nursery.time.MonthSpan;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/**
 * Working nurseries with lots and demand of all kinds: large lots and lots of a plant or two,
 * batches that sell alike, rows that are met and rows that are not, units that are no whole
 * numbers.
 */
public final class RandomNurseries {
  private static final List<String> SPECIES = List.of("maple", "elm", "larch");
  private static final List<String> GRADES = List.of("started", "branched", "specimen");

  private RandomNurseries() {}

  /** Nurseries by their number, which is all that they come from. */
  public static Arbitrary<Nurseries> any() {
    return Arbitraries.integers().between(0, 1_000_000).map(RandomNurseries::of);
  }

  /** The nursery of a number. */
  public static Nurseries of(int number) {
    Random random = new Random(number);
    Nurseries nursery = Nurseries.working().withoutDemand().seasons(2 + random.nextInt(4));
    nursery.seasonStart(Month.of(1 + random.nextInt(12)));
    int rows = random.nextInt(7);
    for (int i = 0; i < rows; i++) {
      nursery.demand(demand(random));
    }
    List<Lot> lots = new ArrayList<>();
    int number0f = 1 + random.nextInt(25);
    for (int i = 0; i < number0f; i++) {
      lots.add(lot("lot " + i, random));
    }
    return nursery.lots(lots);
  }

  private static Demand demand(Random random) {
    boolean limited = random.nextInt(3) > 0;
    double units = random.nextBoolean() ? random.nextInt(80) : random.nextDouble() * 40;
    int from = 1 + random.nextInt(12);
    boolean allYear = random.nextBoolean();
    return new Demand(
        random.nextBoolean()
            ? Optional.empty()
            : Optional.of(SPECIES.get(random.nextInt(SPECIES.size()))),
        "patio trees",
        GRADES.get(random.nextInt(GRADES.size())),
        Optional.empty(),
        allYear ? MonthSpan.ALL_YEAR : new MonthSpan(from, 1 + (from + 2) % 12),
        limited ? OptionalDouble.of(units) : OptionalDouble.empty(),
        20 + random.nextInt(200),
        random.nextInt(3),
        0,
        0);
  }

  private static Lot lot(String name, Random random) {
    int arrival = random.nextInt(5) * 6 - 18;
    int quantity = random.nextInt(3) == 0 ? random.nextInt(5) : random.nextInt(400);
    double firsts = random.nextDouble();
    var month = Nurseries.NOV_2026.plusMonths(arrival);
    Lots lot =
        Lots.lot(name)
            .species(SPECIES.get(random.nextInt(SPECIES.size())))
            .arrived(month.getYear(), month.getMonthValue())
            .quantity(quantity)
            .kept(Math.min(quantity, random.nextInt(4)))
            .trunks(5 + 40 * random.nextDouble(), 0.4 * random.nextDouble())
            .quality(firsts, (1 - firsts) / 2, random.nextBoolean())
            .hold("branched", random.nextBoolean() ? 0 : random.nextDouble())
            .place(random.nextBoolean() ? "ground" : "bench")
            .plantsPerM2(9)
            .route(random.nextBoolean() ? "field tree" : "liner");
    if (arrival < 0) {
      return lot.counted(2026, 6 + random.nextInt(6)).unitCost(3).build();
    }
    return lot.bought(11, 80).apart(random.nextInt(3)).build();
  }
}
