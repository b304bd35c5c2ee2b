package growingon.write;

import growingon.nursery.number.Writing;
import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Severity;
import growingon.problem.Where;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.report.model.Column;
import growingon.report.model.Column.Flag;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** A report of an invented nursery, with every kind of column and chart. */
public final class SampleReport {
  static final YearMonth FIRST = YearMonth.of(2026, 11);
  public static final int MONTHS = 72;
  private static final List<String> PLACES =
      List.of("long bench", "short bench", "cold tunnel", "gravel north", "gravel south", "nook");
  private static final double[] CAPACITY = {42, 18, 64, 120, 150, 6};
  private static final List<String> SPECIES =
      List.of("Field maple", "Common hornbeam", "Scots pine", "Hawthorn", "Small-leaved lime");
  private static final List<String> SEASONS =
      List.of("2026/27 from Nov", "2027/28", "2028/29", "2029/30", "2030/31", "2031/32");

  private SampleReport() {}

  public static Report report() {
    return Report.of(
            "with the ridge lot",
            "Ninefold trees",
            new Phrases("EUR", Writing.USUAL),
            FIRST.toString())
        .sheets(sheets())
        .charts(charts())
        .extra(List.of(monthly()))
        .headlines(List.of("Saleable next season: 214 plants."))
        .problems(problems())
        .build();
  }

  /** A report of one table and one chart, where a test is about the folder only. */
  public static Report small() {
    return Report.of("small", "Ninefold trees", new Phrases("EUR", Writing.USUAL), FIRST.toString())
        .sheets(
            List.of(new Sheet("To order", List.of(), List.of(orders()), List.of("cash"), false)))
        .charts(List.of(charts().get(5)))
        .build();
  }

  public static List<Sheet> sheets() {
    return List.of(
        new Sheet(
            "Summary",
            List.of(
                "In season 2027/28 about 412 plants reach a grade you can sell; they bring EUR 18,240"
                    + " at the prices of the demand table.",
                "The cold tunnel is too small from November 2028 to March 2029: 14.5 m² more are"
                    + " needed in January; gravel north has most room.",
                "In March 2028 the work takes 212 hours; 160 are available.",
                "Order 340 pots of 12 litres and 11 bags of pumice by January 2027.",
                "Cash is lowest in May 2028: EUR -3,412."),
            List.of(),
            List.of("sales-by-season", "bench-space"),
            true),
        Sheet.of(
            "Jobs", jobs("jobs-next", "Next three months", 0, 3), jobs("jobs", "Later", 3, 24)),
        new Sheet("Bench space", List.of(), List.of(space()), List.of("bench-space"), false),
        Sheet.of("To order", orders()),
        new Sheet("Cash", List.of(NO_VAT), List.of(cash()), List.of("cash"), false),
        Sheet.of("Lots", lots()),
        new Sheet(
            "Stock by season", List.of(), List.of(bySeason()), List.of("stock-by-grade"), false),
        Sheet.of("Count sheet", count()),
        Sheet.of("Assumptions", assumptions()),
        new Sheet("Nothing", List.of(), List.of(), List.of(), false),
        new Sheet(
            "Notes",
            List.of(
                "A forecast is no promise, and nothing here is tax or investment advice.",
                "The weights for lifting are screening values: follow the local codes, use a trolley"
                    + " or two people. The load on a bench is the load of its heaviest lot and its"
                    + " mean; a place without a limit says so.",
                "Bought-in plants may need passports, an inspection and a time apart: ask the local"
                    + " plant health service."),
            List.of(),
            List.of(),
            true));
  }

  static final String NO_VAT = "All amounts are without VAT.";

  private static Table jobs(String name, String title, int from, int to) {
    List<List<Object>> rows = new ArrayList<>();
    String[] work = {"wire", "pot on", "prune", "root work, pot", "move to winter place"};
    for (int m = from; m < to; m++) {
      for (int k = 0; k < 4 + m % 3; k++) {
        int lot = (m * 5 + k * 3) % 30;
        double hours = 1.5 + (lot * 7 % 13) * 0.75;
        rows.add(
            row(
                FIRST.plusMonths(m),
                PLACES.get(lot % 6),
                lotName(lot),
                work[(m + k) % 5],
                plants(40 + lot * 3.4),
                k % 2 == 0 ? "square 12 litres" : null,
                k % 2 == 0 ? 40 * 7.35 + lot : null,
                hours,
                k % 3 == 0 ? 312.5 : 96.0,
                null));
      }
    }
    return new Table(
        name,
        title,
        List.of("Hours are of one person; two people are needed for a pot above 16 kg."),
        List.of(
            Column.of("month", "month", "", Kind.MONTH),
            Column.of("place", "place", "", Kind.TEXT),
            Column.of("lot", "lot", "", Kind.TEXT),
            Column.of("job", "job", "", Kind.TEXT),
            Column.summed("plants", "plants", "", Kind.PLANTS),
            Column.of("pot", "pot", "", Kind.TEXT),
            Column.summed("litres", "substrate", "litres", Kind.LITRES),
            Column.summed("hours", "work", "hours", Kind.HOURS),
            Column.summed("kg", "moved", "kg", Kind.KG),
            Column.of("done", "done", "", Kind.TO_FILL).wide(6)),
        rows);
  }

