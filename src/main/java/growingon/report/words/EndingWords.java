package growingon.report.words;

import growingon.chance.Gamble;
import growingon.money.bought.BoughtLot;
import growingon.money.bought.Ending;
import growingon.nursery.time.Horizon;
import growingon.report.figures.Context;
import growingon.report.text.Odds;
import growingon.report.text.Phrases;
import growingon.whole.WholeLot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * When a bought lot pays. It is judged when nine tenths of what could be sold are sold: at the
 * plan's end, or at that of a later season. Until then nothing is said but whether the money is
 * back by the plan's end and from which season on it is.
 */
public final class EndingWords {
  private static final double HALF_A_CENT = 0.005;

  private final BoughtLot bought;
  private final Ending ending;
  private final Optional<Gamble> gamble;
  private final int unsold;
  private final Horizon horizon;
  private final Phrases say;

  /**
   * Words about a bought lot.
   *
   * @param gamble the lot in the draws, if there are any
   * @param unsold whole plants of it for sale that stand at the plan's end
   */
  public EndingWords(
      BoughtLot bought, Optional<Gamble> gamble, int unsold, Horizon horizon, Phrases say) {
    this.unsold = unsold;
    this.bought = bought;
    this.ending = bought.ending();
    this.gamble = gamble;
    this.horizon = horizon;
    this.say = say;
  }

  /** Of a lot of a plan, drawn if the plan is. */
  static EndingWords of(Context context, BoughtLot bought) {
    return new EndingWords(
        bought,
        gamble(context, bought),
        unsold(context.whole().lot(bought.lot().name())),
        context.accounts().projection().horizon(),
        context.say());
  }

  public static int unsold(WholeLot lot) {
    return lot.standing() - lot.kept();
  }

  /** The lot in the draws, if there are any. */
  public static Optional<Gamble> gamble(Context context, BoughtLot bought) {
    return context.chances().stream()
        .flatMap(chances -> chances.gambles().stream())
        .filter(each -> each.bought().lot().name().equals(bought.lot().name()))
        .findFirst();
  }

  /** Whether nine tenths of what could be sold are sold where it is judged. */
  boolean isSold() {
    return ending.soldOut().isPresent();
  }

  /** The season at whose end it is judged. */
  String judgedAt() {
    return horizon.seasonName(ending.judgedAt());
  }

  /** Why it is judged later than the plan ends; empty where it is not. */
  Optional<String> heading() {
    if (!ending.isJudgedLater()) {
      return Optional.empty();
    }
    return Optional.of(
        "judged at the end of %s, %s"
            .formatted(judgedAt(), isSold() ? "when it is sold" : "the last season run"));
  }

  /** The first season from which on it pays, where it is judged or before. */
  OptionalInt paysFrom() {
    return gamble.isPresent() ? gamble.get().paysFrom() : ending.paysFrom();
  }

  /** Whether it pays where it is judged: on average of the draws, else by the plan's line. */
  boolean pays() {
    double gain = gamble.map(each -> each.gain().mean()).orElse(bought.judged().presentValue());
    return gain >= -HALF_A_CENT;
  }

  /**
   * The verdict in a few words: that of the draws, or whether it pays by the plan's line, and
   * before it is sold what is known by the plan's end.
   *
   * @param word the verdict where it is judged
   */
  public String told(String word) {
    if (!ending.isJudgedLater()) {
      return isSold() ? word : unsold();
    }
    List<String> parts = new ArrayList<>(atPlanEnd());
    parts.add(isSold() ? word + " when sold, by " + judgedAt() : unsold());
    return String.join("; ", parts);
  }

  private List<String> atPlanEnd() {
    OptionalInt from = paysFrom();
    String end = horizon.seasonName(ending.planEnd());
    if (from.isPresent() && from.getAsInt() <= ending.planEnd()) {
      return List.of(
          "pays from %s on%s".formatted(season(from.getAsInt()), odds(ending.planEnd())));
    }
    String notBack = "not back by %s%s".formatted(end, odds(ending.planEnd()));
    return from.isPresent()
        ? List.of(
            notBack, "pays from %s%s".formatted(season(from.getAsInt()), odds(from.getAsInt())))
        : List.of(notBack);
  }

