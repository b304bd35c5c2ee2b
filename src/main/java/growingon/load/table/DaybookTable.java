package growingon.load.table;

import growingon.load.cell.As;
import growingon.load.cell.Findings;
import growingon.load.cell.Heading;
import growingon.load.cell.Quantities;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.load.cell.Texts;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.nursery.DaybookLine;
import growingon.nursery.DaybookLine.What;
import growingon.nursery.Quality;
import growingon.problem.Where;
import growingon.problem.advice.DaybookAdvice;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The diary of what happened, a line a happening, in any order. Only what a happening needs is
 * needed. The count sheet of a report, filled in, is a daybook.
 *
 * <pre>
 * date             the day, not after today
 * lot              of the stock list, an offer that has come, or a lot split off before
 * what             arrived, counted, sold, died, culled, split, moved, potted, used (class, display),
 *                  returned, found, lost, spent or released (need no longer stand apart)
 * quantity         plants; needed but for counted with a trunk, moved, potted, spent and released,
 *                  where empty means the whole lot. A line counted in which nothing is filled in is
 *                  passed over
 * to lot           of a split, a new name or a lot of the same passport; of moved, the lot that a
 *                  quantity of plants joins; empty if the whole lot went to another place
 * grade            one on the ladder of the lot's species [not said]
 * quality          first, second or third [not said]
 * trunk mm         mean of the trunks measured [not measured]
 * trunk spread %   of them [not measured]
 * amount           money of the whole line, in the plan's currency; spent needs it or hours. Received
 *                  where plants are sold or used, paid back where they are returned, else spent.
 *                  Where plants arrived it is what the invoice says, carriage and charges within it
 *                  unless a line of their own says them
 * hours            worked. They take the place of those planned for jobs of their kind: care, winter
 *                  move or selling by the reason, else the steps of the route
 * reason           [none] of spent: carriage, pots, substrate, materials, care or place, if it is one
 *                  of these costs. A reason that begins with "notifiable" says that the line may have
 *                  to be told to the plant health service
 * customer code, note   [none]
 * measured         how many trunks the mean is of, or "all" [20, or all where they are fewer]
 * place, expected  columns of the count sheet, not read
 * </pre>
 */
public final class DaybookTable {
  private static final As<What> WHATS = As.word(What.class);

  private static final As<Quality> QUALITIES = As.word(Quality.class);

  private static final Heading<LocalDate> DATE =
      Heading.text("date", As.DATE).means("The day, as 2027-03-15");
  private static final Heading<String> LOT =
      Heading.text("lot")
          .choice("lot")
          .means("A lot of the stock list, an offer that has come, or a lot split off before");
  private static final Heading<What> WHAT =
      Heading.text("what", WHATS)
          .choice("what")
          .means(
              "What happened: arrived, counted, sold, died, culled, split, moved, potted, used, returned, found, lost, spent or released");
  private static final Heading<Integer> QUANTITY =
      Heading.number("quantity", Quantities.plants())
          .means("Plants; empty where it was the whole lot");
  private static final Heading<String> TO_LOT =
      Heading.text("to lot").means("The lot that they went to, where they were split or moved");
  private static final Heading<String> GRADE =
      Heading.text("grade").choice("grade").means("The grade sold or counted");
  private static final Heading<Quality> QUALITY =
      Heading.text("quality", QUALITIES).choice("quality").means("first, second or third");
  private static final Heading<Double> AMOUNT = Heading.money("amount").means("Of the whole line");
  private static final Heading<Double> HOURS =
      Heading.number("hours", As.number(Range.FROM_ZERO)).means("Hours worked");
  private static final Heading<String> CUSTOMER =
      Heading.text("customer code")
          .means("Your own code for a customer; it is shown to nobody else");
  private static final Heading<String> REASON =
      Heading.text("reason").means("Why they died or were culled");
  private static final Heading<String> PLACE =
      Heading.text("place").expert().means("Stands on the printed count sheet and is not read");
  private static final Heading<Double> EXPECTED =
      Heading.number("expected", As.number(Range.FROM_ZERO))
          .expert()
          .means("Stands on the printed count sheet and is not read");

