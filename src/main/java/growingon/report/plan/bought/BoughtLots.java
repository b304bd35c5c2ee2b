package growingon.report.plan.bought;

import growingon.chance.Gamble;
import growingon.chance.Quantiles;
import growingon.money.bought.BoughtLot;
import growingon.money.bought.BoughtLot.Overflow;
import growingon.money.bought.Ending;
import growingon.nursery.Nursery;
import growingon.nursery.market.Demand;
import growingon.nursery.species.Species;
import growingon.nursery.time.Horizon;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import growingon.report.words.BoughtWords;
import growingon.report.words.CashWords;
import growingon.report.words.EndingWords;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/** The lots bought within the plan: the nursery with each against the nursery without it. */
public final class BoughtLots {
  private BoughtLots() {}

  static List<Table> tables(Context context) {
    return List.of(
        gains(context),
        limits(context),
        BoughtLotBridges.bridges(context),
        BoughtLotBridges.join(context));
  }

  /** What each brings if the plan ends with another season, and where each is judged. */
  public static List<Table> later(Context context) {
    return List.of(endings(context), judged(context));
  }

  private static String currency(Context context) {
    return context.inputs().scenario().nursery().settings().currency();
  }

  /** A lot of the plan, weighed at the plan's end or later. */
  private record Weighed(BoughtLot ofPlan, BoughtLot bought) {}

  private static Table gains(Context context) {
    return gained(
            context,
            TableOf.<Weighed>table(LotsBoughtSheet.GAINS, "Lots bought: does each pay")
                .note(
                    "Gain: present value of the whole nursery's cash with the lot less that without it, so"
                        + " what it crowds out counts; both plans are run in full. More space and hours: what"
                        + " is missing because of it, in the worst month and in all. "
                        + Sentences.WITHOUT_VAT))
        .of(context.bought().stream().map(each -> new Weighed(each, each)).toList());
  }

  private static TableOf<Weighed> gained(Context context, TableOf<Weighed> table) {
    String currency = currency(context);
    Horizon horizon = context.accounts().projection().horizon();
    return table
        .column(Rows.lot(), each -> each.bought.lot().name())
        .column("plants", "", Kind.COUNT, each -> each.bought.lot().quantity())
        .summed("landed", "cost landed", currency, Kind.MONEY, each -> each.bought.landed())
        .column("gain", currency, Kind.MONEY, each -> each.bought.presentValue())
        .belowNil()
        .text(
            "return_rate",
            "rate of return",
            each -> CashWords.rates(each.bought.ratesOfReturn(), context.say()))
        .month("money back", each -> month(context, each.bought.payback()))
        .column(
            "overflow",
            "more space",
            "m²",
            Kind.SQUARE_METRES,
            each -> mostOverflow(context, each.bought))
        .aboveNil()
        .column(
            "hours_short",
            "more hours",
            "hours",
            Kind.HOURS,
            each -> Arrays.stream(each.bought.hoursShort()).sum())
        .aboveNil()
        .text(
            "judged_at",
            "judged at the end of",
            each -> horizon.seasonName(each.ofPlan.ending().judgedAt()))
        .column(
            "gain_judged",
            "gain then",
            currency,
            Kind.MONEY,
            each -> each.ofPlan.judged().presentValue())
        .belowNil()
        .longText("verdict", each -> verdict(new BoughtWords(context, each.ofPlan)));
  }

  /** A lot if the plan ended with a season. */
  private record Ended(BoughtLot bought, Optional<Gamble> gamble, int season) {
    Ending.BySeason at() {
      return bought.ending().seasons().get(season);
    }

    String ofPlan() {
      int end = bought.ending().planEnd();
      return season < end ? "before its end" : season == end ? "its end" : "after its end";
    }

    Double drawn(ToDoubleFunction<Quantiles> what) {
      return gamble.map(each -> what.applyAsDouble(each.byEnding().get(season))).orElse(null);
    }
  }

  private static List<Ended> ended(Context context) {
    List<Ended> ended = new ArrayList<>();
    for (BoughtLot each : context.bought()) {
      Optional<Gamble> gamble = EndingWords.gamble(context, each);
      for (int season = 0; season <= each.ending().judgedAt(); season++) {
        ended.add(new Ended(each, gamble, season));
      }
    }
    return ended;
  }

  /** Gain by season of ending, of each lot. */
  private static Table endings(Context context) {
    String currency = currency(context);
    Horizon horizon = context.accounts().projection().horizon();
    TableOf<Ended> table =
        TableOf.<Ended>table("gain-by-ending", "Gain by season of ending")
            .notes(endingNotes(context))
            .column(Rows.lot(), each -> each.bought.lot().name())
            .column(Rows.season(), each -> horizon.seasonLabel(each.season))
            .text("of_plan", "of the plan", Ended::ofPlan)
            .column("plan", "plan's line", currency, Kind.MONEY, each -> each.at().gain())
            .belowNil();
    if (context.chances().isPresent()) {
      table
          .column("P10", currency, Kind.MONEY, each -> each.drawn(Quantiles::p10))
          .belowNil()
          .column("P50", currency, Kind.MONEY, each -> each.drawn(Quantiles::p50))
          .belowNil()
          .column("P90", currency, Kind.MONEY, each -> each.drawn(Quantiles::p90))
          .belowNil()
          .column("mean", currency, Kind.MONEY, each -> each.drawn(Quantiles::mean))
          .belowNil()
          .column(
              "chance_pays",
              "chance that it pays",
              "",
              Kind.SHARE,
              each -> each.gamble.map(gamble -> gamble.paysByEnding()[each.season]).orElse(null));
    }
    return table
        .column("standing", "", Kind.COUNT, each -> Math.round(each.at().standing()))
        .column("graded", "", Kind.COUNT, each -> Math.round(each.at().graded()))
        .column("worth at list", currency, Kind.MONEY, each -> each.at().worthAtList())
        .of(ended(context));
  }

