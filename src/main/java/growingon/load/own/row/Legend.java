package growingon.load.own.row;

import growingon.load.own.sheet.Sheet;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.Keys;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a sheet that explains others says: no list, but a line of it that gives a unit or says what
 * a size or colour means is quoted where that is asked.
 */
public final class Legend {
  private static final int LONGEST = 100;
  private static final int MOST_LINES = 3;
  private static final Pattern MEANS = Pattern.compile("\\s*(?:[=:]|\\s[-–—]\\s).*$");
  private static final Pattern FIRST_MEANS = Pattern.compile("[=:]\\s*$");

  private static final Set<String> MEASURES =
      words(
          "mm cm m metre metres meter in inch inches ft feet l ltr litre litres liter litri litros"
              + " gal gallon gallons girth circumference caliper calliper diameter height trunk stem"
              + " stu umfang stammumfang durchmesser stammdurchmesser hohe"
              + " circonference diametre hauteur omtrek stamomtrek hoogte"
              + " circonferenza diametro altezza perimetro altura");

  private static final Set<String> COLOURS =
      words(
          "red yellow green blue orange pink purple grey gray brown white black colour color"
              + " rot gelb grun blau rosa lila grau braun farbe"
              + " rouge jaune vert bleu gris rose couleur rood geel groen blauw grijs kleur"
              + " rosso giallo verde blu grigio colore rojo amarillo azul");

  /** A line: where it stands, as it is written, and what it explains, as a key. */
  private record Line(String sheet, String text, String head) {
    List<String> words() {
      return Keys.words(Keys.of(text)).stream().map(Legend::singular).toList();
    }

    /** Whether it explains a heading, as Size: height in cm. */
    boolean explains(String heading) {
      String key = Keys.of(heading);
      return !head.isEmpty()
          && (isOf(key) || key.startsWith(head + " ") || head.startsWith(key + " "));
    }

    /** Whether it explains a word by itself, as M = 40-60; a bare figure is no word. */
    boolean isOf(String key) {
      return key.equals(head) && key.chars().anyMatch(Character::isLetter);
    }

    /** Whether it gives a unit for something, as All trunks in mm. */
    boolean measures(String heading) {
      List<String> all = words();
      List<String> asked =
          Keys.words(Keys.of(heading)).stream()
              .map(Legend::singular)
              .filter(word -> word.length() > 2)
              .toList();
      return asked.stream().anyMatch(all::contains)
          && all.stream().anyMatch(word -> MEASURES.contains(word) && !asked.contains(word));
    }

    boolean isOfColours() {
      return words().stream().anyMatch(COLOURS::contains);
    }
  }

  private final List<Line> lines;

  private Legend(List<Line> lines) {
    this.lines = List.copyOf(lines);
  }

  /** What the sheets of a list that explain others say. */
  public static Legend of(List<Sheet> sheets) {
    List<Line> lines = new ArrayList<>();
    for (Sheet sheet : sheets) {
      if (RowWords.isLegend(sheet.name())) {
        sheet.rows().forEach(row -> lines.add(line(sheet, row)));
      }
    }
    return new Legend(lines.stream().filter(line -> line.text.length() <= LONGEST).toList());
  }

  private static Line line(Sheet sheet, SheetRow row) {
    List<String> cells = row.cells().values().stream().map(SheetCell::text).toList();
    String first = cells.get(0).strip();
    String rest = String.join(" ", cells.subList(1, cells.size())).strip();
    String between = FIRST_MEANS.matcher(first).find() ? " " : ": ";
    boolean alone = rest.isEmpty();
    String head = MEANS.matcher(first).replaceFirst("");
    return new Line(
        sheet.name(),
        alone ? first : first + between + rest,
        alone && head.equals(first) ? "" : Keys.of(head));
  }

  private static Set<String> words(String all) {
    return Arrays.stream(all.split(" ")).map(Legend::singular).collect(Collectors.toSet());
  }

  private static String singular(String word) {
    return word.length() > 3 && word.endsWith("s") ? word.substring(0, word.length() - 1) : word;
  }

  /**
   * What is said of a column and of what stands in it, as it is put behind a question; empty if
   * nothing is.
   *
   * @param heading of the column
   * @param cells some texts of it
   */
  public String about(String heading, Collection<String> cells) {
    return quoted(
        line ->
            line.explains(heading)
                || line.measures(heading)
                || cells.stream().map(Keys::of).anyMatch(line::isOf));
  }

  /** What is said of colours. */
  public String aboutColours() {
    return quoted(Line::isOfColours);
  }

  private String quoted(Predicate<Line> which) {
    List<Line> said = lines.stream().filter(which).limit(MOST_LINES).toList();
    return said.isEmpty()
        ? ""
        : " (your sheet %s says \"%s\")"
            .formatted(
                said.get(0).sheet, String.join("\", \"", said.stream().map(Line::text).toList()));
  }
}
