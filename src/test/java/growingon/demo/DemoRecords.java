package growingon.demo;

import growingon.growth.Flow;
import growingon.nursery.species.Curve;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * The records of the nursery of four seasons: its lots are grown plant by plant from a seed, by
 * true speeds that its species.json does not know, and written down as its grower would have. One
 * sale of crab apples was not written down.
 */
final class DemoRecords {
  static final Path FOLDER = Path.of("demo-data", "four-seasons-on");

  private static final long SEED = 3;
  private static final int FIRST_YEAR = 2022;
  private static final int SEASONS = 4;
  private static final int FIRST_READ = 2024;
  private static final double[] GROWTH = {0, 0, 2, 10, 20, 22, 20, 14, 8, 4, 0, 0};
  private static final double BRANCHED_MM = 25;
  private static final double STARTED_MM = 15;

  /** What grows here, and how it really grows. */
  private enum Kind {
    MAPLE("Field maple", new Curve.Levelling(95, 0.04 * 0.95), 0.02),
    HORNBEAM("Hornbeam", new Curve.Steady(2.8 * 0.7, Double.POSITIVE_INFINITY), 0.015),
    CRAB("Crab apple", new Curve.Steady(3.2 * 0.95, Double.POSITIVE_INFINITY), 0.04),
    YEW("English yew", new Curve.Steady(2, Double.POSITIVE_INFINITY), 0.015);

    private final String species;
    private final Flow flow;
    private final double loss;

    Kind(String species, Curve curve, double loss) {
      this.species = species;
      this.flow = Flow.of(curve);
      this.loss = loss;
    }
  }

  /** A lot as its grower knows it. */
  private record Named(String name, Kind kind, String arrived, int listedFrom, GrownLot lot) {}

  private final Random random = new Random(SEED);
  private final List<Named> lots = new ArrayList<>();
  private final Map<String, StringBuilder> files = new TreeMap<>();
  private final double[][] years = new double[Kind.values().length][SEASONS];

  private DemoRecords() {
    for (int season = 0; season < SEASONS; season++) {
      double site = random.nextGaussian();
      for (Kind kind : Kind.values()) {
        double score = Math.sqrt(0.5) * (site + random.nextGaussian());
        years[kind.ordinal()][season] = Math.exp(0.1 * score);
      }
    }
    // Lots of a species came together, since buyers choose among all of them alike.
    add("Maples by the barn", Kind.MAPLE, "2020-03", 2022, 140, 18, 0.15, 0);
    add("Maples by the gate", Kind.MAPLE, "2020-03", 2022, 120, 15, 0.15, 0);
    add("Maples by the lane", Kind.MAPLE, "2020-03", 2022, 90, 19, 0.12, 0);
    add("Hornbeams by the barn", Kind.HORNBEAM, "2020-03", 2022, 130, 16, 0.15, 20);
    add("Hornbeams by the gate", Kind.HORNBEAM, "2020-03", 2022, 80, 20, 0.15, 0);
    add("Hornbeam standards", Kind.HORNBEAM, "2020-03", 2022, 70, 22, 0.12, 0);
    add("Crabs of 2021", Kind.CRAB, "2021-03", 2022, 95, 20, 0.14, 0);
    add("Young yews", Kind.YEW, "2025-03", 2025, 40, 12.5, 0.15, 0);
  }

  private void add(
      String name,
      Kind kind,
      String arrived,
      int listedFrom,
      int quantity,
      double meanMm,
      double spread,
      int tagged) {
    GrownLot lot = new GrownLot(random, kind.flow, quantity, meanMm, spread, tagged, "HOR ");
    lots.add(new Named(name, kind, arrived, listedFrom, lot));
  }

  /** Each file by its name. */
  static Map<String, String> texts() {
    DemoRecords records = new DemoRecords();
    records.live();
    Map<String, String> texts = new TreeMap<>();
    records.files.forEach((name, text) -> texts.put(name, text.toString()));
    return texts;
  }

  private StringBuilder file(String name, String headings) {
    return files.computeIfAbsent(name, each -> new StringBuilder(headings).append('\n'));
  }

  private void live() {
    count(FIRST_YEAR);
    for (int season = 0; season < SEASONS; season++) {
      for (int month = 0; month < 12; month++) {
        live(YearMonth.of(FIRST_YEAR + season, 11).plusMonths(month), season);
      }
      count(FIRST_YEAR + season + 1);
    }
  }

  private void live(YearMonth now, int season) {
    for (Named each : lots) {
      if (each.listedFrom > FIRST_YEAR + season) {
        continue;
      }
      double clock = GROWTH[now.getMonthValue() - 1] / 100 * years[each.kind.ordinal()][season];
      int died = each.lot.grow(clock, 1 - Math.pow(1 - each.kind.loss, 1.0 / 12));
      line(now.atDay(15).toString(), each, "died", died, "");
      if (now.getMonthValue() == 5) {
        sell(each, now);
      }
    }
  }

  private void sell(Named each, YearMonth now) {
    boolean isWritten = each.kind != Kind.CRAB || now.getYear() != 2025;
    int branched = each.lot.sell(plant -> plant.trunk() >= BRANCHED_MM, isWritten ? 0.3 : 0.6);
    int started =
        each.lot.sell(
            plant -> plant.trunk() >= STARTED_MM && plant.trunk() < BRANCHED_MM,
            isWritten ? 0.07 : 0.4);
    if (isWritten) {
      line(now.atDay(20).toString(), each, "sold", branched, "branched");
      line(now.atDay(20).toString(), each, "sold", started, "started");
    }
  }

  private void line(String date, Named each, String what, int plants, String grade) {
    StringBuilder daybook = file("daybook.csv", "date,lot,what,quantity,grade,note");
    if (plants > 0) {
      daybook.append(
          "%s,%s,%s,%d,%s,%n".formatted(date, each.name, what, plants, grade).replace("\r", ""));
    }
  }

  private void count(int year) {
    String name = year == FIRST_YEAR + SEASONS ? "stock.csv" : "earlier/stock " + year + "-11.csv";
    for (Named each : lots) {
      if (each.listedFrom <= year) {
        GrownLot.Sample sample = each.lot.measure();
        file(
                name,
                "lot,species,form,quantity,arrived,counted,trunk mm,trunk spread %,pot,place,route")
            .append(
                "%s,%s,container,%d,%s,%d-11,%s,%d,7.5 litre,East ground,standing trees\n"
                    .formatted(
                        each.name,
                        each.kind.species,
                        each.lot.size(),
                        each.arrived,
                        year,
                        one(sample.meanMm()),
                        Math.round(100 * sample.spread())));
      }
      if (year >= FIRST_READ) {
        read(each, year);
      }
    }
  }

  private void read(Named each, int year) {
    double[] read = each.lot.read();
    for (int i = 0; i < read.length; i++) {
      file("records.csv", "plant,lot,date,trunk mm")
          .append(
              "%s,%s,%d-10-31,%s\n"
                  .formatted(each.lot.tagged().get(i).tag(), each.name, year, one(read[i])));
    }
  }

  private static String one(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
