package growingon.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.chance.luck.DrawnLuck;
import growingon.chance.luck.Keyed;
import growingon.chance.luck.NameNumbers;
import growingon.chance.luck.NotKnown;
import growingon.chance.luck.Spreads;
import growingon.money.GradeNumbers;
import growingon.money.Tally;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.lot.Trunks;
import growingon.nursery.market.MarketSure;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Programme;
import growingon.project.Projector;
import growingon.project.lot.Luck;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** What is not known of growth and losses, against the numbers of its law worked out by hand. */
class NotKnownTest {
  private static final Species MAPLE = Nurseries.working().nursery().species().get("maple");
  private static final int DRAWS = 4_000;

  /** Growth alone is unsure: no vigour, years, lots, trunks or losses that differ. */
  private static Species plain(Curve curve, double yearSpread, double lotSpread) {
    Species ash = Nurseries.bareSpecies("ash", "one");
    return Species.named(ash.name())
        .ladder(ash.ladder())
        .habit(ash.habit())
        .usualCondition(ash.usualCondition())
        .growth(Map.of("pot", curve))
        .vigourSpread(0)
        .yearSpread(yearSpread)
        .lotSpread(OptionalDouble.of(lotSpread))
        .lossSpread(0)
        .checkFirstYear(1)
        .checkSecondYear(1)
        .potBoundMonths(1200)
        .potBoundFactor(1)
        .winterPlace(ash.winterPlace())
        .build();
  }

  private static LotDraws.Tenths lastTrunk(Species species, int seasons, double sure) {
    return lastTrunk(species, seasons, sure, new Trunks.Measured(20, 0));
  }

  private static LotDraws.Tenths lastTrunk(
      Species species, int seasons, double sure, Trunks atStart) {
    Lot lot = Lots.lot("a").species("ash").arrived(2026, 11).build();
    Nurseries nursery =
        Nurseries.bare().species(species).sure(sure).seasons(seasons).lot(lot.withTrunks(atStart));
    Scenario scenario = nursery.scenario();
    scenario = scenario.withPlan(scenario.plan().withDraws(DRAWS));
    List<LotDraws.Tenths> trunks = LotDraws.draw(scenario, 2, done -> {}).lot(0).trunkMm();
    return trunks.get(trunks.size() - 1);
  }

  /** Standard error of a decile of 4,000: √(0.1·0.9/4,000) over the density there, in scores. */
  private static void isCloseTo(LotDraws.Tenths trunk, double p10, double p50, double p90) {
    double score = 4.5 * Math.sqrt(0.09 / DRAWS) / 0.1755;
    assertThat(trunk.p10()).isCloseTo(p10, within(score * (p50 - p10) / 1.2816));
    assertThat(trunk.p50()).isCloseTo(p50, within(score * (p90 - p10) / 2.5632));
    assertThat(trunk.p90()).isCloseTo(p90, within(score * 1.4 * (p90 - p50) / 1.2816));
  }

  /** 20 mm and three seasons of 3 mm, times e^(±1.2816/4). */
  @Test
  void steadyGrowth_thatIs80Sure_liesBetweenItsTenths() {
    isCloseTo(
        lastTrunk(plain(new Curve.Steady(3, Double.POSITIVE_INFINITY), 0, 0), 3, 0.8),
        26.533,
        29,
        32.399);
  }

  /** 95 − 75 e^(−0.036 · 3 f). */
  @Test
  void levellingGrowth_thatIs80Sure_liesBetweenItsTenths() {
    isCloseTo(
        lastTrunk(plain(new Curve.Levelling(95, 0.036), 0, 0), 3, 0.8), 25.655, 27.678, 30.369);
  }

