package growingon.report.plan;

import growingon.project.LotHistory;
import growingon.project.Stood;
import growingon.project.Supplies;
import growingon.project.Use;
import growingon.report.figures.Context;
import growingon.report.figures.PottedPlants;
import growingon.report.model.Column;
import growingon.report.model.FixedRow;
import growingon.report.model.Kind;
import growingon.report.model.LazyRows;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Dates;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.report.text.Shown;
import growingon.whole.WholeLot;
import growingon.whole.WholeSale;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The long series that go to the tables and to figures.json but on no sheet. */
final class LongTables {
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
    return new Table(
        "lot-months",
        "Every lot in every month",
        List.of(
            "Standing is at the end of the month; place, square metres and weight are read after the"
                + " month's work, before its losses and sales."),
        List.of(
            Rows.lot(),
            Rows.month(),
            Column.of("standing", "standing", "", Kind.PLANTS),
            Column.of("died", "died", "", Kind.PLANTS),
            Column.of("culled", "culled", "", Kind.PLANTS),
            Column.of("sold", "sold", "", Kind.PLANTS),
            Rows.place(),
            Column.of("m2", "space", "m²", Kind.SQUARE_METRES),
            Column.of("kg_each", "weight of one plant", "kg", Kind.KG),
            Column.summed("care", "care", "hours", Kind.HOURS)),
        LazyRows.byLot(
            context.whole().lots(),
            lot -> lot.history().months() - lot.history().start(),
            (lot, index) -> lotMonth(lot, lot.history().start() + index, dates)));
  }

  private static FixedRow lotMonth(WholeLot whole, int month, Dates dates) {
    LotHistory lot = whole.history();
    Stood stood = lot.stood(month);
    return new FixedRow(
        lot.lot().name(),
        dates.month(month),
        Plants.of(lot.standing(month), whole.standing(month)),
        Plants.of(lot.died(month), whole.died(month)),
        Plants.of(lot.culled(month), whole.culled(month)),
        Plants.of(lot.sold(month), whole.sold(month)),
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
            context.whole().lots(),
            lot -> lot.history().uses().size(),
            (lot, index) -> lotUse(lot, lot.history().uses().get(index), context, dates)));
  }

  private static FixedRow lotUse(WholeLot lot, Use use, Context context, Dates dates) {
    Supplies.Item item = context.accounts().supplies().item(use.kind(), use.item());
    return new FixedRow(
        lot.history().lot().name(),
        dates.month(use.month()),
        use.item(),
        use.kind() == Use.Kind.POT
            ? new Shown(use.amount(), PottedPlants.of(lot, use.month(), use.item()))
            : (Object) use.amount(),
        item.unit(),
        use.amount() * item.unitPrice());
  }

  private static Table salesLines(Context context) {
    Dates dates = new Dates(context.accounts().projection().horizon());
    String currency = context.inputs().scenario().nursery().settings().currency();
    List<WholeLot> lots = context.whole().lots();
    Map<WholeLot, List<WholeSale>> read = new IdentityHashMap<>();
    lots.forEach(lot -> read.put(lot, ofWholePlants(lot)));
    return new Table(
        "sales-lines",
        "Every sale expected",
        List.of(
            "Row: of the demand table, 1 for its first. "
                + Sentences.PARTS_OF_PLANTS
                + " "
                + Sentences.WITHOUT_VAT),
        List.of(
            Rows.month(),
            Rows.season(),
            Rows.lot(),
            Column.of("species", "species", "", Kind.TEXT),
            Column.of("grade", "grade", "", Kind.TEXT),
            Column.of("quality", "quality", "", Kind.TEXT),
            Column.of("row", "demand row", "", Kind.COUNT),
            Column.summed("units", "plants", "", Kind.PLANTS),
            Column.summed("money", "received", currency, Kind.MONEY)),
        LazyRows.byLot(
            lots,
            lot -> read.get(lot).size(),
            (lot, index) -> salesLine(lot, read.get(lot).get(index), dates)),
        LazyRows.byLot(
            lots,
            lot -> lot.sales().size(),
            (lot, index) -> salesLine(lot, lot.sales().get(index), dates)));
  }

  private static List<WholeSale> ofWholePlants(WholeLot lot) {
    return lot.sales().stream().filter(sale -> sale.whole() > 0).toList();
  }

  private static FixedRow salesLine(WholeLot whole, WholeSale sale, Dates dates) {
    LotHistory lot = whole.history();
    return new FixedRow(
        dates.month(sale.month()),
        dates.season(sale.month()),
        lot.lot().name(),
        lot.lot().species(),
        lot.grades().get(sale.grade()).name(),
        sale.quality().toString(),
        sale.row() + 1,
        Plants.of(sale.units(), sale.whole()),
        new Shown(sale.money(), sale.receipts()));
  }
}
