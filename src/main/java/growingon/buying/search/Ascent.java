package growingon.buying.search;

import growingon.buying.engine.Engine;
import growingon.buying.engine.Outcome;
import growingon.buying.limit.Limits;
import growingon.buying.question.Candidate;
import java.util.function.Consumer;

/**
 * A climb on the plan's line at a price of what is short, which is raised until everything fits.
 * Unlike undoing alone this also exchanges what needs much for what needs less. What moves came to
 * on the way is kept from price to price.
 */
final class Ascent {
  /** At the first price all that is short costs an eighth of what it brings. */
  private static final int FIRST_PRICE = 8;

  private static final int PRICES = 12;
  private static final int STEP = 2;
  private static final int STEP_OF_MANY = 4;
  private static final int BACK = 32;

  private final Engine engine;
  private final Limits limits;
  private final Moves moves;
  private final double closeTo;
  private final Consumer<String> say;
  private final Known known = new Known();

  /**
   * An ascent of which nothing is known yet.
   *
   * @param closeTo a move that loses no more than this is looked at again
   * @param say told what is being done
   */
  Ascent(Engine engine, Limits limits, Moves moves, double closeTo, Consumer<String> say) {
    this.engine = engine;
    this.limits = limits;
    this.moves = moves;
    this.closeTo = closeTo;
    this.say = say;
  }

  /**
   * Where it came to.
   *
   * @param candidate what fits, or the last where nothing did
   * @param price the last that was climbed at; 0 if none was
   */
  record Top(Candidate candidate, double price) {}

  /** What would be done if nothing were short. */
  Candidate whatPays() {
    return atPrice(0, engine.question().asGiven());
  }

  /** From what pays up to what fits. */
  Top from(Candidate paying) {
    Outcome all = engine.line(paying);
    double gained = all.value() - engine.line(engine.question().asGiven()).value();
    return rising(new Top(paying, 0), gained / limits.shortage(all) / FIRST_PRICE);
  }

  /**
   * From an end back to where what is short is cheap, and on at rising prices: what was given up on
   * the way is taken in another company.
   *
   * @param price the last that was climbed at before
   */
  Top again(Candidate end, double price) {
    double cheap = price / BACK;
    return rising(new Top(atPrice(cheap, end), price), STEP * cheap);
  }

  private Top rising(Top start, double first) {
    Top now = start;
    double price = first;
    for (int time = 0; time < PRICES && !limits.allow(engine.line(now.candidate())); time++) {
      say.accept("Climbing at a price of what is short");
      now = new Top(atPrice(price, now.candidate()), price);
      price *= moves.areMany() ? STEP_OF_MANY : STEP;
    }
    return now;
  }

  private Candidate atPrice(double price, Candidate start) {
    Judge judge = OnTheLine.atAPrice(engine, limits, price);
    return Climb.toAStart(roughly(), engine.question(), judge, closeTo, known).from(start);
  }

  /** Of very many lots a quarter of one more or less matters only at the end. */
  private Moves roughly() {
    return moves.areMany() ? moves.coarse() : moves;
  }
}
