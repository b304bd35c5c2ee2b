package growingon.load.table.lot;

import growingon.load.cell.Cell;
import growingon.load.cell.CellFault;
import growingon.load.cell.Range;
import growingon.load.cell.SizeText;
import growingon.load.cell.SizeText.Length;
import growingon.load.cell.SizeText.What;
import growingon.load.cell.Spot;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.Row;
import growingon.nursery.lot.Trunks;
import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.LotAdvice;
import growingon.problem.advice.TrunkAdvice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The trunks of the rows of one table, in any of the ways to state them: mean and spread, a class
 * from and to, or one cell that says it all ("10-12", "8-10 cm girth"). A cell without a unit is in
 * that of its heading; what is not a trunk in mm is converted, which is said once a column.
 */
public final class TrunkCells {
  /** As many as there are. */
  private static final int EVERY_ONE = 1_000_000;

  /** How many trunks were measured: a number, or all. */
  private static final As<Integer> HOW_MANY =
      new As<>(
          1,
          (cell, spot) ->
              Texts.key(cell.shown()).equals("all")
                  ? EVERY_ONE
                  : As.whole(Range.of(1, EVERY_ONE)).reader().read(cell, spot),
          number -> number == EVERY_ONE ? "all" : number.toString(),
          heading -> "");

  public static final Heading<Integer> MEASURED =
      Heading.text("measured", HOW_MANY)
          .expert()
          .ifEmpty("20")
          .means("How many trunks the mean is of, or all");

  /** Headings that are understood though none of ours, with what stands under them. */
  public static final Heading<Double> GIRTH =
      Heading.number("girth cm", As.number(Range.FROM_ZERO))
          .expert()
          .means("Girth, in place of the trunk");

  static final String TRUNK_CM = "trunk cm";

  /** Their spellings, as {@link Texts#headingKey} gives them. */
  static final Map<String, String> OTHER_HEADINGS =
      Map.of(
          GIRTH.name(),
          GIRTH.name(),
          "girth",
          GIRTH.name(),
          "girth in cm",
          GIRTH.name(),
          "trunk girth",
          GIRTH.name(),
          "trunk girth cm",
          GIRTH.name(),
          TRUNK_CM,
          TRUNK_CM,
          "trunk in cm",
          TRUNK_CM);

  private static final double MM_IN_CM = 10;
  private static final List<String> ONE_CELL =
      List.of(LotCells.TRUNK.name(), TRUNK_CM, GIRTH.name());

  private static final String[] ALL = {
    LotCells.TRUNK.name(),
    TRUNK_CM,
    GIRTH.name(),
    LotCells.TRUNK_FROM.name(),
    LotCells.TRUNK_TO.name(),
    LotCells.GIRTH_FROM.name(),
    LotCells.GIRTH_TO.name()
  };

  private final double girthBaseFactor;
  private final Map<Told, List<Converted>> converted = new LinkedHashMap<>();
  private final List<Converted> ranges = new ArrayList<>();

  /**
   * The trunks of a table.
   *
   * @param girthBaseFactor trunk above the flare over trunk at the height of the girth
   */
  TrunkCells(double girthBaseFactor) {
    this.girthBaseFactor = girthBaseFactor;
  }

  /** What is said of a cell that was converted. */
  private enum Told {
    A_TRUNK,
    A_GIRTH,
    TAKEN_FOR_A_GIRTH
  }

  private record Converted(Row row, String heading, SizeText size, Trunks trunks) {
    String found() {
      return row.cell(heading).shown();
    }
  }

  /** Whether a row says anything of its trunks. */
  boolean areIn(Row row) {
    return Stream.of(ALL).anyMatch(row::has);
  }

  /** The trunks of a row; empty if it states none that can be used, which is reported. */
  Optional<Trunks> read(Row row) {
    List<String> cells = ONE_CELL.stream().filter(row::has).toList();
    boolean trunkClass = row.has(LotCells.TRUNK_FROM) || row.has(LotCells.TRUNK_TO);
    boolean girthClass = row.has(LotCells.GIRTH_FROM) || row.has(LotCells.GIRTH_TO);
    long ways = cells.size() + Stream.of(trunkClass, girthClass).filter(way -> way).count();
    if (ways != 1) {
      reportWays(row, ways);
      return Optional.empty();
    }
    if (!cells.isEmpty()) {
      return oneCell(row, cells.get(0)).map(trunks -> usual(row, trunks));
    }
    checkNoSpread(row);
    Optional<Trunks> size =
        trunkClass
            ? sizeClass(row, LotCells.TRUNK_FROM.name(), LotCells.TRUNK_TO.name(), 1)
            : sizeClass(row, LotCells.GIRTH_FROM.name(), LotCells.GIRTH_TO.name(), mmOfGirthCm());
    return size.map(trunks -> usual(row, trunks));
  }

