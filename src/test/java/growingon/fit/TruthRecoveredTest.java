package growingon.fit;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.fit.evidence.Evidence;
import growingon.fit.growth.SpeedFit;
import growingon.fit.growth.SpeedJudging;
import growingon.fit.loss.LossJudging;
import growingon.fit.past.Past;
import growingon.fit.value.Value;
import growingon.growth.Flow;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Grade;
import growingon.nursery.record.DaybookLine.What;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.nursery.time.MonthShares;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Nurseries of single plants, grown one by one by the laws of growth with luck of seasons, lots and
 * plants, measured with errors and sold by the thick end; the fit does not know their true speeds.
 */
class TruthRecoveredTest {
  private static final int NURSERIES = 40;
  private static final int SPECIES = 6;
  private static final int LOTS = 3;
  private static final int SEASONS = 3;
  private static final int NOTHING_WRONG = 16;
  private static final double LEAST_SOLD = 26;

  private static final List<Double> ERRORS = new ArrayList<>();
  private static final List<Double> NAIVE = new ArrayList<>();
  private static int inside80;
  private static int inside95;
  private static int losses;
  private static int lossesInside;
  private static int lossesInside95;

  private record Plant(double trunk, double vigour) {}

  @BeforeAll
  static void grow() {
    for (int nursery = 0; nursery < NURSERIES; nursery++) {
      new Simulated(new Random(20_261_128L + nursery), SEASONS, true).runAndCompare();
    }
  }

  /** Speeds of nurseries of five seasons that grow just as was assumed. */
  private static List<Value> whereNothingIsWrong() {
    List<Value> values = new ArrayList<>();
    for (int nursery = 0; nursery < NOTHING_WRONG; nursery++) {
      values.addAll(new Simulated(new Random(7_128L + nursery), 5, false).speeds());
    }
    return values;
  }

  /** One nursery. */
  private static final class Simulated {
    private final Random random;
    private final Nurseries nursery =
        Nurseries.bare().lotSpread(0.08).firstMonth(2026, 11).slices(32);
    private final Books books;
    private final Map<String, Double> speeds = new HashMap<>();
    private final Map<String, Double> laterLosses = new HashMap<>();
    private final Map<Integer, List<Object>> rows = new HashMap<>();
    private final int seasons;
    private final boolean differs;
    private final double[] site;

    /** A nursery of some seasons that differs from what is assumed, or does not. */
    Simulated(Random random, int seasons, boolean differs) {
      this.random = random;
      this.seasons = seasons;
      this.differs = differs;
      this.site = new double[seasons];
      nursery.ladder("one", new Grade("thick", 1, LEAST_SOLD, 0, 12));
      books = Books.of(nursery);
    }

    private double lognormal(double spread) {
      double variance = Math.log1p(spread * spread);
      return Math.exp(random.nextGaussian() * Math.sqrt(variance) - variance / 2);
    }

    void runAndCompare() {
      Evidence evidence = live();
      SpeedFit growth = new SpeedFit(evidence.past(), evidence.past().assumed());
      new SpeedJudging(evidence).speeds(growth.fit(evidence.used())).forEach(this::compare);
      new LossJudging(evidence)
          .losses().stream()
              .filter(v -> v.what() == Value.What.LATER_LOSS)
              .filter(v -> laterLosses.containsKey(v.species()))
              .forEach(this::compareLoss);
    }

    /** What the fit says of its speeds. */
    List<Value> speeds() {
      Evidence evidence = live();
      SpeedFit growth = new SpeedFit(evidence.past(), evidence.past().assumed());
      return new SpeedJudging(evidence)
          .speeds(growth.fit(evidence.used())).stream()
              .filter(value -> speeds.containsKey(value.species()))
              .toList();
    }

    private Evidence live() {
      for (int season = 0; season < seasons; season++) {
        site[season] = random.nextGaussian();
      }
      for (int s = 0; s < SPECIES; s++) {
        species("species " + s, s);
      }
      for (int season = 0; season <= seasons; season++) {
        books.list(2023 + season, 11, rows.get(2023 + season).toArray());
      }
      Past past = Past.of(books.until(2023 + seasons, 11).records());
      SpeedFit growth = new SpeedFit(past, past.assumed());
      Evidence read = Evidence.of(past);
      return read.with(growth.withoutSlips(read.intervals()).intervals());
    }

