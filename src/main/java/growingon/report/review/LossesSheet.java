package growingon.report.review;

import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
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
    return TableOf.<Suspicion>table("suspicions", ReviewWords.ASK)
        .note("Lines of the daybook whose reason begins with notifiable. No disease is named.")
        .text("date", each -> each.date().toString())
        .text("lot", Suspicion::lot)
        .text("passport", each -> Rows.text(each.passport()))
        .text("stands in", each -> each.place().orElse(null))
        .text("row", each -> each.where().toString())
        .of(review.suspicions());
  }

  /** What was lost of one group. */
  private record Lost(String group, Plants plants, int lines) {}

  private List<Lost> lost(Function<Loss, String> group) {
    Map<String, Plants> plants = new LinkedHashMap<>();
    Map<String, Integer> lines = new LinkedHashMap<>();
    for (Loss each : review.losses()) {
      plants.merge(group.apply(each), Plants.nearest(each.plants()), Plants::plus);
      lines.merge(group.apply(each), each.lines(), Integer::sum);
    }
    return plants.entrySet().stream()
        .map(each -> new Lost(each.getKey(), each.getValue(), lines.get(each.getKey())))
        .toList();
  }

  private Table by(String name, String title, String heading, Function<Loss, String> group) {
    List<Lost> lost = lost(group);
    double all = lost.stream().mapToDouble(each -> each.plants.exact()).sum();
    return TableOf.<Lost>table(name, title)
        .text(heading, each -> each.group.isEmpty() ? "no reason given" : each.group)
        .plants("plants", Lost::plants)
        .column("of all lost", "", Kind.SHARE, each -> all == 0 ? null : each.plants.exact() / all)
        .summed("lines", "", Kind.COUNT, Lost::lines)
        .of(
            lost.stream()
                .sorted(Comparator.comparingDouble(each -> -each.plants.exact()))
                .toList());
  }

  private Table lots() {
    return TableOf.<Loss>table("losses", "Losses of each lot")
        .text("lot", Loss::lot)
        .text("species", Loss::species)
        .text("supplier", each -> Rows.text(each.supplier()))
        .text("what", each -> each.what().toString())
        .text("reason", each -> Rows.text(each.reason()))
        .plants("plants", each -> Plants.nearest(each.plants()))
        .summed("lines", "", Kind.COUNT, Loss::lines)
        .of(review.losses());
  }
}
