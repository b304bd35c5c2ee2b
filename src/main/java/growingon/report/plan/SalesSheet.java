package growingon.report.plan;

import growingon.nursery.Demand;
import growingon.nursery.Horizon;
import growingon.nursery.MonthSpan;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableBuilder;
import growingon.report.figures.Context;
import growingon.report.figures.Grades;
import growingon.report.figures.SeasonFigures;
import growingon.report.figures.Trade;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Dates;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.report.text.Shown;
import growingon.whole.WholeDemand;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What is sold in each season and for how much, and what was wanted and could not be sold. */
public final class SalesSheet {
  private final Horizon horizon;
  private final Dates dates;
  private final String currency;
  private final List<WholeDemand> demand;

  private SalesSheet(Context context) {
    this.horizon = context.accounts().projection().horizon();
    this.dates = new Dates(horizon);
    this.currency = context.inputs().scenario().nursery().settings().currency();
    this.demand = context.whole().demand();
  }

  public static Sheet of(Context context) {
    SalesSheet sheet = new SalesSheet(context);
    Trade bySpecies = Trade.bySpecies(context);
    return FilledSheet.of(
        "Sales",
        List.of(
            Sentences.WITHOUT_VAT,
            "Sold is what is ready, up to what the demand table wants in the month: rows for a"
                + " species first, dearer rows first, oldest lots first, firsts before seconds. "
                + SaleableSheet.qualityPrices(context.inputs().scenario().nursery()),
            Sentences.EXPECTED + " " + Sentences.PARTS_OF_PLANTS),
        sheet.bySeason(bySpecies),
        ready(context),
        sheet.bySpecies(bySpecies),
        sheet.wanted(),
        sheet.byLot(Trade.byLot(context)));
  }

  private Table bySeason(Trade trade) {
    TableBuilder table =
        TableBuilder.table("sales-by-season", "By season")
            .note("Missed: wanted, but nothing was ready; not carried over into the next month.")
            .text("season")
            .plants("plants sold")
            .summed("receipts", currency, Kind.MONEY)
            .plants("plants missed")
            .flagged(Column.Flag.ABOVE_ZERO)
            .summed("missed at list price", currency, Kind.MONEY)
            .leavingOutParts();
    Map<Integer, List<Trade.Cell>> bySeason =
        trade.cells().stream().collect(Collectors.groupingBy(Trade.Cell::season));
    for (int season = 0; season < horizon.seasons(); season++) {
      addSeason(table, season, bySeason.getOrDefault(season, List.of()));
    }
    return table.build();
  }

  private void addSeason(TableBuilder table, int season, List<Trade.Cell> cells) {
    Plants sold = Trade.sum(cells, Trade.Cell::sold);
    double receipts = cells.stream().mapToDouble(cell -> cell.receipts().exact()).sum();
    Plants missed = Plants.NONE;
    Shown missedAtList = Shown.NOTHING;
    for (WholeDemand row : demand) {
      if (row.season() == season) {
        missed = missed.plus(row.missing(), row.missed());
        missedAtList = missedAtList.plus(missedAtList(row));
      }
    }
    if (sold.exact() > 0 || missed.exact() > 0) {
      table.row(dates.label(season), sold, receipts, missed, missedAtList);
    }
  }

  /** What the plants shown as missed would have brought as firsts at the row's price. */
  private static Shown missedAtList(WholeDemand row) {
    double price = row.demand().price();
    return new Shown(row.missing() * price, row.missed() * price);
  }

