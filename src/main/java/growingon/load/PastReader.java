package growingon.load;

import growingon.load.EarlierLists.Dated;
import growingon.load.cell.Cell;
import growingon.load.cell.Findings;
import growingon.load.cell.Range;
import growingon.load.cell.Texts;
import growingon.load.own.heading.OwnWords;
import growingon.load.row.As;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.source.JsonObject;
import growingon.load.source.JsonShape;
import growingon.load.source.Table;
import growingon.load.table.Defined;
import growingon.load.table.lot.Definitions;
import growingon.load.table.lot.LotChecks;
import growingon.load.table.lot.StockTable;
import growingon.load.table.past.DaybookLots;
import growingon.load.table.past.ReceiptsTable;
import growingon.load.table.past.RecordsTable;
import growingon.load.table.species.SpeciesShape;
import growingon.load.table.species.SpeciesTable;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.record.PastRecords;
import growingon.nursery.record.Reading;
import growingon.nursery.record.Receipt;
import growingon.nursery.record.StockList;
import growingon.problem.Where;
import growingon.problem.advice.ListAdvice;
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

  /** Kind of own words that say how a lot is called now. */
  private static final String LOT = "lot";

  private final Definitions known;
  private final boolean isAsked;
  private final Findings findings;
  private final List<StockList> lists = new ArrayList<>();
  private final Map<Where, Integer> measured = new HashMap<>();
  private final Map<String, Map<String, Double>> priors = new HashMap<>();
  private final Map<String, Map<String, Double>> priorSures = new HashMap<>();
  private final Map<String, String> called = new HashMap<>();
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
   * @param sources where the past is written down; empty if nowhere
   * @param checks of the plan's lots
   * @param thisMonth the month it is
   */
  StockTable.Sheet readLists(
      Optional<Table> today, Optional<PastSources> sources, LotChecks checks, YearMonth thisMonth) {
    Optional<Dated> counted = later(today, sources);
    List<Dated> dated =
        sources
            .filter(any -> isAsked || counted.isPresent() || isOfSomeMonth(today, any, thisMonth))
            .map(found -> new EarlierLists(found, findings).find())
            .orElse(List.of());
    Optional<Dated> later = counted.or(() -> ownLater(today, sources, dated, thisMonth));
    Optional<Dated> start =
        later.flatMap(
            any ->
                dated.stream()
                    .filter(list -> !list.month().isAfter(known.horizon().firstMonth()))
                    .reduce((older, newer) -> newer));
    StockTable.Sheet stock =
        start.isPresent()
            ? readFrom(start.get(), dated, later.orElseThrow(), today.orElseThrow(), sources)
            : readAsToday(today, dated, sources, checks);
    sources.ifPresent(found -> callAlike(stock.lots().names(), found.words()));
    return stock;
  }

  private StockTable.Sheet readAsToday(
      Optional<Table> today, List<Dated> dated, Optional<PastSources> sources, LotChecks checks) {
    StockTable.Sheet stock = StockTable.readSheet(today, known, checks);
    if (isAsked) {
      dated.forEach(list -> add(list.read(known, stock), list.name(), list.month()));
      lastCounted(stock).ifPresent(last -> add(besides(stock, sources), TODAY, last));
    }
    return stock;
  }

  private StockTable.Sheet readFrom(
      Dated start, List<Dated> dated, Dated later, Table today, Optional<PastSources> sources) {
    findings.add(
        ListAdvice.beginsWithEarlier(
            Where.file(start.name()), known.horizon().firstMonth(), later.month()));
    StockTable.Sheet now = StockTable.Sheet.none();
    if (isAsked || start.isOwn()) {
      now = later.readWhole(known, now);
    } else {
      RecordsTable.leave(Optional.of(today));
    }
    StockTable.Sheet stock = start.readWhole(known, now);
    add(stock, start.name(), start.month());
    if (isAsked) {
      for (Dated list : dated) {
        if (!list.equals(start)) {
          add(list.read(known, now), list.name(), list.month());
        }
      }
      add(besides(now, sources), TODAY, later.month());
    }
    return stock;
  }

  /** Without the numbers and trunks that today's own list does not have. */
  private static StockTable.Sheet besides(StockTable.Sheet today, Optional<PastSources> sources) {
    return sources.map(found -> today.besides(found.uncounted(), found.unmeasured())).orElse(today);
  }

  /** Today's list, if it was counted after the plan's first month. */
  private Optional<Dated> later(Optional<Table> today, Optional<PastSources> sources) {
    return today
        .filter(Table::isReadable)
        .flatMap(StockTable::lastCounted)
        .or(() -> sources.flatMap(PastSources::month))
        .flatMap(month -> later(today, month));
  }

  private Optional<Dated> later(Optional<Table> today, YearMonth month) {
    return today
        .filter(Table::isReadable)
        .filter(any -> month.isAfter(known.horizon().firstMonth()))
        .map(table -> Dated.ours(TODAY, table, month, month));
  }

  /** Whether today's own list says of no month, while the plan begins in the past. */
  private boolean isOfSomeMonth(Optional<Table> today, PastSources sources, YearMonth thisMonth) {
    return sources.isOwn()
        && sources.month().isEmpty()
        && today.filter(Table::isReadable).flatMap(StockTable::lastCounted).isEmpty()
        && thisMonth.isAfter(known.horizon().firstMonth());
  }

  /**
   * An own list that says of no month is of this one where the list of the plan's first month lies
   * among the earlier ones; else it is what the plan begins with.
   */
  private Optional<Dated> ownLater(
      Optional<Table> today,
      Optional<PastSources> sources,
      List<Dated> dated,
      YearMonth thisMonth) {
    boolean isBegunByAnother =
        dated.stream().anyMatch(list -> list.month().equals(known.horizon().firstMonth()));
    return sources
        .filter(any -> isBegunByAnother && isOfSomeMonth(today, any, thisMonth))
        .flatMap(any -> later(today, thisMonth));
  }

  private void add(StockTable.Sheet sheet, String name, YearMonth month) {
    lists.add(sheet.list(name, month));
  }

  private static Optional<YearMonth> lastCounted(StockTable.Sheet stock) {
    return stock.lots().values().values().stream().map(Lot::counted).max(Comparator.naturalOrder());
  }

  /**
   * Calls lots by the names that the plan has for them: as own words say, and case and spaces make
   * no other lot.
   */
  private void callAlike(Names planned, OwnWords words) {
    planned.all().forEach(name -> words.find(LOT, name).ifPresent(said -> call(said, name)));
    lists.replaceAll(
        list ->
            new StockList(
                list.name(),
                list.month(),
                list.rows().stream().map(row -> calledAlike(row, planned, words)).toList()));
  }

  private void call(String said, String name) {
    called.putIfAbsent(Texts.key(said), name);
  }

  private StockList.Row calledAlike(StockList.Row row, Names planned, OwnWords words) {
    Lot lot = row.lot();
    String said = words.find(LOT, lot.name()).orElse(lot.name());
    String name =
        planned.find(said).orElseGet(() -> called.computeIfAbsent(Texts.key(said), key -> said));
    if (name.equals(lot.name())) {
      return row;
    }
    call(lot.name(), name);
    return new StockList.Row(
        lot.as(name, lot.papers()), row.isCounted(), row.isMeasured(), row.measured(), row.where());
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
    called.forEach(lots::alsoCalled);
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
  void readPriors(Optional<Table> table, Optional<JsonObject> json) {
    if (!isAsked) {
      return;
    }
    table.ifPresent(found -> found.rows().forEach(this::priorsOf));
    Cell.Field all =
        json.map(file -> file.fields().fields().get(SpeciesShape.SPECIES)).orElse(null);
    if (all == null || !(all.value() instanceof Cell.Fields entries)) {
      return;
    }
    Where file = json.orElseThrow().where();
    entries
        .fields()
        .forEach(
            (typed, entry) ->
                known.species().names().find(typed).ifPresent(name -> priorsOf(name, entry, file)));
  }

  /** Columns that begin so are written by fit. */
  private void priorsOf(Row row) {
    Optional<String> species =
        known.species().names().find(row.cell(SpeciesTable.FORMAT.name()).shown());
    for (String heading : species.isEmpty() ? List.<String>of() : row.headings()) {
      boolean isSure = heading.startsWith(SpeciesTable.PRIOR_SURE);
      if (isSure || heading.startsWith(SpeciesTable.PRIOR)) {
        String key =
            SpeciesTable.keyOf(
                heading.substring(
                    (isSure ? SpeciesTable.PRIOR_SURE : SpeciesTable.PRIOR).length()));
        row.find(heading, As.number(Range.FROM_ZERO))
            .ifPresent(
                value ->
                    (isSure ? priorSures : priors)
                        .computeIfAbsent(species.get(), each -> new HashMap<>())
                        .put(key, value));
      }
    }
  }

  private void priorsOf(String species, Cell.Field entry, Where file) {
    if (entry.value() instanceof Cell.Fields keys) {
      numbers(species, keys, SpeciesShape.Entry.PRIOR, file)
          .ifPresent(found -> priors.put(species, found));
      numbers(species, keys, SpeciesShape.Entry.PRIOR_SURE, file)
          .ifPresent(found -> priorSures.put(species, found));
    }
  }

  private Optional<Map<String, Double>> numbers(
      String species, Cell.Fields keys, String key, Where file) {
    Cell.Field written = keys.fields().get(key);
    if (written == null || !(written.value() instanceof Cell.Fields values)) {
      return Optional.empty();
    }
    Row row = JsonShape.row(SpeciesTable.FORMAT.name(), values, species, file, findings);
    Map<String, Double> found = new HashMap<>();
    for (String each : row.headings()) {
      row.find(each, As.number(Range.FROM_ZERO)).ifPresent(value -> found.put(each, value));
    }
    return Optional.of(found);
  }

  PastRecords records() {
    return new PastRecords(lists, readings, measured, priors, priorSures, receipts);
  }
}
