package growingon.report.plan.sale;

import growingon.nursery.time.Horizon;
import growingon.nursery.time.MonthSpan;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.figures.SeasonFigures;
import growingon.report.figures.Trade;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Dates;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.report.text.Shown;
import growingon.whole.WholeDemand;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

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

  /** What is sold and missed in a season. */
  private record Season(int season, List<Trade.Cell> cells, List<WholeDemand> demand) {
    Plants sold() {
      return Trade.sum(cells, Trade.Cell::sold);
    }

    double receipts() {
      return cells.stream().mapToDouble(cell -> cell.receipts().exact()).sum();
    }

    Plants missed() {
      Plants missed = Plants.NONE;
      for (WholeDemand row : demand) {
        missed = missed.plus(row.missing(), row.missed());
      }
      return missed;
    }

    Shown missedAtListPrice() {
      return demand.stream().map(SalesSheet::missedAtList).reduce(Shown.NOTHING, Shown::plus);
    }

    boolean isAny() {
      return sold().exact() > 0 || missed().exact() > 0;
    }
  }

  private Season season(int season, List<Trade.Cell> cells) {
    return new Season(
        season, cells, demand.stream().filter(row -> row.season() == season).toList());
  }

  private Table bySeason(Trade trade) {
    Map<Integer, List<Trade.Cell>> bySeason =
        trade.cells().stream().collect(Collectors.groupingBy(Trade.Cell::season));
    return TableOf.<Season>table("sales-by-season", "By season")
        .note("Missed: wanted, but nothing was ready; not carried over into the next month.")
        .text("season", each -> dates.label(each.season))
        .plants("plants sold", Season::sold)
        .summed("receipts", currency, Kind.MONEY, Season::receipts)
        .plants("plants missed", Season::missed)
        .aboveNil()
        .summed("missed at list price", currency, Kind.MONEY, Season::missedAtListPrice)
        .leavingOutParts()
        .of(
            IntStream.range(0, horizon.seasons())
                .mapToObj(season -> season(season, bySeason.getOrDefault(season, List.of())))
                .filter(Season::isAny)
                .toList());
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
    TableOf<Integer> table =
        TableOf.<Integer>table("ready-next", "What can be sold, and what of it is sold")
            .text("grade", grade -> figures.grades().all().get(grade).label());
    for (int i = 0; i <= figures.next(); i++) {
      int season = i;
      String label = figures.label(season);
      String key = season == figures.next() ? "_next" : "_now";
      table
          .plants("ready" + key, label + ": can be sold", grade -> figures.saleable(grade, season))
          .plants("sold" + key, label + ": sold", grade -> figures.sold(grade, season))
          .summed(
              "receipts" + key,
              label + ": receipts",
              currency,
              Kind.MONEY,
              grade -> figures.money(grade, season));
    }
    return table.of(ready(context, figures));
  }

  /** Grades of which something can be sold. */
  private static List<Integer> ready(Context context, SeasonFigures figures) {
    return context.inputs().scenario().nursery().demand().isEmpty()
        ? List.of()
        : IntStream.range(0, figures.grades().all().size())
            .filter(
                grade ->
                    IntStream.rangeClosed(0, figures.next())
                        .anyMatch(season -> figures.saleable(grade, season).whole() > 0))
            .boxed()
            .toList();
  }

  private Table bySpecies(Trade trade) {
    return sold(
        trade,
        TableOf.<Trade.Cell>table("sales", "By species, grade and quality")
            .text("season", cell -> dates.label(cell.season()))
            .text("species", cell -> cell.lot().lot().species()));
  }

  private Table byLot(Trade trade) {
    return sold(
        trade,
        TableOf.<Trade.Cell>table("sales-by-lot", "By lot, grade and quality")
            .text("season", cell -> dates.label(cell.season()))
            .text("lot", cell -> cell.lot().lot().name())
            .text("species", cell -> cell.lot().lot().species()));
  }

  private Table sold(Trade trade, TableOf<Trade.Cell> table) {
    return table
        .text("grade", Trade.Cell::grade)
        .text("quality", cell -> cell.quality().toString())
        .plants("plants", Trade.Cell::sold)
        .summed("receipts", currency, Kind.MONEY, Trade.Cell::receipts)
        .column("mean price", currency, Kind.MONEY_EACH, Trade.Cell::meanPrice)
        .leavingOutParts()
        .of(trade.cells().stream().filter(cell -> cell.sold().exact() > 0).toList());
  }

  private static boolean isLimited(WholeDemand row) {
    return row.demand().units().isPresent();
  }

  private Table wanted() {
    return TableOf.<WholeDemand>table("demand-met", "Wanted, sold and missed")
        .note(
            "A row of the demand table in each season: what it wants in the season's months that"
                + " lie in the plan. Where it wants all that is ready, nothing is missed. Missed"
                + " plants are valued as firsts at the row's price.")
        .text("season", each -> dates.label(each.season()))
        .text("species", each -> each.demand().species().orElse("any"))
        .text("ladder", each -> each.demand().ladder())
        .text("grade", each -> each.demand().grade())
        .text("sells in", each -> months(each.demand().months()))
        .plants(
            "wanted",
            each ->
                isLimited(each) ? Plants.of(each.units() + each.missing(), each.wanted()) : null)
        .plants("sold", each -> Plants.of(each.units(), each.sold()))
        .plants("missed", each -> isLimited(each) ? Plants.of(each.missing(), each.missed()) : null)
        .aboveNil()
        .column("list price", currency, Kind.MONEY_EACH, each -> each.demand().price())
        .summed(
            "missed at list price",
            currency,
            Kind.MONEY,
            each -> isLimited(each) ? missedAtList(each) : null)
        .leavingOutParts()
        .of(demand);
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
