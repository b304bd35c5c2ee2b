package growingon.load.own.row;

import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.ListKind;
import growingon.load.own.heading.PriceBreaks;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.lot.Question;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.text.CountText;
import growingon.load.own.text.Meaning;
import growingon.nursery.record.InList;
import growingon.problem.MarkedText;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A grower's list as it was read.
 *
 * @param kind of its rows
 * @param path its file
 * @param lots every row that is stock
 * @param headings every heading with what it is taken for
 * @param questions what is asked, and what is taken and wants a nod
 * @param accounts what became of the rows of each sheet
 * @param totals what the list states and what was read
 * @param notices what the grower should know, in words
 * @param counted month of the count, where a title says it
 * @param currencies signs found at prices
 * @param abouts cells whose number or date is about, as they stand, those of lots only
 * @param asked rows that are lots of which something is asked without which they do not count
 * @param unusedTitles titles between the lots that say nothing of them
 * @param legend what its sheets say that explain others
 */
public record ListRead(
    ListKind kind,
    Path path,
    List<OwnLot> lots,
    List<HeadingRead> headings,
    List<Question> questions,
    List<SheetAccount> accounts,
    List<StatedTotal> totals,
    List<MarkedText> notices,
    Optional<YearMonth> counted,
    Set<String> currencies,
    List<String> abouts,
    List<OwnLot> asked,
    List<UnusedTitle> unusedTitles,
    Legend legend) {
  /** Of a sheet of a workbook (ECMA-376, part 1, 18.3.1.73: the last is XFD). */
  private static final int MOST_COLUMNS = 16_384;

  private static final Set<String> NUMBERS =
      Set.of("quantity", "size heading", "packs", "plant a row");

  /** Of a short list a few odd rows are no sign that it was misread. */
  private static final int FEW = 3;

  private static final Pattern DIGIT = Pattern.compile("[0-9]");

  private static final Set<String> TRUNKS = Set.of("trunk mm", "girth cm");

  public ListRead {
    unusedTitles = List.copyOf(unusedTitles);
    lots = List.copyOf(lots);
    headings = List.copyOf(headings);
    questions = List.copyOf(questions);
    accounts = List.copyOf(accounts);
    totals = List.copyOf(totals);
    notices = List.copyOf(notices);
    currencies = Set.copyOf(currencies);
    abouts = List.copyOf(abouts);
    asked = List.copyOf(asked);
  }

  /** The name of its file. */
  public String file() {
    return path.getFileName().toString();
  }

  /**
   * A cell of it.
   *
   * @param sheet by its name, that of the file for CSV
   * @param column from 0; of what stands in no column the first of its row is meant
   */
  public InList cell(String sheet, int row, int column) {
    return new InList(
        path, sheet.equals(file()) ? "" : sheet, row, column < MOST_COLUMNS ? column : 0);
  }

  /** A title between the lots that says nothing of them. */
  public record UnusedTitle(String sheet, int row, String text) {}

  /**
   * The same with other names of its rows.
   *
   * @param names the new one of a name and of the list's file
   */
  public ListRead named(BinaryOperator<String> names) {
    Map<String, String> given = new HashMap<>();
    Stream.concat(lots.stream(), asked.stream())
        .forEach(lot -> given.computeIfAbsent(lot.lot(), name -> names.apply(name, file())));
    return new ListRead(
        kind,
        path,
        lots.stream().map(lot -> lot.named(given.get(lot.lot()))).toList(),
        headings,
        questions.stream().map(each -> each.named(given)).toList(),
        accounts,
        totals,
        notices,
        counted,
        currencies,
        abouts,
        asked.stream().map(lot -> lot.named(given.get(lot.lot()))).toList(),
        unusedTitles,
        legend);
  }

  /** Whether something is asked of a whole column or sheet. */
  public boolean asksOfColumns() {
    return questions.stream().anyMatch(each -> each.row() == 0)
        || headings.stream().anyMatch(HeadingRead::lacksVatRate);
  }

  /** What stands in the nursery by all lists of stock. */
  public static List<OwnLot> lotsOfStock(List<ListRead> lists) {
    return lists.stream()
        .filter(list -> !list.kind().isOffers())
        .flatMap(list -> list.lots().stream())
        .toList();
  }

  /** Whether a column states what plants cost. */
  public boolean hasPrices() {
    return headings.stream()
        .anyMatch(head -> head.is("unit cost") || PriceBreaks.isOne(head.ours()));
  }

  /** Lots of which it has no exact number. */
  public Set<String> uncounted() {
    return names(lot -> lot.about() || lot.quantity().isEmpty());
  }

  /** Lots whose trunks it does not state. */
  public Set<String> unmeasured() {
    return names(lot -> lot.trunkFromMm().isEmpty());
  }

  private Set<String> names(Predicate<OwnLot> which) {
    return lots.stream().filter(which).map(OwnLot::lot).collect(Collectors.toSet());
  }

  /** Plants of all lots. */
  public long plants() {
    return lots.stream().mapToLong(lot -> lot.quantity().orElse(0)).sum();
  }

  /** Headings that are not understood and whose cells are numbers of plants at first sight. */
  public List<String> maybeNumbers() {
    return headings.stream()
        .filter(
            head ->
                head.is(Meaning.OPEN)
                    && head.rows() > 0
                    && CountText.of(SheetCell.of(head.example())).value().isPresent())
        .map(HeadingRead::heading)
        .toList();
  }

  /** Whether it is of stock and has no column that is the number of plants. */
  public boolean lacksNumber() {
    return !kind.isOffers()
        && accounts.stream().anyMatch(each -> each.read().equals("yes"))
        && headings.stream().noneMatch(head -> NUMBERS.contains(head.ours()));
  }

  /** Headings that are not understood, or not in what unit, and that may be of trunks. */
  public List<String> maybeTrunks() {
    return headings.stream()
        .filter(head -> head.rows() > 0)
        .filter(
            head ->
                head.is(Meaning.OPEN)
                    ? head.choices().stream().anyMatch(TRUNKS::contains)
                    : TRUNKS.contains(head.ours()))
        .map(HeadingRead::heading)
        .toList();
  }

  /** Rows left out till they are answered, each with what stands where the number should. */
  public List<String> leftOut(List<OwnLot> rows) {
    return rows.stream().map(lot -> place(lot.sheet(), lot.row()) + found(lot)).distinct().toList();
  }

  /** Where a row stands: with its sheet where several are read. */
  public String place(String sheet, int row) {
    boolean several = accounts.stream().filter(each -> each.read().equals("yes")).count() > 1;
    return (several ? sheet + ", " : "") + "row " + row;
  }

  /**
   * Whether so much of it is not known that its plan would be another nursery's: what should be the
   * number is none in a tenth of the rows, or half of them and more are left out.
   *
   * @param open rows that are left out
   */
  public boolean isMisread(List<OwnLot> open) {
    int all = lots.size() + asked.size();
    long odd = open.stream().filter(this::isOdd).count();
    return open.size() * 2 > all || odd > FEW && odd * 10 > all;
  }

  /** Whether figures stand where its number should that are no number of anything. */
  private boolean isOdd(OwnLot lot) {
    return questionsOf(lot)
        .anyMatch(
            each ->
                each.question().equals(CountText.HOW_MANY) && DIGIT.matcher(each.found()).find());
  }

  private Stream<Question> questionsOf(OwnLot lot) {
    return questions.stream()
        .filter(
            each ->
                each.row() == lot.row()
                    && each.sheet().equals(lot.sheet())
                    && List.of("quantity", "unit cost").contains(each.column()));
  }

  /** Whether a row that was left out says now all that it must. */
  public boolean isAnswered(OwnLot lot) {
    boolean number =
        questions.stream()
            .anyMatch(each -> each.lot().equals(lot.lot()) && each.column().equals("quantity"));
    return kind.isOffers()
        ? lot.unitCost().isPresent()
            && (!number || lot.quantity().orElse(0) >= lot.terms().least().orElse(1))
        : lot.quantity().isPresent();
  }

  private String found(OwnLot lot) {
    return questionsOf(lot)
        .filter(each -> !each.found().isEmpty())
        .findFirst()
        .map(each -> " \"" + each.found() + "\"")
        .orElse("");
  }
}
