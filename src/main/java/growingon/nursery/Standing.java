package growingon.nursery;

import java.util.Objects;
import java.util.Optional;

/**
 * Where and how a lot stands.
 *
 * @param place its own place, if it has one
 * @param spacing its spacing, if stated
 * @param crownMm width of the crown
 * @param heightLeftMm height of the wood left after reduction, for its weight
 */
public record Standing(
    Optional<String> place, Optional<Spacing> spacing, double crownMm, double heightLeftMm) {
  public Standing {
    Objects.requireNonNull(place);
    Objects.requireNonNull(spacing);
    Check.notNegative(crownMm, "crown");
    Check.notNegative(heightLeftMm, "height left");
  }
}
