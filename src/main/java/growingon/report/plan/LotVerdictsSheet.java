package growingon.report.plan;

import growingon.chance.Gamble;
import growingon.nursery.Horizon;
import growingon.nursery.Lot;
import growingon.nursery.Settings;
import growingon.report.build.Columns;
import growingon.report.chart.ChanceCharts;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import growingon.report.words.CashWords;
import growingon.report.words.ChanceWords;
import growingon.report.words.VerdictWords;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Each lot bought within the plan as a gamble: its part of the sheet of lots bought. */
final class LotVerdictsSheet {
  static final String JUDGED =
      "A lot is judged when nine tenths of what could be sold are sold: at the plan's end, or at that"
          + " of a later season, to which the same plan runs on with nothing else bought.";

  private final Context context;
  private final List<Gamble> gambles;
  private final Horizon horizon;
  private final Settings settings;

  private LotVerdictsSheet(Context context, List<Gamble> gambles) {
    this.context = context;
    this.gambles = gambles;
    this.horizon = context.accounts().projection().horizon();
    this.settings = context.inputs().scenario().nursery().settings();
  }

  /** Empty without draws and without a lot bought. */
  static Sheet of(Context context) {
    List<Gamble> gambles = context.chances().map(each -> each.gambles()).orElse(List.of());
    if (gambles.isEmpty()) {
      return Sheet.of(LotsBoughtSheet.NAME);
    }
    LotVerdictsSheet sheet = new LotVerdictsSheet(context, gambles);
    List<String> sentences = new ArrayList<>(new ChanceWords(context).verdicts());
    sentences.add(Sentences.WITHOUT_VAT);
    return new Sheet(
        LotsBoughtSheet.NAME,
        sentences,
        List.of(sheet.chances(), sheet.returns(), sheet.limits()),
        ChanceCharts.gains(gambles),
        false);
  }

  private Column money(String key, String heading) {
    return Column.of(key, heading, settings.currency(), Kind.MONEY);
  }

  private Table chances() {
    Rows rows = new Rows();
    for (Gamble each : gambles) {
      rows.add(
          each.bought().lot().name(),
          new VerdictWords(context, each).told(),
          horizon.seasonName(each.bought().ending().judgedAt()),
          each.bought().judged().presentValue(),
          each.gain().mean(),
          each.gain().meanError(),
          each.gain().p10(),
          each.gain().p50(),
          each.gain().p90(),
          each.chancePays(),
          each.chanceLosesTenth());
    }
    return new Table(
        "lot-verdicts",
        "The gamble: what each lot bought may gain",
        List.of(
            "Gain: present value of the whole nursery's cash with the lot less that without it, both on"
                + " the same luck, so that what it crowds out counts. A tenth: of its cost landed.",
            JUDGED),
        List.of(
            Rows.lot(),
            Column.of("verdict", "verdict", "", Kind.LONG_TEXT),
            Column.of("judged_at", "judged at the end of", "", Kind.TEXT),
            Columns.belowNil(money("plan", "plan's line")),
            Columns.belowNil(money("mean", "mean gain")),
            money("mean_error", "mean ±"),
            Columns.belowNil(money("p10", "P10")),
            Columns.belowNil(money("p50", "P50")),
            Columns.belowNil(money("p90", "P90")),
            Column.of("chance_pays", "chance that it pays", "", Kind.SHARE),
            Column.of("chance_loses_tenth", "chance to lose over a tenth", "", Kind.SHARE)),
        rows.list());
  }

  private Table returns() {
    Rows rows = new Rows();
    for (Gamble each : gambles) {
      rows.add(
          Arrays.asList(
              each.bought().lot().name(),
              month(each.bought().judged().payback()),
              month(each.paidBackEven()),
              month(each.paidBackSure()),
              CashWords.rates(each.bought().judged().ratesOfReturn(), Phrases.of(settings)),
              settings.discountRate(),
              each.chanceFails()));
    }
    return new Table(
        "lot-returns",
        "When the money is back, and the return",
        List.of(
            "Empty: not by then. The rate of return is that of the plan's line; the chance that"
                + " it lies above the rate asked is the chance that the lot pays."),
        List.of(
            Rows.lot(),
            Column.of("back_plan", "back on the plan's line", "", Kind.MONTH),
            Column.of("back_even", "back, chance 50 %", "", Kind.MONTH),
            Column.of("back_sure", "back, chance 90 %", "", Kind.MONTH),
            Column.of("return_rate", "rate of return", "", Kind.TEXT),
            Column.of("rate_asked", "rate asked, a year", "", Kind.SHARE),
            Column.of("chance_fails", "taken to fail as a whole", "", Kind.SHARE)),
        rows.list());
  }

  private YearMonth month(OptionalInt offset) {
    return offset.isPresent() ? horizon.month(offset.getAsInt()) : null;
  }

  private Table limits() {
    Rows rows = new Rows();
    for (Gamble each : gambles) {
      Lot lot = each.bought().lot();
      rows.add(
          Arrays.asList(
              lot.name(),
              each.bought().landed(),
              each.bought().landed() / lot.quantity(),
              cell(each.mostLandedEach(), lot.quantity()),
              cell(each.mostLandedEach()),
              100 * lot.quality().first(),
              hundred(each.breakEvens().firsts()),
              cell(each.breakEvens().survivors()),
              cell(each.breakEvens().price()),
              cell(each.breakEvens().slowest()),
              each.breakEvens().severalSlowest() ? "several" : null));
    }
    return new Table(
        "lot-break-evens",
        "How far you may go",
        List.of(
            "Most landed, carriage and charges included: the cost at which the mean gain is nil; empty"
                + " where it would lose even as a gift.",
            "Firsts, plants alive after the first year and its steps, and selling prices: the values at"
                + " which the plan's line gains nil, all else as planned; empty where none does. Slowest growth: a"
                + " factor on all growth of the species; none is given where there are several, since"
                + " plants that grow more slowly crowd each other less."),
        List.of(
            Rows.lot(),
            money("landed", "cost landed"),
            each("landed_each", "landed, each"),
            money("most_landed", "most landed"),
            each("most_each", "most landed, each"),
            number("firsts", "firsts expected"),
            number("fewest_firsts", "fewest firsts"),
            number("fewest_survivors", "fewest alive after a year"),
            Column.of("least_price_share", "least share of prices", "", Kind.SHARE),
            Column.of("slowest_growth", "slowest growth", "", Kind.SHARE),
            Column.of("slowest_several", "slowest, if several", "", Kind.TEXT)),
        rows.list());
  }

  private Column each(String key, String heading) {
    return Column.of(key, heading, settings.currency(), Kind.MONEY_EACH);
  }

  private static Column number(String key, String heading) {
    return Column.of(key, heading, "in 100", Kind.NUMBER);
  }

  private static Double hundred(OptionalDouble share) {
    return share.isPresent() ? (Double) (100 * share.getAsDouble()) : null;
  }

  private static Double cell(OptionalDouble value) {
    return cell(value, 1);
  }

  private static Double cell(OptionalDouble value, int times) {
    return value.isPresent() ? (Double) (times * value.getAsDouble()) : null;
  }
}
