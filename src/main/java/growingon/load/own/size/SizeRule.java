package growingon.load.own.size;

import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is taken out of a cell wherever it stands in it. */
record SizeRule(Pattern pattern, BiConsumer<Matcher, SizeParts> take) {
  static final String N = "(\\d+(?:[.,]\\d+)?)";
  static final String SEP = "\\s*(?:-|–|—|/|\\bbis\\b|\\bto\\b)\\s*";
  static final String SPAN = N + "(?:" + SEP + N + "|\\s*\\+)?";
  static final String START = "(?<![\\p{L}\\d.,])";
  private static final Pattern POINTED = Pattern.compile("\\d[.,]\\d");
  static final String END = "(?![\\p{L}\\d])";

  static SizeRule of(String pattern, BiConsumer<Matcher, SizeParts> take) {
    return new SizeRule(
        Pattern.compile(pattern, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE), take);
  }

  static SizeRule exact(String pattern, BiConsumer<Matcher, SizeParts> take) {
    return new SizeRule(Pattern.compile(pattern), take);
  }

  /** The number of a group. */
  static double n(Matcher m, int group) {
    return Double.parseDouble(m.group(group).replace(',', '.'));
  }

  /** The span of two groups; a range that falls counts by its lower end first. */
  static Span span(Matcher m, int group) {
    double from = n(m, group);
    double to = m.group(group + 1) == null ? from : n(m, group + 1);
    boolean pointed = POINTED.matcher(m.group()).find();
    return new Span(Math.min(from, to), Math.max(from, to), pointed);
  }
}
