package growingon.load;

import growingon.load.cell.As;
import growingon.load.cell.Cell;
import growingon.load.cell.Findings;
import growingon.load.cell.Names;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.load.cell.Texts;
import growingon.load.own.OwnWords;
import growingon.load.source.JsonObject;
import growingon.load.source.JsonShape;
import growingon.load.source.Table;
import growingon.load.table.DaybookLots;
import growingon.load.table.Defined;
import growingon.load.table.Definitions;
import growingon.load.table.RecordsTable;
import growingon.load.table.SpeciesShape;
import growingon.load.table.SpeciesTable;
import growingon.load.table.StockTable;
import growingon.nursery.Lot;
import growingon.nursery.Offer;
import growingon.nursery.PastRecords;
import growingon.nursery.Reading;
import growingon.nursery.StockList;
import growingon.problem.Where;
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
  private final Definitions known;
  private final StockTable.Sheet stock;
  private final Findings findings;
  private final List<StockList> lists = new ArrayList<>();
  private final Map<Where, Integer> measured = new HashMap<>();
  private final Map<String, Map<String, Double>> priors = new HashMap<>();
  private final Map<String, Map<String, Double>> priorSures = new HashMap<>();
  private final Map<String, String> spelt = new HashMap<>();
  private List<Reading> readings = List.of();

  PastReader(Definitions known, StockTable.Sheet stock, Findings findings) {
    this.known = known;
    this.stock = stock;
    this.findings = findings;
  }

  /** Reads the lists of a nursery, today's among them. */
  void readLists(PastSources sources) {
    lists.addAll(new EarlierLists(known, stock, sources, findings).read());
    Optional<YearMonth> month =
        stock.lots().values().values().stream().map(Lot::counted).max(Comparator.naturalOrder());
    month.ifPresent(
        last ->
            lists.add(
                stock.besides(sources.uncounted(), sources.unmeasured()).list("stock", last)));
    lists.replaceAll(list -> calledAlike(list, sources.words()));
  }

  /**
   * Lots by the names that they have now: as own words say, and case and spaces make no other lot.
   */
  private StockList calledAlike(StockList list, OwnWords words) {
    return new StockList(
        list.name(),
        list.month(),
        list.rows().stream().map(row -> calledAlike(row, words)).toList());
  }

  private StockList.Row calledAlike(StockList.Row row, OwnWords words) {
    Lot lot = row.lot();
    String said = words.find("lot", lot.name()).orElse(lot.name());
    String name =
        stock
            .lots()
            .names()
            .find(said)
            .orElseGet(() -> spelt.computeIfAbsent(Texts.key(said), key -> said));
    return name.equals(lot.name())
        ? row
        : new StockList.Row(
            lot.as(name, lot.papers()),
            row.isCounted(),
            row.isMeasured(),
            row.measured(),
            row.where());
  }

  /** Makes the lots of earlier lists known to the daybook. */
  void tell(DaybookLots lots) {
    lists.forEach(list -> list.rows().forEach(row -> lots.addEarlier(row.lot())));
  }

  /** Takes down how many trunks the mean of a row of the daybook is of. */
  Map<Where, Integer> measured() {
    return measured;
  }

  /**
   * Reads the table of readings.
   *
   * @param learns whether anything is to be learnt from it
   */
  void readRecords(
      Optional<Table> table, boolean learns, Names lots, Defined<Offer> offers, LocalDate today) {
    if (!learns) {
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
  void readPriors(Optional<Table> table, Optional<JsonObject> json, Findings findings) {
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
                known
                    .species()
                    .names()
                    .find(typed)
                    .ifPresent(name -> priorsOf(name, entry, file, findings)));
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

  private void priorsOf(String species, Cell.Field entry, Where file, Findings findings) {
    if (entry.value() instanceof Cell.Fields keys) {
      numbers(species, keys, SpeciesShape.Entry.PRIOR, file, findings)
          .ifPresent(found -> priors.put(species, found));
      numbers(species, keys, SpeciesShape.Entry.PRIOR_SURE, file, findings)
          .ifPresent(found -> priorSures.put(species, found));
    }
  }

  private static Optional<Map<String, Double>> numbers(
      String species, Cell.Fields keys, String key, Where file, Findings findings) {
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
    return new PastRecords(lists, readings, measured, priors, priorSures);
  }
}
