package growingon.nursery;

/**
 * A substrate component, bought in bags.
 *
 * @param name as mixes name it
 * @param bagLitres litres in a bag
 * @param bagPrice price of a bag
 * @param onHandLitres litres on hand
 * @param wetKgPerLitre weight when wet, kg per loose litre
 */
public record Component(
    String name, double bagLitres, double bagPrice, double onHandLitres, double wetKgPerLitre) {
  public Component {
    Check.named(name, "a component");
    Check.positive(bagLitres, "bag litres of " + name);
    Check.notNegative(bagPrice, "bag price of " + name);
    Check.notNegative(onHandLitres, "litres on hand of " + name);
    Check.notNegative(wetKgPerLitre, "wet weight of " + name);
  }
}