  private static List<String> endingNotes(Context context) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "What the lot has brought if the plan ended with that season: the whole nursery with it"
            + " less without it, in today's money. Later seasons know of no purchase after the"
            + " plan's own, so they have less competition than there will be.");
    demandThatEnds(context).ifPresent(notes::add);
    notes.add("Standing: for sale, kept ones left out; graded, and at list, by the plan's line.");
    return notes;
  }

  /** Rows of demand of one season, where a lot is judged after the plan's end. */
  private static Optional<String> demandThatEnds(Context context) {
    Nursery nursery = context.inputs().scenario().nursery();
    List<Species> later =
        context.bought().stream()
            .filter(each -> each.ending().isJudgedLater())
            .map(each -> nursery.speciesOf(each.lot()))
            .toList();
    List<String> rows =
        nursery.demand().stream()
            .filter(row -> row.season().isPresent())
            .filter(row -> later.stream().anyMatch(each -> isOf(row, each)))
            .map(row -> row.species().orElse("any species") + " as " + row.grade())
            .distinct()
            .toList();
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "What is wanted in one named season only is not wanted again after it: "
                + Phrases.list(rows)
                + ".");
  }

  private static boolean isOf(Demand row, Species species) {
    return row.ladder().equals(species.ladder())
        && row.species().map(species.name()::equals).orElse(true);
  }

  /** The same as the gains, of lots that are judged later than the plan ends, where they are. */
  private static Table judged(Context context) {
    return gained(
            context,
            TableOf.<Weighed>table("bought-lots-judged", "Lots bought: where each is judged")
                .note(LotVerdictsSheet.JUDGED)
                .note(Sentences.WITHOUT_VAT))
        .of(
            context.bought().stream()
                .filter(each -> each.ending().isJudgedLater())
                .map(each -> new Weighed(each, each.judged()))
                .toList());
  }

  private static Table limits(Context context) {
    boolean drawn = context.chances().isPresent();
    return TableOf.<BoughtLot>table(LotsBoughtSheet.LIMITS, "Lots bought: how far you may go")
        .note(
            "Landed: a plant with its share of carriage and charges. The most to pay, the fewest usable"
                + " (firsts and seconds) and the least mean price of all its sales are the values at"
                + " which the gain is nil, each with all else as planned; empty where none would do."
                + (drawn ? " The most to pay is that of the mean of the draws." : ""))
        .column(Rows.lot(), each -> each.lot().name())
        .column(
            price(context, "price", "unit price"), each -> each.lot().purchase().get().unitPrice())
        .column(
            price(context, "landed_each", "landed, each"),
            each -> each.landed() / each.lot().quantity())
        .column(
            price(context, "most_to_pay", "most to pay, landed"),
            each -> cell(BoughtWords.mostLandedEach(context, each)))
        .column(
            price(context, "most_on_line", "the same on the plan's line"),
            each -> cell(each.bargain().mostLandedEach()))
        .column(
            "usable",
            "usable expected",
            "in 100",
            Kind.NUMBER,
            each -> 100 * BoughtWords.usable(each.lot()))
        .column(
            "fewest usable",
            "in 100",
            Kind.COUNT,
            each ->
                each.bargain().fewestUsable().isPresent()
                    ? each.bargain().fewestUsable().getAsInt()
                    : null)
        .column(
            price(context, "mean_price", "mean price expected"),
            each -> Rows.number(each.bargain().averagePrice()))
        .column(
            price(context, "least_price", "least mean price"),
            each -> Rows.number(each.bargain().leastPrice().orElse(Double.NaN)))
        .of(context.bought());
  }

  private static Column price(Context context, String key, String heading) {
    return Column.of(key, heading, currency(context), Kind.MONEY_EACH);
  }

  private static Double cell(OptionalDouble value) {
    return value.isPresent() ? (Double) value.getAsDouble() : null;
  }

  private static YearMonth month(Context context, OptionalInt offset) {
    Horizon horizon = context.accounts().projection().horizon();
    return offset.isPresent() ? horizon.month(offset.getAsInt()) : null;
  }

  /** Most square metres over capacity that it adds in any month, all places together. */
  private static Double mostOverflow(Context context, BoughtLot bought) {
    if (context.inputs().scenario().nursery().places().isEmpty()) {
      return null;
    }
    double[] byMonth = new double[bought.flows().length];
    for (Overflow each : bought.overflows()) {
      byMonth[each.month()] += each.m2();
    }
    return Arrays.stream(byMonth).max().orElse(0);
  }

  private static String verdict(BoughtWords words) {
    String pays = words.told();
    return words.space().isEmpty() ? pays : pays + ", with " + Phrases.list(words.space());
  }
}
