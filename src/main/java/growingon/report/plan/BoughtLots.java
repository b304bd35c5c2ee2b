package growingon.report.plan;

import growingon.chance.Gamble;
import growingon.chance.Quantiles;
import growingon.money.bought.BoughtLot;
import growingon.money.bought.BoughtLot.Bargain;
import growingon.money.bought.BoughtLot.Overflow;
import growingon.money.bought.Ending;
import growingon.money.bought.ValueJoin;
import growingon.nursery.Demand;
import growingon.nursery.Horizon;
import growingon.nursery.Lot;
import growingon.nursery.Nursery;
import growingon.nursery.Species;
import growingon.report.build.Columns;
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

/** The lots bought within the plan: the nursery with each against the nursery without it. */
final class BoughtLots {
  private BoughtLots() {}

  static List<Table> tables(Context context) {
    return List.of(gains(context), limits(context), bridges(context), join(context));
  }

  /** What each brings if the plan ends with another season, and where each is judged. */
  static List<Table> later(Context context) {
    return List.of(endings(context), judged(context));
  }

  private static String currency(Context context) {
    return context.inputs().scenario().nursery().settings().currency();
  }

  private static Table gains(Context context) {
    String currency = currency(context);
    Rows rows = new Rows();
    context.bought().forEach(each -> rows.add(gain(context, each, each)));
    return new Table(
        LotsBoughtSheet.GAINS,
        "Lots bought: does each pay",
        List.of(
            "Gain: present value of the whole nursery's cash with the lot less that without it, so"
                + " what it crowds out counts; both plans are run in full. More space and hours: what"
                + " is missing because of it, in the worst month and in all. "
                + Sentences.WITHOUT_VAT),
        gainColumns(currency),
        rows.list());
  }

  private static List<Column> gainColumns(String currency) {
    return List.of(
        Rows.lot(),
        Column.of("plants", "plants", "", Kind.COUNT),
        Column.summed("landed", "cost landed", currency, Kind.MONEY),
        Columns.belowNil(Column.of("gain", "gain", currency, Kind.MONEY)),
        Column.of("return_rate", "rate of return", "", Kind.TEXT),
        Column.of("money_back", "money back", "", Kind.MONTH),
        Columns.aboveNil(Column.of("overflow", "more space", "m²", Kind.SQUARE_METRES)),
        Columns.aboveNil(Column.of("hours_short", "more hours", "hours", Kind.HOURS)),
        Column.of("judged_at", "judged at the end of", "", Kind.TEXT),
        Columns.belowNil(Column.of("gain_judged", "gain then", currency, Kind.MONEY)),
        Column.of("verdict", "verdict", "", Kind.LONG_TEXT));
  }