  private static Table space() {
    List<List<Object>> rows = new ArrayList<>();
    for (int m = 0; m < MONTHS; m++) {
      for (int p = 0; p < 6; p++) {
        double needed = needed(p, m);
        double over = Math.max(0, needed - CAPACITY[p]);
        rows.add(
            row(
                FIRST.plusMonths(m),
                PLACES.get(p),
                needed,
                CAPACITY[p],
                needed / CAPACITY[p],
                over,
                over > 0 ? "gravel north" : null));
      }
    }
    return new Table(
        "bench-space",
        "Space needed and there, by month and place",
        List.of("Needed is pot or crown and the gap around it; the paths are not counted."),
        List.of(
            Column.of("month", "month", "", Kind.MONTH),
            Column.of("place", "place", "", Kind.TEXT),
            Column.of("needed", "needed", "m²", Kind.SQUARE_METRES),
            Column.of("capacity", "there", "m²", Kind.SQUARE_METRES),
            Column.of("used", "used", "", Kind.SHARE),
            Column.summed("over", "too much", "m²", Kind.SQUARE_METRES).flagged(Flag.ABOVE_ZERO),
            Column.of("room", "most room in", "", Kind.TEXT)),
        rows);
  }

  static double needed(int place, int month) {
    double winter = (month % 12) < 5 && place == 2 ? 22 : 0;
    return CAPACITY[place] * (0.45 + 0.007 * month + 0.05 * Math.sin(month + place)) + winter;
  }

