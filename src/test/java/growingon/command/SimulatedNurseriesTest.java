package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.command.SimulatedNursery.Counts;
import growingon.command.SimulatedNursery.Sales;
import growingon.command.SimulatedNursery.Shape;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** Nurseries of many shapes of which the truth is known, learnt from by the command. */
class SimulatedNurseriesTest {
  private static final int FEW = 3;

  /** How many of each shape; -Dfit.nurseries=24 takes five minutes and prints what it found. */
  private static final int NURSERIES = Integer.getInteger("fit.nurseries", FEW);

  private static final LocalDate TODAY = LocalDate.of(2026, 11, 20);

  private static final List<Shape> SHAPES =
      List.of(
          new Shape("two-lists", 1, 6, 3, 0, false, Sales.NONE, Counts.LISTS, false, false),
          new Shape(
              "lists-and-sales", 3, 6, 3, 0, true, Sales.WITH_GRADE, Counts.LISTS, false, false),
          new Shape("tagged", 4, 4, 2, 20, false, Sales.WITH_GRADE, Counts.LISTS, true, false),
          new Shape("no-grades", 3, 6, 3, 0, true, Sales.WITHOUT_GRADE, Counts.LISTS, true, false),
          new Shape(
              "sales-not-written",
              3,
              6,
              3,
              20,
              false,
              Sales.NOT_WRITTEN,
              Counts.LISTS,
              false,
              false),
          new Shape("daybook", 3, 6, 3, 0, true, Sales.WITH_GRADE, Counts.DAYBOOK, false, false),
          new Shape("untidy", 6, 6, 2, 12, true, Sales.WITH_GRADE, Counts.LISTS, true, true),
          new Shape("one-lot", 2, 6, 1, 0, false, Sales.NONE, Counts.LISTS, false, false));

  /** What of shapes that write everything down the ranges of losses must hold. */
  private static final List<String> ALL_WRITTEN =
      List.of("lists-and-sales", "no-grades", "daybook", "untidy", "one-lot");

  private static final Map<String, Tally> TALLIES = new TreeMap<>();

  @TempDir private static Path folder;

  /** How often a kind of value was held by its range, and how far off it was. */
  private static final class Tally {
    int all;
    int inside;
    int changed;
    final List<Double> off = new ArrayList<>();

    void add(Tally other) {
      all += other.all;
      inside += other.inside;
      changed += other.changed;
      off.addAll(other.off);
    }

    double mean() {
      return off.stream().mapToDouble(each -> each).average().orElse(0);
    }

    double rootMeanSquare() {
      return Math.sqrt(off.stream().mapToDouble(each -> each * each).average().orElse(0));
    }

    /** Eight of ten, as far as so few can tell: 2.6 standard deviations. */
    void assertEightOfTen() {
      assertThat(inside / (double) all).isCloseTo(0.8, within(0.03 + 2.6 * Math.sqrt(0.16 / all)));
    }
  }

  @BeforeAll
  static void learn() throws IOException {
    for (Shape shape : SHAPES) {
      for (int i = 0; i < NURSERIES; i++) {
        SimulatedNursery nursery = new SimulatedNursery(shape, 7_000L + i);
        Path at = nursery.write(Files.createDirectories(folder.resolve(shape.name() + i)));
        Path out = at.resolveSibling("out");
        Ran ran = Ran.on(TODAY, "fit", at.toString(), "--out", out.toString());
        assertThat(ran.code()).as(shape.name() + i + ran.err()).isZero();
        assertThat(ran.out()).doesNotContain("NaN");
        compare(shape, nursery, out);
        if (i == 0 && Files.exists(out.resolve("proposal"))) {
          assertReadBack(at, out.resolve("proposal"));
        }
      }
    }
    TALLIES.forEach(SimulatedNurseriesTest::print);
  }

  private static void assertReadBack(Path nursery, Path proposal) {
    String there = nursery.resolveSibling("planned").toString();
    Ran ran =
        Ran.on(
            TODAY,
            "plan",
            nursery.toString(),
            "--species",
            proposal.toString(),
            "--draws",
            "0",
            "--out",
            there);
    assertThat(ran.code()).as(ran.err()).isZero();
  }

