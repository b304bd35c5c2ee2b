package growingon.report;

import growingon.nursery.Horizon;
import growingon.nursery.Ladder;
import growingon.nursery.Nursery;
import growingon.project.LotHistory;
import growingon.project.Projection;
import growingon.project.Sale;
import growingon.project.SeasonStock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Totals by grade ladder and season in which no figure stands for a single lot: a ladder of which a
 * season's figure does is merged into "other", and more ladders with it until "other" tells of two
 * lots; where even all ladders together tell of one lot, nothing is told.
 */
final class LadderTotals {
  private static final double NEGLIGIBLE = 1e-9;
  private static final String OTHER = "other";

  /** A row of the making: a ladder, its figures and the lots behind each. */
  static final class Row {
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
      if (value > NEGLIGIBLE) {
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

    String name() {
      return name;
    }

    /** NaN where a single lot stands behind it. */
    double value(int season) {
      return lots.get(season).size() == 1 ? Double.NaN : values[season];
    }
  }

  private final Horizon horizon;
  private final Map<String, Row> byLadder = new HashMap<>();
  private final List<String> ladders = new ArrayList<>();

  private LadderTotals(Projection projection) {
    this.horizon = projection.horizon();
    Nursery nursery = projection.scenario().nursery();
    for (Ladder ladder : nursery.ladders().values()) {
      ladders.add(ladder.name());
      byLadder.put(ladder.name(), new Row(ladder.name(), horizon.seasons()));
    }
  }

  /** Plants that can be sold: sold in the season, or ready and unsold at its end. */
  static LadderTotals saleable(Projection projection) {
    LadderTotals totals = sold(projection, false);
    for (LotHistory lot : projection.lots()) {
      for (SeasonStock stock : lot.seasons()) {
        double ready = Arrays.stream(stock.ready()).flatMapToDouble(Arrays::stream).sum();
        totals.row(projection, lot).add(stock.season(), lot.lot().name(), ready);
      }
    }
    return totals;
  }

  /** Plants sold, or what they bring. */
  static LadderTotals sold(Projection projection, boolean money) {
    LadderTotals totals = new LadderTotals(projection);
    for (LotHistory lot : projection.lots()) {
      for (Sale sale : lot.sales()) {
        totals
            .row(projection, lot)
            .add(
                totals.horizon.season(sale.month()),
                lot.lot().name(),
                money ? sale.money() : sale.units());
      }
    }
    return totals;
  }

  private Row row(Projection projection, LotHistory lot) {
    return byLadder.get(projection.scenario().nursery().ladderOf(lot.lot()).name());
  }

  /** Ladders in order that may be told by themselves, then "other". */
  List<Row> rows() {
    Row other = new Row(OTHER, horizon.seasons());
    List<Row> told = new ArrayList<>();
    for (String ladder : ladders) {
      Row row = byLadder.get(ladder);
      if (row.sum() > NEGLIGIBLE) {
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
    if (other.sum() > NEGLIGIBLE) {
      told.add(other);
    }
    return told;
  }

  /** All ladders together in a season; NaN where a single lot stands behind it. */
  double total(int season) {
    Row all = new Row(OTHER, horizon.seasons());
    byLadder.values().forEach(all::add);
    return all.value(season);
  }

  /** A table of a row a ladder and a column a season. */
  Table table(String name, String title, String note, String unit, Kind kind) {
    TableBuilder table =
        TableBuilder.table(name, title)
            .note(
                note
                    + " A ladder with a single lot behind a figure is merged into other; empty where"
                    + " even that would tell of one lot.")
            .text("ladder");
    for (int season = 0; season < horizon.seasons(); season++) {
      table.summed(horizon.seasonLabel(season), unit, kind);
    }
    for (Row row : rows()) {
      Object[] cells = new Object[horizon.seasons() + 1];
      cells[0] = row.name();
      for (int season = 0; season < horizon.seasons(); season++) {
        cells[season + 1] = row.value(season);
      }
      table.row(cells);
    }
    return table.build();
  }
}
