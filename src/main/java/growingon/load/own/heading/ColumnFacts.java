package growingon.load.own.heading;

import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.size.SizeGrammar;
import growingon.load.own.size.SizeParts;
import growingon.load.own.size.Span;
import growingon.load.own.text.MonthText;
import growingon.load.own.text.Units;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What only a whole column tells: the order of its dates, the unit of its bare numbers. */
public final class ColumnFacts {
  private static final double MOST_TRUNK_MM = 400;
  private static final double LEAST_TRUNK_MM = 2;
  private static final double MOST_HEIGHT_CM = 1200;
  private static final double LARGEST_LITRES_ALONE = 35;
  private static final double TRUNK_OF_POT = 0.6;

  private final Map<Integer, List<SheetCell>> cells = new HashMap<>();
  private final Map<Integer, Optional<Boolean>> dayFirst = new HashMap<>();
  private final Map<Integer, String> units = new HashMap<>();
  private final List<String> notices;
  private static final Pattern TRUNK_WORD =
      Pattern.compile(
          "(?:trunk|stem|tronco?|trc|fusto|stamm?|st)\\.?\\s*(?:[øØ]\\s*)?([0-9].*)",
          Pattern.CASE_INSENSITIVE);
  private final Map<Integer, OptionalDouble> trunkWords = new HashMap<>();
  private boolean ledger;
  private boolean treeARow;

  private ColumnFacts(List<String> notices) {
    this.notices = notices;
  }

  /**
   * Facts of the columns of a list.
   *
   * @param notices told to: what was taken with a warning
   */
  public static ColumnFacts of(List<HeadingRead> heads, List<SheetRow> body, List<String> notices) {
    ColumnFacts facts = new ColumnFacts(notices);
    for (HeadingRead head : heads) {
      facts.cells.put(
          head.column(), body.stream().flatMap(row -> row.cell(head.column()).stream()).toList());
    }
    for (HeadingRead head : heads) {
      facts.add(head, heads, body);
    }
    facts.ledger = Ledger.addsUp(heads, body);
    return facts;
  }

  private void add(HeadingRead head, List<HeadingRead> heads, List<SheetRow> body) {
    int column = head.column();
    dayFirst.put(column, MonthText.order(cells.get(column)));
    switch (head.ours()) {
      case "trunk mm", "trunk from mm", "trunk to mm" ->
          units.put(column, trunkUnit(head, heads, body));
      case "size" -> {
        units.put(column, head.unit());
        trunkWords.put(column, trunkWordMm(head, heads, body));
      }
      case "height cm" -> units.put(column, heightUnit(head));
      case "pot" -> units.put(column, head.unit().isEmpty() ? potUnit(column) : head.unit());
      default -> units.put(column, head.unit());
    }
  }

  /** Whether a column of forms names root balls in wire and bare roots by their French letters. */
  public boolean hasBalls(int column) {
    return cells.getOrDefault(column, List.of()).stream()
        .anyMatch(cell -> cell.text().strip().matches("MG|RN"));
  }

  /**
   * Unit, in mm, of the trunks that cells of a column of sizes name as such without one: trc 45.
   * Cells that state one may be the exception, so what is possible decides.
   */
  public OptionalDouble trunkWordMm(int column) {
    return trunkWords.getOrDefault(column, OptionalDouble.empty());
  }

  private OptionalDouble trunkWordMm(
      HeadingRead head, List<HeadingRead> heads, List<SheetRow> body) {
    List<SheetRow> rows = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    int girths = 0;
    for (SheetRow row : body) {
      Matcher word = TRUNK_WORD.matcher(row.text(head.column()).strip());
      Optional<Span> span = word.matches() ? SizeGrammar.bare(word.group(1)) : Optional.empty();
      if (span.isPresent()) {
        TreeMap<Integer, SheetCell> bare = new TreeMap<>(row.cells());
        bare.put(head.column(), SheetCell.of(word.group(1)));
        rows.add(new SheetRow(row.number(), row.hidden(), bare));
        values.add(span.get().to());
        girths += span.get().isGirthClass() ? 1 : 0;
      }
    }
    boolean asMm = values.stream().allMatch(each -> isTrunk(each));
    boolean asCm =
        values.stream().allMatch(each -> isTrunk(each * 10))
            && fitsPots(head.column(), heads, rows);
    return values.isEmpty() || girths * 2 > values.size() || asMm == asCm
        ? OptionalDouble.empty()
        : OptionalDouble.of(asMm ? 1 : 10);
  }

  /** Whether a column has a cultivar in quotes. */
  public boolean hasQuotes(int column) {
    return cells.getOrDefault(column, List.of()).stream()
        .anyMatch(cell -> cell.text().matches("['‘\"“].*"));
  }

  /** Whether the numbers of a column are parts of one: 0.8 for 80 %. */
  public boolean isShare(int column) {
    List<Double> values = bare(column);
    return values.stream().allMatch(each -> each <= 1)
        && values.stream().anyMatch(each -> each > 0 && each < 1);
  }