  private static void print(String name, Tally tally) {
    if (NURSERIES > FEW) {
      System.out.printf(
          "%-40s inside %d of %d = %.2f; mean %.3f, rms %.3f; changed %d%n",
          name,
          tally.inside,
          tally.all,
          tally.inside / (double) tally.all,
          tally.mean(),
          tally.rootMeanSquare(),
          tally.changed);
    }
  }

  private static Tally pooled(String what, Predicate<String> shapes) {
    Tally all = new Tally();
    TALLIES.forEach(
        (name, tally) -> {
          if (name.endsWith(": " + what) && shapes.test(name.substring(0, name.indexOf(':')))) {
            all.add(tally);
          }
        });
    return all;
  }

  @Test
  void speeds_ofAllShapes_lieWithinTheirRangesInEightOfTenCases() {
    Tally speeds = pooled("growth speed", shape -> true);

    speeds.assertEightOfTen();
    assertThat(speeds.mean()).isCloseTo(0, within(0.03));
    assertThat(speeds.rootMeanSquare()).isLessThan(0.13);
  }

  @Test
  void losses_whereAllIsWrittenDown_lieWithinTheirRangesInEightOfTenCases() {
    pooled("later loss %", ALL_WRITTEN::contains).assertEightOfTen();
    pooled("first-year loss %", ALL_WRITTEN::contains).assertEightOfTen();
  }

  /** What is gone may then have died or not, and the ranges hold both. */
  @Test
  void losses_whereDeathsOrSalesAreNotWritten_lieWithinTheirRangesInEightOfTenCasesOrMore() {
    for (String what : List.of("later loss %", "first-year loss %")) {
      Tally losses = pooled(what, shape -> !ALL_WRITTEN.contains(shape));
      assertThat(losses.inside / (double) losses.all)
          .as(what)
          .isGreaterThan(0.77 - 2.6 * Math.sqrt(0.16 / losses.all));
    }
  }

  /**
   * Not a test of anything: writes a large nursery for a measurement, where -Dfit.write=FOLDER asks
   * for it, of -Dfit.lots and -Dfit.seasons.
   */
  @Test
  @EnabledIfSystemProperty(named = "fit.write", matches = ".+")
  void nursery_ofManyLots_isWritten() throws IOException {
    int lots = Integer.getInteger("fit.lots", 5_000) / 6;
    int seasons = Integer.getInteger("fit.seasons", 10);
    Shape large =
        new Shape("large", seasons, 6, lots, 0, true, Sales.WITH_GRADE, Counts.LISTS, false, false);
    Path to = Files.createDirectories(Path.of(System.getProperty("fit.write")));
    new SimulatedNursery(large, 1).write(to);
  }

  @Test
  void counts_inTheDaybook_sayWhatListsSay() {
    assertThat(TALLIES.get("daybook: growth speed").off)
        .isEqualTo(TALLIES.get("lists-and-sales: growth speed").off);
  }

  private static void compare(Shape shape, SimulatedNursery nursery, Path out) throws IOException {
    List<String> lines = Files.readAllLines(out.resolve("tables").resolve("fit-values.csv"));
    List<String> headings = List.of(lines.get(0).replace("\ufeff", "").split(","));
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",");
      String what = cells[2];
      Map<String, Double> truths =
          switch (what) {
            case "growth speed" -> nursery.speeds();
            case "first-year loss %" -> nursery.firstYearLosses();
            case "later loss %" -> nursery.laterLosses();
            default -> Map.of();
          };
      if (truths.isEmpty()) {
        continue;
      }
      double truth = truths.get(cells[0]) * (what.equals("growth speed") ? 1 : 100);
      Tally tally = TALLIES.computeIfAbsent(shape.name() + ": " + what, each -> new Tally());
      String verdict = cells[headings.indexOf("verdict")];
      if (verdict.equals("no records")) {
        continue;
      }
      tally.all++;
      double value = Double.parseDouble(cells[headings.indexOf("new")]);
      double p10 = Double.parseDouble(cells[headings.indexOf("p10")]);
      double p90 = Double.parseDouble(cells[headings.indexOf("p90")]);
      tally.inside += truth >= p10 && truth <= p90 ? 1 : 0;
      tally.changed += verdict.equals("changed") ? 1 : 0;
      tally.off.add(what.equals("growth speed") ? Math.log(value / truth) : value - truth);
    }
  }
}
