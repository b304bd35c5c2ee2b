package growingon.report.words;

import growingon.chance.Gamble;
import growingon.money.Accounts;
import growingon.money.LotAccount;
import growingon.money.bought.BoughtLot;
import growingon.money.bought.BoughtLot.Bargain;
import growingon.money.bought.BoughtLot.Overflow;
import growingon.money.bought.ValueJoin;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.time.Horizon;
import growingon.report.figures.Context;
import growingon.report.text.Phrases;
import growingon.report.text.Spell;
import growingon.whole.WholeLot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is said about a bought lot: whether it pays, why, and how far one may go. */
public final class BoughtWords {
  private static final double HALF_A_CENT = 0.005;
  private static final int PLACES_NAMED = 3;

  private final Accounts accounts;
  private final Horizon horizon;
  private final Settings settings;
  private final BoughtLot bought;
  private final LotAccount account;
  private final OptionalDouble mostLandedEach;
  private final WholeLot whole;
  private final BoughtLot judged;
  private final EndingWords ending;
  private final boolean drawn;
  private final String word;
  private final Phrases say;

  public BoughtWords(Context context, BoughtLot bought) {
    this.say = context.say();
    this.accounts = context.accounts();
    this.horizon = accounts.projection().horizon();
    this.settings = context.inputs().scenario().nursery().settings();
    this.bought = bought;
    this.account = accounts.lot(bought.lot().name());
    this.mostLandedEach = mostLandedEach(context, bought);
    this.whole = context.whole().lot(bought.lot().name());
    this.judged = bought.judged();
    this.ending = EndingWords.of(context, bought);
    Optional<Gamble> gamble = EndingWords.gamble(context, bought);
    this.drawn = gamble.isPresent();
    this.word =
        gamble
            .map(each -> new VerdictWords(context, each).verdict().toString())
            .orElse(pays() ? "pays" : "does not pay");
  }

  /**
   * The most that a plant may cost landed: at which the mean gain of the draws is nil, or that of
   * the plan's line where nothing was drawn.
   */
  public static OptionalDouble mostLandedEach(Context context, BoughtLot bought) {
    return context.chances().stream()
        .flatMap(chances -> chances.gambles().stream())
        .filter(gamble -> gamble.bought().lot().name().equals(bought.lot().name()))
        .findFirst()
        .map(Gamble::mostLandedEach)
        .orElse(bought.judged().bargain().mostLandedEach());
  }

  /** Whether it pays by the plan's line at the end of the season in which it is judged. */
  boolean pays() {
    return judged.presentValue() >= -HALF_A_CENT;
  }

  /** The verdict in a few words: that of the draws where there are any. */
  public String told() {
    return ending.told(word);
  }

  /** Whether it pays, with the reason, the figures to bargain with, and the room it takes. */
  public List<String> sentences() {
    return withEnding(verdict(), reason(), bargain(), needs());
  }

  /** Whether it pays, and what room and hours it takes. */
  public List<String> brief() {
    return withEnding(verdict(), needs());
  }

  /** Where there are draws, they say what is said of the ending. */
  private List<String> withEnding(String... said) {
    List<String> sentences = new ArrayList<>();
    if (!drawn) {
      ending.sentence().ifPresent(sentences::add);
    }
    sentences.addAll(List.of(said));
    return sentences;
  }

  private String verdict() {
    return verdict(", %s landed".formatted(money(bought.landed())));
  }

  /** Whether it pays, without what it costs. */
  public String gain() {
    return verdict("");
  }

  private String verdict(String costs) {
    Lot lot = bought.lot();
    double value = judged.presentValue();
    return "%s (%s %s%s) %s: with it the nursery has %s %s than without it%s%s; %s."
        .formatted(
            Phrases.sentence(lot.name()),
            say.whole(lot.quantity()),
            lot.species(),
            costs,
            verb(),
            money(Math.abs(value)),
            pays() ? "more" : "less",
            today(),
            whenJudged(),
            moneyBack());
  }

  private String moneyBack() {
    if (judged.payback().isPresent()) {
      return "the money is back in " + say.month(horizon, judged.payback().getAsInt());
    }
    return bought.ending().isJudgedLater()
        ? "the money is not back by then"
        : "the money is not back within the plan";
  }

  /** Where there are draws, they say whether it pays. */
  private String verb() {
    return drawn ? "by the plan's line" : pays() ? "pays" : "does not pay";
  }

  private String whenJudged() {
    return ending.heading().map(", "::concat).orElse("");
  }

  private String today() {
    return settings.discountRate() == 0
        ? ""
        : ", in today's money at %s a year".formatted(say.rate(settings.discountRate()));
  }

  private String reason() {
    String reason =
        "%s sells %s for %s and costs %s with pots, work and space"
            .formatted(
                bought.ending().isJudgedLater() ? "Within the plan it" : "It",
                say.plants(whole.sold()),
                money(account.sales()),
                money(account.costs()));
    int unsold = whole.standing() - whole.kept();
    return unsold == 0
        ? reason + "."
        : "%s; %s unsold at the end, worth %s at list."
            .formatted(reason, say.plants(unsold), money(account.unsoldAtList()));
  }

