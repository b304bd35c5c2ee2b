package growingon.chance.luck;

import growingon.chance.luck.Keyed.What;
import growingon.nursery.species.Species;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * The luck of one species in one draw. Many lots ask for the same seasons, so each season's is
 * worked out once and found again by its number.
 */
final class SpeciesLuck {
  private static final double HALF = Math.sqrt(0.5);
  private static final int ROOM = 64;
  private static final double NOT_YET = Double.NaN;

  private final Keyed keyed;
  private final Species species;
  private final long whose;
  private final Spreads spreads;
  private final NotKnown notKnown;
  private final int[] seasonOfGrowth = new int[ROOM];
  private final double[] growth = new double[ROOM];
  private final int[] seasonOfLoss = new int[ROOM];
  private final double[] lossScore = new double[ROOM];
  private final double[] expected = new double[ROOM];
  private final double[] loss = new double[ROOM];
  private final Map<String, Double> speeds = new HashMap<>();
  private double firstYearFactor = NOT_YET;
  private double laterFactor = NOT_YET;

  SpeciesLuck(Keyed keyed, Species species, Spreads spreads, NameNumbers names, NotKnown notKnown) {
    this.keyed = keyed;
    this.species = species;
    this.whose = names.of(species.name());
    this.spreads = spreads;
    this.notKnown = notKnown;
    Arrays.fill(seasonOfGrowth, Integer.MIN_VALUE);
    Arrays.fill(seasonOfLoss, Integer.MIN_VALUE);
  }

  /** The species. */
  Species species() {
    return species;
  }

  /** Factor on growth time in a season. */
  double growth(int season) {
    if (species.yearSpread() == 0) {
      return 1;
    }
    int at = place(season);
    if (seasonOfGrowth[at] != season) {
      double score = score(What.GROWTH_OF_ALL, What.GROWTH_OF_SPECIES, season);
      growth[at] = Keyed.lognormal(species.yearSpread(), score);
      seasonOfGrowth[at] = season;
    }
    return growth[at];
  }

  /** Factor on growth time in a growing condition. */
  double speed(String condition) {
    Double known = speeds.get(condition);
    if (known == null) {
      known = notKnown.speed(species, condition);
      speeds.put(condition, known);
    }
    return known;
  }

  /** Loss in a season of which so much is to be expected. */
  double loss(boolean firstYear, double mean, int season) {
    double drawn = lossOfSeason(mean, season);
    double factor = lossFactor(firstYear);
    return factor == 1 ? drawn : Math.min(NotKnown.MOST_LOSS, drawn * factor);
  }

  private double lossOfSeason(double mean, int season) {
    if (species.lossSpread() == 0) {
      return mean;
    }
    int at = place(season);
    if (seasonOfLoss[at] != season) {
      lossScore[at] = score(What.LOSS_OF_ALL, What.LOSS_OF_SPECIES, season);
      expected[at] = NOT_YET;
      seasonOfLoss[at] = season;
    }
    if (expected[at] != mean) {
      loss[at] = spreads.share(mean, mean * species.lossSpread(), lossScore[at]);
      expected[at] = mean;
    }
    return loss[at];
  }

  private double lossFactor(boolean firstYear) {
    if (firstYear) {
      firstYearFactor =
          Double.isNaN(firstYearFactor) ? notKnown.loss(species, true) : firstYearFactor;
      return firstYearFactor;
    }
    laterFactor = Double.isNaN(laterFactor) ? notKnown.loss(species, false) : laterFactor;
    return laterFactor;
  }

  private static int place(int season) {
    return season & (ROOM - 1);
  }

  /** Standard normal score of a season: half shared by all species, half its own. */
  private double score(What all, What own, int season) {
    return HALF * (keyed.normal(all, 0, season) + keyed.normal(own, whose, season));
  }
}
