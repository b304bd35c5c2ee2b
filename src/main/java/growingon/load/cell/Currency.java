package growingon.load.cell;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Currency codes and the signs that people write for them. */
public final class Currency {
  /** Stands for the plan's currency where it could not be read; any mark may mean it. */
  public static final String UNKNOWN = "plan currency";

  private static final Pattern CODE = Pattern.compile("[A-Z]{3}");

  /** Signs in wide use and the codes they may stand for (ISO 4217). */
  private static final Map<String, List<String>> SIGNS =
      Map.of(
          "€", List.of("EUR"),
          "£", List.of("GBP"),
          "$", List.of("USD", "AUD", "CAD", "NZD", "SGD", "HKD"),
          "¥", List.of("JPY", "CNY"),
          "FR", List.of("CHF"),
          "ZŁ", List.of("PLN"),
          "KR", List.of("SEK", "DKK", "NOK", "ISK"),
          "R", List.of("ZAR"));

  private Currency() {}

  /** The code that a text names: a code, or a sign that stands for one only. */
  public static Optional<String> code(String text) {
    String upper = text.toUpperCase(Locale.ROOT);
    if (CODE.matcher(upper).matches()) {
      return Optional.of(upper);
    }
    List<String> codes = SIGNS.getOrDefault(upper, List.of());
    return codes.size() == 1 ? Optional.of(codes.get(0)) : Optional.empty();
  }

  /** The code that a word is in any case, if that currency is in use. */
  public static Optional<String> inUse(String word) {
    return code(word)
        .filter(
            code ->
                java.util.Currency.getAvailableCurrencies().stream()
                    .anyMatch(each -> each.getCurrencyCode().equals(code)));
  }

  /** Whether a mark typed beside an amount may mean the currency. */
  public static boolean means(String mark, String currency) {
    String upper = mark.toUpperCase(Locale.ROOT);
    return currency.equals(UNKNOWN)
        || upper.equals(currency)
        || SIGNS.getOrDefault(upper, List.of()).contains(currency);
  }
}
