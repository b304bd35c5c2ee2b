package growingon.load.table.lot;

import growingon.load.cell.Cell;
import growingon.load.cell.Months;
import growingon.load.cell.Range;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.DormantSeason;
import growingon.load.row.Heading;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.table.Defined;
import growingon.load.table.market.GradesTable;
import growingon.load.table.market.GradesTable.LadderRead;
import growingon.nursery.Settings;
import growingon.nursery.lot.Form;
import growingon.nursery.lot.Hold;
import growingon.nursery.lot.Hold.Which;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.species.Species;
import growingon.nursery.time.Hemisphere;
import growingon.problem.advice.LotAdvice;
import java.time.YearMonth;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The columns that stock and offers have in common. */
public final class LotCells {
  /** Spread of trunks, percent of their mean. */
  public static final Range SPREADS = Range.of(0, 200);

  public static final Heading<String> SPECIES =
      Heading.text("species").choice("species").means("What they are, as on the sheet species");
  static final Heading<Form> FORM =
      Heading.text("form", As.word(Form.class))
          .choice("form")
          .means(
              "How they came: from the ground bare root or with a root ball, in a container, as cuttings or seedlings");
  public static final Heading<Double> TRUNK =
      Heading.number("trunk mm", As.number(Range.TRUNK))
          .means(
              "Mean trunk just above the root flare; or give a size class (in the closed columns)");
  public static final Heading<Double> TRUNK_SPREAD =
      Heading.number("trunk spread %", As.percent(SPREADS))
          .expert()
          .usual(0.15)
          .means("How unlike the trunks are: about two in three lie within this of the mean");
  static final Heading<String> USUAL_TRUNK =
      Heading.text("usual trunk of")
          .expert()
          .means(
              "A class of plants whose usual trunk this is, as in pot 3 litre; empty: it was measured. Chances are drawn with usual trunks about a third thicker or thinner");
  static final Heading<Double> TRUNK_FROM =
      Heading.number("trunk from mm", As.number(Range.FROM_ZERO))
          .expert()
          .means("Smallest trunk of a size class, in place of the mean");
  static final Heading<Double> TRUNK_TO =
      Heading.number("trunk to mm", As.number(Range.FROM_ZERO))
          .expert()
          .means("Largest trunk of a size class");
  static final Heading<Double> GIRTH_FROM =
      Heading.number("girth from cm", As.number(Range.FROM_ZERO))
          .expert()
          .means("Smallest girth of a size class, in place of the trunk");
  static final Heading<Double> GIRTH_TO =
      Heading.number("girth to cm", As.number(Range.FROM_ZERO))
          .expert()
          .means("Largest girth of a size class");
  static final Heading<Double> FIRST =
      Heading.number("first %", As.share()).usual(1.0).means("How many in 100 are firsts");
  static final Heading<Double> SECOND =
      Heading.number("second %", As.share())
          .usual(0.0)
          .means("How many in 100 are seconds; the rest are thirds");
  static final Heading<String> PLACE =
      Heading.text("place").choice("place").means("Where they stand, as on the sheet places");
  static final Heading<Double> CROWN =
      Heading.number("crown mm", As.number(Range.FROM_ZERO))
          .expert()
          .usual(0.0)
          .means("Width of the crown, where it is wider than the pot");
  static final Heading<Double> HEIGHT_LEFT =
      Heading.number("height left mm", As.number(Range.FROM_ZERO))
          .expert()
          .usual(600.0)
          .means("Height of the wood, for its weight");
  static final Heading<String> ROUTE =
      Heading.text("route").choice("route").means("What is done with them, as on the sheet routes");
  static final Heading<String> HOLD_GRADE =
      Heading.text("hold to grade")
          .choice("grade")
          .expert()
          .means("Some of the lot are not sold below this grade");
  static final Heading<Double> HOLD_SHARE =
      Heading.number("hold share %", As.share())
          .expert()
          .means("How many in 100 are held back; empty: all, where a grade is named");
  static final Heading<Which> HOLD_WHICH =
      Heading.text("hold which", As.word(Which.class))
          .expert()
          .usual(Which.ALIKE)
          .means("alike: the same share of all; best: those that are thickest at the count");
  static final Heading<YearMonth> NOT_BEFORE =
      Heading.month("not before")
          .expert()
          .means(
              "First month in which any is sold; empty: on arrival, half a year later for plants from the ground");
  static final Heading<String> APART =
      Heading.text("apart months")
          .expert()
          .ifEmpty("0")
          .means(
              "Months after arrival in a quarantine place, or \"until June\"; 1 where the origin is another country");
  static final Heading<Boolean> UNTOUCHED =
      Heading.yesNo("untouched")
          .expert()
          .usual(false)
          .means("Whether it is held officially while it stands apart: no work but care");
  static final Heading<Double> HEELED_IN =
      Heading.number("heeled in per m2", As.number(Range.OVER_ZERO))
          .expert()
          .means(
              "How many stand on a square metre while they wait heeled in without a pot; empty: 60 under 12 mm of trunk, 20 to 30 mm, 8 above");
  static final Heading<String> SUPPLIER =
      Heading.text("supplier").expert().means("Who they came from");
  static final Heading<String> PASSPORT =
      Heading.text("passport").expert().means("Plant passport code");
  static final Heading<String> ORIGIN =
      Heading.text("origin").expert().means("Country or region they came from");
  public static final Heading<String> NOTE = Heading.text("note").means("Anything you like");

  private static final Range APART_MONTHS = Range.of(0, 60);
  private static final Pattern UNTIL = Pattern.compile("until (\\p{L}+)\\.?");

  /** Months that plants of another country stand apart where nothing is said. */
  private static final int USUAL_APART_MONTHS = 1;

  /** Months after arrival in which plants lifted from the ground are not sold. */
  public static final int SETTLING_MONTHS = 6;

  private LotCells() {}

  /** How the lot sorts. */
  static Optional<QualityShares> quality(Row row, boolean sorted, double sure) {
    double first = row.get(FIRST);
    double second = row.get(SECOND);
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
    double share = row.get(HOLD_SHARE, 1.0);
    Which which = row.get(HOLD_WHICH);
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
    return row.get(NOT_BEFORE, usual);
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
    return row.get(APART.as(months), abroad ? USUAL_APART_MONTHS : 0);
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

  public static String text(Row row, Heading<String> heading) {
    return row.find(heading).orElse("");
  }
}
