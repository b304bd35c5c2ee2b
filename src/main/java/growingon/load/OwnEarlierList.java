package growingon.load;

import growingon.load.cell.Findings;
import growingon.load.file.TextRows;
import growingon.load.own.ListReader;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.row.ListRead;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.usual.UsualNursery;
import growingon.load.source.Grid;
import growingon.load.source.Table;
import growingon.load.table.lot.Definitions;
import growingon.load.table.lot.LotChecks;
import growingon.load.table.lot.StockTable;
import growingon.nursery.lot.Lot;
import growingon.problem.Where;
import growingon.problem.advice.FitAdvice;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An earlier stock list in the grower's own words. It is read as today's own list is; what it does
 * not say, or says of pots and routes that the nursery has no more, is taken from the lot of that
 * name as it is now. Lots of plants that the nursery grows no more are left out, which is told.
 */
final class OwnEarlierList {
  private final ListRead read;
  private final Where where;
  private final PastSources sources;

  private OwnEarlierList(ListRead read, Where where, PastSources sources) {
    this.read = read;
    this.where = where;
    this.sources = sources;
  }

  /**
   * The list in some sheets, if they are one.
   *
   * @param name of its file
   */
  static Optional<OwnEarlierList> of(String name, List<Sheet> sheets, PastSources sources) {
    if (!ListReader.isList(sheets)) {
      return Optional.empty();
    }
    ListRead read = ListReader.read(Path.of(name), sheets, sources.words(), sources.site());
    return read.lots().isEmpty()
        ? Optional.empty()
        : Optional.of(new OwnEarlierList(read, Where.file(name), sources));
  }

  /** The month of the count, where a title says it. */
  Optional<YearMonth> month() {
    return read.counted();
  }

  /**
   * Its rows, counted in some month.
   *
   * @param now today's lots
   */
  StockTable.Sheet sheet(
      YearMonth month, Definitions then, StockTable.Sheet now, Findings findings) {
    // Faults of single rows leave these out; the list itself was told of when it was today's.
    Findings unheard = new Findings();
    List<OwnLot> lots = read.lots().stream().filter(lot -> lot.quantity().isPresent()).toList();
    UsualNursery usual = new UsualNursery(lots, read.file(), "EUR", month, sources.site().south());
    Table table = Table.of(grid(usual, then, now), StockTable.FORMAT, unheard);
    StockTable.Sheet sheet =
        StockTable.readEarlier(Optional.of(table), then, new LotChecks(then))
            .besides(read.uncounted(), read.unmeasured());
    int left = read.lots().size() - sheet.lots().values().size();
    if (left > 0) {
      findings.add(FitAdvice.leftOutOfList(where, left, read.lots().size()));
    }
    List<String> unread = read.maybeTrunks();
    if (!unread.isEmpty() && read.unmeasured().size() == read.lots().size()) {
      findings.add(FitAdvice.noTrunksOfList(where, unread));
    }
    return sheet;
  }

  private Grid grid(UsualNursery usual, Definitions then, StockTable.Sheet now) {
    List<Map<String, String>> rows =
        usual.lots().stream().map(lot -> row(lot, usual.stockRow(lot), then, now)).toList();
    return TextRows.grid(
        where, rows, usual.lots().stream().map(lot -> Math.max(2, lot.row())).toList());
  }

  /** As its row in the stock table, in the words of the nursery of today. */
  private static Map<String, String> row(
      OwnLot own, Map<String, String> usual, Definitions then, StockTable.Sheet now) {
    Map<String, String> row = new LinkedHashMap<>(usual);
    row.remove("place");
    Optional<Lot> today = now.lots().find(own.lot());
    today.ifPresent(
        lot -> {
          row.put("species", lot.species());
          row.put("form", lot.form().toString());
          if (own.arrived().isEmpty()) {
            row.put("arrived", lot.arrived().toString());
          }
          if (!then.routes().names().contains(row.get("route"))) {
            row.put("route", lot.route());
          }
          boolean otherPot =
              row.containsKey("pot") && !then.pots().names().contains(row.get("pot"));
          boolean noPot = !row.containsKey("pot") && own.form().isEmpty();
          if (otherPot || noPot) {
            row.remove("pot");
            lot.potting().pot().ifPresent(pot -> row.put("pot", pot));
          }
        });
    return row;
  }
}
