package growingon.nursery.route;

import growingon.nursery.number.Check;
import growingon.nursery.place.Spacing;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Month;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One piece of work on a lot in a month, with what it uses and costs, all per plant.
 *
 * @param name unique in its route
 * @param when when it is due
 * @param toMonth last month of the window over which hours and materials are spread, if any
 * @param minutes minutes of work a plant
 * @param pot the pot it goes into, if it is potted
 * @param potEnds whether it is taken out of its pot, to be planted or laid in
 * @param mix the mix used, if any
 * @param ballKeptShare share of the old ball that stays on
 * @param liftedBallLitres size of the ball lifted from the ground
 * @param place where the lot goes, if it moves
 * @param spacing how it stands from now on, if stated
 * @param lossShare share that dies of the step
 * @param cullShare share of the living, not kept, that is culled, worst quality first
 * @param sort whether the lot is sorted
 * @param rootWork whether roots are cut: the growth check starts again
 * @param growthAfter how the plants grow after its root work, as far as it differs from the
 *     species'
 * @param trainingStarts whether training starts
 * @param materials amount of each material a plant, in the material's unit
 */
@RecordBuilder
public record Step(
    String name,
    When when,
    Optional<Month> toMonth,
    double minutes,
    Optional<String> pot,
    boolean potEnds,
    Optional<String> mix,
    double ballKeptShare,
    double liftedBallLitres,
    Optional<String> place,
    Optional<Spacing> spacing,
    double lossShare,
    double cullShare,
    boolean sort,
    boolean rootWork,
    GrowthAfter growthAfter,
    boolean trainingStarts,
    Map<String, Double> materials) {
  /** Share of the old ball that stays on, where nothing is said. */
  public static final double USUAL_BALL_KEPT = 0.5;

  /**
   * Growth after root work, as factors on growth.
   *
   * @param first in the month of the work and the 11 after; empty for the species' check
   * @param second in the 12 months after that; empty for the species' check
   */
  public record GrowthAfter(OptionalDouble first, OptionalDouble second) {
    /** As the species says. */
    public static final GrowthAfter OF_SPECIES =
        new GrowthAfter(OptionalDouble.empty(), OptionalDouble.empty());

    public GrowthAfter {
      Check.notNegative(first.orElse(0), "growth after root work");
      Check.notNegative(second.orElse(0), "growth after root work");
    }
  }

  public Step {
    Check.named(name, "a step");
    Objects.requireNonNull(when);
    Objects.requireNonNull(toMonth);
    Objects.requireNonNull(pot);
    Objects.requireNonNull(mix);
    Objects.requireNonNull(place);
    Objects.requireNonNull(spacing);
    Check.notNegative(minutes, "minutes of " + name);
    Check.share(ballKeptShare, "ball kept of " + name);
    Check.notNegative(liftedBallLitres, "lifted ball of " + name);
    Check.share(lossShare, "loss of " + name);
    Check.share(cullShare, "cull of " + name);
    Check.that(mix.isEmpty() || pot.isPresent(), "a mix needs a pot in the same step", name);
    Check.that(!potEnds || pot.isEmpty(), "a step pots or takes out of the pot", name);
    Objects.requireNonNull(growthAfter);
    materials = Collections.unmodifiableMap(new LinkedHashMap<>(materials));
    materials.values().forEach(amount -> Check.notNegative(amount, "material of " + name));
  }

  /** A step that so far does nothing. */
  public static StepBuilder named(String name, When when) {
    return StepBuilder.builder()
        .name(name)
        .when(when)
        .ballKeptShare(USUAL_BALL_KEPT)
        .growthAfter(GrowthAfter.OF_SPECIES)
        .materials(Map.of());
  }
}