    private void compare(Value value) {
      if (!speeds.containsKey(value.species())) {
        return;
      }
      double truth = speeds.get(value.species());
      double error = Math.log(value.value()) - truth;
      double deviation = Math.log(value.p90() / value.p10()) / 2 / 1.2816;
      ERRORS.add(error);
      inside80 += Math.abs(error) <= 1.2816 * deviation ? 1 : 0;
      inside95 += Math.abs(error) <= 1.96 * deviation ? 1 : 0;
    }

    private void compareLoss(Value value) {
      double truth = 100 * laterLosses.get(value.species());
      losses++;
      lossesInside += truth >= value.p10() && truth <= value.p90() ? 1 : 0;
      double plants = Sure.plants(value.sureNew());
      double share = value.value() / 100;
      BetaDistribution range = new BetaDistribution(share * plants, (1 - share) * plants);
      boolean inside95 =
          truth >= 100 * range.inverseCumulativeProbability(0.025)
              && truth <= 100 * range.inverseCumulativeProbability(0.975);
      lossesInside95 += inside95 ? 1 : 0;
    }

    private void species(String name, int index) {
      Curve assumed =
          index % 2 == 0
              ? new Curve.Steady(2.5 + 0.3 * index, Double.POSITIVE_INFINITY)
              : new Curve.Levelling(90, 0.03 + 0.004 * index);
      Species species = Books.species(name, "one", assumed, 0.06, 0.03);
      nursery.species(species);
      double speed = differs ? 0.25 * random.nextGaussian() : 0;
      speeds.put(name, speed);
      // Drawn from the law that the fit starts from: a Beta of 3 % worth 40 plants.
      double loss =
          new BetaDistribution(0.03 * 40, 0.97 * 40)
              .inverseCumulativeProbability(random.nextDouble());
      laterLosses.put(name, loss);
      double[] years = new double[seasons];
      double[] bad = new double[seasons];
      for (int season = 0; season < seasons; season++) {
        double own = Math.sqrt(0.5) * site[season] + Math.sqrt(0.5) * random.nextGaussian();
        double variance = Math.log1p(0.01);
        years[season] = Math.exp(own * Math.sqrt(variance) - variance / 2);
        bad[season] = Math.min(0.9, loss * lognormal(0.25));
      }
      Flow flow = Flow.of(assumed.faster(Math.exp(speed)));
      for (int lot = 0; lot < LOTS; lot++) {
        lot(name, name + " lot " + lot, flow, species.growthMonths(), years, bad);
      }
    }

    private void lot(
        String species, String name, Flow flow, MonthShares months, double[] years, double[] bad) {
      double luck = lognormal(0.08);
      double mean = 14 + 8 * random.nextDouble();
      List<Plant> plants = new ArrayList<>();
      int number = 60 + random.nextInt(80);
      for (int i = 0; i < number; i++) {
        plants.add(new Plant(mean * lognormal(0.15), lognormal(0.2)));
      }
      double first = row(2023, species, name, plants);
      double before = first;
      for (int season = 0; season < seasons; season++) {
        double expected = 0;
        for (int month = 0; month < 12; month++) {
          YearMonth now = YearMonth.of(2023 + season, 11).plusMonths(month);
          double clock = months.get(now.getMonthValue() - 1) * years[season] * luck;
          int alive = plants.size();
          plants = grown(plants, flow, clock, bad[season]);
          if (plants.size() < alive) {
            String day = now.atDay(15).toString();
            books.line(day, name, What.DIED, alive - plants.size());
          }
          if (now.getMonthValue() == 5) {
            sell(plants, name, now);
          }
          expected += clock;
        }
        double after = row(2024 + season, species, name, plants);
        double grown = flow.advance(before, expected / years[season] / luck) - before;
        NAIVE.add(Math.log(Math.max(0.05, (after - before) / grown)));
        before = after;
      }
    }

