package growingon.load.row;

import growingon.load.cell.Range;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/**
 * A column of an input table: its heading, how a cell is read, what holds where it is empty, and
 * what is said of it on the page of the tables and in a started workbook.
 *
 * @param <T> type of the value
 * @param name the heading
 * @param as what a cell is read as; of names and money the reader knows more
 * @param usual what holds where a cell is empty; empty if nothing does, or the reader says it
 * @param others other ways to write the heading
 * @param says what is said of it
 */
public record Heading<T>(String name, As<T> as, Optional<T> usual, List<String> others, Says says) {
  /** What a column holds, by which a started workbook formats it. */
  public enum Holds {
    TEXT,
    NUMBER,
    MONEY,
    MONTH
  }

  /**
   * What is said of a column.
   *
   * @param holds what it holds
   * @param choice list that it chooses from; empty for none
   * @param ifEmpty what holds where a cell is empty; empty if nothing does or the meaning says it
   * @param meaning what it is
   * @param needed whether its table must have it
   * @param expert whether it is grouped and closed in a started workbook
   */
  public record Says(
      Holds holds,
      String choice,
      Optional<String> ifEmpty,
      String meaning,
      boolean needed,
      boolean expert) {
    private static Says of(Holds holds) {
      return new Says(holds, "", Optional.empty(), "", false, false);
    }
  }

  public Heading {
    others = List.copyOf(others);
  }

  private static <T> Heading<T> of(String name, As<T> as, Holds holds) {
    return new Heading<>(name, as, Optional.empty(), List.of(), Says.of(holds));
  }

  /** Free text. */
  public static Heading<String> text(String name) {
    return text(name, As.TEXT);
  }

  /** A name. */
  public static Heading<String> named(String name) {
    return text(name, As.NAME);
  }

  /** Text that is read as something. */
  public static <T> Heading<T> text(String name, As<T> as) {
    return of(name, as, Holds.TEXT);
  }

  /** Yes or no. */
  public static Heading<Boolean> yesNo(String name) {
    return text(name, As.YES_NO).choice("yes");
  }

  /** A number. */
  public static <T> Heading<T> number(String name, As<T> as) {
    return of(name, as, Holds.NUMBER);
  }

  /** Money, in a currency that is known when it is read. */
  public static Heading<Double> money(String name) {
    return of(name, As.money("", Range.FROM_ZERO), Holds.MONEY);
  }

  /** A month of a year. */
  public static Heading<YearMonth> month(String name) {
    return of(name, As.MONTH, Holds.MONTH);
  }

  /** The same column read as what is known only then: an amount in a currency, for one. */
  public Heading<T> reading(As<T> other) {
    return new Heading<>(name, other, usual, others, says);
  }

  /** The same column read as something else, of which nothing is usual. */
  public <S> Heading<S> as(As<S> other) {
    return new Heading<>(name, other, Optional.empty(), others, says);
  }

  /** What holds where a cell is empty. */
  public Heading<T> usual(T value) {
    return new Heading<>(name, as, Optional.of(value), others, says);
  }

  /** What is said of an empty cell, where the usual value itself does not say it. */
  public Heading<T> ifEmpty(String words) {
    return saying(
        new Says(
            says.holds, says.choice, Optional.of(words), says.meaning, says.needed, says.expert));
  }

  /** What it is, in the grower's words. */
  public Heading<T> means(String words) {
    return saying(new Says(says.holds, says.choice, says.ifEmpty, words, says.needed, says.expert));
  }

  /** It chooses from a list, or from none. */
  public Heading<T> choice(String list) {
    return saying(new Says(says.holds, list, says.ifEmpty, says.meaning, says.needed, says.expert));
  }

  /** Its table must have it. */
  public Heading<T> needed() {
    return saying(new Says(says.holds, says.choice, says.ifEmpty, says.meaning, true, says.expert));
  }

  /** It is for who knows more: grouped and closed in a started workbook. */
  public Heading<T> expert() {
    return saying(new Says(says.holds, says.choice, says.ifEmpty, says.meaning, says.needed, true));
  }

  /** It is for everybody. */
  public Heading<T> plain() {
    return saying(
        new Says(says.holds, says.choice, says.ifEmpty, says.meaning, says.needed, false));
  }

  /** Another way to write the heading. */
  public Heading<T> also(String... spellings) {
    return new Heading<>(name, as, usual, List.of(spellings), says);
  }

  private Heading<T> saying(Says other) {
    return new Heading<>(name, as, usual, others, other);
  }

  /** What holds where a cell is empty, in words; empty text if nothing does. */
  public String ifEmpty() {
    return says.ifEmpty.orElseGet(() -> usual.map(as.shown()).orElse(""));
  }
}
