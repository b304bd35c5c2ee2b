package growingon.report;

import growingon.money.Accounts;
import growingon.money.LotAccount;
import growingon.nursery.Horizon;
import growingon.nursery.Papers;
import growingon.project.LotHistory;
import growingon.project.Reached;
import growingon.project.Stood;
import growingon.project.Use;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Every lot: where it comes from, what becomes of it, and its line of life. */
final class LotsSheet {
  private final Context context;
  private final Accounts accounts;
  private final Horizon horizon;
  private final String currency;
  private final List<LotHistory> lots;

  private LotsSheet(Context context) {
    this.context = context;
    this.accounts = context.accounts();
    this.horizon = accounts.projection().horizon();
    this.currency = context.inputs().scenario().nursery().settings().currency();
    this.lots = accounts.projection().lots();
  }

  static Sheet of(Context context) {
    LotsSheet sheet = new LotsSheet(context);
    if (sheet.lots.isEmpty()) {
      return Sheet.of("Lots");
    }
    List<Table> tables = new ArrayList<>();
    if (!context.bought().isEmpty()) {
      tables.add(BoughtLots.table(context));
    }
    tables.addAll(List.of(sheet.summary(), sheet.uses(), sheet.grades(), sheet.lives()));
    return new Sheet("Lots", sheet.sentences(), tables, List.of(), false);
  }

  private List<String> sentences() {
    List<String> late = lots.stream().filter(this::isLate).map(each -> each.lot().name()).toList();
    if (late.isEmpty()) {
      return List.of();
    }
    return List.of(
        "In %s the middle plant does not reach the dearest grade by %s, the end of the plan: %s. A"
                .formatted(
                    Phrases.counted(late.size(), "lot", "lots"),
                    Phrases.month(horizon, horizon.months() - 1),
                    Phrases.list(late, 8, "lots"))
            + " longer plan shows more of what such lots earn.");
  }

  private OptionalInt top(LotHistory lot) {
    return accounts.topPricedGrade(lot.lot());
  }

  private OptionalInt middleAtTop(LotHistory lot) {
    OptionalInt top = top(lot);
    return top.isEmpty() ? top : lot.reached().get(top.getAsInt()).middle();
  }

  private boolean isLate(LotHistory lot) {
    return lot.lot().quantity() > 0 && top(lot).isPresent() && middleAtTop(lot).isEmpty();
  }

  private YearMonth month(OptionalInt offset) {
    return offset.isPresent() ? horizon.month(offset.getAsInt()) : null;
  }

  /** Adds a column of texts if any lot has one. */
  private void optional(
      List<Column> columns,
      List<Function<LotHistory, Object>> cells,
      String heading,
      Function<Papers, String> paper) {
    if (lots.stream().anyMatch(lot -> !paper.apply(lot.lot().papers()).isEmpty())) {
      columns.add(Column.of(heading.replace(' ', '_'), heading, "", Kind.TEXT));
      cells.add(lot -> Rows.text(paper.apply(lot.lot().papers())));
    }
  }

  private Table summary() {
    List<Column> columns = new ArrayList<>();
    List<Function<LotHistory, Object>> cells = new ArrayList<>();
    columns.add(Rows.lot());
    cells.add(lot -> lot.lot().name());
    columns.add(Column.of("species", "species", "", Kind.TEXT));
    cells.add(lot -> lot.lot().species());
    columns.add(Column.of("form", "form", "", Kind.TEXT));
    cells.add(lot -> lot.lot().form().toString());
    columns.add(Column.of("arrived", "arrived", "", Kind.MONTH));
    cells.add(lot -> lot.lot().arrived());
    optional(columns, cells, "supplier", Papers::supplier);
    optional(columns, cells, "passport", Papers::passport);
    optional(columns, cells, "origin", Papers::origin);
    optional(columns, cells, "from lot", Papers::fromLot);
    columns.add(Column.of("trunk_mm", "mean trunk", "mm", Kind.MM));
    cells.add(lot -> lot.lot().trunks().meanMm());
    plants(columns, cells, "started", "plants at the start", LotAccount::started);
    plants(columns, cells, "lost", "lost or culled", LotAccount::lost);
    plants(columns, cells, "sold", "sold", LotAccount::sold);
    plants(columns, cells, "standing", "standing at the end", LotAccount::standing);
    plants(columns, cells, "kept", "of these kept", LotAccount::kept);
    columns.add(Column.of("place", "place at the end", "", Kind.TEXT));
    cells.add(this::placeAtEnd);
    columns.add(Column.of("top_grade", "dearest grade", "", Kind.TEXT));
    cells.add(this::topGrade);
    columns.add(Column.of("middle_at_top", "middle plant reaches it", "", Kind.MONTH));
    cells.add(lot -> month(middleAtTop(lot)));
    columns.add(Column.of("remark", "remark", "", Kind.LONG_TEXT));
    cells.add(lot -> isLate(lot) ? "the middle plant does not reach it within the plan" : null);
    return table("lots", "Lots", summaryNotes(), columns, cells);
  }

  private static List<String> summaryNotes() {
    return List.of(
        "Plants are expected numbers, rounded so that each column adds up; a row may be out by one."
            + " At the start: as counted in the stock list, or bought. Lost or culled: since that"
            + " count.",
        "Dearest grade: the highest of its ladder that the demand table prices. The middle plant is"
            + " the one that half of the lot reach a grade before, trunk and training together.");
  }

