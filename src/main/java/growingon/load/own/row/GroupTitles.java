package growingon.load.own.row;

import growingon.load.own.plant.PlantMatch;
import growingon.load.own.plant.PlantNames;
import growingon.load.own.plant.PlantText;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.Keys;
import growingon.load.own.text.MonthText;
import java.time.YearMonth;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * Titles between the rows of a list: what each says of the rows below it, till the next of its
 * kind.
 */
final class GroupTitles {
  /** Price per 100, bundles of 25. */
  private static final Pattern TERMS =
      Pattern.compile("(?i)\\b(?:per|je|pro|par|por|of|à|of|von|de)\\s+[0-9]{1,4}\\b");

  private final RowReader reader;
  private final Set<String> placeNames = new HashSet<>();
  private final Map<Integer, String> notUsed = new TreeMap<>();
  private String genus = "";
  private Optional<PlantMatch> species = Optional.empty();
  private String place;
  private String size = "";
  private String terms = "";
  private Optional<YearMonth> month;
  private boolean notStock;

  GroupTitles(RowReader reader, TitleAbove above) {
    this.reader = reader;
    this.place = above.place();
    this.month = above.month();
  }

  /** A name of the place column, which may be a title too. */
  void addPlace(String name) {
    placeNames.add(Keys.of(name));
  }

  void take(SheetRow row) {
    String text =
        String.join(" ", row.cells().values().stream().map(SheetCell::text).toList()).strip();
    notStock = RowWords.isNotStock(text);
    terms = "";
    takeTerms(text);
    PlantMatch match = PlantNames.shipped().find(text, "");
    String key = PlantNames.shipped().genusIn(bare(text));
    if (notStock) {
      return;
    }
    if (PlantNames.shipped().isGenus(key) && Keys.words(Keys.of(bare(text))).size() == 1) {
      genus = key;
      species = Optional.empty();
    } else if (match.isKnown() && match.how() == PlantMatch.How.CERTAIN) {
      genus = PlantNames.genusOf(Keys.of(match.taxon().get()));
      species = Optional.of(match);
    } else if (MonthText.isSeasonOrYear(text)) {
      month = new MonthText(Optional.empty(), false).of(SheetCell.of(text)).value();
    } else if (RowWords.isPlace(text) || placeNames.contains(Keys.of(text))) {
      place = text;
    } else if (reader.readsSizeOf(text)) {
      size = text;
    } else if (RowWords.isNotForSale(text)) {
      genus = "";
      species = Optional.empty();
    } else {
      genus =
          Keys.words(Keys.of(text)).size() == 1
                  && text.equals(text.toUpperCase(java.util.Locale.ROOT))
                  && PlantText.isEpithet(Keys.of(text))
                  && !Keys.of(text).endsWith("s")
              ? Keys.of(text)
              : "";
      species = Optional.empty();
      notUsed.put(row.number(), text);
    }
  }

  /** What is no group may say how what stands below it is counted and priced, or that it stays. */
  void takeTerms(String text) {
    boolean stays = text.length() < BlockReader.LONGEST_GROUP && RowWords.isNotForSale(text);
    terms = stays || TERMS.matcher(text).find() ? text : terms;
  }

  private static String bare(String title) {
    return title
        .replaceAll("\\([^)]*\\)", " ")
        .replaceFirst("\\s+[-–—/].*$|\\s*[/,].*$", "")
        .strip();
  }

  /** What they say of plant and size. */
  Group under() {
    return new Group(genus, species, size, terms);
  }

  /** The place that they say, empty if none. */
  String place() {
    return place;
  }

  /** The month or season that they say. */
  Optional<YearMonth> month() {
    return month;
  }

  /** Whether what stands below is no stock. */
  boolean saysNoStock() {
    return notStock;
  }

  /** Those that say nothing that is used, by row. */
  Map<Integer, String> notUsed() {
    return notUsed;
  }
}
