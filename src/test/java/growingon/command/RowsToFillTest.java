package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is to be done first is told with its row on the sheet to fill as the grower finds it. */
class RowsToFillTest {
  private static final String LIST =
      "Plant,Size,Qty,Notes\nField maple,C10,40,NFS\nHornbeam,C10,30,NFS\nScots pine,C10,20,NFS\n";

  @TempDir Path folder;
  private Path list;
  private Path mine;

  @BeforeEach
  void listOfThreeQuestions() throws IOException {
    list = Files.writeString(folder.resolve("stock.csv"), LIST);
    mine = folder.resolve("mine");
  }

  private static String first(String... arguments) {
    Ran ran = Ran.of(arguments);
    assertThat(ran.err()).isEmpty();
    return ran.out()
        .lines()
        .filter(line -> line.startsWith("Do this first: "))
        .findFirst()
        .orElse("");
  }

  private String planned(Path what) {
    return first(
        "plan", what.toString(), "--draws", "0", "--out", folder.resolve("report").toString());
  }

  /** Types into the sheet; gives what it asks in the row below. */
  private String answered(int row, String text) throws IOException {
    Path book = mine.resolve("nursery.xlsx");
    String next;
    try (InputStream from = Files.newInputStream(book);
        XSSFWorkbook nursery = new XSSFWorkbook(from)) {
      XSSFSheet sheet = nursery.getSheet("to fill");
      sheet.getRow(row - 1).getCell(0).setCellValue(text);
      next = sheet.getRow(row).getCell(2).getStringCellValue();
      try (OutputStream to = Files.newOutputStream(book)) {
        nursery.write(to);
      }
    }
    return next.replaceFirst("\\?$", "");
  }

  @Test
  void workbook_withSomeAnswered_isNamedByItsOwnRows() throws IOException {
    String started = first("start", mine.toString(), "--from", list.toString());
    assertThat(started).contains("row 2, Qty").contains(" (to fill, row 2)");
    String second = answered(2, "40");
    assertThat(second).startsWith("row 3, Qty");
    assertThat(planned(mine)).contains(second + " (to fill, row 3)");
    String third = answered(3, "30");
    assertThat(third).startsWith("row 4, Qty");
    assertThat(planned(mine)).contains(third + " (to fill, row 4)");
  }

  @Test
  void questionNewInTheList_wantsANewRow() throws IOException {
    first("start", mine.toString(), "--from", list.toString());
    answered(2, "40");
    answered(3, "30");
    answered(4, "20");
    assertThat(planned(mine)).isEmpty();
    Files.writeString(list, LIST + "Beech,C10,7,NFS\n");
    assertThat(planned(mine))
        .startsWith("Do this first: row 5, Qty")
        .contains(" (to fill, a new row: table stock, row Beech, column quantity)");
  }

  @Test
  void answersBesideAList_areNamedByTheRowsOfTheirFile() throws IOException {
    assertThat(planned(list)).contains("row 2, Qty").contains(" (to fill, row 2)");
    Files.writeString(
        folder.resolve("to fill.csv"),
        "fill in,table,row,column\n12,settings,hourly rate,value\n\n40,stock,Field maple,quantity\n"
            + ",stock,Scots pine,quantity\n,stock,Hornbeam,quantity\n");
    assertThat(planned(list)).contains("row 3, Qty").contains(" (to fill, row 6)");
  }
}
