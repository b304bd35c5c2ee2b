package growingon.load.list;

import growingon.load.cell.Findings;
import growingon.load.cell.Texts;
import growingon.load.file.NurseryFiles;
import growingon.load.file.Tables;
import growingon.load.file.TextRows;
import growingon.load.own.ListReader;
import growingon.load.own.account.OwnReport;
import growingon.load.own.heading.ListKind;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.lot.Site;
import growingon.load.own.question.Fill;
import growingon.load.own.question.Moved;
import growingon.load.own.question.ToFill;
import growingon.load.own.row.ListRead;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.usual.UsualNursery;
import growingon.load.source.Answer;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.lot.OffersTable;
import growingon.load.table.lot.StockTable;
import growingon.nursery.Assumption;
import growingon.nursery.number.Writing;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.ListAdvice;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A nursery whose stock is a list of the grower's own: the list is read where it lies, what it does
 * not say is laid out with usual values, and what the grower has answered takes their place.
 */
public final class OwnNursery {
  private final List<ListRead> lists = new ArrayList<>();
  private final List<Placed> lots = new ArrayList<>();
  private final List<Placed> offers = new ArrayList<>();
  private final Set<String> names = new HashSet<>();
  private final Findings findings;
  private final Said said;
  private final String name;
  private final YearMonth firstMonth;
  private final UsualCells marks = new UsualCells();
  private List<Placed> reckoned = List.of();
  private UsualNursery usual;
  private List<Fill> fills = List.of();
  private Moved moved;
  private String currency = "EUR";

  private OwnNursery(Findings findings, Said said, String name, YearMonth firstMonth) {
    this.findings = findings;
    this.said = said;
    this.moved = said.moved();
    this.name = name;
    this.firstMonth = firstMonth;
  }

  /**
   * The nursery of lists.
   *
   * @param files the lists
   * @param said what the grower has said of them
   * @param firstMonth of the plan
   */
  public static Optional<OwnNursery> read(
      OwnLists files, Said said, String name, YearMonth firstMonth, Findings findings) {
    return readAll(files, said, name, firstMonth, findings).filter(own -> !findings.hasErrors());
  }

  /**
   * The same of lists of which nobody has said anything yet. Where all that is wrong is that no
   * column is surely the number of plants, or that many rows have none, it is there all the same,
   * so that this can be asked.
   */
  public static Optional<OwnNursery> begin(
      OwnLists files, String name, YearMonth firstMonth, Findings findings) {
    return readAll(files, Said.NOTHING, name, firstMonth, findings)
        .filter(
            own ->
                findings.problems().stream().filter(Problem::isError).count()
                    == own.lists.stream().filter(OwnNursery::asksFirst).count());
  }

  /** Whether a list must be answered before there is a plan. */
  private static boolean asksFirst(ListRead list) {
    return list.lacksNumber() || !list.kind().isOffers() && list.isMisread(list.asked());
  }

  private static Optional<OwnNursery> readAll(
      OwnLists files, Said said, String name, YearMonth firstMonth, Findings findings) {
    OwnNursery nursery = new OwnNursery(findings, said, name, firstMonth);
    OwnWords words = said.words();
    Site site = said.site().site();
    for (OwnWords.Word word : words.unknown()) {
      findings.add(ListAdvice.noColumn(Where.file(name), word.yours(), word.ours()));
    }
    for (OwnWords.Word word : words.unclear()) {
      findings.add(ListAdvice.neitherYesNorNo(Where.file(name), word.yours(), word.ours()));
    }
    boolean whole = true;
    for (Path file : files.stock()) {
      whole = whole && nursery.read(file, sheets -> ListReader.read(file, sheets, words, site));
    }
    for (Path file : files.offers()) {
      whole =
          whole
              && nursery.read(
                  file, sheets -> ListReader.readOffers(file, sheets, words, site, firstMonth));
    }
    if (!whole) {
      return Optional.empty();
    }
    nursery.settle();
    nursery.ask();
    return Optional.of(nursery);
  }

  /** Reads a file, if it can be opened. */
  private boolean read(Path file, Function<List<Sheet>, ListRead> reader) {
    Optional<List<Sheet>> sheets = OwnFile.read(file, findings);
    sheets.map(reader).ifPresent(this::add);
    return sheets.isPresent();
  }

  private void add(ListRead asNamed) {
    ListRead read = asNamed.named(this::unlikeOthers);
    ListProblems.tell(read, open(read), said.answers(), findings);
    addRead(read);
  }

  /** Its rows that are left out, as nobody has said yet what they must say. */
  private List<OwnLot> open(ListRead read) {
    return read.asked().stream().filter(lot -> !read.isAnswered(placed(lot, read).lot())).toList();
  }

  private void addRead(ListRead read) {
    lists.add(read);
    boolean offered = read.kind().isOffers();
    List<Placed> to = offered ? offers : lots;
    read.lots().forEach(lot -> to.add(placed(lot, read)));
    read.asked().stream()
        .map(lot -> placed(lot, read))
        .filter(each -> read.isAnswered(each.lot()))
        .forEach(to::add);
  }

