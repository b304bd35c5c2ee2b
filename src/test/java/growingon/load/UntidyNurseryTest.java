package growingon.load;

import static growingon.load.Books.row;
import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.Books.Formatted;
import growingon.load.Books.Formula;
import growingon.nursery.Inputs;
import growingon.problem.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The small nursery as it might really be kept: the same in the end. */
class UntidyNurseryTest {
  @TempDir private Path tidy;
  @TempDir private Path untidy;

  @BeforeEach
  void layOut() throws IOException {
    SmallNursery.copyTidy(tidy);
    SmallNursery.copy("untidy", untidy);
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      stock(book.createSheet(" STOCK "));
      offers(book.createSheet("Offers"));
      hours(book.createSheet("hours"));
      settings(book.createSheet("Settings"));
      row(book.createSheet("scratch"), 0, 0, "lot", "quantity");
      book.setSheetHidden(4, true);
      row(book.createSheet("addresses"), 0, 0, "name", "town");
      Books.save(book, untidy.resolve("Our nursery 2026.xlsx"));
    }
  }

  /** Headings in two rows and another order, below a title, beside a blank column. */
  private static void stock(Sheet sheet) {
    row(sheet, 0, 1, "Mossgate Trees: stock list, autumn 2026");
    sheet.addMergedRegion(new CellRangeAddress(0, 0, 1, 12));
    row(
        sheet,
        2,
        1,
        "LOT",
        "Species",
        "Trunk",
        null,
        null,
        null,
        "Girth",
        null,
        "  quantity ",
        "Form",
        "Arrived",
        "counted",
        "First%",
        "second %",
        "Sorted",
        "Pot",
        "Potted",
        "root work",
        "Place",
        "gap (mm)",
        "Plants per m²",
        "crown mm",
        "height left mm",
        "Route",
        "Last step");
    row(sheet, 3, 1, null, null, "mm", "spread %", "from mm", "to mm", "from cm", "to cm");
    sheet.addMergedRegion(new CellRangeAddress(2, 2, 3, 6));
    sheet.addMergedRegion(new CellRangeAddress(2, 2, 7, 8));
    sheet.addMergedRegion(new CellRangeAddress(2, 3, 1, 1));
    row(
        sheet,
        2,
        26,
        "Training since",
        "hold to grade",
        "Kept",
        "Not before",
        "unit cost",
        "Supplier",
        "Passport",
        "Origin",
        "Note",
        "seen by");
    row(
        sheet,
        5,
        1,
        12,
        " Rowan",
        "14,5 mm",
        new Formatted(0.18, "0%"),
        null,
        null,
        null,
        null,
        new Formula("200+40", 240),
        "Seedling",
        LocalDate.of(2025, 3, 14),
        "Sep 2026",
        "90 %",
        10,
        true,
        "Liner pot",
        "March 25",
        null,
        "north\u00A0bench",
        "20 mm",
        null,
        150,
        "400",
        "pot and wire",
        "Pot up",
        "6/2025",
        null,
        5,
        "2026-03-01",
        "€ 3.25",
        "Uplands Seedlings",
        "UP-77",
        "home grown",
        "strong lot",
        "Anna");
    row(
        sheet,
        7,
        1,
        "Yews",
        "YEW",
        null,
        null,
        "20",
        "30",
        null,
        null,
        "60 plants",
        "bare-root",
        new Formatted(LocalDate.of(2024, 11, 1), "mmm yy"),
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        "Top  field",
        null,
        9,
        null,
        null,
        "Field First");
    row(
        sheet,
        8,
        1,
        "Old rowans",
        "rowan\u200E",
        null,
        null,
        null,
        null,
        10,
        12,
        30,
        "container",
        "May 2023",
        null,
        70,
        20,
        "No",
        "training pot",
        "15.3.2026",
        "5/2023",
        "yard",
        100,
        null,
        null,
        null,
        "pot and wire",
        "pot on",
        "June '25",
        "Specimen",
        "2",
        null,
        12);
  }

  private static void offers(Sheet sheet) {
    row(
        sheet,
        0,
        0,
        "offer",
        "take",
        "quantity",
        "supplier",
        "species",
        "form",
        "unit price",
        "currency",
        "least",
        "multiple",
        "most",
        "arrival month",
        "carriage",
        "import charges",
        "trunk mm",
        "spread %",
        "girth from cm",
        "girth to cm",
        "first %",
        "second %",
        "quality sure %",
        "loss sure %",
        "fails %",
        "place",
        "plants per m2",
        "route",
        "hold to grade",
        "hold share %",
        "not before",
        "apart months",
        "passport",
        "origin");
    row(
        sheet,
        1,
        0,
        "spring liners",
        "Y",
        100,
        "Uplands Seedlings",
        "Rowan",
        "Bare root",
        "2.40 €",
        "€",
        50,
        50,
        500,
        LocalDate.of(2027, 2, 20),
        35,
        null,
        9,
        "20",
        null,
        null,
        80,
        15,
        70,
        null,
        null,
        "Yard",
        null,
        "pot and wire",
        null,
        null,
        null,
        null,
        "UP-78",
        "home grown");
    row(sheet, 2, 0, "Spring liners", null, null, null, null, null, 2.1, null, 200);
    row(
        sheet,
        3,
        0,
        "big yews",
        false,
        null,
        "Far Fields",
        "Yew",
        "root ball",
        "CHF 55",
        "chf",
        null,
        null,
        40,
        "2027/11",
        "600",
        80,
        null,
        null,
        16,
        18,
        null,
        null,
        null,
        "60 %",
        new Formatted(0.05, "0.0 %"),
        "Top field",
        2,
        "field first",
        "bench",
        40,
        "Sept. 2028",
        "2 months",
        null,
        "abroad");
  }

  private static void hours(Sheet sheet) {
    int[] hours = {120, 130, 180, 180, 170, 160, 140, 130, 150, 150, 140, 100};
    row(sheet, 0, 0, "Month (1–12)", "Hours available");
    for (int month = 12; month >= 1; month--) {
      Object name = month == 3 ? "March" : month;
      row(sheet, 13 - month, 0, name, hours[month - 1]);
    }
  }

  private static void settings(Sheet sheet) {
    row(sheet, 0, 0, "Name", "Value", "Note");
    row(sheet, 1, 0, "name", "Mossgate Trees");
    row(sheet, 2, 0, "Currency", "€");
    row(sheet, 3, 0, "Exchange rate CHF", 1.05, "euros for one franc");
    row(sheet, 4, 0, "Hourly rate", "€ 21");
    row(sheet, 5, 0, "hours paid in cash %", new Formatted(0.6, "0%"));
    row(sheet, 6, 0, "Discount rate % a year (real)", "3,5");
    row(sheet, 7, 0, "Month pattern of sales", "2; 3; 10; 18; 20; 12; 5; 4; 10; 10; 4; 2");
    row(sheet, 8, 0, "Opening cash", "9 000");
    row(sheet, 9, 0, "Lowest cash allowed", -2000);
    row(sheet, 10, 0, "Waste %");
  }

  @Test
  void untidyNursery_isTheSameAsTheTidyOne() {
    Inputs inputs = inputs(tidy);
    Inputs same = inputs(untidy);

    assertThat(same.scenario().nursery()).isEqualTo(inputs.scenario().nursery());
    assertThat(same.scenario().lots()).isEqualTo(inputs.scenario().lots());
    assertThat(same.scenario()).isEqualTo(inputs.scenario());
    assertThat(same.offers()).isEqualTo(inputs.offers());
    assertThat(same.stockRows()).isEqualTo(inputs.stockRows()).isEqualTo(3);
  }

  private static Inputs inputs(Path folder) {
    Loader.Reading reading = SmallNursery.read(folder);
    assertThat(reading.findings().problems()).filteredOn(Problem::isError).isEmpty();
    return reading.inputs().orElseThrow();
  }

  @Test
  void untidyNursery_saysWhatWasNotRead() {
    assertThat(SmallNursery.problems(untidy))
        .containsExactly(
            "notice: Our nursery 2026.xlsx, sheet scratch: this sheet is hidden and is not read;"
                + " show it if it is to count",
            "warning: Our nursery 2026.xlsx, sheet  STOCK , row 4: this heading is not known, its"
                + " column is not read (seen by)",
            "notice: Our nursery 2026.xlsx, sheet addresses: this is no table of a nursery and is"
                + " not read (addresses)",
            "notice: Our nursery 2026.xlsx, sheet Settings, row 4, column value: 1 CHF counts as"
                + " 1.05 EUR");
  }
}
