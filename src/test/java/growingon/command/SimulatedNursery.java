package growingon.command;

import growingon.demo.GrownLot;
import growingon.growth.Flow;
import growingon.nursery.species.Curve;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * A nursery of single plants with known speeds and losses, and the files that its grower would have
 * kept of it. Plants grow by the flow of their law, a month at a time, with luck of the plant, its
 * lot and the season; they die one by one; what is sold is thick. Nothing here uses the projection
 * or the fit.
 */
final class SimulatedNursery {
  /** Month in which the first list is made; seasons begin in it. */
  private static final int NOVEMBER = 11;

  private static final int LAST_YEAR = 2026;
  private static final double THICK_MM = 24;
  private static final double[] MONTHS = {0, 0, 2, 10, 20, 22, 20, 14, 8, 4, 0, 0};
  private static final double[] LOSSES = {10, 10, 10, 10, 5, 5, 5, 5, 10, 10, 10, 10};
  private static final double FIRST_YEAR_LOSS = 0.08;
  private static final double LATER_LOSS = 0.03;

  /** How sales are written down. */
  enum Sales {
    NONE,
    WITH_GRADE,
    WITHOUT_GRADE,
    NOT_WRITTEN
  }

  /** Where the numbers of a lot stand. */
  enum Counts {
    LISTS,
    DAYBOOK
  }

  /**
   * What a nursery is like and what its grower wrote down.
   *
   * @param name for a folder
   * @param seasons of records
   * @param species of them
   * @param lots of a species
   * @param tagged tagged plants of a species' first lot
   * @param deaths whether deaths are written down
   * @param sales how sales are
   * @param counts where counts stand
   * @param bought whether a lot a species comes each autumn
   * @param untidy whether rows are missing, empty or out of order and one is very wrong
   */
  record Shape(
      String name,
      int seasons,
      int species,
      int lots,
      int tagged,
      boolean deaths,
      Sales sales,
      Counts counts,
      boolean bought,
      boolean untidy) {}

  /** A lot as its grower knows it, with its own loss in the first year. */
  private record Lot(
      String name, int species, YearMonth arrived, double firstYearLoss, GrownLot plants) {}

  private final Shape shape;
  private final Random random;
  private final List<Lot> lots = new ArrayList<>();
  private final Map<YearMonth, List<String>> lists = new TreeMap<>();
  private final List<String> daybook = new ArrayList<>();
  private final List<String> records = new ArrayList<>();
  private final Map<String, Double> speeds = new LinkedHashMap<>();
  private final Map<String, Double> firstYearLosses = new LinkedHashMap<>();
  private final Map<String, Double> laterLosses = new LinkedHashMap<>();
  private final double[][] years;
  private final double[][] bad;

  SimulatedNursery(Shape shape, long seed) {
    this.shape = shape;
    this.random = new Random(seed);
    years = new double[shape.species()][shape.seasons()];
    bad = new double[shape.species()][shape.seasons()];
    truth();
    stock();
    live();
  }

  Map<String, Double> speeds() {
    return speeds;
  }

  Map<String, Double> firstYearLosses() {
    return firstYearLosses;
  }

  Map<String, Double> laterLosses() {
    return laterLosses;
  }

  /** Names of which two are hardly told apart. */
  private static String name(int species) {
    return List.of("Hazel", "Hazel red", "Quince", "Medlar", "Rowan", "Alder").get(species);
  }

  private static Curve curve(int species) {
    return species % 2 == 0
        ? new Curve.Steady(2.4 + 0.3 * species, Double.POSITIVE_INFINITY)
        : new Curve.Levelling(90, 0.03 + 0.004 * species);
  }

  private double lognormal(double spread) {
    return GrownLot.lognormal(random, spread);
  }

  private double beta(double mean) {
    return new BetaDistribution(40 * mean, 40 * (1 - mean))
        .inverseCumulativeProbability(random.nextDouble());
  }

  private void truth() {
    double[] site = random.doubles(shape.seasons()).map(each -> random.nextGaussian()).toArray();
    for (int s = 0; s < shape.species(); s++) {
      speeds.put(name(s), Math.exp(0.25 * random.nextGaussian()));
      firstYearLosses.put(name(s), beta(FIRST_YEAR_LOSS));
      laterLosses.put(name(s), beta(LATER_LOSS));
      for (int season = 0; season < shape.seasons(); season++) {
        double score = Math.sqrt(0.5) * (site[season] + random.nextGaussian());
        double variance = Math.log1p(0.01);
        years[s][season] = Math.exp(score * Math.sqrt(variance) - variance / 2);
        bad[s][season] = lognormal(0.25);
      }
    }
  }

