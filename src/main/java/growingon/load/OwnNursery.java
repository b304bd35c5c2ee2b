package growingon.load;

import growingon.load.cell.Cell;
import growingon.load.cell.Findings;
import growingon.load.cell.NumberStyle;
import growingon.load.cell.Texts;
import growingon.load.own.Fill;
import growingon.load.own.ListRead;
import growingon.load.own.ListReader;
import growingon.load.own.OwnLot;
import growingon.load.own.OwnReport;
import growingon.load.own.OwnWords;
import growingon.load.own.Sheet;
import growingon.load.own.Site;
import growingon.load.own.ToFill;
import growingon.load.own.UsualNursery;
import growingon.load.source.Answer;
import growingon.load.source.Grid;
import growingon.load.source.Grid.GridRow;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.StockTable;
import growingon.problem.Where;
import growingon.problem.advice.ListAdvice;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * A nursery whose stock is a list of the grower's own: the list is read where it lies, what it does
 * not say is laid out with usual values, and what the grower has answered takes their place.
 */
final class OwnNursery {
  /** Where usual values come from. */
  static final Where USUAL = Where.file("usual");

  private static final Set<String> GROWS_WITH_THE_LIST =
      Set.of("species", "pots", "places", "routes", "grades", "demand");

  /** Tables that grow by a whole ladder, when the first plant of its kind comes. */
  private static final Set<String> BY_LADDER = Set.of("grades", "demand");

  private final List<ListRead> lists = new ArrayList<>();
  private final List<OwnLot> lots = new ArrayList<>();
  private final Findings findings;
  private final List<Answer> answers;
  private final Site site;
  private UsualNursery usual;
  private List<Fill> fills = List.of();
  private String currency = "EUR";

  private OwnNursery(Findings findings, List<Answer> answers, Site site) {
    this.findings = findings;
    this.answers = List.copyOf(answers);
    this.site = site;
  }

  /**
   * The nursery of lists.
   *
   * @param files the lists, in order
   * @param words what the grower has said that words mean
   * @param site of the nursery
   * @param firstMonth of the plan
   */
  static Optional<OwnNursery> read(
      List<Path> files,
      OwnWords words,
      List<Answer> answers,
      Site site,
      String name,
      YearMonth firstMonth,
      Findings findings) {
    OwnNursery nursery = new OwnNursery(findings, answers, site);
    for (OwnWords.Word word : words.unknown()) {
      findings.add(ListAdvice.noColumn(Where.file(name), word.yours(), word.ours()));
    }
    for (Path file : files) {
      Optional<List<Sheet>> sheets = OwnFile.read(file, findings);
      if (sheets.isEmpty()) {
        return Optional.empty();
      }
      nursery.add(file, sheets.get(), words);
    }
    nursery.settle(name, firstMonth);
    return findings.hasErrors() ? Optional.empty() : Optional.of(nursery);
  }

  private void add(Path file, List<Sheet> sheets, OwnWords words) {
    String name = file.getFileName().toString();
    ListRead read = ListReader.read(name, sheets, words, site);
    ListProblems.tell(read, findings);
    lists.add(read);
    read.lots().forEach(lot -> lots.add(Answer.in(answers, lot, site)));
    read.asked().stream()
        .map(lot -> Answer.in(answers, lot, site))
        .filter(lot -> lot.quantity().isPresent())
        .forEach(lots::add);
  }

  private void settle(String name, YearMonth firstMonth) {
    Set<String> currencies = new LinkedHashSet<>();
    lists.forEach(list -> currencies.addAll(list.currencies()));
    currency = currencies.size() == 1 ? currencies.iterator().next() : "EUR";
    usual = new UsualNursery(lots, name, currency, firstMonth, site.south());
    fills = ToFill.of(lists, usual, currency);
  }

  /** Month of the newest of the lists whose title or file's name says one. */
  Optional<YearMonth> month() {
    return lists.stream()
        .flatMap(list -> EarlierLists.monthSaid(list.file()).or(list::counted).stream())
        .max(Comparator.naturalOrder());
  }

