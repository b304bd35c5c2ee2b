package growingon.report.plan.sale;

import growingon.nursery.Nursery;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Ladder;
import growingon.nursery.number.Negligible;
import growingon.nursery.time.Horizon;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.figures.SeasonEnd;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.whole.WholeLot;
import growingon.whole.WholeSale;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * Totals by grade ladder and season in which no figure stands for a single lot: a ladder of which a
 * season's figure does is merged into "other", and more ladders with it until "other" tells of two
 * lots; where even all ladders together tell of one lot, nothing is told.
 */
public final class LadderTotals {
  private static final String OTHER = "other";

  /** A row of the making: a ladder, its figures and the lots behind each. */
  public static final class Row {
    private final String name;
    private final double[] values;
    private final List<Set<String>> lots = new ArrayList<>();

    Row(String name, int seasons) {
      this.name = name;
      this.values = new double[seasons];
      for (int season = 0; season < seasons; season++) {
        lots.add(new HashSet<>());
      }
    }

    private void add(int season, String lot, double value) {
      if (!Negligible.is(value)) {
        values[season] += value;
        lots.get(season).add(lot);
      }
    }

    private void add(Row other) {
      for (int season = 0; season < values.length; season++) {
        values[season] += other.values[season];
        lots.get(season).addAll(other.lots.get(season));
      }
    }

    private boolean tellsOfOneLot() {
      return lots.stream().anyMatch(each -> each.size() == 1);
    }

    private double sum() {
      return Arrays.stream(values).sum();
    }

    public String name() {
      return name;
    }

    /** NaN where a single lot stands behind it. */
    public double value(int season) {
      return lots.get(season).size() == 1 ? Double.NaN : values[season];
    }
  }

  private final Horizon horizon;
  private final Nursery nursery;
  private final Map<String, Row> byLadder = new HashMap<>();
  private final List<String> ladders = new ArrayList<>();

  private LadderTotals(Context context) {
    this.horizon = context.accounts().projection().horizon();
    this.nursery = context.inputs().scenario().nursery();
    for (Ladder ladder : nursery.ladders().values()) {
      ladders.add(ladder.name());
      byLadder.put(ladder.name(), new Row(ladder.name(), horizon.seasons()));
    }
  }

  /** Plants that can be sold: sold in the season, or ready and unsold at its end. */
  public static LadderTotals saleable(Context context) {
    LadderTotals totals = sold(context);
    for (WholeLot lot : context.whole().lots()) {
      for (int i = 0; i < lot.seasons().size(); i++) {
        SeasonEnd end = new SeasonEnd(lot, i);
        totals.add(lot, end.season(), end.ready().whole());
      }
    }
    return totals;
  }

  /** Plants sold. */
  public static LadderTotals sold(Context context) {
    return sales(context, WholeSale::whole);
  }

  /** What the plants sold bring. */
  public static LadderTotals receipts(Context context) {
    return sales(context, WholeSale::money);
  }

  private static LadderTotals sales(Context context, ToDoubleFunction<WholeSale> what) {
    LadderTotals totals = new LadderTotals(context);
    for (WholeLot lot : context.whole().lots()) {
      for (WholeSale sale : lot.sales()) {
        totals.add(lot, totals.horizon.season(sale.month()), what.applyAsDouble(sale));
      }
    }
    return totals;
  }

  private void add(WholeLot lot, int season, double value) {
    Lot of = lot.history().lot();
    byLadder.get(nursery.ladderOf(of).name()).add(season, of.name(), value);
  }

  /** Ladders in order that may be told by themselves, then "other". */
  public List<Row> rows() {
    Row other = new Row(OTHER, horizon.seasons());
    List<Row> told = new ArrayList<>();
    for (String ladder : ladders) {
      Row row = byLadder.get(ladder);
      if (!Negligible.is(row.sum())) {
        if (row.tellsOfOneLot()) {
          other.add(row);
        } else {
          told.add(row);
        }
      }
    }
    while (other.tellsOfOneLot() && !told.isEmpty()) {
      Row smallest = told.stream().min(Comparator.comparingDouble(Row::sum)).get();
      told.remove(smallest);
      other.add(smallest);
    }
    if (!Negligible.is(other.sum())) {
      told.add(other);
    }
    return told;
  }

  /** All ladders together in a season; NaN where a single lot stands behind it. */
  public double total(int season) {
    Row all = new Row(OTHER, horizon.seasons());
    byLadder.values().forEach(all::add);
    return all.value(season);
  }

  /** A table of a row a ladder and a column a season. */
  public Table table(String name, String title, String note, String unit, Kind kind) {
    TableOf<Row> table =
        TableOf.<Row>table(name, title)
            .note(
                (note
                        + " A ladder with a single lot behind a figure is merged into other; empty where"
                        + " even that would tell of one lot.")
                    .strip())
            .text("ladder", Row::name);
    for (int i = 0; i < horizon.seasons(); i++) {
      int season = i;
      table.summed(horizon.seasonLabel(season), unit, kind, row -> cell(row.value(season), kind));
    }
    return table.of(rows());
  }

  private static Object cell(double value, Kind kind) {
    return kind == Kind.PLANTS && !Double.isNaN(value) ? Plants.nearest(value) : (Object) value;
  }
}
