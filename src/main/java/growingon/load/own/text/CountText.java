package growingon.load.own.text;

import growingon.load.own.sheet.SheetCell;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number of plants as growers write it. */
public final class CountText {
  /** What is asked of what is no number. */
  public static final String HOW_MANY = "how many plants are these?";

  /** More in one lot is a slip. */
  public static final long MOST = 10_000_000;

  private static final Set<String> GONE =
      Set.of(
          "sold out",
          "ausverkauft",
          "uitverkocht",
          "epuise",
          "esaurito",
          "agotado",
          "nil",
          "none",
          "0",
          "sold",
          "all sold",
          "gone",
          "keine",
          "aucun",
          "geen",
          "nessuno",
          "niente",
          "nada",
          "nul",
          "out of stock",
          "nicht vorratig",
          "verkauft",
          "vendu",
          "all gone",
          "all dead",
          "none left",
          "dead",
          "alle weg",
          "alle verkauft",
          "alle tot",
          "plus rien",
          "vendus",
          "tous vendus",
          "morts",
          "tous morts",
          "alles weg",
          "alles verkocht",
          "verkocht",
          "allemaal dood",
          "esauriti",
          "finiti",
          "tutti venduti",
          "tutti morti",
          "agotados",
          "todos vendidos",
          "todos muertos");
  private static final Pattern DASHES = Pattern.compile("[-–—−]+");
  private static final String NUMBER = "([0-9][0-9.,'’ \u00a0\u202f]*[0-9]|[0-9])";
  private static final Pattern ABOUT =
      Pattern.compile(
          "(?i)(?:(?:approx(?:imately)?|about|around|roughly|circa|ca|c|env|environ|ungefähr|etwa|ongeveer|"
              + "aprox|abt|some|say|over|under|min|max|unos|unas|zirka|zo'n|sui|quelque)\\b\\.?|[±~≈<>])\\s*"
              + NUMBER);
  private static final Pattern ABOUT_BEHIND =
      Pattern.compile(
          "(?i)"
              + NUMBER
              + "\\s*(?:\\?|\\+|\\(?\\s*(?:ish|approx\\.?|ca\\.?|circa|about|est\\.?|or"
              + " so|odd)\\s*\\)?|-?ish)+");
  private static final Pattern DOZEN =
      Pattern.compile("(?i)" + NUMBER + "\\s*(?:doz(?:en)?|dz|Dtzd)\\.?");
  private static final Pattern PAIRS =
      Pattern.compile("(?i)" + NUMBER + "\\s*(?:pr|prs|pair|pairs|paar|paare|paires?)\\.?");
  private static final Pattern TIMES =
      Pattern.compile(
          "(?i)([0-9]{1,4})\\s*(?:(?:x|×|\\*)|(?:trays?|bd|bdl|bundles?|bunde|kisten|plaques?)\\s*(?:of|à|a|zu|de|x|@))\\s*([0-9]{1,5})(?:\\s*(?:trays?|pcs|plants?))?");
  private static final Pattern PACKS =
      Pattern.compile(
          "(?i)([0-9]{1,4})\\s*(trays?|flats?|bundles?|bdl|bd|bunde?|kisten?|plaques?|caisses?|cassette?|bandejas?|box(?:es)?|vpe|p(?:ac)?ks?)\\.?(?:\\s*\\(([0-9]+)\\))?");
  private static final Pattern OF =
      Pattern.compile("(?i)([0-9]+)\\s*(?:of|von|sur|van|out of)\\s*[0-9]+");
  private static final Pattern NOW = Pattern.compile("[0-9]+\\s*(?:→|->|=>|➔)\\s*([0-9]+)");
  private static final Pattern REMARK = Pattern.compile(NUMBER + "\\s*\\(([^)]*\\p{L}[^)]*)\\)");
  private static final Pattern RANGE = Pattern.compile("([0-9]+)\\s*[-–]\\s*([0-9]+)");
  private static final Pattern SUM =
      Pattern.compile("[0-9]+(?:\\s*\\+\\s*[0-9]+(?:\\s*\\([^)]*\\))?)+");
  private static final Pattern UNIT =
      Pattern.compile(
          "(?i)"
              + NUMBER
              + "\\s*(?:no|nos|pcs?|pieces?|st|stk|stück|stuks|plants?|trees?|pflanzen|pz|uds?|ea|each|off)\\.?");

  private CountText() {}

  /** How many trays, bundles and the like a text counts: 6 trays. */
  public static OptionalInt packs(String text) {
    Matcher packs = PACKS.matcher(text.strip());
    return packs.matches() && packs.group(3) == null
        ? OptionalInt.of(Integer.parseInt(packs.group(1)))
        : OptionalInt.empty();
  }

