package growingon.load.own.size;

import static growingon.load.own.size.SizeRule.END;
import static growingon.load.own.size.SizeRule.N;
import static growingon.load.own.size.SizeRule.SPAN;
import static growingon.load.own.size.SizeRule.START;
import static growingon.load.own.size.SizeRule.n;
import static growingon.load.own.size.SizeRule.span;

import growingon.load.own.text.Keys;
import growingon.load.own.text.Units;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sizes and pots as the trade writes them, several in one cell read one after the other: pots by
 * litres, width and class, girths, heights, trunks, ages, roots. What is left over is a note.
 */
public final class SizeGrammar {
  private static final Pattern QUOTED =
      Pattern.compile(
          "(?<!\\p{L})['‘’´`][^'‘’´`]{2,}(?:['’´`]\\p{L}+[^'‘’´`]*)?['‘’´`](?!\\p{L})|[“”„][^“”„]{2,}[“”„]|\"[^\"]*\\p{L}{2}[^\"]*\"");

  /** Plants are not sold by classes of height of 2 cm, which end there, cm. */
  private static final double SMALLEST_HEIGHT = 20;

  /** Shapes as wide as they are high. */
  private static final Set<String> BALLS = Set.of("ball", "kugel", "bol", "boule", "bola", "palla");

  private static final String GIRTH =
      "(?:girths?|stu|circ(?:umference)?\\.?|umfang|stamm?umfang|stamomtrek|stamomvang|omtrek|"
          + "circonf(?:é|e)rence|circonferenza|per(?:í|i)m(?:etro)?\\.?)";
  private static final String TRUNK =
      "(?:trunk|cal(?:iper|liper)?|stem\\s*dia|stammdurchmesser|st(?:amm?)?\\s*[øØ]|tronco?|trc|tronco|fusto)\\.?\\s*(?:[øØ]|diam?\\.?)?";
  private static final String CONES =
      "(?:kegel|cone|c(?:ô|o)ne|cono|conus|pyramide?|piramide|s(?:ä|a)ule|zuil|colonne|colonna|columna|spil|spindel)";
  private static final String UNIT = "\\s*(mm|cm|in|inch|\"|”)?";
  private static final String FRACTION =
      "(?:(\\d+)\\s*(?:(\\d)/(\\d)|([½¼¾⅓]))|()(\\d)/(\\d)|()([½¼¾⅓]))";

  private static final List<SizeRule> GIRTHS =
      List.of(
          SizeRule.of(
              START + GIRTH + "\\s*:?\\s*" + SPAN + UNIT + END,
              (m, parts) -> parts.girth(inCm(span(m, 1), m.group(3)))),
          SizeRule.of(
              START + SPAN + UNIT + "\\s*" + GIRTH + END,
              (m, parts) -> parts.girth(inCm(span(m, 1), m.group(3)))));

