package growingon.nursery;

import growingon.nursery.market.ExtraCosts;
import growingon.nursery.market.MarketSure;
import growingon.nursery.number.Writing;
import growingon.nursery.species.LibrarySite;
import growingon.nursery.species.Sure;
import growingon.nursery.time.Hemisphere;
import growingon.nursery.time.MonthShares;
import growingon.nursery.time.MonthSpan;
import java.time.Month;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The parts of {@link Settings} by name, in the units told there; what is not said has its usual
 * value.
 */
public final class SettingsBuilder {
  private String name;
  private Hemisphere hemisphere;
  private Month seasonStart;
  private String currency;
  private Map<String, Double> exchangeRates = Map.of();
  private double hourlyRate;
  private double paidShare = 1;
  private Optional<List<Double>> hoursAvailable = Optional.empty();
  private double discountRate;
  private MonthShares salesPattern = MonthShares.EVEN;
  private double wasteShare = Settings.USUAL_WASTE;
  private int orderLeadMonths = Settings.USUAL_ORDER_LEAD_MONTHS;
  private double openingCash = 0;
  private OptionalDouble lowestCash = OptionalDouble.empty();
  private ExtraCosts extraCosts = ExtraCosts.NONE;
  private MonthSpan winter;
  private double winterGapMm = 0;
  private double winterMoveMinutes = Settings.USUAL_WINTER_MOVE_MINUTES;
  private double secondPersonMinutes = Settings.USUAL_SECOND_PERSON_MINUTES;
  private double girthBaseFactor = Settings.USUAL_GIRTH_BASE_FACTOR;
  private double labourSpread = Settings.USUAL_LABOUR_SPREAD;
  private double exchangeSpread = 0;
  private Month yearEnd;
  private double sellingCostShare = 0;
  private double minutesASale = 0;
  private double lotSpread = Settings.USUAL_LOT_SPREAD;
  private OptionalDouble heeledInPerM2 = OptionalDouble.empty();
  private Optional<String> country = Optional.empty();
  private double assumptionsSure = Sure.USUAL;
  private MarketSure market = MarketSure.KNOWN;
  private LibrarySite library = LibrarySite.USUAL;
  private Writing writing = Writing.USUAL;

  SettingsBuilder(String name) {
    this.name = name;
  }

  SettingsBuilder(Settings of) {
    this.name = of.name();
    this.hemisphere = of.hemisphere();
    this.seasonStart = of.seasonStart();
    this.currency = of.currency();
    this.exchangeRates = of.exchangeRates();
    this.hourlyRate = of.hourlyRate();
    this.paidShare = of.paidShare();
    this.hoursAvailable = of.hoursAvailable();
    this.discountRate = of.discountRate();
    this.salesPattern = of.salesPattern();
    this.wasteShare = of.wasteShare();
    this.orderLeadMonths = of.orderLeadMonths();
    this.openingCash = of.openingCash();
    this.lowestCash = of.lowestCash();
    this.extraCosts = of.extraCosts();
    this.winter = of.winter();
    this.winterGapMm = of.winterGapMm();
    this.winterMoveMinutes = of.winterMoveMinutes();
    this.secondPersonMinutes = of.secondPersonMinutes();
    this.girthBaseFactor = of.girthBaseFactor();
    this.labourSpread = of.labourSpread();
    this.exchangeSpread = of.exchangeSpread();
    this.yearEnd = of.yearEnd();
    this.sellingCostShare = of.sellingCostShare();
    this.minutesASale = of.minutesASale();
    this.lotSpread = of.lotSpread();
    this.heeledInPerM2 = of.heeledInPerM2();
    this.country = of.country();
    this.assumptionsSure = of.assumptionsSure();
    this.market = of.market();
    this.library = of.library();
    this.writing = of.writing();
  }

  public SettingsBuilder hemisphere(Hemisphere value) {
    this.hemisphere = value;
    return this;
  }

