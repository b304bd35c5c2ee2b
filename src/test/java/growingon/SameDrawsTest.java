package growingon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterContainer;

/** The numbers are those of jqwik 1.9.3, taken from a run: another version may draw others. */
class SameDrawsTest {
  private static final List<Integer> DRAWN = new ArrayList<>();

  @Property(tries = 5, edgeCases = EdgeCasesMode.NONE)
  void propertyWithoutASeed_isTriedAndDrawsAsInAnyOtherBuild(
      @ForAll @IntRange(min = 1, max = 1_000_000) int drawn) {
    DRAWN.add(drawn);
  }

  @AfterContainer
  static void allThatWasDrawn() {
    if (!SameDraws.drawsAnew()) {
      assertThat(DRAWN).containsExactly(324, 81, 220, 160347, 401);
    }
  }
}
