package growingon.fit;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.fit.value.Value;
import growingon.nursery.lot.Lot;
import growingon.nursery.species.Curve;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What README and the model's page say that measuring is worth: the share of a growth figure that
 * rests on the records, of lots of 100 trees of 20 mm that grow 3 mm a year, by the settings'
 * defaults.
 */
class WorthOfMeasuringTest {
  private static final double TRUNK = 20;
  private static final double GROWTH = 3;
  private static final double SPREAD = 0.15;
  private static final double VIGOUR = 0.2;
  private static final int TREES = 100;
  private static final int SOME = 20;

  private static Books nursery() {
    return Books.of(
        Nurseries.bare()
            .species(Books.species("oak", new Curve.Steady(GROWTH, Double.POSITIVE_INFINITY)))
            .lotSpread(0.08)
            .firstMonth(2026, 11));
  }

  private static Books list(Books books, int lots, int year, int measured) {
    List<Object> rows = new ArrayList<>();
    for (int lot = 0; lot < lots; lot++) {
      rows.add(row(lot, year));
      rows.add(measured);
    }
    return books.list(2023 + year, 11, rows.toArray());
  }

  private static Lot row(int lot, int year) {
    return Lots.lot("lot " + lot)
        .species("oak")
        .quantity(TREES - year)
        .trunks(TRUNK + 0.1 + GROWTH * year, SPREAD)
        .arrived(2022, 10)
        .counted(2023 + year, 11)
        .build();
  }

  private static long ofLots(int lots, int seasons, int measured) {
    Books books = nursery();
    for (int year = 0; year <= seasons; year++) {
      list(books, lots, year, measured);
    }
    return weight(books);
  }

  /** Twenty trees of one lot, the same each year, of which each has a vigour of its own. */
  private static long ofTagged(int seasons) {
    Books books = list(nursery(), 1, 0, SOME);
    for (int year = 0; year <= seasons; year++) {
      for (int tree = 0; tree < SOME; tree++) {
        double start = TRUNK * (1 + SPREAD * score(tree));
        double growth = GROWTH * (1 + VIGOUR * score(7 * tree % SOME));
        double read = Math.round((start + growth * year) * 10) / 10.0;
        books.tag("tree " + tree, "lot 0", (2023 + year) + "-10-31", read);
      }
    }
    return weight(books);
  }

  /** Evenly spaced, with a mean of 0 and a standard deviation of 1. */
  private static double score(int tree) {
    double widest = (SOME - 1) / 2.0;
    return (tree - widest) / Math.sqrt((SOME * SOME - 1) / 12.0);
  }

  private static long weight(Books books) {
    return Fit.of(books.records(), List.of()).values().stream()
        .filter(each -> each.what() == Value.What.GROWTH && each.species().equals("oak"))
        .mapToLong(each -> Math.round(100 * each.weight()))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> said() {
    List<String> said = new ArrayList<>();
    for (int lots : new int[] {1, 3, 8}) {
      said.add(list(ofLots(lots, 1, SOME), ofLots(lots, 2, SOME), ofLots(lots, 3, SOME)));
    }
    said.add(list(ofTagged(1), ofTagged(2), ofTagged(3)));
    return said;
  }

  private static String list(long first, long second, long third) {
    return "%d, %d, %d %%".formatted(first, second, third);
  }

  @ParameterizedTest
  @ValueSource(strings = {"README.md", "src/doc/model.md"})
  void page_saysWhatMeasuringIsWorth(String page) throws IOException {
    String text = Files.readString(Path.of(page)).replaceAll("\\s+", " ");
    assertThat(said()).filteredOn(each -> !text.contains(each)).isEmpty();
  }
}
