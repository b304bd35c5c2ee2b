package growingon.load.settings;

import growingon.load.cell.Cell;
import growingon.load.cell.Cell.Fields;
import growingon.load.cell.CellFault;
import growingon.load.cell.Findings;
import growingon.load.cell.Range;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Names;
import growingon.load.row.Quantities;
import growingon.load.row.Row;
import growingon.load.row.Rows;
import growingon.load.source.JsonObject;
import growingon.load.source.JsonShape;
import growingon.load.table.Defined;
import growingon.load.table.lot.Definitions;
import growingon.load.table.lot.Orders;
import growingon.nursery.Plan;
import growingon.nursery.Plan.PlannedHold;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.market.HorizonValue;
import growingon.nursery.time.Horizon;
import growingon.problem.Where;
import growingon.problem.advice.FileAdvice;
import growingon.problem.advice.PlanAdvice;
import growingon.problem.advice.ValueAdvice;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** The plan of a plan.json (see {@link PlanShape}), or the one that holds where there is none. */
public final class PlanReader {
  private static final String TABLE = "plan";
  private static final String STOCK_VALUE = "stock value";
  public static final Range SEASONS = Range.of(1, 40);

  private final Row row;
  private final boolean stated;
  private YearMonth firstMonth;
  private int seasons;

  private PlanReader(Row row, boolean stated) {
    this.row = row;
    this.stated = stated;
  }

  /** The plan of a file. */
  public static PlanReader of(JsonObject json, Findings findings) {
    return new PlanReader(json.row(TABLE, findings), true);
  }

  /** No plan.json: the stock and the offers marked "take". */
  public static PlanReader none(Findings findings) {
    return new PlanReader(Rows.none(TABLE, "", findings), false);
  }

  /** The nursery that a plan's file names, or the folder that the file stands in. */
  public Path nursery(Path planFile) {
    Path folder = planFile.toAbsolutePath().getParent();
    return row.find(PlanShape.NURSERY, path()).map(folder::resolve).orElse(folder).normalize();
  }

  /** The folder that it names for its report. */
  public Optional<Path> reportFolder(Path planFile) {
    Path folder = planFile.toAbsolutePath().getParent();
    return row.find(PlanShape.REPORT_FOLDER, path()).map(folder::resolve).map(Path::normalize);
  }

  private static As<Path> path() {
    return new As<>(Path.of(""), (cell, spot) -> pathOf(cell), Path::toString, heading -> "");
  }

  private static Path pathOf(Cell cell) {
    try {
      return Path.of(As.TEXT.reader().read(cell, null));
    } catch (InvalidPathException noPath) {
      throw new CellFault(where -> FileAdvice.notAPath(where, cell.shown()));
    }
  }

  /** Where the value of a key stands. */
  public Where where(String key) {
    return row.where(key);
  }

  /**
   * Reads first month and seasons; needed before anything that lies in time.
   *
   * @param usual first month of a plan that states none
   */
  public void readHorizon(Supplier<YearMonth> usual) {
    firstMonth =
        row.has(PlanShape.FIRST_MONTH)
            ? row.get(PlanShape.FIRST_MONTH, As.MONTH)
            : row.get(PlanShape.FIRST_MONTH, As.MONTH, usual.get());
    seasons = row.get(PlanShape.SEASONS, As.whole(SEASONS), 5);
  }

  public YearMonth firstMonth() {
    return firstMonth;
  }

  public int seasons() {
    return seasons;
  }

  /** Whether months and seasons could not be read; then nothing can be checked against them. */
  public boolean isWithoutHorizon() {
    return row.isFailed();
  }

  /** Whether the plan says which offers are taken; if not, the offers table does. */
  public boolean statesTakes() {
    return stated && row.has(PlanShape.TAKE);
  }

  /**
   * The whole plan.
   *
   * @param nursery whose name the plan has if it states none
   * @param name if it states none
   * @param stock every lot of the stock list that is fine, and the names of all
   * @param offers every offer that is fine, and the names of all
   * @param known the months of the plan, and what lots may name
   */
  public Plan read(
      Where nursery,
      String name,
      Defined<Lot> stock,
      Defined<Offer> offers,
      Definitions known,
      Findings findings) {
    Horizon horizon = known.horizon();
    Defined<Offer> orders = Orders.of(offers, horizon);
    Map<String, Integer> take = statesTakes() ? take(horizon, orders, findings) : marked(offers);
    return new Plan(
        planName(name, nursery),
        horizon.firstMonth(),
        horizon.seasons(),
        take,
        Math.max(16, row.get(PlanShape.SLICES, As.whole(Range.of(16, Plan.MOST_SLICES)), 64)),
        row.get(
            PlanShape.DRAWS,
            As.whole(Range.of(0, Plan.MOST_DRAWS)),
            Plan.usualDraws(stock.values().size() + take.size())),
        row.get(PlanShape.SEED, As.wholeLong(), 1L),
        horizonValue(),
        holds(stock, orders, known, findings),
        ordered(take, orders));
  }

