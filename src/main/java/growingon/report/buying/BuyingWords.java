package growingon.report.buying;

import growingon.buying.answer.Answer;
import growingon.buying.answer.HoldAnswer;
import growingon.buying.answer.LimitWorth;
import growingon.buying.answer.OfferAnswer;
import growingon.buying.answer.OfferAnswer.Verdict;
import growingon.buying.answer.PlanValue;
import growingon.buying.answer.PlanValue.Kind;
import growingon.buying.question.Aim;
import growingon.buying.question.Choice;
import growingon.buying.question.Question.Scope;
import growingon.nursery.lot.Hold;
import growingon.nursery.market.HorizonValue;
import growingon.report.buying.BuyingFigures.Sold;
import growingon.report.text.Odds;
import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is said first: what to order and to hold, what it brings, and what stands in the way. */
final class BuyingWords {
  private static final int HOLDS_NAMED = 2;
  private static final int OFFERS_NAMED = 2;
  private static final double THIRD = 1.0 / 3;
  private static final double DOES_NOT_ADD_UP = 0.1;

  private final BuyingFigures figures;
  private final BuyingVerdicts verdicts;
  private final BuyingTrouble trouble;
  private final Answer answer;
  private final Phrases say;

  BuyingWords(BuyingFigures figures) {
    this.say = figures.say;
    this.figures = figures;
    this.verdicts = new BuyingVerdicts(figures);
    this.trouble = new BuyingTrouble(figures);
    this.answer = figures.answer;
  }

  /** At most six lines for the terminal; the decision first. */
  List<String> headlines() {
    List<String> lines = begun();
    answer.offers().stream()
        .filter(offer -> offer.advised() == 0)
        .filter(offer -> offer.verdict() != Verdict.DOES_NOT_PAY)
        .limit(OFFERS_NAMED)
        .forEach(offer -> lines.add(verdicts.sentence(offer)));
    lines.add(limits() + elsewhere());
    return lines.stream().limit(7).toList();
  }

  /** What terminal and sheet begin with. */
  private List<String> begun() {
    List<String> lines = new ArrayList<>();
    trouble.words().ifPresent(lines::add);
    quick().ifPresent(lines::add);
    careful().ifPresent(lines::add);
    lines.addAll(decision());
    lines.add(brings());
    return lines;
  }

  /** At most seven sentences for the sheet Answer. */
  List<String> sentences() {
    List<String> lines = begun();
    countsOn().ifPresent(lines::add);
    takings().ifPresent(lines::add);
    otherEnd().ifPresent(lines::add);
    lines.add(limits() + elsewhere());
    return lines.stream().limit(8).toList();
  }

  private Optional<String> quick() {
    return answer.wish().isQuick()
        ? Optional.of(
            "Quick: without luck, on the plan's line alone; run it without --quick before you order.")
        : Optional.empty();
  }

  private Optional<String> careful() {
    return answer.wish().aim() == Aim.CAREFUL && answer.draws() > 0
        ? Optional.of(
            "Careful: the worst fifth of the draws is made as good as can be, not the mean.")
        : Optional.empty();
  }

  private List<String> decision() {
    List<String> lines = new ArrayList<>();
    if (answer.wish().scope() != Scope.HOLDS) {
      lines.add(purchases());
    }
    if (answer.wish().scope() != Scope.PURCHASES) {
      lines.add(holds());
    }
    return lines;
  }

  private String purchases() {
    List<OfferAnswer> bought =
        answer.offers().stream().filter(offer -> offer.advised() > 0).toList();
    if (answer.offers().isEmpty()) {
      return "There is no offer to be decided.";
    }
    if (!bought.isEmpty()) {
      return String.join(" ", bought.stream().limit(3).map(verdicts::sentence).toList())
          + (bought.size() > 3
              ? " And %d more: see the sheet Offers.".formatted(bought.size() - 3)
              : "");
    }
    boolean roomPays =
        answer.offers().stream().anyMatch(offer -> offer.verdict() == Verdict.HOLDING_PAYS_MORE);
    if (roomPays) {
      return "Buy nothing: the room and the buyers are worth more to plants you have (sheet Sell or"
          + " hold).";
    }
    return "Buy nothing. " + Phrases.sentence(String.join("; ", why())) + ".";
  }

  /** Why nothing is bought; offers of which the same is to be said are named together. */
  private List<String> why() {
    Map<String, List<String>> why = new LinkedHashMap<>();
    for (OfferAnswer offer : answer.offers()) {
      why.computeIfAbsent(verdicts.brief(offer), each -> new ArrayList<>())
          .add(offer.take().name());
    }
    return why.entrySet().stream()
        .map(each -> "%s (%s)".formatted(each.getKey(), Phrases.list(each.getValue())))
        .toList();
  }

