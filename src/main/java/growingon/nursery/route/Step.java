package growingon.nursery.route;

import growingon.nursery.number.Check;
import growingon.nursery.place.Spacing;
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
  public static Builder named(String name, When when) {
    Builder builder = new Builder();
    builder.name = name;
    builder.when = when;
    return builder;
  }

  /** The parts of this one, of which some can be put in place of others. */
  public Builder but() {
    Builder builder = new Builder();
    builder.name = name;
    builder.when = when;
    builder.toMonth = toMonth;
    builder.minutes = minutes;
    builder.pot = pot;
    builder.potEnds = potEnds;
    builder.mix = mix;
    builder.ballKeptShare = ballKeptShare;
    builder.liftedBallLitres = liftedBallLitres;
    builder.place = place;
    builder.spacing = spacing;
    builder.lossShare = lossShare;
    builder.cullShare = cullShare;
    builder.sort = sort;
    builder.rootWork = rootWork;
    builder.growthAfter = growthAfter;
    builder.trainingStarts = trainingStarts;
    builder.materials = materials;
    return builder;
  }

  /** Its parts by name; what is not said has its usual value. */
  public static final class Builder {
    private String name;
    private When when;
    private Optional<Month> toMonth = Optional.empty();
    private double minutes = 0;
    private Optional<String> pot = Optional.empty();
    private boolean potEnds = false;
    private Optional<String> mix = Optional.empty();
    private double ballKeptShare = USUAL_BALL_KEPT;
    private double liftedBallLitres = 0;
    private Optional<String> place = Optional.empty();
    private Optional<Spacing> spacing = Optional.empty();
    private double lossShare = 0;
    private double cullShare = 0;
    private boolean sort = false;
    private boolean rootWork = false;
    private GrowthAfter growthAfter = GrowthAfter.OF_SPECIES;
    private boolean trainingStarts = false;
    private Map<String, Double> materials = Map.of();

    private Builder() {}

    public Builder toMonth(Optional<Month> value) {
      this.toMonth = value;
      return this;
    }

    public Builder minutes(double value) {
      this.minutes = value;
      return this;
    }

    public Builder pot(Optional<String> value) {
      this.pot = value;
      return this;
    }

    public Builder potEnds(boolean value) {
      this.potEnds = value;
      return this;
    }

    public Builder mix(Optional<String> value) {
      this.mix = value;
      return this;
    }

    public Builder ballKeptShare(double value) {
      this.ballKeptShare = value;
      return this;
    }

    public Builder liftedBallLitres(double value) {
      this.liftedBallLitres = value;
      return this;
    }

    public Builder place(Optional<String> value) {
      this.place = value;
      return this;
    }

    public Builder spacing(Optional<Spacing> value) {
      this.spacing = value;
      return this;
    }

    public Builder lossShare(double value) {
      this.lossShare = value;
      return this;
    }

    public Builder cullShare(double value) {
      this.cullShare = value;
      return this;
    }

    public Builder sort(boolean value) {
      this.sort = value;
      return this;
    }

    public Builder rootWork(boolean value) {
      this.rootWork = value;
      return this;
    }

    public Builder growthAfter(GrowthAfter value) {
      this.growthAfter = value;
      return this;
    }

    public Builder trainingStarts(boolean value) {
      this.trainingStarts = value;
      return this;
    }

    public Builder materials(Map<String, Double> value) {
      this.materials = value;
      return this;
    }

    public Step build() {
      return new Step(
          name,
          when,
          toMonth,
          minutes,
          pot,
          potEnds,
          mix,
          ballKeptShare,
          liftedBallLitres,
          place,
          spacing,
          lossShare,
          cullShare,
          sort,
          rootWork,
          growthAfter,
          trainingStarts,
          materials);
    }
  }
}