  /** A name that a row of another list bears too gets that of its own list behind it. */
  private String unlikeOthers(String name, String file) {
    String unlike = name;
    for (int i = 1; !names.add(Texts.key(unlike)); i++) {
      unlike = "%s (%s%s)".formatted(name, NurseryFiles.baseOf(file), i == 1 ? "" : " " + i);
    }
    return unlike;
  }

  private Placed placed(OwnLot lot, ListRead read) {
    OwnLot answered = Answer.in(said.answers(), read.kind(), lot, said.site().site());
    boolean isFile = lot.sheet().equals(read.file());
    return new Placed(
        read.kind().isOffers() ? answered.from(NurseryFiles.baseOf(read.file())) : answered,
        new Where(read.file(), isFile ? "" : lot.sheet(), 0, ""),
        one(read.currencies()));
  }

  private static List<OwnLot> lotsOf(List<Placed> rows) {
    return rows.stream().map(Placed::lot).toList();
  }

  /** The currency, if there is one only. */
  private static String one(Set<String> currencies) {
    return currencies.size() == 1 ? currencies.iterator().next() : "";
  }

  private void settle() {
    Set<String> ofStock = new LinkedHashSet<>();
    Set<String> ofOffers = new LinkedHashSet<>();
    lists.forEach(list -> (list.kind().isOffers() ? ofOffers : ofStock).addAll(list.currencies()));
    String listed = one(ofStock.isEmpty() && lots.isEmpty() ? ofOffers : ofStock);
    currency = said.site().currency().orElse(listed.isEmpty() ? "EUR" : listed);
    reckoned = offered().bought(findings);
    usual =
        new UsualNursery(
            lotsOf(lots), lotsOf(reckoned), name, currency, firstMonth, said.site().site().south());
  }

  private OfferedPlants offered() {
    String file = lists.isEmpty() ? name : lists.get(lists.size() - 1).file();
    return new OfferedPlants(offers, currency, said.site(), file);
  }

  /** What is asked. */
  private void ask() {
    fills = new ArrayList<>(ToFill.of(lists, usual, currency, moved, writing()));
    fills.removeIf(fill -> said.answers().stream().anyMatch(answer -> answer.isTo(fill)));
    offered().rates().forEach(code -> fills.add(0, ToFill.rate(code, currency)));
  }

  private List<ListRead> ofStock() {
    return lists.stream().filter(list -> !list.kind().isOffers()).toList();
  }

  /** Month of the newest of the lists whose title or file's name says one. */
  public Optional<YearMonth> month() {
    return ofStock().stream()
        .flatMap(list -> OwnFile.monthSaid(list.file()).or(list::counted).stream())
        .max(Comparator.naturalOrder());
  }

  /** Lots of which the lists have no exact number. */
  public Set<String> uncounted() {
    return ofAll(ListRead::uncounted);
  }

  /** Lots whose trunks the lists do not state. */
  public Set<String> unmeasured() {
    return ofAll(ListRead::unmeasured);
  }

  private Set<String> ofAll(Function<ListRead, Set<String>> lotsOf) {
    Set<String> all = new LinkedHashSet<>();
    ofStock().forEach(list -> all.addAll(lotsOf.apply(list)));
    return all;
  }

  /** The lists as read, for the report. */
  public OwnReport report() {
    return new OwnReport(
        lists, usual, fills, moved, fill -> said.rowOf(fill, fills), said.site().writing());
  }

  /** The values of a plan, the usual ones marked. */
  public List<Assumption> marked(List<Assumption> assumptions) {
    return marks.marked(assumptions);
  }

  /** Whether a problem is out of the ordinary in a usual value, which is not the grower's. */
  public boolean isNoNews(Problem problem) {
    return marks.isNoNews(problem);
  }

  public UsualNursery usual() {
    return usual;
  }

  public List<Fill> fills() {
    return fills;
  }

  /** The same lists with one answer more; what is wrong with them is told to nobody. */
  public OwnNursery answered(Answer answer) {
    return again(said.and(answer));
  }

  /** The same; what is wrong with it is told to nobody. */
  public OwnNursery unheard() {
    return again(said);
  }

  private OwnNursery again(Said saidNow) {
    OwnNursery nursery = new OwnNursery(new Findings(), saidNow, name, firstMonth);
    lists.forEach(nursery::addRead);
    nursery.settle();
    return nursery;
  }

  /**
   * The nursery laid out around the lists with one answer more, which is not of a lot.
   *
   * @param laidOut the nursery without it
   * @param told what is wrong with it
   */
  public NurseryFiles answered(Answer answer, NurseryFiles laidOut, Findings told) {
    Tables all = laidOut.tables().afresh(told);
    if (LastYear.isOne(answer)) {
      LastYear.of(List.of(answer)).scale(all, usual);
    } else {
      apply(answer, all, told);
    }
    return laidOut.with(all);
  }

  /** What each cell to fill moves is known now; those that move most are asked first. */
  public void tell(Moved told) {
    moved = told;
    ask();
  }

  /** Whether it is known what the cells to fill move. */
  public boolean isTold() {
    return moved.isKnown();
  }

