package growingon.load;

import growingon.nursery.Assumption;
import growingon.nursery.Component;
import growingon.nursery.Curve;
import growingon.nursery.Demand;
import growingon.nursery.Form;
import growingon.nursery.Grade;
import growingon.nursery.Habit;
import growingon.nursery.Hemisphere;
import growingon.nursery.HorizonValue;
import growingon.nursery.Ladder;
import growingon.nursery.Layout;
import growingon.nursery.LiftFrom;
import growingon.nursery.Lot;
import growingon.nursery.Mix;
import growingon.nursery.MonthShares;
import growingon.nursery.MonthSpan;
import growingon.nursery.Nursery;
import growingon.nursery.Offer;
import growingon.nursery.Papers;
import growingon.nursery.Place;
import growingon.nursery.PlaceKind;
import growingon.nursery.Plan;
import growingon.nursery.Pot;
import growingon.nursery.PotShape;
import growingon.nursery.Potting;
import growingon.nursery.Quality;
import growingon.nursery.QualityRule;
import growingon.nursery.QualityShares;
import growingon.nursery.Quick;
import growingon.nursery.Route;
import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.nursery.Spacing;
import growingon.nursery.Species;
import growingon.nursery.Standing;
import growingon.nursery.Step;
import growingon.nursery.Trunks;
import growingon.nursery.When;
import growingon.problem.Advice;
import java.time.Month;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * The nursery, plan and lot that a quick sheet stands for: one lot bought in the first month,
 * reduced and potted on arrival, sold as it reaches one size. What the sheet does not say is common
 * practice, no source.
 */
final class QuickScenario {
  private static final String CONDITION = "pot";
  private static final String LADDER = "size";
  private static final String MIX = "mix";
  private static final String GRIT = "grit";
  private static final String BARK = "composted bark";
  private static final String ROUTE = "reduce and pot";
  private static final String GROUND = "free ground";

  private static final double BAG_LITRES = 50;
  private static final double GRIT_KG = 1.5;
  private static final double BARK_KG = 0.6;
  private static final double FILL = 0.9;
  private static final double WASTE = 0.05;
  private static final double HEIGHT_LEFT_MM = 600;
  private static final double YEAR_SPREAD = 0.1;
  private static final double LOSS_SPREAD = 0.25;
  private static final double LABOUR_SPREAD = 0.1;
  private static final int SLICES = 64;
  private static final Range PLAIN = Range.FROM_ZERO;
  private static final Range FACTOR = Range.of(0, 2);

  private final Row row;
  private final String plan;

  private final String species;
  private final int plants;
  private final String currency;
  private final double price;
  private final double carriage;
  private final YearMonth arrival;
  private final QualityShares quality;
  private final double girthFactor;
  private final Trunks trunks;
  private final double litres;
  private final double soldAt;
  private final double sellingPrice;
  private final Optional<Double> freeM2;
  private final Habit habit;
  private final Hemisphere hemisphere;
  private final Form form;
  private final int seasons;
  private final Pot pot;

  /** Reads the ten cells and what the others depend on. */
  QuickScenario(Row row, String plan) {
    this.row = row;
    this.plan = plan;
    checkFilled(row);
    species = row.get(QuickLines.SPECIES, As.NAME);
    plants = row.get(QuickLines.HOW_MANY, As.whole(Range.of(1, Quantities.PLANTS.most())));
    currency = currency();
    price = money(QuickLines.PRICE);
    carriage = money(QuickLines.CARRIAGE);
    arrival = row.get(QuickLines.ARRIVAL, As.MONTH);
    girthFactor = number(QuickLines.GIRTH_FACTOR, Range.of(0.1, 10));
    double spread = percent(QuickLines.TRUNK_SPREAD, 200);
    trunks = row.get(QuickLines.TRUNK, QuickCells.trunk(spread, girthFactor));
    quality =
        row.get(QuickLines.QUALITY, QuickCells.quality(percent(QuickLines.FIRSTS_OF_USABLE, 100)));
    litres = row.get(QuickLines.POT_LITRES, As.number(Range.OVER_ZERO));
    soldAt = row.get(QuickLines.SOLD_AT, As.number(Range.OVER_ZERO));
    sellingPrice = money(QuickLines.SELLING_PRICE);
    freeM2 = row.find(QuickLines.FREE_M2, As.number(Range.OVER_ZERO));
    habit = row.get(QuickLines.KIND, As.word(Habit.class), QuickLines.habit(species));
    hemisphere = row.get(QuickLines.HEMISPHERE, As.word(Hemisphere.class), Hemisphere.NORTH);
    boolean dormant = DormantSeason.contains(arrival.getMonth(), hemisphere);
    form = row.get(QuickLines.FORM, As.word(Form.class), dormant ? Form.ROOT_BALL : Form.CONTAINER);
    if (!row.isFailed()) {
      LotCells.checkArrival(row, QuickLines.ARRIVAL, form, arrival, hemisphere);
    }
    seasons = whole(QuickLines.YEARS, Range.of(1, 40));
    pot = row.isFailed() ? null : pot();
  }

