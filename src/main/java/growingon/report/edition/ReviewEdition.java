package growingon.report.edition;

import growingon.nursery.Inputs;
import growingon.nursery.Lot;
import growingon.nursery.Offer;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableBuilder;
import growingon.report.model.Answer;
import growingon.report.model.Audience;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.review.LuckWords;
import growingon.report.review.ReviewReport;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.review.Compared;
import growingon.review.Judged;
import growingon.review.LotReview;
import growingon.review.Review;
import growingon.review.book.GonePriced;
import growingon.review.book.Loss;
import growingon.review.bought.BoughtReview;
import growingon.review.bought.BoughtReview.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A review as a partner or a bank may see it: of a bought lot whether it paid and when its money is
 * back, never an amount. A partner sees plants, trunks and sales of each lot under its alias, and
 * no costs; a bank sees totals by grade ladder, and what all lots cost together.
 */
final class ReviewEdition {
  private static final int LEAST_LOTS = 2;
  private static final String OTHER = "other";

  private final Inputs inputs;
  private final Review review;
  private final Audience audience;
  private final String currency;
  private final Aliases aliases;
  private final Phrases say;

  ReviewEdition(Inputs inputs, Review review, Audience audience) {
    this.say = Phrases.of(inputs.scenario());
    this.inputs = inputs;
    this.review = review;
    this.audience = audience;
    this.currency = inputs.scenario().nursery().settings().currency();
    this.aliases =
        new Aliases(
            Stream.of(
                    inputs.scenario().lots().stream().map(Lot::name),
                    inputs.offers().stream().map(Offer::name),
                    review.lots().stream().map(each -> each.lot().name()))
                .flatMap(each -> each)
                .toList());
  }

  private boolean isForPartner() {
    return audience == Audience.PARTNER;
  }

  Report report() {
    List<Answer> answers =
        List.of(
            new Answer("What is compared", List.of(basis()), List.of(), List.of()),
            new Answer("Did the bought lots pay", verdicts(), List.of(), List.of()),
            new Answer("What was sold, and what stands", List.of(plants()), List.of(), List.of()));
    return EditionReport.of(
        ReviewReport.title(Edition.planName(audience, inputs.scenario().plan(), say)),
        inputs.scenario(),
        isForPartner() ? partner() : bank(),
        List.of(),
        answers,
        leftOut(),
        currency);
  }

  private List<String> leftOut() {
    List<String> out = new ArrayList<>();
    if (isForPartner()) {
      out.add("names of lots: an alias stands for each, the same from run to run");
    } else {
      out.add(
          "lots, species and grades by name: totals by grade ladder stand here, and what tells of a"
              + " single lot is merged into other");
    }
    out.add("notes, reasons, customer codes, plant passports and origins");
    out.add(
        isForPartner()
            ? "hours, costs and results, suppliers, and what a bought lot gained in money"
            : "hours, suppliers, accounts of lots, and what a bought lot gained in money");
    out.add("each receipt, and faults in the records");
    out.add("problems found, and names of files and folders");
    return out;
  }

  private String basis() {
    String against =
        review.keptName().isPresent()
            ? "Compared with the plan as it was kept"
            : "Compared with the plan as its files give it now";
    return "%s; figures are those of the end of %s."
        .formatted(against, say.month(review.through()));
  }

  private List<String> verdicts() {
    if (review.bought().isEmpty()) {
      return List.of("No lot that the plan buys has come yet.");
    }
    return review.bought().stream().map(this::verdict).toList();
  }

  private String verdict(BoughtReview bought) {
    return "%s %s; %s."
        .formatted(
            Phrases.sentence(name(bought)),
            switch (bought.verdict().kind()) {
              case UNDECIDED, TOO_YOUNG -> "is " + bought.verdict().kind();
              case PAID, DID_NOT_PAY -> bought.verdict().kind().toString();
            },
            why(bought) + back(bought));
  }

  /** What is gone without a line may have been sold, and then its money may be back. */
  private static String why(BoughtReview bought) {
    return bought.verdict().why() == Verdict.Why.GONE_WITHOUT_A_LINE
        ? "no line says what became of some of its plants, and without them "
        : "";
  }

  private String back(BoughtReview bought) {
    BoughtReview.Payback payback = bought.payback();
    String planned =
        payback
            .planned()
            .map(month -> " (planned: %s)".formatted(say.month(month)))
            .orElse(" (planned: not within the plan)");
    String month = payback.month().map(say::month).orElse("");
    return switch (payback.state()) {
      case REACHED -> "its money was back in %s%s".formatted(month, planned);
      case EXPECTED -> "its money is expected back in %s%s".formatted(month, planned);
      case NEVER -> "its money does not come back within the plan" + planned;
    };
  }

