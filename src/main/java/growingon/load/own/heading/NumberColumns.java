package growingon.load.own.heading;

import growingon.load.own.heading.HeadingRead.How;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.Meaning;
import growingon.load.own.text.Titles;
import java.time.YearMonth;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Which column is the number of plants, where headings alone do not say. */
final class NumberColumns {
  private static final String A_PLANT_A_ROW = "a plant a row";

  private final List<HeadingRead> reads;
  private final List<Integer> ranks;
  private final Set<Integer> notUnderstood;
  private final List<SheetRow> body;
  private final ColumnCells cells;
  private final OwnWords own;

  /**
   * Of the columns of a list.
   *
   * @param reads as far as they are known, which is changed
   * @param ranks of their headings, to which one may be added
   * @param notUnderstood columns whose headings nobody knows
   * @param body rows below the headings
   */
  NumberColumns(
      List<HeadingRead> reads,
      List<Integer> ranks,
      Set<Integer> notUnderstood,
      List<SheetRow> body,
      OwnWords own) {
    this.reads = reads;
    this.ranks = ranks;
    this.notUnderstood = notUnderstood;
    this.body = body;
    this.cells = new ColumnCells(body);
    this.own = own;
  }

  private boolean has(String ours) {
    return reads.stream().anyMatch(each -> each.is(ours));
  }

  private Optional<Integer> firstOf(String ours) {
    return IntStream.range(0, reads.size()).filter(i -> reads.get(i).is(ours)).boxed().findFirst();
  }

  /** Whether a second count stands in rows where the first has none. */
  boolean fillsGaps(int second, int first) {
    int column = reads.get(second).column();
    int other = reads.get(first).column();
    return reads.get(first).is("quantity")
        && cells.most(column, CellKinds::isCount)
        && body.stream()
            .anyMatch(
                row ->
                    row.cell(other).isEmpty()
                        && row.cell(column).filter(CellKinds::isCount).isPresent());
  }

  /** Of several counts under months, where nothing else counts, the newest is what is there. */
  void newestCount() {
    Map<Integer, YearMonth> months = new HashMap<>();
    for (int i = 0; i < reads.size(); i++) {
      HeadingRead read = reads.get(i);
      if (read.how() == How.OPEN
          && notUnderstood.contains(read.column())
          && cells.most(read.column(), CellKinds::isCount)) {
        int index = i;
        Titles.month(SheetCell.of(read.heading())).ifPresent(month -> months.put(index, month));
      }
    }
    if (months.size() < 2 || has("quantity") || has(Columns.SIZE_HEADING) || has("packs")) {
      return;
    }
    int newest = Collections.max(months.entrySet(), Map.Entry.comparingByValue()).getKey();
    months
        .keySet()
        .forEach(
            i -> {
              HeadingRead read = reads.get(i);
              reads.set(
                  i,
                  i == newest
                      ? read.as("quantity", "", How.LIKELY, "the newest of several counts")
                      : read.as(Meaning.NOT_READ, "", How.CERTAIN, "an older count"));
            });
  }

  /** Where nothing counts and every row has a code or price of its own, a row is one plant. */
  void settleNumber() {
    boolean counted = has("quantity") || has(Columns.SIZE_HEADING) || has("packs");
    Optional<Integer> tags =
        firstOf("lot")
            .or(() -> firstOf("selling price"))
            .or(() -> firstOf("unit cost"))
            .or(() -> firstOf("row cost"))
            .or(this::numbering);
    boolean all = tags.isPresent() && reads.get(tags.get()).rows() >= body.size() * 9 / 10;
    boolean mayCount =
        reads.stream()
            .anyMatch(
                read ->
                    read.is(Meaning.OPEN)
                        && (read.choices().isEmpty() || read.choices().contains("quantity"))
                        && cells.most(read.column(), CellKinds::isCount));
    boolean refused =
        own.find(OwnWords.HEADING, A_PLANT_A_ROW).filter(Meaning.NOT_READ::equals).isPresent();
    if (!own.list().isOffers() && !counted && all && !mayCount && !refused) {
      HeadingRead read = reads.get(tags.get());
      reads.add(
          new HeadingRead(
              read.sheet(),
              read.row(),
              Columns.PLANT_A_ROW_COLUMN,
              A_PLANT_A_ROW,
              Columns.PLANT_A_ROW,
              "",
              How.LIKELY,
              List.of(),
              body.size(),
              read.example(),
              "no column is the number, so a row is a plant"));
      ranks.add(1);
      reads.replaceAll(HeadingRead::ofOnePlant);
    }
  }

  /** A column that numbers the rows tags them. */
  private Optional<Integer> numbering() {
    return IntStream.range(0, reads.size())
        .filter(i -> reads.get(i).isNumbering())
        .boxed()
        .findFirst();
  }
}
