package growingon.load.table;

import growingon.load.cell.Findings;
import growingon.load.cell.Row;
import growingon.load.source.Table;
import growingon.nursery.Lot;
import growingon.problem.advice.FileAdvice;
import growingon.problem.advice.LotAdvice;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What can be seen only when every lot has been read. */
public final class StockChecks {
  private StockChecks() {}

  public static void check(Defined<Lot> stock, Optional<Table> table, Findings findings) {
    table.ifPresent(found -> found.rows().forEach(row -> checkPassport(row, stock)));
    if (table.isPresent() && table.get().isReadable() && table.get().rows().isEmpty()) {
      findings.add(FileAdvice.noLots(table.get().where()));
    }
  }

  /** A lot keeps the passport of the lot it comes from; lots with different ones do not join. */
  private static void checkPassport(Row row, Defined<Lot> stock) {
    if (row.isFailed() || !row.has(StockTable.FROM_LOT)) {
      return;
    }
    String from = row.cell(StockTable.FROM_LOT).shown();
    List<String> passports =
        Stream.concat(
                Stream.of(row.cell(LotCells.PASSPORT).shown()),
                Arrays.stream(from.split(";"))
                    .map(String::strip)
                    .flatMap(name -> stock.names().find(name).stream())
                    .flatMap(name -> stock.find(name).stream())
                    .map(lot -> lot.papers().passport()))
            .filter(passport -> !passport.isEmpty())
            .distinct()
            .toList();
    if (passports.size() > 1) {
      row.fail(StockTable.FROM_LOT, where -> LotAdvice.passportsDiffer(where, from, passports));
    }
  }
}