  /** Lots of which the lists have no exact number. */
  Set<String> uncounted() {
    Set<String> lots = new LinkedHashSet<>();
    lists.forEach(list -> lots.addAll(OwnEarlierList.uncounted(list)));
    return lots;
  }

  /** Lots whose trunks the lists do not state. */
  Set<String> unmeasured() {
    Set<String> lots = new LinkedHashSet<>();
    lists.forEach(list -> lots.addAll(OwnEarlierList.unmeasured(list)));
    return lots;
  }

  /** The lists as read, for the report. */
  OwnReport report() {
    return new OwnReport(lists, usual, fills);
  }

  UsualNursery usual() {
    return usual;
  }

  List<Fill> fills() {
    return fills;
  }

  /**
   * Adds to the tables of a nursery what it lacks: the stock of the lists, whole tables, and rows
   * for new names of the lists. What the grower has answered takes the place of what is there.
   */
  Tables completed(Tables typed) {
    Tables all = typed.copy();
    List<Map<String, String>> stock = new ArrayList<>();
    for (OwnLot lot : usual.lots()) {
      Map<String, String> row = new LinkedHashMap<>(usual.stockRow(lot));
      Answer.ofRow(answers, lot).forEach(row::put);
      stock.add(row);
    }
    usual.tables().forEach((name, rows) -> complete(all, name, rows));
    add(all, StockTable.FORMAT, Where.file(lists.get(0).file()), stock);
    answers.forEach(answer -> apply(answer, all));
    return all;
  }

  /** An answer that finds nothing to answer is told. */
  private void apply(Answer answer, Tables all) {
    boolean fits =
        answer.isOfStock()
            ? usual.lots().stream().anyMatch(answer::concerns)
            : answer.table().equals("own words") || all.answer(answer);
    if (!fits) {
      findings.add(ListAdvice.answerOfNothing(answer.where(), answer.table(), answer.row()));
    }
  }

  private void complete(Tables all, String name, List<Map<String, String>> rows) {
    TableFormat format =
        Tables.formats().stream()
            .filter(each -> each.name().equals(name))
            .findFirst()
            .orElseThrow();
    Optional<Table> there = all.find(format);
    if (there.isEmpty()) {
      add(all, format, USUAL, rows);
    } else if (GROWS_WITH_THE_LIST.contains(name)) {
      String subject = BY_LADDER.contains(name) ? "ladder" : format.needed().get(0);
      Set<String> known = new LinkedHashSet<>();
      there.get().rows().forEach(row -> known.add(Texts.key(row.cell(subject).shown())));
      List<Map<String, String>> lacking =
          rows.stream().filter(row -> !known.contains(Texts.key(row.get(subject)))).toList();
      if (!lacking.isEmpty()) {
        all.extend(format, grid(USUAL, lacking), findings);
      }
    }
  }

  private void add(Tables all, TableFormat format, Where where, List<Map<String, String>> rows) {
    if (!rows.isEmpty()) {
      all.extend(format, grid(where, rows), findings);
    }
  }

  /** Rows of texts as a sheet. */
  static Grid grid(Where where, List<Map<String, String>> rows) {
    Set<String> headings = new LinkedHashSet<>();
    rows.forEach(row -> headings.addAll(row.keySet()));
    List<String> columns = List.copyOf(headings);
    List<GridRow> all = new ArrayList<>();
    TreeMap<Integer, Cell> first = new TreeMap<>();
    columns.forEach(heading -> first.put(first.size(), Cell.ofText(heading)));
    all.add(new GridRow(1, first));
    for (Map<String, String> row : rows) {
      TreeMap<Integer, Cell> cells = new TreeMap<>();
      for (int i = 0; i < columns.size(); i++) {
        Cell cell = Cell.ofText(row.getOrDefault(columns.get(i), ""));
        if (!cell.isEmpty()) {
          cells.put(i, cell);
        }
      }
      all.add(new GridRow(all.size() + 1, cells));
    }
    return new Grid(where, NumberStyle.POINT, all, List.of());
  }
}