  private Table table(
      String name,
      String title,
      List<String> notes,
      List<Column> columns,
      List<Function<LotHistory, Object>> cells) {
    List<List<Object>> rows = new ArrayList<>();
    for (LotHistory lot : lots) {
      List<Object> row = new ArrayList<>(cells.size());
      cells.forEach(cell -> row.add(cell.apply(lot)));
      rows.add(row);
    }
    return new Table(name, title, notes, columns, rows);
  }

  /** Adds a column of plants of the lots' accounts that adds up. */
  private void plants(
      List<Column> columns,
      List<Function<LotHistory, Object>> cells,
      String key,
      String heading,
      ToDoubleFunction<LotAccount> value) {
    List<Plants> whole = WholePlants.round(accounts.lots().stream().mapToDouble(value).toArray());
    Map<LotHistory, Plants> byLot = new LinkedHashMap<>();
    IntStream.range(0, lots.size()).forEach(i -> byLot.put(lots.get(i), whole.get(i)));
    columns.add(Column.summed(key, heading, "", Kind.PLANTS));
    cells.add(byLot::get);
  }

  private String placeAtEnd(LotHistory lot) {
    Stood stood = lot.stood(lot.months() - 1);
    return stood == null || lot.standing(lot.months() - 1) < 0.5 ? null : Rows.text(stood.place());
  }

  private String topGrade(LotHistory lot) {
    OptionalInt top = top(lot);
    return top.isEmpty() ? null : lot.grades().get(top.getAsInt()).name();
  }

  private Table uses() {
    List<List<Object>> rows = new ArrayList<>();
    for (int i = 0; i < lots.size(); i++) {
      rows.add(use(lots.get(i), accounts.lots().get(i)));
    }
    return new Table(
        "lots-use",
        "What each lot uses and earns",
        List.of(
            "Over the whole plan. Costs: plants, carriage, pots, substrate and materials at the price"
                + " of one unit, all hours, care and the place charge; Lot accounts shows each."
                + " Result: sales less these costs. Plants standing at the end have no value here. "
                + CashWords.NO_VAT),
        List.of(
            Rows.lot(),
            Column.summed("pots", "pots", "", Kind.NUMBER),
            Column.summed("litres", "substrate", "litres", Kind.LITRES),
            Column.summed("hours", "work", "hours", Kind.HOURS),
            Column.summed("m2_months", "space", "m²-months", Kind.NUMBER),
            Column.summed("costs", "costs", currency, Kind.MONEY),
            Column.summed("sales", "sales", currency, Kind.MONEY),
            Columns.belowNil(Column.summed("result", "result", currency, Kind.MONEY)),
            Column.summed("unsold", "unsold at list", currency, Kind.MONEY)),
        rows);
  }

  private static List<Object> use(LotHistory lot, LotAccount account) {
    return Arrays.asList(
        lot.lot().name(),
        used(lot, Use.Kind.POT),
        used(lot, Use.Kind.COMPONENT),
        account.hours(),
        account.m2Months(),
        account.costs(),
        account.sales(),
        account.result(),
        account.unsoldAtList());
  }

  private static double used(LotHistory lot, Use.Kind kind) {
    return lot.uses().stream().filter(use -> use.kind() == kind).mapToDouble(Use::amount).sum();
  }

  private Table grades() {
    Rows rows = new Rows();
    for (LotHistory lot : lots) {
      for (Reached reached : lot.reached()) {
        if (reached.firstTenth().isPresent()) {
          rows.add(
              lot.lot().name(),
              lot.lot().species(),
              lot.grades().get(reached.grade()).name(),
              month(reached.firstTenth()),
              month(reached.middle()),
              month(reached.lastTenth()));
        }
      }
    }
    return new Table(
        "lot-grades",
        "When each lot reaches its grades",
        List.of(
            "The month by which a tenth, half and nine tenths of the plants have the trunk and the"
                + " training, as if none were lost or sold; the plan's first month where they have"
                + " it already, empty where they do not within the plan."),
        List.of(
            Rows.lot(),
            Column.of("species", "species", "", Kind.TEXT),
            Column.of("grade", "grade", "", Kind.TEXT),
            Column.of("first_tenth", "first tenth", "", Kind.MONTH),
            Column.of("middle", "middle plant", "", Kind.MONTH),
            Column.of("last_tenth", "last tenth", "", Kind.MONTH)),
        rows.list());
  }

  private Table lives() {
    Rows rows = new Rows();
    for (LotHistory lot : lots) {
      for (LotLife.Event event : LotLife.of(lot, horizon, currency)) {
        rows.add(
            lot.lot().name(),
            horizon.month(event.month()),
            event.event(),
            Rows.text(event.what()),
            new Plants(event.plants(), Math.round(event.plants())),
            Rows.text(event.place()),
            Rows.number(event.hours()),
            Rows.number(event.received()));
      }
    }
    return new Table(
        "line-of-life",
        "The line of life of each lot",
        List.of(
            "Plants: those that arrive or stand at the start, that a step is done on after its losses,"
                + " or that stand at the end of the month or season.",
            "Hours are all hours of the step, over all its months; received is what the season's"
                + " sales brought, without VAT."),
        List.of(
            Rows.lot(),
            Rows.month(),
            Column.of("event", "event", "", Kind.TEXT),
            Column.of("what", "what happens", "", Kind.LONG_TEXT),
            Column.of("plants", "plants", "", Kind.PLANTS),
            Column.of("place", "stands in", "", Kind.TEXT),
            Column.of("hours", "work", "hours", Kind.HOURS),
            Column.of("received", "received", currency, Kind.MONEY)),
        rows.list());
  }
}
