package growingon.report.edition;

import growingon.nursery.Inputs;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
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
import growingon.review.Judged;
import growingon.review.LotReview;
import growingon.review.Review;
import growingon.review.bought.BoughtReview;
import growingon.review.bought.BoughtReview.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A review as a partner or a bank may see it: of a bought lot whether it paid and when its money is
 * back, never an amount. A partner sees plants, trunks and sales of each lot under its alias, and
 * no costs; a bank sees totals by grade ladder, and what all lots cost together.
 */
final class ReviewEdition {

  private final Inputs inputs;
  private final Review review;
  private final Audience audience;
  private final Aliases aliases;
  private final ReviewEditionTables tables;
  private final Phrases say;

  ReviewEdition(Inputs inputs, Review review, Audience audience) {
    this.say = Phrases.of(inputs.scenario());
    this.inputs = inputs;
    this.review = review;
    this.audience = audience;
    this.aliases =
        new Aliases(
            Stream.of(
                    inputs.scenario().lots().stream().map(Lot::name),
                    inputs.offers().stream().map(Offer::name),
                    review.lots().stream().map(each -> each.lot().name()))
                .flatMap(each -> each)
                .toList());
    this.tables = new ReviewEditionTables(inputs, review, aliases);
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
        say.currency());
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
            tables.figure("alive", "Plants alive", Kind.PLANTS, LotReview::alive),
            tables.figure("sold", "Plants sold", Kind.PLANTS, LotReview::unitsSold),
            tables.figure("sales", "Sales", Kind.MONEY, LotReview::sales),
            tables.figure("trunk", "Mean trunk", Kind.MM, LotReview::trunkMm)));
    sheets.add(FilledSheet.upright("Grades", List.of(), tables.grades()));
    sheets.add(FilledSheet.upright("Luck", howMany(), tables.luck()));
    sheets.add(FilledSheet.upright("Losses", List.of(), tables.losses(), tables.withoutALine()));
    return sheets;
  }

  private List<Sheet> bank() {
    List<Sheet> sheets = new ArrayList<>();
    List<Table> first = new ArrayList<>();
    if (review.lots().size() >= ReviewEditionTables.LEAST_LOTS) {
      first.add(new ReviewTotals(review, say).table(isForPartner()));
    }
    first.add(bought());
    sheets.add(EditionReport.summary(leftOut(), first));
    sheets.add(
        FilledSheet.of(
            "By ladder",
            List.of(Sentences.WITHOUT_VAT),
            tables.byLadder("sales", "Sales by grade ladder", Kind.MONEY, LotReview::sales),
            tables.byLadder(
                "sold", "Plants sold by grade ladder", Kind.PLANTS, LotReview::unitsSold),
            tables.byLadder(
                "alive", "Plants alive by grade ladder", Kind.PLANTS, LotReview::alive)));
    return sheets;
  }

  private Table bought() {
    TableOf<BoughtReview> table =
        TableOf.<BoughtReview>table("did-it-pay", "Did it pay").text("lot", this::name);
    if (isForPartner()) {
      table.text("species", each -> each.lot().species());
    }
    table
        .text("verdict", each -> each.verdict().kind().toString())
        .month("money back in", each -> each.payback().month().orElse(null))
        .month("planned in", each -> each.payback().planned().orElse(null));
    if (isForPartner()) {
      table.plants("standing", each -> Plants.of(each.standing(), each.wholeStanding()));
    }
    return table.of(review.bought());
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
}
