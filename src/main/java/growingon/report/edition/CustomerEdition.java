package growingon.report.edition;

import growingon.money.Accounts;
import growingon.money.bought.ValueJoin;
import growingon.nursery.Grade;
import growingon.nursery.Horizon;
import growingon.nursery.Inputs;
import growingon.nursery.Nursery;
import growingon.project.Projection;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableBuilder;
import growingon.report.figures.Context;
import growingon.report.figures.Trade;
import growingon.report.model.Answer;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Labels;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** What a customer sees: what is for sale, in numbers rounded down to fives. */
final class CustomerEdition {
  /** A customer is not told the plan's name. */
  static final String TITLE = "Saleable list";

  private static final int ROUNDED_TO = 5;

  private final Context context;
  private final Horizon horizon;
  private final Nursery nursery;
  private final boolean prices;
  private final String currency;
  private final Function<Trade.Cell, Double> listPrice;

  /** A line of the list. */
  private record Line(
      String season,
      String species,
      String grade,
      String size,
      YearMonth ready,
      int plants,
      double price) {}

  private CustomerEdition(Context context, boolean prices) {
    Projection projection = context.accounts().projection();
    this.context = context;
    this.horizon = projection.horizon();
    this.nursery = projection.scenario().nursery();
    this.prices = prices;
    this.currency = nursery.settings().currency();
    this.listPrice = Trade.listPrices(projection);
  }

  static Report of(Inputs seen, Accounts accounts, boolean prices) {
    Context context =
        new Context(seen, accounts, ValueJoin.NOTHING_BOUGHT, Optional.empty(), List.of());
    return new CustomerEdition(context, prices).report();
  }

  private List<String> leftOut() {
    List<String> out = new ArrayList<>();
    out.add("plants that are kept, held back or not yet of a grade for sale");
    out.add("exact numbers: they are rounded down to fives, and fewer than five are not listed");
    if (!prices) {
      out.add("prices");
    }
    out.add("everything else of the nursery's plan");
    return out;
  }

  private Report report() {
    List<Line> lines = lines();
    Table list = table(lines);
    List<String> sentences = new ArrayList<>();
    sentences.add("Left out of this edition: " + String.join("; ", leftOut()) + ".");
    sentences.add(summary(lines));
    List<Sheet> sheets =
        List.of(
            new Sheet("Saleable list", sentences, List.of(list), List.of(), true),
            FilledSheet.of("Cautions", List.of(), cautions()));
    return new Report(
        TITLE,
        nursery.settings().name(),
        prices ? currency : "",
        horizon.firstMonth().toString(),
        sheets,
        List.of(),
        List.of(),
        sentences,
        List.of(),
        List.of(new Answer("What will be for sale", List.of(summary(lines)), List.of(), List.of())),
        leftOut());
  }

  private List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    for (List<Trade.Cell> cells : Trade.bySpecies(context).byGrade()) {
      Trade.Cell first = cells.get(0);
      double price = listPrice.apply(first);
      int plants = (int) (Trade.saleable(cells).whole() / ROUNDED_TO * ROUNDED_TO);
      if (price > 0 && plants > 0) {
        lines.add(
            new Line(
                horizon.seasonLabel(first.season()),
                first.lot().lot().species(),
                first.grade(),
                size(first),
                ready(cells),
                plants,
                price));
      }
    }
    return lines;
  }

  /** From the grade's least trunk up to that of the next grade that asks for a thicker one. */
  private static String size(Trade.Cell cell) {
    List<Grade> grades = cell.lot().grades();
    for (int i = 0; i < grades.size(); i++) {
      if (grades.get(i).name().equals(cell.grade())) {
        double least = grades.get(i).leastTrunkMm();
        String from = Labels.whole(least);
        return grades.stream()
            .skip(i)
            .mapToDouble(Grade::leastTrunkMm)
            .filter(next -> next > least)
            .mapToObj(next -> from + "–" + Labels.whole(next) + " mm")
            .findFirst()
            .orElse(from + " mm and more");
      }
    }
    throw new IllegalStateException("a plant is of a grade of its ladder: " + cell.grade());
  }

  private YearMonth ready(List<Trade.Cell> line) {
    int sold = line.stream().mapToInt(Trade.Cell::firstSold).min().getAsInt();
    return horizon.month(Math.min(sold, horizon.seasonLast(line.get(0).season())));
  }

  private Table table(List<Line> lines) {
    TableBuilder table =
        TableBuilder.table("saleable-list", "For sale")
            .note(
                "Size: trunk above the root flare; a plant may be thicker where a higher grade asks"
                    + " for longer training. Ready: the first month of the season in which they can"
                    + " be had. Plants not sold in a season are listed again in the next."
                    + (prices ? " Price: of a first, each, without VAT." : ""))
            .text("season")
            .text("species")
            .text("grade")
            .text("size")
            .month("ready")
            .column("quantity", "", Kind.COUNT);
    if (prices) {
      table.column("list price", currency, Kind.MONEY_EACH);
    }
    for (Line line : lines) {
      List<Object> row = new ArrayList<>(List.of(line.season(), line.species(), line.grade()));
      row.addAll(List.of(line.size(), line.ready(), line.plants()));
      if (prices) {
        row.add(line.price());
      }
      table.row(row.toArray());
    }
    return table.build();
  }

  private static String summary(List<Line> lines) {
    if (lines.isEmpty()) {
      return "Nothing is for sale within this plan.";
    }
    Map<String, Integer> bySeason = new LinkedHashMap<>();
    Set<String> species = new LinkedHashSet<>();
    for (Line line : lines) {
      bySeason.merge(line.season(), line.plants(), Integer::sum);
      species.add(line.species());
    }
    List<String> seasons = new ArrayList<>();
    bySeason.forEach(
        (season, plants) -> seasons.add("%s at least %s".formatted(season, Labels.whole(plants))));
    return "For sale, of %s: %s."
        .formatted(
            Phrases.counted(species.size(), "species", "species"),
            Phrases.list(seasons) + " plants");
  }

  private static Table cautions() {
    return TableBuilder.table("cautions", "Cautions")
        .text("about")
        .longText("caution")
        .row("forecast", Sentences.NO_PROMISE)
        .row("poisonous plants", Sentences.POISON)
        .build();
  }
}
