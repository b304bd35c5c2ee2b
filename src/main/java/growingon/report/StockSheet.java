package growingon.report;

import growingon.nursery.Grade;
import growingon.nursery.Horizon;
import growingon.nursery.Quality;
import growingon.project.LotHistory;
import growingon.project.Projection;
import growingon.project.SeasonStock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What stands at the end of each season, by species and grade, and by lot and grade. */
final class StockSheet {
  private static final double NEGLIGIBLE = 1e-9;

  private final Projection projection;
  private final Horizon horizon;

  private StockSheet(Projection projection) {
    this.projection = projection;
    this.horizon = projection.horizon();
  }

  static Sheet of(Context context) {
    StockSheet sheet = new StockSheet(context.accounts().projection());
    return FilledSheet.of(
        "Stock by season",
        List.of(
            "Plants standing at the end of each season, after the season's sales. A plant has the"
                + " highest grade whose trunk and months of training it meets; kept plants are never"
                + " for sale and stand apart. Third quality has no grade where it has no price.",
            Sentences.EXPECTED),
        sheet.bySpecies(),
        sheet.byLot());
  }

  private Table bySpecies() {
    Map<String, Standing> bySpecies = new LinkedHashMap<>();
    projection.scenario().nursery().species().keySet().forEach(name -> bySpecies.put(name, null));
    for (LotHistory lot : projection.lots()) {
      bySpecies.merge(lot.lot().species(), new Standing(lot), (old, next) -> old).add(lot);
    }
    TableBuilder table =
        columns(
            TableBuilder.table("stock-by-species", "By species and grade")
                .text("species")
                .text("grade"));
    bySpecies.forEach(
        (species, standing) -> {
          if (standing != null) {
            standing.addRows(table, List.of(species));
          }
        });
    return table.build();
  }

  private Table byLot() {
    TableBuilder table =
        columns(
            TableBuilder.table("stock-by-lot", "By lot and grade")
                .text("lot")
                .text("species")
                .text("grade"));
    for (LotHistory lot : projection.lots()) {
      Standing standing = new Standing(lot);
      standing.add(lot);
      standing.addRows(table, List.of(lot.lot().name(), lot.lot().species()));
    }
    return table.build();
  }

  private TableBuilder columns(TableBuilder table) {
    for (int season = 0; season < horizon.seasons(); season++) {
      table.plants(horizon.seasonLabel(season));
    }
    return table;
  }

  /** Plants by grade and season: no grade, the grades from the lowest, kept ones last. */
  private final class Standing {
    private final List<Grade> grades;
    private final double[][] plants;

    Standing(LotHistory first) {
      this.grades = first.grades();
      this.plants = new double[grades.size() + 2][horizon.seasons()];
    }

    void add(LotHistory lot) {
      for (SeasonStock stock : lot.seasons()) {
        for (int row = 0; row < stock.standing().length; row++) {
          boolean kept = row == Quality.values().length;
          for (int grade = 0; grade <= grades.size(); grade++) {
            plants[kept ? grades.size() + 1 : grade][stock.season()] +=
                stock.standing()[row][grade];
          }
        }
      }
    }

    void addRows(TableBuilder table, List<String> labels) {
      for (int grade = 0; grade < plants.length; grade++) {
        Object[] row = new Object[labels.size() + 1 + horizon.seasons()];
        double sum = 0;
        for (int season = 0; season < horizon.seasons(); season++) {
          row[labels.size() + 1 + season] = plants[grade][season];
          sum += plants[grade][season];
        }
        for (int i = 0; i < labels.size(); i++) {
          row[i] = labels.get(i);
        }
        row[labels.size()] = name(grade);
        if (sum > NEGLIGIBLE) {
          table.row(row);
        }
      }
    }

    private String name(int grade) {
      if (grade == 0) {
        return "no grade yet";
      }
      return grade > grades.size() ? "kept" : grades.get(grade - 1).name();
    }
  }
}
