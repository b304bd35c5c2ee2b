package growingon.report.quick;

import growingon.chance.Chances;
import growingon.chance.Gamble;
import growingon.money.Accounts;
import growingon.money.CostKind;
import growingon.money.LotAccount;
import growingon.money.bought.BoughtLot;
import growingon.money.bought.BoughtLot.Bargain;
import growingon.nursery.Quick;
import growingon.nursery.lot.Lot;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.nursery.time.Horizon;
import growingon.project.history.Reached;
import growingon.project.history.Stood;
import growingon.project.history.Use;
import growingon.project.history.Work;
import growingon.project.lot.LotHistory;
import growingon.report.figures.PottedPlants;
import growingon.report.text.Odds;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.report.words.BoughtWords;
import growingon.report.words.EndingWords;
import growingon.report.words.VerdictWords;
import growingon.whole.WholeLot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** The answer to a quick question in one screen of sentences. */
final class QuickWords {
  private final Quick quick;
  private final Accounts accounts;
  private final BoughtLot bought;
  private final BoughtLot judged;
  private final Optional<Chances> chances;
  private final Optional<Gamble> gamble;
  private final Lot lot;
  private final WholeLot whole;
  private final LotHistory history;
  private final LotAccount account;
  private final Horizon horizon;
  private final Phrases say;

  QuickWords(
      Quick quick, Accounts accounts, WholeLot whole, BoughtLot bought, Optional<Chances> chances) {
    this.say = Phrases.of(accounts.projection().scenario());
    this.quick = quick;
    this.accounts = accounts;
    this.bought = bought;
    this.judged = bought.judged();
    this.chances = chances;
    this.gamble = chances.map(each -> each.gambles().get(0));
    this.lot = bought.lot();
    this.whole = whole;
    this.history = whole.history();
    this.account = accounts.lot(lot.name());
    this.horizon = accounts.projection().horizon();
  }

  List<String> sentences() {
    List<String> lines = new ArrayList<>();
    lines.add(question());
    lines.add("Does it pay? " + verdict());
    lines.add("Most to pay: " + mostEach());
    lines.add("Space: " + space());
    notKnown().ifPresent(known -> lines.add("Not known: " + known));
    lines.add("When: " + when());
    lines.add("By season: " + bySeason());
    lines.add("Needs: " + needs());
    lines.add("Costs: " + costs());
    lines.add("Fewest usable: " + fewestUsable());
    lines.add("Least price: " + leastPrice());
    return lines;
  }

  private String question() {
    return "%s %s in %s at %s each and %s carriage, trunks about %s mm, sold from %s mm at %s."
        .formatted(
            say.whole(lot.quantity()),
            lot.species(),
            say.month(lot.arrived()),
            each(lot.purchase().get().unitPrice()),
            money(lot.purchase().get().carriage()),
            say.whole(lot.trunks().meanMm()),
            number(quick.soldAtMm()),
            each(quick.sellingPrice()));
  }

  private String verdict() {
    EndingWords ending = new EndingWords(bought, gamble, EndingWords.unsold(whole), horizon, say);
    double value = judged.presentValue();
    String word =
        gamble
            .map(each -> VerdictWords.verdict(each).toString())
            .orElse(value >= 0 ? "it pays" : "it does not pay");
    return "%s: %s; %s."
        .formatted(
            Phrases.sentence(ending.told(word)), gambled().orElseGet(this::onTheLine), back());
  }

  private String onTheLine() {
    double value = judged.presentValue();
    return "%s %s in today's money%s"
        .formatted(money(Math.abs(value)), value >= 0 ? "gained" : "lost", by());
  }

  private Optional<String> gambled() {
    return gamble.map(
        each ->
            "it pays %s%s, %s to %s in today's money (P10 to P90)"
                .formatted(
                    Odds.in(each.chancePays(), each.gains().length),
                    by(),
                    money(each.gain().p10()),
                    say.whole(each.gain().p90())));
  }

  /** By when it is judged, if that is after the plan's end. */
  private String by() {
    return bought.ending().isJudgedLater()
        ? " by the end of " + horizon.seasonName(bought.ending().judgedAt())
        : "";
  }

