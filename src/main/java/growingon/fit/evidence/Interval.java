package growingon.fit.evidence;

import growingon.fit.past.Measured;
import growingon.project.slice.Cohorts;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Two successive measurements of one lot, or of tagged plants of one kind. Months are offsets from
 * the first month of the past; a measurement holds for the end of its month.
 *
 * @param subject the lot or group
 * @param lot the lot whose history it is part of; empty for plants without one
 * @param root what shares the luck of a lot: the first lot of its line
 * @param species its species
 * @param from month of the first measurement
 * @param to month of the second one
 * @param first the first measurement
 * @param second the second one
 * @param plants plants at the subject's first measurement
 * @param bySeason growth years in each season, by the year in which it starts
 * @param byCondition growth years in each growing condition
 * @param stretches growth of tagged plants in order; empty for a lot, which the engine grows
 * @param states states of its roots and pots that it grew in
 * @param refused why it is not used, if it is not
 * @param tells what is told of it though it is used
 */
@RecordBuilder
public record Interval(
    String subject,
    Optional<String> lot,
    String root,
    String species,
    int from,
    int to,
    Measured first,
    Measured second,
    double plants,
    Map<Integer, Double> bySeason,
    Map<String, Double> byCondition,
    List<Stretch> stretches,
    Set<State> states,
    Optional<String> refused,
    String tells)
    implements IntervalBuilder.With {
  /** States of roots and pots in which growth may differ. */
  public enum State {
    FIRST_YEAR("root work 1st year"),
    SECOND_YEAR("2nd year"),
    POT_BOUND("pot-bound"),
    NEITHER("neither");

    private final String word;

    State(String word) {
      this.word = word;
    }

    @Override
    public String toString() {
      return word;
    }
  }

  /**
   * Growth in one condition.
   *
   * @param condition the condition
   * @param years growth years
   */
  record Stretch(String condition, double years) {}

  public Interval {
    bySeason = Map.copyOf(bySeason);
    byCondition = Map.copyOf(byCondition);
    stretches = List.copyOf(stretches);
    states = Set.copyOf(states);
  }

  /** Whether it is of tagged plants. */
  public boolean isTagged() {
    return !first.tagged().isEmpty();
  }

  /** Growth years of a plant of vigour 1. */
  public double clock() {
    // In one order, so that rows in another order change no digit.
    return byCondition.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .mapToDouble(Map.Entry::getValue)
        .sum();
  }

  /** Whether a speed is learnt from it. */
  public boolean isUsed() {
    return refused.isEmpty();
  }

  /** The same, not used. */
  public Interval refusedFor(String why) {
    return withRefused(Optional.of(why));
  }

  /** Seasons in which it grew a tenth of it or more, by the years in which they start. */
  public List<Integer> seasons() {
    return bySeason.entrySet().stream()
        .filter(each -> each.getValue() >= LEAST_OF_A_SEASON * clock())
        .map(Map.Entry::getKey)
        .sorted()
        .toList();
  }

  private static final double LEAST_OF_A_SEASON = 0.1;

  /** The condition in which it grew most. */
  public String condition() {
    return byCondition.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse("");
  }

  /**
   * How long its plants grew in which condition.
   *
   * @param growth curves by growing condition
   */
  public List<Cohorts.Stretch> grownBy(Map<String, growingon.nursery.species.Curve> growth) {
    return stretches.stream()
        .map(each -> new Cohorts.Stretch(growth.get(each.condition()), each.years()))
        .toList();
  }
}
