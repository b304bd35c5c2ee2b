package growingon.report.words;

import growingon.chance.Chances;
import growingon.chance.Gamble;
import growingon.chance.Gamble.Swing;
import growingon.chance.WorthMeasuring;
import growingon.chance.luck.Assumption;
import growingon.report.figures.Context;
import growingon.report.text.Odds;
import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The verdict on a lot bought: how good a gamble it is, why, and what would change it. */
public final class VerdictWords {
  /** Pays at least as often as this, and loses a tenth of its cost at most as often as RARELY. */
  static final double NEARLY_ALWAYS = 0.9;

  static final double RARELY = 0.05;

  private static final double CENT = 0.01;

  /** A swing that measuring narrows by less is not worth a word. */
  private static final double WORTH_MEASURING = 0.05;

  /** Smaller shares are told in per cent. */
  private static final double SMALL_SHARE = 0.25;

  /** How good a gamble is. */
  public enum Verdict {
    /** Pays in every draw. */
    SAFE("safe"),
    /** Pays in nine draws of ten or more, and hardly ever loses more than a tenth of its cost. */
    GOOD("a good gamble"),
    /** Gains on average and pays in half the draws or more. */
    FAIR("a fair gamble"),
    /** Loses on average, or pays in fewer than half the draws. */
    POOR("a poor gamble"),
    /** Pays in fewer than one draw of twenty, and nine tenths of it are sold. */
    HOPELESS("hopeless");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    @Override
    public String toString() {
      return words;
    }
  }

  private final Gamble gamble;
  private final EndingWords ending;
  private final int draws;
  private final Phrases say;

  /** For a context with chances. */
  public VerdictWords(Context context, Gamble gamble) {
    this.say = context.say();
    this.gamble = gamble;
    this.ending = EndingWords.of(context, gamble.bought());
    this.draws = context.chances().orElseThrow().draws();
  }

  public Verdict verdict() {
    return verdict(gamble);
  }

  public static Verdict verdict(Gamble gamble) {
    if (gamble.chancePays() == 1) {
      return Verdict.SAFE;
    }
    if (gamble.chancePays() < RARELY && gamble.bought().ending().soldOut().isPresent()) {
      return Verdict.HOPELESS;
    }
    if (gamble.gain().mean() <= 0 || gamble.chancePays() < 0.5) {
      return Verdict.POOR;
    }
    boolean good = gamble.chancePays() >= NEARLY_ALWAYS && gamble.chanceLosesTenth() <= RARELY;
    return good ? Verdict.GOOD : Verdict.FAIR;
  }

  /** The verdict in a few words, also of a lot that is not sold by the plan's end. */
  public String told() {
    return ending.told(verdict().toString());
  }

  /** The verdict with its reason, what would change it, and what can still be learnt. */
  public String sentence() {
    List<String> sentences = new ArrayList<>();
    ending.sentence().ifPresent(sentences::add);
    sentences.add(judged());
    doubt().ifPresent(sentences::add);
    learn().ifPresent(sentences::add);
    return String.join(" ", sentences);
  }

  /** The verdict and its odds alone. */
  public List<String> brief() {
    List<String> sentences = new ArrayList<>();
    ending.sentence().ifPresent(sentences::add);
    sentences.add(verdictAndOdds() + ".");
    doubt().ifPresent(sentences::add);
    return sentences;
  }

  private String verdictAndOdds() {
    return "%s is %s%s: %s"
        .formatted(
            Phrases.sentence(gamble.bought().lot().name()),
            verdict(),
            ending.heading().map(", "::concat).orElse(""),
            odds());
  }

  private String judged() {
    List<String> parts = new ArrayList<>();
    parts.add(verdictAndOdds());
    parts.add(reason());
    if (gamble.chanceFails() > 0) {
      parts.add(fails());
    }
    parts.add(price());
    return String.join("; ", parts) + ".";
  }

  /**
   * What measuring, or seeing the lot, would still change; by the assumption that moves it most.
   */
  private Optional<String> learn() {
    return widest().flatMap(this::learn);
  }

  private Optional<String> learn(Swing swing) {
    if (swing.narrower() >= WORTH_MEASURING) {
      return Optional.of(
          "What you can still learn: measure %d of your %s; its swing becomes %s narrower."
              .formatted(
                  WorthMeasuring.TRUNKS,
                  gamble.bought().lot().species(),
                  narrower(swing.narrower())));
    }
    return swing.assumption() == Assumption.FIRSTS && gamble.breakEvens().firsts().isPresent()
        ? Optional.of("Measuring would not change this; seeing the lot sorted would.")
        : Optional.empty();
  }

  private String narrower(double share) {
    return share < SMALL_SHARE ? say.percent(share) : NotKnownTables.share(share);
  }

