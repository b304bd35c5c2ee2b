package growingon.chance.luck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.market.Demand;
import growingon.nursery.species.Species;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.lot.Luck;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * One assumption set, all others as expected. What is of seasons is set, over four of them, to half
 * of the score that what is of the lot is set to.
 */
class AssumptionsAloneTest {
  private static final double SCORE = 1.6;
  private static final double SEASON_SCORE = 0.8;
  private static final double LOSS = 0.1;

  private static final Lot LOT = Lots.lot("a").unseen(0.5, 0.3, 0.5).bought(5, 0, 0.8, 0.1).build();
  private static final Lot ANOTHER = Lots.lot("b").unseen(0.5, 0.3, 0.5).build();
  private static final Species ASH =
      Nurseries.bareSpecies("ash", "one")
          .with()
          .yearSpread(0.3)
          .lotSpread(OptionalDouble.of(0.2))
          .lossSpread(0.4)
          .build();
  private static final Settings SETTINGS =
      Nurseries.bare().labourSpread(0.1).exchangeSpread(0.15).nursery().settings();
  private static final Demand ROW = Nurseries.uncertainRow(Optional.empty(), 0.25, 0.12);

  /** What each assumption moves of a lot's luck, with what it is when nothing is moved. */
  private static final Map<Assumption, ToDoubleFunction<Luck>> MOVED =
      new EnumMap<>(
          Map.of(
              Assumption.GROWTH, luck -> luck.of(LOT, ASH).growth(2027),
              Assumption.GROWTH_OF_LOT, luck -> luck.of(LOT, ASH).growth(),
              Assumption.TRUNKS_NOT_KNOWN, luck -> luck.of(LOT, ASH).trunks(),
              Assumption.LOSS, luck -> luck.of(LOT, ASH).loss(false, LOSS, 2027) / LOSS,
              Assumption.CONSIGNMENT, luck -> luck.of(LOT, ASH).consignmentLoss(LOSS) / LOSS,
              Assumption.FAILURE, luck -> 1 - luck.of(LOT, ASH).deadOnArrival(),
              Assumption.FIRSTS, luck -> luck.of(LOT, ASH).quality().first() / 0.5,
              Assumption.UNITS, luck -> luck.units(ROW, 2027),
              Assumption.PRICE, luck -> luck.price(ROW, 2027),
              Assumption.MINUTES, luck -> luck.minutes(2027)));

  private static Luck luck(Assumption set) {
    return new FixedLuck(set, SCORE, 4, LOT, OptionalDouble.of(0.2), SETTINGS, new Spreads());
  }

  /** A lognormal of mean 1 at a standard normal score: its logarithm is of mean −v/2. */
  private static double lognormal(double spread, double score) {
    double variance = Math.log(1 + spread * spread);
    return Math.exp(Math.sqrt(variance) * score - variance / 2);
  }

  @ParameterizedTest
  @EnumSource(Assumption.class)
  void assumption_movesItself_andNothingElse(Assumption set) {
    MOVED.forEach(
        (each, figure) -> {
          double found = figure.applyAsDouble(luck(set));
          if (each == set) {
            assertThat(found).as(each.name()).isNotCloseTo(1, within(1e-6));
          } else {
            assertThat(found).as(each.name()).isEqualTo(1);
          }
        });
    boolean abroad = set == Assumption.EXCHANGE;
    assertThat(luck(set).exchange("EUR", 2027))
        .isEqualTo(abroad ? lognormal(0.15, SCORE) : 1, within(abroad ? 1e-12 : 0));
    assertThat(luck(set).exchange("GBP", 2027)).isEqualTo(1);
  }

  @Test
  void factors_lieWhereTheirScoreIs() {
    Map<Assumption, Double> expected =
        Map.of(
            Assumption.GROWTH, lognormal(0.3, SEASON_SCORE),
            Assumption.GROWTH_OF_LOT, lognormal(0.2, SCORE),
            Assumption.UNITS, lognormal(0.25, SEASON_SCORE),
            Assumption.PRICE, lognormal(0.12, SEASON_SCORE),
            Assumption.MINUTES, lognormal(0.1, SEASON_SCORE),
            Assumption.FAILURE, 1 - 0.2,
            Assumption.FIRSTS, 0.2 / 0.5);
    expected.forEach(
        (set, factor) ->
            assertThat(MOVED.get(set).applyAsDouble(luck(set)))
                .as(set.name())
                .isCloseTo(factor, within(1e-12)));
  }

