package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet that explains others is no list; what it says is quoted where it is asked. */
class LegendTest {
  @TempDir Path folder;

  private static void write(XSSFWorkbook book, String name, String... rows) {
    XSSFSheet sheet = book.createSheet(name);
    for (int r = 0; r < rows.length; r++) {
      String[] cells = rows[r].split("\\|");
      for (int c = 0; c < cells.length; c++) {
        if (!cells[c].isEmpty()) {
          sheet.createRow(r);
        }
      }
      for (int c = 0; c < cells.length; c++) {
        if (!cells[c].isEmpty()) {
          sheet.getRow(r).createCell(c).setCellValue(cells[c]);
        }
      }
    }
  }

  private void planned(String[] list, String... key) throws IOException {
    Path file = folder.resolve("stock.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        var out = Files.newOutputStream(file)) {
      write(book, "Stock", list);
      write(book, "Key", key);
      XSSFCellStyle yellow = book.createCellStyle();
      yellow.setFillForegroundColor(IndexedColors.YELLOW.getIndex());
      yellow.setFillPattern(FillPatternType.SOLID_FOREGROUND);
      book.getSheet("Stock").getRow(1).getCell(0).setCellStyle(yellow);
      book.write(out);
    }
    StringWriter err = new StringWriter();
    int code =
        Main.run(
            new PrintWriter(new StringWriter()),
            new PrintWriter(err, true),
            "plan",
            file.toString(),
            "--draws",
            "0",
            "--out",
            folder.resolve("report").toString());
    assertThat(code).as(err.toString()).isZero();
  }

  private List<String> questions() throws IOException {
    List<String> questions = new ArrayList<>();
    new ObjectMapper()
        .readTree(folder.resolve("report/figures.json").toFile())
        .findValue("to-fill")
        .get("rows")
        .forEach(row -> questions.add(row.get(2).asText()));
    return questions;
  }

  @Test
  void unit_isQuotedInTheQuestionForIt() throws IOException {
    planned(
        new String[] {"Plant|Pot|Qty|Trunk", "Field maple|C10|40|12-14", "Hornbeam|C10|30|14-16"},
        "Our codes",
        "All trunks in mm above the flare",
        "Pots are in the yard",
        "Trunk of Bob's elephant");
    assertThat(questions())
        .filteredOn(each -> each.contains("Trunk"))
        .isNotEmpty()
        .allMatch(
            each -> each.endsWith("(your sheet Key says \"All trunks in mm above the flare\")"));
  }

  @Test
  void size_isQuotedWhereItIsAskedHowThickItIs() throws IOException {
    planned(
        new String[] {"Plant|Size|Qty", "Field maple|M|40", "Hornbeam|M|30"},
        "M|40 to 60 cm",
        "L = 60 to 90 cm");
    assertThat(questions())
        .contains(
            "How thick is the trunk of trees in no pot? (your sheet Key says \"M: 40 to 60 cm\")");
  }

  @Test
  void openHeading_isAskedWithWhatIsSaidOfIt() throws IOException {
    planned(
        new String[] {"Plant|Pot|Qty|Cl", "Field maple|C10|40|B2", "Hornbeam|C10|30|A1"},
        "Cl: class by its crown",
        "Qty counted in October");
    assertThat(questions())
        .contains(
            "What is the column Cl (as in B2)? (your sheet Key says \"Cl: class by its crown\")");
  }

  @Test
  void colour_isQuotedWhereItIsToldThatItIsNotRead() throws IOException {
    planned(
        new String[] {"Plant|Pot|Qty", "Field maple|C10|40", "Hornbeam|C10|30"},
        "yellow|reserved for the show");
    assertThat(Files.readString(folder.resolve("report/problems.txt")))
        .contains(
            "make a column of what they mean (your sheet Key says \"yellow: reserved for the"
                + " show\")")
        .contains("Key is not read as a list: it explains others");
  }
}