  public SettingsBuilder seasonStart(Month value) {
    this.seasonStart = value;
    return this;
  }

  public SettingsBuilder currency(String value) {
    this.currency = value;
    return this;
  }

  public SettingsBuilder exchangeRates(Map<String, Double> value) {
    this.exchangeRates = value;
    return this;
  }

  public SettingsBuilder hourlyRate(double value) {
    this.hourlyRate = value;
    return this;
  }

  public SettingsBuilder paidShare(double value) {
    this.paidShare = value;
    return this;
  }

  public SettingsBuilder hoursAvailable(Optional<List<Double>> value) {
    this.hoursAvailable = value;
    return this;
  }

  public SettingsBuilder discountRate(double value) {
    this.discountRate = value;
    return this;
  }

  public SettingsBuilder salesPattern(MonthShares value) {
    this.salesPattern = value;
    return this;
  }

  public SettingsBuilder wasteShare(double value) {
    this.wasteShare = value;
    return this;
  }

  public SettingsBuilder orderLeadMonths(int value) {
    this.orderLeadMonths = value;
    return this;
  }

  public SettingsBuilder openingCash(double value) {
    this.openingCash = value;
    return this;
  }

  public SettingsBuilder lowestCash(OptionalDouble value) {
    this.lowestCash = value;
    return this;
  }

  public SettingsBuilder extraCosts(ExtraCosts value) {
    this.extraCosts = value;
    return this;
  }

  public SettingsBuilder winter(MonthSpan value) {
    this.winter = value;
    return this;
  }

  public SettingsBuilder winterGapMm(double value) {
    this.winterGapMm = value;
    return this;
  }

  public SettingsBuilder winterMoveMinutes(double value) {
    this.winterMoveMinutes = value;
    return this;
  }

  public SettingsBuilder secondPersonMinutes(double value) {
    this.secondPersonMinutes = value;
    return this;
  }

  public SettingsBuilder girthBaseFactor(double value) {
    this.girthBaseFactor = value;
    return this;
  }

  public SettingsBuilder labourSpread(double value) {
    this.labourSpread = value;
    return this;
  }

  public SettingsBuilder exchangeSpread(double value) {
    this.exchangeSpread = value;
    return this;
  }

  public SettingsBuilder yearEnd(Month value) {
    this.yearEnd = value;
    return this;
  }

  public SettingsBuilder sellingCostShare(double value) {
    this.sellingCostShare = value;
    return this;
  }

  public SettingsBuilder minutesASale(double value) {
    this.minutesASale = value;
    return this;
  }

  public SettingsBuilder lotSpread(double value) {
    this.lotSpread = value;
    return this;
  }

  public SettingsBuilder heeledInPerM2(OptionalDouble value) {
    this.heeledInPerM2 = value;
    return this;
  }

  public SettingsBuilder country(Optional<String> value) {
    this.country = value;
    return this;
  }

  public SettingsBuilder assumptionsSure(double value) {
    this.assumptionsSure = value;
    return this;
  }

  public SettingsBuilder market(MarketSure value) {
    this.market = value;
    return this;
  }

  public SettingsBuilder library(LibrarySite value) {
    this.library = value;
    return this;
  }

  public SettingsBuilder writing(Writing value) {
    this.writing = value;
    return this;
  }

  public Settings build() {
    return new Settings(
        name,
        hemisphere,
        seasonStart,
        currency,
        exchangeRates,
        hourlyRate,
        paidShare,
        hoursAvailable,
        discountRate,
        salesPattern,
        wasteShare,
        orderLeadMonths,
        openingCash,
        lowestCash,
        extraCosts,
        winter,
        winterGapMm,
        winterMoveMinutes,
        secondPersonMinutes,
        girthBaseFactor,
        labourSpread,
        exchangeSpread,
        yearEnd,
        sellingCostShare,
        minutesASale,
        lotSpread,
        heeledInPerM2,
        country,
        assumptionsSure,
        market,
        library,
        writing);
  }
}
