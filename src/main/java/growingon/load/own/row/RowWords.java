package growingon.load.own.row;

import growingon.load.own.text.Keys;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Words by which a row of a list is told from a lot. */
final class RowWords {
  private static final Pattern STARS = Pattern.compile("^[*\\s]+");
  private static final Pattern TOTAL =
      Pattern.compile(
          "(?:\\*\\s*)?(?:tot|total|totals|\\d+ (?:trees|plants|baume|pflanzen)|zusammen|sub total|subtotal|grand total|sum|summe|zwischensumme|"
              + "gesamt\\p{L}*|insgesamt|sous total|totaal|subtotaal|totale|subtotale|suma|somme|endsumme)(?: .*)?");
  private static final Pattern ALL_TOLD =
      Pattern.compile(
          ".* (?:all told|altogether|in total|in all|insgesamt|en tout|in totaal|in totale|en total)");
  private static final Pattern NOT_STOCK =
      Pattern.compile(
          "(?:.* )?(?:sundries|materials|old codes|do not use|gone|sold|dead|archive|archiv|on order|ordered|bestellt|verkauft|"
              + "commande|commandes|besteld|ordinato|ordinati|pedido|pedidos|verkocht|vendu|vendus|venduto)(?: .*)?");
  private static final Pattern NOT_FOR_SALE =
      Pattern.compile(
          " (?:private|nfs|not for sale|privat|unverkauflich|nicht verkauflich|eigenbedarf|prive|pas a vendre|niet te koop|"
              + "privato|non in vendita|privado|no se vende) ");
  private static final Pattern DUE =
      Pattern.compile("(?:.* )?(?:ordered|due|coming|on order|bestellt|kommt|besteld)(?: .*)?");
  private static final Set<String> THINGS =
      Set.of(
          "cane",
          "canes",
          "stake",
          "stakes",
          "tie",
          "ties",
          "guard",
          "guards",
          "bark",
          "mulch",
          "compost",
          "delivery",
          "voucher",
          "vouchers",
          "charge",
          "carriage",
          "rabbit guards",
          "fertiliser",
          "pallet",
          "pallets",
          "labels",
          "lieferung",
          "gutschein",
          "pfahl",
          "pfahle");
  private static final Pattern PAGE =
      Pattern.compile("(?:seite|page|pagina|blz|blatt|sheet|p) \\d+(?: .*)?");
  private static final Pattern PLACE =
      Pattern.compile(
          "(?:.*(?:tunnel|poly|glass ?house|greenhouse|haus|house|serre|serra|kas|invernadero|bench|table|tisch|beet|feld|field|quartier|parcelle|campo|veld|"
              + "standing|yard|bay|frame).*|(?:bed|row|block|area) ?\\p{L}?\\d*.*)");
  private static final Pattern NAMED_PLACE =
      Pattern.compile(
          "(?:(?:poly|glass|folien|gewachs|green)? ?(?:tunnel|polytunnel|house|glasshouse|greenhouse|haus|serre|serra|kas|"
              + "invernadero|bench|tisch|bed|beet|feld|field|quartier|parcelle|campo|veld|buitenveld|standing|yard|bay|frame|row|block)"
              + "(?: (?:\\p{L}{1,10}|\\d{1,3}\\p{L}?))?|\\p{L}{1,10} (?:tunnel|field|bed|beet|feld|veld|standing|yard))");
  private static final Set<String> DITTO =
      Set.of(
          "\"", "''", "do.", "do", "dto.", "dto", "ditto", "idem", "id.", "id", "„", "”", "“", "〃",
          "-\"-", "--\"--", "dito");

  private RowWords() {}

  static boolean isTotal(String text) {
    String key = Keys.of(STARS.matcher(text).replaceFirst(""));
    return TOTAL.matcher(key).matches() || ALL_TOLD.matcher(key).matches();
  }

  static boolean isNotStock(String text) {
    return NOT_STOCK.matcher(Keys.of(text)).matches();
  }

  /** Whether a place or note says that plants are kept. */
  static boolean isNotForSale(String text) {
    return NOT_FOR_SALE.matcher(" " + Keys.of(text) + " ").find();
  }

  static boolean isDue(String text) {
    return DUE.matcher(Keys.of(text)).matches();
  }

  static boolean isThing(String name) {
    String key = Keys.of(name);
    return Keys.words(key).stream().anyMatch(THINGS::contains) || key.contains("empty pot");
  }

  /** Whether it is a short name whose last word, before any figures, is a thing. */
  static boolean endsWithThing(String name) {
    List<String> words = Keys.words(Keys.of(name).replaceFirst("[0-9].*$", "").strip());
    return !words.isEmpty() && words.size() <= 3 && THINGS.contains(words.get(words.size() - 1));
  }

  static boolean isPage(String text) {
    return PAGE.matcher(Keys.of(text)).matches();
  }

  static boolean isPlace(String text) {
    return PLACE.matcher(Keys.of(text)).matches();
  }

  /** Whether a title is a place and no more: Tunnel 2, Quartier Süd, Buitenveld. */
  static boolean isNamedPlace(String text) {
    return NAMED_PLACE.matcher(Keys.of(text)).matches();
  }

  static boolean isDitto(String text) {
    return DITTO.contains(text.strip().toLowerCase(java.util.Locale.ROOT));
  }

  /** Whether a sheet's name says that it explains others. */
  static boolean isLegend(String name) {
    return Set.of("key", "legend", "codes", "legende", "schlussel", "read me", "readme", "lists")
        .contains(Keys.of(name));
  }
}
