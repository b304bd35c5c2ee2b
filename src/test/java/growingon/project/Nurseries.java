package growingon.project;

import growingon.nursery.Nursery;
import growingon.nursery.Plan;
import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Demand;
import growingon.nursery.market.ExtraCosts;
import growingon.nursery.market.Grade;
import growingon.nursery.market.HorizonValue;
import growingon.nursery.market.Ladder;
import growingon.nursery.market.MarketSure;
import growingon.nursery.market.OtherCash;
import growingon.nursery.market.Quality;
import growingon.nursery.market.QualityRule;
import growingon.nursery.place.Care;
import growingon.nursery.place.LiftFrom;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.route.Route;
import growingon.nursery.route.Step;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.nursery.supply.Component;
import growingon.nursery.supply.Material;
import growingon.nursery.supply.Mix;
import growingon.nursery.supply.Pot;
import growingon.nursery.supply.PotShape;
import growingon.nursery.time.Hemisphere;
import growingon.nursery.time.MonthShares;
import growingon.nursery.time.MonthSpan;
import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * A nursery to be built up in a test. It starts bare: one ladder of one grade "any" from 1 mm, one
 * species "ash" that grows 6 mm a year, no losses, no places, no demand.
 */
public final class Nurseries {
  public static final YearMonth NOV_2026 = YearMonth.of(2026, 11);

  private final Map<String, Species> species = new LinkedHashMap<>();
  private final Map<String, Ladder> ladders = new LinkedHashMap<>();
  private final Map<Quality, QualityRule> qualities = new EnumMap<>(Quality.class);
  private final Map<String, Route> routes = new LinkedHashMap<>();
  private final Map<String, Pot> pots = new LinkedHashMap<>();
  private final Map<String, Component> components = new LinkedHashMap<>();
  private final Map<String, Mix> mixes = new LinkedHashMap<>();
  private final Map<String, Material> materials = new LinkedHashMap<>();
  private final Map<String, Place> places = new LinkedHashMap<>();
  private double exchangeSpread;
  private final List<Demand> demand = new ArrayList<>();
  private final List<Care> care = new ArrayList<>();
  private final List<OtherCash> otherCash = new ArrayList<>();
  private final List<Lot> lots = new ArrayList<>();
  private YearMonth firstMonth = NOV_2026;
  private int seasons = 3;
  private int slices = 64;
  private HorizonValue horizonValue = HorizonValue.NOTHING;
  private Month seasonStart = Month.NOVEMBER;
  private double hourlyRate;
  private double paidShare = 1;
  private Optional<List<Double>> hours = Optional.empty();
  private double discountRate;
  private double openingCash;
  private OptionalDouble lowestCash = OptionalDouble.empty();
  private ExtraCosts extraCosts = ExtraCosts.NONE;
  private double waste;
  private int leadMonths = 1;
  private MonthShares salesPattern = MonthShares.EVEN;
  private double winterGap;
  private double winterMinutes = 1;
  private double secondPerson = 2;
  private double sellingCost;
  private double minutesASale;
  private double lotSpread;
  private MarketSure market = MarketSure.KNOWN;
  private double labourSpread;

  private Nurseries() {}

  /** The bare nursery. */
  public static Nurseries bare() {
    Nurseries bare = new Nurseries();
    bare.ladder("one", new Grade("any", 1, 1, 0, 12));
    bare.species(bareSpecies("ash", "one"));
    bare.quality(Quality.FIRST, 1, true);
    bare.quality(Quality.SECOND, 0.6, true);
    bare.quality(Quality.THIRD, 0.2, false);
    bare.route("none");
    return bare;
  }