  /** What is usual of a class of plants was not measured. */
  private static Trunks usual(Row row, Trunks trunks) {
    Optional<String> of = row.find(LotCells.USUAL_TRUNK);
    if (of.isPresent() && trunks instanceof Trunks.SizeClass) {
      row.fail(LotCells.USUAL_TRUNK, where -> LotAdvice.usualOfClass(where, of.get()));
    }
    return of.isPresent() && trunks instanceof Trunks.Measured mean
        ? new Trunks.Usual(of.get(), mean.meanMm(), mean.spread())
        : trunks;
  }

  private static void reportWays(Row row, long ways) {
    if (ways > 1) {
      row.fail(LotCells.TRUNK, LotAdvice::trunkTwice);
    } else if (!row.isStray() && !row.lacksColumn(ALL)) {
      row.fail(LotCells.TRUNK, LotAdvice::noTrunk);
    }
  }

  private static void checkNoSpread(Row row) {
    if (row.has(LotCells.TRUNK_SPREAD)) {
      String found = row.cell(LotCells.TRUNK_SPREAD).shown();
      row.fail(LotCells.TRUNK_SPREAD, where -> LotAdvice.spreadOfClass(where, found));
    }
  }

  private double mmOfGirthCm() {
    return MM_IN_CM / Math.PI * girthBaseFactor;
  }

  private static Optional<Trunks> sizeClass(Row row, String from, String to, double mmPerUnit) {
    row.needs(from, to);
    As<Double> size = As.number(sizes(mmPerUnit));
    Optional<Double> low = row.find(from, size);
    Optional<Double> high = row.find(to, size);
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    if (high.get() < low.get()) {
      row.fail(
          to, where -> LotAdvice.classFalls(where, row.cell(to).shown(), row.cell(from).shown()));
      return Optional.empty();
    }
    return Optional.of(new Trunks.SizeClass(low.get() * mmPerUnit, high.get() * mmPerUnit));
  }

  private static Range sizes(double mmPerUnit) {
    Range trunk = Range.TRUNK;
    return trunk.usually(trunk.usualLeast() / mmPerUnit, trunk.usualMost() / mmPerUnit);
  }

  private Optional<Trunks> oneCell(Row row, String heading) {
    Optional<SizeText> said = said(row, heading);
    if (said.isEmpty()) {
      return Optional.empty();
    }
    SizeText size = said.get();
    boolean range = size.isRange();
    if (range) {
      checkNoSpread(row);
    }
    double spread = range ? 0 : row.get(LotCells.TRUNK_SPREAD);
    Optional<Trunks> trunks = row.find(heading, cell(size, heading, spread));
    trunks.ifPresent(read -> note(new Converted(row, heading, size, read)));
    return trunks;
  }

  /** What the cell says; a plain number says itself. */
  private static Optional<SizeText> said(Row row, String heading) {
    As<SizeText> as =
        new As<>(
            new SizeText(1, Optional.empty(), Optional.empty(), Optional.empty()),
            TrunkCells::sizeOf,
            size -> "",
            any -> "");
    return row.find(heading, as);
  }

  private static SizeText sizeOf(Cell cell, Spot spot) {
    if (cell instanceof Cell.Text text) {
      return SizeText.find(text.text(), spot.style())
          .orElseGet(() -> number(As.number(Range.OVER_ZERO).reader().read(cell, spot)));
    }
    if (cell instanceof Cell.Date) {
      throw new CellFault(where -> TrunkAdvice.sizeBecameDate(where, cell.shown()));
    }
    return number(As.number(Range.OVER_ZERO).reader().read(cell, spot));
  }

  private static SizeText number(double value) {
    return new SizeText(value, Optional.empty(), Optional.empty(), Optional.empty());
  }

