package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.cell.Findings;
import growingon.load.list.OwnFile;
import growingon.load.own.ListReader;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.lot.Site;
import growingon.load.own.row.ListRead;
import growingon.load.own.size.Span;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Lists by people who had seen neither this program nor its rules, with what each row says as they
 * wrote it down themselves before any of it was read. The lists and all names in them are invented.
 */
class ListsByStrangersTest {
  private static final Path LISTS = Path.of("src/test/resources/own/others");
  private static final Path TRUTH = Path.of("src/test/resources/own/truth");

  /**
   * Read otherwise than they meant it, by rule: a ball is as high as it is wide, and 60/70 without
   * a word is a height.
   */
  private static final Set<String> BY_RULE =
      Set.of(
          "55 28 height",
          "57 31 height",
          "59 20 height",
          "60 5 height",
          "60 6 height",
          "60 7 height",
          "63 5 height",
          "63 6 height",
          "63 8 height",
          "63 11 height",
          "63 16 height",
          "67 14 height",
          "69 26 height",
          "76 8 height");

  /** Of all values; the rest is asked. */
  private static final double LEAST_RIGHT = 0.95;

  private static final int LEAST_VALUES = 2_500;

  /** Columns of the questions that ask for a value. */
  private static final Map<String, Set<String>> ASKED_AS =
      Map.of(
          "plants", Set.of("quantity"),
          "litres", Set.of("pot", "size"),
          "height", Set.of("size", "height cm"),
          "trunk", Set.of("size", "girth cm", "trunk mm"),
          "cost", Set.of("unit cost"),
          "price", Set.of("selling price"));

  /** A value of a row. */
  private record Value(String where, boolean right, boolean asked, String said) {}

  static Stream<String> lists() throws IOException {
    try (Stream<Path> files = Files.list(TRUTH)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList().stream();
    }
  }

  private static ListRead read(String truth) throws IOException {
    String number = truth.substring(0, 2);
    try (Stream<Path> files = Files.list(LISTS)) {
      Path path =
          files
              .filter(file -> file.getFileName().toString().matches(number + " .*(csv|xlsx)"))
              .findFirst()
              .orElseThrow();
      var sheets = OwnFile.read(path, new Findings()).orElseThrow();
      return isOfASupplier(truth)
          ? ListReader.readOffers(path, sheets, OwnWords.NONE, Site.USUAL, YearMonth.of(2026, 11))
          : ListReader.read(path, sheets, OwnWords.NONE, Site.USUAL);
    }
  }

  private static boolean isOfASupplier(String truth) {
    return truth.startsWith("64") || truth.startsWith("69");
  }

  private static List<Value> values(String truth) throws IOException {
    ListRead read = read(truth);
    List<Value> values = new ArrayList<>();
    for (CSVRecord row : meant(truth)) {
      add(truth.substring(0, 2), row, read, values);
    }
    return values;
  }

  private static List<CSVRecord> meant(String truth) throws IOException {
    try (CSVParser rows =
        CSVParser.parse(
            TRUTH.resolve(truth),
            StandardCharsets.UTF_8,
            CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get())) {
      return rows.getRecords();
    }
  }

  private static boolean isRow(CSVRecord row, OwnLot lot) {
    return lot.row() == Integer.parseInt(row.get("row"))
        && (row.get("sheet").isEmpty() || lot.sheet().equals(row.get("sheet")));
  }

