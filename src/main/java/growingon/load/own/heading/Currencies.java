package growingon.load.own.heading;

import growingon.load.own.lot.Question;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.size.SizeGrammar;
import growingon.load.own.size.Span;
import growingon.load.own.text.Meaning;
import growingon.load.own.text.MoneyText;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * The money of a list's columns. A column with two currencies is asked about and not read till
 * then; so is one in another currency than the selling prices.
 */
public final class Currencies {
  private static final List<String> PRICES = List.of("selling price", "unit cost", "row cost");
  private static final String KIND = "currency";
  private static final String RATE = "exchange rate";

  private final Map<Integer, Set<String>> found = new HashMap<>();
  private final Map<Integer, String> chosen = new HashMap<>();
  private final Map<Integer, Double> rates = new HashMap<>();
  private Optional<String> main = Optional.empty();

  private Currencies() {}

  /** The currencies of a list; what must be asked about them is asked. */
  public static Currencies of(
      String sheet,
      List<HeadingRead> heads,
      List<SheetRow> body,
      OwnWords own,
      List<Question> questions) {
    Currencies all = new Currencies();
    for (String ours : PRICES) {
      for (HeadingRead head : heads) {
        if (head.is(ours)) {
          all.add(sheet, head, body, own, questions);
        }
      }
    }
    for (HeadingRead head : heads) {
      if (PriceBreaks.isOne(head.ours())) {
        all.add(sheet, head, body, own, questions);
      }
    }
    return all;
  }

  private void add(
      String sheet, HeadingRead head, List<SheetRow> body, OwnWords own, List<Question> questions) {
    Set<String> signs = signs(head, body);
    found.put(head.column(), signs);
    Optional<String> said = own.find(KIND, head.heading()).map(String::strip);
    if (signs.size() > 1 && said.isEmpty()) {
      String all = String.join(" and ", signs);
      ask(
          sheet,
          head,
          KIND,
          "%s has prices in %s: which of them is read?".formatted(head.heading(), all),
          List.copyOf(signs),
          questions);
      return;
    }
    String is = said.orElse(signs.isEmpty() ? main.orElse("") : signs.iterator().next());
    if (main.isEmpty() && !is.isEmpty()) {
      main = Optional.of(is);
    }
    chosen.put(head.column(), is);
    rate(sheet, head, is, own, questions);
  }

  private void rate(
      String sheet, HeadingRead head, String is, OwnWords own, List<Question> questions) {
    if (main.isEmpty() || is.isEmpty() || is.equals(main.get())) {
      rates.put(head.column(), 1.0);
      return;
    }
    Optional<Double> said =
        own.find(RATE, head.heading()).flatMap(SizeGrammar::bare).map(Span::from);
    if (said.isPresent()) {
      rates.put(head.column(), said.get());
    } else {
      ask(
          sheet,
          head,
          RATE,
          "%s is in %s, other prices are in %s: what is 1 %s in %s?"
              .formatted(head.heading(), is, main.get(), is, main.get()),
          List.of(),
          questions);
    }
  }

  private static void ask(
      String sheet,
      HeadingRead head,
      String kind,
      String question,
      List<String> choices,
      List<Question> questions) {
    questions.add(
        new Question(
            sheet, 0, "", kind, head.heading(), Meaning.NOT_READ, question, 0, false, choices));
  }

  private static Set<String> signs(HeadingRead head, List<SheetRow> body) {
    Set<String> signs = new TreeSet<>();
    for (SheetRow row : body) {
      row.cell(head.column())
          .flatMap(cell -> MoneyText.of(cell).value())
          .map(MoneyText::currency)
          .filter(sign -> !sign.isEmpty())
          .ifPresent(signs::add);
    }
    return signs;
  }

  /** Amount of a price in the main currency; nothing while its column is asked about. */
  public OptionalDouble amount(HeadingRead head, MoneyText price) {
    String is = chosen.getOrDefault(head.column(), "");
    boolean open =
        !chosen.containsKey(head.column())
            || !rates.containsKey(head.column())
            || (!price.currency().isEmpty() && !price.currency().equals(is));
    return open
        ? OptionalDouble.empty()
        : OptionalDouble.of(price.amount() * rates.get(head.column()));
  }

  /** The currency of the selling prices, else of the first cost that states one. */
  Optional<String> main() {
    return main;
  }

  /** Every currency of its prices. */
  public List<String> all() {
    Set<String> all = new TreeSet<>();
    found.values().forEach(all::addAll);
    return new ArrayList<>(all);
  }
}
