package growingon.load.own.heading;

import growingon.load.own.lot.Draft;
import growingon.load.own.lot.Question;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.text.Keys;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Whether what is given as stock reads like what a supplier offers: by the terms that such lists
 * state in six languages. It is asked; till then the plants are the grower's.
 */
public final class WhoseList {
  /** How a list is read that is a supplier's. */
  public static final String BY_OFFERS = "start --offers reads it";

  private static final String KIND = Question.WHOSE_LIST;
  private static final String YOURS = "yours";
  private static final String A_SUPPLIER = "a supplier's";
  private static final int LONGEST = 300;

  /** Terms stand above or below a list, in a row of few cells. */
  private static final int MOST_CELLS = 3;

  private static final Pattern TERMS =
      Pattern.compile(
          ".*\\b(?:min(?:imum)? order|e & oe|e&oe|errors and omissions excepted|subject to (?:prior sale|being unsold)|"
              + "(?:freight|carriage) extra|availability to the trade|mindestbestell\\p{L}*|zwischenverkauf|freibleibend|"
              + "sous reserve de vente|minimum de commande|commande minim\\p{L}*|tussentijdse verkoop|minimumbestelling|minimale (?:afname|bestelling)|"
              + "salvo (?:il )?venduto|ordine minimo|salvo venta|pedido minimo)\\b.*");

  private WhoseList() {}

  /** Whether the grower says that a sheet is a supplier's. */
  public static boolean isASuppliers(Sheet sheet, OwnWords own) {
    return own.find(KIND, sheet.name()).filter(said -> Keys.of(said).startsWith("a s")).isPresent();
  }

  /** The first text of a sheet that states the terms of a supplier. */
  public static Optional<String> terms(Sheet sheet, OwnWords own) {
    if (own.list().isOffers() || own.find(KIND, sheet.name()).isPresent()) {
      return Optional.empty();
    }
    return sheet.rows().stream()
        .filter(row -> row.cells().size() <= MOST_CELLS)
        .flatMap(row -> row.cells().values().stream())
        .filter(SheetCell::isText)
        .map(SheetCell::text)
        .filter(text -> text.length() < LONGEST && TERMS.matcher(Keys.of(text)).matches())
        .findFirst();
  }

  /** What is told of them. */
  public static String notice(String terms) {
    return "\"%s\" is what a supplier writes, and the plants are read as yours; what is offered to you is read by start --offers"
        .formatted(terms);
  }

  /** The question, which concerns all lots of the sheet. */
  public static Question question(Sheet sheet, List<Draft> lots) {
    return new Question(
        sheet.name(),
        0,
        "",
        KIND,
        sheet.name(),
        YOURS,
        "do these plants stand in your nursery, or does a supplier offer them?",
        lots.stream().mapToLong(Draft::counted).sum(),
        false,
        List.of(YOURS, A_SUPPLIER));
  }
}
