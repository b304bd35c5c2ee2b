package growingon.report.plan.sale;

import growingon.nursery.Nursery;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Quality;
import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.figures.Trade;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Dates;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
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
    return plants(
            TableOf.<List<Trade.Cell>>table("saleable-by-season", "By season")
                .text("season", this::season))
        .leavingOutParts()
        .of(trade.bySeason());
  }

  private String season(List<Trade.Cell> line) {
    return dates.label(line.get(0).season());
  }

  private static Lot lot(List<Trade.Cell> line) {
    return line.get(0).lot().lot();
  }

  private Table bySpecies(Trade trade) {
    return byGrade(
        trade,
        TableOf.<List<Trade.Cell>>table("saleable", "By species and grade")
            .note(
                "List price: of a first, the dearest of the species' own rows of the demand table"
                    + " for the grade, else of the rows for any species. First month: the first"
                    + " in which one is sold; where none is sold, the season's last, in which"
                    + " they stand ready.")
            .text("season", this::season)
            .text("species", line -> lot(line).species()));
  }

  private Table byLot(Trade trade) {
    return byGrade(
        trade,
        TableOf.<List<Trade.Cell>>table("saleable-by-lot", "By lot and grade")
            .text("season", this::season)
            .text("lot", line -> lot(line).name())
            .text("species", line -> lot(line).species()));
  }

  private Table byGrade(Trade trade, TableOf<List<Trade.Cell>> table) {
    return plants(table.text("grade", line -> line.get(0).grade()))
        .column("list price", currency, Kind.MONEY_EACH, line -> listPrice.apply(line.get(0)))
        .month("first month", line -> dates.month(firstMonth(line)))
        .leavingOutParts()
        .of(trade.byGrade());
  }

  private static TableOf<List<Trade.Cell>> plants(TableOf<List<Trade.Cell>> table) {
    return table
        .column("firsts", "", Kind.PLANTS, line -> Trade.saleable(line, Quality.FIRST))
        .column("seconds", "", Kind.PLANTS, line -> Trade.saleable(line, Quality.SECOND))
        .column("thirds", "", Kind.PLANTS, line -> Trade.saleable(line, Quality.THIRD))
        .column("in all", "", Kind.PLANTS, Trade::saleable)
        .column("sold", "", Kind.PLANTS, line -> Trade.sum(line, Trade.Cell::sold))
        .column("left unsold", "", Kind.PLANTS, line -> Trade.sum(line, Trade.Cell::unsold));
  }

  private int firstMonth(List<Trade.Cell> line) {
    int sold = line.stream().mapToInt(Trade.Cell::firstSold).min().getAsInt();
    return Math.min(sold, horizon.seasonLast(line.get(0).season()));
  }
}
