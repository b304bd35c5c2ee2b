package growingon.load.own.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Units as they stand behind a heading. */
public final class Units {
  private static final Pattern MARK_OF_LENGTH =
      Pattern.compile("([^\"”″'’′]*\\p{L}\\s*)[(\\[]?(\"|”|″|'|’|′)[)\\]]?(\\s*(?:[(\\[].*)?)");
  public static final String MONEY = "money";
  private static final Set<String> EACH =
      Set.of("each", "ea", "per plant", "per stuk", "je stuck", "cad", "pp", "p st");
  public static final String GROSS = "money incl VAT";
  public static final String ASK = "ask";

  /** Of months: their cells are weeks of a year, 12/24. */
  public static final String WEEK = "week";

  private static final List<String> MONTHS =
      List.of("arrived", "potted", "not before", "counted", "root work", "training since");

  /** Behind a heading they say that its money is without VAT. */
  private static final List<String> WITHOUT_VAT =
      List.of(
          "ex vat",
          "excl vat",
          "net",
          "netto",
          "ht",
          "ex btw",
          "excl btw",
          "sin iva",
          "iva esclusa",
          "hors taxe",
          "ex gst",
          "excl gst",
          "plus gst");

  /** Says so too, and no unit. */
  private static final String TRADE = "trade";

  private static final Map<String, String> WORDS = words();
  private static final Set<String> LENGTHS = Set.of("mm", "cm", "m", "in", "ft");
  private static final Set<String> SIZES =
      Set.of(
          "trunk mm",
          "trunk from mm",
          "trunk to mm",
          "girth cm",
          "girth from cm",
          "girth to cm",
          "height cm",
          "crown mm",
          "spacing cm",
          "gap mm",
          "clear stem",
          "height left mm",
          "height x width");
  private static final Set<String> PRICES = Set.of("unit cost", "selling price", "row cost");
  private static final Set<String> COUNTS =
      Set.of(
          "quantity",
          "reserved",
          "available",
          "second count",
          "opening",
          "sold",
          "lost",
          "kept",
          "packs",
          "per pack",
          "least",
          "multiple",
          "number of firsts",
          "number of seconds");

  private Units() {}

  private static Map<String, String> words() {
    Map<String, String> words = new HashMap<>();
    put(words, "mm", "mm");
    put(words, "cm", "cm");
    put(words, "m", "m");
    put(words, "in", "in", "inch", "inches");
    put(words, "ft", "ft", "feet");
    put(
        words, "litres", "l", "ltr", "ltrs", "lt", "litre", "litres", "liter", "litri", "litro",
        "litros");
    put(words, "gallons", "gal", "gals", "gallon", "gallons");
    put(words, MONEY, "£", "€", "$", "gbp", "eur", "usd", "chf", "each", "per plant", "per stuk");
    put(words, MONEY, "je stuck", "je stueck", "cad", "ea", "netto eur", "aud", "nzd");
    put(words, MONEY, WITHOUT_VAT.toArray(String[]::new));
    put(words, GROSS, "inc vat", "incl vat", "brutto", "ttc", "incl btw", "con iva");
    put(words, GROSS, "iva inclusa", "iva incluido", "inkl mwst", "inc tax", "inc gst", "incl gst");
    put(words, WEEK, "kw", "wk", "week", "woche", "sem", "semaine", "sett", "settimana", "semana");
    put(words, "%", "%", "percent");
    put(words, "count", "pcs", "st", "stk", "stuck", "stueck", "uds", "pz", "pc", "stuks");
    return words;
  }

  private static void put(Map<String, String> words, String unit, String... spellings) {
    for (String spelling : spellings) {
      words.put(spelling, unit);
    }
  }

  /** Whether a heading's key says that its money is without VAT. */
  public static boolean saysWithoutVat(String key) {
    String all = " " + key + " ";
    return Stream.concat(WITHOUT_VAT.stream(), Stream.of(TRADE))
        .anyMatch(word -> all.contains(" " + word + " "));
  }

  /** The unit that a word or two at the end of a heading name. */
  public static Optional<String> named(String key) {
    return Optional.ofNullable(WORDS.get(key));
  }

  /** Whether a column can have the unit at all. */
  public static boolean fits(Meaning meaning, String unit) {
    if (SIZES.contains(meaning.ours())) {
      return LENGTHS.contains(unit);
    }
    if (PRICES.contains(meaning.ours())) {
      return isMoney(unit) || unit.equals("count");
    }
    if (COUNTS.contains(meaning.ours())) {
      return !isMoney(unit) && !unit.equals("%") && !unit.equals(WEEK);
    }
    return !unit.equals(WEEK) || MONTHS.contains(meaning.ours());
  }

  /** A meaning in the unit that words behind its heading say; empty if they say none that fits. */
  public static Optional<Meaning> said(Meaning meaning, String words) {
    if (meaning.ours().equals("row cost") && EACH.contains(words)) {
      return Optional.of(Meaning.of("unit cost", MONEY));
    }
    return named(words)
        .filter(unit -> fits(meaning, unit))
        .map(unit -> meaning.inUnit(joined(meaning, unit)));
  }

  private static String joined(Meaning meaning, String unit) {
    boolean noUnit =
        List.of("lot", "species", "place", "arrived", "supplier", "note").contains(meaning.ours());
    boolean lessSaid = isMoney(meaning.unit()) && !isMoney(unit);
    if (unit.equals(WEEK)) {
      return unit;
    }
    return noUnit || lessSaid || COUNTS.contains(meaning.ours()) ? meaning.unit() : unit;
  }

  public static boolean isMoney(String unit) {
    return unit.equals(MONEY) || unit.equals(GROSS);
  }

  /** The unit of a column that was chosen where its heading was open. */
  public static String usualOf(String ours, String stated) {
    if (PRICES.contains(ours)) {
      return isMoney(stated) ? stated : MONEY;
    }
    if (COUNTS.contains(ours)) {
      return "count";
    }
    return SIZES.contains(ours) && LENGTHS.contains(stated)
        ? stated
        : ours.equals("girth cm") ? "cm" : SIZES.contains(ours) ? ASK : stated;
  }

  /** So many mm in one of the unit. */
  public static double mm(String unit) {
    return switch (unit) {
      case "mm" -> 1;
      case "cm" -> 10;
      case "m" -> 1000;
      case "in" -> 25.4;
      case "ft" -> 304.8;
      default -> throw new IllegalArgumentException("no length: " + unit);
    };
  }

  public static boolean isLength(String unit) {
    return LENGTHS.contains(unit);
  }

  /** A heading with its marks in words: /tray is per tray. */
  public static String inWords(String heading) {
    return marksInWords(heading.replaceFirst("^\\s*/\\s*", "per "));
  }

  /** Girth " is in inches, Ht (') in feet; "Girth" is in quotes. */
  private static String marksInWords(String heading) {
    Matcher mark = MARK_OF_LENGTH.matcher(heading);
    return mark.matches()
        ? mark.group(1) + (mark.group(2).matches("['’′]") ? " ft " : " in ") + mark.group(3)
        : heading;
  }
}
