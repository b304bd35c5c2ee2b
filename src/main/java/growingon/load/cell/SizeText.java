package growingon.load.cell;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A trunk or girth as typed: "35", "35 mm", "3.5 cm trunk", "10-12", "12/14 cm", "girth 11",
 * "8-10cm girth". What it is and in which unit stands open where the text does not say so.
 *
 * @param from the number, or the lower of two
 * @param to the higher one; empty if there is one number
 * @param unit mm or cm, if it is said
 * @param word girth or trunk, if it is said
 */
public record SizeText(
    double from, Optional<Double> to, Optional<Length> unit, Optional<What> word) {
  /** A unit that trunks and girths are given in. */
  public enum Length {
    MM,
    CM
  }

  /** What was measured. */
  public enum What {
    /** Across, just above the root flare. */
    TRUNK,
    /** Around, at the height of the trade. */
    GIRTH
  }

  private static final Set<String> GIRTHS = Set.of("girth", "circumference", "circ", "stu");
  private static final String WORD = "(girth|circumference|circ\\.?|stu|trunk|diameter|dia\\.?)";
  private static final String NUMBER = "([0-9]+(?:[.,][0-9]+)?)";
  private static final String UNIT = "(mm|cm|millimetres?|centimetres?)";
  private static final Pattern SIZE =
      Pattern.compile(
          "(?:%s[: ]*)?%s\\s*%s?(?:\\s*(?:-|–|—|/|to|bis)\\s*%s)?\\s*%s?(?:\\s*%s)?"
              .formatted(WORD, NUMBER, UNIT, NUMBER, UNIT, WORD));

  /** Longest text that is looked at; no size is longer. */
  private static final int LONGEST = 60;

  /** Lower ends of the girth classes of the trade, cm (BS 3936-1): by 2 to 20, by 5 to 50. */
  private static final double BY_TWO_FROM = 4;

  private static final double BY_TWO_TO = 20;
  private static final double BY_FIVE_TO = 50;

  /**
   * What a text says.
   *
   * @throws CellFault if one of its numbers may be two
   */
  public static Optional<SizeText> find(String text, NumberStyle style) {
    Matcher size = SIZE.matcher(Texts.key(text));
    if (text.length() > LONGEST || !size.matches()) {
      return Optional.empty();
    }
    List<Length> units = said(size, 3, 5, unit -> unit.startsWith("m") ? Length.MM : Length.CM);
    List<What> words = said(size, 1, 6, word -> GIRTHS.contains(word) ? What.GIRTH : What.TRUNK);
    if (units.size() > 1 || words.size() > 1) {
      return Optional.empty();
    }
    return Optional.of(
        new SizeText(
            Amount.of(size.group(2), style).value(),
            Optional.ofNullable(size.group(4)).map(digits -> Amount.of(digits, style).value()),
            units.stream().findFirst(),
            words.stream().findFirst()));
  }

  /** What is said at one of two places; two if they contradict each other. */
  private static <T> List<T> said(Matcher size, int one, int other, Function<String, T> meaning) {
    return Stream.of(one, other)
        .flatMap(group -> Stream.ofNullable(size.group(group)))
        .map(text -> meaning.apply(text.replace(".", "")))
        .distinct()
        .toList();
  }

  public boolean isRange() {
    return to.isPresent();
  }

  /** Whether the numbers are those of a girth class of the trade. */
  public boolean isGirthClass() {
    double step = from < BY_TWO_TO ? 2 : from < BY_FIVE_TO ? 5 : 10;
    return to.isPresent() && from >= BY_TWO_FROM && from % step == 0 && to.get() == from + step;
  }

  /** Whether nothing but numbers is said. */
  public boolean isBare() {
    return unit.isEmpty() && word.isEmpty();
  }
}