  /** A bank knows bought lots by number, in the order of the plan. */
  private String name(BoughtReview bought) {
    return isForPartner()
        ? aliases.of(bought.lot().name())
        : "bought lot " + (review.bought().indexOf(bought) + 1);
  }

  private String plants() {
    Review.Together all = review.nursery();
    return "Sold: %s (%s planned) for %s (%s planned). Alive: %s (%s planned).%s"
        .formatted(
            say.plants(all.unitsSold().wholeReal()),
            say.whole(all.unitsSold().wholePlanned()),
            say.money(all.sales().real()),
            say.money(all.sales().planned()),
            say.plants(all.alive().wholeReal()),
            say.whole(all.alive().wholePlanned()),
            gone());
  }

  private String gone() {
    long plants =
        Plants.together(review.gone().stream().mapToDouble(each -> each.gone().plants())).whole();
    return plants < 1
        ? ""
        : " Of %s no line says whether they were sold or lost.".formatted(say.plants(plants));
  }

  private List<Sheet> partner() {
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(
        EditionReport.summary(
            leftOut(), List.of(new ReviewTotals(review, say).table(isForPartner()))));
    sheets.add(FilledSheet.upright("Bought lots", List.of(), bought()));
    sheets.add(
        FilledSheet.upright(
            "Lots against plan",
            List.of("Real: by what is written down; what that does not say is assumed."),
            figure("alive", "Plants alive", Kind.PLANTS, LotReview::alive),
            figure("sold", "Plants sold", Kind.PLANTS, LotReview::unitsSold),
            figure("sales", "Sales", Kind.MONEY, LotReview::sales),
            figure("trunk", "Mean trunk", Kind.MM, LotReview::trunkMm)));
    sheets.add(FilledSheet.upright("Grades", List.of(), grades()));
    sheets.add(FilledSheet.upright("Luck", howMany(), luck()));
    sheets.add(FilledSheet.upright("Losses", List.of(), losses(), withoutALine()));
    return sheets;
  }

  private List<Sheet> bank() {
    List<Sheet> sheets = new ArrayList<>();
    List<Table> first = new ArrayList<>();
    if (review.lots().size() >= LEAST_LOTS) {
      first.add(new ReviewTotals(review, say).table(isForPartner()));
    }
    first.add(bought());
    sheets.add(EditionReport.summary(leftOut(), first));
    sheets.add(
        FilledSheet.of(
            "By ladder",
            List.of(Sentences.WITHOUT_VAT),
            byLadder("sales", "Sales by grade ladder", Kind.MONEY, LotReview::sales),
            byLadder("sold", "Plants sold by grade ladder", Kind.PLANTS, LotReview::unitsSold),
            byLadder("alive", "Plants alive by grade ladder", Kind.PLANTS, LotReview::alive)));
    return sheets;
  }

  private Table bought() {
    TableBuilder table = TableBuilder.table("did-it-pay", "Did it pay").text("lot");
    if (isForPartner()) {
      table.text("species");
    }
    table.text("verdict").month("money back in").month("planned in");
    if (isForPartner()) {
      table.plants("standing");
    }
    for (BoughtReview each : review.bought()) {
      List<Object> cells = new ArrayList<>(List.of(name(each)));
      if (isForPartner()) {
        cells.add(each.lot().species());
      }
      cells.add(each.verdict().kind().toString());
      cells.add(each.payback().month().orElse(null));
      cells.add(each.payback().planned().orElse(null));
      if (isForPartner()) {
        cells.add(Plants.of(each.standing(), each.wholeStanding()));
      }
      table.row(cells.toArray());
    }
    return table.build();
  }

  private Table figure(String name, String title, Kind kind, Function<LotReview, Compared> what) {
    TableBuilder table = TableBuilder.table("lots-" + name, title).text("lot").text("species");
    columns(table, kind);
    for (LotReview lot : review.lots()) {
      Compared figure = what.apply(lot);
      boolean isThere = kind != Kind.MM || (figure.planned() > 0 && figure.real() > 0);
      if (isThere) {
        table.row(cells(figure, kind, aliases.of(lot.lot().name()), lot.lot().species()).toArray());
      }
    }
    return table.build();
  }

  private void columns(TableBuilder table, Kind kind) {
    String unit = kind == Kind.MONEY ? currency : kind == Kind.MM ? "mm" : "";
    for (String heading : List.of("planned", "real", "difference")) {
      if (kind == Kind.MM) {
        table.column(heading, unit, kind);
      } else {
        table.summed(heading, unit, kind);
      }
    }
  }

  private static List<Object> cells(Compared figure, Kind kind, Object... before) {
    List<Object> cells = new ArrayList<>(List.of(before));
    if (kind == Kind.PLANTS) {
      Plants planned = Plants.of(figure.planned(), figure.wholePlanned());
      Plants real = Plants.of(figure.real(), figure.wholeReal());
      cells.addAll(List.of(planned, real, real.minus(planned)));
    } else {
      cells.addAll(List.of(figure.planned(), figure.real(), figure.difference()));
    }
    return cells;
  }

