package growingon.load.own.heading;

import growingon.load.own.heading.HeadingRead.How;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.CountText;
import growingon.load.own.text.Meaning;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * Whether columns of firsts and seconds that name no unit have plants or plants in 100: they are
 * plants where they add up to the number of plants, shares where they add up to 100. Where neither
 * tells, the larger than possible rules the other out; else it is asked.
 */
final class Sorts {
  private static final int ALL = 100;
  private static final Pattern PERCENT =
      Pattern.compile("(?iu).*(?:%|percent|pct|prozent|pourcent|procent|per cent|share|anteil).*");
  private static final Map<String, String> NUMBER_OF =
      Map.of("first %", "number of firsts", "second %", "number of seconds");

  private final List<HeadingRead> columns = new ArrayList<>();
  private boolean addUpToPlants = true;
  private boolean addUpToHundred = true;
  private boolean overHundred;
  private boolean overPlants;

  private Sorts(List<HeadingRead> reads, List<SheetRow> body) {
    reads.stream().filter(read -> isOpen(read, body)).forEach(columns::add);
    HeadedCells cells = new HeadedCells(reads);
    for (SheetRow row : body) {
      List<Integer> numbers =
          columns.stream()
              .flatMap(read -> row.cell(read.column()).stream())
              .flatMap(cell -> CountText.of(cell).value().stream())
              .toList();
      OptionalInt plants = cells.count(row, "quantity");
      if (!numbers.isEmpty() && plants.isPresent()) {
        note(numbers, plants.getAsInt());
      }
    }
  }

  private static boolean isOpen(HeadingRead read, List<SheetRow> body) {
    return NUMBER_OF.containsKey(read.ours())
        && read.how() != How.YOURS
        && read.rows() > 0
        && !PERCENT.matcher(read.heading()).matches()
        && body.stream()
            .flatMap(row -> row.cell(read.column()).stream())
            .map(SheetCell::text)
            .noneMatch(text -> text.contains("%") || text.matches("0?[.,][0-9]+"));
  }

  private void note(List<Integer> numbers, int plants) {
    int sum = numbers.stream().mapToInt(Integer::intValue).sum();
    addUpToPlants &= sum == plants;
    addUpToHundred &= sum == ALL;
    overHundred |= numbers.stream().anyMatch(each -> each > ALL);
    overPlants |= numbers.stream().anyMatch(each -> each > plants);
  }

  /** The columns of a list, those of firsts and seconds as their cells show. */
  static List<HeadingRead> settled(List<HeadingRead> reads, List<SheetRow> body) {
    Sorts sorts = new Sorts(reads, body);
    return reads.stream()
        .map(read -> sorts.columns.contains(read) ? sorts.settled(read) : read)
        .toList();
  }

  private HeadingRead settled(HeadingRead read) {
    boolean both = columns.size() > 1;
    boolean plants = both && addUpToPlants || overHundred && !overPlants;
    boolean shares = both && addUpToHundred || overPlants && !overHundred;
    String number = NUMBER_OF.get(read.ours());
    if (plants == shares) {
      return shares
          ? read
          : read.as(Meaning.OPEN, "", How.OPEN, "are these plants, or plants in 100?")
              .offering(List.of(number, read.ours()));
    }
    return shares ? read : read.as(number, "count", How.BY_ITS_CELLS, "its cells are plants");
  }
}
