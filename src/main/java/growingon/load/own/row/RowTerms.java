package growingon.load.own.row;

import growingon.load.own.heading.HeadedCells;
import growingon.load.own.heading.PriceBreaks;
import growingon.load.own.lot.Draft;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.CountText;
import growingon.load.own.text.Keys;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;

/** Reads on what terms a supplier offers plants, and whether they can be bought at all. */
final class RowTerms {
  private static final Set<String> PLENTY =
      Set.of(
          "yes",
          "available",
          "in stock",
          "ex stock",
          "good",
          "plenty",
          "reichlich",
          "genugend",
          "ausreichend",
          "beaucoup",
          "ruim",
          "volop",
          "abbondante",
          "abundante",
          "ample",
          "ja",
          "auf lager",
          "lieferbar",
          "vorratig",
          "oui",
          "disponible",
          "en stock",
          "op voorraad",
          "leverbaar",
          "si",
          "disponibile",
          "x",
          "y",
          "✓");

  private final HeadedCells heads;

  RowTerms(HeadedCells heads) {
    this.heads = heads;
  }

  /** Whether a cell says that there are plants, and not how many. */
  static boolean isPlenty(String text) {
    return PLENTY.contains(Keys.of(text)) || PLENTY.contains(text.strip());
  }

  /** The terms of a row; one without a price, or of which too few are left, is asked. */
  void read(SheetRow row, Draft draft) {
    number(row, "least", draft, value -> draft.least = value);
    number(row, "multiple", draft, value -> draft.multiple = value);
    draft.note(draft.code);
    settleBreaks(draft);
    int most = draft.quantity.orElse(Integer.MAX_VALUE);
    if (draft.unitCost.isEmpty()) {
      askPrice(row, draft);
    } else if (draft.least.orElse(1) > most) {
      draft.rowAsked = true;
      draft.ask(
          "quantity",
          Integer.toString(most),
          "at least %d must be bought and %d are there; how many can be had?"
              .formatted(draft.least.getAsInt(), most));
    }
  }

  /** The price of the least number is the offer's; those of more follow it. */
  private static void settleBreaks(Draft draft) {
    if (draft.breaks.isEmpty()) {
      return;
    }
    if (draft.unitCost.isEmpty()) {
      int first = draft.breaks.firstKey();
      int least = Math.max(first, draft.least.orElse(1));
      draft.unitCost = OptionalDouble.of(draft.breaks.floorEntry(least).getValue());
      draft.least = least > 1 ? OptionalInt.of(least) : draft.least;
    }
    draft.breaks.headMap(draft.least.orElse(1), true).clear();
  }

  private void askPrice(SheetRow row, Draft draft) {
    draft.rowAsked = true;
    if (draft.questions.stream().noneMatch(each -> each.column().equals("unit cost"))) {
      draft.ask("unit cost", priceText(row), "what does a plant cost?");
    }
  }

  private String priceText(SheetRow row) {
    return heads.all().stream()
        .filter(head -> head.is("unit cost") || PriceBreaks.isOne(head.ours()))
        .map(head -> row.text(head.column()).strip())
        .filter(text -> !text.isEmpty())
        .findFirst()
        .orElse("");
  }

  private void number(SheetRow row, String ours, Draft draft, Consumer<OptionalInt> take) {
    heads.each(
        row,
        ours,
        cell -> {
          Optional<Integer> number = CountText.of(cell.cell()).value();
          if (number.isPresent() && number.get() > 0) {
            take.accept(OptionalInt.of(number.get()));
          } else if (!cell.text().matches("[-–—]*")) {
            draft.ask(ours, cell.text(), "1", "which number is it?", java.util.List.of());
          }
        });
  }
}
