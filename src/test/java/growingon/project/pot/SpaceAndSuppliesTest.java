package growingon.project.pot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.market.Quality;
import growingon.nursery.place.Layout;
import growingon.nursery.place.LiftFrom;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.place.Spacing;
import growingon.nursery.supply.Component;
import growingon.nursery.supply.Material;
import growingon.nursery.supply.Mix;
import growingon.nursery.supply.Pot;
import growingon.nursery.supply.PotShape;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projection;
import growingon.project.Steps;
import growingon.project.history.Sale;
import growingon.project.history.Use;
import growingon.project.history.Work;
import growingon.project.lot.LotHistory;
import growingon.project.need.SpaceUse;
import growingon.project.need.Supplies;
import java.time.Month;
import java.time.YearMonth;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Space, pots, substrate, materials and weights against outside values. */
class SpaceAndSuppliesTest {
  private static final double INCH_MM = 25.4;
  private static final double HUNDRED_SQ_FT = 100 * Math.pow(12 * INCH_MM, 2) / 1e6;

  private static Place ground(Layout layout, OptionalDouble depth) {
    return Place.named("ground", PlaceKind.STANDING_GROUND)
        .squareMetres(100)
        .usableShare(1)
        .benchDepthMm(depth)
        .layout(layout)
        .liftFrom(LiftFrom.GROUND)
        .build();
  }

  private static double perPlant(double inches, Layout layout) {
    Pot pot = Nurseries.litrePot("p", 1, inches * INCH_MM);
    return Footprint.m2(
        Optional.of(pot), 0, Spacing.NO_GAP, Optional.of(ground(layout, OptionalDouble.empty())));
  }

  /** Plants on 100 square feet (GPN, "Grower 101: Spacing Containers"). */
  @Test
  void footprint_squareAndOffset_givesThePublishedNumbersOn100SquareFeet() {
    assertThat(Math.round(HUNDRED_SQ_FT / perPlant(6, Layout.SQUARE))).isEqualTo(400);
    assertThat(Math.round(HUNDRED_SQ_FT / perPlant(6, Layout.OFFSET))).isEqualTo(462);
    assertThat(Math.round(HUNDRED_SQ_FT / perPlant(10, Layout.SQUARE))).isEqualTo(144);
    assertThat(Math.round(HUNDRED_SQ_FT / perPlant(14, Layout.OFFSET))).isEqualTo(85);
  }

  /** Offset rows gain 15.47 % on an unbounded floor: 2/√3 (same source). */
  @Test
  void footprint_offset_gains15_47Percent() {
    assertThat(perPlant(6, Layout.SQUARE) / perPlant(6, Layout.OFFSET))
        .isCloseTo(1.1547, within(0.00005));
  }

  /**
   * A bench of 8 × 50 ft takes 1,600 pots of 6 in in square rows (Will, Faust and Burgoa,
   * HortScience 32(3), 1997).
   */
  @Test
  void rows_boundedBench_holdThePublishedNumber() {
    double foot = 12 * INCH_MM;
    int rows = Footprint.rows(8 * foot, 6 * INCH_MM, 0);
    assertThat(rows * Footprint.rows(50 * foot, 6 * INCH_MM, 0)).isEqualTo(1600);
  }

  @Test
  void bench_900mmDeep_takesTwoRowsOf400mmPots() {
    assertThat(Footprint.rows(900, 400, 0)).isEqualTo(2);
    assertThat(Footprint.rows(900, 400, 100)).isEqualTo(2);
    assertThat(Footprint.rows(900, 400, 101)).isEqualTo(1);
    double m2 =
        Footprint.m2(
            Optional.of(Nurseries.litrePot("p", 30, 400)),
            0,
            Spacing.NO_GAP,
            Optional.of(ground(Layout.SQUARE, OptionalDouble.of(900))));
    assertThat(m2).isCloseTo(0.4 * 0.9 / 2, within(1e-12));
  }