  private Map<String, PlannedHold> holds(
      Defined<Lot> stock, Defined<Offer> orders, Definitions known, Findings findings) {
    Map<String, Lot> lots = new LinkedHashMap<>(stock.values());
    orders.values().values().forEach(offer -> lots.put(offer.name(), offer.lot()));
    Names names = stock.names().and(orders.names());
    return row.cell(PlanShape.HOLD) instanceof Fields fields
        ? new PlannedHolds(lots, names, known, findings).read(fields, TABLE, row.where())
        : Map.of();
  }

  /** Warns of holds of offers that are not taken. */
  public void remarkHoldsNotTaken(Plan plan, Defined<Offer> offers, Horizon horizon) {
    for (Offer offer : offers.values().values()) {
      boolean taken =
          offer.orders(horizon).stream()
              .anyMatch(order -> plan.taken(order.name(), offer.name()) > 0);
      if (!taken && plan.holds().containsKey(offer.name())) {
        row.remark(PlanShape.HOLD, where -> PlanAdvice.heldNotTaken(where, offer.name()));
      }
    }
  }

  private Set<String> ordered(Map<String, Integer> take, Defined<Offer> orders) {
    Set<String> ordered = new LinkedHashSet<>();
    for (String typed : row.find(PlanShape.ORDERED, names()).orElse(List.of())) {
      String name = spelling(row, PlanShape.ORDERED, typed, orders.names());
      if (!name.isEmpty() && take.getOrDefault(name, 0) == 0) {
        row.fail(PlanShape.ORDERED, where -> PlanAdvice.orderedNotTaken(where, name));
      } else if (!name.isEmpty()) {
        ordered.add(name);
      }
    }
    return ordered;
  }

  private static As<List<String>> names() {
    return new As<>(
        List.of(),
        (cell, spot) ->
            cell instanceof Cell.Items items
                ? items.items().stream().map(Cell::shown).toList()
                : List.of(cell.shown()),
        list -> String.join("; ", list),
        heading -> "");
  }

  private HorizonValue horizonValue() {
    boolean both = row.has(PlanShape.HORIZON_VALUE) && row.has(PlanShape.HORIZON_VALUE_OLD);
    if (both) {
      row.fail(
          PlanShape.HORIZON_VALUE_OLD,
          where ->
              ValueAdvice.defined(where, PlanShape.HORIZON_VALUE_OLD, PlanShape.HORIZON_VALUE));
    }
    if (Texts.key(row.cell(PlanShape.HORIZON_VALUE).shown()).equals(STOCK_VALUE)) {
      row.find(PlanShape.HORIZON_VALUE, As.TEXT);
      return new HorizonValue.StockValue();
    }
    String key =
        row.has(PlanShape.HORIZON_VALUE_OLD)
            ? PlanShape.HORIZON_VALUE_OLD
            : PlanShape.HORIZON_VALUE;
    return new HorizonValue.OfListPrice(row.get(key, As.percent(Range.of(0, 1000)), 0.0));
  }

  private String planName(String ifEmpty, Where nursery) {
    String name = row.get(PlanShape.NAME, As.NAME, Texts.clean(ifEmpty));
    Where where = row.has(PlanShape.NAME) || stated ? row.where(PlanShape.NAME) : nursery;
    PlanNames.fault(where, name).ifPresent(fault -> row.fail(any -> fault));
    return name.isEmpty() ? ifEmpty : name;
  }

  private static Map<String, Integer> marked(Defined<Offer> offers) {
    Map<String, Integer> take = new LinkedHashMap<>();
    offers.values().values().stream()
        .filter(offer -> offer.take() > 0)
        .forEach(offer -> take.put(offer.name(), offer.take()));
    return take;
  }

  private Map<String, Integer> take(Horizon horizon, Defined<Offer> offers, Findings findings) {
    Map<String, Integer> take = new LinkedHashMap<>();
    if (row.cell(PlanShape.TAKE) instanceof Fields fields) {
      Where file = row.where();
      Row each = JsonShape.row(TABLE, fields, PlanShape.TAKE, file, findings);
      each.headings().forEach(typed -> addTake(take, each, typed, offers, horizon));
    }
    return take;
  }

  private void addTake(
      Map<String, Integer> take, Row each, String typed, Defined<Offer> offers, Horizon horizon) {
    String name = spelling(each, typed, typed, offers.names());
    Optional<Integer> quantity = each.find(typed, Quantities.plants());
    if (name.isEmpty() || quantity.isEmpty()) {
      return;
    }
    if (take.putIfAbsent(name, quantity.get()) != null) {
      each.fail(typed, where -> ValueAdvice.defined(where, typed, name));
    }
    offers.find(name).ifPresent(offer -> check(offer, quantity.get(), each, typed, horizon));
  }

  private static void check(Offer offer, int quantity, Row row, String typed, Horizon horizon) {
    Quantities.check(offer, quantity, row, typed);
    if (quantity > 0 && !horizon.contains(offer.arrival())) {
      row.fail(typed, where -> PlanAdvice.takenOutsidePlan(where, offer.name(), offer.arrival()));
    }
  }

  private static String spelling(Row each, String heading, String typed, Names offers) {
    try {
      return offers.spelling(typed);
    } catch (CellFault unknown) {
      each.fail(heading, unknown::at);
      return "";
    }
  }
}
