package growingon.report.review;

import growingon.nursery.Inputs;
import growingon.nursery.Settings;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.report.words.Headlines;
import growingon.review.Judged;
import growingon.review.Review;
import growingon.review.book.GonePriced;
import growingon.review.book.Loss;
import growingon.review.book.Suspicion;
import growingon.review.bought.BoughtReview.Verdict;
import growingon.review.written.SharedReceipt;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.text.WordUtils;

/** What is said about a review. */
final class ReviewWords {
  static final String ASK = "Ask the plant health service before moving plants";

  private static final int LOTS_NAMED = 6;
  private static final int LOTS_TOLD = 12;
  private static final int REASONS_NAMED = 4;
  private static final int FIGURES_NAMED = 3;
  private static final int FIGURES_TOLD = 12;
  private static final int REASONS_IN_TERMINAL = 3;
  private static final int LISTS_NAMED = 4;

  static final String INDENT = "  ";

  private final Inputs inputs;
  private final Review review;
  private final Settings settings;
  private final PaidWords paid;
  private final Phrases say;

  ReviewWords(Inputs inputs, Review review) {
    this.say = Phrases.of(inputs.scenario());
    this.inputs = inputs;
    this.review = review;
    this.settings = inputs.scenario().nursery().settings();
    this.paid = new PaidWords(review, say);
  }

  /** The lines that a grower reads in the terminal. */
  List<String> headlines() {
    List<String> lines = new ArrayList<>();
    lines.addAll(notifiable());
    lines.add(
        "%s, %s: what happened until %s."
            .formatted(
                settings.name(),
                inputs.scenario().plan().name(),
                review.lastDate().map(Object::toString).orElse("now")));
    lines.addAll(basis());
    review.bought().stream().limit(LOTS_TOLD).forEach(each -> lines.addAll(paid.headlines(each)));
    if (review.bought().size() > LOTS_TOLD) {
      lines.add(outcome());
    }
    lines.addAll(withoutAPrice());
    lines.add(soldAndAlive());
    lines.addAll(withoutALine());
    lines.add(losses(REASONS_IN_TERMINAL));
    lines.addAll(moreThanLuck(FIGURES_NAMED));
    lines.addAll(faults());
    return lines.stream().flatMap(ReviewWords::wrapped).toList();
  }

  /** Lines that a terminal shows whole; those that go on with one are indented. */
  private static Stream<String> wrapped(String line) {
    return line.length() <= Headlines.WIDTH
        ? Stream.of(line)
        : (INDENT.repeat(line.startsWith(INDENT) ? 1 : 0)
                + WordUtils.wrap(line, Headlines.WIDTH, "\n" + INDENT, false))
            .lines();
  }

  /** What stands at the top of everything, if anything does. */
  List<String> notifiable() {
    List<Suspicion> suspicions = review.suspicions();
    if (suspicions.isEmpty()) {
      return List.of();
    }
    List<String> lots = suspicions.stream().map(ReviewWords::of).distinct().toList();
    return List.of(
        "%s: the daybook notes a suspicion that may have to be notified, of %s."
            .formatted(ASK, Phrases.list(lots, LOTS_NAMED, "lots")));
  }

  private static String of(Suspicion suspicion) {
    List<String> parts = new ArrayList<>();
    if (!suspicion.passport().isEmpty()) {
      parts.add("passport " + suspicion.passport());
    }
    suspicion.place().ifPresent(place -> parts.add("now in " + place));
    return suspicion.lot() + (parts.isEmpty() ? "" : " (" + String.join(", ", parts) + ")");
  }