  /** A title says that a row without a number is one plant. */
  public void treeARow() {
    treeARow = true;
  }

  public boolean isTreeARow() {
    return treeARow;
  }

  /** Whether what was there, sold and lost adds up to what is left. */
  public boolean isLedger() {
    return ledger;
  }

  public Optional<Boolean> dayFirst(int column) {
    return dayFirst.getOrDefault(column, Optional.empty());
  }

  /** Unit of bare numbers; "ask" where it must be asked. */
  public String unit(int column) {
    return units.getOrDefault(column, "");
  }

  private List<Double> bare(int column) {
    return cells.get(column).stream()
        .flatMap(cell -> SizeGrammar.bare(cell.text()).stream())
        .map(Span::to)
        .toList();
  }

  /** The unit that all other cells state, else the one that is possible for all. */
  private String trunkUnit(HeadingRead head, List<HeadingRead> heads, List<SheetRow> body) {
    if (!head.unit().equals(Units.ASK)) {
      return head.unit();
    }
    int column = head.column();
    Optional<String> stated = statedUnit(column);
    if (stated.isPresent()) {
      return stated.get();
    }
    boolean asMm = bare(column).stream().allMatch(each -> isTrunk(each));
    boolean asCm =
        bare(column).stream().allMatch(each -> isTrunk(each * 10)) && fitsPots(column, heads, body);
    if (asMm == asCm) {
      return Units.ASK;
    }
    notices.add(
        "%s is taken as %s: as %s some would be impossible"
            .formatted(head.heading(), asMm ? "mm" : "cm", asMm ? "cm" : "mm"));
    return asMm ? "mm" : "cm";
  }

  private static boolean isTrunk(double mm) {
    return mm >= LEAST_TRUNK_MM && mm <= MOST_TRUNK_MM;
  }

  private Optional<String> statedUnit(int column) {
    List<String> stated =
        cells.get(column).stream()
            .map(cell -> cell.text().toLowerCase(java.util.Locale.ROOT))
            .filter(text -> text.matches(".*\\d\\s*(mm|cm|\"|in).*"))
            .map(text -> text.contains("mm") ? "mm" : text.contains("cm") ? "cm" : "in")
            .distinct()
            .toList();
    return stated.size() == 1 ? Optional.of(stated.get(0)) : Optional.empty();
  }

  /** Whether no trunk would be over 60 % of its pot's top if it were in cm. */
  private static boolean fitsPots(int column, List<HeadingRead> heads, List<SheetRow> body) {
    for (SheetRow row : body) {
      Optional<Span> trunk = row.cell(column).flatMap(cell -> SizeGrammar.bare(cell.text()));
      SizeParts parts = new SizeParts();
      heads.stream()
          .filter(head -> head.is("pot") || head.is("size"))
          .forEach(head -> SizeGrammar.pots(potText(row.text(head.column()), head), parts));
      boolean tooThick =
          trunk.isPresent()
              && parts.pot().isPresent()
              && trunk.get().to() * 10 > TRUNK_OF_POT * parts.pot().get().topMm();
      if (tooThick) {
        return false;
      }
    }
    return true;
  }

  private static String potText(String text, HeadingRead head) {
    return head.unit().equals("litres") && SizeGrammar.bare(text).isPresent() ? text + " l" : text;
  }

  private String heightUnit(HeadingRead head) {
    if (!head.unit().equals(Units.ASK)) {
      return head.unit();
    }
    List<Double> values = bare(head.column());
    boolean large = values.stream().anyMatch(each -> each >= 20);
    boolean pointed =
        cells.get(head.column()).stream().anyMatch(cell -> cell.text().matches(".*\\d[.,]\\d.*"));
    if (values.stream().anyMatch(each -> each > MOST_HEIGHT_CM)) {
      return "mm";
    }
    return large ? "cm" : pointed ? "m" : values.isEmpty() ? "cm" : Units.ASK;
  }

  /** Whether small numbers among large ones are metres. */
  public boolean mixesMetres(int column) {
    return bare(column).stream().anyMatch(each -> each >= 20);
  }

  /** A figure alone is litres if most cells say so, or one is over 35. */
  private String potUnit(int column) {
    List<SheetCell> all = cells.get(column);
    long litres =
        all.stream()
            .filter(
                cell ->
                    cell.text()
                        .matches(
                            "(?i).*\\d\\s*(?:l|lt|ltr|ltrs|litres?|liter|litri|litros)\\b.*|(?i)c(?:o|ont)?\\.?[\\s-]?\\d.*"))
            .count();
    boolean large = bare(column).stream().anyMatch(each -> each > LARGEST_LITRES_ALONE);
    return litres * 2 > all.size() || (large && !all.isEmpty()) ? "litres" : Units.ASK;
  }
}