  private static void add(String list, CSVRecord row, ListRead read, List<Value> values) {
    String where = list + " " + row.get("row");
    List<OwnLot> lots =
        Stream.concat(read.lots().stream(), read.asked().stream())
            .filter(lot -> isRow(row, lot))
            .filter(lot -> row.get("size").isEmpty() || isOf(lot, row))
            .toList();
    if (lots.isEmpty()) {
      boolean doubted = !row.get("doubt").isEmpty();
      values.add(new Value(where + " lot", doubted, false, "no lot"));
      return;
    }
    OwnLot lot = lots.get(0);
    boolean left = read.asked().contains(lot);
    Predicate<String> asked =
        what ->
            left
                || read.questions().stream()
                    .filter(each -> each.row() == lot.row() && each.sheet().equals(lot.sheet()))
                    .anyMatch(each -> ASKED_AS.get(what).contains(each.column()));
    OptionalDouble plants =
        lot.quantity().isPresent()
            ? OptionalDouble.of(lot.quantity().getAsInt())
            : OptionalDouble.empty();
    Function<String, OptionalDouble> stated =
        column ->
            row.get(column).isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Double.parseDouble(row.get(column)));
    check(where + " plants", stated.apply("plants"), plants, 0, row, asked, values);
    if (stated.apply("litres").isPresent()) {
      check(where + " litres", stated.apply("litres"), lot.potLitres(), 0.2, row, asked, values);
    }
    OptionalDouble from = stated.apply("height from");
    OptionalDouble height =
        from.isEmpty()
            ? from
            : OptionalDouble.of((from.getAsDouble() + stated.apply("height to").getAsDouble()) / 2);
    check(where + " height", height, lot.heightCm(), 0.13, row, asked, values);
    check(where + " trunk", trunk(stated), lot.trunkFromMm(), 0.02, row, asked, values);
    check(where + " cost", stated.apply("cost"), lot.unitCost(), 0.02, row, asked, values);
    if (!isOfASupplier(list)) {
      check(where + " price", stated.apply("price"), lot.sellingPrice(), 0.02, row, asked, values);
    }
  }

  private static OptionalDouble trunk(Function<String, OptionalDouble> stated) {
    OptionalDouble girth = stated.apply("girth from");
    return girth.isPresent()
        ? OptionalDouble.of(
            Site.USUAL.trunkMm(Span.of(girth.getAsDouble(), girth.getAsDouble())).from())
        : stated.apply("trunk");
  }

  private static boolean isOf(OwnLot lot, CSVRecord row) {
    return lot.quantity().isPresent()
        && Integer.toString(lot.quantity().getAsInt()).equals(row.get("plants"));
  }

  private static void check(
      String where,
      OptionalDouble meant,
      OptionalDouble found,
      double tolerance,
      CSVRecord row,
      Predicate<String> asked,
      List<Value> values) {
    String what = where.substring(where.lastIndexOf(' ') + 1);
    boolean doubted = List.of(row.get("doubt").split(" ")).contains(what);
    boolean same =
        meant.isPresent() == found.isPresent()
            && Math.abs(meant.orElse(0) - found.orElse(0)) <= tolerance * meant.orElse(0) + 1e-3;
    if (!doubted && !BY_RULE.contains(where)) {
      values.add(
          new Value(
              where,
              same,
              asked.test(what) || found.isEmpty(),
              "meant %s, read %s".formatted(meant, found)));
    }
  }

  @ParameterizedTest
  @MethodSource("lists")
  void nothingIsReadOtherwiseThanItWasMeant_withoutAWord(String truth) throws IOException {
    List<Value> values = values(truth);
    assertThat(values).isNotEmpty();
    assertThat(values).filteredOn(value -> !value.right() && !value.asked()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("lists")
  void rowsThatAreNoPlants_areNoLots(String truth) throws IOException {
    List<CSVRecord> meant = meant(truth);
    ListRead read = read(truth);
    assertThat(read.lots())
        .filteredOn(
            lot ->
                read.questions().stream()
                    .noneMatch(
                        each ->
                            each.row() == lot.row()
                                && each.sheet().equals(lot.sheet())
                                && each.question().contains("to be sold")))
        .filteredOn(lot -> meant.stream().noneMatch(row -> isRow(row, lot)))
        .extracting(lot -> lot.sheet() + " " + lot.row() + " " + lot.ownName())
        .isEmpty();
  }

  @Test
  void nineteenOfTwentyValues_areRead() throws IOException {
    List<Value> all = new ArrayList<>();
    for (String truth : lists().toList()) {
      all.addAll(values(truth));
    }
    assertThat(all).hasSizeGreaterThan(LEAST_VALUES);
    long right = all.stream().filter(Value::right).count();
    assertThat((double) right / all.size()).isGreaterThan(LEAST_RIGHT);
  }
}
