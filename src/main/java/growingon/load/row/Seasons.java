package growingon.load.row;

import growingon.load.cell.CellFault;
import growingon.nursery.time.Horizon;
import growingon.problem.advice.PlanAdvice;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Names of seasons as typed: 2026/27, 2026-27, 2026/2027; 2026 where they start in January. */
public final class Seasons {
  private static final Pattern TWO_YEARS =
      Pattern.compile("([0-9]{4}) ?[/–-] ?([0-9]{2}|[0-9]{4})");
  private static final Pattern ONE_YEAR = Pattern.compile("[0-9]{4}");

  private Seasons() {}

  /** A season as reports write it. */
  public static As<String> cell(Month seasonStart) {
    return new As<>(
        "", (cell, spot) -> name(cell.shown(), seasonStart), text -> text, heading -> "");
  }

  private static String name(String text, Month start) {
    boolean oneYear = start == Month.JANUARY;
    Matcher two = TWO_YEARS.matcher(text);
    if (oneYear && ONE_YEAR.matcher(text).matches()) {
      return text;
    }
    if (!oneYear && two.matches()) {
      int first = Integer.parseInt(two.group(1));
      int second = Integer.parseInt(two.group(2));
      if (second % 100 == (first + 1) % 100 && (second < 100 || second == first + 1)) {
        return "%d/%02d".formatted(first, second % 100);
      }
    }
    throw new CellFault(where -> PlanAdvice.notASeason(where, text, oneYear ? "2026" : "2026/27"));
  }

  static List<String> of(Horizon horizon) {
    return IntStream.range(0, horizon.seasons()).mapToObj(horizon::seasonName).toList();
  }

  /** Whether a season lies in the plan. */
  public static Optional<String> outside(String season, Horizon horizon) {
    return of(horizon).contains(season) ? Optional.empty() : Optional.of(season);
  }
}
