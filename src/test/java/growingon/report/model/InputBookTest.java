package growingon.report.model;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.report.model.InputBook.InputSheet;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class InputBookTest {
  /** The order of a hashed map may change from one Java to the next, and the workbook with it. */
  @Test
  void choicesOfRows_comeInTheOrderOfTheRows() {
    List<Integer> rows = IntStream.range(0, 50).map(i -> i * 37 % 50).boxed().toList();
    InputSheet sheet =
        new InputSheet(
            "own words",
            List.of(),
            List.of(),
            0,
            0,
            rows.stream().collect(Collectors.toMap(Function.identity(), row -> List.of("yes"))),
            Origins.NONE);
    assertThat(List.copyOf(sheet.choices().keySet())).isSorted().hasSize(50);
  }
}