  private String season(int index) {
    return horizon.seasonName(index);
  }

  /** (73 of 100), where draws were made. */
  private String odds(int season) {
    return gamble
        .map(each -> " (%s)".formatted(Odds.bare(each.paysByEnding()[season], each.gains().length)))
        .orElse("");
  }

  /** What stands unsold when the last season has been run. */
  private String unsold() {
    return "%s still unsold after %d seasons: look at the demand"
        .formatted(say.whole(ending.atJudged().saleable()), ending.judgedAt() + 1);
  }

  /** What stands of it at the plan's end: 59 plants, GBP 17,069 at list, stand. */
  private String standing() {
    Ending.BySeason end = ending.atPlanEnd();
    return "%s, %s at list, stand".formatted(say.plants(unsold), say.money(end.worthAtList()));
  }

  /**
   * For the first page and the terminal, of a lot that is not sold by the plan's end; else none.
   */
  Optional<String> sentence() {
    if (!ending.isJudgedLater()) {
      return Optional.empty();
    }
    OptionalInt from = paysFrom();
    int end = ending.planEnd();
    boolean early = from.isPresent() && from.getAsInt() <= end;
    String first =
        early ? "%s pays from %s on, while %s by %s%s." : "%s is not back by %4$s%5$s: %3$s then.";
    List<String> sentences = new ArrayList<>();
    sentences.add(
        first.formatted(
            Phrases.sentence(bought.lot().name()),
            early ? season(from.getAsInt()) : "",
            standing(),
            season(end),
            odds(end)));
    if (!early && from.isPresent()) {
      sentences.add("It pays from %s%s.".formatted(season(from.getAsInt()), band(from.getAsInt())));
    }
    if (!isSold()) {
      sentences.add(Phrases.sentence(unsold()) + ".");
    }
    return Optional.of(String.join(" ", sentences));
  }

  /** For the terminal, of a lot that is not sold by the plan's end; else none. */
  List<String> headlines() {
    if (!ending.isJudgedLater()) {
      return List.of();
    }
    OptionalInt from = paysFrom();
    int end = ending.planEnd();
    List<String> lines = new ArrayList<>();
    String lot = Phrases.sentence(bought.lot().name());
    boolean early = from.isPresent() && from.getAsInt() <= end;
    lines.add(
        early
            ? "%s pays from %s%s; %s in %s."
                .formatted(lot, season(from.getAsInt()), odds(end), standing(), season(end))
            : "%s: not back by %s%s; %s.".formatted(lot, season(end), odds(end), standing()));
    List<String> parts = new ArrayList<>();
    if (!early && from.isPresent()) {
      parts.add("pays from %s%s".formatted(season(from.getAsInt()), band(from.getAsInt())));
    }
    if (!isSold()) {
      parts.add(unsold());
    } else if (from.isEmpty() || from.getAsInt() < ending.judgedAt()) {
      parts.add(
          "sold by %s: %s%s"
              .formatted(judgedAt(), gainsOrLoses(ending.judgedAt()), odds(ending.judgedAt())));
    }
    if (!parts.isEmpty()) {
      lines.add("  " + Phrases.sentence(String.join("; ", parts)) + ".");
    }
    return lines;
  }

  private String gainsOrLoses(int season) {
    double gain =
        gamble
            .map(each -> each.byEnding().get(season).mean())
            .orElse(ending.seasons().get(season).gain());
    return (gain < 0 ? "loses " : "gains ") + say.money(Math.abs(gain));
  }

  private String band(int season) {
    return gamble
        .map(
            each ->
                "%s, %s to %s"
                    .formatted(
                        odds(season),
                        say.money(each.byEnding().get(season).p10()),
                        say.whole(each.byEnding().get(season).p90())))
        .orElse("");
  }
}