  @Test
  void crownWiderThanThePot_takesTheSpaceOfTheCrown_andPlantsPerM2Overrides() {
    Optional<Pot> pot = Optional.of(Nurseries.litrePot("p", 5, 200));
    Optional<Place> place = Optional.of(ground(Layout.SQUARE, OptionalDouble.empty()));
    Spacing gap = new Spacing(100, OptionalDouble.empty());
    assertThat(Footprint.m2(pot, 500, gap, place)).isCloseTo(0.36, within(1e-12));
    Spacing four = new Spacing(100, OptionalDouble.of(4));
    assertThat(Footprint.m2(pot, 500, four, place)).isEqualTo(0.25);
  }

  @Test
  void rectangularPot_takesLengthTimesWidth_eachWithItsGap() {
    Pot box =
        Pot.named("box", PotShape.RECTANGULAR)
            .topMm(400)
            .baseMm(380)
            .heightMm(120)
            .widthMm(280)
            .fillShare(0.9)
            .price(9)
            .emptyKg(1)
            .build();
    Spacing gap = new Spacing(100, OptionalDouble.empty());
    assertThat(
            Footprint.m2(
                Optional.of(box),
                0,
                gap,
                Optional.of(ground(Layout.OFFSET, OptionalDouble.empty()))))
        .isCloseTo(0.5 * 0.38, within(1e-12));
  }

  /**
   * A house of 38 × 60 ft with benches 2 × (2×60) + 3 × (6×50) ft has 1,140 of 2,280 square feet,
   * 50 % (Univ. of Arkansas, greenhouse course): as a place with that usable share.
   */
  @Test
  void capacity_arkansasHouse_isHalfItsFloor() {
    double squareFoot = Math.pow(12 * INCH_MM, 2) / 1e6;
    double usable = (2 * 2 * 60 + 3 * 6 * 50) / (38.0 * 60);
    Place house = Nurseries.place("house", PlaceKind.TUNNEL, 38 * 60 * squareFoot, usable, 0);
    assertThat(house.capacityM2(YearMonth.of(2026, 11)) / squareFoot).isCloseTo(1140, within(1e-9));
  }

  @Test
  void place_outsideItsMonths_hasNoCapacity() {
    Place place =
        Place.named("new ground", PlaceKind.STANDING_GROUND)
            .squareMetres(100)
            .liftFrom(LiftFrom.GROUND)
            .from(Optional.of(YearMonth.of(2027, 3)))
            .until(Optional.of(YearMonth.of(2028, 2)))
            .build();
    assertThat(place.capacityM2(YearMonth.of(2027, 2))).isZero();
    assertThat(place.capacityM2(YearMonth.of(2027, 3))).isCloseTo(70, within(1e-9));
    assertThat(place.capacityM2(YearMonth.of(2028, 3))).isZero();
  }

  private static Pot frustum(double topCm, double baseCm, double heightCm) {
    return Pot.named("pot", PotShape.ROUND)
        .topMm(topCm * 10)
        .baseMm(baseCm * 10)
        .heightMm(heightCm * 10)
        .widthMm(topCm * 10)
        .fillShare(1)
        .build();
  }

  /**
   * Frustum volumes of a UK grower's pot guide, top/base/height cm; brim volumes derived, at or
   * above the labels of 1, 2, 3, 5 and 10 litres (weak source).
   */
  @Test
  void brimLitres_growersPotGuide_areTheFrustums_atLeastTheLabels() {
    double[][] pots = {
      {13, 10, 11, 1.15, 1},
      {17, 12, 13, 2.17, 2},
      {19, 13, 15, 3.05, 3},
      {22.5, 16.5, 18, 5.42, 5},
      {28, 24, 22.5, 11.97, 10}
    };
    for (double[] each : pots) {
      double litres = frustum(each[0], each[1], each[2]).brimLitres();
      assertThat(litres).isCloseTo(each[3], within(0.006)).isGreaterThanOrEqualTo(each[4]);
    }
  }

