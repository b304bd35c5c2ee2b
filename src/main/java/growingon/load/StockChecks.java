package growingon.load;

import growingon.nursery.Lot;
import growingon.nursery.Offer;
import growingon.nursery.PlaceKind;
import growingon.nursery.Plan;
import growingon.problem.Advice;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What can be seen only when every lot has been read. */
final class StockChecks {
  private StockChecks() {}

  static void check(
      Definitions known,
      Defined<Lot> stock,
      Optional<Table> table,
      Defined<Offer> offers,
      Plan plan,
      Findings findings) {
    table.ifPresent(found -> found.rows().forEach(row -> checkPassport(row, stock)));
    if (table.isPresent() && table.get().isReadable() && table.get().rows().isEmpty()) {
      findings.add(Advice.noLots(table.get().where()));
    }
    checkApart(known, stock, offers, plan, findings);
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
      row.fail(StockTable.FROM_LOT, where -> Advice.passportsDiffer(where, from, passports));
    }
  }

  /** Lots that should stand apart need a place to do so. */
  private static void checkApart(
      Definitions known, Defined<Lot> stock, Defined<Offer> offers, Plan plan, Findings findings) {
    boolean quarantine =
        known.places().values().values().stream()
            .anyMatch(place -> place.kind() == PlaceKind.QUARANTINE);
    if (quarantine || known.places().values().isEmpty()) {
      return;
    }
    Stream<Lot> bought =
        offers.values().values().stream()
            .filter(offer -> plan.take().getOrDefault(offer.name(), 0) > 0)
            .map(Offer::lot);
    List<String> apart =
        Stream.concat(stock.values().values().stream(), bought)
            .filter(lot -> lot.apartMonths() > 0)
            .filter(lot -> lot.arrived().plusMonths(lot.apartMonths()).isAfter(plan.firstMonth()))
            .map(Lot::name)
            .toList();
    if (!apart.isEmpty()) {
      findings.add(Advice.noQuarantine(apart));
    }
  }
}
