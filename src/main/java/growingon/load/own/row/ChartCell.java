package growingon.load.own.row;

import growingon.load.own.plant.PlantNames;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A lot as it stands in a cell of a chart: Hornbeam H3 12 x 15L 40mm; 3 olives 45L; Blackthorn 4,
 * poor, 5L.
 *
 * @param number of plants, as it stands; empty if none is there
 * @param code the list's own of the lot
 */
record ChartCell(String name, String number, String size, String code, String note) {
  private static final Pattern TIMES = Pattern.compile("(\\d{1,5})\\s*[x×]\\s*(?=\\d)");
  private static final Pattern NUMBER_FIRST =
      Pattern.compile("(?:(.*?)\\s+[-–]\\s+)?(\\d{1,5})\\s+(\\p{L}[\\p{L} .'’]*?)\\s+(\\d.*)");
  private static final Pattern NUMBER_LAST = Pattern.compile("(\\D*?)\\s*(\\d.*)");
  private static final Pattern NUMBER_THEN = Pattern.compile("(\\d{1,5})\\s*,\\s*(.*)");
  private static final Pattern CODE = Pattern.compile("(.*\\S)\\s+(\\p{Lu}{1,2}\\d{1,4})");
  private static final Pattern POT =
      Pattern.compile(
          "(?iu)\\d+(?:[.,]\\d+)?\\s*(?:l|lt|ltrs?|litres?|liter|litros?|litri|cm)(?![\\p{L}\\d])");
  private static final Pattern TRUNK =
      Pattern.compile("(?i)\\d+(?:\\s*[-–/]\\s*\\d+)?\\s*mm\\s*\\+?");
  private static final Pattern MARKS = Pattern.compile("^[\\s,;()–-]+|[\\s,;()–-]+$");

  /** The lots of a cell; none where it names no plant. */
  static List<ChartCell> of(String cell) {
    String text = cell.strip();
    List<ChartCell> times = times(text);
    if (!times.isEmpty()) {
      return times;
    }
    Matcher first = NUMBER_FIRST.matcher(text);
    if (first.matches() && isPlant(first.group(3))) {
      String before = first.group(1) == null ? "" : first.group(1);
      return List.of(made(first.group(3), first.group(2), first.group(4), before));
    }
    Matcher last = NUMBER_LAST.matcher(text);
    if (last.matches() && isPlant(last.group(1))) {
      Matcher then = NUMBER_THEN.matcher(last.group(2));
      return List.of(
          then.matches()
              ? made(last.group(1), then.group(1), then.group(2), "")
              : new ChartCell(last.group(1).strip(), last.group(2).strip(), "", "", ""));
    }
    return isPlant(text) ? List.of(new ChartCell(text, "", "", "", "")) : List.of();
  }

  /** Olive 2 x 70L 1 x 110L are two lots of one plant. */
  private static List<ChartCell> times(String text) {
    List<ChartCell> lots = new ArrayList<>();
    Matcher times = TIMES.matcher(text);
    String name = "";
    int from = -1;
    String number = "";
    while (times.find()) {
      if (from < 0) {
        name = text.substring(0, times.start()).strip().replaceAll("[\\s,;–-]+$", "");
      } else {
        lots.add(made(name, number, text.substring(from, times.start()), ""));
      }
      number = times.group(1);
      from = times.end();
    }
    if (from >= 0 && !name.isEmpty()) {
      lots.add(made(name, number, text.substring(from), ""));
    }
    return lots;
  }

  private static ChartCell made(String name, String number, String rest, String before) {
    Matcher pot = POT.matcher(rest);
    String size = pot.find() ? pot.group() : "";
    String left = size.isEmpty() ? rest : pot.replaceFirst(" ");
    Matcher trunk = TRUNK.matcher(left);
    if (trunk.find()) {
      size = (size + " " + trunk.group()).strip();
      left = trunk.replaceFirst(" ");
    }
    if (size.isEmpty() && left.strip().matches("\\d.*")) {
      size = left.strip();
      left = "";
    }
    Matcher code = CODE.matcher(name);
    boolean coded = code.matches();
    String note = String.join("; ", List.of(bare(before), bare(left))).replaceAll("^; |; $", "");
    return new ChartCell(
        coded ? code.group(1) : name.strip(), number, size, coded ? code.group(2) : "", note);
  }

  private static String bare(String text) {
    return MARKS.matcher(text).replaceAll("");
  }

  private static boolean isPlant(String name) {
    return !name.isBlank() && PlantNames.shipped().find(bare(name), "").isPlant();
  }

  /** Whether it says which plant and how many. */
  boolean isLot() {
    return !number.isEmpty();
  }
}
