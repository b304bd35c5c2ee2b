package growingon.nursery.library;

import growingon.nursery.species.Habit;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * The library as it stands in three tables beside this class: taxa.csv, a row for each species;
 * conditions.csv, a row for each growing condition; sources.csv.
 */
final class Shipped {
  private Shipped() {}

  static Library library() {
    return new Library(
        rows("taxa.csv").stream().map(Shipped::taxon).toList(),
        rows("conditions.csv").stream().map(Shipped::condition).toList(),
        rows("sources.csv").stream().map(Shipped::source).toList());
  }

  private static List<CSVRecord> rows(String name) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream stream = Shipped.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its file " + name);
      }
      return format.parse(new InputStreamReader(stream, StandardCharsets.UTF_8)).getRecords();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static Taxon taxon(CSVRecord row) {
    return new Taxon(
        row.get("species"),
        row.get("name"),
        list(row, "other names", "; "),
        list(row, "stands in for", "; "),
        OneOf.word(Habit.values(), row.get("kind")),
        number(row, "mm a year field"),
        Basis.of(row.get("basis")),
        Integer.parseInt(row.get("sources of growth")),
        number(row, "most mm"),
        percent(row, "vigour spread %"),
        percent(row, "year spread %"),
        percent(row, "first-year loss %"),
        percent(row, "later loss %"),
        Transplanting.of(row.get("transplanting")),
        row.get("usual propagation"),
        row.get("winter protection").equals("yes"),
        row.get("caution"),
        list(row, "growth source ids", " "),
        list(row, "loss source ids", " "));
  }

  private static GrowingCondition condition(CSVRecord row) {
    return new GrowingCondition(
        row.get("condition"),
        row.get("where"),
        row.get("pots"),
        optional(row, "litres about"),
        number(row, "factor"),
        number(row, "site spread"),
        number(row, "condition spread"),
        optional(row, "most mm"),
        number(row, "first-year loss factor"),
        percent(row, "later loss more %"),
        list(row, "source ids", " "));
  }

  private static Source source(CSVRecord row) {
    return new Source(
        row.get("id"),
        row.get("citation"),
        row.get("year"),
        row.get("what it measures"),
        row.get("licence"),
        row.get("reference"),
        row.get("used for"));
  }

  private static List<String> list(CSVRecord row, String heading, String between) {
    return Arrays.stream(row.get(heading).split(between)).filter(each -> !each.isEmpty()).toList();
  }

  private static double number(CSVRecord row, String heading) {
    return Double.parseDouble(row.get(heading));
  }

  private static double percent(CSVRecord row, String heading) {
    return number(row, heading) / 100;
  }

  private static OptionalDouble optional(CSVRecord row, String heading) {
    return row.get(heading).isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(number(row, heading));
  }
}