  /**
   * A yearly loss spreads by 0.4 of itself; that of a consignment 80 % sure as 40 plants seen do.
   */
  @Test
  void losses_lieWhereTheirScoreIs() {
    Spreads spreads = new Spreads();
    assertThat(MOVED.get(Assumption.LOSS).applyAsDouble(luck(Assumption.LOSS)))
        .isCloseTo(spreads.share(LOSS, 0.04, SEASON_SCORE) / LOSS, within(1e-9));
    assertThat(MOVED.get(Assumption.CONSIGNMENT).applyAsDouble(luck(Assumption.CONSIGNMENT)))
        .isCloseTo(spreads.share(LOSS, Math.sqrt(0.09 / 41), SCORE) / LOSS, within(1e-9));
  }

  @Test
  void whatIsOfALot_movesNoOther() {
    for (Assumption set :
        Set.of(
            Assumption.GROWTH_OF_LOT,
            Assumption.TRUNKS_NOT_KNOWN,
            Assumption.CONSIGNMENT,
            Assumption.FAILURE,
            Assumption.FIRSTS)) {
      Luck.OfLot other = luck(set).of(ANOTHER, ASH);
      assertThat(other.growth()).isEqualTo(1);
      assertThat(other.trunks()).isEqualTo(1);
      assertThat(other.consignmentLoss(LOSS)).isEqualTo(LOSS);
      assertThat(other.deadOnArrival()).isZero();
      assertThat(other.quality()).isEqualTo(new QualityShares(0.5, 0.3, false, 0.5));
    }
  }

  @Test
  void growthKnownOtherwise_isThatOfTheSpeciesInItsCondition() {
    Luck faster = KnownOtherwise.speeds("ash", Map.of("pot", 1.3));

    assertThat(faster.of(LOT, ASH).speed("pot")).isEqualTo(1.3);
    assertThat(faster.of(LOT, ASH).speed("field")).isEqualTo(1);
    assertThat(faster.of(LOT, ASH).loss(true, LOSS, 2027)).isEqualTo(LOSS);
    assertThat(faster.of(LOT, ASH).quality()).isEqualTo(LOT.quality());
    Species oak = Nurseries.bareSpecies("oak", "one");
    assertThat(faster.of(LOT, oak).speed("pot")).isEqualTo(1);
    assertThat(faster.units(ROW, 2027)).isEqualTo(1);
    assertThat(faster.price(ROW, 2027)).isEqualTo(1);
  }

  @Test
  void lossKnownOtherwise_isTheOneNamed_andNeverAll() {
    Luck.OfLot first = KnownOtherwise.loss("ash", true, 1.5).of(LOT, ASH);
    Luck.OfLot later = KnownOtherwise.loss("ash", false, 1.5).of(LOT, ASH);

    assertThat(first.loss(true, LOSS, 2027)).isCloseTo(0.15, within(1e-12));
    assertThat(first.loss(false, LOSS, 2027)).isEqualTo(LOSS);
    assertThat(later.loss(true, LOSS, 2027)).isEqualTo(LOSS);
    assertThat(later.loss(false, LOSS, 2027)).isCloseTo(0.15, within(1e-12));
    assertThat(later.loss(false, 0.9, 2027)).isEqualTo(0.99);
  }

  @Test
  void marketKnownOtherwise_isOfAllPricesOrAllUnits() {
    Luck market = KnownOtherwise.market(1.2, 0.7);

    assertThat(market.price(ROW, 2027)).isEqualTo(1.2);
    assertThat(market.units(ROW, 2027)).isEqualTo(0.7);
    assertThat(market.of(LOT, ASH).loss(true, LOSS, 2027)).isEqualTo(LOSS);
  }

  /**
   * The luck of a draw: rows and seasons are each of their own, and only what has a spread moves.
   */
  @Test
  void marketMinutesAndRate_ofADraw_moveWhereTheyHaveASpread() {
    Luck luck =
        new Draws(Nurseries.bare().labourSpread(0.1).exchangeSpread(0.15).scenario()).luck(3);
    Demand other = Nurseries.uncertainRow(Optional.of("oak"), 0.25, 0.12);

    assertThat(luck.units(ROW, 2027)).isNotEqualTo(luck.units(other, 2027));
    assertThat(luck.minutes(2027)).isNotEqualTo(luck.minutes(2028)).isNotEqualTo(1);
    assertThat(luck.exchange("EUR", 2027)).isNotEqualTo(luck.exchange("USD", 2027)).isNotEqualTo(1);
    assertThat(luck.exchange("GBP", 2027)).isEqualTo(1);
    Luck plain = new Draws(Nurseries.bare().scenario()).luck(3);
    assertThat(plain.minutes(2027)).isEqualTo(1);
    assertThat(plain.exchange("EUR", 2027)).isEqualTo(1);
  }
}