  /** One season of 3 mm: variances 0.00995 of the year, 0.00638 of the lot and 0.0625 add up. */
  @Test
  void growth_ofOneSeason_hasTheVarianceOfYearLotAndNotKnowing() {
    Species species = plain(new Curve.Steady(3, Double.POSITIVE_INFINITY), 0.1, 0.08);
    isCloseTo(lastTrunk(species, 1, 0.8), 22.076, 22.976, 24.264);
    Species unsure = species.withSure(new Sure(Map.of("pot", 0.8), 1, 1));
    double[] logs =
        sample(
            draw -> {
              Luck.OfLot luck = lotLuck(draw, unsure);
              return Math.log(luck.growth(2026) * luck.growth() * luck.speed("pot"));
            });
    assertThat(variance(logs)).isCloseTo(0.0788, within(0.07 * 0.0788));
  }

  private static Luck.OfLot lotLuck(int draw, Species species) {
    Lot lot = Lots.lot("a").species("ash").build();
    return luck(draw, MarketSure.KNOWN).of(lot, species);
  }

  private static DrawnLuck luck(int draw, MarketSure market) {
    return new DrawnLuck(
        new Keyed(7, draw),
        Nurseries.bare().market(market).nursery().settings(),
        new Spreads(),
        new NameNumbers());
  }

  private static double[] sample(IntToDoubleFunction draw) {
    return IntStream.range(0, DRAWS).mapToDouble(draw).toArray();
  }

  private static double variance(double[] sample) {
    double mean = Arrays.stream(sample).average().orElseThrow();
    return Arrays.stream(sample).map(each -> (each - mean) * (each - mean)).sum() / sample.length;
  }

  /** 20 mm times e^(±1.2816/4), and three seasons of 3 mm. */
  @Test
  void usualTrunk_whichNobodyMeasured_isAThirdThickerOrThinner() {
    Species ash = plain(new Curve.Steady(3, Double.POSITIVE_INFINITY), 0, 0);
    isCloseTo(lastTrunk(ash, 3, 1, new Trunks.Usual("pot 3 litre", 20, 0)), 23.517, 29, 36.555);
  }

  @Test
  void usualTrunks_ofAClassMoveTogether_thoseOfTwoByHalf() {
    double[] small = sample(draw -> Math.log(usual(draw, "pot 3 litre", "a")));
    double[] other = sample(draw -> Math.log(usual(draw, "pot 3 litre", "b")));
    double[] large = sample(draw -> Math.log(usual(draw, "pot 20 litre", "a")));
    assertThat(small).containsExactly(other);
    assertThat(correlation(small, large)).isCloseTo(0.5, within(0.03));
    assertThat(Math.sqrt(variance(small))).isCloseTo(0.25, within(0.01));
    assertThat(luck(1, MarketSure.KNOWN).of(Lots.lot("a").build(), MAPLE).trunks()).isEqualTo(1);
  }

  private static double usual(int draw, String of, String lot) {
    Lot unmeasured = Lots.lot(lot).build().withTrunks(new Trunks.Usual(of, 20, 0));
    return luck(draw, MarketSure.KNOWN).of(unmeasured, MAPLE).trunks();
  }

  /** Luck that has the trunks thicker is as if the list had said so, whatever the law. */
  @Test
  void usualTrunks_thatAreThicker_growAndSellAsIfTheyHadBeenStatedSo() {
    Scenario usual = withTrunks(new Trunks.Usual("no pot", 21, 0.22));
    Scenario thicker = withTrunks(new Trunks.Measured(1.3 * 21, 0.22));
    Luck luck =
        new Luck() {
          @Override
          public OfLot of(Lot lot, Species species) {
            return new OfLot() {
              @Override
              public double trunks() {
                return lot.trunks() instanceof Trunks.Usual ? 1.3 : 1;
              }

              @Override
              public QualityShares quality() {
                return lot.quality();
              }
            };
          }
        };
    assertThat(flows(usual, luck)).containsExactly(flows(thicker, Luck.NONE), within(1e-6));
    assertThat(flows(usual, Luck.NONE)).isNotEqualTo(flows(usual, luck));
  }

  private static Scenario withTrunks(Trunks trunks) {
    return Nurseries.working()
        .lot(Lots.boughtMaples("ridge").build().withTrunks(trunks))
        .lot(Lots.pottedElms("elms").build())
        .scenario();
  }

