package growingon.report.plan.stock;

import growingon.nursery.lot.Lot;
import growingon.nursery.market.Grade;
import growingon.nursery.time.Horizon;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.figures.SeasonEnd;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.whole.WholeLot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** What stands at the end of each season, by species and grade, and by lot and grade. */
public final class StockSheet {
  private final List<WholeLot> lots;
  private final Collection<String> species;
  private final Horizon horizon;

  private StockSheet(Context context) {
    this.lots = context.whole().lots();
    this.species = context.inputs().scenario().nursery().species().keySet();
    this.horizon = context.accounts().projection().horizon();
  }

  public static Sheet of(Context context) {
    StockSheet sheet = new StockSheet(context);
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
    Map<String, Stock> bySpecies = new LinkedHashMap<>();
    species.forEach(name -> bySpecies.put(name, null));
    for (WholeLot lot : lots) {
      String name = lot.history().lot().species();
      bySpecies.merge(name, new Stock(lot), (old, next) -> old).add(lot);
    }
    return seasons(
            TableOf.<Line>table("stock-by-species", "By species and grade")
                .text("species", Line::species))
        .of(
            bySpecies.values().stream()
                .filter(Objects::nonNull)
                .flatMap(stock -> stock.lines().stream())
                .toList());
  }

  private Table byLot() {
    return seasons(
            TableOf.<Line>table("stock-by-lot", "By lot and grade")
                .text("lot", Line::lot)
                .text("species", Line::species))
        .of(lots.stream().flatMap(lot -> stock(lot).lines().stream()).toList());
  }

  private Stock stock(WholeLot lot) {
    Stock stock = new Stock(lot);
    stock.add(lot);
    return stock;
  }

  private TableOf<Line> seasons(TableOf<Line> table) {
    table.text("grade", Line::grade);
    for (int i = 0; i < horizon.seasons(); i++) {
      int season = i;
      table.plants(horizon.seasonLabel(season), each -> each.plants[season]);
    }
    return table.leavingOutParts();
  }

  /** Plants of a lot, or of a species, of one grade by season. */
  private record Line(String lot, String species, String grade, Plants[] plants) {}

  /** Plants by grade and season: no grade, the grades from the lowest, kept ones last. */
  private final class Stock {
    private final Lot lot;
    private final List<Grade> grades;
    private final Plants[][] plants;

    Stock(WholeLot first) {
      this.lot = first.history().lot();
      this.grades = first.history().grades();
      this.plants = new Plants[grades.size() + 2][horizon.seasons()];
      for (Plants[] seasons : plants) {
        Arrays.fill(seasons, Plants.NONE);
      }
    }

    void add(WholeLot lot) {
      for (int i = 0; i < lot.seasons().size(); i++) {
        SeasonEnd end = new SeasonEnd(lot, i);
        add(0, end, end.ungraded());
        for (int grade = 0; grade < grades.size(); grade++) {
          add(grade + 1, end, end.ofGrade(grade));
        }
        add(grades.size() + 1, end, end.kept());
      }
    }

    private void add(int row, SeasonEnd end, Plants more) {
      plants[row][end.season()] = plants[row][end.season()].plus(more);
    }

    List<Line> lines() {
      List<Line> lines = new ArrayList<>();
      for (int grade = 0; grade < plants.length; grade++) {
        if (Arrays.stream(plants[grade]).anyMatch(each -> each != Plants.NONE)) {
          lines.add(new Line(lot.name(), lot.species(), name(grade), plants[grade]));
        }
      }
      return lines;
    }

    private String name(int grade) {
      if (grade == 0) {
        return "no grade yet";
      }
      return grade > grades.size() ? "kept" : grades.get(grade - 1).name();
    }
  }
}
