package growingon.load.own.heading;

import growingon.load.own.sheet.SheetCell;
import growingon.load.own.text.Meaning;
import growingon.load.own.text.MonthText;
import growingon.load.own.text.OfferMonth;
import growingon.load.own.text.Units;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a column is whose heading leaves it open, by its cells.
 *
 * @param reads all columns, as far as they are read
 */
record OpenColumn(List<HeadingRead> reads, ColumnCells cells, OwnWords own) {
  private boolean has(String ours) {
    return reads.stream().anyMatch(each -> each.is(ours));
  }

  Optional<String> byCells(HeadingRead read) {
    Set<String> choices = new HashSet<>(read.choices());
    int column = read.column();
    if (choices.equals(Set.of("lot", "quantity"))) {
      return Optional.of(numberOrLot(read));
    }
    if (choices.equals(Set.of("arrived", "quantity"))) {
      return datesOrNumbers(column);
    }
    if (choices.equals(Set.of("supplier", "arrived"))) {
      boolean months =
          cells.all(column, MonthText::isMonth)
              || own.list().isOffers() && cells.all(column, OfferMonth::isOne);
      return Optional.of(months ? "arrived" : "supplier");
    }
    if (choices.equals(Set.of("quantity", "species"))) {
      return cells.most(column, SheetCell::isText) && !cells.most(column, CellKinds::isCount)
          ? Optional.of("species")
          : Optional.of("quantity");
    }
    if (choices.equals(Set.of("arrived", "note"))) {
      return cells.all(column, cell -> isMonth(read, cell))
          ? Optional.of("arrived")
          : Optional.empty();
    }
    return size(read, choices);
  }

  /** What an open column of sizes, pots and forms is. */
  private Optional<String> size(HeadingRead read, Set<String> choices) {
    int column = read.column();
    if (choices.contains("size") && cells.most(column, CellKinds::saysWhichSize)) {
      return Optional.of("size");
    }
    if (choices.equals(Set.of("pot", "note")) && cells.most(column, CellKinds::holdsAPot)) {
      return Optional.of("pot");
    }
    if (choices.contains("quality word") && cells.most(column, CellKinds::hasWords)) {
      return Optional.of("quality word");
    }
    if (choices.contains("height cm") && Units.isLength(read.unit())) {
      return Optional.of("height cm");
    }
    if (choices.contains("clear stem")
        && (has("girth cm") || cells.all(column, CellKinds::isClearStem))) {
      return Optional.of("clear stem");
    }
    boolean sized =
        has(Columns.SIZE_HEADING)
            || reads.stream().anyMatch(each -> each.column() == SizeGroup.SIZE_COLUMN);
    return read.choices().contains(Meaning.NOT_READ) && sized
        ? Optional.of(Meaning.NOT_READ)
        : Optional.empty();
  }

  private static boolean isMonth(HeadingRead read, SheetCell cell) {
    return MonthText.isMonth(cell)
        || read.unit().equals(Units.WEEK)
            && new MonthText(Optional.empty(), false).ofWeek(cell).value().isPresent();
  }

  /** The number of plants if no other column is; else the lot if all differ; else not read. */
  private String numberOrLot(HeadingRead read) {
    boolean other =
        reads.stream()
            .anyMatch(
                each -> each != read && (each.is("quantity") || each.is(Columns.SIZE_HEADING)));
    List<String> texts = cells.of(read.column()).stream().map(SheetCell::text).toList();
    boolean differ = new HashSet<>(texts).size() == texts.size();
    boolean counts = cells.most(read.column(), CellKinds::isCount);
    if (counts && (!other || !differ)) {
      return "quantity";
    }
    if (!counts) {
      return "lot";
    }
    boolean counting = true;
    for (int i = 0; i < texts.size(); i++) {
      counting &= texts.get(i).equals(Integer.toString(i + 1));
    }
    return counting ? Meaning.NOT_READ : "lot";
  }

  private Optional<String> datesOrNumbers(int column) {
    boolean counts = cells.all(column, CellKinds::isCount);
    boolean months = cells.all(column, MonthText::isMonth);
    if (months || has("quantity") && !counts && cells.most(column, MonthText::isMonth)) {
      return Optional.of("arrived");
    }
    if (counts && has("quantity")) {
      return Optional.of("note");
    }
    return counts && !mayBeTheNumber(column) ? Optional.of("quantity") : Optional.empty();
  }

  /** Whether a column that is not understood counts as well, and may be what is left. */
  private boolean mayBeTheNumber(int column) {
    return reads.stream()
        .anyMatch(
            read ->
                read.column() != column
                    && read.how() == HeadingRead.How.OPEN
                    && read.why().startsWith(Columns.NOT_UNDERSTOOD)
                    && cells.all(read.column(), CellKinds::isCount));
  }
}
