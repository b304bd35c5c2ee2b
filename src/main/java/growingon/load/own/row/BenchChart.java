package growingon.load.own.row;

import growingon.load.own.plant.PlantNames;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.CountText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A chart of what stands where: benches or beds side by side, and in each cell below a lot in
 * words. It is read as a list whose rows are the cells.
 */
public final class BenchChart {
  private static final int ROWS_SEARCHED = 60;
  private static final int LEAST_PLACES = 2;
  private static final int LEAST_LOTS = 3;

  /** What is longer says more than where on its bench a lot stands: front, 2, back. */
  private static final int LONGEST_POSITION = 20;

  private static final List<String> HEADINGS =
      List.of("Plant", "Quantity", "Size", "Place", "Lot", "Note");
  private static final int NOTE = 5;

  private final Sheet sheet;
  private final int heading;
  private final SortedMap<Integer, String> places;
  private final List<SheetRow> rows = new ArrayList<>();

  private BenchChart(Sheet sheet, int heading, SortedMap<Integer, String> places) {
    this.sheet = sheet;
    this.heading = heading;
    this.places = places;
  }

  /** Whether a sheet is a chart. */
  public static boolean isOne(Sheet sheet) {
    return of(sheet).isPresent();
  }

  /** The chart that a sheet is; empty if it is none. */
  static Optional<BenchChart> of(Sheet sheet) {
    for (int i = 0; i < sheet.rows().size() && sheet.rows().get(i).number() <= ROWS_SEARCHED; i++) {
      SortedMap<Integer, String> places = new TreeMap<>();
      sheet
          .rows()
          .get(i)
          .cells()
          .forEach(
              (column, cell) -> {
                if (RowWords.isNamedPlace(cell.text().strip())) {
                  places.put(column, cell.text().strip());
                }
              });
      BenchChart chart = new BenchChart(sheet, i, places);
      if (places.size() >= LEAST_PLACES && chart.isOne()) {
        return Optional.of(chart);
      }
    }
    return Optional.empty();
  }

  /** Whether half of what stands under the places, and more than two cells, are lots. */
  private boolean isOne() {
    List<SheetCell> cells =
        below().flatMap(row -> under(row).values().stream()).filter(SheetCell::isText).toList();
    long lots =
        cells.stream()
            .flatMap(cell -> ChartCell.of(cell.text()).stream().limit(1))
            .filter(lot -> lot.isLot() && PlantNames.shipped().find(lot.name(), "").isPlant())
            .count();
    return lots >= LEAST_LOTS && lots * 2 >= cells.size();
  }

  private Stream<SheetRow> below() {
    return sheet.rows().subList(heading + 1, sheet.rows().size()).stream();
  }

  private SortedMap<Integer, SheetCell> under(SheetRow row) {
    SortedMap<Integer, SheetCell> cells = new TreeMap<>(row.cells());
    cells.keySet().retainAll(places.keySet());
    return cells;
  }

  /** The list that it stands for. */
  Sheet list() {
    rows.addAll(sheet.rows().subList(0, heading));
    SortedMap<Integer, SheetCell> headings = new TreeMap<>();
    HEADINGS.forEach(text -> headings.put(headings.size(), SheetCell.of(text)));
    rows.add(new SheetRow(sheet.rows().get(heading).number(), false, headings));
    places.forEach(this::bench);
    below().forEach(this::remark);
    return new Sheet(
        sheet.file(),
        sheet.name(),
        sheet.csv(),
        rows,
        List.of(),
        sheet.hiddenColumns(),
        sheet.coloured());
  }

  /** One bench from the top, so that marks for "as above" stand below what they mean. */
  private void bench(int column, String place) {
    below()
        .forEach(
            row -> {
              Optional<SheetCell> cell = row.cell(column);
              if (isCount(row)) {
                cell.ifPresent(count -> total(row, count));
              } else if (cell.filter(SheetCell::isText).isPresent()) {
                ChartCell.of(cell.get().text())
                    .forEach(lot -> lot(row, lot, cell.get(), spanned(row, column, place)));
              }
            });
  }

  /** A cell merged over two benches is one lot that stands on both. */
  private String spanned(SheetRow row, int column, String place) {
    return sheet.merges().stream()
        .filter(merge -> merge.covers(row.number(), column))
        .flatMap(
            merge -> places.subMap(merge.firstColumn(), merge.lastColumn() + 1).values().stream())
        .reduce((one, other) -> one + ", " + other)
        .orElse(place);
  }

  private void lot(SheetRow row, ChartCell lot, SheetCell cell, String place) {
    add(
        row,
        List.of(lot.name(), lot.number(), lot.size(), place, lot.code(), lot.note()),
        cell.struck());
  }

  private void total(SheetRow row, SheetCell count) {
    add(row, List.of("total", count.text(), "", "", "", ""), false);
  }

  private void add(SheetRow row, List<String> texts, boolean struck) {
    SortedMap<Integer, SheetCell> cells = new TreeMap<>();
    for (int i = 0; i < texts.size(); i++) {
      if (!texts.get(i).isBlank()) {
        cells.put(
            i,
            new SheetCell(
                texts.get(i), OptionalDouble.empty(), Optional.empty(), true, struck, "", ""));
      }
    }
    rows.add(new SheetRow(row.number(), row.hidden(), cells));
  }

  private boolean isCount(SheetRow row) {
    return row.cells().headMap(places.firstKey()).values().stream()
            .anyMatch(cell -> TotalRows.isCount(cell.text()))
        && under(row).values().stream().allMatch(cell -> CountText.of(cell).value().isPresent());
  }

  /** What is no lot is kept as a remark, so that no row is dropped in silence. */
  private void remark(SheetRow row) {
    List<String> left =
        row.cells().entrySet().stream()
            .filter(each -> !places.containsKey(each.getKey()) || !isLot(each.getValue()))
            .map(each -> each.getValue().text().strip())
            .toList();
    boolean lots = under(row).values().stream().anyMatch(BenchChart::isLot);
    if (!lots && !isCount(row) && !left.isEmpty()) {
      rows.add(
          new SheetRow(
              row.number(),
              row.hidden(),
              new TreeMap<>(Map.of(NOTE, SheetCell.of(String.join("; ", left))))));
    }
  }

  private static boolean isLot(SheetCell cell) {
    return cell.isText() && !ChartCell.of(cell.text()).isEmpty();
  }

  /** What is no plant, as empty places and tools, and what is said below or beside the places. */
  List<String> others() {
    return below()
        .filter(row -> !isCount(row))
        .flatMap(
            row ->
                row.cells().entrySet().stream()
                    .filter(
                        each ->
                            places.containsKey(each.getKey())
                                ? !isLot(each.getValue()) && !CountText.isGone(each.getValue())
                                : each.getValue().text().length() >= LONGEST_POSITION)
                    .map(each -> said(row, each.getValue())))
        .toList();
  }

  private static String said(SheetRow row, SheetCell cell) {
    return "row %d \"%s\"".formatted(row.number(), cell.text().strip());
  }
}
