package growingon.project.pot;

import growingon.nursery.route.Step;
import growingon.nursery.supply.Pot;

/**
 * What fills one pot: ball lifted from the ground and mix, in litres as firmed in the pot. A litre
 * in the pot is (1 + firming) / (1 − shrinkage) litres of loose mix.
 *
 * @param liftedLitres ball lifted from the ground, litres
 * @param mixLitres mix, litres in the pot
 * @param mixKg weight of the mix, wet, kg
 */
public record Filling(double liftedLitres, double mixLitres, double mixKg) {
  public static final Filling NONE = new Filling(0, 0, 0);

  /** Both together, litres in the pot. */
  public double litres() {
    return liftedLitres + mixLitres;
  }

  /** Weight of the ball, kg. */
  public double liftedKg() {
    return liftedLitres * Weight.LIFTED_KG_PER_LITRE;
  }

  /** The share of the ball that stays on at a potting step, at most what the new pot holds. */
  public Filling ballKept(Step step, double share, boolean potted, Pot into) {
    Filling before = potted ? this : new Filling(step.liftedBallLitres(), 0, 0);
    double litres = before.litres() * share;
    double fits = litres > into.fillLitres() ? into.fillLitres() / litres : 1;
    return before.times(share * fits);
  }

  /** With fresh mix up to the fill of the pot. */
  public Filling filledUp(Pot pot, ReadyMix mix) {
    double fresh = Math.max(0, pot.fillLitres() - litres());
    return new Filling(liftedLitres, mixLitres + fresh, mixKg + fresh * mix.wetKg());
  }

  /** Filled up with something that no mix names: taken as 1 kg a litre (a round figure). */
  public Filling filledUp(Pot pot) {
    double fresh = Math.max(0, pot.fillLitres() - litres());
    return new Filling(liftedLitres, mixLitres + fresh, mixKg + fresh);
  }

  private Filling times(double factor) {
    return new Filling(liftedLitres * factor, mixLitres * factor, mixKg * factor);
  }
}
