package growingon.report.plan;

import growingon.nursery.Scenario;
import growingon.nursery.time.Horizon;
import growingon.project.need.SpaceUse.PlaceMonth;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.figures.SeasonFigures;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.report.words.BoughtWords;
import growingon.report.words.CashWords;
import growingon.report.words.ChanceWords;
import growingon.report.words.HoursWords;
import growingon.report.words.LibraryWords;
import growingon.report.words.OrderWords;
import growingon.report.words.SaleWords;
import growingon.report.words.SpaceWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What a grower reads first. */
public final class SummarySheet {
  /** Name of the table of seasons. */
  public static final String SEASONS = "seasons";

  private SummarySheet() {}

  public static Sheet of(Context context) {
    return new Sheet("Summary", sentences(context), List.of(seasons(context)), List.of(), true);
  }

  private static List<String> sentences(Context context) {
    if (context.inputs().scenario().lots().isEmpty()) {
      return List.of(
          "There is no lot in this plan: the stock list is empty and no offer is taken.");
    }
    SaleWords sales = new SaleWords(context);
    List<String> sentences = new ArrayList<>();
    ListSheet.usual(context).ifPresent(sentences::add);
    sentences.add(sales.headline());
    sentences.add(sales.inAll());
    new LibraryWords(context.inputs().scenario()).summary().ifPresent(sentences::add);
    sentences.addAll(new SpaceWords(context).headline());
    sentences.add(new HoursWords(context).summary());
    new OrderWords(context).youngPlants().ifPresent(sentences::add);
    sentences.add(new OrderWords(context).sentences().get(0));
    sentences.add(new CashWords(context).summary());
    runsDown(context).ifPresent(sentences::add);
    context.bought().forEach(lot -> sentences.addAll(new BoughtWords(context, lot).brief()));
    context.chances().ifPresent(drawn -> sentences.addAll(new ChanceWords(context).brief()));
    return sentences;
  }

  /** Says so where nothing is bought in later seasons: then the stock only goes. */
  private static Optional<String> runsDown(Context context) {
    Phrases say = context.say();
    SeasonFigures figures = context.seasons();
    Scenario scenario = context.inputs().scenario();
    Horizon horizon = scenario.horizon();
    int last = figures.seasons() - 1;
    boolean later =
        scenario.lots().stream()
            .filter(lot -> lot.purchase().isPresent())
            .anyMatch(lot -> horizon.season(horizon.offset(lot.arrived())) > 0);
    Plants first = figures.standing(0);
    Plants end = figures.standing(last);
    return later || last < 1 || end.exact() >= first.exact()
        ? Optional.empty()
        : Optional.of(
            "Nothing is bought after %s, so the stock runs down from %s then to %s at the end of %s."
                .formatted(
                    horizon.seasonName(0),
                    say.plants(first.whole()),
                    say.whole(end.whole()),
                    horizon.seasonName(last)));
  }

  private static Table seasons(Context context) {
    SeasonFigures figures = context.seasons();
    String currency = context.inputs().scenario().nursery().settings().currency();
    boolean hours = context.accounts().hours().available(0).isPresent();
    boolean space = !context.inputs().scenario().nursery().places().isEmpty();
    TableOf<Integer> table =
        TableOf.<Integer>table(SEASONS, "Season by season")
            .notes(notes(space, hours))
            .column(Rows.season(), figures::label)
            .summed("sales", currency, Kind.MONEY, figures::money)
            .plants("sold", "plants sold", figures::sold)
            .column("standing", "plants at its end", "", Kind.PLANTS, figures::standing)
            .column("cash", "cash at its end", currency, Kind.MONEY, figures::cash)
            .belowNil();
    if (space) {
      table
          .column(
              "overflow",
              "most space missing",
              "m²",
              Kind.SQUARE_METRES,
              season -> figures.peakOverflow(season).map(PlaceMonth::overflowM2).orElse(0.0))
          .aboveNil()
          .text(
              "overflow_in",
              "where and when",
              season ->
                  figures.peakOverflow(season).map(peak -> where(context, peak)).orElse(null));
    }
    if (hours) {
      table.summed("hours short", "hours", Kind.HOURS, figures::hoursShort).aboveNil();
    }
    return table.of(IntStream.range(0, figures.seasons()).boxed().toList());
  }

  private static List<String> notes(boolean space, boolean hours) {
    List<String> notes = new ArrayList<>();
    notes.add(Sentences.EXPECTED + " " + Sentences.WITHOUT_VAT);
    if (space || hours) {
      notes.add(
          (space ? "Most space missing: in one place, in its worst month of the season. " : "")
              + (hours ? "Hours short: added up over the months in which hours are short." : ""));
    }
    return notes;
  }

  private static String where(Context context, PlaceMonth peak) {
    Phrases say = context.say();
    String place = peak.place().orElse("without a place");
    return place + ", " + say.month(context.accounts().projection().horizon(), peak.month());
  }
}