  /** Of this table every value is a subject: what happened is no assumption of a plan. */
  public static final TableFormat FORMAT =
      TableFormat.of(
              "daybook",
              DATE.needed(),
              LOT.needed(),
              WHAT.needed(),
              QUANTITY,
              TO_LOT,
              GRADE,
              QUALITY,
              LotCells.TRUNK.means("Mean of the trunks measured"),
              AMOUNT,
              HOURS,
              CUSTOMER.also("customer"),
              REASON,
              LotCells.NOTE,
              LotCells.TRUNK_SPREAD.ifEmpty("").means("How unlike the trunks measured are"),
              TrunkCells.MEASURED,
              PLACE,
              EXPECTED)
          .aboutAll();

  /** A line counted with one of these says something. */
  private static final Set<String> OF_A_COUNT =
      Set.of(
          QUANTITY.name(),
          GRADE.name(),
          QUALITY.name(),
          LotCells.TRUNK.name(),
          LotCells.TRUNK_SPREAD.name());

  private final Definitions known;
  private final DaybookLots lots;
  private final LocalDate today;
  private final Map<Where, Integer> measured;

  private DaybookTable(
      Definitions known, DaybookLots lots, LocalDate today, Map<Where, Integer> measured) {
    this.known = known;
    this.lots = lots;
    this.today = today;
    this.measured = measured;
  }

  /**
   * Lines by date; those of one day as in the table.
   *
   * @param measured is told how many trunks the mean of a row is of, where it is said
   */
  public static List<DaybookLine> read(
      Optional<Table> table,
      Definitions known,
      DaybookLots lots,
      LocalDate today,
      Map<Where, Integer> measured,
      Findings findings) {
    DaybookTable reader = new DaybookTable(known, lots, today, measured);
    return table.map(found -> reader.lines(found, findings)).orElse(List.of());
  }

  /** A row of which date and what have been read; what they mean for lots must be known first. */
  private record Draft(Row row, Optional<LocalDate> date, Optional<What> what, long orderedBy) {
    Draft(Row row, Optional<LocalDate> date, Optional<What> what) {
      this(row, date, what, date.orElse(LocalDate.MAX).toEpochDay());
    }
  }

  private List<DaybookLine> lines(Table table, Findings findings) {
    List<Draft> drafts = new ArrayList<>();
    int blank = 0;
    for (Row row : table.rows()) {
      if (isLeftBlank(row)) {
        row.accept(() -> row);
        blank++;
      } else {
        drafts.add(draft(row));
      }
    }
    if (blank > 0) {
      findings.add(DaybookAdvice.notCounted(table.where(), blank));
    }
    drafts.sort(Comparator.comparingLong(Draft::orderedBy));
    return drafts.stream().map(this::line).flatMap(Optional::stream).toList();
  }

  /** A lot on the count sheet that nobody counted. */
  private static boolean isLeftBlank(Row row) {
    return !row.isFailed()
        && Texts.key(row.cell(WHAT).shown()).equals(What.COUNTED.toString())
        && OF_A_COUNT.stream().noneMatch(row::has);
  }

  private Draft draft(Row row) {
    Optional<What> what = row.find(WHAT);
    if (what.map(What::mayBeOfNoLot).orElse(false)) {
      row.needs(DATE, WHAT);
    } else {
      row.needs(DATE, LOT, WHAT);
    }
    Optional<LocalDate> date = row.find(DATE);
    what.ifPresent(found -> checkNeeds(row, found));
    what.ifPresent(found -> tellLots(row, found, date));
    date.filter(found -> found.isAfter(today))
        .ifPresent(
            found ->
                row.fail(
                    DATE, where -> DaybookAdvice.afterToday(where, row.cell(DATE).shown(), today)));
    return new Draft(row, date, what);
  }

  private void tellLots(Row row, What what, Optional<LocalDate> date) {
    if (what == What.SPLIT && row.has(TO_LOT)) {
      String to = row.cell(TO_LOT).shown();
      lots.nearlyNamed(to)
          .ifPresent(
              near -> row.remark(TO_LOT, where -> DaybookAdvice.nearlyNamed(where, to, near)));
      lots.split(to, date);
    }
    if (what == What.ARRIVED) {
      lots.arrive(row.cell(LOT).shown(), date);
    }
  }

