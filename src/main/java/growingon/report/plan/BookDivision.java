package growingon.report.plan;

import growingon.report.model.Book;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.plan.bought.LotsBoughtSheet;
import growingon.report.text.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which tables of a plan stand in the book to act on and which are details. A sheet that has tables
 * of both kinds is divided: what stands behind it gets a sheet of its own.
 */
final class BookDivision {
  /** Sheets that stand whole in the book to act on. */
  private static final Set<String> PLAN = Set.of("Summary", "Notes");

  /**
   * A sheet that is divided.
   *
   * @param acted names of the tables to act on
   * @param behind name of the sheet of all others
   */
  private record Division(Set<String> acted, String behind) {}

  private static final Map<String, Division> DIVIDED =
      Map.of(
          "Jobs",
          new Division(Set.of("jobs-next"), "Later jobs"),
          "To order",
          new Division(Set.of("orders-plants", "orders-next", "orders-by-season"), "All orders"),
          "Bench space",
          new Division(Set.of("space-overflow", "room-next"), "Bench space by month"),
          LotsBoughtSheet.NAME,
          new Division(
              Set.of(LotsBoughtSheet.GAINS, LotsBoughtSheet.LIMITS, "lot-verdicts"),
              "Lots bought in full"),
          "Cash",
          new Division(Set.of("cash-by-season", "reconciliation"), "Cash by month"),
          "Sales",
          new Division(Set.of("sales-by-season", "ready-next"), "Sales in full"));

  private BookDivision() {}

  /** The sheets of the book to act on, then those of the details, each in the order given. */
  static List<Sheet> of(List<Sheet> sheets) {
    List<Sheet> acted = new ArrayList<>();
    List<Sheet> details = new ArrayList<>();
    for (Sheet sheet : sheets) {
      Division division = DIVIDED.get(sheet.name());
      if (division != null) {
        acted.add(sheet.withTables(tables(sheet, division, true)));
        details.add(behind(sheet, division));
      } else if (PLAN.contains(sheet.name())) {
        acted.add(sheet);
      } else {
        details.add(sheet.withBook(Book.DETAILS));
      }
    }
    return Stream.concat(acted.stream(), details.stream()).toList();
  }

  private static Sheet behind(Sheet sheet, Division division) {
    List<Table> rest = tables(sheet, division, false);
    List<String> said =
        sheet.sentences().stream().filter(Sentences.ofAllTables()::contains).toList();
    return new Sheet(division.behind(), said, rest, List.of(), sheet.portrait(), Book.DETAILS);
  }

  /** The name of the first part of a table that goes on in others: room-next of room-next-2. */
  private static String first(String name) {
    return name.replaceFirst("-\\d+$", "");
  }

  private static List<Table> tables(Sheet sheet, Division division, boolean acted) {
    return sheet.tables().stream()
        .filter(table -> division.acted().contains(first(table.name())) == acted)
        .toList();
  }
}
