package growingon.report.words;

import growingon.chance.Chances;
import growingon.chance.Gamble;
import growingon.chance.Quantiles;
import growingon.money.Accounts;
import growingon.money.CashItem;
import growingon.nursery.Plan;
import growingon.nursery.Settings;
import growingon.nursery.market.MarketSure;
import growingon.nursery.time.Horizon;
import growingon.report.figures.Context;
import growingon.report.text.Odds;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What is said about how sure the plan is. */
public final class ChanceWords {
  private final Context context;
  private final Chances chances;
  private final Accounts accounts;
  private final Horizon horizon;
  private final Settings settings;
  private final Phrases say;

  /** For a context with chances. */
  public ChanceWords(Context context) {
    this.say = context.say();
    this.context = context;
    this.chances = context.chances().orElseThrow();
    this.accounts = context.accounts();
    this.horizon = accounts.projection().horizon();
    this.settings = context.inputs().scenario().nursery().settings();
  }

  /** What stands at the top of the Chances sheet. */
  public List<String> sheet() {
    List<String> sentences = new ArrayList<>();
    sentences.add(draws());
    few().ifPresent(sentences::add);
    fewer().ifPresent(sentences::add);
    sentences.add(line());
    space().ifPresent(sentences::add);
    hours().ifPresent(sentences::add);
    limitOfCash().ifPresent(sentences::add);
    sentences.addAll(new NotKnownTables(context).summary());
    market().ifPresent(sentences::add);
    sentences.add(Sentences.WITHOUT_VAT);
    return sentences;
  }

  private String draws() {
    return say.counted(chances.draws(), "draw", "draws")
        + " of growth, losses, the quality of unseen lots, demand, prices and minutes of work. P10 is"
        + " undercut in one draw of ten, P50 in every second, P90 in nine of ten; ± is the sampling"
        + " error of the mean, one standard error.";
  }

  /** Says that there are fewer draws than usual since there are so many lots, if that is so. */
  private Optional<String> fewer() {
    int lots = context.inputs().scenario().lots().size();
    int usual = Plan.usualDraws(lots);
    return usual < Plan.USUAL_DRAWS && chances.draws() == usual
        ? Optional.of(
            "With %s lots the plan is drawn %s times; --draws makes more."
                .formatted(say.whole(lots), say.whole(usual)))
        : Optional.empty();
  }

  /** Says that there are too few draws, if there are. */
  Optional<String> few() {
    return chances.draws() >= Chances.FEW
        ? Optional.empty()
        : Optional.of(
            "%s too few to tell: with fewer than %d, chances and quantiles change much with the"
                    .formatted(say.counted(chances.draws(), "draw is", "draws are"), Chances.FEW)
                + " seed. Ask for %s (--draws 1000).".formatted(say.whole(1000)));
  }

  private String line() {
    double plan = accounts.cash().total(CashItem.SALES);
    double mean = chances.sales().stream().mapToDouble(Quantiles::mean).sum();
    return "The plan's line is what comes of every assumption as stated; it is not the mean. Where"
        + " demand binds the mean lies below it: a good year sells no more than is wanted, a bad one"
        + " less. Over the whole plan the line sells for %s, the draws on average for %s."
            .formatted(money(plan), money(mean));
  }

  private String money(double amount) {
    return say.money(amount);
  }

  /** A place and month with what P90 lies over the room there, below nil if under it. */
  private record Tightest(String place, int month, double over) {}

  /** Every place and month, the first month first. */
  private List<Tightest> placeMonths() {
    List<Tightest> all = new ArrayList<>();
    for (var place : context.inputs().scenario().nursery().places().values()) {
      List<Quantiles> drawn = chances.space().get(place.name());
      for (int month = 0; month < drawn.size(); month++) {
        double over = drawn.get(month).p90() - place.capacityM2(horizon.month(month));
        all.add(new Tightest(place.name(), month, over));
      }
    }
    return all;
  }

  /** Where and when most room is missing in a bad case. */
  private Optional<Tightest> tightest() {
    return placeMonths().stream().reduce((a, b) -> b.over() > a.over() ? b : a);
  }

  /** Where and when a place overflows most often; of equals where most room is missing. */
  private Optional<Tightest> surest() {
    Comparator<Tightest> order =
        Comparator.comparingDouble(this::chanceOfOverflow).thenComparing(Tightest::over);
    return placeMonths().stream().reduce((a, b) -> order.compare(b, a) > 0 ? b : a);
  }

  private double chanceOfOverflow(Tightest where) {
    return chances.chanceOfOverflow().get(where.place())[where.month()];
  }

  private Optional<String> space() {
    return tightest()
        .map(
            worst ->
                worst.over() > Phrases.NEGLIGIBLE
                    ? "%s is the tightest place: in %s it overflows %s, by more than %s in one of ten."
                            .formatted(
                                Phrases.sentence(worst.place()),
                                say.month(horizon, worst.month()),
                                overflow(worst),
                                say.squareMetres(worst.over()))
                        + moreOften(worst)
                    : "No place overflows in more than one draw of ten in any month.");
  }

