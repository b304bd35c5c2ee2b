package growingon.report.words;

import growingon.chance.Chances;
import growingon.money.Accounts;
import growingon.money.CashFlow;
import growingon.money.Finance;
import growingon.nursery.Settings;
import growingon.nursery.market.HorizonValue;
import growingon.nursery.time.Horizon;
import growingon.report.figures.Context;
import growingon.report.text.Odds;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import growingon.report.text.Spell;
import growingon.whole.WholeLot;
import growingon.whole.WholePlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What is said about cash. */
public final class CashWords {
  private final Optional<Chances> chances;
  private final Accounts accounts;
  private final WholePlan whole;
  private final CashFlow cash;
  private final Horizon horizon;
  private final Settings settings;
  private final Phrases say;

  public CashWords(Context context) {
    this.say = context.say();
    this.chances = context.chances();
    this.accounts = context.accounts();
    this.whole = context.whole();
    this.cash = accounts.cash();
    this.horizon = accounts.projection().horizon();
    this.settings = context.inputs().scenario().nursery().settings();
  }

  /** The lowest month, the limit, where it starts and ends. */
  public String summary() {
    double[] balances = cash.balances();
    int lowest = cash.lowestMonth();
    return "Cash is lowest at the end of %s, at %s%s; the plan opens with %s and ends with %s."
        .formatted(
            say.month(horizon, lowest),
            money(balances[lowest]),
            belowLimit(balances),
            money(cash.opening()),
            money(balances[balances.length - 1]));
  }

  private String belowLimit(double[] balances) {
    if (settings.lowestCash().isEmpty()) {
      return "";
    }
    double limit = settings.lowestCash().getAsDouble();
    List<Spell> below = Spell.of(balances.length, month -> limit - balances[month]);
    return below.isEmpty()
        ? inDraws().orElse(", never below the %s allowed").formatted(money(limit))
        : ", below the %s allowed %s".formatted(money(limit), say.when(below, horizon));
  }

  /** The plan's line may keep to a limit that many draws do not. */
  private Optional<String> inDraws() {
    return chances
        .filter(drawn -> drawn.chanceBelowLowest().orElse(0) > 0)
        .map(drawn -> Odds.in(drawn.chanceBelowLowest().getAsDouble(), drawn.draws()))
        .map(
            odds ->
                ", on the plan's line never below the %s allowed, but " + odds + " in some month");
  }

  /** Cash and the value of the plan, without anything of the lots. */
  public List<String> cashAndValue() {
    return List.of(summary(), value(), Sentences.WITHOUT_VAT);
  }

  /** What stands at the top of the Cash sheet. */
  public List<String> sheet() {
    List<String> sentences = new ArrayList<>();
    sentences.add(summary());
    sentences.add(value());
    sentences.add(unsold());
    sentences.add(Sentences.WITHOUT_VAT);
    return sentences;
  }

  /** A running nursery has no rate of return: what stands at the start was paid for before. */
  private String value() {
    double[] flows = accounts.flowsWithHorizonValue();
    boolean fromBareLand =
        accounts.lots().stream()
            .allMatch(lot -> lot.lot().purchase().isPresent() || lot.started() == 0);
    String rates =
        fromBareLand
            ? "internal rate of return %s; ".formatted(rates(Finance.ratesOfReturn(flows), say))
            : "";
    return "Net present value of the plan %s at %s a year; %s%s."
        .formatted(
            money(accounts.presentValue()),
            say.rate(settings.discountRate()),
            rates,
            since(Finance.payback(flows)));
  }

  /** 8.7 % a year, none, or several with their values. */
  public static String rates(List<Double> rates, Phrases say) {
    if (rates.isEmpty()) {
      return "none";
    }
    List<String> all = rates.stream().map(say::rate).toList();
    return all.size() == 1
        ? all.get(0) + " a year"
        : "several (" + Phrases.list(all) + " a year), so it says nothing by itself";
  }

  /** When the plan as a whole has brought in more than it took, for good. */
  private String since(OptionalInt month) {
    return month.isPresent()
        ? "from %s on more has come in than gone out"
            .formatted(say.month(horizon, month.getAsInt()))
        : "over the whole plan more goes out than comes in";
  }

  /** N plants unsold at the end, worth X at list. */
  String unsold() {
    int kept = whole.lots().stream().mapToInt(WholeLot::kept).sum();
    int plants = whole.lots().stream().mapToInt(WholeLot::standing).sum() - kept;
    String valued = valued(accounts.projection().scenario().plan().horizonValue());
    return "%s unsold at the end, worth %s at list, %s%s."
        .formatted(
            say.plants(plants),
            money(accounts.unsoldAtList()),
            valued,
            kept == 0 ? "" : "; " + say.whole(kept) + " more are kept");
  }

  private String valued(HorizonValue value) {
    if (value.isStockValue()) {
      return "counted at %s in its last month, as the stock is valued"
          .formatted(money(accounts.horizonValue()));
    }
    return value.shareOfList() == 0
        ? "not counted in the value of the plan"
        : "counted at %s of that, less what selling costs, in its last month"
            .formatted(say.percent(value.shareOfList()));
  }

  private String money(double amount) {
    return say.money(amount);
  }

  /** The line for the terminal. */
  String headline() {
    double[] balances = cash.balances();
    int lowest = cash.lowestMonth();
    return "Cash: lowest %s at the end of %s; %s at the end of the plan."
        .formatted(
            money(balances[lowest]),
            say.month(horizon, lowest),
            money(balances[balances.length - 1]));
  }
}
