package growingon.load.own.row;

import growingon.load.own.plant.PlantNames;
import growingon.load.own.text.Keys;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Words by which a row of a list is told from a lot. */
final class RowWords {
  private static final Pattern STARS = Pattern.compile("^[*\\s]+");
  private static final Pattern TOTAL =
      Pattern.compile(
          "(?:\\*\\s*)?(?:(?:(?:rough|approx|about|our|my|geschatzt\\p{L}*|ungefahr\\p{L}*|environ|ongeveer|circa) )?(?:tot|total|totals|totaal|totale)|\\d+ (?:trees|plants|baume|pflanzen)|zusammen|sub total|subtotal|grand total|sum|summe|zwischensumme|"
              + "gesamt\\p{L}*|insgesamt|sous total|totaal|subtotaal|totale|subtotale|suma|somme|endsumme|samen|tezamen|ensemble|insieme)(?: .*)?");
  private static final Pattern ALL_TOLD =
      Pattern.compile(
          ".* (?:all told|altogether|in total|in all|insgesamt|gesamt|total|totals|totaal|totale|summe|suma|somme|en tout|in totaal|in totale|en total)");
  private static final Pattern TREE_A_ROW =
      Pattern.compile(
          " (?:(?:one|1) (?:tree|plant) (?:a|per) (?:row|line)|(?:one|1|a) (?:row|line) (?:is )?(?:one|1|a) (?:tree|plant)"
              + "|(?:eine?|1) (?:baum|pflanze) (?:je|pro) (?:zeile|reihe)|(?:eine|1|jede|je) (?:zeile|reihe) (?:ist )?(?:eine?|1) (?:baum|pflanze)"
              + "|(?:un|une|1) (?:arbre|plante) par ligne|(?:une|1) ligne (?:est )?(?:un|une|1) (?:arbre|plante)"
              + "|(?:een|1) (?:boom|plant) per (?:regel|rij)|(?:een|1|elke) (?:regel|rij) (?:is )?(?:een|1) (?:boom|plant)"
              + "|(?:un|una|1) (?:albero|pianta) per riga|(?:una|1) riga (?:e )?(?:un|una|1) (?:albero|pianta)"
              + "|(?:un|una|1) (?:arbol|planta) por (?:linea|fila)|(?:una|1) (?:linea|fila) (?:es )?(?:un|una|1) (?:arbol|planta)) ");
  private static final Pattern NOT_STOCK =
      Pattern.compile(
          "(?:.* )?(?:to come|coming|awaited|sundries|materials|old codes|do not use|gone|sold|dead|archive|archiv|on order|ordered|bestellt|verkauft|"
              + "commandee?s?|besteld|ordinat[oaie]|pedid[oa]s?|verkocht|vendue?s?|vendut[oaie]|vendid[oa]s?|"
              + "expected|incoming|erwartet|zu erwarten|te verwachten|verwacht|attendue?s?|a venir|in arrivo|por llegar|noch nicht da|"
              + "nog niet binnen|pension|in stalling|not ours|customers? (?:trees|plants)|gehoren uns nicht|held for (?:others?|customers?|clients?).*|kundenbaume|kundenpflanzen|"
              + "arbres de clients|klantenbomen|bomen van klanten|alberi di clienti|arboles de clientes)(?: .*)?");

  /** What a sheet is of that is no list of what stands. */
  private static final Pattern OF_SALES =
      Pattern.compile(
          "(?:.* )?(?:prices?|preise?|prix|prijs|prijzen|prezzi|precios|tarifs?|tarife?|sales|sales log|orders|orders in|order book|customers|suppliers|addresses|contacts|price list|to do|"
              + "verkaufe|bestellungen|auftrage|kunden|lieferanten|adressen|preisliste|ventes|commandes|clients|fournisseurs|adresses|"
              + "verkopen|bestellingen|klanten|leveranciers|vendite|ordini|clienti|fornitori|ventas|clientes|proveedores)(?: (?:20)?[0-9]{2})?");

