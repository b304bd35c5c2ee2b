package growingon.nursery;

import growingon.nursery.market.ExtraCosts;
import growingon.nursery.market.MarketSure;
import growingon.nursery.number.Check;
import growingon.nursery.number.Writing;
import growingon.nursery.species.LibrarySite;
import growingon.nursery.species.Sure;
import growingon.nursery.time.Hemisphere;
import growingon.nursery.time.MonthShares;
import growingon.nursery.time.MonthSpan;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Month;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The settings of a nursery.
 *
 * @param name of the nursery
 * @param hemisphere which half of the world
 * @param seasonStart first month of a season
 * @param currency plan currency
 * @param exchangeRates plan currency for one unit of each foreign currency
 * @param hourlyRate cost of an hour of work
 * @param paidShare share of hours paid in cash
 * @param hoursAvailable hours available in each month, January first; empty if not stated
 * @param discountRate a year, real
 * @param salesPattern how a season's demand falls over the months
 * @param wasteShare substrate wasted
 * @param orderLeadMonths months between ordering and need
 * @param openingCash cash at the start of the plan
 * @param lowestCash lowest cash allowed, if stated
 * @param extraCosts what more hours and room than there are would cost
 * @param winter months spent in winter places
 * @param winterGapMm gap in winter places
 * @param winterMoveMinutes minutes to move one plant, each way
 * @param secondPersonMinutes minutes a plant for which a second person is needed where it is lifted
 *     and too heavy for one, at most those of the job
 * @param girthBaseFactor trunk above the flare over trunk at the girth's height
 * @param labourSpread coefficient of variation of minutes, for chances
 * @param exchangeSpread coefficient of variation of exchange rates from season to season, for
 *     chances
 * @param yearEnd last month of the business year, for which the stock is valued
 * @param sellingCostShare share of the receipts of a sale that selling costs
 * @param minutesASale minutes of work to sell one plant, where its place does not say otherwise
 * @param lotSpread coefficient of variation of growth between lots, beyond that of years, for
 *     chances
 * @param heeledInPerM2 plants without a pot that wait heeled in, a square metre; empty to go by
 *     their trunks
 * @param country where the nursery lies; plants of another origin stand apart
 * @param assumptionsSure how sure growth and losses are where a species says nothing, as a share
 * @param market how sure prices and demand are on average
 * @param library what the library of species must know of the nursery
 * @param writing how numbers, months and money are written
 */
@RecordBuilder
public record Settings(
    String name,
    Hemisphere hemisphere,
    Month seasonStart,
    String currency,
    Map<String, Double> exchangeRates,
    double hourlyRate,
    double paidShare,
    Optional<List<Double>> hoursAvailable,
    double discountRate,
    MonthShares salesPattern,
    double wasteShare,
    int orderLeadMonths,
    double openingCash,
    OptionalDouble lowestCash,
    ExtraCosts extraCosts,
    MonthSpan winter,
    double winterGapMm,
    double winterMoveMinutes,
    double secondPersonMinutes,
    double girthBaseFactor,
    double labourSpread,
    double exchangeSpread,
    Month yearEnd,
    double sellingCostShare,
    double minutesASale,
    double lotSpread,
    OptionalDouble heeledInPerM2,
    Optional<String> country,
    double assumptionsSure,
    MarketSure market,
    LibrarySite library,
    Writing writing)
    implements SettingsBuilder.With {
  /** Spread of minutes, where nothing is said. */
  public static final double USUAL_LABOUR_SPREAD = 0.1;

  /** Substrate wasted, where nothing is said. */
  public static final double USUAL_WASTE = 0.05;

  /** Months between ordering and need, where nothing is said. */
  public static final int USUAL_ORDER_LEAD_MONTHS = 1;

  /** Minutes to move a plant to its winter place, where nothing is said. */
  public static final double USUAL_WINTER_MOVE_MINUTES = 1;

  /** Trunk above the flare over trunk at the height of the girth, where nothing is said. */
  public static final double USUAL_GIRTH_BASE_FACTOR = 1.25;

  /** Minutes a plant for which a second person lifts, where nothing is said. */
  public static final double USUAL_SECOND_PERSON_MINUTES = 2;

  /** Spread of growth between lots, where nothing is said. */
  public static final double USUAL_LOT_SPREAD = 0.08;

  public Settings {
    Check.named(name, "the nursery");
    Objects.requireNonNull(hemisphere);
    Objects.requireNonNull(seasonStart);
    Check.named(currency, "the currency");
    exchangeRates = Map.copyOf(exchangeRates);
    hoursAvailable = hoursAvailable.map(List::copyOf);
    hoursAvailable.ifPresent(
        hours -> Check.that(hours.size() == 12, "hours are twelve numbers", hours.size()));
    Check.notNegative(hourlyRate, "hourly rate");
    Check.share(paidShare, "share of hours paid");
    Check.that(discountRate > -1, "a discount rate is above -100 %", discountRate);
    Objects.requireNonNull(salesPattern);
    Check.notNegative(wasteShare, "waste");
    Check.notNegative(orderLeadMonths, "order lead months");
    Objects.requireNonNull(lowestCash);
    Objects.requireNonNull(extraCosts);
    Objects.requireNonNull(winter);
    Check.notNegative(winterGapMm, "winter gap");
    Check.notNegative(winterMoveMinutes, "minutes of a winter move");
    Check.positive(girthBaseFactor, "girth base factor");
    Check.notNegative(labourSpread, "labour spread");
    Check.notNegative(exchangeSpread, "exchange rate spread");
    Objects.requireNonNull(yearEnd);
    Check.share(sellingCostShare, "selling cost");
    Check.notNegative(secondPersonMinutes, "minutes of a second person");
    Check.notNegative(minutesASale, "minutes a sale");
    Check.notNegative(lotSpread, "lot spread");
    Check.positive(heeledInPerM2.orElse(1), "plants heeled in a square metre");
    Objects.requireNonNull(country);
    Check.that(
        assumptionsSure > 0 && assumptionsSure <= 1,
        "how sure assumptions are must be more than 0 and at most 1",
        assumptionsSure);
    Objects.requireNonNull(market);
    Objects.requireNonNull(library);
    Objects.requireNonNull(writing);
  }

  /** Settings that so far have their usual values. */
  public static SettingsBuilder named(String name) {
    return SettingsBuilder.builder()
        .name(name)
        .exchangeRates(Map.of())
        .paidShare(1)
        .salesPattern(MonthShares.EVEN)
        .wasteShare(USUAL_WASTE)
        .orderLeadMonths(USUAL_ORDER_LEAD_MONTHS)
        .extraCosts(ExtraCosts.NONE)
        .winterMoveMinutes(USUAL_WINTER_MOVE_MINUTES)
        .secondPersonMinutes(USUAL_SECOND_PERSON_MINUTES)
        .girthBaseFactor(USUAL_GIRTH_BASE_FACTOR)
        .labourSpread(USUAL_LABOUR_SPREAD)
        .lotSpread(USUAL_LOT_SPREAD)
        .assumptionsSure(Sure.USUAL)
        .market(MarketSure.KNOWN)
        .library(LibrarySite.USUAL)
        .writing(Writing.USUAL);
  }
}