  private static double[] flows(Scenario scenario, Luck luck) {
    Tally tally = new Tally(Programme.of(scenario), new GradeNumbers(scenario.nursery()));
    tally.run(luck);
    return tally.flows();
  }

  @Test
  void usualTrunks_areNotKnown_andLuckAloneTakesThemAsTheyAre() {
    Scenario usual = withTrunks(new Trunks.Usual("no pot", 21, 0.22));
    assertThat(usual.isKnown()).isFalse();
    assertThat(usual.known()).isEqualTo(withTrunks(new Trunks.Measured(21, 0.22)));
    assertThat(usual.known().isKnown()).isTrue();
  }

  @Test
  void growth_thatIs50Sure_isNinetyPerCentFasterOrAsMuchSlower() {
    double s = Sure.spread(0.5);
    assertThat(Math.exp(-1.2816 * s)).isCloseTo(0.5269, within(5e-5));
    assertThat(Math.exp(1.2816 * s)).isCloseTo(1.8980, within(5e-5));
  }

  @Test
  void loss_thatIs80Sure_hasTheSpreadOfFortyPlantsSeen() {
    isLoss(0.02, 2.1864, 0.398, 1.323, 4.311);
    isLoss(0.06, 3.7089, 2.348, 5.109, 10.761);
    isLoss(0.10, 4.6852, 4.932, 9.109, 16.221);
  }

  private static void isLoss(double mean, double points, double p10, double p50, double p90) {
    Spreads spreads = new Spreads();
    assertThat(100 * Math.sqrt(mean * (1 - mean) / (Sure.plants(0.8) + 1)))
        .isCloseTo(points, within(5e-5));
    double tenth = Keyed.normalQuantile(0.9);
    assertThat(100 * NotKnown.lossAt(spreads, mean, 0.8, -tenth)).isCloseTo(p10, within(6e-4));
    assertThat(100 * NotKnown.lossAt(spreads, mean, 0.8, 0)).isCloseTo(p50, within(6e-4));
    assertThat(100 * NotKnown.lossAt(spreads, mean, 0.8, tenth)).isCloseTo(p90, within(6e-4));
  }