  private String bargain() {
    return "%s; %s must be usable (%s expected); %s."
        .formatted(mostEach(), fewestUsable(), say.whole(100 * usable(bought.lot())), leastPrice());
  }

  /** From the gain to the result of its account, in one line. */
  public String bridge() {
    BoughtLot.Bridge bridge = bought.bridge();
    double other = bridge.packsAndStock() + bridge.otherLots();
    return "%s: a gain of %s in today's money is %s in cash; less %s of hours not paid, %s of charge for"
            .formatted(
                Phrases.sentence(bought.lot().name()),
                money(bridge.gain()),
                money(bridge.cash()),
                money(bridge.hoursNotPaid()),
                money(bridge.placeCharge()))
        + " space and %s for packs and other lots its account ends with %s."
            .formatted(money(other), money(bridge.result()));
  }

  /** What the lots bought gain, and what of it nobody earns yet; empty where nothing is bought. */
  public static Optional<String> together(Context context) {
    Phrases say = context.say();
    ValueJoin join = context.join();
    if (join.bought().isEmpty() || Math.abs(join.costsOfNoLot()) < HALF_A_CENT) {
      return Optional.empty();
    }
    return Optional.of(
        "The lots bought gain %s in all; of this, and of what stands at the start, %s of costs of no"
                .formatted(say.money(join.gains()), say.money(join.costsOfNoLot()))
            + " lot must still be earned (places and other cash).");
  }

  public static double usable(Lot lot) {
    return lot.quality().first() + lot.quality().second();
  }

  private String mostEach() {
    String now = say.each(bought.landed() / bought.lot().quantity());
    return mostLandedEach.isPresent()
        ? "The most you can pay is %s a plant landed (now %s)"
            .formatted(say.each(mostLandedEach.getAsDouble()), now)
        : "Even as a gift it would not pay (now %s a plant landed)".formatted(now);
  }

  private String fewestUsable() {
    Bargain bargain = judged.bargain();
    return bargain.fewestUsable().isPresent()
        ? "at least " + bargain.fewestUsable().getAsInt() + " in 100"
        : "more than 100 in 100";
  }

  private String leastPrice() {
    Bargain bargain = judged.bargain();
    if (bargain.leastPrice().isEmpty() || Double.isNaN(bargain.averagePrice())) {
      return "none of its plants is sold within the plan";
    }
    return "a plant must fetch %s on average (%s expected)"
        .formatted(
            say.each(Math.max(0, bargain.leastPrice().getAsDouble())),
            say.each(bargain.averagePrice()));
  }

  private String needs() {
    List<String> needs = new ArrayList<>(space());
    List<Spell> hours = hoursShort();
    if (!hours.isEmpty()) {
      Spell worst = Spell.worst(hours);
      needs.add(
          "up to %s more a month (%s)"
              .formatted(say.hours(worst.most()), say.month(horizon, worst.worst())));
    }
    String only = pays() ? "It pays only with " : "It also needs ";
    return needs.isEmpty()
        ? "It needs no more space or hours than there are."
        : only + Phrases.list(needs) + ".";
  }

  private List<Spell> hoursShort() {
    double[] hours = bought.hoursShort();
    return Spell.of(hours.length, month -> hours[month]);
  }

  /** 60.0 m² more in Nov–Mar in Cold tunnel. */
  public List<String> space() {
    List<String> needs = new ArrayList<>();
    overflows()
        .forEach(
            (place, months) -> {
              double most = months.stream().mapToDouble(Overflow::m2).max().getAsDouble();
              List<Integer> when =
                  months.stream().map(each -> horizon.month(each.month()).getMonthValue()).toList();
              String where = place.map(name -> "in " + name).orElse("for lots without a place");
              needs.add(
                  "%s more %s (%s)"
                      .formatted(say.squareMetres(most), where, Phrases.calendarSpan(when)));
            });
    return needs.size() > PLACES_NAMED
        ? List.of(needs.get(0), "more space in " + (needs.size() - 1) + " other places")
        : needs;
  }

  private Map<Optional<String>, List<Overflow>> overflows() {
    Map<Optional<String>, List<Overflow>> byPlace = new LinkedHashMap<>();
    if (accounts.projection().scenario().nursery().places().isEmpty()) {
      return byPlace;
    }
    for (Overflow each : bought.overflows()) {
      if (each.m2() > Phrases.NEGLIGIBLE) {
        byPlace.computeIfAbsent(each.place(), name -> new ArrayList<>()).add(each);
      }
    }
    return byPlace;
  }

  private String money(double amount) {
    return say.money(amount);
  }

  /** The line for the terminal. */
  String headline() {
    String most =
        mostLandedEach.isPresent()
            ? "you can pay " + say.each(mostLandedEach.getAsDouble()) + " a plant landed"
            : "not even a gift would pay";
    return "%s %s: %s %s%s; %s."
        .formatted(
            Phrases.sentence(bought.lot().name()),
            pays() ? "pays" : "does not pay",
            money(Math.abs(judged.presentValue())),
            pays() ? "gained" : "lost",
            whenJudged(),
            most);
  }
}