  private static final List<SizeRule> SIZES =
      List.of(
          SizeRule.of(
              "(?:½|1/2|¼|1/4|¾|3/4)\\s*(?:std|stds|standard|st)" + END,
              (m, parts) -> {
                parts.standard();
                parts.note(m.group());
              }),
          SizeRule.of(
              START + "(\\d+)\\s*stems?\\s+" + SPAN + "\\s*(cm|mm)" + END,
              (m, parts) -> {
                parts.trunk(
                    span(m, 2).times(Units.mm(m.group(4).toLowerCase(java.util.Locale.ROOT))));
                parts.note(m.group(1) + " stems");
              }),
          GIRTHS.get(0),
          GIRTHS.get(1),
          SizeRule.of(
              START
                  + "(?:clear\\s*stem|stem|c\\.?s\\.|cs|sth|stammh(?:öhe)?|h\\.?stamm)\\s*:?\\s*"
                  + SPAN
                  + "(?!\\s*mm)\\s*(?:cm|m)?"
                  + END,
              (m, parts) -> parts.note(m.group())),
          SizeRule.of(
              START + SPAN + "\\s*(?:cm|m|ft|feet|')?\\s*(?:clear\\s*stem|stem|c\\.s\\.|cs)" + END,
              (m, parts) -> parts.note(m.group())),
          SizeRule.of(
              START + TRUNK + "\\s*:?\\s*" + SPAN + "\\s*(mm|cm|in|inch|\"|”)" + END,
              (m, parts) -> parts.trunk(inMm(span(m, 1), m.group(3)))),
          SizeRule.of(
              START
                  + SPAN
                  + "\\s*(mm|cm|in|inch|\"|”)\\s*(?:trunk|cal(?:iper|liper)?\\.?|stem|dia(?:meter)?\\.?\\s*trunk)"
                  + END,
              (m, parts) -> parts.trunk(inMm(span(m, 1), m.group(3)))),
          SizeRule.of(
              START + TRUNK + "\\s*:?\\s*" + SPAN + END,
              (m, parts) -> parts.trunkWithoutUnit(span(m, 1))),
          SizeRule.of(
              START + "(?:st|stam)\\.?\\s*" + SPAN + "\\s*cm" + END,
              (m, parts) -> parts.stemInCm(span(m, 1))),
          SizeRule.of(
              START + CONES + "\\s*:?\\s*" + SPAN + "(?:\\s*cm)?" + END,
              (m, parts) -> {
                parts.height(span(m, 1));
                parts.note(m.group());
              }),
          SizeRule.of(
              START + SPAN + "\\s*(?:trunk|tronc|tronco|fusto|cal(?:iper)?)" + END,
              (m, parts) -> parts.trunkWithoutUnit(span(m, 1))),
          SizeRule.of(
              "(?:Ø|ø|dia(?:m|meter)?\\.?)?\\s*"
                  + START
                  + SPAN
                  + "\\s*mm"
                  + END
                  + "(?:\\s*(?:dia|Ø))?",
              (m, parts) -> parts.trunk(span(m, 1))),
          SizeRule.of(
              START
                  + "(\\d{1,2})\\s*(?:'|’|′|ft\\.?|feet)\\s*(\\d{1,2}(?:[.,]5)?)(?:\\s*(?:\"|”|″|''|ins?|inch(?:es)?))?"
                  + "(?![\\d/'’-]|\\s*(?:[-–/]\\s*\\d|ft|feet|l\\b|lt|x\\b|cm|mm))",
              (m, parts) -> parts.height(one(n(m, 1) * 30.48 + n(m, 2) * 2.54))),
          SizeRule.of(
              START + FRACTION + "\\s*(?:\"|”|in(?:ch(?:es)?)?)",
              (m, parts) -> parts.trunk(one(fraction(m) * 25.4))),
          SizeRule.of(
              START + SPAN + "\\s*(?:\"|”|inch(?:es)?|in" + END + ")",
              (m, parts) -> inches(span(m, 1), parts)),
          SizeRule.of(
              "(?:\\b(ball|kugel|bol|boule|bola|palla|hd|head|kr(?:one)?|dia(?:m|meter)?|spread)\\.?|[Øø])\\s*:?\\s*"
                  + SPAN
                  + "(?:\\s*cm)?"
                  + END,
              (m, parts) -> widthOfHead(m, m.group(1), span(m, 2), parts)),
          SizeRule.of(
              START
                  + SPAN
                  + "(?:\\s*cm)?\\s*(dia(?:m|meter)?|head|hd|ball|kugel|bol|boule|bola|palla|Ø)"
                  + END
                  + "\\.?",
              (m, parts) -> widthOfHead(m, m.group(3), span(m, 1), parts)),
          SizeRule.of(
              START
                  + "(\\d)\\s?x?\\s?(?:xv|x\\s?v|v|x\\s?tr|tr|x\\s?transpl\\p{L}*|x\\s?verpfl\\p{L}*|xvp)"
                  + END
                  + "\\.?",
              (m, parts) -> parts.note(m.group())),
          SizeRule.of(
              START + "[1-6]\\s?x(?![\\p{L}\\d]|\\s\\d+\\s*(?:$|cm))\\.?",
              (m, parts) -> parts.note(m.group())),
          SizeRule.of(
              START + "([0-4])\\s?([+u])\\s?([0-4])(?:\\s?[+u]\\s?([0-4]))?" + END,
              SizeGrammar::age),
          SizeRule.of(START + "([0-3])(/)([0-3])()" + END, SizeGrammar::age),
          SizeRule.of(
              START
                  + "(\\d{1,2})\\s*(?:yrs?|years?|jahre?|jährig|j|ans?|jaar|jr|anni|años)"
                  + END
                  + "(?:\\s*old)?\\.?",
              (m, parts) -> {
                parts.age((int) n(m, 1));
                parts.note(m.group());
              }),
          SizeRule.of(
              START
                  + "(?:frame|panel|gestell|rahmen|panneau|telaio|pannello|panel)\\s*:?\\s*"
                  + N
                  + "\\s*[x×]\\s*"
                  + N
                  + "\\s*(?:cm|m)?"
                  + END,
              (m, parts) -> parts.note(m.group())),
          SizeRule.of(
              START + N + "\\s*[x×]\\s*" + N + "\\s*(cm|m)?" + END,
              (m, parts) -> {
                parts.height(inHeight(one(n(m, 1)), inMetres(m.group(3), n(m, 1), n(m, 2))));
                parts.note(m.group());
              }),
          SizeRule.of(
              START + SPAN + "\\s*(m|mtr|metres?|ft|feet)" + END + "(?:\\s*(?:high|tall|ht|h))?",
              (m, parts) -> parts.height(inHeight(span(m, 1), m.group(3)))),
          SizeRule.exact(
              START + "H\\s*" + SPAN + END + "(?!\\s*cm)", SizeGrammar::standardOrHeight),
          SizeRule.of(
              START
                  + "(?:ht|height|höhe|h|hauteur|haut|hoogte|altezza|altura)\\.?\\s*:?\\s*"
                  + SPAN
                  + "\\s*(cm)?"
                  + END,
              (m, parts) -> parts.height(inHeight(span(m, 1), m.group(3)))),
          SizeRule.of(
              START + SPAN + "\\s*(cm)?\\s*(?:ht|high|tall|height)" + END,
              (m, parts) -> parts.height(inHeight(span(m, 1), m.group(3)))),
          SizeRule.of(START + SPAN + "\\s*'", (m, parts) -> parts.height(span(m, 1).times(30.48))));

