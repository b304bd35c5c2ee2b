package growingon.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import growingon.Office;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows that come from a grower's own list lead there. */
class LinksToListTest {
  private static final String SHEET = "Beete & Hof's";
  private static final Pattern HREF =
      Pattern.compile("<text:a xlink:href=\"([^\"]*)\"[^>]*>([^<]*)<");

  @TempDir Path temporary;

  private Path folder;
  private Path list;

  @BeforeEach
  void writeList() throws IOException {
    folder = Files.createDirectory(temporary.resolve("Höfe 100% #2"));
    list = folder.resolve("Bestand Nov ö 26.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        var out = Files.newOutputStream(list)) {
      XSSFSheet sheet = book.createSheet(SHEET);
      String[][] rows = {
        {"Our yard"},
        {"Plant", "Size", "Qty", "Dept", "Bought"},
        {"Field maple", "C10", "40", "Trees", "Nov 2024"},
        {"Hornbeam", "C10", "about thirty", "Trees", "Nov 2024"},
        {"Scots pine", "C10", "25", "Trees", "02/11/2024"}
      };
      for (int i = 0; i < rows.length; i++) {
        var row = sheet.createRow(i);
        for (int c = 0; c < rows[i].length; c++) {
          row.createCell(c).setCellValue(rows[i][c]);
        }
      }
      book.write(out);
    }
  }

  private void run(String... args) {
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(new StringWriter()), new PrintWriter(err, true), args);
    assertThat(code).as(err.toString()).isZero();
  }

  private Path started() {
    run("start", folder.resolve("mine").toString(), "--from", list.toString());
    return folder.resolve("mine/nursery.xlsx");
  }

  /** A link of a workbook, and what stands in its row. */
  private record Link(Path file, CellReference cell, List<String> row) {}

  private static List<Link> links(Path workbook, String sheet) throws IOException {
    List<Link> links = new ArrayList<>();
    DataFormatter shown = new DataFormatter();
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(workbook))) {
      for (XSSFHyperlink link : book.getSheet(sheet).getHyperlinkList()) {
        if (!link.getAddress().contains("#")) {
          continue;
        }
        List<String> row = new ArrayList<>();
        book.getSheet(sheet)
            .getRow(link.getFirstRow())
            .forEach(cell -> row.add(shown.formatCellValue(cell)));
        // The library gives address and place of a link as one.
        String address = link.getAddress().substring(0, link.getAddress().indexOf('#'));
        URI file = workbook.toUri().resolve(address);
        links.add(new Link(Path.of(file), new CellReference(link.getLocation()), row));
      }
    }
    return links;
  }

  private String inList(CellReference cell) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(list))) {
      return book.getSheet(cell.getSheetName())
          .getRow(cell.getRow())
          .getCell(cell.getCol())
          .getStringCellValue();
    }
  }

  @Test
  void questionsOfARow_leadToTheCellTheyAskOf() throws IOException {
    List<Link> links = links(started(), "to fill");
    assertThat(links).extracting(Link::file).containsOnly(list);
    List<String> asked = new ArrayList<>();
    for (Link link : links) {
      asked.add(link.row().get(link.row().size() - 1) + ": " + inList(link.cell()));
    }
    assertThat(asked)
        .containsExactly(
            SHEET + ", row 2: Dept",
            SHEET + ", row 4: about thirty",
            SHEET + ", row 5: 02/11/2024");
  }

  @Test
  void rowsAsRead_leadToTheList_fromWhereverTheReportIs() throws IOException {
    Path report = temporary.resolve("out/of the way");
    run("plan", list.toString(), "--draws", "0", "--out", report.toString());
    List<Link> links = new ArrayList<>();
    try (XSSFWorkbook book =
        new XSSFWorkbook(Files.newInputStream(report.resolve("details.xlsx")))) {
      for (int i = 0; i < book.getNumberOfSheets(); i++) {
        if (!book.getSheetAt(i).getHyperlinkList().isEmpty()) {
          String name = book.getSheetName(i);
          links(report.resolve("details.xlsx"), name).stream()
              .filter(link -> link.row().contains(SHEET))
              .forEach(links::add);
        }
      }
    }
    assertThat(links).hasSize(2).extracting(Link::file).containsOnly(list);
    for (Link link : links) {
      assertThat(link.row()).contains(Integer.toString(link.cell().getRow() + 1));
      assertThat(link.row()).contains(inList(link.cell()));
    }
  }

  /** As another program understands them, which writes each as it would follow it. */
  @Test
  void links_readByLibreOffice_areTheListAndTheCell() throws Exception {
    Path workbook = started();
    Office office = Office.in(Files.createDirectory(temporary.resolve("office")));
    Path flat = office.convert(workbook, "fods");
    Matcher found = HREF.matcher(Files.readString(flat));
    List<String> cells = new ArrayList<>();
    while (found.find()) {
      String href = found.group(1).replace("&apos;", "'").replace("&amp;", "&");
      String[] parts = URLDecoder.decode(href.replaceFirst("#", "\n"), UTF_8).split("\n");
      assertThat(flat.resolveSibling(parts[0]).normalize()).isEqualTo(list);
      cells.add(parts[1]);
    }
    String sheet = "'" + SHEET.replace("'", "''") + "'!";
    assertThat(cells).containsExactly(sheet + "D2", sheet + "C4", sheet + "E5");
  }

  @Test
  void linesOfAText_leadToTheSheetThatIsCalledLikeIt() throws IOException {
    list = folder.resolve("Stock, Nov.csv");
    Files.writeString(list, "Plant,Size,Qty\nHornbeam,C10,30\nField maple,C10,forty?\n");
    List<Link> links = links(started(), "to fill");
    assertThat(links).extracting(Link::file).containsExactly(list);
    assertThat(links.get(0).cell()).isEqualTo(new CellReference("'Stock, Nov'!C3"));
    assertThat(links.get(0).row()).endsWith("row 3");
  }
}
