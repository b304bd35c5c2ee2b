package growingon.load.own.row;

import growingon.load.own.sheet.Sheet;
import growingon.load.own.text.Words;
import growingon.problem.MarkedText;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Rows of a list that are no lots or are hidden, and what the grower is told of them. */
final class PassedOver {
  final Tally struck = new Tally();
  final Tally notStock = new Tally();

  /** Rows whose plants come after the count. */
  final Tally toCome = new Tally();

  /** Hidden rows, which are read. */
  final Tally hidden = new Tally();

  /** Rows that name canes, pots and the like. */
  final Tally things = new Tally();

  /** Rows with what a plant of each size costs. */
  final Tally prices = new Tally();

  /** Rows below a total that are said of the list. */
  final Tally belowTotal = new Tally();

  /** Rows and plants of one kind. */
  static final class Tally {
    private final List<Integer> rows = new ArrayList<>();
    private long plants;

    void add(int row, long number) {
      rows.add(row);
      plants += number;
    }

    private Stream<String> told(Sheet sheet, String what) {
      boolean one = rows.size() == 1;
      return rows.isEmpty()
          ? Stream.empty()
          : Stream.of(
              sheet.said(
                  "%s %s with %s plants %s %s (%s %s)"
                      .formatted(
                          MarkedText.number(rows.size()),
                          one ? "row" : "rows",
                          MarkedText.number(plants),
                          one ? "is" : "are",
                          what,
                          one ? "row" : "rows",
                          String.join(", ", rows.stream().map(Object::toString).toList()))));
    }

    private Stream<String> named(Sheet sheet, String what) {
      return rows.isEmpty()
          ? Stream.empty()
          : Stream.of(sheet.said("%s is not read (%s)".formatted(what, Words.rows(rows))));
    }
  }

  /** What is told of a sheet's rows. */
  List<String> told(Sheet sheet) {
    return Stream.of(
            struck.told(sheet, "struck through and taken as gone"),
            notStock.told(sheet, "marked as sold, ordered or no stock and not read"),
            toCome.told(sheet, "to come after the count and not read"),
            hidden.told(sheet, "hidden, and read"),
            prices.named(sheet, "what a plant of each size costs"),
            belowTotal.named(sheet, "what stands below your total"),
            things.named(sheet, "what is no plant"))
        .flatMap(each -> each)
        .toList();
  }

  /** Rows that are in no sum of what was read. */
  List<Integer> notRead() {
    return Stream.of(things, notStock, toCome, struck).flatMap(each -> each.rows.stream()).toList();
  }
}