  /** Says in one sentence which of the ten are empty. */
  private static void checkFilled(Row row) {
    List<String> empty =
        QuickLines.TEN.stream().map(QuickLine::name).filter(line -> !row.has(line)).toList();
    row.missesQuietly(empty.toArray(String[]::new));
    if (empty.size() == 1) {
      row.fail(empty.get(0), where -> Advice.quickLinesEmpty(where, empty));
    } else if (!empty.isEmpty()) {
      row.fail(where -> Advice.quickLinesEmpty(where, empty));
    }
  }

  /** As stated, else as a sign beside a price says, else the usual one. */
  private String currency() {
    String usual =
        Stream.of(QuickLines.PRICE, QuickLines.CARRIAGE, QuickLines.SELLING_PRICE)
            .flatMap(line -> Amount.find(row.cell(line).shown(), NumberStyle.EITHER).stream())
            .flatMap(amount -> Currency.code(amount.before() + amount.behind()).stream())
            .findFirst()
            .orElse(QuickLines.get(QuickLines.CURRENCY).usual());
    return row.get(QuickLines.CURRENCY, SettingsReader.code(), usual);
  }

  private double money(String line) {
    return row.get(line, As.money(currency, Range.FROM_ZERO));
  }

  private double money(String line, double usual) {
    return row.get(line, As.money(currency, Range.FROM_ZERO), usual);
  }

  private double number(String line, Range range) {
    return row.get(line, As.number(range), usual(line));
  }

  private int whole(String line, Range range) {
    return row.get(line, As.whole(range), (int) usual(line));
  }

  private double percent(String line, double most) {
    return row.get(line, As.percent(Range.of(0, most)), usual(line) / 100);
  }

  private static double usual(String line) {
    return Double.parseDouble(QuickLines.get(line).usual());
  }

  /** The scenario; empty if a cell is missing or wrong, which is reported. */
  Optional<Scenario> scenario() {
    if (row.isFailed()) {
      return Optional.empty();
    }
    Nursery nursery = nursery();
    return row.accept(() -> new Scenario(nursery, plan(), List.of(offer().taken(plants))));
  }

  /** The question with every value that nobody typed. */
  Quick quick(boolean besideTables, List<Assumption> values) {
    List<Quick.Usual> usual =
        QuickLines.USUAL.stream()
            .filter(line -> matters(line.name()))
            .flatMap(
                line ->
                    values.stream()
                        .filter(value -> value.what().equals(line.name()))
                        .filter(value -> value.source().equals(Findings.DEFAULT))
                        .map(value -> usual(line, value)))
            .toList();
    return new Quick(
        soldAt,
        sellingPrice,
        litres,
        freeM2.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
        besideTables,
        usual);
  }

  /** Whether a usual value had any effect: some are for one way to fill in a cell only. */
  private boolean matters(String line) {
    String trunk = Texts.key(row.cell(QuickLines.TRUNK).shown());
    return switch (line) {
      case QuickLines.TRUNK_SPREAD -> trunks instanceof Trunks.Measured;
      case QuickLines.GIRTH_FACTOR -> trunk.contains("cm") || trunk.contains("girth");
      case QuickLines.FIRSTS_OF_USABLE -> QuickCells.isOneNumber(row.cell(QuickLines.QUALITY));
      default -> true;
    };
  }