  @Test
  void brimLitres_prismatoid_withoutTaper_isABox() {
    Pot box =
        Pot.named("box", PotShape.RECTANGULAR)
            .topMm(400)
            .baseMm(400)
            .heightMm(100)
            .widthMm(300)
            .fillShare(1)
            .build();
    assertThat(box.brimLitres()).isCloseTo(12, within(1e-9));
  }

  /** Square pots are frustums of a pyramid: h/3 (A + a + √(A a)), solid geometry. */
  @Test
  void brimLitres_squarePot_isTheFrustumOfAPyramid() {
    Pot square =
        Pot.named("square", PotShape.SQUARE)
            .topMm(130)
            .baseMm(100)
            .heightMm(120)
            .widthMm(130)
            .fillShare(1)
            .build();
    double top = 130 * 130;
    double base = 100 * 100;
    assertThat(square.brimLitres())
        .isCloseTo(120 / 3.0 * (top + base + Math.sqrt(top * base)) / 1e6, within(1e-9));
  }

  private static Nurseries potting(double onHandBark) {
    return Nurseries.bare()
        .component(new Component("bark", 60, 6, onHandBark, 0.66))
        .component(new Component("grit", 25, 5, 0, 1.5))
        .mix(new Mix("training mix", Map.of("bark", 3.0, "grit", 2.0), 0.1, 0.1))
        .pot(Nurseries.litrePot("10 litre", 10, 280))
        .pot(Nurseries.litrePot("20 litre", 20, 360));
  }

  /**
   * Substrate by hand: 100 pots of 10 litres less half of a lifted ball of 4 litres are 8 litres
   * each; × 1.1/0.9 for firming and shrinkage × 1.05 waste = 1026.67 litres, three fifths bark. The
   * training mix has 40 % grit (common practice, no source).
   */
  @Test
  void substrate_firstPotting_isFillLessBall_timesFirmingShrinkageAndWaste() {
    Projection projection =
        potting(0)
            .waste(0.05)
            .route("r", Steps.onArrival("pot").pot("10 litre", "training mix").ball(0.5, 4).build())
            .lot(Lots.lot("a").route("r").build())
            .project();
    double litres = 100 * 8 * 1.1 / 0.9 * 1.05;
    Supplies supplies = Supplies.of(projection);
    assertThat(supplies.item(Use.Kind.COMPONENT, "bark").used()[0])
        .isCloseTo(0.6 * litres, within(1e-9));
    assertThat(supplies.item(Use.Kind.COMPONENT, "grit").used()[0])
        .isCloseTo(0.4 * litres, within(1e-9));
    assertThat(supplies.item(Use.Kind.COMPONENT, "bark").packs()[0])
        .isEqualTo((int) Math.ceil(0.6 * litres / 60));
    assertThat(projection.lots().get(0).happenings().get(0).substrateLitres())
        .isCloseTo(litres, within(1e-9));
  }

  @Test
  void bags_ofTheSizeOfADrop_areCountedAllTheSame() {
    Projection projection =
        Nurseries.bare()
            .component(new Component("bark", 1e-8, 5, 0, 0.6))
            .mix(new Mix("bark alone", Map.of("bark", 1.0), 0, 0))
            .pot(Nurseries.litrePot("10 litre", 10, 280))
            .route("r", Steps.onArrival("pot").pot("10 litre", "bark alone").build())
            .lot(Lots.lot("a").route("r").build())
            .project();
    Supplies.Item bark = Supplies.of(projection).item(Use.Kind.COMPONENT, "bark");

    assertThat(bark.packs()[0]).isGreaterThan(Integer.MAX_VALUE);
    assertThat(bark.packs()[0]).isCloseTo((long) (bark.used()[0] * 1e8), within(100L));
  }

