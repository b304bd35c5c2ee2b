package growingon.load.settings;

import growingon.load.cell.Cell.Field;
import growingon.load.cell.Cell.Fields;
import growingon.load.cell.Currency;
import growingon.load.cell.Findings;
import growingon.load.cell.Nearest;
import growingon.load.cell.NumberStyle;
import growingon.load.cell.Range;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.MonthLists;
import growingon.load.row.Row;
import growingon.load.row.Rows;
import growingon.load.source.JsonObject;
import growingon.load.source.JsonShape;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.NurseryShape;
import growingon.load.table.place.HoursTable;
import growingon.nursery.Settings;
import growingon.nursery.SettingsBuilder;
import growingon.nursery.market.ExtraCosts;
import growingon.nursery.market.MarketSure;
import growingon.nursery.number.Writing;
import growingon.nursery.species.Sure;
import growingon.nursery.time.Hemisphere;
import growingon.nursery.time.MonthShares;
import growingon.nursery.time.MonthSpan;
import growingon.problem.Where;
import growingon.problem.advice.FileAdvice;
import growingon.problem.advice.SettingsAdvice;
import growingon.problem.advice.ValueAdvice;
import java.time.Month;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The settings of a nursery, from nursery.json or from a table {@code settings}:
 *
 * <pre>
 * name    a key of nursery.json (see {@link NurseryShape}); "exchange rate EUR" for each currency;
 *         "library condition patio pot" for each growing condition that the library calls otherwise
 * value   its value; twelve numbers with semicolons between them
 * note    not read
 * </pre>
 */
public final class SettingsReader {
  private static final Heading<String> NAME = Heading.text("name").means("Which setting");
  private static final Heading<String> NOTE = Heading.text("note").means("What it means");
  public static final TableFormat FORMAT =
      TableFormat.of(
          "settings",
          NAME.needed(),
          Heading.text(JsonShape.VALUE)
              .means("What it is here; an empty one has the value in brackets")
              .needed(),
          NOTE);

  private static final String[] NEEDED = {
    NurseryShape.CURRENCY, NurseryShape.HOURLY_RATE, NurseryShape.DISCOUNT
  };

  public static final String RATE_PREFIX = "exchange rate ";
  private static final String EXAMPLE = "EUR";
  private static final Range MONTHS_AHEAD = Range.of(0, 24);

  private SettingsReader() {}

  /** The settings as one row, from whichever source there is. */
  public static Row row(
      Optional<JsonObject> json, Optional<Table> table, Where nursery, Findings findings) {
    if (json.isPresent() && table.isPresent()) {
      findings.add(FileAdvice.settingsTwice(json.get().where(), table.get().where()));
      table.get().rows().forEach(Row::fault);
    }
    Row row =
        json.map(object -> object.row(FORMAT.name(), findings))
            .or(() -> table.map(found -> gathered(found, findings)))
            .orElseGet(() -> Rows.none(FORMAT.name(), "", nursery, findings));
    boolean broken =
        json.map(JsonObject::isBroken).or(() -> table.map(t -> !t.isReadable())).orElse(false);
    return broken ? row.missesQuietly(NEEDED) : row;
  }

  private static Row gathered(Table table, Findings findings) {
    Map<String, Field> fields = new LinkedHashMap<>();
    Map<String, Field> rates = new LinkedHashMap<>();
    Map<String, Field> conditions = new LinkedHashMap<>();
    for (Row row : table.rows()) {
      row.needs(NAME);
      row.find(NAME)
          .ifPresent(
              name ->
                  SiteSettings.conditionIn(name)
                      .ifPresentOrElse(
                          condition -> put(conditions, condition, field(row), name, row),
                          () -> addTo(fields, rates, name, row)));
      row.accept(() -> row);
    }
    NumberStyle style = table.rows().stream().findFirst().map(Row::style).orElse(NumberStyle.POINT);
    if (!rates.isEmpty()) {
      fields.put(NurseryShape.EXCHANGE_RATES, new Field(new Fields(rates, 0), 0));
    }
    if (!conditions.isEmpty()) {
      fields.put(NurseryShape.LIBRARY_CONDITIONS, new Field(new Fields(conditions, 0), 0));
    }
    return JsonShape.row(FORMAT.name(), new Fields(fields, 0), "", table.where(), style, findings);
  }

  private static Field field(Row row) {
    return new Field(row.cell(JsonShape.VALUE), row.where().row());
  }

  private static void addTo(
      Map<String, Field> fields, Map<String, Field> rates, String name, Row row) {
    String key = Texts.headingKey(name);
    Field field = field(row);
    if (key.startsWith(RATE_PREFIX) && !key.equals(NurseryShape.EXCHANGE_SPREAD)) {
      put(rates, key.substring(RATE_PREFIX.length()).toUpperCase(Locale.ROOT), field, name, row);
      return;
    }
    Optional<String> known =
        keys().stream()
            .filter(
                each ->
                    Texts.headingKey(each).equals(key)
                        || Texts.headingKey(each).equals(Texts.headingKeyWithoutRemarks(name)))
            .findFirst();
    known.ifPresentOrElse(
        found -> put(fields, found, field, name, row),
        () -> row.fail(NAME, where -> SettingsAdvice.unknownSetting(where, name, nearest(name))));
  }

