package growingon.report.words;

import growingon.report.figures.Context;
import growingon.report.figures.SeasonAhead;
import growingon.report.figures.SeasonFigures;
import growingon.report.text.Phrases;
import growingon.whole.WholeDemand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What is said about what can be sold and what it brings. */
public final class SaleWords {
  private static final int NAMED = 5;
  private static final int DEAREST = 2;
  private static final int FIRST_LINE = 3;
  private static final int SEASONS_NAMED = 10;

  private final Context context;
  private final SeasonFigures figures;
  private final int next;
  private final SeasonAhead ahead;
  private final Phrases say;

  public SaleWords(Context context) {
    this.say = context.say();
    this.context = context;
    this.figures = context.seasons();
    this.next = figures.next();
    this.ahead = new SeasonAhead(context);
  }

  /** What is ready in the first full season and what of it is sold; the season under way too. */
  public List<String> saleable() {
    List<String> sentences = new ArrayList<>();
    underWay().ifPresent(sentences::add);
    long plants = figures.saleable(next).whole();
    if (plants == 0) {
      sentences.add(seasonAhead() + " no plant is ready to be sold.");
      return sentences;
    }
    String can = say.plants(plants) + " can be sold: " + named(saleablePlants(), NAMED) + ".";
    sentences.add(seasonAhead() + " " + can);
    sentences.add(soldOfThem(plants));
    return sentences;
  }

  /** The season that the plan begins in, where it is not whole and another follows. */
  private Optional<String> underWay() {
    return next == 0
        ? Optional.empty()
        : Optional.of(
            "In %s, the season under way, %s can be sold and %s, for %s."
                .formatted(
                    figures.label(0),
                    say.plants(figures.saleable(0).whole()),
                    sold(figures.sold(0).whole()),
                    say.money(figures.money(0))));
  }

  private String sold(long plants) {
    return plants == 1 ? "1 is sold" : say.whole(plants) + " are sold";
  }

  /** What is ready and what of it is sold, in one sentence. */
  public String headline() {
    long plants = figures.saleable(next).whole();
    if (plants == 0) {
      return seasonAhead() + " no plant is ready to be sold.";
    }
    String ready = seasonAhead() + " " + say.plants(plants) + " can be sold; ";
    long sold = figures.sold(next).whole();
    return sold == 0
        ? ready + "the plan sells none of them."
        : ready
            + "the plan sells %s of them, for %s%s."
                .formatted(say.whole(sold), say.money(figures.money(next)), dearest());
  }

  /** What sales bring in all, in one sentence. */
  public String inAll() {
    if (context.inputs().scenario().nursery().demand().isEmpty()) {
      return bySeason();
    }
    double sum = IntStream.range(0, figures.seasons()).mapToDouble(figures::money).sum();
    String seasons = say.counted(figures.seasons(), "season", "seasons");
    return "Sales of %s are expected in %s, without VAT.%s"
        .formatted(say.money(sum), seasons, missed());
  }

  private String seasonAhead() {
    String which = figures.isFull(next) ? "first full season" : "only season";
    return "In %s, the %s,".formatted(figures.label(next), which);
  }

  private String soldOfThem(long plants) {
    long sold = figures.sold(next).whole();
    if (sold == 0) {
      return "The plan sells none of them: the demand table asks for none.";
    }
    String which = sold == plants ? "them all" : say.whole(sold) + " of them";
    return "The plan sells %s, for %s%s."
        .formatted(which, say.money(figures.money(next)), dearest());
  }

  /** What brings most of the money, where there is much to choose from. */
  private String dearest() {
    List<String> kinds = ahead.kindsByMoney();
    return kinds.size() <= DEAREST
        ? ""
        : ", above all for " + Phrases.list(kinds.subList(0, DEAREST));
  }

  /** By species and grade where these are few, else by grade alone. */
  private List<SeasonAhead.Count> saleablePlants() {
    List<SeasonAhead.Count> kinds = ahead.kinds();
    return kinds.size() <= NAMED ? kinds : ahead.grades();
  }

  /** Expected sales by season. */
  public String bySeason() {
    if (context.inputs().scenario().nursery().demand().isEmpty()) {
      return "No sales are expected: the nursery has no demand table.";
    }
    double sum = IntStream.range(0, figures.seasons()).mapToDouble(figures::money).sum();
    String seasons = Phrases.list(seasonSales(), SEASONS_NAMED, "seasons");
    String all = figures.seasons() == 1 ? "" : "; in all " + say.money(sum);
    return "Sales expected: %s%s, without VAT.%s".formatted(seasons, all, missed());
  }

  private List<String> seasonSales() {
    return IntStream.range(0, figures.seasons())
        .mapToObj(s -> figures.label(s) + " " + say.money(figures.money(s)))
        .toList();
  }

  private String missed() {
    int missed = context.whole().demand().stream().mapToInt(WholeDemand::missed).sum();
    return missed == 0
        ? ""
        : " The demand table asks for " + say.plants(missed) + " more than are ready in time.";
  }

  /** The lines for the terminal. */
  List<String> headlines() {
    List<String> lines = new ArrayList<>();
    if (next > 0) {
      lines.add(
          "Saleable in %s: %s; %s, for %s."
              .formatted(
                  figures.label(0),
                  say.plants(figures.saleable(0).whole()),
                  sold(figures.sold(0).whole()),
                  say.money(figures.money(0))));
    }
    String season = figures.label(next);
    if (figures.saleable(next).whole() == 0) {
      lines.add("Saleable in " + season + ": nothing.");
    } else {
      String plants = say.plants(figures.saleable(next).whole());
      List<SeasonAhead.Count> counts = saleablePlants();
      lines.add(
          Phrases.fitted(
              counts.size(),
              Headlines.WIDTH,
              most -> "Saleable in %s: %s; %s.".formatted(season, plants, named(counts, most))));
      lines.add(
          "Sold of them: %s, for %s%s."
              .formatted(
                  say.plants(figures.sold(next).whole()),
                  say.money(figures.money(next)),
                  dearest()));
    }
    lines.addAll(seasonLines());
    return lines;
  }

  /** Expected sales of all seasons in one line, or in two. */
  private List<String> seasonLines() {
    List<String> sales = seasonSales();
    String one = "Expected sales: " + Phrases.list(sales) + ".";
    if (one.length() <= Headlines.WIDTH) {
      return List.of(one);
    }
    int first = Math.min(FIRST_LINE, sales.size());
    return List.of(
        "Expected sales: " + String.join(", ", sales.subList(0, first)) + ",",
        Phrases.fitted(
            sales.size() - first,
            Headlines.WIDTH,
            most ->
                "  " + Phrases.list(sales.subList(first, sales.size()), most, "seasons") + "."));
  }

  /** The first of them by name, and how many plants the others are. */
  private String named(List<SeasonAhead.Count> counts, int most) {
    List<String> words =
        new ArrayList<>(counts.stream().limit(most).map(count -> count.text(say)).toList());
    long others = counts.stream().skip(most).mapToLong(each -> each.plants().whole()).sum();
    if (others > 0) {
      words.add(say.counted(others, "other", "others"));
    }
    return Phrases.list(words);
  }
}
