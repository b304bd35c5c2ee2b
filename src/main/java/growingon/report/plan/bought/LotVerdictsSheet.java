package growingon.report.plan.bought;

import growingon.chance.Gamble;
import growingon.nursery.Settings;
import growingon.nursery.time.Horizon;
import growingon.report.build.TableOf;
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
    return TableOf.<Gamble>table("lot-verdicts", "The gamble: what each lot bought may gain")
        .note(
            "Gain: present value of the whole nursery's cash with the lot less that without it, both on"
                + " the same luck, so that what it crowds out counts. A tenth: of its cost landed.")
        .note(JUDGED)
        .column(Rows.lot(), each -> each.bought().lot().name())
        .longText("verdict", each -> new VerdictWords(context, each).told())
        .text(
            "judged_at",
            "judged at the end of",
            each -> horizon.seasonName(each.bought().ending().judgedAt()))
        .column(money("plan", "plan's line"), each -> each.bought().judged().presentValue())
        .belowNil()
        .column(money("mean", "mean gain"), each -> each.gain().mean())
        .belowNil()
        .column(money("mean_error", "mean ±"), each -> each.gain().meanError())
        .column(money("p10", "P10"), each -> each.gain().p10())
        .belowNil()
        .column(money("p50", "P50"), each -> each.gain().p50())
        .belowNil()
        .column(money("p90", "P90"), each -> each.gain().p90())
        .belowNil()
        .column("chance_pays", "chance that it pays", "", Kind.SHARE, Gamble::chancePays)
        .column(
            "chance_loses_tenth",
            "chance to lose over a tenth",
            "",
            Kind.SHARE,
            Gamble::chanceLosesTenth)
        .of(gambles);
  }

  private Table returns() {
    return TableOf.<Gamble>table("lot-returns", "When the money is back, and the return")
        .note(
            "Empty: not by then. The rate of return is that of the plan's line; the chance that"
                + " it lies above the rate asked is the chance that the lot pays.")
        .column(Rows.lot(), each -> each.bought().lot().name())
        .month(
            "back_plan", "back on the plan's line", each -> month(each.bought().judged().payback()))
        .month("back_even", "back, chance 50 %", each -> month(each.paidBackEven()))
        .month("back_sure", "back, chance 90 %", each -> month(each.paidBackSure()))
        .text(
            "return_rate",
            "rate of return",
            each -> CashWords.rates(each.bought().judged().ratesOfReturn(), Phrases.of(settings)))
        .column("rate_asked", "rate asked, a year", "", Kind.SHARE, each -> settings.discountRate())
        .column("chance_fails", "taken to fail as a whole", "", Kind.SHARE, Gamble::chanceFails)
        .of(gambles);
  }

  private YearMonth month(OptionalInt offset) {
    return offset.isPresent() ? horizon.month(offset.getAsInt()) : null;
  }

  private Table limits() {
    return TableOf.<Gamble>table("lot-break-evens", "How far you may go")
        .note(
            "Most landed, carriage and charges included: the cost at which the mean gain is nil; empty"
                + " where it would lose even as a gift.")
        .note(
            "Firsts, plants alive after the first year and its steps, and selling prices: the values at"
                + " which the plan's line gains nil, all else as planned; empty where none does. Slowest growth: a"
                + " factor on all growth of the species; none is given where there are several, since"
                + " plants that grow more slowly crowd each other less.")
        .column(Rows.lot(), each -> each.bought().lot().name())
        .column(money("landed", "cost landed"), each -> each.bought().landed())
        .column(
            each("landed_each", "landed, each"),
            each -> each.bought().landed() / each.bought().lot().quantity())
        .column(
            money("most_landed", "most landed"),
            each -> cell(each.mostLandedEach(), each.bought().lot().quantity()))
        .column(each("most_each", "most landed, each"), each -> cell(each.mostLandedEach()))
        .column(
            number("firsts", "firsts expected"),
            each -> 100 * each.bought().lot().quality().first())
        .column(
            number("fewest_firsts", "fewest firsts"), each -> hundred(each.breakEvens().firsts()))
        .column(
            number("fewest_survivors", "fewest alive after a year"),
            each -> cell(each.breakEvens().survivors()))
        .column(
            "least_price_share",
            "least share of prices",
            "",
            Kind.SHARE,
            each -> cell(each.breakEvens().price()))
        .column("slowest growth", "", Kind.SHARE, each -> cell(each.breakEvens().slowest()))
        .text(
            "slowest_several",
            "slowest, if several",
            each -> each.breakEvens().severalSlowest() ? "several" : null)
        .of(gambles);
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
