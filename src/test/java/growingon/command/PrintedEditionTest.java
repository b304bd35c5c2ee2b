package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import growingon.write.Browser;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is mailed prints to one document of few pages; skipped where there is no Chromium. */
class PrintedEditionTest {
  @TempDir private Path temporary;

  @BeforeAll
  static void needsChromium() {
    assumeTrue(Browser.program().isPresent(), "skipped: there is no Chromium on the path");
    assumeTrue(isOnPath("pdftotext"), "skipped: there is no pdftotext on the path");
  }

  /**
   * A customer's document has a first page, one for each of the two ladders, and the cautions; the
   * others are as many pages as what is open at first needs.
   */
  @ParameterizedTest
  @CsvSource({
    "4, 4, plan plans/with-the-field-lot.json --for customer",
    "3, 6, plan plans/with-the-field-lot.json --draws 0 --for bank",
    "3, 7, plan plans/with-the-field-lot.json --draws 0 --for partner",
    "3, 7, review plans/two-seasons-on.json",
    "2, 6, review plans/without-a-daybook.json",
    "1, 4, review plans/two-seasons-on.json --for bank",
    "1, 5, review plans/two-seasons-on.json --for partner",
    "1, 4, compare plans/as-it-stands.json plans/with-the-field-lot.json --draws 0 --for bank",
    "5, 12, plan plans/with-the-field-lot.json --draws 100",
    "1, 5, compare plans/as-it-stands.json plans/with-the-field-lot.json --draws 0"
  })
  void page_asItOpens_printsToFewPages_noneOfThemEmpty(int least, int most, String words)
      throws Exception {
    Path out = temporary.resolve("out");
    Ran ran = Ran.of((words + " --out " + out).split(" "));
    assertThat(ran.code()).as(ran.err()).isZero();
    Path profile = temporary.resolve("profile");
    Browser browser = Browser.start(Browser.program().orElseThrow(), profile);
    try {
      browser.open(out.resolve("report.html"), 1280);
      browser.media("print");
      byte[] printed = browser.print();
      String pdf = new String(printed, StandardCharsets.ISO_8859_1);
      assertThat(emptyPages(printed)).as("pages without a word").isEmpty();
      assertThat(pdf.split("/Type /Page\\b(?!s)", -1).length - 1).isBetween(least, most);
      assertThat(
              browser
                  .value(
                      "Array.from(document.querySelectorAll('.chart .wide')).filter(c =>"
                          + " c.getBoundingClientRect().right > document.documentElement.clientWidth"
                          + " + 1).length")
                  .asInt())
          .as("charts that are cut")
          .isZero();
      assertThat(
              browser
                  .value(
                      "Array.from(document.querySelectorAll('thead')).filter(h =>"
                          + " getComputedStyle(h).display != 'table-header-group').length")
                  .asInt())
          .as("tables whose headings are not repeated on the next page")
          .isZero();
    } finally {
      browser.close();
    }
  }

  private static boolean isOnPath(String program) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
  }

  /** Numbers of the pages without a word, as pdftotext reads them. */
  private List<Integer> emptyPages(byte[] pdf) throws Exception {
    Path file = Files.write(temporary.resolve("printed.pdf"), pdf);
    Path text = temporary.resolve("printed.txt");
    Process reading =
        new ProcessBuilder("pdftotext", file.toString(), text.toString()).inheritIO().start();
    assertThat(reading.waitFor()).isZero();
    String[] pages = Files.readString(text).split("\f");
    return IntStream.range(0, pages.length)
        .filter(page -> pages[page].isBlank())
        .mapToObj(page -> page + 1)
        .toList();
  }
}