  private YearMonth firstMonth() {
    return YearMonth.of(LAST_YEAR - shape.seasons(), NOVEMBER);
  }

  private void stock() {
    for (int s = 0; s < shape.species(); s++) {
      for (int lot = 0; lot < shape.lots(); lot++) {
        String name = "of old " + (lot < 26 ? "" + (char) ('A' + lot) : lot);
        double mean = 13 + 9 * random.nextDouble();
        YearMonth arrived = YearMonth.of(Math.min(2018, firstMonth().getYear() - 2), 3);
        lot(s, name, arrived, mean, lot == 0 ? shape.tagged() : 0);
      }
    }
  }

  private void lot(int species, String called, YearMonth arrived, double mean, int tagged) {
    String name = name(species) + " " + called;
    double ofLot = Math.min(0.9, firstYearLosses.get(name(species)) * lognormal(0.7));
    Flow flow = Flow.of(curve(species).faster(speeds.get(name(species))));
    int number = 60 + random.nextInt(90);
    GrownLot plants = new GrownLot(random, flow, number, mean, 0.15, tagged, name + " ");
    lots.add(new Lot(name, species, arrived, ofLot, plants));
  }

  private void live() {
    YearMonth month = firstMonth();
    count(month);
    for (int season = 0; season < shape.seasons(); season++) {
      for (int i = 0; i < 12; i++) {
        YearMonth now = firstMonth().plusMonths(12L * season + i);
        for (Lot lot : lots) {
          grow(lot, now, season);
          if (now.getMonthValue() == 5 && shape.sales() != Sales.NONE) {
            sell(lot, now);
          }
        }
      }
      buy(season);
      count(firstMonth().plusMonths(12L * (season + 1)));
    }
  }

  private void buy(int season) {
    if (shape.bought() && season < shape.seasons() - 1) {
      YearMonth arrived = firstMonth().plusMonths(12L * (season + 1));
      for (int s = 0; s < shape.species(); s++) {
        lot(s, "of " + arrived.getYear(), arrived, 8 + 4 * random.nextDouble(), 0);
      }
    }
  }

  private void grow(Lot lot, YearMonth now, int season) {
    int month = now.getMonthValue() - 1;
    double clock = MONTHS[month] / 100 * years[lot.species][season];
    boolean first = now.isBefore(lot.arrived.plusMonths(12));
    double later = laterLosses.get(name(lot.species));
    double loss = Math.min(0.9, (first ? lot.firstYearLoss : later) * bad[lot.species][season]);
    int died = lot.plants.grow(clock, 1 - Math.pow(1 - loss, LOSSES[month] / 100));
    if (shape.deaths() && died > 0) {
      line(now.atDay(15), lot, "died", died, "");
    }
  }

  private void line(LocalDate date, Lot lot, String what, int plants, String grade) {
    daybook.add("%s,%s,%s,%d,%s,,,".formatted(date, lot.name, what, plants, grade));
  }

  private void sell(Lot lot, YearMonth now) {
    int sold = lot.plants.sell(plant -> plant.trunk() >= THICK_MM, 0.6);
    if (sold > 0 && shape.sales() != Sales.NOT_WRITTEN) {
      line(now.atDay(20), lot, "sold", sold, shape.sales() == Sales.WITH_GRADE ? "thick" : "");
    }
  }

  private void count(YearMonth month) {
    for (Lot lot : lots) {
      read(lot, month);
      boolean isFirst = month.equals(firstMonth()) || month.equals(lot.arrived);
      GrownLot.Sample sample = lot.plants.measure();
      boolean isGone = lot.plants.size() == 0;
      if (shape.counts() == Counts.DAYBOOK && !isFirst) {
        daybook.add(
            "%s,%s,counted,%d,,%s,%s,"
                .formatted(
                    month.minusMonths(1).atDay(28),
                    lot.name,
                    lot.plants.size(),
                    isGone ? "" : one(sample.meanMm()),
                    isGone ? "" : one(100 * sample.spread())));
      } else if (!isGone && !isMissing(month)) {
        list(lot, month, sample);
      }
    }
  }

  private boolean isMissing(YearMonth month) {
    boolean isBetween = month.isAfter(firstMonth()) && month.getYear() < LAST_YEAR;
    return shape.untidy() && isBetween && random.nextInt(12) == 0;
  }

