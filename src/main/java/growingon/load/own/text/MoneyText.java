package growingon.load.own.text;

import growingon.load.own.sheet.SheetCell;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A price as growers write it.
 *
 * @param amount in the currency
 * @param currency as GBP, EUR, USD or CHF; empty where no sign is there
 */
public record MoneyText(double amount, String currency) {
  private static final Set<String> NONE =
      Set.of(
          "poa",
          "on application",
          "a anfr",
          "a a",
          "preis auf anfrage",
          "a richiesta",
          "richiesta",
          "prix sur demande",
          "prijs op aanvraag",
          "consultar",
          "auf anfrage",
          "anfrage",
          "nil",
          "tba",
          "n a",
          "na",
          "sur demande",
          "op aanvraag",
          "su richiesta",
          "a consultar",
          "on request",
          "p o a",
          "nfs",
          "not for sale",
          "unverkauflich",
          "pas a vendre",
          "niet te koop",
          "non in vendita",
          "no se vende");
  private static final Pattern DASHES = Pattern.compile("[-–—−?]+");
  private static final Pattern PARTS =
      Pattern.compile(
          "(?i)([£€$]|GBP|EUR|USD|CHF|Fr\\.|Euro)?\\s*([0-9][0-9.,'’"
              + " ]*[0-9]|[0-9]|[.,][0-9]+)(?:[.,]?\\s?[-–]+)?\\s*([£€$]|GBP|EUR|USD|CHF|Euro)?\\s*"
              + "(?:/|per|je|pro|p\\.)?\\s*(?:each|ea|ono|o\\.n\\.o\\.|vb|st|stk|stück|plant|pc|pcs|pz|ud|net|netto|ht|pp)?\\.?");
  private static final Pattern FOR_MANY =
      Pattern.compile(
          "(?i)(.*[0-9].*?)\\s*(?:(?:/|per|je|pro|par|por|à|a|al)\\s*(1000|100)(?:\\s*(?:st|stk|stück|pcs|pz|uds?))?|([%‰]))");
  private static final Pattern PENCE = Pattern.compile("(?i)([0-9]{1,3})\\s?p");
  private static final Pattern TWO =
      Pattern.compile("[0-9]\\s*[/–-]\\s*[£€$]?[0-9]|[0-9]\\s+[£€$][0-9]");

  public static Read<MoneyText> of(SheetCell cell) {
    if (cell.number().isPresent()) {
      double value = cell.number().getAsDouble();
      return value < 0
          ? Read.ask("which price?")
          : Read.of(new MoneyText(value, currency(cell.currency())));
    }
    String text = cell.text().strip();
    if (DASHES.matcher(text).matches() || NONE.contains(Keys.of(text))) {
      return Read.none();
    }
    return cell.date().isPresent() ? Read.ask("a date, not a price") : text(text);
  }

  /** Prices of young plants are told for a hundred (%) or a thousand (‰). */
  private static Read<MoneyText> text(String text) {
    Matcher many = FOR_MANY.matcher(text);
    if (!many.matches()) {
      return plain(text);
    }
    String of = many.group(2) == null ? many.group(3) : many.group(2);
    double number = of.equals("1000") || of.equals("‰") ? 1000 : 100;
    Read<MoneyText> read = plain(many.group(1).strip());
    return read.value()
        .map(
            money ->
                Read.likely(
                    new MoneyText(money.amount / number, money.currency),
                    "%s is the price of %.0f".formatted(text, number)))
        .orElse(read);
  }

  private static Read<MoneyText> plain(String text) {
    Matcher pence = PENCE.matcher(text);
    if (pence.matches()) {
      return Read.of(new MoneyText(Double.parseDouble(pence.group(1)) / 100, "GBP"));
    }
    Matcher parts = PARTS.matcher(text);
    if (!parts.matches()) {
      return Read.ask(TWO.matcher(text).find() ? "which of the two prices?" : "which price?");
    }
    if (Numbers.mayBeThousands(parts.group(2))) {
      return Read.ask("which price? one mark before three digits may be either");
    }
    OptionalDouble amount = amount(parts.group(2));
    String sign =
        Optional.ofNullable(parts.group(1))
            .or(() -> Optional.ofNullable(parts.group(3)))
            .orElse("");
    return amount.isPresent()
        ? Read.of(new MoneyText(amount.getAsDouble(), currency(sign)))
        : Read.ask("which price?");
  }

  private static OptionalDouble amount(String digits) {
    return digits.matches("[.,][0-9]+")
        ? OptionalDouble.of(Double.parseDouble("0." + digits.substring(1)))
        : Numbers.money(digits);
  }

  private static String currency(String sign) {
    return switch (sign.toUpperCase(java.util.Locale.ROOT)) {
      case "£", "GBP" -> "GBP";
      case "€", "EUR", "EURO" -> "EUR";
      case "$", "USD" -> "USD";
      case "CHF", "FR." -> "CHF";
      default -> "";
    };
  }
}
