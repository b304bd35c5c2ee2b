package growingon.write.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.report.model.InputBook;
import growingon.report.model.InputBook.InputColumn;
import growingon.report.model.InputBook.InputSheet;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows below those that are asked for are closed, however many there are. */
class ClosedRowsTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"1, 0", "20, 14", "49, 14", "50, 14", "51, 14", "70, 0", "99, 98", "100, 14"})
  void rows_areClosed_fromTheFirstThatIsNotAskedFor(int rows, int asked) throws IOException {
    List<List<String>> cells =
        IntStream.range(0, rows).mapToObj(row -> List.of("row " + row)).toList();
    InputColumn column = new InputColumn("asked", "note.", InputBook.Holds.TEXT, false, false, "");
    InputSheet sheet = new InputSheet("to fill", List.of(column), cells, asked, -1);
    byte[] bytes =
        InputWorkbook.bytes(new InputBook("book", List.of(), List.of(sheet), List.of()), folder);
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      XSSFSheet written = book.getSheet("to fill");
      for (int row = 0; row < rows; row++) {
        assertThat(written.getRow(row + 1).getZeroHeight())
            .as("row %d", row)
            .isEqualTo(row >= asked);
      }
    }
  }
}
