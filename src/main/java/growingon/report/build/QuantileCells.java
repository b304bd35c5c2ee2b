package growingon.report.build;

import growingon.chance.Quantiles;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.text.Plants;
import java.util.ArrayList;
import java.util.List;

/** Quantiles as columns of a table: the plan's line first, then what the draws say. */
public final class QuantileCells {
  private final String unit;
  private final Kind kind;

  public QuantileCells(String unit, Kind kind) {
    this.unit = unit;
    this.kind = kind;
  }

  /** Columns of a table on a sheet; of the errors only that of the mean. */
  public List<Column> columns() {
    return List.of(
        column("plan", "plan's line"),
        column("mean", "mean"),
        column("mean_error", "mean ±"),
        column("p10", "P10"),
        column("p50", "P50"),
        column("p90", "P90"));
  }

  public List<Object> cells(double plan, Quantiles drawn) {
    return cells(cell(plan), drawn);
  }

  /**
   * Cells of quantiles.
   *
   * @param plan the plan's line, as its column shows it
   */
  public List<Object> cells(Object plan, Quantiles drawn) {
    return List.of(
        plan,
        cell(drawn.mean()),
        cell(drawn.meanError()),
        cell(drawn.p10()),
        cell(drawn.p50()),
        cell(drawn.p90()));
  }

  /** The columns with the sampling error of every quantile, for figures.json and tables/. */
  public List<Column> columnsWithErrors() {
    List<Column> columns = new ArrayList<>(columns());
    columns.add(column("p10_error", "P10 ±"));
    columns.add(column("p50_error", "P50 ±"));
    columns.add(column("p90_error", "P90 ±"));
    return columns;
  }

  public List<Object> cellsWithErrors(double plan, Quantiles drawn) {
    List<Object> cells = new ArrayList<>(cells(plan, drawn));
    cells.add(cell(drawn.p10Error()));
    cells.add(cell(drawn.p50Error()));
    cells.add(cell(drawn.p90Error()));
    return cells;
  }

  private Column column(String key, String heading) {
    return Column.of(key, heading, unit, kind);
  }

  private Object cell(double value) {
    return kind == Kind.PLANTS ? Plants.nearest(value) : (Object) value;
  }
}