  private String back() {
    return judged.payback().isPresent()
        ? "the money is back in " + say.month(horizon, judged.payback().getAsInt())
        : "the money does not come back by "
            + say.month(horizon, horizon.seasonLast(bought.ending().judgedAt()));
  }

  /** How fast the plants grow, and how sure that is. */
  private Optional<String> notKnown() {
    Species species = accounts.projection().scenario().nursery().speciesOf(lot);
    String condition = species.usualCondition();
    double sure = species.sure().growthIn(condition);
    if (chances.isEmpty() || sure == 1) {
      return Optional.empty();
    }
    double mm = ((Curve.Steady) species.growth().get(condition)).gMmAYear();
    String from =
        species.fromLibrary().isPresent()
            ? "by the library of species, which has no measurement in pots"
            : "as a good guess is, or a book's figure";
    return Optional.of(
        "growth of %s mm a year may be %s to %s (8 of 10 nurseries, %s); measure 20 trunks."
            .formatted(
                number(mm), number(mm / Sure.factor(sure)), number(mm * Sure.factor(sure)), from));
  }

  /** When a tenth, half and nine tenths are thick enough. */
  private String when() {
    Reached size = history.reached().get(0);
    String ready =
        "a tenth are %s mm %s, half %s, nine tenths %s"
            .formatted(
                number(quick.soldAtMm()),
                by(size.firstTenth()),
                by(size.middle()),
                by(size.lastTenth()));
    boolean waits = horizon.offset(lot.notBefore()) > 0;
    String sale = waits ? "; none is sold before " + say.month(lot.notBefore()) : "";
    return ready + sale + ".";
  }

  private String by(OptionalInt month) {
    if (month.isEmpty()) {
      return "not by " + say.month(horizon, horizon.months() - 1);
    }
    return month.getAsInt() <= 0 ? "on arrival" : "by " + say.month(horizon, month.getAsInt());
  }

  private String bySeason() {
    Plants[] ready = QuickTables.ready(whole, horizon);
    List<String> seasons = new ArrayList<>();
    long sum = 0;
    for (int season = 0; season < ready.length; season++) {
      sum += ready[season].whole();
      if (ready[season].whole() > 0) {
        seasons.add(
            "%s %s"
                .formatted(horizon.seasonName(season), say.percent(share(ready[season].whole()))));
      }
    }
    if (seasons.isEmpty()) {
      return "none is ready within the plan.";
    }
    return "ready in %s, in all %s of the %s bought%s."
        .formatted(
            String.join(", ", seasons),
            say.percent(share(sum)),
            say.whole(lot.quantity()),
            stillGrowing());
  }

  private String stillGrowing() {
    int left = whole.standing();
    return left == 0
        ? ""
        : "; %s unsold in %s and count nothing"
            .formatted(say.counted(left, "is", "are"), say.month(horizon, horizon.months() - 1));
  }

  private double share(long plants) {
    return (double) plants / lot.quantity();
  }

  private String needs() {
    double firstHours =
        history.works().stream()
                .filter(work -> work.month() == history.start())
                .mapToDouble(Work::hours)
                .sum()
            + history.careHours(history.start());
    return "%s of %s litres, %s litres of loose mix (%s), %s of work, %s of them on arrival."
        .formatted(
            say.counted(PottedPlants.of(whole), "pot", "pots"),
            number(quick.potLitres()),
            say.whole(used(Use.Kind.COMPONENT)),
            components(),
            say.hours(account.hours()),
            say.whole(firstHours));
  }

  private double used(Use.Kind kind) {
    return history.uses().stream().filter(use -> use.kind() == kind).mapToDouble(Use::amount).sum();
  }

  private String components() {
    Map<String, Double> litres =
        history.uses().stream()
            .filter(use -> use.kind() == Use.Kind.COMPONENT)
            .collect(
                Collectors.groupingBy(
                    Use::item, LinkedHashMap::new, Collectors.summingDouble(Use::amount)));
    return litres.entrySet().stream()
        .map(each -> each.getKey() + " " + say.whole(each.getValue()))
        .collect(Collectors.joining(", "));
  }

