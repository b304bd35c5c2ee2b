package growingon.report.plan;

import growingon.project.history.Stood;
import growingon.project.history.Use;
import growingon.project.lot.LotHistory;
import growingon.project.need.Supplies;
import growingon.report.build.PerLot;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.figures.PottedPlants;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.plan.bought.BoughtLotBridges;
import growingon.report.plan.space.BenchSpaceSheet;
import growingon.report.plan.work.HoursSheet;
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
      makers.add(BoughtLotBridges::flows);
    }
    List<Table> tables =
        new ArrayList<>(makers.parallelStream().map(maker -> maker.apply(context)).toList());
    tables.addAll(ChancesSheet.longTables(context));
    return tables;
  }

  /** A month of a lot. */
  private record LotMonth(WholeLot whole, int month) {
    LotHistory lot() {
      return whole.history();
    }

    /** Null where it does not stand. */
    <N> N stood(Function<Stood, N> what) {
      Stood stood = lot().stood(month);
      return stood == null ? null : what.apply(stood);
    }
  }

  private static Table lotMonths(Context context) {
    Dates dates = new Dates(context.accounts().projection().horizon());
    return TableOf.<LotMonth>table("lot-months", "Every lot in every month")
        .note(
            "Standing is at the end of the month; place, square metres and weight are read after the"
                + " month's work, before its losses and sales.")
        .column(Rows.lot(), each -> each.lot().lot().name())
        .column(Rows.month(), each -> dates.month(each.month))
        .column(
            plants("standing"),
            each -> Plants.of(each.lot().standing(each.month), each.whole.standing(each.month)))
        .column(
            plants("died"),
            each -> Plants.of(each.lot().died(each.month), each.whole.died(each.month)))
        .column(
            plants("culled"),
            each -> Plants.of(each.lot().culled(each.month), each.whole.culled(each.month)))
        .column(
            plants("sold"),
            each -> Plants.of(each.lot().sold(each.month), each.whole.sold(each.month)))
        .column(Rows.place(), each -> each.stood(stood -> stood.place().orElse(null)))
        .column("m2", "space", "m²", Kind.SQUARE_METRES, each -> each.stood(Stood::m2))
        .column(
            "kg_each",
            "weight of one plant",
            "kg",
            Kind.KG,
            each -> each.stood(stood -> stood.weight().kg()))
        .summed("care", "hours", Kind.HOURS, each -> each.lot().careHours(each.month))
        .lazily(
            new PerLot<>(
                context.whole().lots(),
                lot -> lot.history().months() - lot.history().start(),
                (lot, index) -> new LotMonth(lot, lot.history().start() + index)));
  }

  private static Column plants(String heading) {
    return Column.of(heading, heading, "", Kind.PLANTS);
  }

  /** A use of a lot. */
  private record LotUse(WholeLot lot, Use use) {
    Object amount() {
      return use.kind() == Use.Kind.POT
          ? new Shown(use.amount(), PottedPlants.of(lot, use.month(), use.item()))
          : (Object) use.amount();
    }
  }

  private static Table lotUses(Context context) {
    Dates dates = new Dates(context.accounts().projection().horizon());
    String currency = context.inputs().scenario().nursery().settings().currency();
    Supplies supplies = context.accounts().supplies();
    return TableOf.<LotUse>table("lot-uses", "What every lot uses, month by month")
        .note("Substrate in loose litres with waste; cost at the price of one unit.")
        .column(Rows.lot(), each -> each.lot.history().lot().name())
        .column(Rows.month(), each -> dates.month(each.use.month()))
        .text("item", each -> each.use.item())
        .column("amount", "", Kind.NUMBER, LotUse::amount)
        .text("unit", each -> supplies.item(each.use.kind(), each.use.item()).unit())
        .summed(
            "cost",
            currency,
            Kind.MONEY,
            each -> each.use.amount() * supplies.item(each.use.kind(), each.use.item()).unitPrice())
        .lazily(
            new PerLot<>(
                context.whole().lots(),
                lot -> lot.history().uses().size(),
                (lot, index) -> new LotUse(lot, lot.history().uses().get(index))));
  }

  /** A sale of a lot. */
  private record LotSale(WholeLot whole, WholeSale sale) {
    LotHistory lot() {
      return whole.history();
    }
  }

  private static Table salesLines(Context context) {
    Dates dates = new Dates(context.accounts().projection().horizon());
    String currency = context.inputs().scenario().nursery().settings().currency();
    List<WholeLot> lots = context.whole().lots();
    Map<WholeLot, List<WholeSale>> read = new IdentityHashMap<>();
    lots.forEach(lot -> read.put(lot, ofWholePlants(lot)));
    return TableOf.<LotSale>table("sales-lines", "Every sale expected")
        .note(
            "Row: of the demand table, 1 for its first. "
                + Sentences.PARTS_OF_PLANTS
                + " "
                + Sentences.WITHOUT_VAT)
        .column(Rows.month(), each -> dates.month(each.sale.month()))
        .column(Rows.season(), each -> dates.season(each.sale.month()))
        .column(Rows.lot(), each -> each.lot().lot().name())
        .text("species", each -> each.lot().lot().species())
        .text("grade", each -> each.lot().grades().get(each.sale.grade()).name())
        .text("quality", each -> each.sale.quality().toString())
        .column("row", "demand row", "", Kind.COUNT, each -> each.sale.row() + 1)
        .plants("units", "plants", each -> Plants.of(each.sale.units(), each.sale.whole()))
        .summed(
            "money",
            "received",
            currency,
            Kind.MONEY,
            each -> new Shown(each.sale.money(), each.sale.receipts()))
        .lazily(sales(lots, read::get), sales(lots, WholeLot::sales));
  }

  private static List<LotSale> sales(List<WholeLot> lots, Function<WholeLot, List<WholeSale>> of) {
    return new PerLot<>(
        lots, lot -> of.apply(lot).size(), (lot, i) -> new LotSale(lot, of.apply(lot).get(i)));
  }

  private static List<WholeSale> ofWholePlants(WholeLot lot) {
    return lot.sales().stream().filter(sale -> sale.whole() > 0).toList();
  }
}
