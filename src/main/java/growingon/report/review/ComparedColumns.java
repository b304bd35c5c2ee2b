package growingon.report.review;

import growingon.nursery.number.Negligible;
import growingon.report.build.TableOf;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.report.text.Shown;
import growingon.review.Compared;
import growingon.review.Review;
import growingon.review.kept.Range;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The columns of a figure as planned and as it came, the same in every table of a review. */
final class ComparedColumns {
  private static final String RANGES =
      " P10 to P90: what the kept plan itself had for likely. What is more than luck is told by"
          + " deaths, growth and price alone: the others go by what you sold.";

  /** What the marks mean; stands above the tables that have them. */
  static String note(Review review) {
    return (review.sources().isDaybookAlone()
            ? "Assumed: what the daybook does not say"
            : "By the records: by the daybook, later stock lists and receipts. Assumed: what they do not"
                + " say")
        + ", by the plan for the plants that are there."
        + (hasRanges(review) ? RANGES : "");
  }

  /** Only a plan that was kept with its draws says what was likely. */
  private static boolean hasRanges(Review review) {
    return review.lots().stream().anyMatch(lot -> lot.alive().range().isPresent());
  }

  private ComparedColumns() {}

  /** What the column of what is written down is called. */
  static String said(Review review) {
    return review.sources().isDaybookAlone() ? "by the daybook" : "by the records";
  }

  /**
   * A row: a figure, and the two names before it.
   *
   * @param kind of the figure
   * @param isPlanned false where the plan had none
   */
  record Line(String first, String second, Compared figure, Kind kind, boolean isPlanned) {
    /** A figure that was planned. */
    static Line of(String first, String second, Compared figure, Kind kind) {
      return new Line(first, second, figure, kind, true);
    }

    private Object planned() {
      return !isPlanned
          ? null
          : kind == Kind.PLANTS ? ComparedColumns.planned(figure) : (Object) figure.planned();
    }

    /** What adds up has a part of each; of what does not, it is one or the other. */
    private boolean addsUp() {
      return kind == Kind.MONEY || kind == Kind.HOURS || kind == Kind.NUMBER;
    }

    private Object written() {
      if (kind == Kind.PLANTS) {
        return Plants.of(figure.byDaybook(), figure.wholeByDaybook());
      }
      return addsUp() ? (Object) figure.byDaybook() : figure.isReal() ? figure.real() : null;
    }

    private Object assumed() {
      if (kind == Kind.PLANTS) {
        return Plants.of(figure.assumed(), figure.wholeAssumed());
      }
      return addsUp() ? (Object) figure.assumed() : figure.isReal() ? null : figure.real();
    }

    private Object difference() {
      return !isPlanned
          ? null
          : kind == Kind.PLANTS
              ? real(figure).minus(ComparedColumns.planned(figure))
              : (Object) figure.difference();
    }

    private Object edge(ToDoubleFunction<Range> edge) {
      return figure.range().filter(range -> isPlanned).map(range -> edge(edge, range)).orElse(null);
    }

    private Object edge(ToDoubleFunction<Range> edge, Range range) {
      double value = edge.applyAsDouble(range);
      return kind == Kind.PLANTS ? new Shown(value, Math.rint(value)) : (Object) value;
    }

    private boolean saysWhatWasLikely() {
      return edge(Range::p10) != null;
    }
  }

  /**
   * The table of these; plants and money that add up have totals, and what was likely is only there
   * if some row says it. A column of several kinds shows money whole and hours in tenths.
   *
   * @param table its name and first columns
   * @param said what the column of what is written down is called
   */
  static Table of(TableOf<Line> table, String unit, Kind kind, String said, List<Line> lines) {
    add(table, column("planned", "planned", unit, kind), Line::planned);
    add(table, column("by_the_daybook", said, unit, kind), Line::written);
    add(table, column("assumed", "assumed", unit, kind), Line::assumed);
    add(table, column("difference", "difference", unit, kind), Line::difference);
    if (lines.isEmpty() || lines.stream().anyMatch(Line::saysWhatWasLikely)) {
      Kind edge = kind == Kind.PLANTS ? Kind.COUNT : kind;
      add(table, Column.of("p10", "P10", unit, edge), line -> line.edge(Range::p10));
      add(table, Column.of("p90", "P90", unit, edge), line -> line.edge(Range::p90));
    }
    return table.of(lines);
  }

  private static void add(TableOf<Line> table, Column column, Function<Line, Object> cell) {
    table.column(
        column,
        line ->
            column.kind() == Kind.NUMBER ? rounded(cell.apply(line), line.kind) : cell.apply(line));
  }

  private static Object rounded(Object cell, Kind kind) {
    double parts = kind == Kind.MONEY ? 1 : 10;
    return cell instanceof Double number && Double.isFinite(number)
        ? new Shown(number, Math.rint(number * parts) / parts)
        : cell;
  }

  private static Column column(String key, String heading, String unit, Kind kind) {
    return kind == Kind.PLANTS || kind == Kind.MONEY || kind == Kind.HOURS
        ? Column.summed(key, heading, unit, kind)
        : Column.of(key, heading, unit, kind);
  }

  private static Plants planned(Compared figure) {
    return Plants.of(figure.planned(), figure.wholePlanned());
  }

  /** Plants as they came. */
  static Plants real(Compared figure) {
    return Plants.of(figure.real(), figure.wholeReal());
  }

  /** Whether there is or was to be any. */
  static boolean saysAnything(Compared figure) {
    return !Negligible.is(Math.abs(figure.planned())) || !Negligible.is(Math.abs(figure.real()));
  }
}
