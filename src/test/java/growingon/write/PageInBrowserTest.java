package growingon.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.google.common.io.Resources;
import growingon.report.model.Answer;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page in a browser; skipped, and said so, where there is no Chromium on the path. */
class PageInBrowserTest {
  @TempDir static Path temporary;
  private static Path page;
  private static int runs;
  private Browser browser;

  @BeforeAll
  static void write() throws IOException {
    assumeTrue(Browser.program().isPresent(), "skipped: there is no Chromium on the path");
    ReportFolder.write(report(), temporary.resolve("plan"));
    page = temporary.resolve("plan/report.html");
  }

  static final List<String> HOSTILE =
      List.of(
          "<script>document.title='broken'</script>",
          "=HYPERLINK(\"http://example.invalid\",\"x\")",
          "\"quotes' & <b>ampersands</b>",
          "right \u202Eto left\u202C mark \u200F",
          "x".repeat(10_000));

  /** The sample, wide and long tables among it, with hostile texts in every sort of place. */
  private static Report report() {
    Report sample = SampleReport.report();
    List<List<Object>> rows = new ArrayList<>();
    HOSTILE.forEach(each -> rows.add(List.of(each, rows.size())));
    Table hostile =
        new Table(
            "hostile",
            HOSTILE.get(0),
            HOSTILE.subList(0, 4),
            List.of(
                Column.of("text", HOSTILE.get(2), "", Kind.TEXT),
                Column.summed("number", "number", "", Kind.COUNT)),
            rows);
    List<Sheet> sheets = new ArrayList<>(sample.sheets());
    sheets.add(new Sheet("Hostile", HOSTILE, List.of(hostile), List.of(), false));
    return Report.of(
            sample.plan() + HOSTILE.get(0),
            sample.nursery() + HOSTILE.get(2),
            sample.say(),
            sample.firstMonth())
        .sheets(sheets)
        .charts(sample.charts())
        .extra(sample.extra())
        .headlines(sample.headlines())
        .problems(sample.problems())
        .answers(
            List.of(new Answer(HOSTILE.get(0), HOSTILE, HOSTILE.subList(0, 4), List.of("hostile"))))
        .build();
  }

  @BeforeEach
  void open() throws IOException, InterruptedException {
    Optional<Path> program = Browser.program();
    browser = Browser.start(program.get(), temporary.resolve("profile" + runs++));
  }

  @org.junit.jupiter.api.AfterEach
  void close() throws InterruptedException {
    browser.close();
  }

  private JsonNode openAll(int width) {
    browser.open(page, width);
    return browser.value("document.querySelectorAll('details').forEach(d => d.open = true)");
  }

