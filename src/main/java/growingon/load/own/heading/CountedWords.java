package growingon.load.own.heading;

import growingon.load.own.text.Keys;
import growingon.load.own.text.Meaning;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Headings of numbers of plants that are put together of several words for it.
 *
 * @param meanings of the headings that are known
 */
record CountedWords(Map<String, Meaning> meanings) {
  private static final Set<String> COUNTED =
      Set.of(
          "qty",
          "quantity",
          "no",
          "nos",
          "number",
          "units",
          "plants",
          "trees",
          "pieces",
          "pcs",
          "count",
          "stock",
          "anz",
          "anzahl",
          "menge",
          "stk",
          "stuckzahl",
          "bestand",
          "qte",
          "quantite",
          "nombre",
          "aantal",
          "quantita",
          "cantidad");
  private static final Set<String> LAST =
      Set.of("last", "letzte", "letzter", "dernier", "derniere", "laatste", "ultimo", "ultima");

  private static final Set<String> ALL_OF_THEM =
      Set.of("total", "totale", "totaal", "tot", "gesamt", "insgesamt");

  /**
   * A word for number before or behind what is the number by itself, as in "Qty on hand"; or one
   * such word for another, as in "Total qty" for "Total plants".
   */
  Optional<Meaning> of(String key) {
    List<String> words = Keys.words(key);
    if (words.size() < 2) {
      return Optional.empty();
    }
    if (COUNTED.contains(words.get(0)) && ALL_OF_THEM.contains(words.get(1)) && words.size() == 2) {
      return Optional.ofNullable(meanings.get(words.get(0)))
          .filter(each -> each.ours().equals("quantity"));
    }
    String first = words.get(0);
    String last = words.get(words.size() - 1);
    String behind = key.substring(first.length()).strip();
    String before = key.substring(0, key.length() - last.length()).strip();
    Optional<Meaning> alone =
        number(behind, COUNTED.contains(first) && !COUNTED.contains(behind))
            .or(() -> number(before, COUNTED.contains(last) && !COUNTED.contains(before)));
    return alone
        .or(
            () ->
                COUNTED.contains(first)
                    ? amongWords(other -> other + " " + behind)
                    : Optional.empty())
        .or(
            () ->
                COUNTED.contains(last)
                    ? amongWords(other -> before + " " + other)
                    : Optional.empty());
  }

  /** The number that another word for number in the same place would make it. */
  private Optional<Meaning> amongWords(UnaryOperator<String> with) {
    return COUNTED.stream()
        .sorted()
        .flatMap(other -> number(with.apply(other), true).stream())
        .min(Comparator.comparingInt(Meaning::rank));
  }

  private Optional<Meaning> number(String key, boolean may) {
    return may
        ? Optional.ofNullable(meanings.get(key)).filter(each -> each.ours().equals("quantity"))
        : Optional.empty();
  }

  /** Whether a heading of counts says that it is of the last one, as months do. */
  static boolean saysLast(String heading) {
    return Keys.words(Keys.of(heading)).stream().anyMatch(LAST::contains);
  }
}