  private static final Pattern NOT_FOR_SALE =
      Pattern.compile(
          " (?:private|nfs|not for sale|privat|unverkauflich|nicht verkauflich|eigenbedarf|prive|pas a vendre|niet te koop|"
              + "privato|non in vendita|privado|no se vende|nicht verkaufen|not to be sold|do not sell|ne pas vendre|niet verkopen|non vendere|no vender|mutterpflanze|mutterbaum|"
              + "hivernage client|plantes? de clients?|kundenpflanzen?|customer s own|"
              + "mother plant|stock plant|pied mere|moederplant|pianta madre|planta madre) ");
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
          "pfahle",
          "baumpfahl",
          "baumpfahle",
          "fracht",
          "fleece",
          "substrat",
          "containersubstrat",
          "terreau",
          "potgrond",
          "terriccio",
          "sustrato");
  private static final Pattern EMPTY_POTS =
      Pattern.compile(
          "empty pot|leere topfe|leertopfe|pots vides|lege potten|vasi vuoti|macetas vacias|frachtkosten|leihgebinde|cc karren?\\b");

  /** A bench, bed or row in which nothing stands. */
  private static final Pattern NOTHING =
      Pattern.compile(
          "(?:empty|vacant|free|leer|frei|vide|leeg|vrij|vuot[oai]|liber[oai]|vaci[oa]|libre|fallow|brache?)(?: .*)?");

  private static final Pattern PAGE =
      Pattern.compile("(?:seite|page|pagina|blz|blatt|sheet|p) \\d+(?: .*)?");
  private static final Pattern PLACE =
      Pattern.compile(
          "(?:.*(?:tunnel|poly|glass ?house|greenhouse|haus|house|shade ?house|ombriere|serre|serra|kas|invernadero|bench|table|tisch|beet|feld|field|quartier|parcelle|campo|veld|"
              + "standing|yard|bay|frame).*|(?:bed|row|block|area) ?\\p{L}?\\d*.*"
              + "|(?:.* )?(?:paddock|orchard|terrace|plot|halle|flache|terrasse|acker|garten|hof|loods|akker|perceel|terrein|erf|terras|carre|"
              + "aire|prairie|cour|verger|planche|ombraio|piazzale|appezzamento|vivaio|umbraculo|era|parcela|finca|bancal|patio)(?: .*)?)");
  private static final Pattern NAMED_PLACE =
      Pattern.compile(
          "(?:(?:poly|glass|folien|gewachs|green)? ?(?:tunnel|polytunnel|house|glasshouse|greenhouse|haus|serre|serra|kas|"
              + "invernadero|bench|tisch|bed|beet|feld|field|quartier|parcelle|campo|veld|buitenveld|standing|yard|bay|frame|row|block|"
              + "halle|flache|terrasse|carre|aire|planche|loods|perceel|ombraio|umbraculo|parcela)"
              + "(?: (?:\\p{L}{1,10}|\\d{1,3}\\p{L}?))?|\\p{L}{1,10} (?:tunnel|field|bed|beet|feld|veld|standing|yard))");

  /** Tunnel list, Field stock: what the paper is, and no place. */
  private static final Pattern PAPER =
      Pattern.compile(
          ".* (?:list|stock|stocklist|count|inventory|stocktake|liste|bestand|inventur|inventaire|lijst|voorraad|lista|elenco|"
              + "inventario|existencias)");

  private static final Set<String> DITTO =
      Set.of(
          "\"", "''", "do.", "do", "dto.", "dto", "ditto", "idem", "id.", "id", "„", "”", "“", "〃",
          "-\"-", "--\"--", "dito", "íd.", "íd", "idm", "ídem");

  private RowWords() {}

  static boolean isTotal(String text) {
    String key = Keys.of(STARS.matcher(text).replaceFirst(""));
    return key.equals("all") || TOTAL.matcher(key).matches() || ALL_TOLD.matcher(key).matches();
  }

  /** Whether a title says that a row is one tree where no number says otherwise. */
  static boolean saysATreeARow(String title) {
    return TREE_A_ROW.matcher(" " + Keys.of(title.replace("=", " ")) + " ").find();
  }

  static boolean isNotStock(String text) {
    return NOT_STOCK.matcher(Keys.of(text)).matches();
  }

  /** Whether a sheet's name says that it is no list of what stands. */
  static boolean isNoStockSheet(String name) {
    return isNotStock(name) || OF_SALES.matcher(Keys.of(name)).matches();
  }

  /** Whether a place or note says that plants are kept. */
  static boolean isNotForSale(String text) {
    return NOT_FOR_SALE.matcher(" " + Keys.of(text) + " ").find();
  }

  static boolean isDue(String text) {
    return DUE.matcher(Keys.of(text)).matches();
  }

  /** Canes and pots; Oak stake and Pine bark 50 l are no trees either. */
  static boolean isThing(String name, String genus) {
    String key = Keys.of(name);
    boolean thing =
        Keys.words(key).stream().anyMatch(THINGS::contains) || EMPTY_POTS.matcher(key).find();
    return thing && (endsWithThing(name) || !PlantNames.shipped().find(name, genus).isPlant());
  }

  /** Whether a name is a number, and names no plant. */
  static boolean isFigure(String name) {
    return name.matches("[0-9]+");
  }

  /** Whether it is a short name whose last word, before any figures, is a thing. */
  private static boolean endsWithThing(String name) {
    List<String> words = Keys.words(Keys.of(name).replaceFirst("[0-9].*$", "").strip());
    return !words.isEmpty() && words.size() <= 3 && THINGS.contains(words.get(words.size() - 1));
  }

  /** Whether a name says that nothing stands there; it is not looked at where a number is. */
  static boolean isNothing(String name) {
    return NOTHING.matcher(Keys.of(name)).matches()
        && !PlantNames.shipped().find(name, "").isPlant();
  }

  static boolean isPage(String text) {
    return PAGE.matcher(Keys.of(text)).matches();
  }

  static boolean isPlace(String text) {
    return PLACE.matcher(Keys.of(text)).matches();
  }

  /** Whether a title is a place and no more: Tunnel 2, Quartier Süd, Buitenveld. */
  static boolean isNamedPlace(String text) {
    String key = Keys.of(text);
    return NAMED_PLACE.matcher(key).matches() && !PAPER.matcher(key).matches();
  }

  /** Whether a remark is a place and which of several: Halle 2. */
  static boolean isOneOfPlaces(String text) {
    return Keys.words(Keys.of(text)).size() == 2
        && isNamedPlace(text)
        && !PlantNames.shipped().find(text, "").isPlant();
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
