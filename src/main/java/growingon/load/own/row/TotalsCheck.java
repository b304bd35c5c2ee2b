package growingon.load.own.row;

import growingon.load.own.lot.Draft;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What a list says its rows add up to, against what was read. */
final class TotalsCheck {
  private static final String COLOURS = "colours are not read";

  private TotalsCheck() {}

  static List<StatedTotal> of(Sheet sheet, BlockReader block) {
    List<StatedTotal> totals = new ArrayList<>();
    int since = 0;
    for (TotalRows.TotalRow total : block.totals()) {
      Predicate<Draft> over = over(block, since, total);
      List<Draft> last = lots(block, since, total, over);
      List<Draft> all = lots(block, 0, total, over);
      boolean isAll = last.isEmpty() || isNearer(sum(all), sum(last), total.stated());
      List<Draft> of = section(block, total, all).orElse(isAll ? all : last);
      int before = totals.isEmpty() ? 0 : totals.get(totals.size() - 1).row();
      int from = isAll || before == total.row() ? 0 : before;
      String why = why(of, total.stated());
      totals.add(
          new StatedTotal(
              sheet.name(),
              total.row(),
              (long) total.stated(),
              sum(of),
              why.isEmpty() && sum(of) != total.stated()
                  ? unsaid(sheet, leftOut(block, from, total.row(), over))
                  : why));
      since = total.lotsBefore();
    }
    return totals;
  }

  /** The lots that a total is over: all, or those of its sizes where it is not that of all. */
  private static Predicate<Draft> over(BlockReader block, int since, TotalRows.TotalRow total) {
    boolean ofAll =
        Stream.of(0, since)
            .anyMatch(from -> sum(lots(block, from, total, lot -> true)) == total.stated());
    return ofAll ? lot -> true : total::isOver;
  }

  private static List<Draft> lots(
      BlockReader block, int from, TotalRows.TotalRow total, Predicate<Draft> over) {
    return block.lots().subList(from, total.lotsBefore()).stream().filter(over).toList();
  }

  /** Where rows are coloured, what the colours say is not in what was read. */
  private static String unsaid(Sheet sheet, String leftOut) {
    String and = leftOut.isEmpty() ? "" : leftOut + ", and ";
    return sheet.coloured() ? and + COLOURS : leftOut;
  }

  /** The lots below one title, where it is these that the total says. */
  private static Optional<List<Draft>> section(
      BlockReader block, TotalRows.TotalRow total, List<Draft> lots) {
    List<Integer> titles =
        block.kinds().entrySet().stream()
            .filter(each -> each.getValue() == RowKind.GROUP)
            .map(Map.Entry::getKey)
            .toList();
    for (int i = 0; i <= titles.size() && !titles.isEmpty(); i++) {
      int from = i == 0 ? 0 : titles.get(i - 1);
      int to = i == titles.size() ? total.row() : titles.get(i);
      List<Draft> section = lots.stream().filter(lot -> lot.row > from && lot.row < to).toList();
      if (!section.isEmpty() && sum(section) == total.stated()) {
        return Optional.of(section);
      }
    }
    return Optional.empty();
  }

  private static boolean isNearer(long one, long other, double to) {
    return Math.abs(one - to) < Math.abs(other - to);
  }

  /** Rows that wait for an answer, or are no plants, are not in what was read. */
  private static String leftOut(BlockReader block, int from, int to, Predicate<Draft> over) {
    List<Integer> asked =
        between(block.asked().stream().filter(over).map(draft -> draft.row).toList(), from, to);
    List<Integer> passed = block.passed().notRead();
    List<String> parts = new ArrayList<>();
    if (!asked.isEmpty()) {
      parts.add(rows(asked) + " left out till you answer");
    }
    if (!between(passed, from, to).isEmpty()) {
      parts.add(rows(between(passed, from, to)) + " not read");
    }
    return String.join(", and ", parts);
  }

  private static List<Integer> between(List<Integer> rows, int from, int to) {
    return rows.stream().filter(row -> row > from && row < to).distinct().sorted().toList();
  }

  private static String rows(List<Integer> rows) {
    return Words.rows(rows) + (rows.size() == 1 ? " is" : " are");
  }

  private static long sum(List<Draft> lots) {
    return lots.stream().mapToLong(Draft::counted).sum();
  }

  /** Numbers typed as text are left out by a spreadsheet's sum. */
  private static String why(List<Draft> lots, double stated) {
    List<Draft> texts = lots.stream().filter(lot -> lot.quantityIsText).toList();
    if (sum(lots) == stated || texts.isEmpty() || sum(lots) - sum(texts) != stated) {
      return "";
    }
    return "it leaves out %s typed as text (%s %s)"
        .formatted(
            texts.size() == 1 ? "a number" : Words.number(texts.size()) + " numbers",
            texts.size() == 1 ? "row" : "rows",
            String.join(", ", texts.stream().map(lot -> Integer.toString(lot.row)).toList()));
  }
}
