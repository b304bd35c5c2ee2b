package growingon.load.table.past;

import growingon.load.cell.Cell;
import growingon.load.cell.Findings;
import growingon.load.cell.Months;
import growingon.load.cell.Nearest;
import growingon.load.cell.Range;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.Names;
import growingon.load.row.Quantities;
import growingon.load.row.Row;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.lot.Definitions;
import growingon.load.table.lot.LotCells;
import growingon.nursery.record.Receipt;
import growingon.problem.Problem;
import growingon.problem.ProblemGroup;
import growingon.problem.advice.DaybookAdvice;
import growingon.problem.advice.ReceiptAdvice;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Sales as a till or the bookkeeping has them, a row a sale or a month's total. Names of customers
 * are not read.
 *
 * <pre>
 * date                the day, or the month, not after today
 * lot                 the lot, if it is known
 * species             or the species; a row of neither is counted, but is no plant of the nursery
 * grade               one on the ladder of the species [not said]
 * number              plants; below nil for those that came back
 * amount without VAT  money of the whole row, below nil if it was paid back; or
 * amount with VAT     the same with VAT, and
 * VAT %               its rate
 * </pre>
 *
 * A heading that does not say whether VAT is in it is asked about, and its table is not read.
 */
public final class ReceiptsTable {
  private static final As<Integer> PLANTS =
      Quantities.plants(Range.of(-Quantities.SOME.most(), Quantities.SOME.most()));

  private static final Range PERCENT = Range.of(0, 100);

  private static final Heading<LocalDate> DATE =
      Heading.text("date", As.DATE)
          .means("The day or the month of the sale, as 2027-05-20 or 2027-05");
  private static final Heading<String> LOT =
      Heading.text("lot")
          .means(
              "The lot, if it is known; else the row is shared out to the oldest lots that had the grade");
  private static final Heading<String> GRADE =
      Heading.text("grade").choice("grade").means("The grade sold");
  private static final Heading<Integer> NUMBER =
      Heading.number("number", PLANTS).means("Plants; with a minus where they came back");
  private static final Heading<Double> WITHOUT_VAT =
      Heading.money("amount without VAT")
          .means(
              "Of the whole row, with a minus where it was paid back; a heading that does not say whether VAT is in it is asked about");
  private static final Heading<Double> WITH_VAT =
      Heading.number("amount with VAT", As.number(Range.FROM_ZERO))
          .expert()
          .means("In place of the amount without VAT; needs VAT %");
  private static final Heading<Double> VAT =
      Heading.number("VAT %", As.percent(PERCENT)).expert().means("Rate of the VAT in the amount");

  /** Understood as a heading, so that it can be asked what it means. */
  private static final String AMOUNT = "amount";

  /** Of this table every value is a subject: what happened is no assumption of a plan. */
  public static final TableFormat FORMAT =
      TableFormat.of(
              "receipts",
              DATE.needed(),
              NUMBER.needed(),
              LotCells.SPECIES.means(
                  "What was sold, as on the sheet species; or name the lot. A row of neither counts among the receipts of no lot"),
              LOT,
              GRADE,
              WITHOUT_VAT,
              WITH_VAT,
              VAT)
          .understanding(otherHeadings())
          .aboutAll();

  private final Definitions known;
  private final DaybookLots lots;
  private final LocalDate today;
  private final List<Problem> ofNoLot = new ArrayList<>();

  private ReceiptsTable(Definitions known, DaybookLots lots, LocalDate today) {
    this.known = known;
    this.lots = lots;
    this.today = today;
  }

  private static Map<String, String> otherHeadings() {
    Map<String, String> all = new HashMap<>();
    all.put("month", DATE.name());
    List.of("quantity", "qty", "plants", "units").forEach(other -> all.put(other, NUMBER.name()));
    List.of("amount", "total", "sales", "value").forEach(other -> all.put(other, AMOUNT));
    for (String what : List.of("amount", "total", "sales")) {
      for (String not : List.of("net", "without vat", "excluding vat", "excl vat", "ex vat")) {
        all.put(what + " " + not, WITHOUT_VAT.name());
      }
      for (String with : List.of("gross", "with vat", "including vat", "incl vat", "inc vat")) {
        all.put(what + " " + with, WITH_VAT.name());
      }
      all.put("net " + what, WITHOUT_VAT.name());
      all.put("gross " + what, WITH_VAT.name());
    }
    all.put("net", WITHOUT_VAT.name());
    all.put("gross", WITH_VAT.name());
    all.put("vat rate %", VAT.name());
    all.put("vat rate", VAT.name());
    return all;
  }

