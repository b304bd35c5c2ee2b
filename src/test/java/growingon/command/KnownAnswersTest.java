package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nurseries in files whose best answer is summed by hand, and what a grower is told of them. */
class KnownAnswersTest {
  @TempDir private Path folder;
  private KnownNursery nursery;

  @BeforeEach
  void layOut() {
    nursery = new KnownNursery(folder);
  }

  /** What is bought and sold in one month never leaves the till short, but it has to come first. */
  @Test
  void moneyBack_isNotBeforeThePlantsCome() throws IOException {
    nursery.offers("A,elm,6,1,1,100,0,2026-12,none").demand("elm,any,10,50,December,2026/27");

    Ran buying = nursery.buying();

    assertThat(buying.out())
        .as(buying.err())
        .startsWith("Buy 50 A, order by the end of Nov 2026: brings EUR 200.");
    assertThat(nursery.figure("buying-offer-gains", "A", "money_back").asText())
        .isEqualTo("2026-12");
  }
}