  /** Whoever looks for an exchange rate is told its name, however the setting was called. */
  private static Optional<String> nearest(String name) {
    List<String> words = List.of(Texts.headingKey(name).split("[ /]"));
    boolean rate = words.stream().anyMatch(word -> word.startsWith("rate"));
    Optional<String> currency =
        words.stream().flatMap(word -> Currency.inUse(word).stream()).findFirst();
    boolean exchange = words.contains("exchange") || (rate && currency.isPresent());
    return exchange
        ? Optional.of(RATE_PREFIX + currency.orElse(EXAMPLE))
        : Nearest.to(name, keys());
  }

  private static void put(
      Map<String, Field> fields, String key, Field field, String name, Row row) {
    if (fields.putIfAbsent(key, field) != null) {
      row.fail(NAME, where -> ValueAdvice.defined(where, name, key));
    }
  }

  /** Every setting but those that have a name within their name. */
  public static List<String> keys() {
    List<String> keys = new ArrayList<>(JsonShape.keys(NurseryShape.class).keySet());
    keys.remove("$schema");
    keys.remove(NurseryShape.EXCHANGE_RATES);
    keys.remove(NurseryShape.LIBRARY_CONDITIONS);
    return keys;
  }

  private static ExtraCosts extraCosts(Row row, As<Double> money) {
    return new ExtraCosts(
        As.optional(row.find(NurseryShape.EXTRA_HOUR, money)),
        As.optional(row.find(NurseryShape.EXTRA_SQUARE_METRE, money)));
  }

  static Hemisphere hemisphere(Row row) {
    return row.get(NurseryShape.HEMISPHERE, As.word(Hemisphere.class), Hemisphere.NORTH);
  }

  /** The currency of the plan; a placeholder if there is none, which is reported. */
  static String currency(Row row) {
    String currency = row.get(NurseryShape.CURRENCY, As.currency());
    return currency.isEmpty() ? Currency.UNKNOWN : currency;
  }

  /**
   * The settings of the row.
   *
   * @param name of the nursery if it states none
   */
  public static Settings read(Row row, String name, Optional<Table> hoursTable, Findings findings) {
    List<String> missing = row.missing(NEEDED);
    if (!missing.isEmpty()) {
      row.fail(where -> SettingsAdvice.missingSettings(where, missing));
    }
    Hemisphere hemisphere = hemisphere(row);
    String currency = currency(row);
    Optional<List<Double>> hours = HoursTable.read(hoursTable, row, findings);
    String stated = row.get(NurseryShape.NAME, As.NAME, name);
    double winterGap = row.get(NurseryShape.WINTER_GAP, As.number(Range.FROM_ZERO), 0.0);
    double factor =
        row.get(
            NurseryShape.GIRTH_FACTOR,
            As.number(Range.of(0.1, 10)),
            Settings.USUAL_GIRTH_BASE_FACTOR);
    Month seasonStart =
        row.get(NurseryShape.SEASON_START, As.CALENDAR_MONTH, hemisphere.usualSeasonStart());
    Writing writing = writing(row);
    SettingsBuilder made =
        Settings.named(stated.isEmpty() ? name : stated)
            .hemisphere(hemisphere)
            .seasonStart(seasonStart)
            .currency(currency)
            .exchangeRates(rates(row, currency, findings))
            .hoursAvailable(hours);
    readMoney(row, currency, made);
    made.winter(winter(row, hemisphere.usualWinter())).winterGapMm(winterGap);
    readWork(row, made);
    made.girthBaseFactor(factor == 0 ? Settings.USUAL_GIRTH_BASE_FACTOR : factor);
    readSpreads(row, made);
    made.yearEnd(row.get(NurseryShape.YEAR_END, As.CALENDAR_MONTH, seasonStart.minus(1)));
    readSelling(row, made);
    made.lotSpread(
            row.get(
                NurseryShape.LOT_SPREAD, As.percent(Range.of(0, 300)), Settings.USUAL_LOT_SPREAD))
        .heeledInPerM2(As.optional(row.find(NurseryShape.HEELED_IN, As.number(Range.OVER_ZERO))))
        .country(row.find(NurseryShape.COUNTRY, As.NAME));
    readSure(row, made);
    return made.library(SiteSettings.read(row, findings)).writing(writing).build();
  }

