package growingon.report;

import growingon.chance.Chances;
import growingon.nursery.Inputs;
import growingon.nursery.Plan;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Form;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Papers;
import growingon.nursery.market.Demand;
import growingon.nursery.market.Grade;
import growingon.nursery.market.OtherCash;
import growingon.nursery.place.Care;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Habit;
import growingon.nursery.species.Species;
import growingon.nursery.supply.Component;
import growingon.nursery.supply.Material;
import growingon.nursery.supply.Mix;
import growingon.nursery.time.MonthShares;
import growingon.nursery.time.MonthSpan;
import growingon.plan.Planned;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Steps;
import growingon.report.figures.Context;
import growingon.report.model.Report;
import growingon.report.plan.PlanReport;
import java.time.Month;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An invented nursery that has something to say: a tunnel too small in winter, a month with too few
 * hours, two ladders, a lot bought partly unseen. It begins in November, its seasons in October.
 */
public final class MapleNursery {
  private MapleNursery() {}

  public static Nurseries nursery() {
    Nurseries small =
        Nurseries.bare()
            .ladder("patio", new Grade("small", 1, 14, 6, 12), new Grade("large", 2, 22, 12, 12))
            .ladder("shelf", new Grade("shelf", 1, 8, 0, 12), new Grade("large", 2, 16, 6, 12))
            .species(species("Field maple", "patio", 6, Optional.of("cold tunnel")))
            .species(species("Rock pine", "shelf", 3, Optional.empty()))
            .pot(Nurseries.litrePot("round 3 l", 3, 190))
            .pot(Nurseries.litrePot("round 12 l", 12, 300))
            .component(new Component("pumice", 40, 12, 60, 0.8))
            .component(new Component("bark", 60, 9, 0, 0.5))
            .mix(new Mix("open", Map.of("pumice", 1.0, "bark", 1.0), 0.1, 0.05))
            .material(new Material("wire", "m", 100, 25, 50, 0.4))
            .seasonStart(Month.OCTOBER)
            .seasons(4)
            .labour(18, 0.5)
            .hoursAvailable(45)
            .discountRate(0.05)
            .openingCash(4000)
            .waste(0.05)
            .winter(10, 1.5);
    return routes(places(demand(small)));
  }

  private static Species species(
      String name, String ladder, double mmAYear, Optional<String> winterPlace) {
    return Species.named(name)
        .ladder(ladder)
        .habit(winterPlace.isPresent() ? Habit.DECIDUOUS : Habit.EVERGREEN)
        .usualCondition("pot")
        .growth(Map.of("pot", new Curve.Steady(mmAYear, 60)))
        .growthMonths(MonthShares.of(0, 0, 2, 10, 20, 22, 20, 14, 8, 4, 0, 0))
        .firstYearLoss(0.06)
        .laterLoss(0.02)
        .winterPlace(winterPlace)
        .build();
  }

  private static Nurseries demand(Nurseries small) {
    return small
        .demand(row("patio", "small", 60, 48))
        .demand(row("patio", "large", 40, 120))
        .demand(row("shelf", "shelf", 80, 18))
        .demand(row("shelf", "large", 30, 55));
  }

  private static Demand row(String ladder, String grade, double units, double price) {
    return new Demand(
        Optional.empty(),
        ladder,
        grade,
        Optional.empty(),
        new MonthSpan(3, 10),
        OptionalDouble.of(units),
        price,
        0.5,
        0.2,
        0);
  }

  private static Nurseries places(Nurseries small) {
    return small
        .place(Nurseries.place("bench 1", PlaceKind.BENCH, 30, 0.8, 14))
        .place(Nurseries.place("bench 2", PlaceKind.BENCH, 24, 0.8, 14))
        .place(Nurseries.place("gravel", PlaceKind.STANDING_GROUND, 60, 0.7, 6))
        .place(Nurseries.place("cold tunnel", PlaceKind.TUNNEL, 14, 0.8, 20))
        .place(Nurseries.place("nook", PlaceKind.QUARANTINE, 6, 1, 10))
        .care(new Care(Optional.empty(), new MonthSpan(4, 9), 12, 0.4))
        .otherCash(new OtherCash(Optional.empty(), OtherCash.Every.SEASON, "insurance", -600));
  }