  /** Gain by season of ending, of each lot. */
  private static Table endings(Context context) {
    String currency = currency(context);
    Horizon horizon = context.accounts().projection().horizon();
    boolean drawn = context.chances().isPresent();
    Rows rows = new Rows();
    for (BoughtLot each : context.bought()) {
      Optional<Gamble> gamble = EndingWords.gamble(context, each);
      for (int season = 0; season <= each.ending().judgedAt(); season++) {
        rows.add(ending(each, gamble, season, horizon));
      }
    }
    return new Table(
        "gain-by-ending",
        "Gain by season of ending",
        endingNotes(context),
        endingColumns(currency, drawn),
        rows.list());
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

  private static List<Column> endingColumns(String currency, boolean drawn) {
    List<Column> columns = new ArrayList<>();
    columns.add(Rows.lot());
    columns.add(Rows.season());
    columns.add(Column.of("of_plan", "of the plan", "", Kind.TEXT));
    columns.add(Columns.belowNil(Column.of("plan", "plan's line", currency, Kind.MONEY)));
    if (drawn) {
      columns.add(Columns.belowNil(Column.of("p10", "P10", currency, Kind.MONEY)));
      columns.add(Columns.belowNil(Column.of("p50", "P50", currency, Kind.MONEY)));
      columns.add(Columns.belowNil(Column.of("p90", "P90", currency, Kind.MONEY)));
      columns.add(Columns.belowNil(Column.of("mean", "mean", currency, Kind.MONEY)));
      columns.add(Column.of("chance_pays", "chance that it pays", "", Kind.SHARE));
    }
    columns.add(Column.of("standing", "standing", "", Kind.COUNT));
    columns.add(Column.of("graded", "graded", "", Kind.COUNT));
    columns.add(Column.of("worth_at_list", "worth at list", currency, Kind.MONEY));
    return columns;
  }

  private static List<Object> ending(
      BoughtLot bought, Optional<Gamble> gamble, int season, Horizon horizon) {
    Ending.BySeason at = bought.ending().seasons().get(season);
    int end = bought.ending().planEnd();
    List<Object> row = new ArrayList<>();
    row.add(bought.lot().name());
    row.add(horizon.seasonLabel(season));
    row.add(season < end ? "before its end" : season == end ? "its end" : "after its end");
    row.add(at.gain());
    gamble.ifPresent(
        each -> {
          Quantiles drawn = each.byEnding().get(season);
          row.addAll(List.of(drawn.p10(), drawn.p50(), drawn.p90(), drawn.mean()));
          row.add(each.paysByEnding()[season]);
        });
    row.add(Math.round(at.standing()));
    row.add(Math.round(at.graded()));
    row.add(at.worthAtList());
    return row;
  }

  /** The same as the gains, of lots that are judged later than the plan ends, where they are. */
  private static Table judged(Context context) {
    String currency = currency(context);
    Rows rows = new Rows();
    for (BoughtLot each : context.bought()) {
      if (each.ending().isJudgedLater()) {
        rows.add(gain(context, each, each.judged()));
      }
    }
    return new Table(
        "bought-lots-judged",
        "Lots bought: where each is judged",
        List.of(LotVerdictsSheet.JUDGED, Sentences.WITHOUT_VAT),
        gainColumns(currency),
        rows.list());
  }

  /** The lot of a plan, weighed at the plan's end or later. */
  private static List<Object> gain(Context context, BoughtLot ofPlan, BoughtLot bought) {
    Horizon horizon = context.accounts().projection().horizon();
    return Arrays.asList(
        bought.lot().name(),
        bought.lot().quantity(),
        bought.landed(),
        bought.presentValue(),
        CashWords.rates(bought.ratesOfReturn(), context.say()),
        month(context, bought.payback()),
        mostOverflow(context, bought),
        Arrays.stream(bought.hoursShort()).sum(),
        horizon.seasonName(ofPlan.ending().judgedAt()),
        ofPlan.judged().presentValue(),
        verdict(new BoughtWords(context, ofPlan)));
  }

  private static Table limits(Context context) {
    String currency = currency(context);
    boolean drawn = context.chances().isPresent();
    Rows rows = new Rows();
    context.bought().forEach(each -> rows.add(limit(context, each)));
    return new Table(
        LotsBoughtSheet.LIMITS,
        "Lots bought: how far you may go",
        List.of(
            "Landed: a plant with its share of carriage and charges. The most to pay, the fewest usable"
                + " (firsts and seconds) and the least mean price of all its sales are the values at"
                + " which the gain is nil, each with all else as planned; empty where none would do."
                + (drawn ? " The most to pay is that of the mean of the draws." : "")),
        List.of(
            Rows.lot(),
            Column.of("price", "unit price", currency, Kind.MONEY_EACH),
            Column.of("landed_each", "landed, each", currency, Kind.MONEY_EACH),
            Column.of("most_to_pay", "most to pay, landed", currency, Kind.MONEY_EACH),
            Column.of("most_on_line", "the same on the plan's line", currency, Kind.MONEY_EACH),
            Column.of("usable", "usable expected", "in 100", Kind.NUMBER),
            Column.of("fewest_usable", "fewest usable", "in 100", Kind.COUNT),
            Column.of("mean_price", "mean price expected", currency, Kind.MONEY_EACH),
            Column.of("least_price", "least mean price", currency, Kind.MONEY_EACH)),
        rows.list());
  }

  private static List<Object> limit(Context context, BoughtLot bought) {
    Lot lot = bought.lot();
    Bargain bargain = bought.bargain();
    return Arrays.asList(
        lot.name(),
        lot.purchase().get().unitPrice(),
        bought.landed() / lot.quantity(),
        cell(BoughtWords.mostLandedEach(context, bought)),
        cell(bargain.mostLandedEach()),
        100 * BoughtWords.usable(lot),
        bargain.fewestUsable().isPresent() ? bargain.fewestUsable().getAsInt() : null,
        Rows.number(bargain.averagePrice()),
        Rows.number(bargain.leastPrice().orElse(Double.NaN)));
  }

  private static Double cell(OptionalDouble value) {
    return value.isPresent() ? (Double) value.getAsDouble() : null;
  }

  /** From what each lot gains, in today's money, to the result of its account. */
  private static Table bridges(Context context) {
    String currency = currency(context);
    Rows rows = new Rows();
    for (BoughtLot each : context.bought()) {
      BoughtLot.Bridge bridge = each.bridge();
      rows.add(
          each.lot().name(),
          bridge.gain(),
          bridge.later(),
          -bridge.unsold(),
          -bridge.hoursNotPaid(),
          -bridge.placeCharge(),
          -bridge.packsAndStock(),
          -bridge.otherLots(),
          bridge.result());
    }
    return new Table(
        "bought-lot-bridges",
        "Lots bought: from the gain to the result of the lot's account",
        List.of(
            "Gain: what the nursery has more in cash, in today's money. Result: sales less all costs of"
                + " the lot's account. Between them lie discounting, the value of unsold plants, hours"
                + " and space that the account is charged though nobody is paid more for them, whole"
                + " packs, and what other lots sell less or use less because of it. "
                + Sentences.WITHOUT_VAT),
        List.of(
            Rows.lot(),
            Columns.belowNil(Column.of("gain", "gain", currency, Kind.MONEY)),
            Column.of("later", "as it comes, undiscounted", currency, Kind.MONEY),
            Column.of("unsold", "value of unsold plants", currency, Kind.MONEY),
            Column.of("hours", "hours not paid", currency, Kind.MONEY),
            Column.of("place", "charge for space", currency, Kind.MONEY),
            Column.of("packs", "packs and stock on hand", currency, Kind.MONEY),
            Column.of("others", "other lots", currency, Kind.MONEY),
            Columns.belowNil(Column.of("result", "result", currency, Kind.MONEY))),
        rows.list());
  }

  /** What the lots bought gain, joined to the plan's present value. */
  private static Table join(Context context) {
    Phrases say = context.say();
    String currency = currency(context);
    ValueJoin join = context.join();
    Rows rows = new Rows();
    for (BoughtLot each : join.bought()) {
      rows.add("gain of " + each.lot().name(), each.presentValue());
    }
    rows.add("what they gain together beyond that", join.together());
    rows.add("lots that stand at the start", join.standing());
    rows.add("places, used or not", join.places());
    rows.add("other cash of no lot", join.otherCash());
    return new Table(
        "bought-lot-join",
        "From the gains of the lots bought to the present value of the plan",
        List.of(
            "The total is the net present value of the plan, %s, to the cent."
                .formatted(say.each(join.presentValue())),
            "A gain is the plan with the lot less the plan without it, so what no lot causes is in none"
                + " of them. Together: they share packs, and sell to the same demand."),
        List.of(
            Column.of("line", "line", "", Kind.TEXT),
            Column.summed("amount", "amount", currency, Kind.MONEY)),
        rows.list());
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

  /** Cash with the lot less cash without it, month by month. */
  static Table flows(Context context) {
    String currency = currency(context);
    Horizon horizon = context.accounts().projection().horizon();
    Rows rows = new Rows();
    for (BoughtLot each : context.bought()) {
      double sum = 0;
      for (int month = 0; month < each.flows().length; month++) {
        sum += each.flows()[month];
        rows.add(each.lot().name(), horizon.month(month), each.flows()[month], sum);
      }
    }
    return new Table(
        "bought-lot-flows",
        "Lots bought: cash with the lot less cash without it",
        List.of(Sentences.WITHOUT_VAT),
        List.of(
            Rows.lot(),
            Rows.month(),
            Column.of("flow", "in less out", currency, Kind.MONEY),
            Column.of("cumulative", "since the start", currency, Kind.MONEY)),
        rows.list());
  }
}