  @Test
  void substrate_pottingOn_keepsTheShareOfThePreviousPotsFill() {
    Projection projection =
        potting(0)
            .route(
                "r",
                Steps.onArrival("pot").pot("10 litre", "training mix").ball(0.5, 0).build(),
                Steps.in("pot on", Month.MARCH, 1)
                    .pot("20 litre", "training mix")
                    .ball(0.8, 0)
                    .build())
            .lot(Lots.lot("a").quantity(1).route("r").build())
            .project();
    double factor = 1.1 / 0.9;
    assertThat(projection.lots().get(0).happenings().get(0).substrateLitres())
        .isCloseTo(10 * factor, within(1e-9));
    assertThat(projection.lots().get(0).happenings().get(1).substrateLitres())
        .isCloseTo(12 * factor, within(1e-9));
  }

  @Test
  void pot_theLotAlreadyStandsIn_isUsedAgain() {
    Projection projection =
        potting(0)
            .route("r", Steps.onArrival("repot").pot("10 litre", "training mix").build())
            .lot(Lots.lot("a").pot("10 litre").route("r").build())
            .project();
    assertThat(projection.lots().get(0).uses())
        .extracting(Use::kind)
        .containsOnly(Use.Kind.COMPONENT);
    assertThat(projection.lots().get(0).happenings().get(0).substrateLitres())
        .isCloseTo(100 * 5 * 1.1 / 0.9, within(1e-9));
  }

  @Test
  void oldPots_ofThePottedOnAndTheCulled_comeBackForTheNextMonth_ofTheDeadNone() {
    Pot reusable =
        Pot.named("old", PotShape.LITRES)
            .topMm(200)
            .baseMm(200)
            .heightMm(200)
            .widthMm(200)
            .statedLitres(OptionalDouble.of(5))
            .fillShare(1)
            .price(1)
            .reuseShare(0.5)
            .build();
    Projection projection =
        potting(0)
            .pot(reusable)
            .route(
                "r",
                Steps.in("pot on", Month.MARCH, 0)
                    .loss(0.2)
                    .cull(0.25)
                    .pot("10 litre", "training mix")
                    .build())
            .lot(Lots.lot("a").pot("old").route("r").build())
            .project();
    double[] back = Supplies.of(projection).item(Use.Kind.POT, "old").back();
    assertThat(back[4]).isZero();
    assertThat(back[5]).isCloseTo(0.5 * (20 + 60), within(1e-9));
  }

  @Test
  void purchases_onHandFirst_wholePacksInTheMonthOfNeed_theRestCarriedOn() {
    Projection projection =
        Nurseries.bare()
            .material(new Material("wire", "m", 50, 12, 70, 0.5))
            .route("r", Steps.every("wire", 1, Month.MARCH).material("wire", 1).build())
            .seasons(5)
            .leadMonths(2)
            .lot(Lots.lot("a").arrived(2026, 3).route("r").build())
            .project();
    Supplies supplies = Supplies.of(projection);
    Supplies.Item wire = supplies.item(Use.Kind.MATERIAL, "wire");
    assertThat(wire.packs()[4]).isEqualTo(1);
    assertThat(wire.left()[4]).isCloseTo(20, within(1e-9));
    // A year later half of what was used comes back: 20 + 50 − 100 needs one pack more.
    assertThat(wire.packs()[16]).isEqualTo(1);
    assertThat(wire.left()[16]).isCloseTo(20, within(1e-9));
    assertThat(supplies.orders().get(0).orderMonth()).isEqualTo(2);
    assertThat(supplies.orders().get(0).needMonth()).isEqualTo(4);
    assertThat(supplies.orders().get(0).cost()).isEqualTo(12);
  }

  @Test
  void purchase_ofExactlyAPack_isNotRoundedUpByDust() {
    Projection projection =
        Nurseries.bare()
            .material(new Material("ties", "piece", 30, 3, 0, 0))
            .route("r", Steps.onArrival("tie in").material("ties", 0.1 + 0.2).build())
            .lot(Lots.lot("a").route("r").build())
            .project();
    assertThat(Supplies.of(projection).item(Use.Kind.MATERIAL, "ties").packs()[0]).isEqualTo(1);
  }

