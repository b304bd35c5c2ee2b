package growingon.load.quick;

import growingon.load.cell.Cell;
import growingon.load.cell.Findings;
import growingon.load.row.Row;
import growingon.load.table.lot.LotCells;
import growingon.load.table.supply.PotTops;
import growingon.nursery.Assumption;
import growingon.nursery.Nursery;
import growingon.nursery.Plan;
import growingon.nursery.Quick;
import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.lot.Standing;
import growingon.nursery.market.Demand;
import growingon.nursery.market.Grade;
import growingon.nursery.market.HorizonValue;
import growingon.nursery.market.Ladder;
import growingon.nursery.market.Quality;
import growingon.nursery.market.QualityRule;
import growingon.nursery.place.LiftFrom;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.place.Spacing;
import growingon.nursery.route.Route;
import growingon.nursery.route.Step;
import growingon.nursery.route.When;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.nursery.species.UsualMonths;
import growingon.nursery.supply.Component;
import growingon.nursery.supply.Mix;
import growingon.nursery.supply.Pot;
import growingon.nursery.supply.PotShape;
import growingon.nursery.time.Hemisphere;
import growingon.nursery.time.MonthSpan;
import java.time.Month;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The nursery, plan and lot that a quick sheet stands for: one lot bought in the first month,
 * reduced and potted on arrival, sold as it reaches one size. What the sheet does not say is common
 * practice, no source.
 */
public final class QuickScenario {
  static final String CONDITION = "pot";
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
  private static final double HEIGHT_LEFT_MM = 600;
  private static final int SLICES = 64;

  private final Row row;
  private final QuickValues values;
  private final String plan;

  /**
   * What the lines of a sheet stand for.
   *
   * @param row the lines as one row with a value for each
   * @param plan name of the plan
   */
  public QuickScenario(Row row, String plan) {
    this.row = row;
    this.values = new QuickValues(row);
    this.plan = plan;
  }

  /** The scenario; empty if a cell is missing or wrong, which is reported. */
  public Optional<Scenario> scenario() {
    return row.accept(() -> new Scenario(nursery(), plan(), List.of(offer().taken(values.plants))));
  }

  /** The question with every value that nobody typed. */
  public Quick quick(boolean besideTables, List<Assumption> read) {
    List<Quick.Usual> usual =
        QuickLines.USUAL.stream()
            .filter(line -> values.matters(line.name()))
            .flatMap(
                line ->
                    read.stream()
                        .filter(value -> value.what().equals(line.name()))
                        .filter(value -> value.source().equals(Findings.DEFAULT))
                        .map(value -> usual(line, value)))
            .toList();
    return new Quick(
        values.soldAtMm,
        values.sellingPrice,
        values.litres,
        values.freeM2.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
        besideTables,
        usual);
  }

  private static Quick.Usual usual(QuickLine line, Assumption value) {
    return new Quick.Usual(line.name(), value.value(), value.unit(), line.moves());
  }

  /** The lot on offer. */
  public Offer offer() {
    return Offer.named(name(), lot())
        .take(values.plants)
        .currency(values.currency)
        .breaks(List.of(new Offer.PriceBreak(1, values.price)))
        .arrival(values.arrival)
        .carriage(values.carriage)
        .build();
  }

  private String name() {
    return values.species + " lot";
  }

  private Lot lot() {
    return Lot.named(name(), values.species)
        .form(values.form)
        .arrived(values.arrival)
        .counted(values.arrival)
        .trunks(values.trunks)
        .quality(values.quality)
        .standing(
            new Standing(values.freeM2.map(any -> GROUND), Optional.empty(), 0, HEIGHT_LEFT_MM))
        .route(ROUTE)
        .notBefore(
            values.form.liftedFromGround()
                ? values.arrival.plusMonths(LotCells.SETTLING_MONTHS)
                : values.arrival)
        .build();
  }

  private Plan plan() {
    return new Plan(
        plan,
        values.arrival,
        values.seasons,
        Map.of(name(), values.plants),
        SLICES,
        Plan.USUAL_DRAWS,
        1,
        HorizonValue.NOTHING);
  }

  private Nursery nursery() {
    return new Nursery(
        settings(),
        Map.of(values.species, species()),
        Map.of(LADDER, new Ladder(LADDER, List.of(grade()))),
        qualities(),
        Map.of(ROUTE, new Route(ROUTE, List.of(pottingStep(), yearlyStep()))),
        Map.of(potName(), pot()),
        components(),
        mixes(),
        Map.of(),
        values.freeM2.map(m2 -> Map.of(GROUND, place(m2))).orElse(Map.of()),
        List.of(demand()),
        List.of(),
        List.of());
  }

