package growingon.start;

import growingon.load.LaidOut;
import growingon.nursery.library.Library;
import growingon.nursery.library.Match;
import growingon.nursery.library.Taxon;
import growingon.report.model.InputBook;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** The folder that a grower starts from: the workbook's description and the plan's text. */
public final class StartedNursery {
  /** Name of the workbook. */
  public static final String WORKBOOK = "nursery.xlsx";

  /** Name of the plan. */
  public static final String PLAN = "plan.json";

  /** The months of the example rows suit plans that begin in this month or the eleven after. */
  private static final YearMonth EXAMPLES_FROM = YearMonth.of(2026, 3);

  private StartedNursery() {}

  /**
   * The workbook.
   *
   * @param thisMonth the month it is; the months of the example rows are moved by whole years, so
   *     that the stock has arrived by then and the offers have not
   * @param species names of species that get a row each, filled by the library; see {@link
   *     #objection}
   */
  public static InputBook workbook(YearMonth thisMonth, List<String> species) {
    int months = (int) ChronoUnit.MONTHS.between(EXAMPLES_FROM, thisMonth);
    return new StarterBook(Math.floorDiv(months, 12), species).book();
  }

  /** The workbook around lists of the grower's own. */
  public static InputBook workbook(LaidOut laid) {
    return ListBook.of(laid);
  }

  /** The plan of such a nursery. */
  public static String planOf(String name) {
    return """
        // A plan. Lines that begin with // are for you and are not read.
        {
          "name": "%s",
          // how many seasons the plan looks ahead
          "seasons": 5,
          // the plan begins this month; take away the two strokes to have it begin in another
          // "first month": "2026-11",
        }
        """
        .formatted(name.replace("\\", "").replace("\"", ""));
  }

  /** Why the library can give a species no row; empty if it can. */
  public static Optional<String> objection(String species) {
    Match match = Library.shipped().find(species);
    if (match instanceof Match.Several several) {
      return Optional.of(
          "The library has several that may be meant by %s: %s."
              .formatted(species, names(several.taxa().stream().map(Taxon::name).toList())));
    }
    if (match instanceof Match.Nothing nothing) {
      String near =
          nothing.nearest().isEmpty() ? "" : " The nearest: " + names(nothing.nearest()) + ".";
      return Optional.of("The library has no species called %s.%s".formatted(species, near));
    }
    return Optional.empty();
  }

  private static String names(List<String> names) {
    return String.join(", ", names);
  }

  /** The plan. */
  public static String plan() {
    return Resource.text("plan.json");
  }
}
