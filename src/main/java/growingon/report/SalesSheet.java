package growingon.report;

import growingon.money.DemandMet;
import growingon.nursery.Demand;
import growingon.nursery.Horizon;
import growingon.nursery.MonthSpan;
import growingon.project.Projection;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What is sold in each season and for how much, and what was wanted and could not be sold. */
final class SalesSheet {
  private final Horizon horizon;
  private final Dates dates;
  private final String currency;
  private final List<Wanted> demand = new ArrayList<>();

  /** A demand row in a season with what is shown of it: wanted = sold + missed. */
  private record Wanted(DemandMet met, Plants wanted, Plants sold, Plants missed) {}

  private SalesSheet(Projection projection) {
    this.horizon = projection.horizon();
    this.dates = new Dates(horizon);
    this.currency = projection.scenario().nursery().settings().currency();
    Map<Integer, List<DemandMet>> bySeason =
        DemandMet.of(projection).stream()
            .collect(Collectors.groupingBy(DemandMet::season, TreeMap::new, Collectors.toList()));
    bySeason.values().forEach(this::round);
  }

  /** Shows what is wanted as typed, and lets the missed be what is left of it. */
  private void round(List<DemandMet> season) {
    List<Plants> sold = WholePlants.round(season.stream().mapToDouble(DemandMet::sold).toArray());
    for (int i = 0; i < season.size(); i++) {
      DemandMet met = season.get(i);
      long wholeSold = sold.get(i).whole();
      boolean limited = met.demand().units().isPresent();
      long wanted = limited ? Math.max(wholeSold, Math.round(met.wanted())) : wholeSold;
      demand.add(
          new Wanted(
              met,
              new Plants(met.wanted(), wanted),
              sold.get(i),
              new Plants(met.missed(), wanted - wholeSold)));
    }
  }

  static Sheet of(Context context) {
    Projection projection = context.accounts().projection();
    SalesSheet sheet = new SalesSheet(projection);
    Trade bySpecies = Trade.bySpecies(projection);
    return FilledSheet.of(
        "Sales",
        List.of(
            Sentences.WITHOUT_VAT,
            "Sold is what is ready, up to what the demand table wants in the month: rows for a"
                + " species first, dearer rows first, oldest lots first, firsts before seconds. "
                + SaleableSheet.qualityPrices(projection.scenario().nursery()),
            Sentences.EXPECTED),
        sheet.bySeason(bySpecies),
        sheet.bySpecies(bySpecies),
        sheet.wanted(),
        sheet.byLot(Trade.byLot(projection)));
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
            .summed("missed at list price", currency, Kind.MONEY);
    Map<Integer, List<Trade.Cell>> bySeason =
        trade.cells().stream().collect(Collectors.groupingBy(Trade.Cell::season));
    for (int season = 0; season < horizon.seasons(); season++) {
      List<Trade.Cell> cells = bySeason.getOrDefault(season, List.of());
      Plants sold = Trade.sum(cells, Trade.Cell::sold);
      double receipts = cells.stream().mapToDouble(Trade.Cell::receipts).sum();
      double exact = 0;
      long missed = 0;
      double missedAtList = 0;
      for (Wanted row : demand) {
        if (row.met().season() == season) {
          exact += row.missed().exact();
          missed += row.missed().whole();
          missedAtList += row.met().missedAtList();
        }
      }
      if (sold.exact() > 0 || exact > 0) {
        String label = dates.label(season);
        table.row(label, sold, receipts, new Plants(exact, missed), missedAtList);
      }
    }
    return table.build();
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
        .column("mean price", currency, Kind.MONEY_EACH);
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
            .summed("missed at list price", currency, Kind.MONEY);
    for (Wanted each : demand) {
      Demand row = each.met().demand();
      boolean limited = row.units().isPresent();
      table.row(
          dates.label(each.met().season()),
          row.species().orElse("any"),
          row.ladder(),
          row.grade(),
          months(row.months()),
          limited ? each.wanted() : null,
          each.sold(),
          limited ? each.missed() : null,
          row.price(),
          limited ? each.met().missedAtList() : null);
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
