package growingon.load.table.lot;

import growingon.load.cell.Cell;
import growingon.load.cell.CellFault;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Row;
import growingon.nursery.lot.Offer.Again;
import growingon.problem.advice.DefinitionAdvice;
import growingon.problem.advice.PlanAdvice;
import java.time.YearMonth;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether an offer comes again: no, every season, or every so many, and until when. */
final class AgainCells {
  private static final Pattern EVERY = Pattern.compile("every ([1-9]|[1-3]\\d) seasons?");

  private AgainCells() {}

  static Optional<Again> read(Row row, YearMonth arrival) {
    int seasons = row.get(OffersTable.AGAIN);
    Optional<YearMonth> until = row.find(OffersTable.AGAIN_UNTIL);
    if (until.isPresent() && seasons == 0) {
      row.fail(
          OffersTable.AGAIN_UNTIL,
          where -> PlanAdvice.untilWithoutAgain(where, row.cell(OffersTable.AGAIN_UNTIL).shown()));
    }
    until
        .filter(month -> !row.isFailed() && month.isBefore(arrival))
        .ifPresent(
            month ->
                row.fail(
                    OffersTable.AGAIN_UNTIL,
                    where -> DefinitionAdvice.endsBeforeItBegins(where, month, arrival)));
    return seasons == 0 ? Optional.empty() : Optional.of(new Again(seasons, until));
  }

  /** Seasons from one arrival to the next; 0 for an offer that comes once. */
  static As<Integer> seasonsBetween() {
    return new As<>(0, (cell, spot) -> seasonsBetween(cell), AgainCells::words, heading -> "");
  }

  private static int seasonsBetween(Cell cell) {
    String text = Texts.key(cell.shown());
    Matcher every = EVERY.matcher(text);
    if (text.equals("no")) {
      return 0;
    }
    if (text.equals("every season")) {
      return 1;
    }
    if (every.matches()) {
      return Integer.parseInt(every.group(1));
    }
    throw new CellFault(where -> PlanAdvice.notAgain(where, cell.shown()));
  }

  private static String words(int seasons) {
    return switch (seasons) {
      case 0 -> "no";
      case 1 -> "every season";
      default -> "every " + seasons + " seasons";
    };
  }
}
