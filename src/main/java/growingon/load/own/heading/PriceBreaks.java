package growingon.load.own.heading;

import growingon.load.own.heading.HeadingRead.How;
import growingon.load.own.text.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Prices of a supplier that go by how many are bought, each in a column of its own: 1-9, 10-49,
 * 50+. Sizes that are headings (40-60, 60-80) do not adjoin so.
 */
public final class PriceBreaks {
  private static final String OURS = "price from ";
  private static final Pattern RANGE =
      Pattern.compile("(\\d{1,6})\\s*(?:-|–|to|bis|tot|à)\\s*(\\d{1,6})");
  private static final Pattern BEHIND =
      Pattern.compile("(\\d{1,6})\\s*(?:\\+|and up|up|upwards|or more|and more)");
  private static final Pattern BEFORE =
      Pattern.compile("(?:from|ab|vanaf|dès|à partir de|da|desde|over)\\s*(\\d{1,6})");
  private static final Pattern UNITS =
      Pattern.compile(
          "[£€$]|\\b(?:prices?|preise?|prix|prijs|prijzen|prezzo|prezzi|precios?|each|ea|pcs|plants|trees|stk|stück|st|stuks|off)\\b\\.?");

  private PriceBreaks() {}

  /** A step of prices; the last has no end. */
  private record Step(int column, int from, OptionalInt to) {
    boolean adjoins(Step next) {
      return to.isEmpty() || to.getAsInt() + 1 == next.from;
    }
  }

  /** From which number on the prices of a column hold, if it is one of breaks. */
  public static OptionalInt from(HeadingRead head) {
    return isOne(head.ours())
        ? OptionalInt.of(Integer.parseInt(head.ours().substring(OURS.length())))
        : OptionalInt.empty();
  }

  /** Whether ours is a price from a number on. */
  public static boolean isOne(String ours) {
    return ours.startsWith(OURS) && ours.substring(OURS.length()).matches("\\d{1,6}");
  }

  /** Takes columns for prices from a number on, unless the grower says otherwise. */
  static void settle(List<HeadingRead> heads) {
    Map<Integer, Integer> breaks = of(heads);
    heads.replaceAll(
        head ->
            breaks.containsKey(head.column()) && head.how() != How.YOURS
                ? head.as(OURS + breaks.get(head.column()), Units.MONEY, How.CERTAIN, "")
                : head);
  }

  /**
   * From which number on the prices of columns hold, by column; empty if they are no breaks. Beside
   * the price of one, one break is enough.
   */
  private static Map<Integer, Integer> of(List<HeadingRead> heads) {
    boolean priced = heads.stream().filter(head -> head.is("unit cost")).count() == 1;
    List<Step> steps = new ArrayList<>();
    heads.stream()
        .filter(head -> !priced || isStep(head))
        .forEach(head -> step(head).ifPresent(steps::add));
    steps.sort(Comparator.comparing(Step::from));
    boolean adjoin = steps.size() > (priced ? 0 : 1);
    for (int i = 1; i < steps.size(); i++) {
      adjoin &= steps.get(i - 1).adjoins(steps.get(i));
      adjoin &= steps.get(i - 1).from < steps.get(i).from;
    }
    Map<Integer, Integer> from = new TreeMap<>();
    if (adjoin) {
      steps.forEach(step -> from.put(step.column, step.from));
    }
    return from;
  }

  /** Whether a heading is a price from a number on: 10+ each. */
  static boolean isStep(HeadingRead head) {
    return head.heading().length() > 2
        && step(head).isPresent()
        && !HeadingRow.isSize(head.heading());
  }

  private static Optional<Step> step(HeadingRead head) {
    String text = UNITS.matcher(head.heading().toLowerCase(java.util.Locale.ROOT)).replaceAll(" ");
    Matcher range = RANGE.matcher(text.strip());
    if (range.matches()) {
      int to = Integer.parseInt(range.group(2));
      return Optional.of(
          new Step(head.column(), Integer.parseInt(range.group(1)), OptionalInt.of(to)));
    }
    for (Pattern open : List.of(BEHIND, BEFORE)) {
      Matcher from = open.matcher(text.strip());
      if (from.matches()) {
        return Optional.of(
            new Step(head.column(), Integer.parseInt(from.group(1)), OptionalInt.empty()));
      }
    }
    return Optional.empty();
  }
}