  /** Whether it says that none are left. */
  public static boolean isGone(SheetCell cell) {
    if (cell.number().isPresent()) {
      return cell.number().getAsDouble() == 0;
    }
    String first = cell.text().strip().split("[,;(]", 2)[0];
    return DASHES.matcher(cell.text().strip()).matches() || GONE.contains(Keys.of(first));
  }

  /** How many plants; of a cell that says none are left, nothing. */
  public static Read<Integer> of(SheetCell cell) {
    if (cell.number().isPresent()) {
      return whole(cell.number().getAsDouble(), cell.text());
    }
    if (cell.date().isPresent()) {
      return Read.ask("a date, not a number");
    }
    return text(cell.text().strip());
  }

  /** The two numbers of which one holds, as in 6 or 7 and 15/20; the lower is read. */
  public static List<String> either(String text) {
    return CountWords.either(text.strip());
  }

  private static Read<Integer> text(String text) {
    OptionalDouble plain = Numbers.plants(text);
    if (plain.isPresent()) {
      return whole(plain.getAsDouble(), text);
    }
    return about(text)
        .or(() -> times(text))
        .or(() -> CountWords.of(text))
        .or(() -> likely(text))
        .or(() -> remarked(text))
        .orElseGet(() -> Read.ask(HOW_MANY));
  }

  private static Read<Integer> whole(double value, String text) {
    if (value < 0 || value != Math.rint(value) || value > MOST) {
      return Read.ask(HOW_MANY);
    }
    return Read.of((int) value);
  }

  private static Optional<Read<Integer>> about(String text) {
    for (Pattern pattern : new Pattern[] {ABOUT, ABOUT_BEHIND}) {
      Matcher matcher = pattern.matcher(text);
      if (matcher.matches()) {
        return plain(matcher.group(1)).map(Read::roughly);
      }
    }
    Matcher unit = UNIT.matcher(text);
    return unit.matches() ? plain(unit.group(1)) : Optional.empty();
  }

  private static Optional<Read<Integer>> plain(String digits) {
    OptionalDouble value = Numbers.plants(digits);
    return value.isEmpty() ? Optional.empty() : Optional.of(whole(value.getAsDouble(), digits));
  }

  private static Optional<Read<Integer>> times(String text) {
    Matcher dozen = DOZEN.matcher(text);
    if (dozen.matches()) {
      return plain(dozen.group(1)).map(read -> scaled(read, 12));
    }
    Matcher pairs = PAIRS.matcher(text);
    if (pairs.matches()) {
      return plain(pairs.group(1)).map(read -> scaled(read, 2));
    }
    Matcher times = TIMES.matcher(text);
    if (times.matches()) {
      return Optional.of(
          whole(Double.parseDouble(times.group(1)) * Double.parseDouble(times.group(2)), text));
    }
    Matcher packs = PACKS.matcher(text);
    return packs.matches()
        ? Optional.of(Read.ask("how many plants are these in all?"))
        : Optional.empty();
  }

  private static Read<Integer> scaled(Read<Integer> read, int factor) {
    return read.value().isEmpty() ? read : whole((double) read.value().get() * factor, "");
  }

  private static Optional<Read<Integer>> likely(String text) {
    Matcher of = OF.matcher(text);
    if (of.matches()) {
      return plain(of.group(1)).map(read -> nod(read, text));
    }
    Matcher now = NOW.matcher(text);
    if (now.matches()) {
      return plain(now.group(1)).map(read -> nod(read, text));
    }
    Matcher range = RANGE.matcher(text);
    if (range.matches()
        && Double.parseDouble(range.group(1)) < Double.parseDouble(range.group(2))) {
      return plain(range.group(1)).map(read -> nod(read, text));
    }
    return SUM.matcher(text).matches() ? Optional.of(nod(sum(text), text)) : Optional.empty();
  }

  private static Read<Integer> sum(String text) {
    double sum = 0;
    for (String part : text.replaceAll("\\([^)]*\\)", "").split("\\+")) {
      sum += Double.parseDouble(part.strip());
    }
    return whole(sum, text).noting(remarks(text));
  }

  private static String remarks(String text) {
    Matcher remark = Pattern.compile("\\(([^)]*)\\)").matcher(text);
    return remark.find() ? remark.group(1) : "";
  }

  private static Read<Integer> nod(Read<Integer> read, String text) {
    return read.value()
        .map(value -> Read.likely(value, text + " is read as " + value).noting(read.note()))
        .orElse(read);
  }

  private static Optional<Read<Integer>> remarked(String text) {
    Matcher remark = REMARK.matcher(text);
    return remark.matches()
        ? plain(remark.group(1)).map(read -> read.roughly().noting(remark.group(2)))
        : Optional.empty();
  }
}