  private static Quick.Usual usual(QuickLine line, Assumption value) {
    return new Quick.Usual(line.name(), value.value(), value.unit(), line.moves());
  }

  /** The lot on offer. */
  Offer offer() {
    return new Offer(
        name(),
        plants,
        currency,
        1,
        List.of(new Offer.PriceBreak(1, price)),
        1,
        OptionalInt.empty(),
        arrival,
        Optional.empty(),
        carriage,
        0,
        1,
        0,
        lot());
  }

  private String name() {
    return species + " lot";
  }

  private Lot lot() {
    return new Lot(
        name(),
        species,
        form,
        0,
        arrival,
        arrival,
        trunks,
        quality,
        Potting.NONE,
        new Standing(freeM2.map(any -> GROUND), Optional.empty(), 0, HEIGHT_LEFT_MM),
        ROUTE,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        0,
        form.liftedFromGround() ? arrival.plusMonths(LotCells.SETTLING_MONTHS) : arrival,
        0,
        false,
        0,
        Optional.empty(),
        Papers.NONE);
  }

  private Plan plan() {
    return new Plan(
        plan, arrival, seasons, Map.of(name(), plants), SLICES, 0, 1, HorizonValue.NOTHING);
  }

  private Nursery nursery() {
    return new Nursery(
        settings(),
        Map.of(species, species()),
        Map.of(LADDER, new Ladder(LADDER, List.of(grade()))),
        qualities(),
        Map.of(ROUTE, new Route(ROUTE, List.of(pottingStep(), yearlyStep()))),
        Map.of(pot.name(), pot),
        components(),
        mixes(),
        Map.of(),
        freeM2.map(m2 -> Map.of(GROUND, place(m2))).orElse(Map.of()),
        List.of(demand()),
        List.of(),
        List.of());
  }

  private Settings settings() {
    boolean north = hemisphere == Hemisphere.NORTH;
    return new Settings(
        "Quick question",
        hemisphere,
        north ? Month.OCTOBER : Month.APRIL,
        currency,
        Map.of(),
        money(QuickLines.HOURLY_RATE, usual(QuickLines.HOURLY_RATE)),
        1,
        Optional.empty(),
        percent(QuickLines.DISCOUNT, 100),
        MonthShares.EVEN,
        WASTE,
        0,
        0,
        OptionalDouble.empty(),
        north ? new MonthSpan(11, 3) : new MonthSpan(5, 9),
        0,
        0,
        Settings.USUAL_SECOND_PERSON_MINUTES,
        girthFactor,
        LABOUR_SPREAD,
        0,
        north ? Month.SEPTEMBER : Month.MARCH,
        0,
        0,
        Settings.USUAL_LOT_SPREAD,
        OptionalDouble.empty(),
        Optional.empty());
  }

  private Species species() {
    double usual =
        habit == Habit.DECIDUOUS ? QuickLines.GROWTH_DECIDUOUS_MM : QuickLines.GROWTH_EVERGREEN_MM;
    double growth = row.get(QuickLines.GROWTH, As.number(PLAIN), usual);
    return new Species(
        species,
        LADDER,
        habit,
        CONDITION,
        Map.of(CONDITION, new Curve.Steady(growth, Double.POSITIVE_INFINITY)),
        MonthLists.growth(habit, hemisphere),
        percent(QuickLines.VIGOUR_SPREAD, 300),
        YEAR_SPREAD,
        OptionalDouble.empty(),
        percent(QuickLines.FIRST_YEAR_LOSS, 100),
        percent(QuickLines.LATER_LOSS, 100),
        MonthLists.loss(habit, hemisphere),
        LOSS_SPREAD,
        number(QuickLines.CHECK_1, FACTOR),
        number(QuickLines.CHECK_2, FACTOR),
        whole(QuickLines.POT_BOUND_MONTHS, Range.of(0, 1200)),
        number(QuickLines.POT_BOUND_FACTOR, FACTOR),
        Optional.empty(),
        "");
  }

