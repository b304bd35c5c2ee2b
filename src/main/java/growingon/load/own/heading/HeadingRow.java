package growingon.load.own.heading;

import growingon.load.own.plant.PlantNames;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.size.RangeColumns;
import growingon.load.own.size.SizeGrammar;
import growingon.load.own.size.SizeParts;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Remembered;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * A heading row of a list.
 *
 * @param firstIndex of its upper row among the sheet's rows
 * @param lastIndex of its lower row, the same where it is one row
 * @param texts heading by column
 * @param score how many of them are understood
 * @param sizes by its first column each size that stands over headings of its own, as number and
 *     price under 9 cm, under 2 litre and so on; empty if there are none
 */
public record HeadingRow(
    int firstIndex,
    int lastIndex,
    SortedMap<Integer, String> texts,
    int score,
    SortedMap<Integer, String> sizes) {
  static final int ROWS_SEARCHED = 60;
  private static final Set<String> NAMES =
      Set.of("species", "variety", "genus", "common name", "cultivar");
  private static final Remembered<Boolean> SIZES = new Remembered<>();
  private static final int LONGEST_ROW = 400;

  /** Fewer headings may be a title's words. */
  static final int LEAST_OF_A_LIST = 3;

  /** What a column without a heading is called behind its letter. */
  static final String NO_HEADING = " (no heading)";

  private static final int LETTERS = 26;

  private static final Pattern DIGIT = Pattern.compile("[0-9]");
  private static final Pattern NUMBER = Pattern.compile("\\d+([.,]\\d+)?");
  private static final Pattern WORD = Pattern.compile("\\p{L}{2}");

  /** In a wider row three headings that are understood are enough. */
  private static final int WIDE = 8;

  HeadingRow(int firstIndex, int lastIndex, SortedMap<Integer, String> texts, int score) {
    this(firstIndex, lastIndex, texts, score, new TreeMap<>());
  }

  /** The heading row among the first rows of a sheet. */
  public static Optional<HeadingRow> find(Sheet sheet, OwnWords own) {
    HeadingRow best = null;
    for (int i = 0; i < sheet.rows().size(); i++) {
      if (sheet.rows().get(i).number() > ROWS_SEARCHED) {
        break;
      }
      best = better(best, at(sheet, i, own));
      best = better(best, TwoRows.of(sheet, i, own));
      best = better(best, underSizes(sheet, i, own));
    }
    return Optional.ofNullable(best)
        .or(() -> FewWords.find(sheet, own))
        .map(found -> firstList(sheet, found, own))
        .map(found -> found.hasName(own) ? found : found.withColumnOfPlants(sheet))
        .filter(found -> isHeading(sheet, found, own));
  }

  /** A list above the one with most headings is no title: its own headings come first. */
  private static HeadingRow firstList(Sheet sheet, HeadingRow best, OwnWords own) {
    for (int i = 0; i < best.firstIndex - 1; i++) {
      Optional<HeadingRow> above =
          at(sheet, i, own).filter(row -> row.isListAbove(sheet, best, own));
      if (above.isPresent()) {
        return above.get();
      }
    }
    return best;
  }

  /** Whether it names most of its columns, and plants stand below it before the next headings. */
  private boolean isListAbove(Sheet sheet, HeadingRow next, OwnWords own) {
    boolean headings =
        score >= LEAST_OF_A_LIST
            && score * 3 >= texts.size() * 2
            && sheet.rows().get(firstIndex).cells().values().stream().allMatch(SheetCell::isText);
    return headings
        && texts.entrySet().stream()
            .filter(each -> isName(each.getValue(), own))
            .anyMatch(each -> hasPlants(sheet, each.getKey(), next.firstIndex));
  }

  private boolean hasPlants(Sheet sheet, int column, int end) {
    return sheet.rows().subList(lastIndex + 1, end).stream()
        .flatMap(row -> row.cell(column).stream())
        .anyMatch(cell -> cell.isText() && PlantNames.shipped().find(cell.text(), "").isPlant());
  }

  private static HeadingRow better(HeadingRow best, Optional<HeadingRow> next) {
    return next.isPresent() && (best == null || next.get().score > best.score) ? next.get() : best;
  }

  /** The row as a heading row, by the texts that are headings. */
  public static Optional<HeadingRow> at(Sheet sheet, int index, OwnWords own) {
    SortedMap<Integer, String> texts = textsOf(sheet.rows().get(index));
    return scored(index, index, texts, own);
  }

  static SortedMap<Integer, String> textsOf(SheetRow row) {
    SortedMap<Integer, String> texts = new TreeMap<>();
    row.cells().forEach((column, cell) -> texts.put(column, cell.text()));
    return texts;
  }

  static Optional<HeadingRow> scored(
      int first, int last, SortedMap<Integer, String> texts, OwnWords own) {
    if (texts.size() < 2 || texts.size() > LONGEST_ROW) {
      return Optional.empty();
    }
    RangeColumns ranges = RangeColumns.of(texts);
    int score =
        ranges.ends().size()
            + (int) ranges.texts().values().stream().filter(text -> isKnown(text, own)).count();
    boolean most = score * 2 >= Math.min(texts.size(), WIDE) || score >= 3;
    return score >= 2 && most
        ? Optional.of(new HeadingRow(first, last, texts, score))
        : Optional.empty();
  }

  /** Columns under the first of several sizes. */
  static int widthOf(List<Integer> starts) {
    return starts.get(1) - starts.get(0);
  }

  /** Sizes in the upper row, and under each of them the same headings. */
  private static Optional<HeadingRow> underSizes(Sheet sheet, int index, OwnWords own) {
    if (index == 0) {
      return Optional.empty();
    }
    SheetRow upper = sheet.rows().get(index - 1);
    SheetRow lower = sheet.rows().get(index);
    SortedMap<Integer, String> sizes = textsOf(upper);
    sizes.values().removeIf(text -> !isSize(text));
    if (sizes.size() < 2 || lower.number() != upper.number() + 1 || !isAlike(sizes, lower)) {
      return Optional.empty();
    }
    SortedMap<Integer, String> texts = textsOf(lower);
    textsOf(upper).headMap(sizes.firstKey()).forEach(texts::putIfAbsent);
    textsOf(upper).tailMap(lower.cells().lastKey() + 1).forEach(texts::putIfAbsent);
    return scored(index - 1, index, texts, own)
        .map(row -> new HeadingRow(index - 1, index, texts, row.score + sizes.size(), sizes));
  }

  private static boolean isAlike(SortedMap<Integer, String> sizes, SheetRow lower) {
    List<Integer> starts = new ArrayList<>(sizes.keySet());
    List<List<String>> under = new ArrayList<>();
    for (int i = 0; i < starts.size(); i++) {
      int to = i + 1 < starts.size() ? starts.get(i + 1) : starts.get(i) + widthOf(starts);
      under.add(
          lower.between(starts.get(i), to).cells().values().stream()
              .map(cell -> Keys.of(cell.text()))
              .toList());
    }
    return under.get(0).size() >= 2 && under.stream().allMatch(under.get(0)::equals);
  }

  /**
   * Whether two of three texts of a row are headings. Of a long list hardly a row is one; so short
   * texts are looked at first, which come again and again and are known by then.
   */
  public static boolean mostAreKnown(SheetRow row, OwnWords own) {
    int cells = row.cells().size();
    int unknown = 0;
    for (String text :
        row.cells().values().stream()
            .map(SheetCell::text)
            .sorted(Comparator.comparingInt(String::length))
            .toList()) {
      unknown += isKnown(text, own) ? 0 : 1;
      if (unknown * 3 > cells) {
        return false;
      }
    }
    return true;
  }

  /** Whether a text is a heading or a size. */
  static boolean isKnown(String text, OwnWords own) {
    return own.find("heading", text).isPresent()
        || own.headings().find(text).isPresent()
        || isSize(text);
  }

  /** Whether a heading is a size, so that its cells are numbers of plants of that size. */
  static boolean isSize(String heading) {
    return SIZES.get(heading, HeadingRow::namesASize);
  }

  private static boolean namesASize(String heading) {
    if (heading.length() > 20 || NUMBER.matcher(heading).matches()) {
      return false;
    }
    SizeParts parts = new SizeParts();
    SizeGrammar.readSize(heading, parts);
    boolean sized = parts.pot().isPresent() || parts.hasSize();
    return sized && parts.notes().isEmpty() && DIGIT.matcher(heading).find();
  }

  public boolean hasName(OwnWords own) {
    return texts.values().stream().anyMatch(text -> isName(text, own));
  }

  static boolean isName(String text, OwnWords own) {
    return own.find("heading", text).filter(NAMES::contains).isPresent()
        || own.headings()
            .find(text)
            .filter(found -> NAMES.contains(found.meaning().ours()))
            .isPresent();
  }

  /**
   * With the columns that have no heading and hold words about the rows: those between the headings
   * and those right behind the last. Behind an empty column stands a table beside the list.
   */
  public HeadingRow withRemarks(List<SheetRow> body) {
    SortedMap<Integer, String> all = new TreeMap<>(texts);
    for (int column = texts.firstKey(); column <= texts.lastKey() + 1; column++) {
      if (!texts.containsKey(column) && areRemarks(body, column)) {
        all.put(column, withoutHeading(column));
      }
    }
    return new HeadingRow(firstIndex, lastIndex, all, score, sizes);
  }

  /** Most of its cells are words, in rows that say something under the headings too. */
  private boolean areRemarks(List<SheetRow> body, int column) {
    List<SheetRow> filled = body.stream().filter(row -> row.cell(column).isPresent()).toList();
    long remarks =
        filled.stream()
            .filter(row -> WORD.matcher(row.text(column)).find())
            .filter(row -> row.cells().keySet().stream().filter(texts::containsKey).count() >= 2)
            .count();
    return remarks > 0 && remarks * 2 >= filled.size();
  }

  private static String withoutHeading(int column) {
    String letter = Character.toString('A' + column % LETTERS);
    return (column < LETTERS ? letter : Character.toString('@' + column / LETTERS) + letter)
        + NO_HEADING;
  }

  /** The same with other columns. */
  public HeadingRow ofColumns(SortedMap<Integer, String> columns) {
    return new HeadingRow(firstIndex, lastIndex, columns, score, sizes);
  }

  /** With the column that has no heading and whose cells are plants, if there is one. */
  private HeadingRow withColumnOfPlants(Sheet sheet) {
    SortedMap<Integer, String> all = new TreeMap<>(texts);
    boolean headed = hasColumnOfPlants(sheet, this);
    for (int column = 0; !headed && column < Math.min(26, texts.lastKey()); column++) {
      if (!texts.containsKey(column) && plants(sheet, lastIndex, column) > 0) {
        all.put(column, withoutHeading(column));
        break;
      }
    }
    return new HeadingRow(firstIndex, lastIndex, all, score, sizes);
  }

  /** A plant's name and one more; where no heading is the name, a column of plants. */
  private static boolean isHeading(Sheet sheet, HeadingRow row, OwnWords own) {
    return row.hasName(own) && (FewWords.mayCount(row, own) || hasAPlant(sheet, row))
        || hasColumnOfPlants(sheet, row);
  }

  private static boolean hasAPlant(Sheet sheet, HeadingRow row) {
    return row.texts.keySet().stream()
        .anyMatch(column -> row.hasPlants(sheet, column, sheet.rows().size()));
  }

  static boolean hasColumnOfPlants(Sheet sheet, HeadingRow row) {
    return row.texts.keySet().stream().anyMatch(column -> plants(sheet, row.lastIndex, column) > 0);
  }

  /** Share of the cells below that are plants, nothing if under three in ten. */
  static double plants(Sheet sheet, int headingIndex, int column) {
    int filled = 0;
    int plants = 0;
    for (SheetRow row : sheet.rows().subList(headingIndex + 1, sheet.rows().size())) {
      Optional<SheetCell> cell = row.cell(column);
      if (cell.isPresent() && cell.get().isText()) {
        filled++;
        plants += PlantNames.shipped().find(cell.get().text(), "").isPlant() ? 1 : 0;
      }
      if (filled >= 200) {
        break;
      }
    }
    return filled > 0 && plants * 10 >= filled * 3 ? (double) plants / filled : 0;
  }
}