  @Test
  void page_withTheNetworkOff_loadsWithoutAComplaint() {
    browser.open(page, 1280);
    assertThat(browser.value("document.querySelectorAll('h2').length").asInt()).isGreaterThan(3);
    assertThat(
            browser
                .value(
                    "performance.getEntriesByType('resource').filter(r => !r.name.startsWith('data:')).length")
                .asInt())
        .isZero();
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void hostileTexts_arePlainText() {
    openAll(1280);
    assertThat(browser.value("document.title").asText()).contains(HOSTILE.get(0));
    assertThat(browser.value("document.querySelectorAll('script').length").asInt()).isEqualTo(1);
    for (int i = 0; i < HOSTILE.size(); i++) {
      String cell =
          "document.getElementById('t-hostile').parentNode.tBodies[0].rows[%d].cells[0].textContent";
      assertThat(browser.value(cell.formatted(i)).asText()).isEqualTo(HOSTILE.get(i));
    }
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void table_sortedAndFiltered_showsWhatItShould() {
    openAll(1280);
    String table = "var t = document.getElementById('t-jobs').parentNode;";
    String numbers =
        "Array.from(t.tBodies[0].rows).map(r => parseFloat(r.cells[n].textContent.replace(/[^0-9.-]/g, '')))";
    String column =
        "var n = Array.from(t.tHead.rows[0].cells).findIndex(c => c.classList.contains('n'));";
    browser.value(table + column + "t.tHead.rows[0].cells[n].querySelector('button').click()");
    List<Double> up = doubles(browser.value(table + column + numbers));
    assertThat(up).hasSizeGreaterThan(8).isSorted();
    browser.value(table + column + "t.tHead.rows[0].cells[n].querySelector('button').click()");
    assertThat(doubles(browser.value(table + column + numbers)))
        .isSortedAccordingTo(java.util.Comparator.reverseOrder());
    assertThat(
            browser
                .value(table + column + "t.tHead.rows[0].cells[n].getAttribute('aria-sort')")
                .asText())
        .isEqualTo("descending");

    String filter =
        table
            + "var i = t.parentNode.parentNode.querySelector('.filter input'); i.value = 'cold tunnel';"
            + "i.dispatchEvent(new Event('input'));";
    browser.value(filter);
    JsonNode shown =
        browser.value(
            table + "Array.from(t.tBodies[0].rows).filter(r => !r.hidden).map(r => r.textContent)");
    assertThat(shown).isNotEmpty();
    shown.forEach(each -> assertThat(each.asText()).contains("cold tunnel"));
    assertThat(shown.size()).isLessThan(up.size());
  }

  private static List<Double> doubles(JsonNode array) {
    List<Double> numbers = new ArrayList<>();
    array.forEach(each -> numbers.add(each.asDouble()));
    return numbers;
  }

  @ParameterizedTest
  @ValueSource(ints = {390, 1280})
  void page_checkedForAccessibility_hasNoViolation(int width) throws IOException {
    openAll(width);
    browser.value(Resources.toString(Resources.getResource("axe.min.js"), StandardCharsets.UTF_8));
    JsonNode found =
        browser.value(
            "axe.run().then(r => r.violations.map(v => v.id + ': ' + v.nodes.slice(0, 3).map(n => n.html.slice(0, 200)).join(' | ')))");
    assertThat(found).as(found.toPrettyString()).isEmpty();
  }

  @Test
  void page_onAPhone_scrollsTablesNotItself() {
    openAll(390);
    assertThat(browser.value("document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(390);
  }

  @Test
  void charts_onAPhone_areDrawnForItAndNotCutOff() {
    openAll(390);
    JsonNode shown =
        browser.value(
            "Array.from(document.querySelectorAll('.chart > *')).filter(c => c.getClientRects().length)"
                + ".map(c => c.getAttribute('class') + ' ' + (c.getBoundingClientRect().right <= 390))");
    assertThat(shown).hasSize(SampleReport.charts().size());
    shown.forEach(each -> assertThat(each.asText()).isEqualTo("narrow true"));
    JsonNode letters =
        browser.value(
            "Math.min(...Array.from(document.querySelectorAll('.narrow text')).map(t => t.getBoundingClientRect().height))");
    assertThat(letters.asDouble()).as("height of a line of letters").isGreaterThan(12);
  }

  @Test
  void page_withAllItsCharts_hasNoIdTwice() {
    browser.open(page, 1280);
    JsonNode twice =
        browser.value(
            "Array.from(document.querySelectorAll('[id]')).map(e => e.id).filter((id, at, all) => all.indexOf(id) !== at)");
    assertThat(twice).isEmpty();
    assertThat(browser.value("document.querySelectorAll('.wide').length").asInt())
        .isEqualTo(SampleReport.charts().size());
  }

  /** A4 landscape less its margins is 273 mm, upright 186 mm; a millimetre is 96 / 25.4 pixels. */
  @Test
  void page_printed_cutsNoTable() {
    openAll(1280);
    browser.media("print");
    assertThat(tooWide(1031, ".tables .table")).isEmpty();
    assertThat(tooWide(702, "section:not(.tables) .table")).isEmpty();
    String pdf = new String(browser.print(), StandardCharsets.ISO_8859_1);
    assertThat(pdf.split("/Type /Page\\b(?!s)", -1).length - 1).isBetween(8, 60);
    assertThat(browser.value("getComputedStyle(document.querySelector('thead')).display").asText())
        .isEqualTo("table-header-group");
  }

  @Test
  void headingsOfALongTable_whileItsRowsScroll_staySeen() {
    openAll(390);
    String longest =
        "var box = Array.from(document.querySelectorAll('.tables .scroll')).sort((a, b) => b.scrollHeight - a.scrollHeight)[0];"
            + "box.scrollIntoView(); box.scrollTop = box.scrollHeight;"
            + "var at = e => e.getBoundingClientRect().top;";
    assertThat(browser.value(longest + "box.scrollTop").asDouble()).isPositive();
    assertThat(
            browser
                .value(longest + "Math.abs(at(box.querySelector('thead th')) - at(box))")
                .asDouble())
        .as("pixels between the headings and the top of what is seen")
        .isLessThan(3);
  }

  /**
   * Tables that the reader has not opened are not printed: no page with nothing but their names.
   */
  @Test
  void page_printedWithItsTablesClosed_hasNoPageOfClosedTables() {
    browser.open(page, 1280);
    browser.media("print");
    assertThat(
            browser
                .value(
                    "Array.from(document.querySelectorAll('.tables')).filter(s => s.getClientRects().length).length")
                .asInt())
        .isZero();
    browser.value("document.querySelector('.sheet').open = true");
    assertThat(
            browser
                .value(
                    "Array.from(document.querySelectorAll('.sheet')).filter(s => s.getClientRects().length).length")
                .asInt())
        .isEqualTo(1);
  }

  @Test
  void numberOfRowsFound_whenRowsAreFiltered_isSaidAloud() {
    openAll(1280);
    JsonNode regions =
        browser.value(
            "Array.from(document.querySelectorAll('.filter')).map(f => { var s = f.querySelector('[role=status]'); return s === null ? 'none' : s.getAttribute('aria-live'); })");
    assertThat(regions).isNotEmpty();
    regions.forEach(each -> assertThat(each.asText()).isEqualTo("polite"));
  }

  private List<String> tooWide(int pixels, String tables) {
    browser.width(pixels);
    JsonNode wide =
        browser.value(
            "Array.from(document.querySelectorAll('"
                + tables
                + " table')).filter(t => t.getBoundingClientRect().right > "
                + (pixels + 1)
                + ").map(t => t.caption.textContent + ' ' + t.getBoundingClientRect().right)");
    List<String> names = new ArrayList<>();
    wide.forEach(each -> names.add(each.asText()));
    return names;
  }
}
