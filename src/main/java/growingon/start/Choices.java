package growingon.start;

import growingon.nursery.library.Library;
import growingon.nursery.library.Taxon;
import growingon.nursery.lot.Form;
import growingon.nursery.market.Quality;
import growingon.nursery.place.Layout;
import growingon.nursery.place.LiftFrom;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.species.Habit;
import growingon.nursery.supply.PotShape;
import growingon.report.model.InputBook.Choice;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The lists that columns choose from: what other sheets name, and the words of the program. */
final class Choices {
  private Choices() {}

  static List<Choice> all() {
    return List.of(
        Choice.fedBy("species", "species", "species"),
        Choice.fedBy("ladder", "grades", "ladder"),
        Choice.fedBy("grade", "grades", "grade"),
        Choice.fedBy("route", "routes", "route"),
        Choice.fedBy("step", "routes", "step"),
        Choice.fedBy("pot", "pots", "pot"),
        Choice.fedBy("mix", "mixes", "mix"),
        Choice.fedBy("component", "components", "component"),
        Choice.fedBy("place", "places", "place"),
        Choice.fedBy("lot", "stock", "lot"),
        Choice.of("what", words(DaybookLine.What.values())),
        Choice.of("form", words(Form.values())),
        Choice.of("kind", words(Habit.values())),
        Choice.of("library", libraryWords()),
        Choice.of("shape", words(PotShape.values())),
        Choice.of("place kind", words(PlaceKind.values())),
        Choice.of("layout", words(Layout.values())),
        Choice.of("lift from", words(LiftFrom.values())),
        Choice.of("quality", words(Quality.values())),
        Choice.of("month", months()),
        Choice.of("yes", List.of("yes", "no")));
  }

  private static List<String> words(Enum<?>[] values) {
    return Arrays.stream(values).map(Enum::toString).toList();
  }

  /** The names of the library, and what else may stand under library. */
  private static List<String> libraryWords() {
    List<String> words = new ArrayList<>(List.of("yes", "no"));
    Library.shipped().taxa().stream().map(Taxon::name).sorted().forEach(words::add);
    words.addAll(words(Habit.values()));
    return words;
  }

  private static List<String> months() {
    return Arrays.stream(Month.values())
        .map(month -> month.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
        .toList();
  }
}
