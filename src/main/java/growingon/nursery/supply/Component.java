package growingon.nursery.supply;

import growingon.nursery.number.Check;
import java.util.Objects;

/**
 * A substrate component, bought in bags.
 *
 * @param name as mixes name it
 * @param bagLitres litres in a bag
 * @param bagPrice price of a bag
 * @param onHandLitres litres on hand
 * @param wetKgPerLitre weight when wet, kg per loose litre
 * @param source from whom it is bought
 */
public record Component(
    String name,
    double bagLitres,
    double bagPrice,
    double onHandLitres,
    double wetKgPerLitre,
    Source source) {
  /** One of which nobody says from whom it is bought. */
  public Component(
      String name, double bagLitres, double bagPrice, double onHandLitres, double wetKgPerLitre) {
    this(name, bagLitres, bagPrice, onHandLitres, wetKgPerLitre, Source.UNSTATED);
  }

  public Component {
    Check.named(name, "a component");
    Objects.requireNonNull(source);
    Check.positive(bagLitres, "bag litres of " + name);
    Check.notNegative(bagPrice, "bag price of " + name);
    Check.notNegative(onHandLitres, "litres on hand of " + name);
    Check.notNegative(wetKgPerLitre, "wet weight of " + name);
  }
}
