package growingon.chance.luck;

import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.market.Demand;
import growingon.nursery.species.Species;
import growingon.project.lot.Luck;
import java.util.OptionalDouble;

/**
 * Luck in which one assumption is set, all others are as expected. Scores are standard normal. What
 * differs from season to season is set for all seasons at once to where its mean over the seasons
 * would lie: the score over the square root of their number.
 */
public final class FixedLuck implements Luck {
  private final Assumption assumption;
  private final double score;
  private final double seasonScore;
  private final Lot lot;
  private final OptionalDouble share;
  private final Settings settings;
  private final Spreads spreads;

  /**
   * Luck with one assumption set.
   *
   * @param score standard normal score, where it is set by score
   * @param seasons number of seasons of the plan
   * @param lot the lot whose luck it is
   * @param share the share of firsts, or of plants dead on arrival, where it is set by share
   */
  public FixedLuck(
      Assumption assumption,
      double score,
      int seasons,
      Lot lot,
      OptionalDouble share,
      Settings settings,
      Spreads spreads) {
    this.assumption = assumption;
    this.score = score;
    this.seasonScore = score / Math.sqrt(seasons);
    this.lot = lot;
    this.share = share;
    this.settings = settings;
    this.spreads = spreads;
  }

  @Override
  public OfLot of(Lot each, Species species) {
    return new Fixed(each, species);
  }

  private final class Fixed implements OfLot {
    private final Lot each;
    private final Species species;
    private final boolean itIs;

    Fixed(Lot each, Species species) {
      this.each = each;
      this.species = species;
      this.itIs = each.name().equals(lot.name());
    }

    private boolean isSet(Assumption ofTheLot) {
      return itIs && assumption == ofTheLot;
    }

    @Override
    public double growth(int season) {
      return assumption == Assumption.GROWTH
          ? Keyed.lognormal(species.yearSpread(), seasonScore)
          : 1;
    }

    @Override
    public double growth() {
      return isSet(Assumption.GROWTH_OF_LOT)
          ? Keyed.lognormal(Spreads.ofLots(species, settings), score)
          : 1;
    }

    @Override
    public double trunks() {
      return isSet(Assumption.TRUNKS_NOT_KNOWN) ? NotKnown.trunksAt(score) : 1;
    }

    @Override
    public double loss(boolean firstYear, double expected, int season) {
      return assumption == Assumption.LOSS
          ? spreads.share(expected, expected * species.lossSpread(), seasonScore)
          : expected;
    }

    @Override
    public double consignmentLoss(double expected) {
      return isSet(Assumption.CONSIGNMENT)
          ? spreads.share(expected, Spreads.consignmentDeviation(each, expected), score)
          : expected;
    }

    @Override
    public double deadOnArrival() {
      return isSet(Assumption.FAILURE) ? share.getAsDouble() : 0;
    }

    @Override
    public QualityShares quality() {
      return isSet(Assumption.FIRSTS)
          ? withFirsts(each.quality(), share.getAsDouble())
          : each.quality();
    }
  }

  /** Another share of firsts; seconds and thirds keep their proportion. */
  public static QualityShares withFirsts(QualityShares stated, double firsts) {
    double others = stated.second() + stated.third();
    double seconds = others == 0 ? 0 : stated.second() / others;
    return new QualityShares(firsts, (1 - firsts) * seconds, stated.sorted(), stated.sure());
  }

  @Override
  public double units(Demand row, int season) {
    return assumption == Assumption.UNITS ? Keyed.lognormal(row.unitsSpread(), seasonScore) : 1;
  }

  @Override
  public double price(Demand row, int season) {
    return assumption == Assumption.PRICE ? Keyed.lognormal(row.priceSpread(), seasonScore) : 1;
  }

  @Override
  public double minutes(int season) {
    return assumption == Assumption.MINUTES
        ? Keyed.lognormal(settings.labourSpread(), seasonScore)
        : 1;
  }

  @Override
  public double exchange(String currency, int season) {
    return assumption == Assumption.EXCHANGE && !currency.equals(settings.currency())
        ? Keyed.lognormal(settings.exchangeSpread(), score)
        : 1;
  }
}