  /** Receipts in the order of the table. */
  public static List<Receipt> read(
      Optional<Table> table,
      Definitions known,
      DaybookLots lots,
      LocalDate today,
      Findings findings) {
    if (table.isEmpty()) {
      return List.of();
    }
    if (table.get().rows().stream().anyMatch(row -> row.has(AMOUNT))) {
      findings.add(ReceiptAdvice.vatNotSaid(table.get().where().column(AMOUNT)));
      table.get().rows().forEach(Row::fault);
      return List.of();
    }
    ReceiptsTable reader = new ReceiptsTable(known, lots, today);
    List<Receipt> receipts = new ArrayList<>();
    table.get().rows().forEach(row -> reader.receipt(row).ifPresent(receipts::add));
    ProblemGroup.toldOnce(reader.ofNoLot).forEach(findings::add);
    return receipts;
  }

  private Optional<Receipt> receipt(Row row) {
    row.needs(DATE, NUMBER);
    boolean isMonth = isMonthAlone(row);
    Optional<LocalDate> day = isMonth ? Optional.empty() : row.find(DATE);
    Optional<YearMonth> month = isMonth ? row.find(DATE.as(As.MONTH)) : day.map(YearMonth::from);
    checkDate(row, day, month);
    Optional<String> lot = row.has(LOT) ? name(row, LOT.name(), lots.names()) : Optional.empty();
    Optional<String> species =
        row.has(LotCells.SPECIES)
            ? name(row, LotCells.SPECIES.name(), known.species().names())
            : lot.flatMap(lots::species);
    checkSame(row, lot, species);
    if (!row.has(LOT) && !row.has(LotCells.SPECIES)) {
      ofNoLot.add(ReceiptAdvice.noPlant(row.where(LotCells.SPECIES.name())));
    }
    Optional<String> grade =
        species.flatMap(
            of -> row.findName(GRADE, LotCells.grades(of, known.species(), known.ladders())));
    int plants = row.get(NUMBER);
    double amount = amount(row);
    if (plants * amount < 0) {
      row.fail(NUMBER, where -> ReceiptAdvice.oppositeSigns(where, row.cell(NUMBER).shown()));
    }
    return row.accept(
        () ->
            new Receipt(
                month.orElseThrow(), day, lot, species, grade, plants, amount, row.where()));
  }

  private static boolean isMonthAlone(Row row) {
    return row.cell(DATE) instanceof Cell.Text text && Months.isMonthAlone(text.text());
  }

  private void checkDate(Row row, Optional<LocalDate> day, Optional<YearMonth> month) {
    boolean isToCome =
        day.map(date -> date.isAfter(today))
            .orElseGet(() -> month.filter(YearMonth.from(today)::isBefore).isPresent());
    if (isToCome) {
      row.fail(DATE, where -> DaybookAdvice.afterToday(where, row.cell(DATE).shown(), today));
    }
  }

  /** A name that is known; one that is nearly so is a fault, any other is no plant of ours. */
  private Optional<String> name(Row row, String heading, Names names) {
    Optional<String> typed = row.find(heading, As.NAME);
    if (typed.isEmpty() || names.contains(typed.get()) || names.isOpen()) {
      return typed.flatMap(names::find);
    }
    Optional<String> near = Nearest.slip(typed.get(), names.all());
    if (near.isPresent()) {
      row.fail(heading, where -> ReceiptAdvice.nearlyNamed(where, typed.get(), near.get()));
    } else {
      ofNoLot.add(ReceiptAdvice.notOurs(row.where(heading), typed.get()));
    }
    return Optional.empty();
  }

  private void checkSame(Row row, Optional<String> lot, Optional<String> species) {
    Optional<String> ofLot = lot.flatMap(lots::species);
    if (ofLot.isPresent() && species.isPresent() && !ofLot.equals(species)) {
      row.fail(
          LotCells.SPECIES,
          where -> ReceiptAdvice.otherSpecies(where, species.get(), lot.get(), ofLot.get()));
    }
  }

  private double amount(Row row) {
    As<Double> money = As.money(known.settings().currency(), Range.ANY);
    if (row.has(WITHOUT_VAT) && row.has(WITH_VAT)) {
      row.find(WITH_VAT.reading(money));
      row.find(VAT);
      return row.get(WITHOUT_VAT.reading(money));
    }
    if (!row.has(WITH_VAT)) {
      return row.get(WITHOUT_VAT.reading(money));
    }
    double gross = row.get(WITH_VAT.reading(money));
    if (!row.has(VAT)) {
      row.fail(VAT, where -> ReceiptAdvice.rateNotSaid(where, row.cell(WITH_VAT).shown()));
    }
    return gross / (1 + row.find(VAT).orElse(0.0));
  }
}
