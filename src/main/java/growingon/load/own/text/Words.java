package growingon.load.own.text;

/** Small numbers as words. */
public final class Words {
  private static final String[] NUMBERS = {
    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"
  };

  private Words() {}

  public static String number(int number) {
    return number < NUMBERS.length ? NUMBERS[number] : Integer.toString(number);
  }
}