  private String holds() {
    List<HoldAnswer> changed = answer.holds().stream().filter(HoldAnswer::isChange).toList();
    if (answer.holds().isEmpty()) {
      return "There is no lot whose holding is to be decided.";
    }
    if (changed.isEmpty()) {
      return "Sell and hold as the plan does.";
    }
    List<HoldAnswer> more = changed.stream().filter(each -> !isFreed(each)).toList();
    List<HoldAnswer> freed = changed.stream().filter(BuyingWords::isFreed).toList();
    List<String> parts = new ArrayList<>();
    if (!more.isEmpty()) {
      parts.add(
          "Hold back plants%s of %s"
              .formatted(
                  inLots(more),
                  String.join(
                      ", and of ", more.stream().limit(HOLDS_NAMED).map(this::named).toList())));
    }
    if (!freed.isEmpty()) {
      parts.add(
          "%s what is held%s of %s"
              .formatted(parts.isEmpty() ? "Free" : "free", inLots(freed), freed.get(0).name()));
    }
    return String.join("; ", parts) + " (sheet Sell or hold).";
  }

  /** in 3 lots, first; nothing of a single one, which is named. */
  private String inLots(List<HoldAnswer> holds) {
    return holds.size() == 1
        ? ""
        : " in %s, first".formatted(say.counted(holds.size(), "lot", "lots"));
  }

  private static boolean isFreed(HoldAnswer each) {
    double advised = each.advised().map(Hold::share).orElse(0.0);
    return advised == 0;
  }

  private String named(HoldAnswer each) {
    return "%s, %s (+%s)"
        .formatted(each.name(), figures.held(each.advised()), figures.three(each.brings().mean()));
  }

  private String brings() {
    PlanValue recommended = answer.recommended();
    double gain = recommended.gain().mean();
    if (BuyingFigures.isShownAsNil(gain)) {
      return "Nothing that was tried beats the plan as given.";
    }
    String often =
        answer.draws() == 0
            ? ""
            : ", and does so " + Odds.in(recommended.gain().shareAbove(), answer.draws());
    return "It brings %s more than the plan as given, in today's money%s.%s%s%s"
        .formatted(
            figures.money(gain), often, together(), extra(recommended.line().extra()), planned());
  }

  /** Where the gains told of do not add up: packs and buyers that are shared. */
  private String together() {
    List<OfferAnswer> bought =
        answer.offers().stream().filter(offer -> offer.advised() > 0).toList();
    double parts = bought.stream().mapToDouble(offer -> offer.atEnd().mean()).sum();
    double holds = answer.holds().stream().mapToDouble(hold -> hold.brings().mean()).sum();
    double whole = answer.recommended().gain().mean();
    return bought.size() > 1 && Math.abs(parts + holds - whole) > DOES_NOT_ADD_UP * whole
        ? " Each is weighed beside the others, so what they bring does not add up."
        : "";
  }

  private String extra(double cost) {
    return cost < 0.5
        ? ""
        : " More room and hours than there are cost %s of it, already taken off."
            .formatted(figures.money(cost));
  }

  private String planned() {
    return answer
        .plan(Kind.AS_PLANNED)
        .map(
            planned ->
                " What the plan takes now would bring %s."
                    .formatted(figures.money(planned.gain().mean())))
        .orElse("");
  }

  /** Which buyers the plants held are to meet. */
  private Optional<String> countsOn() {
    List<Map.Entry<Sold, Double>> more =
        figures.more(figures.given.lots(), figures.recommended.lots());
    if (more.isEmpty() || answer.wish().scope() == Scope.PURCHASES) {
      return Optional.empty();
    }
    List<String> named =
        more.stream()
            .limit(2)
            .map(
                each ->
                    "%s %s wanted in %s"
                        .formatted(
                            say.whole(each.getValue()),
                            each.getKey().grade(),
                            figures.season(each.getKey().season())))
            .toList();
    return Optional.of(
        "This counts on buyers who may not come: %s more than as given.%s"
            .formatted(Phrases.list(named), swing(more)));
  }

  /** What would be missed if a third of the more that is sold were not wanted. */
  private String swing(List<Map.Entry<Sold, Double>> more) {
    double lost = 0;
    for (Map.Entry<Sold, Double> each : more) {
      lost += THIRD * each.getValue() * price(each.getKey());
    }
    return " If a third of them stay away, up to %s less comes in.".formatted(figures.money(lost));
  }

  private double price(Sold sold) {
    return answer.inputs().scenario().nursery().demand().stream()
        .filter(row -> row.ladder().equals(sold.ladder()) && row.grade().equals(sold.grade()))
        .mapToDouble(row -> row.price())
        .max()
        .orElse(0);
  }

