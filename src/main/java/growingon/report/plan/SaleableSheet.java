package growingon.report.plan;

import growingon.nursery.Horizon;
import growingon.nursery.Nursery;
import growingon.nursery.Quality;
import growingon.project.Projection;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableBuilder;
import growingon.report.figures.Context;
import growingon.report.figures.Trade;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Dates;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** What can be sold in each season: what is sold in it, and what stands ready at its end. */
public final class SaleableSheet {
  private final Horizon horizon;
  private final Dates dates;
  private final String currency;
  private final Function<Trade.Cell, Double> listPrice;

  private SaleableSheet(Projection projection) {
    this.horizon = projection.horizon();
    this.dates = new Dates(horizon);
    this.currency = projection.scenario().nursery().settings().currency();
    this.listPrice = Trade.listPrices(projection);
  }

  public static Sheet of(Context context) {
    Projection projection = context.accounts().projection();
    SaleableSheet sheet = new SaleableSheet(projection);
    Trade bySpecies = Trade.bySpecies(context);
    return FilledSheet.of(
        "Saleable",
        List.of(
            "Plants that can be sold in a season: those sold in it, and those that stand ready and"
                + " unsold at its end, each plant once. A plant left unsold is counted again in the"
                + " next season, so seasons are not to be added up.",
            "Kept plants, plants held back for a higher grade, plants that wait for one, and plants"
                + " of lots that may not be sold yet are not in here. A line without a whole plant is"
                + " left out.",
            qualityPrices(projection.scenario().nursery()),
            Sentences.EXPECTED,
            Sentences.WITHOUT_VAT),
        sheet.bySeason(bySpecies),
        sheet.bySpecies(bySpecies),
        sheet.byLot(Trade.byLot(context)));
  }

  /** What seconds and thirds fetch. */
  static String qualityPrices(Nursery nursery) {
    return "Seconds fetch %s %% and thirds %s %% of the list price (table qualities)."
        .formatted(percent(nursery, Quality.SECOND), percent(nursery, Quality.THIRD));
  }

  private static String percent(Nursery nursery, Quality quality) {
    return Phrases.of(nursery.settings())
        .whole(100 * nursery.qualities().get(quality).priceShare());
  }

  private Table bySeason(Trade trade) {
    TableBuilder table =
        plantColumns(TableBuilder.table("saleable-by-season", "By season").text("season"));
    for (List<Trade.Cell> season : trade.bySeason()) {
      table.row(row(List.of(dates.label(season.get(0).season())), season));
    }
    return table.build();
  }

  private Table bySpecies(Trade trade) {
    TableBuilder table =
        plantColumns(
            TableBuilder.table("saleable", "By species and grade")
                .note(
                    "List price: of a first, the dearest of the species' own rows of the demand table"
                        + " for the grade, else of the rows for any species. First month: the first"
                        + " in which one is sold; where none is sold, the season's last, in which"
                        + " they stand ready.")
                .text("season")
                .text("species")
                .text("grade"));
    price(table);
    for (List<Trade.Cell> line : trade.byGrade()) {
      Trade.Cell first = line.get(0);
      table.row(
          row(
              List.of(dates.label(first.season()), first.lot().lot().species(), first.grade()),
              line,
              listPrice.apply(first),
              dates.month(firstMonth(line))));
    }
    return table.build();
  }

  private Table byLot(Trade trade) {
    TableBuilder table =
        plantColumns(
            TableBuilder.table("saleable-by-lot", "By lot and grade")
                .text("season")
                .text("lot")
                .text("species")
                .text("grade"));
    price(table);
    for (List<Trade.Cell> line : trade.byGrade()) {
      Trade.Cell first = line.get(0);
      table.row(
          row(
              List.of(
                  dates.label(first.season()),
                  first.lot().lot().name(),
                  first.lot().lot().species(),
                  first.grade()),
              line,
              listPrice.apply(first),
              dates.month(firstMonth(line))));
    }
    return table.build();
  }

  private static TableBuilder plantColumns(TableBuilder table) {
    for (String heading : List.of("firsts", "seconds", "thirds", "in all", "sold", "left unsold")) {
      table.column(heading, "", Kind.PLANTS);
    }
    return table.leavingOutParts();
  }

  private void price(TableBuilder table) {
    table.column("list price", currency, Kind.MONEY_EACH).month("first month");
  }

  private static Object[] row(List<String> before, List<Trade.Cell> cells, Object... after) {
    List<Object> row = new ArrayList<>(before);
    row.add(Trade.saleable(cells, Quality.FIRST));
    row.add(Trade.saleable(cells, Quality.SECOND));
    row.add(Trade.saleable(cells, Quality.THIRD));
    row.add(Trade.saleable(cells));
    row.add(Trade.sum(cells, Trade.Cell::sold));
    row.add(Trade.sum(cells, Trade.Cell::unsold));
    row.addAll(Arrays.asList(after));
    return row.toArray();
  }

  private int firstMonth(List<Trade.Cell> line) {
    int sold = line.stream().mapToInt(Trade.Cell::firstSold).min().getAsInt();
    return Math.min(sold, horizon.seasonLast(line.get(0).season()));
  }
}
