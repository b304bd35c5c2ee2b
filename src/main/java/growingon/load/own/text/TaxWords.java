package growingon.load.own.text;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a heading or a title says of VAT: vraagprijs (6% btw incl.), + IVA, zzgl. 7 % MwSt. */
public final class TaxWords {
  private static final Set<String> WITH =
      Set.of(
          "incl",
          "inkl",
          "inc",
          "including",
          "inklusive",
          "inclusief",
          "comp",
          "compresa",
          "compris",
          "inclusa",
          "incluido",
          "incluida",
          "ttc",
          "tvac",
          "tvc",
          "brutto",
          "gross",
          "con",
          "mit",
          "avec",
          "met",
          "c");
  private static final Set<String> WITHOUT =
      Set.of(
          "ex",
          "excl",
          "exkl",
          "excluding",
          "exclusief",
          "zzgl",
          "zuzuglich",
          "plus",
          "+",
          "piu",
          "mas",
          "net",
          "netto",
          "ht",
          "htva",
          "hors",
          "ohne",
          "zonder",
          "senza",
          "sin",
          "s",
          "esclusa",
          "escl",
          "excluido");
  private static final Set<String> TAX =
      Set.of("vat", "gst", "btw", "mwst", "ust", "tva", "iva", "tax", "taxe", "taxes", "hst");

  /** These say it without naming the tax. */
  private static final Set<String> ALONE =
      Set.of(
          "ttc", "tvac", "tvc", "ht", "htva", "ex", "excl", "exkl", "incl", "inkl", "brutto",
          "netto");

  private static final Set<String> PRICES =
      Set.of(
          "price", "prices", "preis", "preise", "prix", "prijs", "prijzen", "prezzo", "prezzi",
          "precio", "precios");
  private static final Pattern RATE = Pattern.compile("([0-9]{1,2}(?:[.,][0-9]{1,2})?)\\s*%");
  private static final Pattern FIGURES = Pattern.compile("[0-9]+|%");

  private TaxWords() {}

  private static List<String> words(String text) {
    return Keys.words(Keys.of(text.replace("+", " + ").replaceAll("(?<=\\p{L})\\.(?=\\p{L})", "")));
  }

  /** Money with or without VAT, empty where nothing is said of it; with it where both are said. */
  private static Optional<String> unit(List<String> words) {
    boolean said = words.stream().anyMatch(word -> TAX.contains(word) || ALONE.contains(word));
    if (!said) {
      return Optional.empty();
    }
    return words.stream().anyMatch(WITH::contains)
        ? Optional.of(Units.GROSS)
        : words.stream().anyMatch(WITHOUT::contains) ? Optional.of(Units.MONEY) : Optional.empty();
  }

  /** What a heading says of VAT. */
  public static Optional<String> of(String heading) {
    return unit(words(heading));
  }

  /** Those words of a heading that say it. */
  public static String said(String heading) {
    return String.join(
        " ",
        words(heading).stream()
            .filter(word -> TAX.contains(word) || WITH.contains(word) || WITHOUT.contains(word))
            .toList());
  }

  /** The rate of VAT that a heading states with its price, percent. */
  public static Optional<Double> rate(String heading) {
    Matcher rate = RATE.matcher(heading);
    return rate.find() && of(heading).isPresent()
        ? Optional.of(Double.parseDouble(rate.group(1).replace(',', '.')))
        : Optional.empty();
  }

  /** A heading without what it says of VAT. */
  public static String without(String heading) {
    return String.join(
        " ",
        words(heading).stream()
            .filter(word -> !TAX.contains(word) && !WITH.contains(word) && !WITHOUT.contains(word))
            .filter(word -> !FIGURES.matcher(word).matches())
            .toList());
  }

  /** What a title above a list says of VAT in its prices. */
  public static Optional<String> ofTitle(String title) {
    List<String> words = words(title);
    boolean prices = words.stream().anyMatch(PRICES::contains);
    boolean tax =
        words.stream()
            .anyMatch(word -> TAX.contains(word) || word.equals("ttc") || word.equals("ht"));
    return prices && tax ? unit(words) : Optional.empty();
  }
}