  /** What is compared with what, and up to when. */
  List<String> basis() {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        review
            .keptName()
            .map("Compared with the plan kept as %s."::formatted)
            .orElse(
                "There is no kept plan: planned is what the files give now. Keep the next one"
                    + " with plan --keep, before anything happens."));
    sentences.add(rests());
    return sentences;
  }

  private String rests() {
    Review.Sources sources = review.sources();
    if (isBeforeThePlan()) {
      return sources.isDaybookAlone()
          ? "The daybook says nothing of the months of the plan yet."
          : "Nothing is written down of the months of the plan yet.";
    }
    String daybook =
        sources.lines() == 0
            ? "There is no daybook"
            : "The daybook has %s, %s among them"
                .formatted(
                    say.counted(sources.lines(), "line", "lines"),
                    say.counted(sources.counts(), "count", "counts"));
    return "%s; figures are those of the end of %s."
        .formatted(daybook + besides(sources), say.month(review.through()));
  }

  /** Later lists and receipts, which stand beside a daybook or in its place. */
  private String besides(Review.Sources sources) {
    List<String> parts = new ArrayList<>();
    if (sources.lists().size() > 1) {
      List<String> months =
          sources.lists().subList(1, sources.lists().size()).stream().map(say::month).toList();
      parts.add(
          "the stock %s of %s %s"
              .formatted(
                  months.size() == 1 ? "list" : "lists",
                  Phrases.list(months, LISTS_NAMED, "months"),
                  months.size() == 1 ? "counts as a count" : "count as counts"));
    }
    if (sources.receipts() > 0) {
      parts.add(say.counted(sources.receipts(), "receipt counts", "receipts count") + " as sales");
    }
    return parts.isEmpty() ? "" : "; " + Phrases.list(parts);
  }

  private boolean isBeforeThePlan() {
    return review.through().isBefore(review.firstMonth());
  }

  /** What became of the bought lots, and each of them in two or three sentences. */
  List<String> verdicts() {
    if (review.bought().isEmpty()) {
      return Stream.concat(
              Stream.of("No lot that the plan buys has come yet."), withoutAPrice().stream())
          .toList();
    }
    List<String> sentences = new ArrayList<>();
    sentences.add(outcome());
    review.bought().stream().limit(LOTS_TOLD).map(paid::verdict).forEach(sentences::add);
    int more = review.bought().size() - LOTS_TOLD;
    if (more > 0) {
      sentences.add("%s more: see the sheet %s.".formatted(more, DidItPaySheet.NAME));
    }
    sentences.addAll(withoutAPrice());
    return sentences;
  }

  /** What came without an offer has no price, and so no verdict. */
  private List<String> withoutAPrice() {
    List<String> lots = review.withoutAPrice();
    return lots.isEmpty()
        ? List.of()
        : List.of(
            "No verdict on %s, new on a list: no offer says what was paid. Enter %s, with price and month."
                .formatted(
                    Phrases.list(lots, LOTS_NAMED, "lots"),
                    lots.size() == 1 ? "it as an offer taken" : "each as an offer taken"));
  }

  private String outcome() {
    List<String> parts = new ArrayList<>();
    for (Verdict.Kind kind : Verdict.Kind.values()) {
      List<String> lots =
          review.bought().stream()
              .filter(each -> each.verdict().kind() == kind)
              .map(each -> each.lot().name())
              .toList();
      if (!lots.isEmpty()) {
        parts.add("%s %s: %s".formatted(lots.size(), kind, Phrases.list(lots, LOTS_NAMED, "lots")));
      }
    }
    return "Of %s, %s."
        .formatted(
            say.counted(review.bought().size(), "bought lot", "bought lots"),
            String.join("; ", parts));
  }

  /** How many were sold, live and were lost, against the plan. */
  List<String> plants() {
    List<String> sentences = new ArrayList<>();
    sentences.add(soldAndAlive());
    sentences.addAll(withoutALine());
    sentences.add(losses(REASONS_NAMED));
    sentences.addAll(moreThanLuck(FIGURES_TOLD));
    return sentences;
  }

  private String soldAndAlive() {
    Review.Together all = review.nursery();
    return "Sold by the %s: %s for %s (planned of all lots: %s for %s).%s Alive: %s (%s planned)."
        .formatted(
            review.sources().isDaybookAlone() ? "daybook" : "records",
            say.plants(all.unitsSold().wholeByDaybook()),
            money(all.sales().byDaybook()),
            say.whole(all.unitsSold().wholePlanned()),
            money(all.sales().planned()),
            assumedSold(all),
            say.plants(all.alive().wholeReal()),
            say.whole(all.alive().wholePlanned()));
  }

  /** Plants that no line explains, and receipts: what they came to. */
  List<String> withoutALine() {
    List<String> sentences = new ArrayList<>();
    if (!review.gone().isEmpty()) {
      Plants plants =
          Plants.together(review.gone().stream().mapToDouble(each -> each.gone().plants()));
      double worth = review.gone().stream().mapToDouble(GonePriced::worth).sum();
      sentences.add(
          ("%s gone without a line: sold or lost, no line says which. Sold at list price they brought"
                  + " at most %s, which is in no result; see the sheet %s.")
              .formatted(say.plants(plants.whole()), money(worth), WithoutALineSheet.NAME));
    }
    if (!review.receipts().isEmpty()) {
      sentences.add(receipts());
    }
    return sentences;
  }

  private String receipts() {
    List<String> parts = new ArrayList<>();
    for (SharedReceipt.How how : SharedReceipt.How.values()) {
      List<SharedReceipt> of =
          review.receipts().stream().filter(each -> each.how() == how).toList();
      if (!of.isEmpty()) {
        parts.add(
            "%s for %s %s"
                .formatted(
                    say.whole(
                        Plants.together(of.stream().mapToDouble(SharedReceipt::plants)).whole()),
                    money(of.stream().mapToDouble(SharedReceipt::amount).sum()),
                    how.told()));
      }
    }
    return "Plants of the receipts: " + String.join("; ", parts) + ".";
  }

  private String assumedSold(Review.Together all) {
    return all.unitsSold().wholeAssumed() == 0
        ? ""
        : " Of lots without a line %s for %s are assumed sold as planned."
            .formatted(say.plants(all.unitsSold().wholeAssumed()), money(all.sales().assumed()));
  }

  private String losses(int named) {
    double lost = review.losses().stream().mapToDouble(Loss::plants).sum();
    if (lost == 0) {
      return review.sources().lines() == 0 && !review.sources().isDaybookAlone()
          ? "No line says of any plant that it died, was culled or lost."
          : "The daybook notes no plant that died, was culled or lost.";
    }
    Map<String, Double> reasons = new LinkedHashMap<>();
    review.losses().forEach(each -> reasons.merge(said(each.reason()), each.plants(), Double::sum));
    List<String> words =
        reasons.entrySet().stream()
            .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
            .map(each -> "%s %s".formatted(each.getKey(), say.whole(each.getValue())))
            .toList();
    return "Died, culled or lost: %s (%s)."
        .formatted(say.plants(lost), Phrases.list(words, named, "reasons"));
  }

  private static String said(String reason) {
    return reason.isEmpty() ? "no reason given" : reason;
  }

  /** What lies outside of what luck alone had for likely, and how much of it luck would bring. */
  private List<String> moreThanLuck(int named) {
    if (review.judged().isEmpty()) {
      return List.of();
    }
    List<Judged> more =
        review.judged().stream().filter(each -> each.take() != Judged.Take.LUCK).toList();
    double byLuck = review.judged().stream().mapToDouble(Judged::outsideByLuck).sum();
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "More than luck: %s of %s (deaths, growth, price); by luck alone about %s would be%s."
            .formatted(
                more.isEmpty() ? "none" : more.size(),
                say.counted(review.judged().size(), "figure judged", "figures judged"),
                tenths(byLuck),
                more.isEmpty() ? "" : ": " + Phrases.list(told(more), named, "figures")));
    LuckWords.together(review).ifPresent(sentences::add);
    return sentences;
  }

  private String tenths(double number) {
    double rounded = Math.rint(number * 10) / 10;
    return rounded == Math.rint(rounded) ? "" + (long) rounded : say.writing().marked("" + rounded);
  }

  private static List<String> told(List<Judged> more) {
    return more.stream()
        .map(
            each ->
                "%s of %s%s"
                    .formatted(
                        each.what(),
                        each.lot(),
                        each.take() == Judged.Take.MORE_THAN_KNOWN ? " (" + each.take() + ")" : ""))
        .toList();
  }

  /** How many faults the records have. */
  List<String> faults() {
    int faults = review.asked().size();
    return List.of(
        faults == 0
            ? "No fault was found in the records."
            : "%s in the records: see the sheet %s."
                .formatted(say.counted(faults, "fault", "faults"), FaultsSheet.NAME));
  }

  private String money(double amount) {
    return say.money(amount);
  }
}
