package growingon.report.plan;

import growingon.nursery.Assumption;
import growingon.report.figures.Context;
import growingon.report.figures.SeasonFigures;
import growingon.report.model.Answer;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.plan.bought.LotsBoughtSheet;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import growingon.report.words.BoughtWords;
import growingon.report.words.CashWords;
import growingon.report.words.ChanceWords;
import growingon.report.words.HoursWords;
import growingon.report.words.LibraryWords;
import growingon.report.words.OrderWords;
import growingon.report.words.SaleWords;
import growingon.report.words.SpaceWords;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The questions that a grower, or somebody shown the plan, has first, and how each is answered. */
public final class Answers {
  private static final int DEFAULTS_NAMED = 6;

  private final Context context;
  private final SeasonFigures figures;
  private final List<Table> tables;
  private final Phrases say;

  public Answers(Context context, List<Sheet> sheets) {
    this.say = context.say();
    this.context = context;
    this.figures = context.seasons();
    this.tables = sheets.stream().flatMap(sheet -> sheet.tables().stream()).toList();
  }

  /**
   * The answers of a whole report.
   *
   * @param sheets the report's sheets, whose notes say how figures came about
   */
  static List<Answer> of(Context context, List<Sheet> sheets) {
    if (context.inputs().scenario().lots().isEmpty()) {
      return List.of();
    }
    Answers answers = new Answers(context, sheets);
    List<Answer> list = new ArrayList<>();
    list.add(answers.saleable());
    list.add(answers.space());
    list.add(answers.hours());
    list.add(answers.orders());
    list.add(answers.earnings());
    if (!context.bought().isEmpty()) {
      list.add(answers.bought());
    }
    if (context.chances().isPresent()) {
      list.add(answers.chances());
    }
    return list;
  }

  private Answer chances() {
    List<String> sentences = new ArrayList<>(new ChanceWords(context).sheet());
    sentences.remove(Sentences.WITHOUT_VAT);
    return answer(
        "How sure is it",
        sentences,
        List.of("chance-sales", "chance-cash", "chance-space", "chance-hours"),
        List.of());
  }

  public Answer saleable() {
    List<String> sentences = new ArrayList<>(new SaleWords(context).saleable());
    new LibraryWords(context.inputs().scenario()).summary().ifPresent(sentences::add);
    return answer(
        "What can be sold",
        sentences,
        List.of("saleable", "saleable-by-season", "stock-by-species"),
        List.of("stock", "species", "routes", "grades"));
  }

  public Answer space() {
    return answer(
        "Does it fit",
        new SpaceWords(context).sentences(),
        List.of("space-overflow", "bench-space"),
        List.of("places", "pots"));
  }

  public Answer hours() {
    return answer(
        "Are there hours enough",
        List.of(new HoursWords(context).summary()),
        List.of("hours", "hours-short"),
        List.of("hours", "care"));
  }

  Answer orders() {
    return answer(
        "What to order, and by when",
        new OrderWords(context).sentences(),
        List.of("orders", "orders-plants", "orders-by-season"),
        List.of("pots", "mixes", "components", "materials"));
  }

  public Answer earnings() {
    CashWords cash = new CashWords(context);
    List<String> sentences = new ArrayList<>();
    sentences.add(new SaleWords(context).bySeason());
    sentences.addAll(cash.sheet());
    sentences.remove(Sentences.WITHOUT_VAT);
    return answer(
        "What it earns",
        sentences,
        List.of("sales-by-season", "cash-by-season", "cash"),
        List.of("demand", "qualities", "nursery.json", "settings", "other cash"));
  }

  public Answer bought() {
    return answer(
        "Do the bought lots pay",
        boughtSentences(),
        List.of(LotsBoughtSheet.GAINS, LotsBoughtSheet.LIMITS, "lot-verdicts", "lot-break-evens"),
        List.of("offers"));
  }

  private List<String> boughtSentences() {
    List<String> sentences = new ArrayList<>();
    context.bought().forEach(each -> sentences.addAll(new BoughtWords(context, each).sentences()));
    BoughtWords.together(context).ifPresent(sentences::add);
    context.chances().ifPresent(drawn -> sentences.addAll(new ChanceWords(context).summary()));
    return sentences;
  }

  private Answer answer(
      String question, List<String> sentences, List<String> from, List<String> typedIn) {
    Set<String> how = new LinkedHashSet<>();
    List<String> found = new ArrayList<>();
    for (String name : from) {
      tables.stream()
          .filter(table -> table.name().equals(name))
          .forEach(
              table -> {
                how.addAll(table.notes());
                found.add(name);
              });
    }
    typedIn.forEach(table -> how.addAll(assumed(table)));
    return new Answer(question, sentences, List.copyOf(how), found);
  }

  /** How many values of an input table were typed, and which are defaults. */
  private List<String> assumed(String table) {
    List<Assumption> all =
        context.inputs().assumptions().stream().filter(each -> each.table().equals(table)).toList();
    if (all.isEmpty()) {
      return List.of();
    }
    List<String> defaults =
        all.stream().filter(AssumptionsSheet::isDefault).map(this::named).distinct().toList();
    String used = "From %s: %s used".formatted(table, say.counted(all.size(), "value", "values"));
    long lent = all.stream().filter(each -> each.grounds().isPresent()).count();
    String typed = lent == 0 ? used : used + ", %d of them from the library".formatted(lent);
    return List.of(
        defaults.isEmpty()
            ? typed + (lent == 0 ? ", all of them typed." : ", the rest typed.")
            : typed
                + ", the rest defaults: "
                + Phrases.list(defaults, DEFAULTS_NAMED, "kinds of default")
                + " (Assumptions has them all).");
  }

  private String named(Assumption assumption) {
    String unit = assumption.unit().isEmpty() ? "" : " " + assumption.unit();
    return assumption.what() + " " + say.value(assumption.value()) + unit;
  }
}
