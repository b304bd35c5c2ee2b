package growingon.load.own;

/** Small numbers as words. */
final class Words {
  private static final String[] NUMBERS = {
    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"
  };

  private Words() {}

  static String number(int number) {
    return number < NUMBERS.length ? NUMBERS[number] : Integer.toString(number);
  }
}
