package growingon.load;

import growingon.load.EarlierLists.Dated;
import growingon.load.cell.As;
import growingon.load.cell.Cell;
import growingon.load.cell.Findings;
import growingon.load.cell.Names;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.load.source.JsonObject;
import growingon.load.source.JsonShape;
import growingon.load.source.Table;
import growingon.load.table.DaybookLots;
import growingon.load.table.Defined;
import growingon.load.table.Definitions;
import growingon.load.table.LotChecks;
import growingon.load.table.ReceiptsTable;
import growingon.load.table.RecordsTable;
import growingon.load.table.SpeciesShape;
import growingon.load.table.SpeciesTable;
import growingon.load.table.StockTable;
import growingon.nursery.Lot;
import growingon.nursery.Offer;
import growingon.nursery.PastRecords;
import growingon.nursery.Reading;
import growingon.nursery.Receipt;
import growingon.nursery.StockList;
import growingon.problem.Where;
import growingon.problem.advice.ListAdvice;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was written down of a nursery's past: earlier lists, readings, numbers measured. */
final class PastReader {
  /** What the list among the nursery's tables is called. */
  private static final String TODAY = "stock";

  private final Definitions known;
  private final boolean isAsked;
  private final Findings findings;
  private final List<StockList> lists = new ArrayList<>();
  private final Map<Where, Integer> measured = new HashMap<>();
  private final Map<String, Map<String, Double>> priors = new HashMap<>();
  private List<Reading> readings = List.of();
  private List<Receipt> receipts = List.of();

  /**
   * Reads of a past.
   *
   * @param isAsked whether anybody asks for it; else only the list that the plan begins with is
   *     read
   */
  PastReader(Definitions known, boolean isAsked, Findings findings) {
    this.known = known;
    this.isAsked = isAsked;
    this.findings = findings;
  }

  /**
   * Reads the stock list that the plan begins with. That is today's; where today's was counted
   * after the plan's first month, it is the last earlier one that was not, and today's is a count.
   *
   * @param today the stock list among the nursery's tables
   * @param nursery the folder or workbook; empty if there is none
   * @param checks of the plan's lots
   */
  StockTable.Sheet readLists(Optional<Table> today, Optional<Path> nursery, LotChecks checks) {
    Optional<Dated> later = later(today);
    List<Dated> dated =
        nursery
            .filter(folder -> isAsked || later.isPresent())
            .map(folder -> new EarlierLists(findings).find(folder))
            .orElse(List.of());
    Optional<Dated> start =
        later.flatMap(
            any ->
                dated.stream()
                    .filter(list -> !list.month().isAfter(known.horizon().firstMonth()))
                    .reduce((older, newer) -> newer));
    return start.isPresent()
        ? readFrom(start.get(), dated, later.orElseThrow())
        : readAsToday(today, dated, checks);
  }

  private StockTable.Sheet readAsToday(Optional<Table> today, List<Dated> dated, LotChecks checks) {
    StockTable.Sheet stock = StockTable.readSheet(today, known, checks);
    if (isAsked) {
      dated.forEach(this::read);
      lastCounted(stock).ifPresent(last -> add(stock, TODAY, last));
    }
    return stock;
  }

  private StockTable.Sheet readFrom(Dated start, List<Dated> dated, Dated today) {
    findings.add(
        ListAdvice.beginsWithEarlier(
            Where.file(start.name()), known.horizon().firstMonth(), today.month()));
    StockTable.Sheet stock = read(start);
    if (isAsked) {
      dated.stream().filter(list -> !list.equals(start)).forEach(this::read);
      read(today);
    } else {
      RecordsTable.leave(Optional.of(today.table()));
    }
    return stock;
  }

  /** Today's list, if it was counted after the plan's first month. */
  private Optional<Dated> later(Optional<Table> today) {
    return today
        .filter(Table::isReadable)
        .flatMap(StockTable::lastCounted)
        .filter(month -> month.isAfter(known.horizon().firstMonth()))
        .map(month -> new Dated(TODAY, today.get(), month, month));
  }

  private StockTable.Sheet read(Dated list) {
    StockTable.Sheet sheet = EarlierLists.read(list, known);
    add(sheet, list.name(), list.month());
    return sheet;
  }

  private void add(StockTable.Sheet sheet, String name, YearMonth month) {
    lists.add(sheet.list(name, month));
  }

  private static Optional<YearMonth> lastCounted(StockTable.Sheet stock) {
    return stock.lots().values().values().stream().map(Lot::counted).max(Comparator.naturalOrder());
  }

  /** Lots of all lists. */
  List<Lot> lots() {
    return lists.stream().flatMap(list -> list.rows().stream()).map(StockList.Row::lot).toList();
  }

  /** Reads what a till or the bookkeeping has of sales, where anybody asks for the past. */
  void readReceipts(Optional<Table> table, DaybookLots lots, LocalDate today) {
    if (isAsked) {
      receipts = ReceiptsTable.read(table, known, lots, today, findings);
    } else {
      RecordsTable.leave(table);
    }
  }

  /** Makes the lots of earlier lists known to the daybook. */
  void tell(DaybookLots lots) {
    lists.forEach(list -> list.rows().forEach(row -> lots.addEarlier(row.lot())));
  }

  /** Takes down how many trunks the mean of a row of the daybook is of. */
  Map<Where, Integer> measured() {
    return measured;
  }

  /** Reads the table of readings. */
  void readRecords(Optional<Table> table, Names lots, Defined<Offer> offers, LocalDate today) {
    if (!isAsked) {
      RecordsTable.leave(table);
      return;
    }
    Map<String, String> species = new HashMap<>();
    offers.values().values().forEach(offer -> species.put(offer.name(), offer.lot().species()));
    lists.forEach(
        list -> list.rows().forEach(row -> species.put(row.lot().name(), row.lot().species())));
    readings = RecordsTable.read(table, known, lots, species, today);
  }

  /** Reads what was assumed before anything was learnt, as fit has written it down. */
  void readPriors(Optional<JsonObject> json) {
    if (!isAsked) {
      return;
    }
    Cell.Field all =
        json.map(file -> file.fields().fields().get(SpeciesShape.SPECIES)).orElse(null);
    if (all == null || !(all.value() instanceof Cell.Fields entries)) {
      return;
    }
    entries
        .fields()
        .forEach(
            (typed, entry) ->
                known
                    .species()
                    .names()
                    .find(typed)
                    .ifPresent(name -> prior(name, entry, json.orElseThrow().where(), findings)));
  }

  private void prior(String species, Cell.Field entry, Where file, Findings findings) {
    if (!(entry.value() instanceof Cell.Fields keys)) {
      return;
    }
    Cell.Field prior = keys.fields().get(SpeciesShape.Entry.PRIOR);
    if (prior == null || !(prior.value() instanceof Cell.Fields values)) {
      return;
    }
    Row row = JsonShape.row(SpeciesTable.FORMAT.name(), values, species, file, findings);
    Map<String, Double> found = new HashMap<>();
    for (String key : row.headings()) {
      row.find(key, As.number(Range.FROM_ZERO)).ifPresent(value -> found.put(key, value));
    }
    priors.put(species, found);
  }

  PastRecords records() {
    return new PastRecords(lists, readings, measured, priors, receipts);
  }
}