  private static void checkNeeds(Row row, What what) {
    boolean counted = what == What.COUNTED && !row.has(LotCells.TRUNK);
    if (what.needsQuantity() || counted) {
      row.needs(QUANTITY);
    }
    if (what == What.SPLIT && !row.has(TO_LOT)) {
      row.fail(TO_LOT, DaybookAdvice::splitWithoutLot);
    }
    if (what == What.MOVED && row.has(QUANTITY) && !row.has(TO_LOT)) {
      row.fail(TO_LOT, DaybookAdvice::movedWithoutLot);
    }
    if (!what.mayJoin() && row.has(TO_LOT)) {
      row.fail(
          TO_LOT,
          where -> DaybookAdvice.toLotOfOther(where, row.cell(TO_LOT).shown(), what.toString()));
    }
    if (what == What.SPENT && !row.has(AMOUNT) && !row.has(HOURS)) {
      row.fail(AMOUNT, DaybookAdvice::spentNothing);
    }
  }

  private Optional<DaybookLine> line(Draft draft) {
    Row row = draft.row;
    Optional<String> lot = row.findName(LOT, lots.names());
    Optional<String> toLot =
        draft.what.filter(What::mayJoin).flatMap(what -> row.findName(TO_LOT, lots.names()));
    checkThere(draft, lot, toLot);
    checkJoin(row, lot, toLot);
    Optional<String> grade = row.findName(GRADE, lots.grades(lot.orElse(""), known));
    OptionalDouble quantity = number(row.find(QUANTITY));
    Optional<Quality> quality = row.find(QUALITY);
    OptionalDouble trunk = number(row.find(LotCells.TRUNK));
    OptionalDouble spread = number(row.find(LotCells.TRUNK_SPREAD));
    OptionalDouble amount =
        number(row.find(AMOUNT.reading(As.money(known.settings().currency(), Range.FROM_ZERO))));
    OptionalDouble hours = number(row.find(HOURS));
    String customer = LotCells.text(row, CUSTOMER);
    String reason = LotCells.text(row, REASON);
    String note = LotCells.text(row, LotCells.NOTE);
    row.find(TrunkCells.MEASURED).ifPresent(number -> measured.put(row.where(), number));
    return row.accept(
        () ->
            DaybookLine.of(
                    draft.date.orElseThrow(), lot.orElse(""), draft.what.orElseThrow(), row.where())
                .quantity(quantity)
                .toLot(toLot)
                .grade(grade)
                .quality(quality)
                .trunkMm(trunk)
                .trunkSpread(spread)
                .amount(amount)
                .hours(hours)
                .customer(customer)
                .reason(reason)
                .note(note)
                .build());
  }

  private static OptionalDouble number(Optional<? extends Number> found) {
    return found
        .map(value -> OptionalDouble.of(value.doubleValue()))
        .orElse(OptionalDouble.empty());
  }

  /** Both lots must be there on the day. */
  private void checkThere(Draft draft, Optional<String> lot, Optional<String> toLot) {
    if (draft.date.isEmpty()) {
      return;
    }
    lot.ifPresent(name -> checkThere(draft.row, name, draft.date.get()));
    toLot
        .filter(name -> !lot.equals(toLot))
        .ifPresent(name -> checkThere(draft.row, name, draft.date.get()));
  }

  private void checkThere(Row row, String lot, LocalDate date) {
    lots.startAfter(lot, date)
        .ifPresent(
            start ->
                row.fail(
                    DATE,
                    where ->
                        DaybookAdvice.beforeTheLot(where, row.cell(DATE).shown(), lot, start)));
  }

  private void checkJoin(Row row, Optional<String> lot, Optional<String> toLot) {
    if (lot.isEmpty() || toLot.isEmpty()) {
      return;
    }
    if (lot.equals(toLot)) {
      row.fail(TO_LOT, where -> DaybookAdvice.intoItself(where, toLot.get()));
      return;
    }
    Optional<DaybookLots.Unlike> unlike = lots.unlike(lot.get(), toLot.get());
    if (unlike.isPresent()) {
      row.fail(
          TO_LOT,
          where ->
              DaybookAdvice.joinedSpecies(
                  where, lot.get(), unlike.get().from(), toLot.get(), unlike.get().to()));
      return;
    }
    lots.join(lot.get(), toLot.get(), row.where())
        .ifPresent(
            clash ->
                row.fail(
                    TO_LOT,
                    where ->
                        DaybookAdvice.joinedPassports(
                            where,
                            lot.get(),
                            clash.from().code(),
                            clash.from().where(),
                            toLot.get(),
                            clash.to().code(),
                            clash.to().where())));
  }
}