  private Grade grade() {
    return new Grade("saleable", 1, soldAt, 0, 0);
  }

  private Demand demand() {
    return new Demand(
        Optional.empty(),
        LADDER,
        grade().name(),
        Optional.empty(),
        MonthSpan.ALL_YEAR,
        OptionalDouble.empty(),
        sellingPrice,
        0,
        0,
        0);
  }

  private Map<Quality, QualityRule> qualities() {
    Map<Quality, QualityRule> rules = new LinkedHashMap<>();
    rules.put(Quality.FIRST, new QualityRule(1, true));
    rules.put(Quality.SECOND, new QualityRule(percent(QuickLines.SECOND_PRICE, 100), true));
    rules.put(Quality.THIRD, new QualityRule(0, false));
    return rules;
  }

  private Step pottingStep() {
    double minutes = number(QuickLines.POTTING, PLAIN);
    double ball = form == Form.BARE_ROOT ? 0 : QuickLines.BALL_SHARE;
    double ballLitres = row.get(QuickLines.BALL, As.share(), ball) * litres * FILL;
    Spacing spacing = new Spacing(number(QuickLines.GAP, PLAIN), OptionalDouble.empty());
    return new Step(
        ROUTE,
        new When.Arrival(),
        Optional.empty(),
        minutes,
        Optional.of(pot.name()),
        false,
        Optional.of(MIX),
        1,
        ballLitres,
        Optional.empty(),
        Optional.of(spacing),
        0,
        0,
        true,
        true,
        Step.GrowthAfter.OF_SPECIES,
        true,
        Map.of());
  }

  private Step yearlyStep() {
    Month month = hemisphere == Hemisphere.NORTH ? Month.JUNE : Month.DECEMBER;
    return new Step(
        "yearly care",
        new When.Every(1, month),
        Optional.empty(),
        number(QuickLines.YEARLY, PLAIN),
        Optional.empty(),
        false,
        Optional.empty(),
        0,
        0,
        Optional.empty(),
        Optional.empty(),
        0,
        0,
        false,
        false,
        Step.GrowthAfter.OF_SPECIES,
        false,
        Map.of());
  }

  private Pot pot() {
    return new Pot(
        "%s litre pot".formatted(Cell.Number.plain(litres)),
        PotShape.LITRES,
        PotTops.topMm(litres),
        0,
        0,
        PotTops.topMm(litres),
        OptionalDouble.of(litres),
        Optional.of(CONDITION),
        FILL,
        money(QuickLines.POT_PRICE, QuickLines.POT_PRICE_A_LITRE * litres),
        1,
        0,
        0,
        0);
  }

  private Map<String, Component> components() {
    Map<String, Component> components = new LinkedHashMap<>();
    components.put(GRIT, component(GRIT, QuickLines.GRIT_PRICE, GRIT_KG));
    components.put(BARK, component(BARK, QuickLines.BARK_PRICE, BARK_KG));
    return components;
  }

  private Component component(String name, String priceLine, double kgPerLitre) {
    double aLitre = money(priceLine, usual(priceLine));
    return new Component(name, BAG_LITRES, BAG_LITRES * aLitre, 0, kgPerLitre);
  }

  private Map<String, Mix> mixes() {
    double grit = percent(QuickLines.GRIT, 100);
    Map<String, Double> parts = new LinkedHashMap<>();
    parts.put(GRIT, grit);
    parts.put(BARK, 1 - grit);
    parts.values().removeIf(part -> part <= 0);
    double shrinkage = Mix.usualShrinkage(parts.size());
    return Map.of(MIX, new Mix(MIX, parts, shrinkage, Mix.USUAL_FIRMING));
  }

  private Place place(double squareMetres) {
    return new Place(
        GROUND,
        PlaceKind.STANDING_GROUND,
        Optional.empty(),
        squareMetres,
        1,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        money(QuickLines.M2_COST, usual(QuickLines.M2_COST)),
        Layout.SQUARE,
        LiftFrom.GROUND,
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty());
  }
}