  /** This season's takings, and when they are back. */
  private Optional<String> takings() {
    double less = figures.receipts(figures.given, 0) - figures.receipts(figures.recommended, 0);
    if (less < 1) {
      return Optional.empty();
    }
    double sum = 0;
    int back = -1;
    for (int season = 0; season < figures.horizon.seasons(); season++) {
      sum +=
          figures.receipts(figures.recommended, season) - figures.receipts(figures.given, season);
      back = back < 0 && sum >= 0 ? season : back;
    }
    return Optional.of(
        "This season's takings fall by %s, %s."
            .formatted(
                figures.money(less),
                back < 0 ? "not back within the plan" : "back by " + figures.season(back)));
  }

  /**
   * What it comes to where plants unsold at the end count otherwise; a warning where many do not.
   */
  private Optional<String> otherEnd() {
    return answer
        .otherEnd()
        .map(
            other ->
                other.value().equals(HorizonValue.NOTHING)
                    ? "Plants unsold at the end count here at %s; if they counted for nothing, it would bring %s%s."
                        .formatted(counted(), figures.money(other.gain().mean()), bought(other))
                    : ("%s of all plants stand unsold at the end and count for nothing, so long holds"
                            + " and late purchases look bad: give a horizon value, or plan more"
                            + " seasons. At %s of list price it would bring %s%s.")
                        .formatted(
                            say.percent(answer.unsoldShare()),
                            say.percent(other.value().shareOfList()),
                            figures.money(other.gain().mean()),
                            bought(other)));
  }

  private String counted() {
    return answer.plan().horizonValue().isStockValue()
        ? "their stock value"
        : "a share of list price";
  }

  private String bought(Answer.OtherEnd other) {
    List<String> bought = new ArrayList<>();
    List<String> left = new ArrayList<>();
    for (int i = 0; i < answer.question().choices().size(); i++) {
      int then = other.candidate().value(i);
      Choice choice = answer.question().choices().get(i);
      if (!(choice instanceof Choice.Take) || then == answer.found().recommended().value(i)) {
        continue;
      }
      if (then == 0) {
        left.add(choice.name());
      } else {
        bought.add("%s %s".formatted(say.whole(then), choice.name()));
      }
    }
    List<String> words = new ArrayList<>();
    if (!bought.isEmpty()) {
      words.add("buy " + Phrases.list(bought, 3, "offers"));
    }
    if (!left.isEmpty()) {
      words.add("leave " + Phrases.list(left, 3, "offers"));
    }
    return words.isEmpty()
        ? answer.wish().scope() == Scope.HOLDS ? "" : ", and the purchases would be the same"
        : ", and you would " + String.join(" and ", words);
  }

  /** What holds the nursery back most. */
  String limits() {
    if (answer.limitsWorth().isEmpty()) {
      return "Neither room nor hours nor cash holds you back: more of them would bring nothing.";
    }
    LimitWorth first = answer.limitsWorth().get(0);
    LimitWorth.Step step =
        first.steps().stream()
            .max(Comparator.comparingDouble(LimitWorth.Step::worth))
            .orElseThrow();
    String held =
        Phrases.sentence(limitName(first))
            + (first.what() == LimitWorth.What.HOURS ? " hold" : " holds");
    String without =
        first.without().isPresent() && first.without().getAsDouble() > 0
            ? "without that limit %s more".formatted(figures.money(first.without().getAsDouble()))
            : "";
    if (BuyingFigures.isShownAsNil(step.worth())) {
      LimitWorth.Step most = first.steps().get(first.steps().size() - 1);
      return "%s you back most: %s would bring nothing, but %s."
          .formatted(held, more(first, most), without);
    }
    return "%s you back most: %s would bring %s%s."
        .formatted(
            held,
            more(first, step),
            figures.money(step.worth()),
            without.isEmpty() ? "" : "; " + without);
  }

  /** How much more of a limit: a tenth of nothing owed is nothing, so cash is told in money. */
  private String more(LimitWorth limit, LimitWorth.Step step) {
    return switch (limit.what()) {
      case CASH -> "one that is %s lower".formatted(figures.money(step.added()));
      case HOURS -> "%s more of them".formatted(say.percent(step.share()));
      case ROOM, DEMAND -> "%s more of it".formatted(say.percent(step.share()));
    };
  }

  private String elsewhere() {
    return answer.limitsWorth().isEmpty() ? "" : " See the sheet What holds you back.";
  }

  static String limitName(LimitWorth limit) {
    return switch (limit.what()) {
      case ROOM -> "room in " + limit.name();
      case HOURS -> "hours";
      case CASH -> "the lowest cash allowed";
      case DEMAND -> "demand for " + limit.name();
    };
  }
}
