package growingon.chance.luck;

import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.market.Demand;
import growingon.nursery.species.Species;
import growingon.project.Luck;
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
  public double growth(Species species, int season) {
    return assumption == Assumption.GROWTH ? Keyed.lognormal(species.yearSpread(), seasonScore) : 1;
  }

  @Override
  public double growth(Lot each, Species species) {
    return assumption == Assumption.GROWTH_OF_LOT && each.name().equals(lot.name())
        ? Keyed.lognormal(Spreads.ofLots(species, settings), score)
        : 1;
  }

  @Override
  public double trunks(Lot each) {
    return assumption == Assumption.TRUNKS_NOT_KNOWN && each.name().equals(lot.name())
        ? NotKnown.trunksAt(score)
        : 1;
  }

  @Override
  public double loss(Species species, boolean firstYear, double expected, int season) {
    return assumption == Assumption.LOSS
        ? spreads.share(expected, expected * species.lossSpread(), seasonScore)
        : expected;
  }

  @Override
  public double consignmentLoss(Lot each, double expected) {
    return assumption == Assumption.CONSIGNMENT && each.name().equals(lot.name())
        ? spreads.share(expected, Spreads.consignmentDeviation(each, expected), score)
        : expected;
  }

  @Override
  public double deadOnArrival(Lot each) {
    return assumption == Assumption.FAILURE && each.name().equals(lot.name())
        ? share.getAsDouble()
        : 0;
  }

  @Override
  public QualityShares quality(Lot each) {
    return assumption == Assumption.FIRSTS && each.name().equals(lot.name())
        ? withFirsts(each.quality(), share.getAsDouble())
        : each.quality();
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
