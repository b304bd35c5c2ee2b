package growingon.report;

import growingon.nursery.Assumption;
import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Form;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.lot.Papers;
import growingon.nursery.market.Grade;
import growingon.nursery.market.OtherCash;
import growingon.nursery.place.Care;
import growingon.nursery.place.LiftFrom;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.nursery.supply.Component;
import growingon.nursery.supply.Material;
import growingon.nursery.supply.Mix;
import growingon.nursery.supply.Pot;
import growingon.nursery.supply.PotShape;
import growingon.nursery.supply.Source;
import growingon.nursery.time.MonthShares;
import growingon.nursery.time.MonthSpan;
import growingon.plan.Planned;
import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Severity;
import growingon.problem.Where;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Steps;
import growingon.report.figures.Context;
import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * An invented nursery of six lots, one of them bought, that gives every sheet something to show: a
 * bench with a load limit, a winter tunnel, standing ground, a field lot lifted into heavy pots,
 * two ladders, seconds, kept and held-back plants, wire that comes back, and demand that is missed.
 */
public final class SmallNursery {
  public static final YearMonth FIRST = Nurseries.NOV_2026;

  private SmallNursery() {}

  public static Context context() {
    Scenario scenario = nursery().scenario();
    Inputs inputs = new Inputs(scenario, List.of(offer()), assumptions(), 5);
    return new Context(Planned.weighed(inputs), problems());
  }

  /** The context of any other nursery, without offers and problems. */
  public static Context context(Nurseries nurseries) {
    Scenario scenario = nurseries.scenario();
    Inputs inputs = new Inputs(scenario, List.of(), List.of(), 0);
    return new Context(Planned.booked(inputs), List.of());
  }

  public static Nurseries nursery() {
    Nurseries nursery = Nurseries.bare().seasons(4).labour(18, 0.5).openingCash(4000).waste(0.05);
    nursery.discountRate(0.03).leadMonths(2).winter(10, 1.5).hoursAvailable(70);
    nursery.ladder(
        "broad-leaved", new Grade("starter", 1, 14, 0, 12), new Grade("shaped", 2, 24, 18, 12));
    nursery.ladder("needled", new Grade("small", 1, 12, 0, 12), new Grade("large", 2, 20, 12, 12));
    nursery.species(species("Hornbeam", "broad-leaved", 6, Optional.of("Tunnel")));
    nursery.species(species("Ridge oak", "broad-leaved", 8, Optional.empty()));
    nursery.species(species("Larch", "needled", 5, Optional.empty()));
    stores(nursery);
    places(nursery);
    routes(nursery);
    lots(nursery);
    market(nursery);
    return nursery;
  }

  private static Species species(
      String name, String ladder, double mmAYear, Optional<String> winter) {
    return Species.named(name)
        .ladder(ladder)
        .usualCondition("pot")
        .growth(Map.of("pot", new Curve.Steady(mmAYear, Double.POSITIVE_INFINITY)))
        .growthMonths(MonthShares.of(0, 0, 2, 10, 20, 22, 20, 14, 8, 4, 0, 0))
        .firstYearLoss(0.08)
        .laterLoss(0.03)
        .potBoundFactor(0.5)
        .winterPlace(winter)
        .healthNote("Larch".equals(name) ? "Inspect for canker before moving." : "")
        .build();
  }

  private static void stores(Nurseries nursery) {
    nursery.pot(pot("3 litre", 3, 190, 0.5, 50, 60, 0.6, 0.1));
    nursery.pot(pot("15 litre", 15, 300, 3, 10, 5, 0.8, 0.6));
    nursery.component(
        new Component("bark", 60, 8.4, 200, 0.66, new Source("Fen Supplies", OptionalInt.of(3))));
    nursery.component(new Component("pumice", 40, 11.2, 0, 0.9));
    Map<String, Double> parts = new LinkedHashMap<>();
    parts.put("bark", 3.0);
    parts.put("pumice", 2.0);
    nursery.mix(new Mix("open mix", parts, 0.1, 0.1));
    nursery.mix(new Mix("bark mix", Map.of("bark", 1.0), 0, 0.1));
    nursery.material(new Material("wire", "m", 50, 12, 30, 0.4));
    nursery.material(new Material("dressing", "ml", 250, 9.5, 0, 0));
  }

  private static Pot pot(
      String name,
      double litres,
      double topMm,
      double price,
      int pack,
      double onHand,
      double reuse,
      double kg) {
    return Pot.named(name, PotShape.LITRES)
        .topMm(topMm)
        .baseMm(topMm)
        .heightMm(topMm)
        .widthMm(topMm)
        .statedLitres(OptionalDouble.of(litres))
        .fillShare(0.9)
        .price(price)
        .pack(pack)
        .onHand(onHand)
        .reuseShare(reuse)
        .emptyKg(kg)
        .build();
  }

  private static void places(Nurseries nursery) {
    nursery.place(place("Bench", PlaceKind.BENCH, 12, LiftFrom.BENCH, OptionalDouble.of(60)));
    nursery.place(place("Tunnel", PlaceKind.TUNNEL, 8, LiftFrom.GROUND, OptionalDouble.empty()));
    nursery.place(
        place("Ground", PlaceKind.STANDING_GROUND, 60, LiftFrom.GROUND, OptionalDouble.empty()));
    nursery.place(place("Field", PlaceKind.FIELD_BED, 40, LiftFrom.GROUND, OptionalDouble.empty()));
  }

