package growingon.write.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import growingon.write.text.Numbers;
import java.util.List;
import org.junit.jupiter.api.Test;

class ColumnTotalTest {
  private static Table table(Object first, Object second) {
    Column amount = Column.summed("amount", "amount", "GBP", Kind.MONEY);
    return new Table(
        "t", "T", List.of(), List.of(amount), List.of(List.of(first), List.of(second)));
  }

  @Test
  void total_gapsCountAsNil() {
    assertThat(Numbers.total(table(2.5, ""), 0)).hasValue(2.5);
  }

  @Test
  void total_figuresThatCancelOut_isNil() {
    assertThat(Numbers.total(table(2.5, -2.5), 0)).hasValue(0);
  }

  @Test
  void total_noFigureInAnyRow_isNone() {
    assertThat(Numbers.total(table("", ""), 0)).isEmpty();
  }
}