  private As<Trunks> cell(SizeText size, String heading, double spread) {
    double mmEach = mmEach(size, heading);
    return new As<>(
        new Trunks.Measured(1, 0),
        (cell, spot) -> trunks(size, mmEach, spread, cell, spot),
        read -> mmEach == 1 && !size.isRange() ? Cell.Number.plain(size.from()) : shown(read),
        any -> "mm");
  }

  /** As in "35" or "31.8 to 39.8". */
  static String shown(Trunks trunks) {
    return trunks instanceof Trunks.SizeClass size
        ? tenths(size.fromMm()) + " to " + tenths(size.toMm())
        : tenths(trunks.meanMm());
  }

  private static String tenths(double mm) {
    return MarkedText.number(Math.rint(mm * 10) / 10);
  }

  /** Trunks of a size of which one unit is so many mm of trunk. */
  public static Trunks trunks(SizeText size, double mmEach, double spread, Cell cell, Spot spot) {
    double from = inMm(size.from(), mmEach, cell, spot);
    if (!size.isRange()) {
      return new Trunks.Measured(from, spread);
    }
    double to = inMm(size.to().get(), mmEach, cell, spot);
    if (to < from) {
      String low = Cell.Number.plain(size.from());
      throw new CellFault(where -> LotAdvice.classFalls(where, cell.shown(), low));
    }
    return new Trunks.SizeClass(from, to);
  }

  private static double inMm(double size, double mmEach, Cell cell, Spot spot) {
    Range.OVER_ZERO.check(size, cell.shown());
    return Range.TRUNK.check(size * mmEach, cell.shown(), spot);
  }

  /** The cell's own word and unit beat those of its heading. */
  private double mmEach(SizeText size, String heading) {
    Length unit =
        size.unit()
            .orElse(
                heading.equals(LotCells.TRUNK.name()) && !saysGirth(size) ? Length.MM : Length.CM);
    double mm = unit == Length.MM ? 1 : MM_IN_CM;
    return isGirth(size, heading) ? mm / Math.PI * girthBaseFactor : mm;
  }

  private static boolean saysGirth(SizeText size) {
    return size.word().equals(Optional.of(What.GIRTH));
  }

  private static boolean isGirth(SizeText size, String heading) {
    return size.word()
        .map(word -> word == What.GIRTH)
        .orElse(heading.equals(GIRTH.name()) || isTakenForGirth(size, heading));
  }

  /** A range in cm that is a girth class of the trade is one, though it stands under a trunk. */
  private static boolean isTakenForGirth(SizeText size, String heading) {
    return !heading.equals(GIRTH.name())
        && size.word().isEmpty()
        && size.unit().equals(Optional.of(Length.CM))
        && size.isGirthClass();
  }

  private void note(Converted read) {
    SizeText size = read.size;
    if (isTakenForGirth(size, read.heading)) {
      tell(Told.TAKEN_FOR_A_GIRTH, read);
    } else if (isGirth(size, read.heading)) {
      tell(Told.A_GIRTH, read);
    } else if (mmEach(size, read.heading) != 1) {
      tell(Told.A_TRUNK, read);
    } else if (size.isRange()) {
      ranges.add(read);
    }
  }

  private void tell(Told what, Converted read) {
    converted.computeIfAbsent(what, each -> new ArrayList<>()).add(read);
  }

  /** Says, once for each way, what was converted, and which ranges look like girths. */
  void remark() {
    converted.forEach(
        (what, cells) -> {
          Converted first = cells.get(0);
          first.row.remark(first.heading, said(what, first, cells.size() - 1));
        });
    if (!ranges.isEmpty()
        && ranges.stream().allMatch(each -> each.size.isBare() && each.size.isGirthClass())) {
      Converted first = ranges.get(0);
      first.row.remark(
          first.heading,
          where -> TrunkAdvice.rangesLikeGirths(where, first.found(), ranges.size()));
    }
  }

  private static Function<Where, Problem> said(Told what, Converted first, int more) {
    String mm = shown(first.trunks);
    return switch (what) {
      case A_TRUNK -> where -> TrunkAdvice.trunkConverted(where, first.found(), mm, more);
      case A_GIRTH -> where -> TrunkAdvice.girthConverted(where, first.found(), mm, more);
      case TAKEN_FOR_A_GIRTH -> where -> TrunkAdvice.takenForGirth(where, first.found(), mm, more);
    };
  }
}