  private String space() {
    double most = 0;
    double each = 1;
    for (int month = 0; month < history.months(); month++) {
      Stood stood = history.stood(month);
      if (stood != null && stood.m2() > most) {
        most = stood.m2();
        each = stood.m2() / stood.plants();
      }
    }
    String needs = say.squareMetres(most) + " at most";
    if (quick.freeM2().isEmpty()) {
      return needs + ".";
    }
    double free = quick.freeM2().getAsDouble();
    return free >= most
        ? "%s, of %s free.".formatted(needs, say.squareMetres(free))
        : "%s, but only %s are free: room for %s of them; buy %s, and so many stand."
            .formatted(
                needs,
                say.squareMetres(free),
                say.whole(Math.floor(free / each + 1e-9)),
                say.whole(Math.floor(lot.quantity() * free / most + 1e-9)));
  }

  private String costs() {
    List<String> parts = new ArrayList<>();
    addCost(parts, "plants", account.cost(CostKind.PLANTS));
    addCost(parts, "carriage", account.cost(CostKind.CARRIAGE));
    addCost(parts, "pots", account.cost(CostKind.POTS));
    addCost(parts, "mix", account.cost(CostKind.SUBSTRATE));
    addCost(parts, "work", account.cost(CostKind.LABOUR));
    addCost(parts, "space", account.cost(CostKind.PLACE));
    String all = "%s in all: %s".formatted(money(account.costs()), String.join(", ", parts));
    return whole.sold() == 0
        ? all + "."
        : "%s; %s for each of the %s sold, which bring %s."
            .formatted(
                all,
                each(account.costPer(whole.sold())),
                say.whole(whole.sold()),
                money(account.sales()));
  }

  private void addCost(List<String> parts, String what, double amount) {
    if (Math.round(amount) > 0) {
      parts.add(what + " " + say.whole(amount));
    }
  }

  private String mostEach() {
    OptionalDouble most =
        gamble.map(Gamble::mostLandedEach).orElse(judged.bargain().mostLandedEach());
    String now = "now " + each(bought.landed() / lot.quantity());
    return most.isPresent()
        ? "%s a plant landed (%s).".formatted(each(most.getAsDouble()), now)
        : "it does not pay even as a gift (%s a plant landed).".formatted(now);
  }

  private String fewestUsable() {
    OptionalInt fewest = judged.bargain().fewestUsable();
    double expected = 10 * BoughtWords.usable(lot);
    return fewest.isPresent()
        ? "%s in ten (%s expected).".formatted(number(fewest.getAsInt() / 10.0), number(expected))
        : "not even ten in ten would do (%s expected).".formatted(number(expected));
  }

  private String leastPrice() {
    Bargain bargain = judged.bargain();
    return bargain.leastPriceShare().isPresent()
        ? "%s for a first (%s expected)."
            .formatted(
                each(Math.max(0, bargain.leastPriceShare().getAsDouble()) * quick.sellingPrice()),
                each(quick.sellingPrice()))
        : "none is sold within the plan.";
  }

  /** The values that nobody typed, by what they move. */
  List<String> usual() {
    Map<String, List<String>> byMove = new LinkedHashMap<>();
    quick
        .usual()
        .forEach(
            each ->
                byMove.computeIfAbsent(each.moves(), any -> new ArrayList<>()).add(value(each)));
    List<String> lines = new ArrayList<>();
    lines.add(
        "Usual values, typed by nobody (common practice, no source); your own go in the quick sheet:");
    byMove.forEach(
        (moves, values) -> lines.add("- %s: %s".formatted(moves, String.join(", ", values))));
    return lines;
  }

  /** The unit is left out where the line's name says it. */
  private static String value(Quick.Usual usual) {
    return usual.what() + " " + usual.value();
  }

  private String money(double amount) {
    return say.money(amount);
  }

  private String each(double amount) {
    return say.each(amount);
  }

  private String number(double value) {
    return value == Math.rint(value) ? say.whole(value) : say.decimals(value, 1);
  }
}