  private static Table orders() {
    List<List<Object>> rows = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      rows.add(
          row(
              FIRST.plusMonths(i),
              i % 2 == 0 ? "round 12 litres" : "pumice 3–6 mm",
              (i * 31) % 200 + 12,
              i % 2 == 0 ? "of 40" : "bag of 33 litres",
              i % 2 == 0 ? 2.35 : 11.9,
              ((i * 31) % 200 + 12) * (i % 2 == 0 ? 2.35 : 11.9)));
    }
    return new Table(
        "to-order",
        "What to order, and by when",
        List.of(),
        List.of(
            Column.of("order_by", "order by", "", Kind.MONTH),
            Column.of("item", "what", "", Kind.TEXT),
            Column.summed("packs", "packs", "", Kind.COUNT),
            Column.of("pack", "pack", "", Kind.TEXT),
            Column.of("price", "price each", "EUR", Kind.MONEY_EACH),
            Column.summed("cost", "cost", "EUR", Kind.MONEY)),
        rows);
  }

  private static Table cash() {
    List<List<Object>> rows = new ArrayList<>();
    double balance = 5_000;
    for (int m = 0; m < MONTHS; m++) {
      double sales = m % 12 == 5 ? 9_100.37 + 411.11 * m : 120.5;
      double work = 912.55 + 140 * Math.sin(m);
      balance += sales - work - 310.25;
      rows.add(row(FIRST.plusMonths(m), sales, -work, -310.25, sales - work - 310.25, balance));
    }
    return new Table(
        "cash",
        "Cash by month",
        List.of("The balance begins at EUR 5,000."),
        List.of(
            Column.of("month", "month", "", Kind.MONTH),
            Column.summed("sales", "sales", "EUR", Kind.MONEY),
            Column.summed("work", "hours paid", "EUR", Kind.MONEY),
            Column.summed("places", "places", "EUR", Kind.MONEY),
            Column.summed("flow", "in less out", "EUR", Kind.MONEY),
            Column.of("balance", "balance", "EUR", Kind.MONEY).flagged(Flag.BELOW_ZERO)),
        rows);
  }

  private static Table lots() {
    List<List<Object>> rows = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      rows.add(
          row(
              lotName(i),
              SPECIES.get(i % 5),
              plants(60 + i * 3.21),
              14.5 + i * 1.25,
              FIRST.minusMonths(i),
              0.02 * i,
              "Arrived bare root; potted the March after; wired in the second winter; the first tenth"
                  + " reaches the patio grade in season 2028/29, the middle one a year later."
                  + (i % 4 == 0 ? " Stood in the cold tunnel from November to March." : ""),
              3.1 + i * 0.35,
              i * 41.7 - 230));
    }
    return new Table(
        "lots",
        "A line of life for each lot",
        List.of(),
        List.of(
            Column.of("lot", "lot", "", Kind.TEXT),
            Column.of("species", "species", "", Kind.TEXT),
            Column.summed("plants", "plants at the start", "", Kind.PLANTS),
            Column.of("trunk_mm", "trunk", "mm", Kind.MM),
            Column.of("arrived", "arrived", "", Kind.MONTH),
            Column.of("lost", "lost", "", Kind.SHARE),
            Column.of("life", "what becomes of it", "", Kind.LONG_TEXT),
            Column.of("cost", "cost to date each", "EUR", Kind.MONEY_EACH),
            Column.summed("result", "result", "EUR", Kind.MONEY).flagged(Flag.BELOW_ZERO)),
        rows);
  }

  private static Table bySeason() {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.of("species", "species", "", Kind.TEXT));
    for (int s = 0; s < SEASONS.size(); s++) {
      columns.add(Column.summed("season_" + (s + 1), SEASONS.get(s), "", Kind.PLANTS));
    }
    List<List<Object>> rows = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      List<Object> row = new ArrayList<>(List.of(SPECIES.get(i)));
      for (int s = 0; s < SEASONS.size(); s++) {
        row.add(plants(120.4 + i * 33.3 - s * 11.7));
      }
      rows.add(row);
    }
    return new Table(
        "stock-by-season",
        "Plants standing at the end of each season",
        List.of("One.", "Two.", "Three.", "A fourth note sends them all below the table."),
        columns,
        rows);
  }

  private static Table count() {
    List<List<Object>> rows = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      rows.add(
          row(PLACES.get(i / 5), lotName(i), SPECIES.get(i % 5), null, null, null, null, null));
    }
    return new Table(
        "count-sheet",
        "Count and measure, in the order of the places",
        List.of(),
        List.of(
            Column.of("place", "place", "", Kind.TEXT),
            Column.of("lot", "lot", "", Kind.TEXT),
            Column.of("species", "species", "", Kind.TEXT),
            Column.of("date", "date", "", Kind.TO_FILL).wide(12),
            Column.of("quantity", "quantity", "", Kind.TO_FILL).wide(12),
            Column.of("trunk_mm", "trunk mm", "", Kind.TO_FILL).wide(12),
            Column.of("quality", "quality", "", Kind.TO_FILL).wide(12),
            Column.of("note", "note", "", Kind.TO_FILL).wide(40)),
        rows);
  }

  private static Table assumptions() {
    return new Table(
        "assumptions",
        "Every value this plan was made with",
        List.of(),
        List.of(
            Column.of("what", "what", "", Kind.TEXT),
            Column.of("value", "value", "", Kind.NUMBER),
            Column.of("unit", "unit", "", Kind.TEXT),
            Column.of("from", "where from", "", Kind.TEXT)),
        List.of(
            row("hourly rate", 18.5, "EUR an hour", "nursery.json"),
            row("waste", 5.0, "%", "default"),
            row("girth base factor", 1.25, "", "default"),
            row("yearly growth of Field maple in a training pot", 0.45, "a year", "species.json")));
  }

  private static Table monthly() {
    List<List<Object>> rows = new ArrayList<>();
    for (int m = 0; m < MONTHS; m++) {
      rows.add(row(FIRST.plusMonths(m), 1.0 / 3 + m, plants(m / 7.0)));
    }
    return new Table(
        "monthly",
        "Month by month",
        List.of(),
        List.of(
            Column.of("month", "month", "", Kind.MONTH),
            Column.of("hours", "hours", "h", Kind.HOURS),
            Column.summed("plants", "plants", "", Kind.PLANTS)),
        rows);
  }

  public static List<Chart> charts() {
    return List.of(
        space(MONTHS, 6),
        new Chart(
            "hours",
            "Hours needed by month",
            "Bars above the dashed line need a hand more.",
            ChartKind.STACKED_BARS,
            "hours a month",
            months(MONTHS),
            List.of(
                series("potting", 0, MONTHS, m -> m % 12 == 4 ? 88 : 12 + m % 5),
                series("wiring", 1, MONTHS, m -> m % 12 < 3 ? 55 : 4),
                series("care", 2, MONTHS, m -> m % 12 > 4 ? 60 + m * 0.4 : 20),
                new Series("available", Role.LIMIT, constant(MONTHS, m -> 110), "", 7))),
        new Chart(
            "stock-by-grade",
            "Plants standing, by grade",
            "The top band is what is ready for the dearest grade.",
            ChartKind.STACKED_BARS,
            "plants",
            months(MONTHS),
            List.of(
                series("not yet graded", 0, MONTHS, m -> 2400 - m * 22),
                series("patio small", 1, MONTHS, m -> 200 + m * 9 - (m % 12) * 14),
                series("patio large", 2, MONTHS, m -> m * 6.5),
                series("specimen", 3, MONTHS, m -> m < 30 ? 0 : (m - 30) * 3.2))),
        new Chart(
            "sales-by-season",
            "Expected sales by season",
            "Without VAT, at the prices of the demand table.",
            ChartKind.STACKED_BARS,
            "EUR a season",
            SEASONS,
            List.of(
                series("patio small", 1, 6, s -> 8200 + s * 300),
                series("patio large", 2, 6, s -> 2100 + s * 2100),
                series("specimen", 3, 6, s -> s < 2 ? 0 : s * 1900))),
        new Chart(
            "substrate",
            "Substrate to buy by season",
            "Net of what is on hand.",
            ChartKind.BARS,
            "litres",
            SEASONS,
            List.of(
                series("pine bark", 0, 6, s -> 1800 - s * 90),
                series("pumice", 1, 6, s -> 900 + s * 40),
                series("akin clay granules", 2, 6, s -> 610 + 10 * s))),
        new Chart(
            "cash",
            "Cash balance",
            "Lowest in May 2028.",
            ChartKind.LINES,
            "EUR",
            months(MONTHS),
            List.of(
                series(
                    "with the ridge lot",
                    0,
                    MONTHS,
                    m -> -6000 + m * 320 - 4000 * Math.sin(m / 3.0)),
                series("without it", 1, MONTHS, m -> 1000 + m * 210 - 2500 * Math.sin(m / 3.0)),
                new Series("lowest allowed", Role.LIMIT, constant(MONTHS, m -> -5000), "", 7))));
  }

  public static Chart space(int months, int places) {
    List<Series> series = new ArrayList<>();
    for (int p = 0; p < places; p++) {
      int place = p % 6;
      String group = PLACES.get(place) + (p < 6 ? "" : " " + p);
      series.add(
          new Series("needed", Role.VALUE, constant(months, m -> needed(place, m)), group, 4));
      series.add(new Series("there", Role.LIMIT, constant(months, m -> CAPACITY[place]), group, 7));
    }
    return new Chart(
        "bench-space",
        "Bench space by place",
        "Hatched: more than the place holds.",
        ChartKind.PANELS,
        "m²",
        months(months),
        series);
  }

  private static List<Problem> problems() {
    return List.of(
        new Problem(
            Severity.WARNING,
            Reason.CONTRADICTION,
            "the lot stands in another pot than its last step names",
            new Where("stock.xlsx", "stock", 7, "pot"),
            "round 3 litres",
            "correct the pot or the last step"),
        new Problem(
            Severity.NOTICE,
            Reason.ASSUMED,
            "no waste is given",
            Where.NOWHERE,
            "",
            "5 % is taken"),
        new Problem(
            Severity.NOTICE,
            Reason.ASSUMED,
            "no cost to date is given",
            new Where("stock.xlsx", "stock", 9, "unit cost"),
            "",
            "0 is taken"));
  }

  public static List<String> months(int count) {
    return IntStream.range(0, count).mapToObj(i -> FIRST.plusMonths(i).toString()).toList();
  }

  static Series series(String name, int colour, int count, IntToDoubleFunction value) {
    return new Series(name, Role.VALUE, constant(count, value), "", colour);
  }

  private static List<Double> constant(int count, IntToDoubleFunction value) {
    return DoubleStream.of(IntStream.range(0, count).mapToDouble(value).toArray()).boxed().toList();
  }

  static Plants plants(double exact) {
    return new Plants(exact, Math.round(exact));
  }

  static String lotName(int i) {
    return "%s %02d".formatted(SPECIES.get(i % 5).split("[ -]")[0].toLowerCase(), 24 - i / 5)
        + (char) ('a' + i % 5);
  }

  public static List<Object> row(Object... cells) {
    return Arrays.asList(cells);
  }
}