    private List<Plant> grown(List<Plant> plants, Flow flow, double clock, double loss) {
      List<Plant> left = new ArrayList<>();
      double dies = 1 - Math.pow(1 - loss, 1.0 / 12);
      for (Plant plant : plants) {
        if (random.nextDouble() >= dies) {
          left.add(new Plant(flow.advance(plant.trunk(), plant.vigour() * clock), plant.vigour()));
        }
      }
      return left;
    }

    /** A third of those thick enough are sold, whichever the buyer likes. */
    private void sell(List<Plant> plants, String name, YearMonth now) {
      List<Plant> thick =
          new ArrayList<>(plants.stream().filter(each -> each.trunk() >= LEAST_SOLD).toList());
      java.util.Collections.shuffle(thick, random);
      int sold = (int) Math.round(thick.size() * 0.6);
      if (sold == 0 || plants.size() - sold < 15) {
        return;
      }
      plants.removeAll(thick.subList(0, sold));
      books.sold(LocalDate.of(now.getYear(), 5, 20).toString(), name, sold, "thick");
    }

    private double row(int year, String species, String name, List<Plant> plants) {
      List<Plant> some = new ArrayList<>(plants);
      some.sort(Comparator.comparing(Plant::trunk));
      java.util.Collections.shuffle(some, random);
      some = some.subList(0, Math.min(20, some.size()));
      double occasion = 1 + 0.015 * random.nextGaussian();
      double[] read =
          some.stream()
              .mapToDouble(each -> each.trunk() * occasion + 0.5 * random.nextGaussian())
              .toArray();
      double mean = java.util.Arrays.stream(read).average().orElseThrow();
      double variance =
          java.util.Arrays.stream(read).map(each -> (each - mean) * (each - mean)).sum()
              / (read.length - 1);
      double trunk = Math.round(mean * 10) / 10.0;
      Lot lot =
          Lots.lot(name)
              .species(species)
              .quantity(plants.size())
              .trunks(trunk, Math.sqrt(variance) / mean)
              .arrived(2021, 11)
              .counted(year, 11)
              .build();
      List<Object> row = rows.computeIfAbsent(year, each -> new ArrayList<>());
      row.add(lot);
      row.add(20);
      return trunk;
    }
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(each -> each).average().orElseThrow();
  }

  @Test
  void speeds_ofNurseriesThatSellThickOnes_areFoundWithoutBias() {
    double squares = ERRORS.stream().mapToDouble(each -> each * each).average().orElseThrow();
    assertThat(ERRORS).hasSize(NURSERIES * SPECIES);
    assertThat(mean(ERRORS)).isBetween(-0.025, 0.025);
    assertThat(Math.sqrt(squares)).isLessThanOrEqualTo(0.12);
    assertThat(inside80 / (double) ERRORS.size()).isBetween(0.74, 0.90);
    assertThat(inside95 / (double) ERRORS.size()).isGreaterThanOrEqualTo(0.91);
  }

  @Test
  void differences_ofMeansAfterSales_areBiased() {
    assertThat(mean(NAIVE)).isLessThan(-0.1);
  }

  @Test
  void laterLosses_drawnFromWhatWasAssumed_lieWithinTheirRanges() {
    assertThat(lossesInside / (double) losses).isBetween(0.76, 0.84);
    assertThat(lossesInside95 / (double) losses).isGreaterThanOrEqualTo(0.93);
  }

  /** A range of 80 % leaves one in five outside, by a little. */
  @Test
  void speeds_whereNothingIsWrong_areChangedInOneOfFourAtMost_andByLittle() {
    List<Value> speeds = whereNothingIsWrong();
    List<Value> changed = speeds.stream().filter(Value::isChanged).toList();

    assertThat(speeds).hasSize(NOTHING_WRONG * SPECIES);
    assertThat(changed.size()).isLessThanOrEqualTo(speeds.size() / 4);
    assertThat(changed).allMatch(value -> Math.abs(value.value() - 1) < 0.2);
  }
}
