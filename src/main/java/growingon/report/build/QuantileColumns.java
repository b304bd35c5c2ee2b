package growingon.report.build;

import growingon.chance.Quantiles;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.text.Plants;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Quantiles as columns of a table: the plan's line first, then what the draws say. */
public final class QuantileColumns {
  private final String unit;
  private final Kind kind;

  public QuantileColumns(String unit, Kind kind) {
    this.unit = unit;
    this.kind = kind;
  }

  /**
   * Columns of a table on a sheet; of the errors only that of the mean.
   *
   * @param plan the plan's line, as its column shows it
   */
  public <T> List<ColumnOf<T>> of(Function<T, ?> plan, Function<T, Quantiles> drawn) {
    return List.of(
        new ColumnOf<>(column("plan", "plan's line"), plan),
        column("mean", "mean", drawn, Quantiles::mean),
        column("mean_error", "mean ±", drawn, Quantiles::meanError),
        column("p10", "P10", drawn, Quantiles::p10),
        column("p50", "P50", drawn, Quantiles::p50),
        column("p90", "P90", drawn, Quantiles::p90));
  }

  /** The columns with the sampling error of every quantile, for figures.json and tables/. */
  public <T> List<ColumnOf<T>> withErrors(Function<T, ?> plan, Function<T, Quantiles> drawn) {
    List<ColumnOf<T>> columns = new ArrayList<>(of(plan, drawn));
    columns.add(column("p10_error", "P10 ±", drawn, Quantiles::p10Error));
    columns.add(column("p50_error", "P50 ±", drawn, Quantiles::p50Error));
    columns.add(column("p90_error", "P90 ±", drawn, Quantiles::p90Error));
    return columns;
  }

  private Column column(String key, String heading) {
    return Column.of(key, heading, unit, kind);
  }

  private <T> ColumnOf<T> column(
      String key, String heading, Function<T, Quantiles> drawn, ToDoubleFunction<Quantiles> what) {
    return new ColumnOf<>(
        column(key, heading), thing -> cell(what.applyAsDouble(drawn.apply(thing))));
  }

  private Object cell(double value) {
    return kind == Kind.PLANTS ? Plants.nearest(value) : (Object) value;
  }
}