  /**
   * Wet weights: pine bark 0.18 dry + 0.48 water = 0.66 kg a litre (Int. J. Agronomy 2012:978528,
   * derived). A pot of 10 litres of bark alone, unshrunk and unfirmed, weighs 6.6 kg.
   */
  @Test
  void weight_potOfBark_isItsWetDensity() {
    Projection projection =
        potting(0)
            .mix(new Mix("bark alone", Map.of("bark", 1.0), 0, 0))
            .route("r", Steps.onArrival("pot").pot("10 litre", "bark alone").ball(0, 0).build())
            .lot(Lots.lot("a").route("r").height(0).build())
            .project();
    assertThat(projection.lots().get(0).stood(0).weight().kg()).isCloseTo(6.6, within(1e-9));
  }

  /** Parts by hand: ball 4 l × 1.6, mix 8 l firmed × wet, wood π/4 · 0.8² dm² · 9 dm. */
  @Test
  void weight_parts_areMixBallPotAndWood() {
    Projection projection =
        potting(0)
            .pot(
                Pot.named("tub", PotShape.LITRES)
                    .topMm(300)
                    .baseMm(300)
                    .heightMm(300)
                    .widthMm(300)
                    .statedLitres(OptionalDouble.of(15))
                    .fillShare(1)
                    .price(4)
                    .emptyKg(0.9)
                    .build())
            .route("r", Steps.onArrival("pot").pot("tub", "training mix").ball(0.5, 8).build())
            .lot(Lots.lot("a").trunks(80, 0).height(900).route("r").build())
            .project();
    Weight weight = projection.lots().get(0).stood(0).weight();
    assertThat(weight.ballKg()).isCloseTo(6.4, within(1e-9));
    assertThat(weight.mixKg()).isCloseTo(11 * (0.6 * 0.66 + 0.4 * 1.5) * 1.1 / 0.9, within(1e-9));
    assertThat(weight.potKg()).isEqualTo(0.9);
    assertThat(weight.woodKg()).isCloseTo(Math.PI / 4 * 0.8 * 0.8 * 9, within(1e-9));
    double parts = weight.ballKg() + weight.mixKg() + weight.potKg() + weight.woodKg();
    assertThat(weight.kg()).isCloseTo(parts, within(1e-9));
  }

  /** A ball of 20 l, of which 0.8 stay on, is pared to the 10 l of its pot: 16 kg and no mix. */
  @Test
  void ball_largerThanThePot_isParedToIt() {
    Weight weight = weightOfABall(20, 0.8);
    assertThat(weight.ballKg()).isCloseTo(16, within(1e-9));
    assertThat(weight.mixKg()).isZero();
  }

  /** 3 l of a ball of 4 are kept, 7 l are filled up with what no mix names, at 1 kg a litre. */
  @Test
  void potFilledUpWithoutAMix_weighsAKilogramALitreBesideTheBall() {
    Weight weight = weightOfABall(4, 0.75);
    assertThat(weight.ballKg()).isCloseTo(4.8, within(1e-9));
    assertThat(weight.mixKg()).isCloseTo(7, within(1e-9));
  }

  private static Weight weightOfABall(double litres, double kept) {
    return potting(0)
        .route("r", Steps.onArrival("pot").pot("10 litre", null).ball(kept, litres).build())
        .lot(Lots.lot("a").route("r").build())
        .project()
        .lots()
        .get(0)
        .stood(0)
        .weight();
  }

  /** 950 over 250 are three rows: 250 of the bench's length take three plants. */
  @Test
  void bench_withAGap_countsItAlongTheBenchToo() {
    double m2 =
        Footprint.m2(
            Optional.of(Nurseries.litrePot("p", 5, 200)),
            0,
            new Spacing(50, OptionalDouble.empty()),
            Optional.of(ground(Layout.SQUARE, OptionalDouble.of(900))));
    assertThat(m2).isCloseTo(0.25 * 0.9 / 3, within(1e-12));
  }

