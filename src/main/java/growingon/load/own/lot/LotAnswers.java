package growingon.load.own.lot;

import growingon.load.own.sheet.SheetCell;
import growingon.load.own.size.SizeGrammar;
import growingon.load.own.size.SizeParts;
import growingon.load.own.size.Span;
import growingon.load.own.text.CountText;
import growingon.load.own.text.MoneyText;
import growingon.load.own.text.MonthText;
import java.util.Optional;

/** A lot with what the grower has answered about it, read as the list itself would be. */
final class LotAnswers {
  private LotAnswers() {}

  /** Whether a column is part of a lot as read; others are cells of its row in the stock table. */
  static boolean isPart(String column) {
    return switch (column) {
      case "quantity",
          "trunk mm",
          "girth cm",
          "pot",
          "size",
          "arrived",
          "place",
          "unit cost",
          "selling price",
          "height left mm" ->
          true;
      default -> false;
    };
  }

  static OwnLot with(OwnLot lot, String column, String text, Site site) {
    SheetCell cell = SheetCell.of(text);
    return switch (column) {
      case "quantity" -> CountText.of(cell).value().map(lot::withQuantity).orElse(lot);
      case "arrived" ->
          new MonthText(Optional.of(true), site.south())
              .of(cell)
              .value()
              .map(lot::withArrival)
              .orElse(lot);
      case "place" -> lot.at(text.strip());
      case "unit cost" ->
          MoneyText.of(cell).value().map(money -> lot.withCost(money.amount())).orElse(lot);
      case "selling price" ->
          MoneyText.of(cell).value().map(money -> lot.withPrice(money.amount())).orElse(lot);
      default -> sized(lot, column, text, site);
    };
  }

  private static OwnLot sized(OwnLot lot, String column, String text, Site site) {
    Optional<Span> bare = SizeGrammar.bare(text);
    if (column.equals("trunk mm") && bare.isPresent()) {
      return lot.withTrunk(bare.get().from(), bare.get().to());
    }
    if (column.equals("girth cm") && bare.isPresent()) {
      Span mm = site.trunkMm(bare.get());
      return lot.withTrunk(mm.from(), mm.to());
    }
    SizeParts parts = new SizeParts();
    SizeGrammar.readSize(text, parts);
    parts.settle();
    OwnLot sized = parts.pot().map(pot -> lot.withPot(pot.name(), pot.litres())).orElse(lot);
    Optional<Span> mm = parts.trunkMm().or(() -> parts.girthCm().map(site::trunkMm));
    sized = mm.isPresent() ? sized.withTrunk(mm.get().from(), mm.get().to()) : sized;
    return parts.heightCm().isPresent() ? sized.withHeight(parts.heightCm().get().middle()) : sized;
  }
}
