package growingon.report.edition;

import growingon.nursery.Inputs;
import growingon.report.build.TableOf;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.review.Compared;
import growingon.review.Judged;
import growingon.review.LotReview;
import growingon.review.Review;
import growingon.review.book.GonePriced;
import growingon.review.book.Loss;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/** The tables of a review as a partner or a bank may see them: lots by alias, or by ladder. */
final class ReviewEditionTables {
  /** A figure with fewer lots behind it is not told. */
  static final int LEAST_LOTS = 2;

  private static final String OTHER = "other";

  private final Inputs inputs;
  private final Review review;
  private final String currency;
  private final Aliases aliases;

  ReviewEditionTables(Inputs inputs, Review review, Aliases aliases) {
    this.inputs = inputs;
    this.review = review;
    this.currency = inputs.scenario().nursery().settings().currency();
    this.aliases = aliases;
  }

  /** A figure as planned and as it came, and what it is of. */
  private record Line(String first, String second, Compared figure) {
    private Plants wholePlanned() {
      return Plants.of(figure.planned(), figure.wholePlanned());
    }

    private Plants wholeReal() {
      return Plants.of(figure.real(), figure.wholeReal());
    }
  }

  private TableOf<Line> compared(TableOf<Line> table, Kind kind) {
    return switch (kind) {
      case PLANTS ->
          table
              .plants("planned", Line::wholePlanned)
              .plants("real", Line::wholeReal)
              .plants("difference", each -> each.wholeReal().minus(each.wholePlanned()));
      case MM ->
          table
              .column("planned", "mm", kind, each -> each.figure.planned())
              .column("real", "mm", kind, each -> each.figure.real())
              .column("difference", "mm", kind, each -> each.figure.difference());
      default ->
          table
              .summed("planned", currency, kind, each -> each.figure.planned())
              .summed("real", currency, kind, each -> each.figure.real())
              .summed("difference", currency, kind, each -> each.figure.difference());
    };
  }

  /** One figure of each lot; of trunks, where there were some and were to be. */
  Table figure(String name, String title, Kind kind, Function<LotReview, Compared> what) {
    return compared(
            TableOf.<Line>table("lots-" + name, title)
                .text("lot", Line::first)
                .text("species", Line::second),
            kind)
        .of(
            review.lots().stream()
                .map(lot -> new Line(alias(lot), lot.lot().species(), what.apply(lot)))
                .filter(each -> kind != Kind.MM || isThere(each.figure))
                .toList());
  }

  private static boolean isThere(Compared figure) {
    return figure.planned() > 0 && figure.real() > 0;
  }

  private String alias(LotReview lot) {
    return aliases.of(lot.lot().name());
  }

  Table grades() {
    return compared(
            TableOf.<Line>table("lots-grades", "Plants alive by grade")
                .text("lot", Line::first)
                .text("grade", Line::second),
            Kind.PLANTS)
        .of(review.lots().stream().flatMap(this::grades).toList());
  }

  private Stream<Line> grades(LotReview lot) {
    return lot.grades().stream()
        .filter(each -> each.plants().wholePlanned() != 0 || each.plants().wholeReal() != 0)
        .map(
            each ->
                new Line(
                    alias(lot),
                    each.grade().isEmpty() ? "no grade yet" : each.grade(),
                    each.plants()));
  }

  /** Prices are told as a share of list, which a partner sees in the sales. */
  Table luck() {
    return TableOf.<Judged>table("more-than-luck", "Luck, or more than luck")
        .note("Deaths, growth and price, which do not go by what was chosen to sell.")
        .text("lot", each -> aliases.of(each.lot()))
        .text("figure", each -> each.what().toString())
        .text("how to take it", each -> each.take().toString())
        .of(review.judged());
  }

  Table losses() {
    Map<String, Double> bySpecies = new LinkedHashMap<>();
    for (Loss each : review.losses()) {
      bySpecies.merge(each.species(), each.plants(), Double::sum);
    }
    return TableOf.<Map.Entry<String, Double>>table("losses-by-species", "Losses by species")
        .text("species", Map.Entry::getKey)
        .plants("plants", each -> Plants.nearest(each.getValue()))
        .of(List.copyOf(bySpecies.entrySet()));
  }

  Table withoutALine() {
    return TableOf.<GonePriced>table("gone-without-a-line", "Sold or lost, no line says which")
        .text("lot", each -> aliases.of(each.gone().lot()))
        .text("species", GonePriced::species)
        .plants("gone", each -> Plants.nearest(each.gone().plants()))
        .of(review.gone());
  }

  /** Lots of a ladder together; what tells of fewer than two lots goes with others, or untold. */
  Table byLadder(String name, String title, Kind kind, Function<LotReview, Compared> what) {
    return compared(
            TableOf.<Line>table(name + "-by-ladder", title).text("ladder", Line::first), kind)
        .of(ladders(what));
  }

  private List<Line> ladders(Function<LotReview, Compared> what) {
    Map<String, List<LotReview>> ladders = new LinkedHashMap<>();
    for (LotReview lot : review.lots()) {
      Compared figure = what.apply(lot);
      if (figure.planned() != 0 || figure.real() != 0) {
        String ladder = inputs.scenario().nursery().ladderOf(lot.lot()).name();
        ladders.computeIfAbsent(ladder, each -> new ArrayList<>()).add(lot);
      }
    }
    Map<String, List<LotReview>> told = merged(ladders);
    if (told.size() < 2) {
      // The totals of all lots stand on the first sheet.
      return List.of();
    }
    return told.entrySet().stream()
        .map(
            each ->
                new Line(
                    each.getKey(),
                    "",
                    each.getValue().stream().map(what).reduce(Compared::plus).orElseThrow()))
        .toList();
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
