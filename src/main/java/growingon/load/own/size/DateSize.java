package growingon.load.own.size;

import growingon.load.own.sheet.SheetCell;
import growingon.load.own.text.Keys;
import growingon.load.own.text.MonthText;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A size of which a spreadsheet made a date: 6-8 stands as 6 August, or in a file of text that it
 * has saved as 06-Aug or Aug-06.
 */
public final class DateSize {
  private static final Pattern DAY_FIRST = Pattern.compile("(\\d{1,2})[-. /]*(\\p{L}{3,})\\.?");
  private static final Pattern WORD_FIRST = Pattern.compile("(\\p{L}{3,})\\.?[-. /]*(\\d{1,2})");

  private DateSize() {}

  /** Both numbers of the date, the lower first; empty where a cell is no date. */
  public static Optional<Span> of(SheetCell cell) {
    if (cell.date().isEmpty()) {
      return cell.isText()
          ? inWords(cell.text().strip().toLowerCase(Locale.ROOT))
          : Optional.empty();
    }
    int day = cell.date().get().getDayOfMonth();
    int year = cell.date().get().getYear() % 100;
    int other = day == 1 && cell.yearShown() ? year : day;
    return Optional.of(span(other, cell.date().get().getMonthValue()));
  }

  private static Optional<Span> inWords(String text) {
    Matcher day = DAY_FIRST.matcher(text);
    if (day.matches()) {
      return span(day.group(1), day.group(2));
    }
    Matcher word = WORD_FIRST.matcher(text);
    return word.matches() ? span(word.group(2), word.group(1)) : Optional.empty();
  }

  private static Optional<Span> span(String number, String word) {
    return MonthText.named(Keys.of(word))
        .map(month -> span(Integer.parseInt(number), month.getValue()));
  }

  private static Span span(int one, int other) {
    return Span.of(Math.min(one, other), Math.max(one, other));
  }
}