  private static final Pattern STANDARD =
      Pattern.compile(
          "(?i)(?<![\\p{L}])(?:standards?|stds?|half[- ]?std|half[- ]standards?|quarter[-"
              + " ]standards?|h\\.?st|hst\\.?|hochst(?:amm)?|halbst(?:amm)?|hst|sta|top[-"
              + " ]?worked|tige|haute[- ]tige|demi[- ]tige|hoogstam(?:men)?|halfstam|alto"
              + " fusto|tallo alto|alberello)(?![\\p{L}])|(?<![\\p{L}\\d.])H(?![\\p{L}\\d.])");
  private static final Pattern POT_WIDTH =
      Pattern.compile("((?:[789]|1[0-3])(?:[.,]5)?)\\s*cm", Pattern.CASE_INSENSITIVE);
  private static final Pattern BED_AGE = Pattern.compile("(?<![\\d.,/-])([1-3])-0(?![\\d.,])");
  private static final Pattern BARE_SPAN = Pattern.compile(START + SPAN + "(\\s*cm)?" + END);
  private static final Pattern ALONE = Pattern.compile(SPAN);
  private static final Pattern BETWEEN = Pattern.compile("[\\s,;/()+-]+");
  private static final Pattern LOWER_BOUND = Pattern.compile(START + N + "\\s*\\+");

  /** No trunk of nursery stock is so thick, so it is a height. Common practice, no source. */
  private static final double THICKEST_INCHES = 10;

  /** No plant is sold so low, so it is in metres. */
  private static final double LOWEST_CM = 4;

  private SizeGrammar() {}

  private static void inches(Span span, SizeParts parts) {
    if (span.to() > THICKEST_INCHES) {
      parts.height(span.times(2.54));
    } else {
      parts.trunk(span.times(25.4));
    }
  }

  /** 1.2 x 1.2 without a unit is in metres. */
  private static String inMetres(String unit, double one, double other) {
    return unit == null && Math.max(one, other) < LOWEST_CM ? "m" : unit;
  }

  /** Whether a text says that its tree is a standard, whose size class is a girth. */
  public static boolean saysStandard(String text) {
    return text.chars().anyMatch(Character::isLetter) && STANDARD.matcher(text).find();
  }

  /** Reads a cell of sizes: a size, quality or form column. */
  public static void readSize(String text, SizeParts parts) {
    Matcher width = POT_WIDTH.matcher(text.strip());
    if (width.matches()) {
      // Plants are sold by ranges of height and by widths of pots. Common practice, no source.
      parts.nodOfPot("%s is a pot's width".formatted(width.group(1) + " cm"));
      parts.pot(PotSize.square(n(width, 1)));
    } else {
      readRest(text, parts);
    }
  }

  /** Reads what is left of a cell of a girth, trunk or height column. */
  public static void readRest(String text, SizeParts parts) {
    String rest = sizes(pots(roots(text, parts), parts), parts);
    Matcher bed = BED_AGE.matcher(rest);
    if (bed.find() && parts.form().isPresent()) {
      age(bed.group(1), "", "0", null, parts);
      rest = bed.replaceFirst(" ");
    }
    parts.note(leftOver(ranges(rest, parts)));
  }

  /** Reads a girth that a remark names as one. */
  public static void girths(String text, SizeParts parts) {
    take(GIRTHS, text, parts);
  }

  /** Reads what a plant's name says of its size, without its other words. */
  public static void readName(String name, SizeParts parts) {
    String text = QUOTED.matcher(name).replaceAll(" ");
    ranges(sizes(pots(roots(text, parts), parts), parts), parts);
  }

  /** Reads what a form, habit or quality cell says; gives what is left over. */
  public static String readWords(String text, SizeParts parts) {
    return leftOver(ranges(sizes(pots(roots(text, parts), parts), parts), parts));
  }

  /** Reads a pot from a cell where only a pot counts. */
  public static String pots(String text, SizeParts parts) {
    return take(PotRules.ALL, text, parts);
  }

