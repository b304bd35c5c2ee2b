package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.Office;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The book to act on is short enough to print and hand over. */
class PrintedPagesTest {
  @TempDir private Path temporary;

  @Test
  void demoPlan_printed_isFifteenPagesAtMost() throws Exception {
    Office office = Office.in(temporary.resolve("office"));
    Path report = temporary.resolve("report");
    Ran ran = Ran.of("plan", "plans/with-the-field-lot.json", "--out", report.toString());
    assertThat(ran.code()).as(ran.err()).isZero();

    assertThat(office.pages(report.resolve("plan.xlsx"))).isBetween(8L, 15L);
  }
}