  private void list(Lot lot, YearMonth month, GrownLot.Sample sample) {
    boolean isSlip =
        shape.untidy() && lot == lots.get(1) && month.equals(firstMonth().plusMonths(12));
    lists
        .computeIfAbsent(month, each -> new ArrayList<>())
        .add(
            "%s,%s,container,%d,%s,%s,%s,%s,7.5 litre,standing"
                .formatted(
                    lot.name,
                    name(lot.species),
                    lot.plants.size(),
                    lot.arrived,
                    month,
                    one((isSlip ? 10 : 1) * sample.meanMm()),
                    one(100 * sample.spread())));
  }

  private void read(Lot lot, YearMonth month) {
    double[] read = lot.plants.read();
    for (int i = 0; i < read.length; i++) {
      records.add(
          "%s,%s,%s,%s"
              .formatted(
                  lot.plants.tagged().get(i).tag(),
                  lot.name,
                  month.minusMonths(1).atDay(25),
                  one(read[i])));
    }
  }

  private static String one(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** Lays out its files, beside a plan of the month of the last list or of the first. */
  Path write(Path folder) throws IOException {
    Path nursery = Files.createDirectories(folder.resolve(shape.name()));
    tables(nursery);
    species(nursery);
    List<YearMonth> months = new ArrayList<>(lists.keySet());
    Files.createDirectories(nursery.resolve("earlier"));
    YearMonth today =
        shape.counts() == Counts.LISTS
            ? YearMonth.of(LAST_YEAR, NOVEMBER)
            : months.get(months.size() - 1);
    for (YearMonth month : months) {
      List<String> rows = new ArrayList<>(lists.get(month));
      if (shape.untidy()) {
        Collections.shuffle(rows, random);
      }
      rows.add(0, "lot,species,form,quantity,arrived,counted,trunk mm,trunk spread %,pot,route");
      String file = month.equals(today) ? "stock.csv" : "earlier/stock " + month + ".csv";
      Files.write(nursery.resolve(file), rows);
    }
    if (shape.untidy()) {
      Collections.shuffle(daybook, random);
      Collections.shuffle(records, random);
    }
    daybook.add(0, "date,lot,what,quantity,grade,trunk mm,trunk spread %,note");
    Files.write(nursery.resolve("daybook.csv"), daybook);
    if (!records.isEmpty()) {
      records.add(0, "plant,lot,date,trunk mm");
      Files.write(nursery.resolve("records.csv"), records);
    }
    Files.writeString(
        nursery.resolve("plan.json"),
        "{ \"name\": \"%s\", \"first month\": \"%s\", \"seasons\": 4 }"
            .formatted(shape.name(), today));
    return nursery;
  }

  private static void tables(Path nursery) throws IOException {
    for (String table :
        List.of("pots.csv", "places.csv", "qualities.csv", "care.csv", "nursery.json")) {
      Files.copy(Path.of("demo-data", "four-seasons-on", table), nursery.resolve(table));
    }
    Files.writeString(
        nursery.resolve("routes.csv"),
        "route,step,when,minutes\nstanding,summer trim,every year in July,6\n");
    Files.writeString(
        nursery.resolve("grades.csv"), "ladder,grade,rank,least trunk mm\ntrees,thick,1,24\n");
    Files.writeString(
        nursery.resolve("demand.csv"), "species,ladder,grade,units,price\n*,trees,thick,400,50\n");
  }

  private void species(Path nursery) throws IOException {
    StringBuilder text = new StringBuilder("{ \"species\": {\n");
    for (int s = 0; s < shape.species(); s++) {
      Curve curve = curve(s);
      String law =
          curve instanceof Curve.Levelling levelling
              ? "\"curve\": \"levelling\", \"D\": 90, \"k\": " + levelling.k()
              : "\"curve\": \"steady\", \"g\": " + ((Curve.Steady) curve).gMmAYear();
      text.append(
          """
            "%s": {
              "ladder": "trees",
              "usual condition": "training pot",
              "growth": { "training pot": { %s } }, // guessed
              "growth months": [0, 0, 2, 10, 20, 22, 20, 14, 8, 4, 0, 0],
              "loss months": [10, 10, 10, 10, 5, 5, 5, 5, 10, 10, 10, 10],
              "first-year loss %%": 8,
              "later loss %%": 3,
              "pot-bound months": 600,
            },
          """
              .formatted(name(s), law));
    }
    Files.writeString(nursery.resolve("species.json"), text.append("} }\n"));
  }
}
