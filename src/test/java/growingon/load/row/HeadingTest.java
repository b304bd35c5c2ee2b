package growingon.load.row;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.cell.Range;
import growingon.load.source.TableFormat;
import growingon.nursery.lot.Form;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Columns of input tables, which say themselves what they are. */
class HeadingTest {
  private static final Heading<Double> SPREAD =
      Heading.number("spread %", As.share()).usual(0.15).means("How unlike they are");

  @Test
  void usualValue_isSaidAsACellWouldSayIt() {
    assertThat(SPREAD.ifEmpty()).isEqualTo("15");
    assertThat(Heading.yesNo("take").usual(false).ifEmpty()).isEqualTo("no");
    assertThat(Heading.text("form", As.word(Form.class)).usual(Form.BARE_ROOT).ifEmpty())
        .isEqualTo("bare root");
    assertThat(Heading.month("counted").ifEmpty("this month").ifEmpty()).isEqualTo("this month");
    assertThat(Heading.month("potted").ifEmpty()).isEmpty();
  }

  @Test
  void columnOfAnotherTable_keepsItsUsualValueAndSaysMore() {
    Heading<Double> other = SPREAD.expert().needed().means("How unlike they were");
    assertThat(other.usual()).contains(0.15);
    assertThat(other.says().meaning()).isEqualTo("How unlike they were");
    assertThat(other.says().expert()).isTrue();
    assertThat(other.says().needed()).isTrue();
    assertThat(other.plain().says().expert()).isFalse();
    assertThat(SPREAD.says().needed()).isFalse();
  }

  @Test
  void readAsSomethingElse_nothingIsUsualOfIt() {
    assertThat(SPREAD.as(As.TEXT).usual()).isEmpty();
    assertThat(SPREAD.reading(As.number(Range.FROM_ZERO)).usual()).contains(0.15);
  }

  @Test
  void tableOfColumns_needsWhatTheySay_andUnderstandsTheirOtherSpellings() {
    TableFormat format =
        TableFormat.of("trees", Heading.named("tree").needed(), SPREAD.also("variation %"));
    assertThat(format.needed()).containsExactly("tree");
    assertThat(format.subject()).containsExactly("tree");
    assertThat(format.optional()).containsExactly("spread %");
    assertThat(format.spellings()).containsEntry("variation %", "spread %");
    assertThat(format.columns()).extracting(Heading::name).isEqualTo(List.of("tree", "spread %"));
  }
}
