package growingon.load.table.lot;

import growingon.load.cell.Findings;
import growingon.load.row.Heading;
import growingon.load.row.Row;
import growingon.load.source.Table;
import growingon.load.table.Defined;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Potting;
import growingon.problem.advice.FileAdvice;
import growingon.problem.advice.LotAdvice;
import java.time.YearMonth;
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

  /** The months of a row, which follow one another. */
  record Months(
      YearMonth arrived, YearMonth counted, Potting potting, Optional<YearMonth> training) {
    /**
     * Reports what cannot be.
     *
     * @param first the plan's first month, or that of a list of the past
     */
    void check(Row row, YearMonth first, boolean isOfThePast) {
      if (row.isFailed()) {
        return;
      }
      if (isOfThePast && arrived.isAfter(first)) {
        row.fail(
            StockTable.ARRIVED,
            where ->
                LotAdvice.listedBeforeArrival(where, row.cell(StockTable.ARRIVED).shown(), first));
      } else if (!isOfThePast && !arrived.isBefore(first)) {
        row.fail(
            StockTable.ARRIVED,
            where ->
                LotAdvice.stockFromTheFuture(where, row.cell(StockTable.ARRIVED).shown(), first));
      } else if (counted.isBefore(arrived)) {
        row.fail(
            StockTable.COUNTED,
            where ->
                LotAdvice.countedBeforeArrival(
                    where, row.cell(StockTable.COUNTED).shown(), arrived));
      }
      notAfter(row, StockTable.COUNTED, Optional.of(counted), first);
      notAfter(row, StockTable.POTTED, potting.potted(), first);
      notAfter(row, StockTable.ROOT_WORK, potting.rootWork(), first);
      notAfter(row, StockTable.TRAINING_SINCE, training, first);
    }
  }

  private static void notAfter(
      Row row, Heading<?> heading, Optional<YearMonth> month, YearMonth first) {
    month
        .filter(found -> found.isAfter(first))
        .ifPresent(
            found ->
                row.fail(
                    heading,
                    where -> LotAdvice.notYetHappened(where, row.cell(heading).shown(), first)));
  }

  static void checkKept(Row row, int quantity, int kept) {
    if (!row.isFailed() && kept > quantity) {
      row.fail(StockTable.KEPT, where -> LotAdvice.keptOverQuantity(where, kept, quantity));
    }
  }
}