  /** The nursery that is laid out around the lists, with nothing else typed. */
  public NurseryFiles alone(Where where) {
    Tables all = completed(new Tables(findings));
    return new NurseryFiles(where, name, all, Optional.empty(), Optional.empty());
  }

  public String name() {
    return name;
  }

  public YearMonth firstMonth() {
    return firstMonth;
  }

  /** How its numbers and months are written. */
  public Writing writing() {
    return said.site().writing();
  }

  /**
   * Adds to the tables of a nursery what it lacks: the stock of the lists, whole tables, and rows
   * for new names of the lists. What the grower has answered takes the place of what is there.
   */
  public Tables completed(Tables typed) {
    Tables all = typed.copy();
    AnsweredTwice.tell(said.answers(), typed, findings);
    if (said.site().site().south()) {
      SouthernSteps.turn(all, usual).ifPresent(findings::add);
    }
    usual.tables().forEach((name, rows) -> complete(all, name, rows));
    lots.forEach(
        each ->
            marks.add(
                each.lot(),
                new Where(each.where().file(), each.where().sheet(), each.lot().row(), "")));
    add(all, StockTable.FORMAT, lots, usual.lots(), (lot, its) -> List.of(stockRow(lot)));
    add(all, OffersTable.FORMAT, reckoned, usual.offers(), this::offerRows);
    LastYear.of(said.answers()).scale(all, usual);
    said.answers().stream()
        .filter(answer -> !LastYear.isOne(answer))
        .forEach(answer -> apply(answer, all, findings));
    return all;
  }

  private Map<String, String> stockRow(OwnLot lot) {
    Map<String, String> row = new LinkedHashMap<>(usual.stockRow(lot));
    Answer.ofRow(said.answers(), ListKind.STOCK, lot).forEach(row::put);
    return row;
  }

  private List<Map<String, String>> offerRows(OwnLot offer, String its) {
    List<Map<String, String>> rows = new ArrayList<>(List.of(offerRow(offer, its)));
    rows.addAll(usual.breakRows(offer));
    return rows;
  }

  private Map<String, String> offerRow(OwnLot offer, String its) {
    Map<String, String> row =
        new LinkedHashMap<>(usual.offerRow(offer, its.equals(currency) ? "" : its));
    Answer.ofRow(said.answers(), ListKind.OFFERS, offer).forEach(row::put);
    return row;
  }

  /** Rows of lists under the numbers that they have there. */
  private void add(
      Tables all,
      TableFormat format,
      List<Placed> placed,
      List<OwnLot> called,
      BiFunction<OwnLot, String, List<Map<String, String>>> texts) {
    Map<Where, List<Map<String, String>>> rows = new LinkedHashMap<>();
    Map<Where, List<Integer>> numbers = new LinkedHashMap<>();
    for (int i = 0; i < called.size(); i++) {
      Placed its = placed.get(i);
      for (Map<String, String> row : texts.apply(called.get(i), its.currency())) {
        rows.computeIfAbsent(its.where(), sheet -> new ArrayList<>()).add(row);
        numbers.computeIfAbsent(its.where(), sheet -> new ArrayList<>()).add(called.get(i).row());
      }
    }
    rows.forEach(
        (sheet, its) ->
            all.extend(format, TextRows.grid(sheet, its, numbers.get(sheet)), findings));
  }

  /** An answer that finds nothing to answer is told. */
  private void apply(Answer answer, Tables all, Findings told) {
    boolean fits =
        answer.isOf(ListKind.STOCK)
            ? Stream.concat(usual.lots().stream(), usual.offers().stream())
                .anyMatch(answer::concerns)
            : answer.isOf(ListKind.OFFERS)
                ? usual.offers().stream().anyMatch(answer::concerns) || all.answer(answer)
                : answer.table().equals("own words") || all.answer(answer);
    if (!fits) {
      told.add(ListAdvice.answerOfNothing(answer.where(), answer.table(), answer.row()));
    }
  }

  private void complete(Tables all, String name, List<Map<String, String>> rows) {
    TableFormat format =
        Tables.formats().stream()
            .filter(each -> each.name().equals(name))
            .findFirst()
            .orElseThrow();
    Optional<FollowsTheList> following = FollowsTheList.of(name, said.laidOut(), rows);
    following.ifPresent(each -> each.in(all, format));
    Optional<Table> there = all.find(format);
    there.ifPresent(table -> marks.add(table, name, rows));
    if (there.isEmpty()) {
      add(all, format, NurseryFiles.USUAL, rows);
    } else {
      Set<Map<String, String>> more =
          new HashSet<>(NewNames.lacking(there.get(), name, format, rows, findings));
      following.ifPresent(each -> more.addAll(each.comeSince(there.get())));
      add(all, format, NurseryFiles.USUAL, rows.stream().filter(more::contains).toList());
    }
  }

  private void add(Tables all, TableFormat format, Where where, List<Map<String, String>> rows) {
    if (!rows.isEmpty()) {
      all.extend(format, TextRows.grid(where, rows), findings);
    }
  }
}
