package growingon.command.folder;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.Plan;
import growingon.nursery.market.HorizonValue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptFileTest {
  private static final Plan PLAN =
      new Plan(
          "the ridge: lot", YearMonth.of(2026, 11), 5, Map.of(), 64, 0, 1, HorizonValue.NOTHING);

  @TempDir private Path folder;

  @Test
  void planAmongPlans_isKeptBesideThem() {
    assertThat(KeptFile.of(Path.of("plans", "ridge.json"), PLAN))
        .isEqualTo(Path.of("plans", "kept", "the ridge_ lot-2026-11.json"));
  }

  @Test
  void planOrWorkbookElsewhere_isKeptInPlansBesideIt() {
    assertThat(KeptFile.of(Path.of("nursery", "plan.json"), PLAN))
        .isEqualTo(Path.of("nursery", "plans", "kept", "the ridge_ lot-2026-11.json"));
    assertThat(KeptFile.of(Path.of("stock.xlsx"), PLAN))
        .isEqualTo(Path.of("plans", "kept", "the ridge_ lot-2026-11.json"));
  }

  @Test
  void nurseryFolder_keepsItsPlansItself() throws IOException {
    Path nursery = Files.createDirectory(folder.resolve("nursery"));

    assertThat(KeptFile.of(nursery, PLAN))
        .isEqualTo(nursery.resolve("plans").resolve("kept").resolve("the ridge_ lot-2026-11.json"));
  }
}
