package growingon.demo;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * Invents the daybook of demo-data/two-seasons-on: what happened from November 2022 to October 2024
 * to the five lots of plans/two-seasons-on.json.
 *
 * <p>{@link #lines} tells each lot's story in the order of its happenings: how many plants came,
 * died, sold and in which month, at about which price. A generator of random numbers with a fixed
 * seed only chooses the day, the customer and how far a price, an hour or a trunk lies from what is
 * told; so the same daybook comes every time. A count says what the lines before it leave alive.
 * Nobody and nothing in it is real.
 *
 * <p>The story has a lot that paid (the tridents, sold early), one that did not (of the crabs,
 * bought half unseen, nearly half died and few were firsts), one that is not yet decided (the
 * hornbeams are still in the field), and a lot that was split in three (the maples).
 *
 * <p>To write the file again: {@code mvn -q test -Dtest=DemoDaybookTest -Ddemo.write=true}.
 */
final class DemoDaybook {
  static final Path FILE = Path.of("demo-data", "two-seasons-on", "daybook.csv");

  private static final String HEADINGS =
      "date,lot,what,quantity,to lot,grade,quality,trunk mm,trunk spread %,amount,hours,customer"
          + " code,reason,note";
  private static final long SEED = 2022;
  private static final int LAST_DAY_OF_WORK = 25;
  private static final int DAY_OF_COUNTS = 28;
  private static final int CUSTOMERS = 14;

  /** The other side of a split, which is no line of its own. */
  private static final String JOINED = "";

  private static final String TRIDENTS = "Polder tridents";
  private static final String CRABS = "Cobnut Farm crabs";
  private static final String WHIPS = "Hornbeam whips";
  private static final String MAPLES = "Maples of 2020";
  private static final String SINGLE = "Maples single stem";
  private static final String TWIN = "Maples twin stem";
  private static final String YEWS = "Yews of 2018";

  private final Random random = new Random(SEED);
  private final List<Line> lines = new ArrayList<>();

  private DemoDaybook() {}

  /**
   * A line.
   *
   * @param change plants that come to the lot, below nil those that leave it
   * @param quantity as written
   * @param rest the columns from "to lot" on
   */
  private record Line(
      LocalDate date, String lot, String what, int change, String quantity, String rest) {
    String csv() {
      return String.join(",", date.toString(), lot, what, quantity, rest);
    }
  }

  /** The whole file. */
  static String text() {
    StringBuilder text = new StringBuilder(HEADINGS).append('\n');
    new DemoDaybook().told().forEach(line -> text.append(line.csv()).append('\n'));
    return text.toString();
  }

  private List<Line> told() {
    tridents();
    crabs();
    whips();
    maples();
    yews();
    ofNoLot("2023-10", 268, 3.5, "pump of the irrigation mended");
    lines.sort(Comparator.comparing(Line::date));
    return counted();
  }

  /** Fills in what is alive at each count. */
  private List<Line> counted() {
    Map<String, Integer> alive = new HashMap<>(Map.of(MAPLES, 200, YEWS, 44));
    List<Line> filled = new ArrayList<>();
    for (Line line : lines) {
      int now = alive.merge(line.lot, line.change, Integer::sum);
      boolean count = line.what.equals("counted");
      String quantity = count ? Integer.toString(now) : line.quantity;
      if (!line.what.equals(JOINED)) {
        filled.add(new Line(line.date, line.lot, line.what, line.change, quantity, line.rest));
      }
    }
    return filled;
  }

  private void tridents() {
    arrives(TRIDENTS, "2023-02-16", 60, 1487.70, "two with broken leaders");
    works(TRIDENTS, "2023-04", "pots", 205, 11.5, "potted on");
    dies(TRIDENTS, "2023-05", 2, "broken in transport");
    works(TRIDENTS, "2023-06", "", 0, 7.5, "summer trim");
    sells(TRIDENTS, "2023-09", 9, "started", "first", 58);
    sells(TRIDENTS, "2023-10", 8, "started", "first", 59);
    counts(TRIDENTS, "2023-10", 26.5, 12);
    works(TRIDENTS, "2023-11", "materials", 34, 15, "first wiring");
    sells(TRIDENTS, "2024-03", 8, "started", "first", 66);
    sells(TRIDENTS, "2024-04", 11, "started", "first", 68);
    comesBack(TRIDENTS, "2024-04", 1, 66.50);
    sells(TRIDENTS, "2024-05", 7, "started", "first", 67);
    sells(TRIDENTS, "2024-06", 4, "started", "second", 41);
    works(TRIDENTS, "2024-06", "", 0, 2, "summer trim");
    sells(TRIDENTS, "2024-10", 9, "branched", "first", 99);
    counts(TRIDENTS, "2024-10", 29.4, 13);
  }

  private void crabs() {
    arrives(CRABS, "2023-02-21", 70, 5560, "lifted late with dry roots");
    works(CRABS, "2023-03", "pots", 396, 22, "reduced and potted");
    dies(CRABS, "2023-05", 8, "did not root");
    dies(CRABS, "2023-06", 11, "did not root");
    dies(CRABS, "2023-07", 7, "drought");
    works(CRABS, "2023-07", "materials", 14, 9, "summer trim");
    culls(CRABS, "2023-08", 12, "crowns died back");
    dies(CRABS, "2023-11", 2, "voles");
    counts(CRABS, "2023-11", 54.5, 11);
    sells(CRABS, "2024-03", 3, "stout", "first", 158);
    sells(CRABS, "2024-04", 4, "stout", "first", 155);
    works(CRABS, "2023-12", "materials", 45, 16, "first wiring");
    sells(CRABS, "2024-05", 4, "stout", "second", 88);
    works(CRABS, "2024-07", "", 0, 4, "summer trim");
    sells(CRABS, "2024-09", 3, "stout", "first", 160);
    dies(CRABS, "2024-08", 3, "drought");
    counts(CRABS, "2024-10", 56.5, 11);
  }

  private void whips() {
    arrives(WHIPS, "2022-12-08", 150, 193.50, "");
    works(WHIPS, "2023-01", "materials", 22, 4.5, "planted out");
    works(WHIPS, "2023-05", "", 0, 4, "hoed");
    dies(WHIPS, "2023-06", 9, "drought");
    dies(WHIPS, "2023-08", 6, "drought");
    counts(WHIPS, "2023-11", 16.4, 17);
    works(WHIPS, "2024-03", "", 0, 3.5, "undercut");
    works(WHIPS, "2024-05", "", 0, 4, "hoed");
    dies(WHIPS, "2024-05", 5, "notifiable? wilted from the tip");
    dies(WHIPS, "2024-07", 3, "voles");
    counts(WHIPS, "2024-10", 20.1, 19);
  }

  private void maples() {
    sells(MAPLES, "2022-11", 6, "started", "first", 45);
    splits("2023-02-09", 60, SINGLE, "straight stems");
    splits("2023-02-09", 50, TWIN, "forked low");
    for (String lot : List.of(MAPLES, SINGLE, TWIN)) {
      works(lot, "2023-03", "pots", 178, 13, "into 18 litre pots");
      works(lot, "2023-06", "", 0, 6, "summer trim");
      counts(lot, "2023-11", lot.equals(TWIN) ? 18.6 : 19.8, 16);
      works(lot, "2024-06", "", 0, 4.5, "summer trim");
      counts(lot, "2024-10", lot.equals(TWIN) ? 21.2 : 22.9, 17);
    }
    dies(MAPLES, "2023-04", 2, "vine weevil");
    dies(TWIN, "2023-05", 3, "vine weevil");
    sells(MAPLES, "2023-04", 9, "started", "first", 46);
    sells(SINGLE, "2023-05", 12, "started", "first", 49);
    sells(SINGLE, "2023-10", 9, "started", "first", 52);
    sells(MAPLES, "2024-04", 14, "started", "first", 47);
    sells(SINGLE, "2024-05", 13, "started", "first", 55);
    sells(TWIN, "2024-05", 11, "started", "second", 29);
    disappears(MAPLES, "2024-06", 2, "gone from the roadside");
    sells(SINGLE, "2024-09", 6, "branched", "first", 91);
    sells(MAPLES, "2024-10", 8, "started", "first", 48);
  }

  private void yews() {
    works(YEWS, "2023-03", "substrate", 62, 9, "re-potted");
    works(YEWS, "2023-06", "", 0, 4.5, "summer trim");
    sells(YEWS, "2023-03", 3, "clothed", "first", 84);
    sells(YEWS, "2023-05", 4, "clothed", "first", 85);
    used(YEWS, "2023-05", 2, "clipping class");
    dies(YEWS, "2023-08", 1, "wet feet");
    sells(YEWS, "2023-10", 4, "clothed", "first", 86);
    counts(YEWS, "2023-11", 25.4, 15);
    sells(YEWS, "2024-04", 6, "clothed", "first", 89);
    works(YEWS, "2024-06", "", 0, 3, "summer trim");
    sells(YEWS, "2024-09", 4, "layered", "first", 224);
    counts(YEWS, "2024-10", 27.1, 15);
  }

  private void arrives(String lot, String date, int plants, double amount, String note) {
    comes(
        LocalDate.parse(date), lot, "arrived", plants, rest("amount", money(amount), "note", note));
  }

  private void dies(String lot, String month, int plants, String reason) {
    goes(day(month), lot, "died", plants, rest("reason", reason));
  }

  private void culls(String lot, String month, int plants, String reason) {
    goes(day(month), lot, "culled", plants, rest("reason", reason));
  }

  private void disappears(String lot, String month, int plants, String reason) {
    goes(day(month), lot, "lost", plants, rest("reason", reason));
  }

  private void used(String lot, String month, int plants, String note) {
    goes(day(month), lot, "used", plants, rest("note", note));
  }

  /** A plant sold before is brought back, and paid back. */
  private void comesBack(String lot, String month, int plants, double refund) {
    LocalDate date = YearMonth.parse(month).atDay(LAST_DAY_OF_WORK + 1);
    comes(
        date,
        lot,
        "returned",
        plants,
        rest("amount", money(refund), "reason", "did not fit the car"));
  }

  private void splits(String date, int plants, String to, String note) {
    LocalDate day = LocalDate.parse(date);
    goes(day, MAPLES, "split", plants, rest("to lot", to, "note", note));
    lines.add(new Line(day, to, JOINED, plants, "", ""));
  }

  /** Hours, and money of a kind of cost if there is any, on one line. */
  private void works(
      String lot, String month, String kind, double amount, double hours, String job) {
    String worked = number(Math.round(hours * near(0.1) * 4) / 4.0);
    String spent = amount == 0 ? "" : money(amount * near(0.05));
    String rest = rest("amount", spent, "hours", worked, "reason", kind, "note", job);
    lines.add(new Line(day(month), lot, "spent", 0, "", rest));
  }

  /** Money and hours that no lot caused. */
  private void ofNoLot(String month, double amount, double hours, String note) {
    String rest = rest("amount", money(amount), "hours", number(hours), "note", note);
    lines.add(new Line(day(month), "", "spent", 0, "", rest));
  }

  /** Sells so many within a month, a few to each customer. */
  private void sells(
      String lot, String month, int plants, String grade, String quality, double price) {
    for (int left = plants; left > 0; ) {
      int some = Math.min(left, 2 + random.nextInt(4));
      double each = Math.round(price * near(0.05) * 2) / 2.0;
      String customer = "K%02d".formatted(1 + random.nextInt(CUSTOMERS));
      String rest =
          rest(
              "grade",
              grade,
              "quality",
              quality,
              "amount",
              money(some * each),
              "customer code",
              customer);
      goes(day(month), lot, "sold", some, rest);
      left -= some;
    }
  }

  /** All plants alive and their trunks, at the end of a month. */
  private void counts(String lot, String month, double trunk, int spread) {
    String mean = number(Math.round(trunk * near(0.01) * 10) / 10.0);
    String rest = rest("trunk mm", mean, "trunk spread %", Integer.toString(spread));
    lines.add(new Line(YearMonth.parse(month).atDay(DAY_OF_COUNTS), lot, "counted", 0, "", rest));
  }

  private void comes(LocalDate date, String lot, String what, int plants, String rest) {
    lines.add(new Line(date, lot, what, plants, Integer.toString(plants), rest));
  }

  private void goes(LocalDate date, String lot, String what, int plants, String rest) {
    lines.add(new Line(date, lot, what, -plants, Integer.toString(plants), rest));
  }

  /** The columns from "to lot" on: headings, each with its value. */
  private static String rest(String... headingsAndValues) {
    List<String> headings = List.of(HEADINGS.split(","));
    String[] cells = new String[headings.size() - 4];
    Arrays.fill(cells, "");
    for (int i = 0; i < headingsAndValues.length; i += 2) {
      cells[headings.indexOf(headingsAndValues[i]) - 4] = headingsAndValues[i + 1];
    }
    return String.join(",", cells);
  }

  private LocalDate day(String month) {
    return YearMonth.parse(month).atDay(1 + random.nextInt(LAST_DAY_OF_WORK));
  }

  /** A factor that lies at most so far from 1. */
  private double near(double most) {
    return 1 + most * (2 * random.nextDouble() - 1);
  }

  private static String money(double amount) {
    return String.format(Locale.ROOT, "%.2f", amount);
  }

  private static String number(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
