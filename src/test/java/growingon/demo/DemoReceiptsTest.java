package growingon.demo;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.nursery.Inputs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** The receipts of the nursery without a daybook are those of the one that kept it. */
class DemoReceiptsTest {
  private static final String AGAIN =
      "make them again with: mvn -q test -Dtest=DemoReceiptsTest -Ddemo.write=true";

  @Test
  void committedReceipts_areWhatTheGeneratorGives() throws IOException {
    Inputs inputs =
        Loader.load(DemoDaybookTest.PLAN, new LoadOptions(LocalDate.of(2024, 10, 31)))
            .value()
            .orElseThrow();
    String receipts = DemoReceipts.text(inputs);
    if (Boolean.getBoolean("demo.write")) {
      Files.writeString(DemoReceipts.FILE, receipts);
    }
    assertThat(Files.readString(DemoReceipts.FILE)).as(AGAIN).isEqualTo(receipts);
  }

  @Test
  void earlierList_isThatOfTheNurseryWithTheDaybook() throws IOException {
    Path earlier = DemoReceipts.FILE.resolveSibling("earlier").resolve("stock 2022-11.csv");
    Path stock = Path.of("demo-data", "two-seasons-on", "stock.csv");
    assertThat(Files.readString(earlier)).isEqualTo(Files.readString(stock));
  }
}
