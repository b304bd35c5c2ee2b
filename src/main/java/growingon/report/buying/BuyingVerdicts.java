package growingon.report.buying;

import growingon.buying.answer.OfferAnswer;
import growingon.buying.limit.Lack;
import growingon.buying.question.Spread;
import growingon.report.text.Odds;
import growingon.report.text.Phrases;
import java.time.YearMonth;

/** What is said of an offer. */
final class BuyingVerdicts {
  /** Bought, it loses in so many draws of 100 or more: luck decides. */
  private static final double OFTEN = 0.2;

  /** From this chance on that all of it fails it is said beside what it brings. */
  private static final double OFTEN_FAILS = 0.1;

  private static final double NEARLY_ALWAYS = 0.9;
  private static final double HALF = 0.5;
  private static final double RARELY = 0.05;
  private static final int OTHERS_NAMED = 3;

  private final BuyingFigures figures;
  private final int draws;
  private final Phrases say;

  BuyingVerdicts(BuyingFigures figures) {
    this.say = figures.say;
    this.figures = figures;
    this.draws = figures.answer.draws();
  }

  /** How good a gamble it is, by the same limits as a plan's own lots. */
  static String word(Spread gain) {
    double pays = gain.shareAbove();
    if (pays == 1) {
      return "safe";
    }
    if (pays < RARELY) {
      return "hopeless";
    }
    if (gain.mean() <= 0 || pays < HALF) {
      return "a poor gamble";
    }
    return pays >= NEARLY_ALWAYS ? "a good gamble" : "a fair gamble";
  }

  static boolean isLuckDeciding(OfferAnswer offer) {
    return offer.advised() > 0 && 1 - offer.gain().shareAbove() >= OFTEN;
  }

  /** A few words for the sheet Offers. */
  String brief(OfferAnswer offer) {
    return switch (offer.verdict()) {
      case BUY -> (isLuckDeciding(offer) ? "luck decides: " : "") + "buy " + offer.advised();
      case BRINGS_LITTLE -> "do not buy: brings little";
      case RISKS_TOO_MUCH -> "do not buy: makes bad luck worse";
      case DOES_NOT_FIT -> "pays, but does not fit";
      case HOLDING_PAYS_MORE -> "pays, but holding pays more";
      case PAYS_LATER ->
          "not back by %s; pays from %s"
              .formatted(lastSeason(), figures.season(offer.paysFrom().getAsInt()));
      case UNSOLD -> "cannot be judged: too many unsold";
      case DOES_NOT_PAY -> "do not buy: misses by " + figures.money(-offer.gain().mean());
    };
  }

  private String lastSeason() {
    return figures.season(figures.answer.plan().seasons() - 1);
  }

  /** A sentence that begins with what to do. */
  String sentence(OfferAnswer offer) {
    return switch (offer.verdict()) {
      case BUY -> buy(offer);
      case BRINGS_LITTLE ->
          "Leave %s: the best number, %d, would bring %s more, too little to be worth it."
              .formatted(name(offer), offer.at(), figures.money(offer.atEnd().mean()));
      case RISKS_TOO_MUCH ->
          "Leave %s: %d would bring %s more on average, but make the worst fifth of the draws worse by %s%s."
              .formatted(
                  name(offer),
                  offer.at(),
                  figures.money(offer.atEnd().mean()),
                  figures.money(-offer.worstFifth()),
                  fails(offer));
      case DOES_NOT_FIT -> doesNotFit(offer);
      case HOLDING_PAYS_MORE ->
          "Leave %s: it would pay if nothing more were held, but the plants you have pay more for"
                  .formatted(name(offer))
              + " the room and the buyers.";
      case PAYS_LATER -> paysLater(offer);
      case UNSOLD ->
          "Leave %s for now: %s still unsold after %d seasons; look at the demand."
              .formatted(name(offer), say.plants(offer.unsoldAtJudging()), offer.judgedAt() + 1);
      case DOES_NOT_PAY -> doesNotPay(offer);
    };
  }

  private static String name(OfferAnswer offer) {
    return offer.take().name();
  }

  private String buy(OfferAnswer offer) {
    String number = Integer.toString(offer.advised());
    String again = offer.take().orders().size() > 1 ? times(offer) : "";
    String first =
        isLuckDeciding(offer)
            ? "Luck decides, %s: buy %s %s".formatted(word(offer.gain()), number, name(offer))
            : "Buy %s %s".formatted(number, name(offer));
    return "%s%s, order %s: brings %s%s%s%s."
            .formatted(
                first,
                again,
                by(figures.orderBy(offer), figures.horizon.month(0)),
                figures.money(offer.gain().mean()),
                odds(offer.gain()),
                asGood(offer),
                fails(offer))
        + judgedLater(offer)
        + noMost(offer);
  }

  private String times(OfferAnswer offer) {
    return " each time (%d orders to %s)"
        .formatted(
            offer.take().orders().size(),
            say.month(offer.take().orders().get(offer.take().orders().size() - 1).arrival()));
  }

