package growingon.load.own.text;

import growingon.nursery.number.Writing;
import java.util.List;

/** Small numbers, and the rows of a list, as words. */
public final class Words {
  private static final String[] NUMBERS = {
    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"
  };

  private Words() {}

  public static String number(int number) {
    return number < NUMBERS.length ? NUMBERS[number] : Integer.toString(number);
  }

  /** row 3, or rows 3, 4 and 9. */
  public static String rows(List<Integer> rows) {
    String named = Writing.list(rows.stream().map(row -> Integer.toString(row)).toList());
    return (rows.size() == 1 ? "row " : "rows ") + named;
  }
}
