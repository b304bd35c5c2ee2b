package growingon.report.review;

import growingon.nursery.Negligible;
import growingon.report.build.Picked;
import growingon.report.build.TableBuilder;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.report.text.Shown;
import growingon.review.Compared;
import growingon.review.Review;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** The columns of a figure as planned and as it came, the same in every table of a review. */
final class ComparedCells {
  private static final String P10 = "p10";
  private static final String P90 = "p90";

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

  /** The finished table, without the columns of what was likely if no row says it. */
  static Table built(TableBuilder builder) {
    Table table = builder.build();
    int p10 = table.columns().stream().map(Column::key).toList().indexOf(P10);
    boolean isSaid = table.rows().stream().anyMatch(row -> row.get(p10) != null);
    return isSaid || table.rows().isEmpty() ? table : Picked.without(table, Set.of(P10, P90));
  }

  private ComparedCells() {}

  /** What the column of what is written down is called. */
  static String said(Review review) {
    return review.sources().isDaybookAlone() ? "by the daybook" : "by the records";
  }

  /**
   * Adds the columns; plants and money that add up have totals.
   *
   * @param said what the column of what is written down is called
   */
  static void columns(TableBuilder table, String unit, Kind kind, String said) {
    add(table, "planned", unit, kind);
    add(table, "by_the_daybook", said, unit, kind);
    add(table, "assumed", unit, kind);
    add(table, "difference", unit, kind);
    Kind edge = kind == Kind.PLANTS ? Kind.COUNT : kind;
    table.column("P10", unit, edge).column("P90", unit, edge);
  }

  private static void add(TableBuilder table, String heading, String unit, Kind kind) {
    add(table, heading, heading, unit, kind);
  }

  private static void add(TableBuilder table, String key, String heading, String unit, Kind kind) {
    if (kind == Kind.PLANTS || kind == Kind.MONEY || kind == Kind.HOURS) {
      table.summed(key, heading, unit, kind);
    } else {
      table.column(key, heading, unit, kind);
    }
  }

  /** Cells of a row that begins with others. */
  static Object[] row(Compared figure, Kind kind, Object... before) {
    boolean plants = kind == Kind.PLANTS;
    List<Object> cells = new ArrayList<>(Arrays.asList(before));
    cells.add(plants ? planned(figure) : (Object) figure.planned());
    cells.addAll(byDaybookAndAssumed(figure, kind));
    cells.add(plants ? real(figure).minus(planned(figure)) : (Object) figure.difference());
    cells.add(figure.range().map(each -> edge(each.p10(), kind)).orElse(null));
    cells.add(figure.range().map(each -> edge(each.p90(), kind)).orElse(null));
    return cells.toArray();
  }

  /** What adds up has a part of each; of what does not, it is one or the other. */
  private static List<Object> byDaybookAndAssumed(Compared figure, Kind kind) {
    if (kind == Kind.PLANTS) {
      return List.of(
          Plants.of(figure.byDaybook(), figure.wholeByDaybook()),
          Plants.of(figure.assumed(), figure.wholeAssumed()));
    }
    boolean addsUp = kind == Kind.MONEY || kind == Kind.HOURS || kind == Kind.NUMBER;
    return addsUp
        ? List.of(figure.byDaybook(), figure.assumed())
        : Arrays.asList(
            figure.isReal() ? figure.real() : null, figure.isReal() ? null : figure.real());
  }

  private static Plants planned(Compared figure) {
    return Plants.of(figure.planned(), figure.wholePlanned());
  }

  /** Plants as they came. */
  static Plants real(Compared figure) {
    return Plants.of(figure.real(), figure.wholeReal());
  }

  private static Object edge(double value, Kind kind) {
    return kind == Kind.PLANTS ? new Shown(value, Math.rint(value)) : (Object) value;
  }

  /** Cells of a figure of which the plan had none. */
  static Object[] unplanned(Compared figure, Object... before) {
    List<Object> cells = new ArrayList<>(Arrays.asList(before));
    cells.addAll(
        Arrays.asList(
            null,
            figure.isReal() ? figure.real() : null,
            figure.isReal() ? null : figure.real(),
            null,
            null,
            null));
    return cells.toArray();
  }

  /** Whether there is or was to be any. */
  static boolean saysAnything(Compared figure) {
    return !Negligible.is(Math.abs(figure.planned())) || !Negligible.is(Math.abs(figure.real()));
  }
}