  private static void readMoney(Row row, String currency, SettingsBuilder into) {
    As<Double> money = As.money(currency, Range.PRICE);
    As<Double> anyMoney = As.money(currency, Range.ANY);
    into.hourlyRate(row.get(NurseryShape.HOURLY_RATE, money))
        .paidShare(row.get(NurseryShape.PAID, As.share(), 1.0))
        .discountRate(row.get(NurseryShape.DISCOUNT, As.percent(Range.of(-99, 1000))))
        .salesPattern(MonthLists.get(row, NurseryShape.SALES_PATTERN, MonthShares.EVEN))
        .wasteShare(row.get(NurseryShape.WASTE, As.percent(Range.of(0, 500)), Settings.USUAL_WASTE))
        .orderLeadMonths(
            row.get(
                NurseryShape.ORDER_LEAD, As.whole(MONTHS_AHEAD), Settings.USUAL_ORDER_LEAD_MONTHS))
        .openingCash(row.get(NurseryShape.OPENING_CASH, anyMoney, 0.0))
        .lowestCash(As.optional(row.find(NurseryShape.LOWEST_CASH, anyMoney)))
        .extraCosts(extraCosts(row, money));
  }

  private static void readWork(Row row, SettingsBuilder into) {
    into.winterMoveMinutes(
            row.get(
                NurseryShape.WINTER_MOVE,
                As.number(Range.FROM_ZERO),
                Settings.USUAL_WINTER_MOVE_MINUTES))
        .secondPersonMinutes(secondPerson(row));
  }

  private static void readSpreads(Row row, SettingsBuilder into) {
    As<Double> spread = As.percent(Range.of(0, 300));
    into.labourSpread(row.get(NurseryShape.LABOUR_SPREAD, spread, Settings.USUAL_LABOUR_SPREAD))
        .exchangeSpread(row.get(NurseryShape.EXCHANGE_SPREAD, spread, 0.0));
  }

  private static void readSelling(Row row, SettingsBuilder into) {
    into.sellingCostShare(row.get(NurseryShape.SELLING_COST, As.share(), 0.0))
        .minutesASale(row.get(NurseryShape.MINUTES_A_SALE, As.number(Range.FROM_ZERO), 0.0));
  }

  private static void readSure(Row row, SettingsBuilder into) {
    into.assumptionsSure(row.get(NurseryShape.ASSUMPTIONS_SURE, As.sure(), Sure.USUAL))
        .market(
            new MarketSure(
                row.get(NurseryShape.PRICES_SURE, As.sure(), 1.0),
                row.get(NurseryShape.DEMAND_SURE, As.sure(), 1.0)));
  }

  /** Looked for, not got: how a report is written is no assumption of its plan. */
  private static Writing writing(Row row) {
    Writing usual = Writing.USUAL;
    return new Writing(
        row.find(NurseryShape.NUMBER_STYLE, As.word(Writing.Digits.class)).orElse(usual.digits()),
        row.find(NurseryShape.DATE_STYLE, As.word(Writing.Days.class)).orElse(usual.days()),
        row.find(NurseryShape.CURRENCY_SIGN, As.word(Writing.Sign.class)).orElse(usual.sign()));
  }

  /** The minutes under their name, or under the older one. */
  private static double secondPerson(Row row) {
    As<Double> minutes = As.number(Range.FROM_ZERO);
    boolean twice = row.has(NurseryShape.SECOND_PERSON) && row.has(NurseryShape.LIFT_MINUTES);
    if (twice) {
      row.fail(
          NurseryShape.LIFT_MINUTES,
          where ->
              ValueAdvice.defined(where, NurseryShape.LIFT_MINUTES, NurseryShape.SECOND_PERSON));
    }
    return row.has(NurseryShape.LIFT_MINUTES)
        ? row.get(NurseryShape.LIFT_MINUTES, minutes)
        : row.get(NurseryShape.SECOND_PERSON, minutes, Settings.USUAL_SECOND_PERSON_MINUTES);
  }

  private static MonthSpan winter(Row row, MonthSpan usual) {
    Month from = row.get(NurseryShape.WINTER_FROM, As.CALENDAR_MONTH, Month.of(usual.from()));
    Month to = row.get(NurseryShape.WINTER_TO, As.CALENDAR_MONTH, Month.of(usual.to()));
    return new MonthSpan(from.getValue(), to.getValue());
  }

  private static Map<String, Double> rates(Row row, String currency, Findings findings) {
    Map<String, Double> rates = new LinkedHashMap<>();
    if (row.cell(NurseryShape.EXCHANGE_RATES) instanceof Fields fields) {
      Row each =
          JsonShape.row(
              FORMAT.name(),
              fields,
              NurseryShape.EXCHANGE_RATES,
              row.where(),
              row.style(),
              findings);
      for (String typed : each.headings()) {
        rate(each, typed, currency).ifPresent(rate -> rates.put(Currency.code(typed).get(), rate));
      }
    }
    return rates;
  }

  private static Optional<Double> rate(Row row, String typed, String currency) {
    if (Currency.code(typed).isEmpty()) {
      row.fail(typed, where -> SettingsAdvice.notACurrency(where, typed));
      return Optional.empty();
    }
    Optional<Double> rate = row.find(typed, As.number(Range.OVER_ZERO));
    rate.ifPresent(
        value ->
            row.remark(typed, where -> SettingsAdvice.exchangeRate(where, typed, value, currency)));
    return rate;
  }
}
