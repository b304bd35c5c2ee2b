package growingon.load.own;

import java.util.List;

/** Small numbers as words. */
final class Words {
  private static final String[] NUMBERS = {
    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"
  };

  private Words() {}

  /** One, two and three. */
  static String and(List<String> parts) {
    int last = parts.size() - 1;
    return last < 1
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  static String number(int number) {
    return number < NUMBERS.length ? NUMBERS[number] : Integer.toString(number);
  }
}