  private String moreOften(Tightest tightest) {
    return surest()
        .filter(surest -> !surest.place().equals(tightest.place()))
        .filter(surest -> chanceOfOverflow(surest) > chanceOfOverflow(tightest))
        .map(
            surest ->
                " %s overflows more often, if by less: in %s %s."
                    .formatted(
                        Phrases.sentence(surest.place()),
                        say.month(horizon, surest.month()),
                        overflow(surest)))
        .orElse("");
  }

  private String overflow(Tightest worst) {
    return Odds.in(chanceOfOverflow(worst), chances.draws());
  }

  private double hoursOver(int month) {
    return chances.hours().get(month).p90() - accounts.hours().available(month).orElseThrow();
  }

  /** The month in which P90 lies highest over the hours there are; empty if none are stated. */
  private Optional<Integer> busiest() {
    return chances.chanceOfShortHours().length == 0
        ? Optional.empty()
        : IntStream.range(0, horizon.months())
            .boxed()
            .reduce((a, b) -> hoursOver(b) > hoursOver(a) ? b : a);
  }

  /** The month in which hours are short most often; empty if none are stated. */
  private Optional<Integer> surestlyShort() {
    double[] chance = chances.chanceOfShortHours();
    Comparator<Integer> order =
        Comparator.comparingDouble((Integer month) -> chance[month]).thenComparing(this::hoursOver);
    return IntStream.range(0, chance.length)
        .boxed()
        .reduce((a, b) -> order.compare(b, a) > 0 ? b : a);
  }

  private Optional<String> hours() {
    return busiest()
        .map(
            month ->
                hoursOver(month) > Phrases.NEGLIGIBLE
                    ? "Hours are tightest in %s: they do not suffice %s, and more than %s are missing in one of ten."
                        .formatted(
                            say.month(horizon, month),
                            Odds.in(chances.chanceOfShortHours()[month], chances.draws()),
                            say.hours(hoursOver(month)))
                    : "The hours suffice in nine draws of ten in every month.");
  }

  /** The chance that cash passes the limit, where one is stated. */
  public Optional<String> limitOfCash() {
    if (chances.chanceBelowLowest().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        "Cash falls below the %s allowed in some month %s."
            .formatted(
                money(settings.lowestCash().getAsDouble()),
                Odds.in(chances.chanceBelowLowest().getAsDouble(), chances.draws())));
  }

  /**
   * That nothing is said of prices and units beyond their seasons, where they are taken as known.
   */
  private Optional<String> market() {
    return settings.market().equals(MarketSure.KNOWN)
        ? Optional.of(
            "Units and prices are taken as right on average; only their seasons vary (settings prices"
                + " sure % and demand sure %).")
        : Optional.empty();
  }

  /** The lines for the terminal: of each of the first lots bought, then space and hours. */
  List<String> headlines() {
    List<String> lines = new ArrayList<>();
    chances.gambles().stream()
        .limit(Headlines.LOTS_NAMED)
        .forEach(each -> lines.addAll(headline(each)));
    List<String> parts = new ArrayList<>();
    surest()
        .ifPresent(
            worst ->
                parts.add(
                    "%s overflows %s (%s)"
                        .formatted(
                            worst.place(), overflow(worst), say.month(horizon, worst.month()))));
    surestlyShort()
        .ifPresent(
            month ->
                parts.add(
                    "hours short %s (%s)"
                        .formatted(
                            Odds.briefly(chances.chanceOfShortHours()[month], chances.draws()),
                            say.month(horizon, month))));
    if (!parts.isEmpty()) {
      lines.add("At worst: " + String.join("; ", parts) + ".");
    }
    limitOfCash().ifPresent(lines::add);
    return lines;
  }

  private List<String> headline(Gamble gamble) {
    String few = chances.draws() < Chances.FEW ? "; too few draws to tell" : "";
    List<String> later = EndingWords.of(context, gamble.bought()).headlines();
    if (!later.isEmpty()) {
      return later;
    }
    String line =
        "%s pays %s: %s to %s (P10 to P90)"
            .formatted(
                Phrases.sentence(gamble.bought().lot().name()),
                Odds.in(gamble.chancePays(), chances.draws()),
                money(gamble.gain().p10()),
                say.whole(gamble.gain().p90()));
    String mean = ", %s on average".formatted(say.whole(gamble.gain().mean()));
    boolean fits = (line + mean + few).length() < Headlines.WIDTH;
    return List.of(line + (fits ? mean : "") + few + ".");
  }

  /** What the Summary says: luck and not knowing, then each lot bought. */
  public List<String> summary() {
    List<String> sentences = new ArrayList<>();
    new NotKnownTables(context).cash().ifPresent(sentences::add);
    sentences.addAll(verdicts());
    return sentences;
  }

  /** The same in fewer words, for the Summary. */
  public List<String> brief() {
    List<String> sentences = new ArrayList<>();
    new NotKnownTables(context).cash().ifPresent(sentences::add);
    chances.gambles().stream()
        .flatMap(gamble -> new VerdictWords(context, gamble).brief().stream())
        .forEach(sentences::add);
    return sentences;
  }

  /** The verdict on each lot bought. */
  public List<String> verdicts() {
    return chances.gambles().stream()
        .map(gamble -> new VerdictWords(context, gamble).sentence())
        .toList();
  }
}