  private String odds() {
    if (drawsAreAlike()) {
      return "it %s in every draw".formatted(gainsOrLoses(gamble.gain().mean()));
    }
    return switch (verdict()) {
      case SAFE ->
          "it pays %s and %s on average, %s in the worst"
              .formatted(pays(), gainsOrLoses(gamble.gain().mean()), money(gamble.gains()[0]));
      case HOPELESS ->
          "it pays %s, %s on average and %s even in the best"
              .formatted(
                  pays(),
                  gainsOrLoses(gamble.gain().mean()),
                  gainsOrLoses(gamble.gains()[gamble.gains().length - 1]));
      default ->
          "it pays %s, %s on average (%s P10, %s P90), and loses more than a tenth of its cost %s"
              .formatted(
                  pays(),
                  gainsOrLoses(gamble.gain().mean()),
                  money(gamble.gain().p10()),
                  money(gamble.gain().p90()),
                  Odds.briefly(gamble.chanceLosesTenth(), draws));
    };
  }

  /** Whether nothing stated about it is unsure, so that the draws do not differ. */
  private boolean drawsAreAlike() {
    double[] gains = gamble.gains();
    return draws > 1 && gains[gains.length - 1] - gains[0] < CENT;
  }

  private String pays() {
    return Odds.in(gamble.chancePays(), draws);
  }

  private String money(double amount) {
    return say.money(amount);
  }

  private String gainsOrLoses(double amount) {
    return (amount < 0 ? "loses " : "gains ") + money(Math.abs(amount));
  }

  private String fails() {
    return "%s of 100 such consignments are taken to fail as a whole"
        .formatted(say.number(100 * gamble.chanceFails()));
  }

  /** The assumption that moves the gain most, whole failure apart: that is told by its chance. */
  private Optional<Swing> widest() {
    return gamble.swings().stream()
        .filter(swing -> !isWholeFailure(swing))
        .filter(swing -> swing.width() >= 0.5)
        .findFirst();
  }

  /** Whether the swing is between a consignment that fails as a whole and one that does not. */
  public static boolean isWholeFailure(Swing swing) {
    return swing.assumption() == Assumption.FAILURE;
  }

  private String reason() {
    return widest()
        .map(swing -> swing.assumption().mattersMost(swing.species()) + ": " + turn(swing))
        .orElse("no assumption about it that is unsure moves it");
  }

  /** The value at which the answer turns, where one is known, else the gain at P10 and P90. */
  private String turn(Swing swing) {
    boolean rising = swing.gainAtHigh() > swing.gainAtLow();
    boolean pays = gamble.bought().judged().presentValue() >= 0;
    return switch (swing.assumption()) {
      case GROWTH_NOT_KNOWN ->
          gamble.breakEvens().slowest().isPresent() && rising
              ? turning(
                      times100(gamble.breakEvens().slowest()), pays, "%s %% of the growth planned")
                  .orElseThrow()
              : values(swing);
      case FIRSTS -> rising ? firsts(pays).orElseGet(() -> values(swing)) : values(swing);
      case CONSIGNMENT ->
          turning(gamble.breakEvens().survivors(), pays, "%s of 100 alive after the first year")
              .orElseGet(() -> values(swing));
      case PRICE ->
          gamble.breakEvens().price().isPresent()
              ? turning(times100(gamble.breakEvens().price()), pays, "%s %% of the prices stated")
                  .orElseThrow()
              : values(swing);
      default -> values(swing);
    };
  }

  private static OptionalDouble times100(OptionalDouble share) {
    return OptionalDouble.of(100 * share.getAsDouble());
  }

  private Optional<String> firsts(boolean pays) {
    OptionalDouble share = gamble.breakEvens().firsts();
    if (share.isPresent()) {
      return turning(times100(share), pays, "%s firsts in 100");
    }
    return Optional.of(
        pays ? "even without firsts it pays" : "even with firsts only it does not pay");
  }

  private Optional<String> turning(OptionalDouble value, boolean pays, String what) {
    if (value.isEmpty()) {
      return Optional.empty();
    }
    String at = what.formatted(say.whole(value.getAsDouble()));
    return Optional.of(
        pays ? "below " + at + " it does not pay" : "it would pay from " + at + " on");
  }

  private String values(Swing swing) {
    return "it %s at %s and %s at %s"
        .formatted(
            gainsOrLoses(swing.gainAtLow()),
            swing.low(),
            gainsOrLoses(swing.gainAtHigh()),
            swing.high());
  }

  private double quantity() {
    return gamble.bought().lot().quantity();
  }

  private String price() {
    if (gamble.mostLandedEach().isEmpty()) {
      return "even as a gift, landed free, it would lose on average";
    }
    return "%s %s a plant landed (now %s)"
        .formatted(
            gamble.gain().mean() >= 0
                ? "it stays worth its price up to"
                : "it would be worth buying at",
            say.each(gamble.mostLandedEach().getAsDouble()),
            say.each(gamble.bought().landed() / quantity()));
  }

  /** Says that the draws do not tell, if the answer turns within twice the sampling error. */
  Optional<String> doubt() {
    double error = 2 * gamble.gain().meanError();
    if (draws < Chances.FEW) {
      return Optional.of(
          "%s too few to tell.".formatted(say.counted(draws, "draw is", "draws are")));
    }
    return Math.abs(gamble.gain().mean()) < error
        ? Optional.of(
            "Whether it gains on average the %s draws do not tell: the sampling error is %s."
                .formatted(say.whole(draws), money(gamble.gain().meanError())))
        : Optional.empty();
  }
}
