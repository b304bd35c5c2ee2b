package growingon.load.own.size;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RangeColumnsTest {
  private static TreeMap<Integer, String> headings(String... texts) {
    TreeMap<Integer, String> headings = new TreeMap<>();
    for (int i = 0; i < texts.length; i++) {
      headings.put(i, texts[i]);
    }
    return headings;
  }

  @ParameterizedTest
  @CsvSource({
    "Höhe von, Höhe bis, Höhe",
    "Height cm from, Height cm to, Height cm",
    "from height, to height, height",
    "Hauteur de, Hauteur à, Hauteur",
    "min girth, max girth, girth"
  })
  void twoEnds_areOneColumn(String lower, String upper, String both) {
    RangeColumns ranges = RangeColumns.of(headings("Plant", lower, upper, "Qty"));
    assertThat(ranges.texts()).isEqualTo(Map.of(0, "Plant", 1, both, 3, "Qty"));
  }

  @ParameterizedTest
  @CsvSource({"From, To", "Height from, Girth to", "Höhe bis, Höhe von", "Qty, Qty"})
  void otherColumns_stayAsTheyAre(String one, String other) {
    assertThat(RangeColumns.of(headings(one, other)).ends()).isEmpty();
  }

  @Test
  void row_hasBothEndsInOneCell() {
    RangeColumns ranges = RangeColumns.of(headings("Höhe von", "Höhe bis", "Stück"));
    assertThat(cells(ranges, Map.of(0, "60", 1, "80", 2, "5")))
        .isEqualTo(Map.of(0, "60-80", 2, "5"));
    assertThat(cells(ranges, Map.of(0, "60", 2, "5"))).isEqualTo(Map.of(0, "60", 2, "5"));
    assertThat(cells(ranges, Map.of(1, "80"))).isEqualTo(Map.of(0, "80"));
    assertThat(cells(ranges, Map.of(0, "80", 1, "80"))).isEqualTo(Map.of(0, "80"));
  }

  private static Map<Integer, String> cells(RangeColumns ranges, Map<Integer, String> texts) {
    TreeMap<Integer, SheetCell> cells = new TreeMap<>();
    texts.forEach((column, text) -> cells.put(column, SheetCell.of(text)));
    TreeMap<Integer, String> joined = new TreeMap<>();
    ranges
        .joined(new SheetRow(2, false, cells))
        .cells()
        .forEach((column, cell) -> joined.put(column, cell.text()));
    return joined;
  }
}