  /** What can be sold and is sold, by grade: in the season under way and the first full one. */
  private static Table ready(Context context) {
    SeasonFigures figures = context.seasons();
    String currency = context.inputs().scenario().nursery().settings().currency();
    List<Column> columns = new ArrayList<>();
    columns.add(Column.of("grade", "grade", "", Kind.TEXT));
    for (int season = 0; season <= figures.next(); season++) {
      String label = figures.label(season);
      String key = season == figures.next() ? "_next" : "_now";
      columns.add(Column.summed("ready" + key, label + ": can be sold", "", Kind.PLANTS));
      columns.add(Column.summed("sold" + key, label + ": sold", "", Kind.PLANTS));
      columns.add(Column.summed("receipts" + key, label + ": receipts", currency, Kind.MONEY));
    }
    Rows rows = new Rows();
    List<Grades.Named> grades =
        context.inputs().scenario().nursery().demand().isEmpty()
            ? List.of()
            : figures.grades().all();
    for (int grade = 0; grade < grades.size(); grade++) {
      List<Object> row = new ArrayList<>(List.of(grades.get(grade).label()));
      boolean some = false;
      for (int season = 0; season <= figures.next(); season++) {
        row.add(figures.saleable(grade, season));
        row.add(figures.sold(grade, season));
        row.add(figures.money(grade, season));
        some |= figures.saleable(grade, season).whole() > 0;
      }
      if (some) {
        rows.add(row);
      }
    }
    return new Table(
        "ready-next", "What can be sold, and what of it is sold", List.of(), columns, rows.list());
  }

  private Table bySpecies(Trade trade) {
    TableBuilder table =
        sold(
            TableBuilder.table("sales", "By species, grade and quality")
                .text("season")
                .text("species"));
    for (Trade.Cell cell : trade.cells()) {
      if (cell.sold().exact() > 0) {
        table.row(
            dates.label(cell.season()),
            cell.lot().lot().species(),
            cell.grade(),
            cell.quality().toString(),
            cell.sold(),
            cell.receipts(),
            cell.meanPrice());
      }
    }
    return table.build();
  }

  private Table byLot(Trade trade) {
    TableBuilder table =
        sold(
            TableBuilder.table("sales-by-lot", "By lot, grade and quality")
                .text("season")
                .text("lot")
                .text("species"));
    for (Trade.Cell cell : trade.cells()) {
      if (cell.sold().exact() > 0) {
        table.row(
            dates.label(cell.season()),
            cell.lot().lot().name(),
            cell.lot().lot().species(),
            cell.grade(),
            cell.quality().toString(),
            cell.sold(),
            cell.receipts(),
            cell.meanPrice());
      }
    }
    return table.build();
  }

  private TableBuilder sold(TableBuilder table) {
    return table
        .text("grade")
        .text("quality")
        .plants("plants")
        .summed("receipts", currency, Kind.MONEY)
        .column("mean price", currency, Kind.MONEY_EACH)
        .leavingOutParts();
  }

  private Table wanted() {
    TableBuilder table =
        TableBuilder.table("demand-met", "Wanted, sold and missed")
            .note(
                "A row of the demand table in each season: what it wants in the season's months that"
                    + " lie in the plan. Where it wants all that is ready, nothing is missed. Missed"
                    + " plants are valued as firsts at the row's price.")
            .text("season")
            .text("species")
            .text("ladder")
            .text("grade")
            .text("sells in")
            .plants("wanted")
            .plants("sold")
            .plants("missed")
            .flagged(Column.Flag.ABOVE_ZERO)
            .column("list price", currency, Kind.MONEY_EACH)
            .summed("missed at list price", currency, Kind.MONEY)
            .leavingOutParts();
    for (WholeDemand each : demand) {
      Demand row = each.demand();
      boolean limited = row.units().isPresent();
      table.row(
          dates.label(each.season()),
          row.species().orElse("any"),
          row.ladder(),
          row.grade(),
          months(row.months()),
          limited ? Plants.of(each.units() + each.missing(), each.wanted()) : null,
          Plants.of(each.units(), each.sold()),
          limited ? Plants.of(each.missing(), each.missed()) : null,
          row.price(),
          limited ? missedAtList(each) : null);
    }
    return table.build();
  }

  private static String months(MonthSpan span) {
    if (span.months() == 12) {
      return "all year";
    }
    String from = month(span.from());
    return span.months() == 1 ? from : from + "–" + month(span.to());
  }

  private static String month(int month) {
    return Month.of(month).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
  }
}