  @Test
  void unplacedLot_hasALineOfItsOwn() {
    Projection projection =
        Nurseries.bare()
            .place(Nurseries.place("bench", PlaceKind.BENCH, 10))
            .lot(Lots.lot("a").plantsPerM2(4).build())
            .project();
    SpaceUse space = SpaceUse.of(projection);
    assertThat(space.places()).containsExactly(Optional.of("bench"), Optional.empty());
    assertThat(space.months(Optional.empty()).get(0).neededM2()).isCloseTo(25, within(1e-9));
  }

  @Test
  void winterPlace_takesItsSpaceFromNovemberToMarch_ownPlaceTheRest_bothMovesCostMinutes() {
    Projection projection =
        Nurseries.working()
            .withoutDemand()
            .lot(
                Lots.lot("a")
                    .species("elm")
                    .pot("7 litre")
                    .place("ground")
                    .gap(100)
                    .arrived(2026, 10)
                    .build())
            .seasons(1)
            .project();
    LotHistory lot = projection.lots().get(0);
    for (int month = 0; month < 12; month++) {
      boolean winter = month <= 4;
      assertThat(lot.stood(month).place()).contains(winter ? "tunnel" : "ground");
      double side = winter ? 0.24 : 0.3;
      assertThat(lot.stood(month).m2())
          .isCloseTo(lot.stood(month).plants() * side * side, within(1e-9));
    }
    assertThat(lot.works().stream().filter(each -> each.job().equals(Work.WINTER_MOVE)))
        .extracting(Work::month)
        .containsExactly(5);
    assertThat(lot.happenings().get(0).place()).contains("tunnel");
    assertThat(lot.happenings().get(0).toPlace()).contains("ground");
  }

  @Test
  void timeApart_standsInQuarantine_isNotSold_thenGoesToItsOwnPlace() {
    Projection projection =
        Nurseries.working()
            .withoutDemand()
            .sellsAll("patio trees", "started", 10)
            .lot(
                Lots.lot("a")
                    .species("maple")
                    .trunks(20, 0)
                    .trainingSince(2026, 1)
                    .pot("7 litre")
                    .place("bench")
                    .apart(3)
                    .bought(5, 0)
                    .build())
            .project();
    LotHistory lot = projection.lots().get(0);
    assertThat(lot.stood(2).place()).contains("corner");
    assertThat(lot.sold(2)).isZero();
    assertThat(lot.stood(3).place()).contains("bench");
    assertThat(lot.sold(3)).isPositive();
  }

  @Test
  void timeApart_withoutAQuarantinePlace_isAWarning() {
    Projection projection =
        Nurseries.bare()
            .place(Nurseries.place("bench", PlaceKind.BENCH, 10))
            .lot(Lots.lot("a").place("bench").plantsPerM2(9).apart(2).bought(5, 0).build())
            .project();
    assertThat(projection.remarks().get(0).toString())
        .isEqualTo(
            "lot a is to stand apart, but the nursery has no quarantine place; it stands in its own"
                + " place until it is released; add a place of the kind quarantine, or set apart months"
                + " to 0");
  }

  @Test
  void seconds_sellAtTheirPriceShare_andThirdsWithoutPottingAreNeverThere() {
    Projection projection =
        Nurseries.bare()
            .sellsAll("one", "any", 100)
            .lot(Lots.lot("a").quality(0.5, 0.3, false).build())
            .project();
    assertThat(projection.lots().get(0).sales())
        .extracting(Sale::quality)
        .containsExactly(Quality.FIRST, Quality.SECOND);
    double money = projection.lots().get(0).sales().stream().mapToDouble(Sale::money).sum();
    assertThat(money).isCloseTo(50 * 100 + 30 * 60, within(1e-6));
  }
}
