package growingon.start;

import growingon.load.TableFormats;
import growingon.load.TableFormats.Column;
import growingon.load.TableFormats.Setting;
import growingon.report.model.InputBook;
import growingon.report.model.InputBook.Holds;
import growingon.report.model.InputBook.InputColumn;
import growingon.report.model.InputBook.InputSheet;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;

/** Puts the workbook to type over together from the headings, their notes and the example rows. */
final class StarterBook {
  /** The order in which a grower comes to them. */
  private static final List<String> ORDER =
      List.of(
          "quick",
          "stock",
          "offers",
          "daybook",
          "records",
          "receipts",
          "species",
          "grades",
          "demand",
          "routes",
          "pots",
          "mixes",
          "components",
          "materials",
          "places",
          "care",
          "hours",
          "other cash",
          "qualities",
          "settings");

  /** What the list holds, what it is not for, and what a setting says for all months. */
  private static final List<String> NOT_LAID_OUT = List.of("quick", "stock", "hours");

  private static final String QUICK = "quick";
  private static final String SETTINGS = "settings";
  private static final String SPECIES = "species";
  private static final Pattern MONTH = Pattern.compile("[0-9]{4}-[0-9]{2}");

  private final int yearsLater;
  private final List<String> species;
  private final List<HeadingNote> notes = HeadingNote.all();

  /**
   * A book.
   *
   * @param yearsLater years by which the months of the example rows are moved
   * @param species names that get a row each, filled by the library
   */
  StarterBook(int yearsLater, List<String> species) {
    this.yearsLater = yearsLater;
    this.species = List.copyOf(species);
  }

  InputBook book() {
    List<InputSheet> sheets = ORDER.stream().map(this::sheet).toList();
    List<String> words = Resource.text("read-me.txt").lines().toList();
    return new InputBook("A nursery to type over", words, sheets, Choices.all());
  }

  /** A sheet for each table that a list of the grower's own does not hold, with these rows. */
  List<InputSheet> laidOut(Map<String, List<Map<String, String>>> rows) {
    return ORDER.stream()
        .filter(table -> !NOT_LAID_OUT.contains(table))
        .map(
            table ->
                sheet(
                    table,
                    table.equals(SETTINGS)
                        ? settings(rows.getOrDefault(table, List.of()))
                        : rows.getOrDefault(table, List.of())))
        .map(StarterBook::withoutLots)
        .toList();
  }

  /** The lots stand in the grower's list, so no column can choose from them. */
  private static InputSheet withoutLots(InputSheet sheet) {
    List<InputColumn> columns =
        sheet.columns().stream()
            .map(
                column ->
                    column.choice().equals("lot")
                        ? new InputColumn(
                            column.heading(),
                            column.note(),
                            column.holds(),
                            column.needed(),
                            column.expert(),
                            "")
                        : column)
            .toList();
    return new InputSheet(sheet.name(), columns, sheet.rows(), sheet.closedFrom(), sheet.fill());
  }

  private InputSheet sheet(String table) {
    return sheet(table, examples(table));
  }

  private InputSheet sheet(String table, List<Map<String, String>> examples) {
    List<InputColumn> columns =
        notes.stream()
            .filter(note -> note.table().equals(table))
            .map(note -> column(note, examples))
            .toList();
    List<List<String>> rows =
        examples.stream()
            .map(
                row ->
                    columns.stream().map(column -> row.getOrDefault(column.heading(), "")).toList())
            .toList();
    boolean quick = table.equals(QUICK);
    int closedFrom = quick ? QuickRows.asked() : rows.size();
    return new InputSheet(table, columns, rows, closedFrom, quick ? 1 : -1);
  }

  private InputColumn column(HeadingNote note, List<Map<String, String>> examples) {
    String example =
        examples.stream()
            .map(row -> row.getOrDefault(note.heading(), ""))
            .filter(value -> !value.isEmpty())
            .findFirst()
            .orElse("");
    Column column = note.column();
    return new InputColumn(
        note.heading(),
        note.text(example),
        Holds.valueOf(column.holds().name()),
        column.needed(),
        column.expert(),
        column.choice());
  }

  private List<Map<String, String>> examples(String table) {
    return switch (table) {
      case QUICK -> QuickRows.all();
      case SETTINGS -> settings();
      case SPECIES -> species();
      default -> rows(table);
    };
  }

  /** The species asked for, filled by the library, then the examples that are none of them. */
  private List<Map<String, String>> species() {
    List<Map<String, String>> examples = rows(SPECIES);
    String ladder = examples.get(0).get("ladder");
    List<Map<String, String>> rows = new ArrayList<>();
    for (String name : species) {
      rows.add(Map.of("species", name, "ladder", ladder, "library", "yes"));
    }
    examples.stream()
        .filter(row -> species.stream().noneMatch(row.get("species")::equalsIgnoreCase))
        .forEach(rows::add);
    return rows;
  }

  private List<Map<String, String>> rows(String table) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (CSVRecord row : Resource.rows("tables/" + table.replace(' ', '-') + ".csv")) {
      Map<String, String> moved = new LinkedHashMap<>();
      row.toMap().forEach((heading, value) -> moved.put(heading, moved(value)));
      rows.add(moved);
    }
    return rows;
  }

  private String moved(String value) {
    return MONTH.matcher(value).matches()
        ? YearMonth.parse(value).plusYears(yearsLater).toString()
        : value;
  }

  /** Every setting, with the example's value where it has one. */
  private List<Map<String, String>> settings() {
    return settings(rows(SETTINGS));
  }

  private static List<Map<String, String>> settings(List<Map<String, String>> stated) {
    Map<String, String> values =
        stated.stream().collect(Collectors.toMap(row -> row.get("name"), row -> row.get("value")));
    List<Map<String, String>> rows = new ArrayList<>();
    for (Setting setting : TableFormats.settings()) {
      rows.add(
          Map.of(
              "name", setting.name(),
              "value", values.getOrDefault(setting.name(), ""),
              "note", setting.says()));
    }
    return rows;
  }
}