  public static String roots(String text, SizeParts parts) {
    return take(RootRules.ROOTS, take(RootRules.STANDARDS, text, parts), parts);
  }

  private static String sizes(String text, SizeParts parts) {
    return take(SIZES, text, parts);
  }

  /** Reads a cell of a girth, trunk or height column: its own words before the heading's unit. */
  public static String readMeasure(String text, SizeParts parts) {
    return sizes(roots(text, parts), parts);
  }

  private static String take(List<SizeRule> rules, String text, SizeParts parts) {
    String rest = text;
    for (SizeRule rule : rules) {
      Matcher matcher = rule.pattern().matcher(rest);
      while (matcher.find() && isRising(matcher)) {
        rule.take().accept(matcher, parts);
        rest = matcher.replaceFirst(" ");
        matcher = rule.pattern().matcher(rest);
      }
    }
    return rest;
  }

  /** A range that falls is none: a date or a price. */
  private static boolean isRising(Matcher matcher) {
    return !matcher.group().isBlank();
  }

  private static String ranges(String text, SizeParts parts) {
    Matcher matcher = BARE_SPAN.matcher(text);
    String rest = text;
    while (matcher.find()) {
      boolean range = matcher.group(2) != null || matcher.group().contains("+");
      boolean cm = matcher.group(3) != null;
      if (range) {
        parts.open(span(matcher, 1));
      } else if (cm) {
        parts.height(one(n(matcher, 1)));
      } else {
        break;
      }
      rest = matcher.replaceFirst(" ");
      matcher = BARE_SPAN.matcher(rest);
    }
    Matcher bound = LOWER_BOUND.matcher(rest);
    return bound.find() ? bound.replaceFirst(" ") : rest;
  }

  private static String leftOver(String text) {
    return BETWEEN.matcher(text).replaceAll(" ").strip();
  }

  /** The only number or range of a cell, if it holds nothing else. */
  public static Optional<Span> bare(String text) {
    Matcher matcher = ALONE.matcher(text.strip());
    return matcher.matches() ? Optional.of(span(matcher, 1)) : Optional.empty();
  }

  private static void widthOfHead(Matcher match, String word, Span span, SizeParts parts) {
    parts.note(match.group());
    String key = word == null ? "" : Keys.of(word);
    if (BALLS.contains(key)) {
      parts.height(span);
    }
  }

  private static void age(Matcher m, SizeParts parts) {
    age(m.group(1), m.group(2), m.group(3), m.group(4), parts);
    parts.note(m.group());
  }

  private static void age(String first, String mark, String second, String third, SizeParts parts) {
    int more = third == null || third.isEmpty() ? 0 : Integer.parseInt(third);
    parts.age(Integer.parseInt(first) + Integer.parseInt(second) + more);
    parts.form(first.equals("0") && mark.equals("/") ? "cutting" : "seedling");
  }

  /** H 12-14 is a standard of that girth, H 60-80 a height. */
  private static void standardOrHeight(Matcher m, SizeParts parts) {
    Span span = span(m, 1);
    if (span.isGirthClass() && span.to() <= SMALLEST_HEIGHT) {
      parts.standard();
      parts.girth(span);
    } else {
      parts.height(inHeight(span, null));
    }
  }

  private static Span one(double value) {
    return Span.of(value, value);
  }

  private static Span inCm(Span span, String unit) {
    return unit == null ? span : inMm(span, unit).times(0.1);
  }

  private static Span inMm(Span span, String unit) {
    String key = unit.toLowerCase(java.util.Locale.ROOT);
    return span.times(key.equals("mm") ? 1 : key.equals("cm") ? 10 : 25.4);
  }

  private static Span inHeight(Span span, String unit) {
    String key = unit == null ? "" : unit.toLowerCase(java.util.Locale.ROOT);
    if (key.startsWith("f")) {
      return span.times(30.48);
    }
    boolean metres = key.startsWith("m") || (key.isEmpty() && span.from() < 10 && span.pointed());
    return metres ? span.times(100) : span;
  }

  private static double fraction(Matcher m) {
    double whole = m.group(1) == null ? 0 : Double.parseDouble(m.group(1));
    String vulgar = m.group(4) == null ? m.group(9) : m.group(4);
    if (vulgar != null) {
      return whole + vulgar(vulgar);
    }
    boolean mixed = m.group(2) != null;
    return whole
        + Double.parseDouble(m.group(mixed ? 2 : 6)) / Double.parseDouble(m.group(mixed ? 3 : 7));
  }

  static double vulgar(String sign) {
    return switch (sign) {
      case "½" -> 0.5;
      case "¼" -> 0.25;
      case "¾" -> 0.75;
      default -> 1.0 / 3;
    };
  }
}