  private String judgedLater(OfferAnswer offer) {
    if (offer.judgedAt() == figures.answer.plan().seasons() - 1) {
      return "";
    }
    return offer.isSold()
        ? " Judged at the end of %s, when it is sold.".formatted(figures.season(offer.judgedAt()))
        : " After %d seasons %s still unsold: look at the demand."
            .formatted(
                offer.judgedAt() + 1,
                say.counted(offer.unsoldAtJudging(), "plant is", "plants are"));
  }

  /** ; 30 of 100 such consignments are taken to fail as a whole. */
  private String fails(OfferAnswer offer) {
    double fails = offer.take().offer().fails();
    return fails >= OFTEN_FAILS
        ? "; %s of 100 such consignments are taken to fail as a whole"
            .formatted(say.number(100 * fails))
        : "";
  }

  /** Where it does not say how many there are. */
  private static String noMost(OfferAnswer offer) {
    if (offer.take().offer().most().isPresent()) {
      return "";
    }
    int tried = offer.numbers().get(offer.numbers().size() - 1).number();
    return " It names no most: ask how many there are%s."
        .formatted(offer.advised() == tried ? "; more than that were not tried" : "");
  }

  private String odds(Spread gain) {
    return draws == 0 ? "" : ", pays " + Odds.in(gain.shareAbove(), draws);
  }

  /** , 60 to 100 do as well. */
  String asGood(OfferAnswer offer) {
    return offer.goodFrom() < offer.goodTo()
        ? "; %d to %d do as well".formatted(offer.goodFrom(), offer.goodTo())
        : "";
  }

  private String doesNotFit(OfferAnswer offer) {
    String least =
        offer
            .least()
            .filter(some -> some.number() != offer.at())
            .map(
                some ->
                    " The least, %d, would bring %s, with %s."
                        .formatted(some.number(), figures.money(some.gain()), lack(some.lack())))
            .orElse("");
    return "Leave %s unless you add %s: %d%s would then bring %s%s%s.%s"
        .formatted(
            name(offer),
            offer.lacks().map(this::lack).orElse("more than there is"),
            offer.at(),
            offer.take().orders().size() > 1 ? " each time" : "",
            figures.money(offer.atEnd().mean()),
            odds(offer.atEnd()),
            later(offer),
            least);
  }

  /** What it brings once it is sold, where that is after the plan's end. */
  private String later(OfferAnswer offer) {
    return offer.judgedAt() > figures.answer.plan().seasons() - 1
        ? " by the end of the plan, and %s by that of %s, when it is sold"
            .formatted(figures.money(offer.gain().mean()), figures.season(offer.judgedAt()))
        : "";
  }

  /** 4.6 m² more room in the Quarantine corner in Feb 2027, and more hours. */
  String lack(Lack lack) {
    String others = Phrases.list(lack.others(), OTHERS_NAMED, "limits");
    return most(lack) + (others.isEmpty() ? "" : ", and more " + others);
  }

  private String most(Lack lack) {
    String month = say.month(figures.horizon.month(lack.month()));
    return switch (lack.what()) {
      case ROOM ->
          "%s more %s in %s".formatted(say.squareMetres(up(lack.amount())), lack.name(), month);
      case HOURS -> "%s more in %s".formatted(say.hours(lack.amount()), month);
      case CASH -> "%s more cash in %s".formatted(figures.money(lack.amount()), month);
    };
  }

  private static double up(double m2) {
    return Math.ceil(10 * m2) / 10;
  }

  private String paysLater(OfferAnswer offer) {
    return "%s is not back by %s%s: %s would stand unsold then, %s; it pays from %s%s:"
            .formatted(
                Phrases.sentence(name(offer)),
                lastSeason(),
                draws == 0 ? "" : " (" + hundred(offer.atEnd()) + ")",
                "%s of %d".formatted(say.whole(offer.unsold()), all(offer)),
                atList(offer.unsoldAtList()),
                figures.season(offer.paysFrom().getAsInt()),
                draws == 0 ? "" : " (" + hundred(offer.gain()) + ")")
        + " plan %d seasons to have it weighed.".formatted(offer.judgedAt() + 1);
  }

  private String atList(double money) {
    return money < 0.5
        ? "of no grade that has a price yet"
        : "worth %s at list".formatted(figures.money(money));
  }

  private static int all(OfferAnswer offer) {
    return offer.at() * offer.take().orders().size();
  }

  private String hundred(Spread gain) {
    return Odds.briefly(gain.shareAbove(), draws) + " of " + Math.min(100, draws);
  }

  private String doesNotPay(OfferAnswer offer) {
    String most =
        offer.mostLanded().isPresent()
            ? "; it would just pay at %s landed (asked: %s)"
                .formatted(say.each(offer.mostLanded().getAsDouble()), say.each(offer.landed()))
            : "; it does not pay as a gift";
    return "Do not buy %s: the best number, %d, misses by %s%s%s."
        .formatted(
            name(offer), offer.at(), figures.money(-offer.gain().mean()), most, fails(offer));
  }

  /** By the end of a month, or at once where it is past. */
  private String by(YearMonth month, YearMonth first) {
    return month.isBefore(first) ? "at once" : "by the end of " + say.month(month);
  }
}
