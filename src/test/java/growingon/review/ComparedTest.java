package growingon.review;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.review.Judged.Take;
import growingon.review.book.Tally;
import growingon.review.kept.KeptSpan;
import growingon.review.kept.Range;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Figures as planned and as they came, by hand. */
class ComparedTest {
  private static final Compared SOLD =
      new Compared(30, 24.4, true, Optional.of(new Range(20, 30, 40)));
  private static final Compared REST = new Compared(7, 9, false, Optional.empty());

  @Test
  void figureOfTheDaybook_isAllByTheDaybook_anotherIsAssumed() {
    assertThat(SOLD.byDaybook()).isEqualTo(24.4);
    assertThat(SOLD.assumed()).isZero();
    assertThat(SOLD.wholeReal()).isEqualTo(24);
    assertThat(SOLD.wholeAssumed()).isZero();
    assertThat(REST.assumed()).isEqualTo(9);
    assertThat(REST.wholeAssumed()).isEqualTo(9);
    assertThat(SOLD.partly(10).assumed()).isEqualTo(24.4 - 10);
    assertThat(SOLD.partly(10).wholeAssumed()).isEqualTo(14);
    assertThat(SOLD.difference()).isEqualTo(24.4 - 30);
  }

  @Test
  void figures_addUpAndAreTaken_partByPart() {
    Compared both = SOLD.whole(31, 25).plus(REST);
    assertThat(both).isEqualTo(new Compared(37, 33.4, true, Optional.empty(), 38, 34, 24.4, 25));
    assertThat(REST.plus(SOLD).isReal()).isTrue();
    assertThat(REST.plus(REST).isReal()).isFalse();
    assertThat(both.less(REST))
        .isEqualTo(new Compared(30, 33.4 - 9, true, Optional.empty(), 31, 25, 24.4, 25));
    assertThat(REST.less(REST).isReal()).isFalse();
    assertThat(SOLD.plus(SOLD))
        .isEqualTo(new Compared(60, 48.8, true, Optional.empty(), 60, 48, 48.8, 48));
    assertThat(SOLD.less(SOLD)).isEqualTo(new Compared(0, 0, true, Optional.empty(), 0, 0, 0, 0));
    assertThat(SOLD.against(50, Optional.empty(), 50))
        .isEqualTo(new Compared(50, 24.4, true, Optional.empty(), 50, 24, 24.4, 24));
  }

  private static Judged judged(double real, Optional<KeptSpan.At> luck) {
    return new Judged("elms", Judged.What.DEATHS, 10, real, luck, new KeptSpan.At(5, 20, 0.15));
  }

  @Test
  void figure_isLuckOrMore_byWhereItLies() {
    Optional<KeptSpan.At> luck = Optional.of(new KeptSpan.At(8, 12, 0.2));

    assertThat(judged(12, luck).take()).isEqualTo(Take.LUCK);
    assertThat(judged(13, luck).take()).isEqualTo(Take.MORE_THAN_LUCK);
    assertThat(judged(21, luck).take()).isEqualTo(Take.MORE_THAN_KNOWN);
    assertThat(judged(13, Optional.empty()).take()).isEqualTo(Take.LUCK);
    assertThat(judged(13, luck).outsideByLuck()).isEqualTo(0.2);
    assertThat(judged(13, Optional.empty()).outsideByLuck()).isEqualTo(0.15);
  }

  private static final Whereabouts WENT = new Whereabouts(100, 20, 3, 4, 10, 9, 50, 8, 7, 2, 41);

  @Test
  void plants_thatCame_areThoseThatWentAndStand() {
    assertThat(WENT.difference()).isZero();
    assertThat(WENT.withStanding(40).difference()).isEqualTo(1);
    assertThat(WENT.withDied(12).difference()).isEqualTo(-2);
  }

  /** What each part lacks is added; less than nothing lost was found, and the other way round. */
  @Test
  void plants_asBooked_areNeverFewerThanNoneLostOrFound() {
    Map<Tally.Of, Double> lacks =
        Map.of(
            Tally.Of.ARRIVED,
            1.0,
            Tally.Of.SPLIT_IN,
            2.0,
            Tally.Of.RETURNED,
            3.0,
            Tally.Of.DIED,
            4.0,
            Tally.Of.CULLED,
            5.0,
            Tally.Of.SOLD,
            6.0,
            Tally.Of.USED,
            7.0,
            Tally.Of.SPLIT_OUT,
            8.0,
            Tally.Of.LOST,
            -5.0);
    assertThat(WENT.plus(of -> lacks.getOrDefault(of, 0.0)))
        .isEqualTo(new Whereabouts(101, 22, 6, 7, 14, 14, 56, 15, 15, 0, 41));
    assertThat(WENT.plus(of -> of == Tally.Of.FOUND ? -6 : 0))
        .isEqualTo(new Whereabouts(100, 20, 3, 0, 10, 9, 50, 8, 7, 4, 41));
    assertThat(WENT.plus(of -> of == Tally.Of.FOUND ? 1 : 0).found()).isEqualTo(5);
  }
}
