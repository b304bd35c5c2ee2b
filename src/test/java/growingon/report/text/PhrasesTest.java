package growingon.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.report.model.Rows;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;

class PhrasesTest {
  @Test
  void list_namesAllOrSaysHowManyMore() {
    List<String> words = List.of("a", "b", "c", "d");
    assertThat(Phrases.list(List.of())).isEmpty();
    assertThat(Phrases.list(List.of("a"))).isEqualTo("a");
    assertThat(Phrases.list(words)).isEqualTo("a, b, c and d");
    assertThat(Phrases.list(words, 2, "places")).isEqualTo("a, b and 2 more places");
    assertThat(Phrases.list(words, 3, "places")).isEqualTo("a, b, c and d");
  }

  @Test
  void calendarSpan_isTheShortestThatHoldsAll() {
    assertThat(Phrases.calendarSpan(List.of(3))).isEqualTo("Mar");
    assertThat(Phrases.calendarSpan(List.of(1, 2, 3, 11, 12))).isEqualTo("Nov–Mar");
    assertThat(Phrases.calendarSpan(List.of(11, 3, 11))).isEqualTo("Nov–Mar");
    assertThat(Phrases.calendarSpan(List.of(6, 4))).isEqualTo("Apr–Jun");
    assertThat(Phrases.calendarSpan(List.of(12, 1))).isEqualTo("Dec–Jan");
    assertThat(Phrases.calendarSpan(List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12)))
        .isEqualTo("all year");
  }

  @Test
  void span_namesTheYearOnceWithinAYear() {
    YearMonth march = YearMonth.of(2027, 3);
    assertThat(Phrases.PLAIN.span(march, march)).isEqualTo("in Mar 2027");
    assertThat(Phrases.PLAIN.span(march, YearMonth.of(2027, 5))).isEqualTo("from Mar to May 2027");
    assertThat(Phrases.PLAIN.span(march, YearMonth.of(2028, 2)))
        .isEqualTo("from Mar 2027 to Feb 2028");
  }

  @Test
  void counted_agreesInNumber() {
    assertThat(Phrases.PLAIN.plants(1.2)).isEqualTo("1 plant");
    assertThat(Phrases.PLAIN.plants(0.4)).isEqualTo("0 plants");
    assertThat(Phrases.PLAIN.plants(1234.5)).isEqualTo("1,235 plants");
  }

  @Test
  void fitted_dropsWordsUntilTheLineFits() {
    List<String> words = List.of("first", "second", "third", "fourth");
    assertThat(Phrases.fitted(4, 31, most -> Phrases.list(words, most, "words")))
        .isEqualTo("first, second, third and fourth");
    assertThat(Phrases.fitted(4, 30, most -> Phrases.list(words, most, "words")))
        .isEqualTo("first, second and 2 more words");
    assertThat(Phrases.fitted(4, 3, most -> Phrases.list(words, most, "words")))
        .isEqualTo("first and 3 more words");
  }

  @Test
  void spells_areRunsOfMonthsThatShow() {
    double[] short_ = {0, 2, 3, 0.04, 1, 0};
    assertThat(Spell.of(6, month -> short_[month]))
        .containsExactly(new Spell(1, 2, 2, 3, 5), new Spell(4, 4, 4, 1, 1));
    assertThat(Spell.of(6, month -> 0)).isEmpty();
  }

  @Test
  void keys_areUnique() {
    assertThat(Rows.keys(List.of("Bench 1", "bench-1", "Größe")))
        .containsExactly("bench_1", "bench_1_2", "größe");
  }
}