  /**
   * A small nursery at work: two ladders, three species (one wintering in a tunnel), two routes
   * with potting, sorting, culls, windows and repotting, demand with and without units, care,
   * places of three kinds and money. Lots are added by the test.
   */
  public static Nurseries working() {
    Nurseries n = bare();
    n.ladder(
        "patio trees",
        new Grade("started", 1, 15, 6, 3),
        new Grade("branched", 2, 25, 24, 12),
        new Grade("specimen", 3, 40, 48, 12));
    n.species(workingSpecies("maple", 55, 0.35, Optional.empty()));
    n.species(workingSpecies("elm", 70, 0.25, Optional.of("tunnel")));
    n.species(workingSpecies("larch", 45, 0.45, Optional.empty()));
    n.component(new Component("bark", 60, 7, 120, 0.4));
    n.component(new Component("grit", 20, 5, 0, 1.5));
    n.mix(new Mix("training mix", Map.of("bark", 3.0, "grit", 2.0), 0.1, 0.1));
    n.material(new Material("wire", "m", 50, 12, 20, 0.25));
    n.pot(roundPot("7 litre")).pot(litrePot("15 litre", 15, 300));
    n.place(place("bench", PlaceKind.BENCH, 40, 0.8, 12));
    n.place(place("ground", PlaceKind.STANDING_GROUND, 90, 0.7, 3));
    n.place(place("tunnel", PlaceKind.TUNNEL, 15, 0.9, 20));
    n.place(place("corner", PlaceKind.QUARANTINE, 6, 1, 5));
    n.route(
        "field tree",
        Steps.onArrival("reduce and pot")
            .minutes(12)
            .pot("7 litre", "training mix")
            .ball(0.5, 6)
            .loss(0.04)
            .cull(0.02)
            .sort()
            .rootWork()
            .trainingStarts()
            .place("bench")
            .gap(60)
            .material("wire", 1.5)
            .build(),
        Steps.in("wire", Month.MAY, 1).to(Month.JULY).minutes(8).material("wire", 2).build(),
        Steps.once("pot on", Month.MARCH, 30)
            .minutes(15)
            .pot("15 litre", "training mix")
            .place("ground")
            .gap(150)
            .build(),
        Steps.every("prune", 1, Month.AUGUST).minutes(3).build());
    n.route(
        "liner",
        Steps.in("pot", Month.MARCH, 0)
            .to(Month.APRIL)
            .minutes(5)
            .pot("7 litre", "training mix")
            .loss(0.02)
            .trainingStarts()
            .place("ground")
            .build(),
        Steps.after("tie in", 4, "pot").minutes(2).build(),
        Steps.every("repot", 3, Month.MARCH).minutes(9).pot("7 litre", "training mix").build());
    n.demand(demandRow("patio trees", "started", OptionalDouble.of(60), 40));
    n.demand(demandRow("patio trees", "branched", OptionalDouble.of(30), 90));
    n.demand(demandRow("patio trees", "specimen", OptionalDouble.empty(), 220));
    n.demand(
        new Demand(
            Optional.of("elm"),
            "patio trees",
            "started",
            Optional.empty(),
            new MonthSpan(3, 6),
            OptionalDouble.of(20),
            48,
            1.5,
            0,
            0));
    n.care(new Care(Optional.empty(), new MonthSpan(4, 9), 2, 0.05));
    n.labour(15, 0.6).hoursAvailable(60).discountRate(0.06).openingCash(5000).waste(0.05);
    return n.winter(40, 1.5).seasons(6);
  }

  private static Species workingSpecies(
      String name, double finalMm, double rate, Optional<String> winterPlace) {
    return Species.named(name)
        .ladder("patio trees")
        .usualCondition("pot")
        .growth(Map.of("pot", new Curve.Logistic(finalMm, rate)))
        .growthMonths(MonthShares.of(0, 0, 2, 10, 20, 22, 20, 14, 8, 4, 0, 0))
        .firstYearLoss(0.08)
        .laterLoss(0.03)
        .lossMonths(MonthShares.of(12, 12, 10, 8, 6, 8, 10, 10, 6, 6, 6, 6))
        .winterPlace(winterPlace)
        .build();
  }

  /** A species that grows 6 mm in a full year, loses nothing, and knows neither check nor limit. */
  public static Species bareSpecies(String name, String ladder) {
    return Species.named(name)
        .ladder(ladder)
        .usualCondition("pot")
        .growth(Map.of("pot", new Curve.Steady(6, Double.POSITIVE_INFINITY)))
        .vigourSpread(0)
        .yearSpread(0)
        .lossSpread(0)
        .checkFirstYear(1)
        .checkSecondYear(1)
        .potBoundMonths(1200)
        .potBoundFactor(1)
        .build();
  }

