package growingon.nursery.supply;

import growingon.nursery.number.Check;
import java.util.Objects;

/**
 * Something used up by the work: wire, dressing, ties, canes.
 *
 * @param name as routes name it
 * @param unit the unit it is counted in
 * @param pack units in a pack
 * @param packPrice price of a pack
 * @param onHand units on hand
 * @param comesBackShare share that can be used again twelve months later
 * @param source from whom it is bought
 */
public record Material(
    String name,
    String unit,
    double pack,
    double packPrice,
    double onHand,
    double comesBackShare,
    Source source) {
  /** One of which nobody says from whom it is bought. */
  public Material(
      String name,
      String unit,
      double pack,
      double packPrice,
      double onHand,
      double comesBackShare) {
    this(name, unit, pack, packPrice, onHand, comesBackShare, Source.UNSTATED);
  }

  public Material {
    Check.named(name, "a material");
    Check.positive(pack, "pack of " + name);
    Check.notNegative(packPrice, "pack price of " + name);
    Check.notNegative(onHand, "on hand of " + name);
    Objects.requireNonNull(source);
    Check.share(comesBackShare, "what comes back of " + name);
  }

  /** Price of one unit. */
  public double unitPrice() {
    return packPrice / pack;
  }
}
