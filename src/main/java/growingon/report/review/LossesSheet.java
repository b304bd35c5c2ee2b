package growingon.report.review;

import growingon.report.build.FilledSheet;
import growingon.report.build.TableBuilder;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.review.Review;
import growingon.review.book.Loss;
import growingon.review.book.Suspicion;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What was lost, by reason, species and supplier, and what may have to be notified. */
final class LossesSheet {
  private final Review review;

  private LossesSheet(Review review) {
    this.review = review;
  }

  static Sheet of(Review review, ReviewWords words) {
    LossesSheet sheet = new LossesSheet(review);
    List<String> sentences = new ArrayList<>(words.notifiable());
    sentences.add("Plants of which a line says that they died, were culled or were lost.");
    return FilledSheet.of(
        "Losses",
        sentences,
        sheet.suspicions(),
        sheet.by("losses-by-reason", "Losses by reason", "reason", Loss::reason),
        sheet.by("losses-by-species", "Losses by species", "species", Loss::species),
        sheet.by("losses-by-supplier", "Losses by supplier", "supplier", Loss::supplier),
        sheet.lots());
  }

  private Table suspicions() {
    TableBuilder table =
        TableBuilder.table("suspicions", ReviewWords.ASK)
            .note("Lines of the daybook whose reason begins with notifiable. No disease is named.")
            .text("date")
            .text("lot")
            .text("passport")
            .text("stands in")
            .text("row");
    for (Suspicion each : review.suspicions()) {
      table.row(
          each.date().toString(),
          each.lot(),
          Rows.text(each.passport()),
          Rows.text(each.place()),
          each.where().toString());
    }
    return table.build();
  }

  private Table by(String name, String title, String heading, Function<Loss, String> group) {
    Map<String, Plants> plants = new LinkedHashMap<>();
    Map<String, Integer> lines = new LinkedHashMap<>();
    for (Loss each : review.losses()) {
      plants.merge(group.apply(each), Plants.nearest(each.plants()), Plants::plus);
      lines.merge(group.apply(each), each.lines(), Integer::sum);
    }
    double all = plants.values().stream().mapToDouble(Plants::exact).sum();
    TableBuilder table =
        TableBuilder.table(name, title)
            .text(heading)
            .plants("plants")
            .column("of all lost", "", Kind.SHARE)
            .summed("lines", "", Kind.COUNT);
    plants.entrySet().stream()
        .sorted(Comparator.comparingDouble(each -> -each.getValue().exact()))
        .forEach(
            each ->
                table.row(
                    each.getKey().isEmpty() ? "no reason given" : each.getKey(),
                    each.getValue(),
                    all == 0 ? null : (Double) (each.getValue().exact() / all),
                    lines.get(each.getKey())));
    return table.build();
  }

  private Table lots() {
    TableBuilder table =
        TableBuilder.table("losses", "Losses of each lot")
            .text("lot")
            .text("species")
            .text("supplier")
            .text("what")
            .text("reason")
            .plants("plants")
            .summed("lines", "", Kind.COUNT);
    for (Loss each : review.losses()) {
      table.row(
          each.lot(),
          each.species(),
          Rows.text(each.supplier()),
          each.what().toString(),
          Rows.text(each.reason()),
          Plants.nearest(each.plants()),
          each.lines());
    }
    return table.build();
  }
}
