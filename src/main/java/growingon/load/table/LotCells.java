package growingon.load.table;

import growingon.load.cell.As;
import growingon.load.cell.Cell;
import growingon.load.cell.DormantSeason;
import growingon.load.cell.Months;
import growingon.load.cell.Names;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.load.cell.Texts;
import growingon.load.table.GradesTable.LadderRead;
import growingon.nursery.Form;
import growingon.nursery.Hemisphere;
import growingon.nursery.Hold;
import growingon.nursery.Hold.Which;
import growingon.nursery.QualityShares;
import growingon.nursery.Settings;
import growingon.nursery.Species;
import growingon.problem.advice.LotAdvice;
import java.time.YearMonth;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The columns that stock and offers have in common. */
public final class LotCells {
  static final String SPECIES = "species";
  static final String FORM = "form";
  static final String TRUNK = "trunk mm";
  static final String TRUNK_SPREAD = "trunk spread %";
  static final String USUAL_TRUNK = "usual trunk of";
  static final String TRUNK_FROM = "trunk from mm";
  static final String TRUNK_TO = "trunk to mm";
  static final String GIRTH_FROM = "girth from cm";
  static final String GIRTH_TO = "girth to cm";
  static final String FIRST = "first %";
  static final String SECOND = "second %";
  static final String PLACE = "place";
  static final String CROWN = "crown mm";
  static final String HEIGHT_LEFT = "height left mm";
  static final String ROUTE = "route";
  static final String HOLD_GRADE = "hold to grade";
  static final String HOLD_SHARE = "hold share %";
  static final String HOLD_WHICH = "hold which";
  static final String NOT_BEFORE = "not before";
  static final String APART = "apart months";
  static final String UNTOUCHED = "untouched";
  static final String HEELED_IN = "heeled in per m2";
  static final String SUPPLIER = "supplier";
  static final String PASSPORT = "passport";
  static final String ORIGIN = "origin";
  static final String NOTE = "note";

  private static final Range APART_MONTHS = Range.of(0, 60);
  private static final Pattern UNTIL = Pattern.compile("until (\\p{L}+)\\.?");

  /** Months that plants of another country stand apart where nothing is said. */
  private static final int USUAL_APART_MONTHS = 1;

  /** Months after arrival in which plants lifted from the ground are not sold. */
  public static final int SETTLING_MONTHS = 6;

  /** Spread of trunks, percent of their mean. */
  public static final Range SPREADS = Range.of(0, 200);

  private LotCells() {}

  /** How the lot sorts. */
  static Optional<QualityShares> quality(Row row, boolean sorted, double sure) {
    double first = row.get(FIRST, As.share(), 1.0);
    double second = row.get(SECOND, As.share(), 0.0);
    if (first + second > 1 + 1e-9) {
      row.fail(
          SECOND,
          where -> LotAdvice.qualitiesOverAll(where, Cell.Number.plain((first + second) * 100)));
      return Optional.empty();
    }
    return Optional.of(new QualityShares(first, second, sorted, sure));
  }

  /** What is held back; the grade must be on the ladder of the species. */
  static Optional<Hold> hold(
      Row row, String name, Defined<Species> species, Defined<LadderRead> ladders) {
    if (!row.has(HOLD_GRADE)) {
      if (row.has(HOLD_SHARE)) {
        row.fail(
            HOLD_SHARE, where -> LotAdvice.holdWithoutGrade(where, row.cell(HOLD_SHARE).shown()));
      }
      return Optional.empty();
    }
    Optional<String> grade = row.findName(HOLD_GRADE, grades(name, species, ladders));
    double share = row.get(HOLD_SHARE, As.share(), 1.0);
    Which which = row.get(HOLD_WHICH, As.word(Which.class), Which.ALIKE);
    return grade.map(found -> new Hold(found, share, which));
  }

  /** Grades on the ladder of a species; any, where that cannot be known. */
  public static Names grades(String name, Defined<Species> species, Defined<LadderRead> ladders) {
    return species
        .find(name)
        .flatMap(found -> ladders.find(found.ladder()))
        .map(LadderRead::grades)
        .orElseGet(() -> new Names("grade", GradesTable.FORMAT.name()).leaveOpen());
  }

  /** First month of sale: plants lifted from the ground need half a year to settle. */
  static YearMonth notBefore(Row row, Form form, YearMonth arrived) {
    YearMonth usual = form.liftedFromGround() ? arrived.plusMonths(SETTLING_MONTHS) : arrived;
    return row.get(NOT_BEFORE, As.MONTH, usual);
  }

  /**
   * Months that it stands apart: a number, or "until June" for the first June after arrival, in
   * which it is free. Plants from elsewhere usually stand apart a month.
   */
  static int apart(Row row, YearMonth arrived, Settings settings) {
    String origin = text(row, ORIGIN);
    boolean abroad =
        !origin.isEmpty()
            && settings.country().map(Texts::key).filter(Texts.key(origin)::equals).isEmpty();
    As<Integer> months =
        new As<>(
            0,
            (cell, spot) ->
                untilMonth(cell, arrived)
                    .orElseGet(() -> As.whole(APART_MONTHS).reader().read(cell, spot)),
            Object::toString,
            heading -> "months");
    return row.get(APART, months, abroad ? USUAL_APART_MONTHS : 0);
  }

  private static Optional<Integer> untilMonth(Cell cell, YearMonth arrived) {
    Matcher until = UNTIL.matcher(Texts.key(cell.shown()));
    return until.matches()
        ? Months.named(until.group(1))
            .map(month -> Math.floorMod(month.getValue() - arrived.getMonthValue() - 1, 12) + 1)
        : Optional.empty();
  }

  /** Plants lifted from the ground travel only while they rest. */
  public static void checkArrival(
      Row row, String heading, Form form, YearMonth arrival, Hemisphere half) {
    if (form.liftedFromGround() && !DormantSeason.contains(arrival.getMonth(), half)) {
      row.remark(
          heading,
          where ->
              LotAdvice.arrivesOutOfSeason(
                  where,
                  row.cell(heading).shown(),
                  form.toString(),
                  As.nameOf(arrival.getMonth()),
                  DormantSeason.words(half)));
    }
  }

  static String text(Row row, String heading) {
    return row.find(heading, As.TEXT).orElse("");
  }
}
