package growingon.load.table;

import growingon.load.row.Row;
import growingon.load.source.Key;
import java.util.List;
import java.util.Map;

/**
 * The keys of nursery.json, and the names of the `settings` sheet that may stand in its place.
 * Months are numbers 1 to 12 or words. All amounts are without VAT. The components are looked at,
 * never filled: values go through {@link Row}, like those of tables.
 */
public record NurseryShape(
    @Key(value = "$schema", says = "JSON Schema of this file, for editors") String schema,
    @Key(value = NAME, says = "Name of the nursery [the folder's name]") String name,
    @Key(
            value = HEMISPHERE,
            says = "Half of the world; mirrors the shipped month shares [north]",
            words = {"north", "south"})
        String hemisphere,
    @Key(
            value = SEASON_START,
            says = "First month of a season [10 north, 4 south]",
            least = 1,
            most = 12)
        Integer seasonStart,
    @Key(value = CURRENCY, says = "Currency of the plan, as GBP", needed = true) String currency,
    @Key(
            value = EXCHANGE_RATES,
            says = "Plan currency for ONE unit of each foreign currency [none]",
            least = 0)
        Map<String, Double> exchangeRates,
    @Key(value = HOURLY_RATE, says = "Cost of an hour of work", needed = true, least = 0)
        Double hourlyRate,
    @Key(value = PAID, says = "Share of hours paid in cash, % [100]", least = 0, most = 100)
        Double paid,
    @Key(
            value = HOURS_A_WEEK,
            says = "Hours available a week, the same all year, if there is no table hours [none]",
            least = 0)
        Double hoursAWeek,
    @Key(value = DISCOUNT, says = "Discount rate, % a year, real", needed = true, least = -99)
        Double discount,
    @Key(
            value = SALES_PATTERN,
            says =
                "How a season's sales fall over the months: 12 shares or percentages, January first [even]",
            items = 12,
            least = 0)
        List<Double> salesPattern,
    @Key(value = WASTE, says = "Substrate wasted, % [5]", least = 0) Double waste,
    @Key(value = ORDER_LEAD, says = "Months between ordering and need [1]", least = 0, most = 24)
        Integer orderLead,
    @Key(value = OPENING_CASH, says = "Cash at the start of the plan [0]") Double openingCash,
    @Key(value = LOWEST_CASH, says = "Lowest cash allowed, negative for an overdraft [none]")
        Double lowestCash,
    @Key(
            value = EXTRA_HOUR,
            says = "What an hour more than there is would cost, for buying [none to be had]",
            least = 0)
        Double extraHour,
    @Key(
            value = EXTRA_SQUARE_METRE,
            says =
                "What a square metre more than there is would cost a month, for buying [none to be had]",
            least = 0)
        Double extraSquareMetre,
    @Key(
            value = WINTER_FROM,
            says = "First month in winter places [11 north, 5 south]",
            least = 1,
            most = 12)
        Integer winterFrom,
    @Key(
            value = WINTER_TO,
            says = "Last month in winter places [3 north, 9 south]",
            least = 1,
            most = 12)
        Integer winterTo,
    @Key(value = WINTER_GAP, says = "Gap in winter places, mm [0]", least = 0) Double winterGap,
    @Key(value = WINTER_MOVE, says = "Minutes to move one plant, each way [1]", least = 0)
        Double winterMove,
    @Key(
            value = SECOND_PERSON,
            says =
                "Minutes a plant of a second person where a job lifts what is too heavy for one [2]",
            least = 0)
        Double secondPerson,
    @Key(value = LIFT_MINUTES, says = "Older name of: second person minutes", least = 0)
        Double liftMinutes,
    @Key(
            value = GIRTH_FACTOR,
            says = "Trunk above the root flare over trunk at the height of the girth [1.25]",
            least = 0.1,
            most = 10)
        Double girthFactor,
    @Key(value = LABOUR_SPREAD, says = "Spread of minutes, %, for chances [10]", least = 0)
        Double labourSpread,
    @Key(
            value = EXCHANGE_SPREAD,
            says = "Spread of exchange rates from season to season, %, for chances [0]",
            least = 0)
        Double exchangeSpread,
    @Key(
            value = YEAR_END,
            says =
                "Last month of the business year, when stock is valued [month before the season]",
            least = 1,
            most = 12)
        Integer yearEnd,
    @Key(
            value = SELLING_COST,
            says = "What selling costs, % of the receipts [0]",
            least = 0,
            most = 100)
        Double sellingCost,
    @Key(
            value = MINUTES_A_SALE,
            says = "Minutes of work to sell one plant, where its place says no others [0]",
            least = 0)
        Double minutesASale,
    @Key(
            value = LOT_SPREAD,
            says = "Spread of growth between lots, beyond that of years, %, for chances [8]",
            least = 0)
        Double lotSpread,
    @Key(
            value = HEELED_IN,
            says =
                "Plants without a pot that wait heeled in, a square metre [60 under 12 mm, 20 to 30 mm, 8 above]",
            least = 0)
        Double heeledIn,
    @Key(
            value = COUNTRY,
            says = "Country of the nursery: plants of another origin stand apart a month [none]")
        String country,
    @Key(
            value = ASSUMPTIONS_SURE,
            says =
                "How sure growth and losses are where a species does not say, %: 80 is a good guess, 50 a book's figure, 100 is taken as known [80]",
            least = 1,
            most = 100)
        Double assumptionsSure,
    @Key(
            value = PRICES_SURE,
            says =
                "How sure all prices are on average over the seasons, %: 100 is taken as right [100]",
            least = 1,
            most = 100)
        Double pricesSure,
    @Key(
            value = DEMAND_SURE,
            says =
                "How sure all units are on average over the seasons, %: 100 is taken as right [100]",
            least = 1,
            most = 100)
        Double demandSure,
    @Key(
            value = USUAL_VALUES,
            says = "Edition of the usual values that this nursery was laid out with [none]")
        String usualValues,
    @Key(
            value = CLIMATE,
            says = "Climate of the nursery, for what the library of species says [temperate]",
            words = {"temperate", "mediterranean", "boreal", "subtropical", "tropical", "dry"})
        String climate,
    @Key(
            value = SITE_SPEED,
            says = "Factor on all growth taken from the library of species [1]",
            least = 0.1,
            most = 10)
        Double siteSpeed,
    @Key(
            value = SITE_SPEED_FROM,
            says = "Number of species measured here on which the site speed rests [0]",
            least = 0)
        Integer siteSpeedFrom,
    @Key(
            value = LIBRARY_CONDITIONS,
            says =
                "What growing conditions of other names are in the library of species: field, open bed, nursery pot, small pot, training pot or shallow pot [none]")
        Map<String, String> libraryConditions,
    @Key(
            value = NUMBER_STYLE,
            says =
                "How numbers are written in reports; tables and figures.json stay plain [1,234.5]",
            words = {"1,234.5", "1.234,5", "1 234,5"})
        String numberStyle,
    @Key(
            value = DATE_STYLE,
            says =
                "How months are written in reports: Mar 2027, 2027-03, 03/2027 or 03.2027 [in words]",
            words = {"in words", "year first", "slashes", "points"})
        String dateStyle,
    @Key(
            value = CURRENCY_SIGN,
            says = "Where the currency stands in reports: EUR 12 or 12 EUR [before]",
            words = {"before", "behind"})
        String currencySign) {
  public static final String NAME = "name";
  public static final String HEMISPHERE = "hemisphere";
  public static final String SEASON_START = "season start month";
  public static final String CURRENCY = "currency";
  public static final String EXCHANGE_RATES = "exchange rates";
  public static final String HOURLY_RATE = "hourly rate";
  public static final String PAID = "hours paid in cash %";
  public static final String HOURS_A_WEEK = "hours a week";
  public static final String DISCOUNT = "discount rate % a year";
  public static final String SALES_PATTERN = "month pattern of sales";
  public static final String WASTE = "waste %";
  public static final String ORDER_LEAD = "order lead months";
  public static final String OPENING_CASH = "opening cash";
  public static final String LOWEST_CASH = "lowest cash allowed";
  public static final String EXTRA_HOUR = "extra hour costs";
  public static final String EXTRA_SQUARE_METRE = "extra square metre costs a month";
  public static final String WINTER_FROM = "winter from";
  public static final String WINTER_TO = "winter to";
  public static final String WINTER_GAP = "winter gap mm";
  public static final String WINTER_MOVE = "minutes a winter move";
  public static final String GIRTH_FACTOR = "girth base factor";
  public static final String LABOUR_SPREAD = "labour spread %";
  public static final String EXCHANGE_SPREAD = "exchange rate spread %";
  public static final String YEAR_END = "year end month";
  public static final String SELLING_COST = "selling cost %";
  public static final String SECOND_PERSON = "second person minutes";
  public static final String LIFT_MINUTES = "lift minutes";
  public static final String MINUTES_A_SALE = "minutes a sale";
  public static final String LOT_SPREAD = "lot spread %";
  public static final String HEELED_IN = "heeled in per m2";
  public static final String COUNTRY = "country";
  public static final String ASSUMPTIONS_SURE = "assumptions sure %";
  public static final String PRICES_SURE = "prices sure %";
  public static final String DEMAND_SURE = "demand sure %";
  static final String USUAL_VALUES = "usual values of";
  public static final String CLIMATE = "climate";
  public static final String SITE_SPEED = "site speed";
  public static final String SITE_SPEED_FROM = "site speed from";
  public static final String NUMBER_STYLE = "number style";
  public static final String DATE_STYLE = "date style";
  public static final String CURRENCY_SIGN = "currency sign";
  public static final String LIBRARY_CONDITIONS = "library conditions";
}