  public static Place place(
      String name, PlaceKind kind, double m2, LiftFrom from, OptionalDouble kgPerM2) {
    return Place.named(name, kind)
        .squareMetres(m2)
        .usableShare(0.8)
        .kgPerM2(kgPerM2)
        .costPerM2Year(5)
        .liftFrom(from)
        .build();
  }

  private static void routes(Nurseries nursery) {
    nursery.route(
        "liners",
        Steps.in("pot on", Month.MARCH, 1)
            .to(Month.MAY)
            .minutes(6)
            .pot("3 litre", "bark mix")
            .trainingStarts()
            .build(),
        Steps.in("wire", Month.NOVEMBER, 1).minutes(12).material("wire", 1.5).build(),
        Steps.every("trim", 1, Month.DECEMBER).to(Month.JANUARY).minutes(3).build());
    nursery.route(
        "field trees",
        Steps.in("lift and pot", Month.MARCH, 1)
            .minutes(15)
            .pot("15 litre", "open mix")
            .ball(0.8, 10)
            .place("Ground")
            .gap(100)
            .loss(0.05)
            .cull(0.04)
            .sort()
            .rootWork()
            .trainingStarts()
            .material("dressing", 12)
            .build(),
        Steps.in("wire", Month.DECEMBER, 1)
            .to(Month.JANUARY)
            .minutes(25)
            .material("wire", 3)
            .build());
  }

  private static void lots(Nurseries nursery) {
    nursery.lot(
        Lots.lot("hb-liners")
            .species("Hornbeam")
            .quantity(137)
            .trunks(11, 0.15)
            .arrived(2026, 3)
            .pot("3 litre")
            .place("Bench")
            .route("liners")
            .notBefore(2027, 3)
            .unitCost(1.9)
            .build());
    nursery.lot(
        Lots.lot("hb-older")
            .species("Hornbeam")
            .quantity(61)
            .trunks(17, 0.2)
            .quality(0.7, 0.3, true)
            .arrived(2024, 3)
            .pot("3 litre")
            .place("Bench")
            .route("liners")
            .lastStep("wire")
            .kept(3)
            .hold("shaped", 0.3)
            .unitCost(6)
            .build());
    nursery.lot(
        Lots.lot("oak-field")
            .species("Ridge oak")
            .quantity(53)
            .trunks(70, 0.15)
            .quality(0.5, 0.3, false)
            .form(Form.ROOT_BALL)
            .arrived(2025, 11)
            .place("Field")
            .plantsPerM2(2)
            .route("field trees")
            .unitCost(4)
            .build());
    nursery.lot(
        Lots.lot("larch-big")
            .species("Larch")
            .quantity(24)
            .trunks(21, 0.1)
            .arrived(2024, 11)
            .pot("15 litre")
            .place("Ground")
            .gap(80)
            .trainingSince(2025, 3)
            .build());
    nursery.lot(
        Lots.lot("larch-bench")
            .species("Larch")
            .quantity(20)
            .trunks(11, 0.1)
            .arrived(2026, 3)
            .pot("15 litre")
            .place("Bench")
            .height(0)
            .build());
    nursery.lot(offer().taken(40));
  }

  static Offer offer() {
    Lot becomes =
        Lots.lot("far larch")
            .species("Larch")
            .quantity(0)
            .trunks(9, 0.2)
            .arrived(2026, 12)
            .place("Ground")
            .pot("3 litre")
            .gap(20)
            .notBefore(2027, 9)
            .papers(new Papers("Hill Farm Plants", "XX-1", "hills", "", ""))
            .build();
    return Offer.named("far larch", becomes)
        .take(40)
        .currency("EUR")
        .rate(0.86)
        .breaks(List.of(new Offer.PriceBreak(20, 3.5), new Offer.PriceBreak(40, 3)))
        .multiple(20)
        .arrival(YearMonth.of(2026, 12))
        .carriage(45)
        .importCharges(12)
        .lossSure(0.7)
        .fails(0.05)
        .build();
  }

  private static void market(Nurseries nursery) {
    nursery.demand(Nurseries.demandRow("broad-leaved", "starter", OptionalDouble.of(60), 32.5));
    nursery.demand(Nurseries.demandRow("broad-leaved", "shaped", OptionalDouble.of(40), 118));
    nursery.demand(Nurseries.demandRow("needled", "small", OptionalDouble.empty(), 28));
    nursery.demand(Nurseries.demandRow("needled", "large", OptionalDouble.of(9), 96));
    nursery.care(new Care(Optional.empty(), new MonthSpan(4, 9), 4, 0.2));
    nursery.otherCash(new OtherCash(Optional.empty(), OtherCash.Every.SEASON, "insurance", -380));
  }

  private static List<Assumption> assumptions() {
    List<Assumption> list = new ArrayList<>();
    list.add(new Assumption("settings", "", "order lead months", "2", "months", "nursery.json"));
    list.add(new Assumption("species", "Hornbeam", "vigour spread %", "20", "%", "default"));
    return list;
  }

  private static List<Problem> problems() {
    return List.of(
        new Problem(
            Severity.NOTICE,
            Reason.ASSUMED,
            "month shares of growth sum to 99.8 and were scaled to 100",
            Where.file("species.json"),
            "99.8",
            "change one share"),
        new Problem(
            Severity.WARNING,
            Reason.CONTRADICTION,
            "lot oak-field is a root ball that arrives in July",
            new Where("stock.xlsx", "stock", 7, "arrived"),
            "July 2025",
            "check the month"));
  }
}