  @Test
  void loss_drawn_isTheSeasonsTimesWhatIsNotKnown_andNeverAll() {
    Species unsure =
        Nurseries.working()
            .nursery()
            .species()
            .get("maple")
            .withSure(new Sure(Map.of("pot", 1.0), 0.05, 0.05));
    double most = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      Luck.OfLot luck = lotLuck(draw, unsure);
      double factor =
          new NotKnown(new Keyed(7, draw), MarketSure.KNOWN, new Spreads(), new NameNumbers())
              .loss(unsure, true);
      double known = lotLuck(draw, known(unsure)).loss(true, 0.5, 2027);
      assertThat(luck.loss(true, 0.5, 2027)).isEqualTo(Math.min(0.99, factor * known));
      most = Math.max(most, luck.loss(true, 0.5, 2027));
    }
    assertThat(most).isEqualTo(0.99);
  }

  private static Species known(Species species) {
    return species.withSure(Sure.known(species.growth().keySet()));
  }

  @Test
  void noLoss_staysNone() {
    Species ash =
        Nurseries.bareSpecies("ash", "one").withSure(new Sure(Map.of("pot", 0.5), 0.5, 0.5));
    assertThat(lotLuck(3, ash).loss(true, 0, 2027)).isZero();
  }

  @Test
  void scores_correlateByHalfBetweenSpecies_threeQuartersWithinOne() {
    NameNumbers names = new NameNumbers();
    double[] mapleField = new double[5_000];
    double[] maplePot = new double[5_000];
    double[] elmPot = new double[5_000];
    for (int draw = 0; draw < 5_000; draw++) {
      Keyed keyed = new Keyed(7, draw);
      mapleField[draw] = NotKnown.score(keyed, names, "maple", "field");
      maplePot[draw] = NotKnown.score(keyed, names, "maple", "pot");
      elmPot[draw] = NotKnown.score(keyed, names, "elm", "pot");
    }
    assertThat(correlation(mapleField, mapleField)).isCloseTo(1, within(0.03));
    assertThat(correlation(mapleField, maplePot)).isCloseTo(0.75, within(0.03));
    assertThat(correlation(maplePot, elmPot)).isCloseTo(0.5, within(0.03));
    assertThat(variance(elmPot)).isCloseTo(1, within(0.06));
  }

  private static double correlation(double[] a, double[] b) {
    double product = 0;
    for (int i = 0; i < a.length; i++) {
      product += a[i] * b[i];
    }
    return product / a.length / Math.sqrt(variance(a) * variance(b));
  }

  @Test
  void prices_andDemand_moveTogetherInAllSeasons() {
    MarketSure market = new MarketSure(0.5, 0.8);
    var rows = Nurseries.working().market(market).nursery().demand();
    DrawnLuck luck = luck(4, market);
    double prices = luck.price(rows.get(0), 2027);
    double units = luck.units(rows.get(0), 2027);
    assertThat(prices).isNotEqualTo(1).isEqualTo(luck.price(rows.get(2), 2031));
    assertThat(units).isNotEqualTo(1).isEqualTo(luck.units(rows.get(2), 2031));
    double[] logs = sample(draw -> Math.log(luck(draw, market).price(rows.get(0), 2027)));
    assertThat(Math.sqrt(variance(logs))).isCloseTo(Sure.spread(0.5), within(0.02));
  }

  private static Scenario atWork(double sure, int draws) {
    Scenario scenario =
        Nurseries.working()
            .sure(sure)
            .lot(Lots.boughtMaples("ridge").build())
            .lot(Lots.pottedElms("elms").build())
            .scenario();
    return scenario.withPlan(scenario.plan().withDraws(draws));
  }

  private static Samples samples(Scenario scenario) {
    Samples samples = new Samples(scenario, 0, scenario.plan().seasons());
    new Drawing(scenario, List.of(), samples).run(2, done -> {});
    return samples;
  }

  @Test
  void everythingSure_isLuckAlone_drawForDraw() {
    assertThat(samples(atWork(1, 40)).cash).isDeepEqualTo(samples(atWork(0.5, 40).known()).cash);
    assertThat(atWork(1, 40).isKnown()).isTrue();
    assertThat(atWork(0.9, 40).isKnown()).isFalse();
  }

  @Test
  void anotherLot_changesNoFactorOfTheFirst() {
    Nurseries nursery =
        Nurseries.bare()
            .species(Nurseries.bareSpecies("elm", "one"))
            .sure(0.5)
            .lot(Lots.lot("ash").species("ash").trunks(20, 0).build())
            .lot(Lots.lot("elm").species("elm").trunks(20, 0).build());
    Scenario both = nursery.scenario();
    both = both.withPlan(both.plan().withDraws(40));

    assertThat(LotDraws.draw(both, 2, done -> {}).lot(0))
        .isEqualTo(LotDraws.draw(both.without("elm"), 1, done -> {}).lot(0));
  }

  /** The line knows of no luck, so nothing of it may move with how sure anything is. */
  @Property(tries = 10)
  void line_staysTheSame_howeverSure(@ForAll @DoubleRange(min = 0.01, max = 1) double sure) {
    Scenario unsure = atWork(sure, 0);
    Scenario known = atWork(1, 0);
    assertThat(cash(unsure)).containsExactly(cash(known));
  }

  private static double[] cash(Scenario scenario) {
    return growingon.money.Accounts.of(Projector.project(scenario)).cash().balances();
  }

  @Property(tries = 8)
  void lessSure_neverNarrowsTheTrunksOfALot(
      @ForAll @DoubleRange(min = 0.05, max = 0.9) double sure) {
    Species species = plain(new Curve.Steady(3, Double.POSITIVE_INFINITY), 0.1, 0.08);
    LotDraws.Tenths less = lastTrunk(species, 2, sure);
    LotDraws.Tenths more = lastTrunk(species, 2, Math.min(1, sure * 1.1));
    assertThat(less.p90() - less.p10()).isGreaterThan(more.p90() - more.p10());
  }
}
