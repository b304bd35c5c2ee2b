package growingon.project.known;

import growingon.nursery.market.Quality;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known to have happened to a lot in a month. Plants are culled, as they are sorted, before
 * the month's steps; what comes and goes after its last cull does so after its growth. Plants are
 * sold and used at its end, and a count holds for its end.
 *
 * @param changes plants that came and went, in order
 * @param leaving plants sold and used, in order
 * @param count what was counted, if anything
 */
public record MonthFacts(List<Change> changes, List<Leaving> leaving, Optional<Count> count) {
  public static final MonthFacts NOTHING = new MonthFacts(List.of(), List.of(), Optional.empty());

  public MonthFacts {
    changes = List.copyOf(changes);
    leaving = List.copyOf(leaving);
  }

  MonthFacts withTrunks(double factor) {
    return new MonthFacts(changes, leaving, count.map(counted -> counted.withTrunks(factor)));
  }

  /** Index of the first change after the last cull. */
  public int afterLastCull() {
    int after = 0;
    for (int i = 0; i < changes.size(); i++) {
      after = changes.get(i).way() == Way.CULLED ? i + 1 : after;
    }
    return after;
  }

  /** How plants come and go. */
  public enum Way {
    /** Found, returned, or come from another lot. */
    CAME,
    /** Died. */
    DIED,
    /** Culled: those of a quality, else the worst first, for who culls has looked. */
    CULLED,
    /** Lost, or gone to another lot. */
    WENT
  }

  /**
   * Plants that came or went.
   *
   * @param way how
   * @param quality their quality, where they were culled and it is said
   * @param plants how many
   */
  public record Change(Way way, Optional<Quality> quality, double plants) {}

  /**
   * Plants that left the nursery.
   *
   * @param sold whether they were sold; else they were used for classes or display
   * @param grade their grade, if said
   * @param quality their quality, if said
   * @param plants how many
   * @param money what they brought, plan currency; empty for the list price
   */
  public record Leaving(
      boolean sold,
      Optional<String> grade,
      Optional<Quality> quality,
      double plants,
      OptionalDouble money) {
    /** A share of them. */
    public Leaving times(double share) {
      OptionalDouble part =
          money.isPresent() ? OptionalDouble.of(money.getAsDouble() * share) : money;
      return new Leaving(sold, grade, quality, plants * share, part);
    }

    /** These and others of which the same is said. */
    public Leaving and(Leaving other) {
      OptionalDouble both =
          money.isPresent()
              ? OptionalDouble.of(money.getAsDouble() + other.money.getAsDouble())
              : money;
      return new Leaving(sold, grade, quality, plants + other.plants, both);
    }
  }

  /**
   * What was counted and measured.
   *
   * @param living plants alive at the month's end, kept ones among them
   * @param qualities plants of each quality; empty where they were not told apart
   * @param trunkMm mean trunk, mm
   * @param trunkSpread spread of the trunks as a share of their mean
   */
  public record Count(
      OptionalDouble living,
      Map<Quality, Double> qualities,
      OptionalDouble trunkMm,
      OptionalDouble trunkSpread) {
    public Count {
      qualities = Map.copyOf(qualities);
    }

    private Count withTrunks(double factor) {
      OptionalDouble mm =
          trunkMm.isPresent() ? OptionalDouble.of(trunkMm.getAsDouble() * factor) : trunkMm;
      return new Count(living, qualities, mm, trunkSpread);
    }
  }
}