  private Settings settings() {
    Month seasonStart = values.hemisphere.usualSeasonStart();
    return Settings.named("Quick question")
        .hemisphere(values.hemisphere)
        .seasonStart(seasonStart)
        .currency(values.currency)
        .hourlyRate(values.working.hourlyRate())
        .discountRate(values.working.discount())
        .orderLeadMonths(0)
        .winter(values.hemisphere.usualWinter())
        .winterMoveMinutes(0)
        .girthBaseFactor(values.girthFactor)
        .yearEnd(seasonStart.minus(1))
        .build();
  }

  private Species species() {
    return Species.named(values.species)
        .ladder(LADDER)
        .habit(values.habit)
        .usualCondition(CONDITION)
        .growth(
            Map.of(CONDITION, new Curve.Steady(values.growth.mmAYear(), Double.POSITIVE_INFINITY)))
        .growthMonths(UsualMonths.growth(values.habit, values.hemisphere))
        .vigourSpread(values.growth.vigourSpread())
        .firstYearLoss(values.growth.firstYearLoss())
        .laterLoss(values.growth.laterLoss())
        .lossMonths(UsualMonths.loss(values.habit, values.hemisphere))
        .checkFirstYear(values.growth.check1())
        .checkSecondYear(values.growth.check2())
        .potBoundMonths(values.growth.potBoundMonths())
        .potBoundFactor(values.growth.potBoundFactor())
        .sure(new Sure(Map.of(CONDITION, values.growth.sure()), Sure.USUAL, Sure.USUAL))
        .fromLibrary(values.growth.fromLibrary())
        .build();
  }

  private Grade grade() {
    return new Grade("saleable", 1, values.soldAtMm, 0, 0);
  }

  private Demand demand() {
    return new Demand(
        Optional.empty(),
        LADDER,
        grade().name(),
        Optional.empty(),
        MonthSpan.ALL_YEAR,
        OptionalDouble.empty(),
        values.sellingPrice,
        0,
        0,
        0);
  }

  private Map<Quality, QualityRule> qualities() {
    Map<Quality, QualityRule> rules = new LinkedHashMap<>();
    rules.put(Quality.FIRST, new QualityRule(1, true));
    rules.put(Quality.SECOND, new QualityRule(values.working.secondPriceShare(), true));
    rules.put(Quality.THIRD, new QualityRule(0, false));
    return rules;
  }

  private Step pottingStep() {
    double ballLitres = values.working.ballShare() * values.litres * FILL;
    Spacing spacing = new Spacing(values.working.gapMm(), OptionalDouble.empty());
    return Step.named(ROUTE, new When.Arrival())
        .minutes(values.working.pottingMinutes())
        .pot(Optional.of(potName()))
        .mix(Optional.of(MIX))
        .ballKeptShare(1)
        .liftedBallLitres(ballLitres)
        .spacing(Optional.of(spacing))
        .sort(true)
        .rootWork(true)
        .trainingStarts(true)
        .build();
  }

  private Step yearlyStep() {
    Month month = values.hemisphere == Hemisphere.NORTH ? Month.JUNE : Month.DECEMBER;
    return Step.named("yearly care", new When.Every(1, month))
        .minutes(values.working.yearlyMinutes())
        .ballKeptShare(0)
        .build();
  }

  private String potName() {
    return Cell.Number.plain(values.litres) + " litre pot";
  }

  private Pot pot() {
    return Pot.named(potName(), PotShape.LITRES)
        .topMm(PotTops.topMm(values.litres))
        .baseMm(0)
        .heightMm(0)
        .widthMm(PotTops.topMm(values.litres))
        .statedLitres(OptionalDouble.of(values.litres))
        .condition(Optional.of(CONDITION))
        .fillShare(FILL)
        .price(values.working.potPrice())
        .build();
  }

  private Map<String, Component> components() {
    Map<String, Component> components = new LinkedHashMap<>();
    components.put(GRIT, component(GRIT, values.working.gritPrice(), GRIT_KG));
    components.put(BARK, component(BARK, values.working.barkPrice(), BARK_KG));
    return components;
  }

  private static Component component(String name, double priceALitre, double kgPerLitre) {
    return new Component(name, BAG_LITRES, BAG_LITRES * priceALitre, 0, kgPerLitre);
  }

  private Map<String, Mix> mixes() {
    Map<String, Double> parts = new LinkedHashMap<>();
    parts.put(GRIT, values.working.gritShare());
    parts.put(BARK, 1 - values.working.gritShare());
    parts.values().removeIf(part -> part <= 0);
    double shrinkage = Mix.usualShrinkage(parts.size());
    return Map.of(MIX, new Mix(MIX, parts, shrinkage, Mix.USUAL_FIRMING));
  }

  private Place place(double squareMetres) {
    return Place.named(GROUND, PlaceKind.STANDING_GROUND)
        .squareMetres(squareMetres)
        .usableShare(1)
        .costPerM2Year(values.working.m2Cost())
        .liftFrom(LiftFrom.GROUND)
        .build();
  }
}
