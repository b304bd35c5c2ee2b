package growingon.nursery.lot;

import growingon.nursery.number.Check;
import growingon.nursery.place.Spacing;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where and how a lot stands.
 *
 * @param place its own place, if it has one
 * @param spacing its spacing, if stated
 * @param crownMm width of the crown
 * @param heightLeftMm height of the wood left after reduction, for its weight
 * @param heeledInPerM2 plants a square metre while they wait heeled in without a pot; empty to go
 *     by the nursery's setting or their trunks
 */
public record Standing(
    Optional<String> place,
    Optional<Spacing> spacing,
    double crownMm,
    double heightLeftMm,
    OptionalDouble heeledInPerM2) {
  /** Without a density of its own for waiting heeled in. */
  public Standing(
      Optional<String> place, Optional<Spacing> spacing, double crownMm, double heightLeftMm) {
    this(place, spacing, crownMm, heightLeftMm, OptionalDouble.empty());
  }

  public Standing {
    Objects.requireNonNull(place);
    Objects.requireNonNull(spacing);
    Check.notNegative(crownMm, "crown");
    Check.notNegative(heightLeftMm, "height left");
    Check.positive(heeledInPerM2.orElse(1), "plants heeled in a square metre");
  }
}
