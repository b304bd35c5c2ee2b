package growingon.money.bought;

import growingon.nursery.lot.Lot;
import java.util.List;
import java.util.OptionalInt;

/**
 * What a bought lot would have brought had the plan ended with this or that season, on the plan's
 * line, some seasons beyond the plan's own end among them. Seasons are numbered from 0.
 *
 * @param lot the lot
 * @param planEnd the plan's last season
 * @param seasons what it has brought by the end of each, the last one run last
 * @param soldOut the first season from the plan's last on at whose end at most a tenth of its
 *     plants still stands that could be sold one day; empty if that is after the last one run
 */
public record Ending(Lot lot, int planEnd, List<BySeason> seasons, OptionalInt soldOut) {
  /** What may still stand of a lot that counts as sold. */
  static final double LEFT = 0.1;

  private static final double HALF_A_CENT = 0.005;

  /**
   * By the end of a season.
   *
   * @param gain present value of the nursery with the lot less without it, had the plan ended here
   * @param standing plants for sale that stand, kept ones left out
   * @param saleable those of them that can be sold one day: of a quality that has a price
   * @param graded those of them that have a grade now
   * @param worthAtList what they would fetch at list prices, gross
   */
  public record BySeason(
      double gain, double standing, double saleable, double graded, double worthAtList) {}

  public Ending {
    seasons = List.copyOf(seasons);
  }

  /** An ending of seasons as they came out. */
  static Ending of(Lot lot, int planEnd, List<BySeason> seasons) {
    double most = LEFT * (lot.quantity() - lot.kept());
    OptionalInt soldOut = OptionalInt.empty();
    for (int season = planEnd; season < seasons.size() && soldOut.isEmpty(); season++) {
      soldOut =
          seasons.get(season).saleable() <= most + 1e-9
              ? OptionalInt.of(season)
              : OptionalInt.empty();
    }
    return new Ending(lot, planEnd, seasons, soldOut);
  }

  /** The season at whose end the lot is judged: when it is sold, else the last one run. */
  public int judgedAt() {
    return soldOut.orElse(seasons.size() - 1);
  }

  /** Whether it is judged later than the plan ends. */
  public boolean isJudgedLater() {
    return judgedAt() > planEnd;
  }

  /**
   * The first season from which on the lot has paid up to where it is judged.
   *
   * @param gains gain by season
   * @param judgedAt last season that counts
   */
  public static OptionalInt paysFrom(List<Double> gains, int judgedAt) {
    int from = judgedAt + 1;
    while (from > 0 && gains.get(from - 1) >= -HALF_A_CENT) {
      from--;
    }
    return from > judgedAt ? OptionalInt.empty() : OptionalInt.of(from);
  }

  /** The first season from which on it pays on the plan's line. */
  public OptionalInt paysFrom() {
    return paysFrom(seasons.stream().map(BySeason::gain).toList(), judgedAt());
  }

  /** How it stands at the plan's own end. */
  public BySeason atPlanEnd() {
    return seasons.get(planEnd);
  }

  /** How it stands where it is judged. */
  public BySeason atJudged() {
    return seasons.get(judgedAt());
  }
}
