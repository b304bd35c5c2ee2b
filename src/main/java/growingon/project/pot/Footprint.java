package growingon.project.pot;

import growingon.nursery.place.Layout;
import growingon.nursery.place.Place;
import growingon.nursery.place.Spacing;
import growingon.nursery.supply.Pot;
import growingon.nursery.supply.PotShape;
import java.util.Optional;

/**
 * How much floor or bench one plant takes, m². Plain geometry: rows set off against each other
 * stand √3/2 of their distance apart, as the heights of equilateral triangles do.
 */
public final class Footprint {
  private static final double OFFSET_FACTOR = Math.sqrt(3) / 2;

  private Footprint() {}

  /**
   * Square metres of one plant. With a = max(pot top, crown) and gap g: square (a+g)², offset √3/2
   * (a+g)²; on a bench of a stated depth whole rows only; rectangular pots (top+g)(width+g); plants
   * per m² overrides.
   *
   * @param pot its pot, empty where plants per m² is stated
   * @param crownMm crown width, mm
   * @param spacing gap or plants per m²
   * @param place where it stands; empty for a plant without a place, which is set out square
   * @return m² a plant; 0 for a plant without pot and without plants per m²
   */
  public static double m2(
      Optional<Pot> pot, double crownMm, Spacing spacing, Optional<Place> place) {
    if (spacing.plantsPerM2().isPresent()) {
      return 1 / spacing.plantsPerM2().getAsDouble();
    }
    double longSide = Math.max(pot.map(Pot::topMm).orElse(0.0), crownMm);
    double shortSide = Math.max(pot.map(Pot::widthMm).orElse(0.0), crownMm);
    if (longSide == 0) {
      return 0;
    }
    double gap = spacing.gapMm();
    boolean rectangular = pot.map(Pot::shape).filter(PotShape.RECTANGULAR::equals).isPresent();
    if (place.isPresent() && place.get().benchDepthMm().isPresent()) {
      double depth = place.get().benchDepthMm().getAsDouble();
      return (shortSide + gap) * depth / rows(depth, longSide, gap) / 1e6;
    }
    double area = (longSide + gap) * (shortSide + gap) / 1e6;
    boolean offset = place.map(Place::layout).filter(Layout.OFFSET::equals).isPresent();
    return offset && !rectangular ? OFFSET_FACTOR * area : area;
  }

  /**
   * Whole rows across a bench: ⌊(depth + gap) / (side + gap)⌋, as no gap is needed behind the last;
   * one even if a plant is wider than the bench. All in mm.
   */
  static int rows(double depthMm, double sideMm, double gapMm) {
    return (int) Math.max(1, Math.floor((depthMm + gapMm) / (sideMm + gapMm) + 1e-9));
  }
}