  /** How sure growth and losses of every species here are, as a share. */
  public Nurseries sure(double sure) {
    species.replaceAll(
        (name, each) ->
            each.withSure(
                new Sure(
                    each.growth().keySet().stream()
                        .collect(Collectors.toMap(condition -> condition, condition -> sure)),
                    sure,
                    sure)));
    return this;
  }

  public Nurseries market(MarketSure sure) {
    market = sure;
    return this;
  }

  public Nurseries species(Species each) {
    species.put(each.name(), each);
    return this;
  }

  public Nurseries ladder(String name, Grade... grades) {
    ladders.put(name, new Ladder(name, List.of(grades)));
    return this;
  }

  public Nurseries quality(Quality quality, double priceShare, boolean potted) {
    qualities.put(quality, new QualityRule(priceShare, potted));
    return this;
  }

  public Nurseries route(String name, Step... steps) {
    routes.put(name, new Route(name, List.of(steps)));
    return this;
  }

  public Nurseries pot(Pot pot) {
    pots.put(pot.name(), pot);
    return this;
  }

  /** A round pot: 200 mm top, 160 mm base, 180 mm high, one a pack. */
  public static Pot roundPot(String name) {
    return Pot.named(name, PotShape.ROUND)
        .topMm(200)
        .baseMm(160)
        .heightMm(180)
        .widthMm(200)
        .fillShare(0.9)
        .price(2)
        .emptyKg(0.2)
        .build();
  }

  /** A pot that holds exactly the litres stated when filled. */
  public static Pot litrePot(String name, double litres, double topMm) {
    return Pot.named(name, PotShape.LITRES)
        .topMm(topMm)
        .baseMm(topMm)
        .heightMm(topMm)
        .widthMm(topMm)
        .statedLitres(OptionalDouble.of(litres))
        .fillShare(1)
        .price(2)
        .build();
  }

  public Nurseries component(Component component) {
    components.put(component.name(), component);
    return this;
  }

  public Nurseries mix(Mix mix) {
    mixes.put(mix.name(), mix);
    return this;
  }

  public Nurseries material(Material material) {
    materials.put(material.name(), material);
    return this;
  }

  public Nurseries place(Place place) {
    places.put(place.name(), place);
    return this;
  }

  /** A place of a kind, all usable, free of cost. */
  public static Place place(String name, PlaceKind kind, double squareMetres) {
    return place(name, kind, squareMetres, 1, 0);
  }

  public static Place place(
      String name, PlaceKind kind, double squareMetres, double usable, double costPerM2Year) {
    return Place.named(name, kind)
        .squareMetres(squareMetres)
        .usableShare(usable)
        .costPerM2Year(costPerM2Year)
        .liftFrom(LiftFrom.BENCH)
        .build();
  }

  public Nurseries demand(Demand row) {
    demand.add(row);
    return this;
  }

  /** All that is ready of a grade sells all year at a price. */
  public Nurseries sellsAll(String ladder, String grade, double price) {
    return demand(demandRow(ladder, grade, OptionalDouble.empty(), price));
  }

  public static Demand demandRow(String ladder, String grade, OptionalDouble units, double price) {
    return new Demand(
        Optional.empty(),
        ladder,
        grade,
        Optional.empty(),
        MonthSpan.ALL_YEAR,
        units,
        price,
        0,
        0,
        0);
  }

  /**
   * Five a year of the grade "any" of the ladder "one", at 10, of which a draw has others.
   *
   * @param species empty for all
   */
  public static Demand uncertainRow(
      Optional<String> species, double unitsSpread, double priceSpread) {
    return new Demand(
        species,
        "one",
        "any",
        Optional.empty(),
        MonthSpan.ALL_YEAR,
        OptionalDouble.of(5),
        10,
        0,
        unitsSpread,
        priceSpread);
  }

  public Nurseries withoutDemand() {
    demand.clear();
    return this;
  }

  public Nurseries care(Care row) {
    care.add(row);
    return this;
  }

  public Nurseries otherCash(OtherCash row) {
    otherCash.add(row);
    return this;
  }

  public Nurseries lot(Lot lot) {
    lots.add(lot);
    return this;
  }

