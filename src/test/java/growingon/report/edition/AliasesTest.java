package growingon.report.edition;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class AliasesTest {
  @Test
  void alias_ofALot_isTheSameWhateverOtherLotsThereAre() {
    Aliases few = new Aliases(List.of("long rows", "short rows"));
    Aliases more = new Aliases(List.of("new rows", "short rows", "long rows", "old rows"));
    assertThat(more.of("long rows")).isEqualTo(few.of("long rows"));
    assertThat(more.of("short rows")).isEqualTo(few.of("short rows"));
  }

  @Test
  void aliases_ofManyLots_differ() {
    List<String> names = IntStream.range(0, 20_000).mapToObj(i -> "row " + i).toList();
    Aliases aliases = new Aliases(names);
    assertThat(names.stream().map(aliases::of).distinct()).hasSize(20_000);
  }

  @Test
  void alias_isALetterAndANumber() {
    assertThat(new Aliases(List.of("maples by the gate")).of("maples by the gate"))
        .matches("lot [A-HJ-NP-Z]\\d{1,3}");
  }
}