  private Table grades() {
    TableBuilder table =
        TableBuilder.table("lots-grades", "Plants alive by grade").text("lot").text("grade");
    columns(table, Kind.PLANTS);
    for (LotReview lot : review.lots()) {
      for (LotReview.OfGrade each : lot.grades()) {
        if (each.plants().wholePlanned() != 0 || each.plants().wholeReal() != 0) {
          String grade = each.grade().isEmpty() ? "no grade yet" : each.grade();
          table.row(
              cells(each.plants(), Kind.PLANTS, aliases.of(lot.lot().name()), grade).toArray());
        }
      }
    }
    return table.build();
  }

  /** How many of the figures are more than luck, and how many luck alone would bring. */
  private List<String> howMany() {
    long more = review.judged().stream().filter(each -> each.take() != Judged.Take.LUCK).count();
    List<String> sentences = new ArrayList<>();
    if (!review.judged().isEmpty()) {
      sentences.add(
          "%d of %s are more than luck."
              .formatted(
                  more, say.counted(review.judged().size(), "figure judged", "figures judged")));
    }
    LuckWords.together(review).ifPresent(sentences::add);
    return sentences;
  }

  /** Prices are told as a share of list, which a partner sees in the sales. */
  private Table luck() {
    TableBuilder table =
        TableBuilder.table("more-than-luck", "Luck, or more than luck")
            .note("Deaths, growth and price, which do not go by what was chosen to sell.")
            .text("lot")
            .text("figure")
            .text("how to take it");
    for (Judged each : review.judged()) {
      table.row(aliases.of(each.lot()), each.what().toString(), each.take().toString());
    }
    return table.build();
  }

  private Table losses() {
    Map<String, Double> bySpecies = new LinkedHashMap<>();
    for (Loss each : review.losses()) {
      bySpecies.merge(each.species(), each.plants(), Double::sum);
    }
    TableBuilder table =
        TableBuilder.table("losses-by-species", "Losses by species")
            .text("species")
            .plants("plants");
    bySpecies.forEach((species, plants) -> table.row(species, Plants.nearest(plants)));
    return table.build();
  }

  private Table withoutALine() {
    TableBuilder table =
        TableBuilder.table("gone-without-a-line", "Sold or lost, no line says which")
            .text("lot")
            .text("species")
            .plants("gone");
    for (GonePriced each : review.gone()) {
      table.row(
          aliases.of(each.gone().lot()), each.species(), Plants.nearest(each.gone().plants()));
    }
    return table.build();
  }

  /** Lots of a ladder together; what tells of fewer than two lots goes with others, or untold. */
  private Table byLadder(String name, String title, Kind kind, Function<LotReview, Compared> what) {
    Map<String, List<LotReview>> ladders = new LinkedHashMap<>();
    for (LotReview lot : review.lots()) {
      Compared figure = what.apply(lot);
      if (figure.planned() != 0 || figure.real() != 0) {
        String ladder = inputs.scenario().nursery().ladderOf(lot.lot()).name();
        ladders.computeIfAbsent(ladder, each -> new ArrayList<>()).add(lot);
      }
    }
    TableBuilder table = TableBuilder.table(name + "-by-ladder", title).text("ladder");
    columns(table, kind);
    Map<String, List<LotReview>> told = merged(ladders);
    if (told.size() < 2) {
      // The totals of all lots stand on the first sheet.
      return table.build();
    }
    told.forEach(
        (ladder, lots) -> {
          Compared sum = lots.stream().map(what).reduce(Compared::plus).orElseThrow();
          table.row(cells(sum, kind, ladder).toArray());
        });
    return table.build();
  }

  /** Ladders of two lots and more; the others together, with as few others as hide each. */
  private static Map<String, List<LotReview>> merged(Map<String, List<LotReview>> ladders) {
    Map<String, List<LotReview>> told = new LinkedHashMap<>();
    List<LotReview> other = new ArrayList<>();
    ladders.forEach(
        (ladder, lots) -> {
          if (lots.size() >= LEAST_LOTS) {
            told.put(ladder, lots);
          } else {
            other.addAll(lots);
          }
        });
    while (other.size() == 1 && !told.isEmpty()) {
      String fewest =
          told.entrySet().stream()
              .min(Map.Entry.comparingByValue(Comparator.comparingInt(List<LotReview>::size)))
              .orElseThrow()
              .getKey();
      other.addAll(told.remove(fewest));
    }
    if (other.size() >= LEAST_LOTS) {
      told.put(OTHER, other);
    }
    return told;
  }
}
