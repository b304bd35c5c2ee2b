package growingon.nursery;

import growingon.nursery.lot.Hold;
import growingon.nursery.market.HorizonValue;
import growingon.nursery.number.Check;
import growingon.nursery.time.Horizon;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.YearMonth;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A horizon, the stock, and the offers taken up.
 *
 * @param name of the plan, also of its report folder
 * @param firstMonth first month
 * @param seasons number of seasons, 1 to 50
 * @param take plants taken of each offer
 * @param slices K, representative plants a lot
 * @param draws draws for chances, 0 for none
 * @param seed of the draws
 * @param horizonValue what plants unsold at the end are worth
 * @param holds what is held of lots and offers in place of what their tables say, by name
 * @param ordered offers taken that are ordered already
 */
@RecordBuilder
public record Plan(
    String name,
    YearMonth firstMonth,
    int seasons,
    Map<String, Integer> take,
    int slices,
    int draws,
    long seed,
    HorizonValue horizonValue,
    Map<String, PlannedHold> holds,
    Set<String> ordered)
    implements PlanBuilder.With {
  /**
   * What a plan says is held of a lot.
   *
   * @param hold what is held, if anything
   * @param advised whether the program advised it, so that it may advise otherwise
   */
  public record PlannedHold(Optional<Hold> hold, boolean advised) {
    public PlannedHold {
      Objects.requireNonNull(hold);
    }
  }

  /** Most draws; more add no digit that could be trusted. */
  public static final int MOST_DRAWS = 100_000;

  /** Draws where nothing is said. */
  public static final int USUAL_DRAWS = 200;

  /** Where nothing is said, lots times draws are at most this, as long as there are FEWEST. */
  private static final int USUAL_LOTS_DRAWN = 100_000;

  private static final int FEWEST_USUAL_DRAWS = 100;

  /** Most representative plants a lot: the search for their lattice grows with the cube. */
  public static final int MOST_SLICES = 512;

  public Plan {
    Check.named(name, "a plan");
    Objects.requireNonNull(firstMonth);
    Check.that(
        seasons >= 1 && seasons <= Horizon.MOST_SEASONS, "a plan has 1 to 50 seasons", seasons);
    take = Collections.unmodifiableMap(new LinkedHashMap<>(take));
    Check.that(slices >= 16, "K is at least 16", slices);
    Check.notNegative(draws, "draws");
    Objects.requireNonNull(horizonValue);
    holds = Collections.unmodifiableMap(new LinkedHashMap<>(holds));
    ordered = Collections.unmodifiableSet(new LinkedHashSet<>(ordered));
  }

  /** A plan that holds what the tables say, with nothing ordered yet. */
  public Plan(
      String name,
      YearMonth firstMonth,
      int seasons,
      Map<String, Integer> take,
      int slices,
      int draws,
      long seed,
      HorizonValue horizonValue) {
    this(name, firstMonth, seasons, take, slices, draws, seed, horizonValue, Map.of(), Set.of());
  }

  /** Draws where nothing is said: fewer for very many lots, which take long. */
  public static int usualDraws(int lots) {
    int affordable = USUAL_LOTS_DRAWN / Math.max(1, lots);
    return Math.max(FEWEST_USUAL_DRAWS, Math.min(USUAL_DRAWS, affordable));
  }

  /** Plants taken of an order of an offer: by its own name, else by that of the offer. */
  public int taken(String order, String offer) {
    return take.getOrDefault(order, take.getOrDefault(offer, 0));
  }

  /** What the plan says is held of an order of an offer: by its own name, else by the offer's. */
  public Optional<PlannedHold> held(String order, String offer) {
    return Optional.ofNullable(holds.getOrDefault(order, holds.get(offer)));
  }
}
