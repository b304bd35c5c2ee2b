package growingon.report;

import growingon.project.LotHistory;
import growingon.project.Sale;
import growingon.project.Stood;
import growingon.project.Supplies;
import growingon.project.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The long series that go to the tables and to figures.json but on no sheet. */
final class LongTables {
  private static final String PRECISION = "Expected plants at full precision, not rounded.";

  private LongTables() {}

  /** No table needs another, so they are made on all processors. */
  static List<Table> of(Context context) {
    List<Function<Context, Table>> makers =
        new ArrayList<>(
            List.of(
                LongTables::lotMonths,
                LongTables::lotUses,
                LongTables::salesLines,
                HoursSheet::lines));
    if (!context.inputs().scenario().nursery().places().isEmpty()) {
      makers.add(BenchSpaceSheet::placeMonths);
    }
    if (!context.bought().isEmpty()) {
      makers.add(BoughtLots::flows);
    }
    List<Table> tables =
        new ArrayList<>(makers.parallelStream().map(maker -> maker.apply(context)).toList());
    tables.addAll(ChancesSheet.longTables(context));
    return tables;
  }

  private static Table lotMonths(Context context) {
    Dates dates = new Dates(context.accounts().projection().horizon());
    List<LotHistory> lots = context.accounts().projection().lots();
    return new Table(
        "lot-months",
        "Every lot in every month",
        List.of(
            PRECISION
                + " Standing is at the end of the month; place, square metres and weight are read"
                + " after the month's work, before its losses and sales."),
        List.of(
            Rows.lot(),
            Rows.month(),
            Column.of("standing", "standing", "", Kind.NUMBER),
            Column.of("died", "died", "", Kind.NUMBER),
            Column.of("culled", "culled", "", Kind.NUMBER),
            Column.of("sold", "sold", "", Kind.NUMBER),
            Rows.place(),
            Column.of("m2", "space", "m²", Kind.SQUARE_METRES),
            Column.of("kg_each", "weight of one plant", "kg", Kind.KG),
            Column.summed("care", "care", "hours", Kind.HOURS)),
        LazyRows.byLot(
            lots,
            lot -> lot.months() - lot.start(),
            (lot, index) -> lotMonth(lot, lot.start() + index, dates)));
  }

  private static FixedRow lotMonth(LotHistory lot, int month, Dates dates) {
    Stood stood = lot.stood(month);
    return new FixedRow(
        lot.lot().name(),
        dates.month(month),
        lot.standing(month),
        lot.died(month),
        lot.culled(month),
        lot.sold(month),
        stood == null ? null : Rows.text(stood.place()),
        stood == null ? null : stood.m2(),
        stood == null ? null : stood.weight().kg(),
        lot.careHours(month));
  }

  private static Table lotUses(Context context) {
    Dates dates = new Dates(context.accounts().projection().horizon());
    String currency = context.inputs().scenario().nursery().settings().currency();
    return new Table(
        "lot-uses",
        "What every lot uses, month by month",
        List.of("Substrate in loose litres with waste; cost at the price of one unit."),
        List.of(
            Rows.lot(),
            Rows.month(),
            Column.of("item", "item", "", Kind.TEXT),
            Column.of("amount", "amount", "", Kind.NUMBER),
            Column.of("unit", "unit", "", Kind.TEXT),
            Column.summed("cost", "cost", currency, Kind.MONEY)),
        LazyRows.byLot(
            context.accounts().projection().lots(),
            lot -> lot.uses().size(),
            (lot, index) -> lotUse(lot, lot.uses().get(index), context, dates)));
  }

  private static FixedRow lotUse(LotHistory lot, Use use, Context context, Dates dates) {
    Supplies.Item item = context.accounts().supplies().item(use.kind(), use.item());
    return new FixedRow(
        lot.lot().name(),
        dates.month(use.month()),
        use.item(),
        use.amount(),
        item.unit(),
        use.amount() * item.unitPrice());
  }

  private static Table salesLines(Context context) {
    Dates dates = new Dates(context.accounts().projection().horizon());
    String currency = context.inputs().scenario().nursery().settings().currency();
    return new Table(
        "sales-lines",
        "Every sale expected",
        List.of(PRECISION + " Row: of the demand table, 1 for its first. " + Sentences.WITHOUT_VAT),
        List.of(
            Rows.month(),
            Rows.season(),
            Rows.lot(),
            Column.of("species", "species", "", Kind.TEXT),
            Column.of("grade", "grade", "", Kind.TEXT),
            Column.of("quality", "quality", "", Kind.TEXT),
            Column.of("row", "demand row", "", Kind.COUNT),
            Column.summed("units", "plants", "", Kind.NUMBER),
            Column.summed("money", "received", currency, Kind.MONEY)),
        LazyRows.byLot(
            context.accounts().projection().lots(),
            lot -> lot.sales().size(),
            (lot, index) -> salesLine(lot, lot.sales().get(index), dates)));
  }

  private static FixedRow salesLine(LotHistory lot, Sale sale, Dates dates) {
    return new FixedRow(
        dates.month(sale.month()),
        dates.season(sale.month()),
        lot.lot().name(),
        lot.lot().species(),
        lot.grades().get(sale.grade()).name(),
        sale.quality().toString(),
        sale.row() + 1,
        sale.units(),
        sale.money());
  }
}
