package growingon.project.slice;

import growingon.growth.Flow;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import java.util.Arrays;
import java.util.List;

/**
 * Plants that are followed by themselves, such as tagged ones: as many representative plants as a
 * lot has, that grow as its plants do, but are neither sold nor culled.
 */
public final class Cohorts {
  private final Lattice lattice;

  /**
   * Growth by one law.
   *
   * @param law the law
   * @param years growth years of a plant of vigour 1
   */
  public record Stretch(Curve law, double years) {}

  /** Cohorts of so many representative plants, K. */
  public Cohorts(int slices) {
    this.lattice = Lattice.of(slices);
  }

  /**
   * Mean trunk of plants that have grown, mm.
   *
   * @param meanMm their mean trunk before, mm
   * @param spread spread of their trunks then, as a share of the mean
   * @param species how they differ in vigour
   * @param growth stretches of growth, one after another
   */
  public double meanAfter(double meanMm, double spread, Species species, List<Stretch> growth) {
    double[] trunks = new double[lattice.slices()];
    for (int i = 0; i < trunks.length; i++) {
      trunks[i] = Lattice.lognormal(meanMm, spread, lattice.trunkScore(i));
    }
    double[] vigour = lattice.vigours(species.vigourSpread());
    for (Stretch stretch : growth) {
      Flow flow = Flow.of(stretch.law());
      for (int i = 0; i < trunks.length; i++) {
        trunks[i] = flow.advance(trunks[i], vigour[i] * stretch.years());
      }
    }
    return Arrays.stream(trunks).average().orElseThrow();
  }
}