  private static Nurseries routes(Nurseries small) {
    return small
        .route(
            "to patio",
            Steps.in("pot", Month.MARCH, 0)
                .pot("round 3 l", "open")
                .minutes(8)
                .rootWork()
                .trainingStarts()
                .gap(60)
                .build(),
            Steps.in("wire", Month.JANUARY, 1).minutes(15).material("wire", 1.5).build(),
            Steps.in("pot on", Month.MARCH, 2)
                .pot("round 12 l", "open")
                .minutes(14)
                .gap(80)
                .place("gravel")
                .build(),
            Steps.every("prune", 1, Month.JUNE).minutes(4).build())
        .route(
            "sorted",
            Steps.in("sort and pot", Month.MARCH, 0)
                .sort()
                .pot("round 12 l", "open")
                .ball(0.5, 3)
                .minutes(25)
                .to(Month.APRIL)
                .loss(0.04)
                .rootWork()
                .trainingStarts()
                .gap(80)
                .build(),
            Steps.every("wire", 1, Month.JANUARY).minutes(12).material("wire", 2).build());
  }

  public static List<Lot> stock() {
    Papers papers = new Papers("Own seedlings", "XX-0001", "home", "", "");
    return List.of(
        Lots.lot("maple 23")
            .species("Field maple")
            .form(Form.SEEDLING)
            .quantity(120)
            .arrived(2024, 2)
            .trunks(11, 0.2)
            .pot("round 3 l")
            .place("bench 1")
            .gap(60)
            .route("to patio")
            .lastStep("wire")
            .trainingSince(2024, 3)
            .unitCost(3.2)
            .papers(papers)
            .kept(4)
            .build(),
        Lots.lot("maple 26")
            .species("Field maple")
            .form(Form.SEEDLING)
            .quantity(150)
            .arrived(2026, 10)
            .trunks(6, 0.2)
            .pot("round 3 l")
            .place("bench 2")
            .gap(30)
            .route("to patio")
            .build(),
        Lots.lot("pine 22")
            .species("Rock pine")
            .quantity(90)
            .arrived(2022, 11)
            .trunks(9, 0.25)
            .pot("round 3 l")
            .place("bench 2")
            .route("none")
            .trainingSince(2026, 3)
            .hold("large", 0.4)
            .build());
  }

  public static Lot ridgeLot() {
    return ridge().build();
  }

  /** The ridge lot with quality and loss unsure, and a chance that it fails as a whole. */
  public static Lot unseenRidgeLot() {
    return ridge().unseen(0.6, 0.25, 0.5).bought(14, 260, 0.5, 0.02).build();
  }

  private static Lots ridge() {
    return Lots.lot("ridge lot")
        .species("Field maple")
        .form(Form.BARE_ROOT)
        .quantity(80)
        .arrived(2027, 1)
        .sizeClass(16, 24)
        .quality(0.6, 0.25, false)
        .plantsPerM2(8)
        .place("gravel")
        .route("sorted")
        .notBefore(2027, 7)
        .apart(2)
        .bought(14, 260)
        .papers(new Papers("Ridge field", "XX-0002", "abroad", "", ""));
  }

  /** With the bought lot. */
  public static Scenario scenario() {
    return nursery().lots(stock()).lot(ridgeLot()).scenario();
  }

  static Inputs inputs(Scenario scenario) {
    return new Inputs(scenario, List.of(), List.of(), scenario.lots().size());
  }

  public static Context context(Scenario scenario) {
    return new Context(Planned.weighed(inputs(scenario)), List.of());
  }

  public static Report report(Scenario scenario) {
    return report(context(scenario));
  }

  /** With draws. */
  public static Context drawn(Scenario scenario, int draws) {
    Plan plan = scenario.plan().withDraws(draws);
    Context context = context(new Scenario(scenario.nursery(), plan, scenario.lots()));
    Chances chances = Chances.draw(context.accounts(), context.bought(), 1, done -> {});
    return with(context, chances);
  }

  public static Context with(Context context, Chances chances) {
    return new Context(context.plan().with(chances), context.problems());
  }

  public static Report report(Context context) {
    return PlanReport.of(context.plan(), List.of());
  }
}