  public Nurseries lots(List<Lot> all) {
    lots.clear();
    lots.addAll(all);
    return this;
  }

  public Nurseries firstMonth(int year, int month) {
    firstMonth = YearMonth.of(year, month);
    return this;
  }

  public Nurseries seasons(int number) {
    seasons = number;
    return this;
  }

  public Nurseries seasonStart(Month month) {
    seasonStart = month;
    return this;
  }

  public Nurseries slices(int number) {
    slices = number;
    return this;
  }

  public Nurseries horizonValue(double share) {
    horizonValue = new HorizonValue.OfListPrice(share);
    return this;
  }

  /** Unsold plants count at the end as stock does. */
  public Nurseries stockValueAtTheEnd() {
    horizonValue = new HorizonValue.StockValue();
    return this;
  }

  public Nurseries lotSpread(double spread) {
    lotSpread = spread;
    return this;
  }

  public Nurseries secondPerson(double minutes) {
    secondPerson = minutes;
    return this;
  }

  public Nurseries selling(double costShare, double minutes) {
    sellingCost = costShare;
    minutesASale = minutes;
    return this;
  }

  public Nurseries labour(double rate, double paid) {
    hourlyRate = rate;
    paidShare = paid;
    return this;
  }

  public Nurseries hoursAvailable(double eachMonth) {
    hours = Optional.of(Collections.nCopies(12, eachMonth));
    return this;
  }

  /** Hours that are there from January to December. */
  public Nurseries hoursAvailable(List<Double> byMonth) {
    hours = Optional.of(byMonth);
    return this;
  }

  public Nurseries extraCosts(double hour, double squareMetre) {
    extraCosts = new ExtraCosts(OptionalDouble.of(hour), OptionalDouble.of(squareMetre));
    return this;
  }

  public Nurseries discountRate(double rate) {
    discountRate = rate;
    return this;
  }

  public Nurseries openingCash(double amount) {
    openingCash = amount;
    return this;
  }

  public Nurseries lowestCash(double amount) {
    lowestCash = OptionalDouble.of(amount);
    return this;
  }

  public Nurseries waste(double share) {
    waste = share;
    return this;
  }

  public Nurseries leadMonths(int months) {
    leadMonths = months;
    return this;
  }

  public Nurseries salesPattern(double... weights) {
    salesPattern = MonthShares.of(weights);
    return this;
  }

  public Nurseries exchangeSpread(double spread) {
    exchangeSpread = spread;
    return this;
  }

  public Nurseries labourSpread(double spread) {
    labourSpread = spread;
    return this;
  }

  public Nurseries winter(double gapMm, double minutes) {
    winterGap = gapMm;
    winterMinutes = minutes;
    return this;
  }

  public Nursery nursery() {
    Settings settings =
        Settings.named("Test nursery")
            .hemisphere(Hemisphere.NORTH)
            .seasonStart(seasonStart)
            .currency("GBP")
            .hourlyRate(hourlyRate)
            .paidShare(paidShare)
            .hoursAvailable(hours)
            .discountRate(discountRate)
            .salesPattern(salesPattern)
            .wasteShare(waste)
            .orderLeadMonths(leadMonths)
            .openingCash(openingCash)
            .lowestCash(lowestCash)
            .extraCosts(extraCosts)
            .winter(new MonthSpan(11, 3))
            .winterGapMm(winterGap)
            .winterMoveMinutes(winterMinutes)
            .secondPersonMinutes(secondPerson)
            .girthBaseFactor(1.25)
            .labourSpread(labourSpread)
            .exchangeSpread(exchangeSpread)
            .yearEnd(seasonStart.minus(1))
            .sellingCostShare(sellingCost)
            .minutesASale(minutesASale)
            .lotSpread(lotSpread)
            .market(market)
            .build();
    return new Nursery(
        settings,
        species,
        ladders,
        qualities,
        routes,
        pots,
        components,
        mixes,
        materials,
        places,
        demand,
        care,
        otherCash);
  }

  public Scenario scenario() {
    Plan plan = new Plan("test plan", firstMonth, seasons, Map.of(), slices, 0, 1, horizonValue);
    return new Scenario(nursery(), plan, lots);
  }

  public Projection project() {
    return Projector.project(scenario());
  }
}
