package growingon.load.own.text;

import growingon.load.own.sheet.SheetCell;
import java.time.YearMonth;
import java.util.Optional;
import java.util.Set;

/** Months as suppliers write them: also now, and a month or week without a year. */
public final class OfferMonth {
  private static final Set<String> NOW =
      Set.of(
          "now",
          "available",
          "available now",
          "ready",
          "ready now",
          "in stock",
          "ex stock",
          "immediately",
          "sofort",
          "ab sofort",
          "auf lager",
          "lieferbar",
          "immediat",
          "disponible",
          "de suite",
          "nu",
          "direct",
          "per direct",
          "op voorraad",
          "subito",
          "pronta",
          "pronto",
          "pronte",
          "pronti",
          "pronta consegna",
          "listo",
          "lista",
          "pret",
          "leverbaar",
          "disponibile",
          "inmediato",
          "yes",
          "ja",
          "oui",
          "si");

  private static final YearMonth ANY = YearMonth.of(2001, 1);

  private final MonthText months;
  private final YearMonth from;

  /**
   * Months of offers.
   *
   * @param from the first month in which plants can come
   */
  public OfferMonth(MonthText months, YearMonth from) {
    this.months = months;
    this.from = from;
  }

  /** Whether a cell says a month so, whichever year it is. */
  public static boolean isOne(SheetCell cell) {
    return new OfferMonth(new MonthText(Optional.empty(), false), ANY).of(cell).value().isPresent();
  }

  public Read<YearMonth> of(SheetCell cell) {
    Read<YearMonth> read = months.of(cell);
    if (!read.isAsked() || !cell.isText()) {
      return read;
    }
    if (NOW.contains(Keys.of(cell.text()))) {
      return Read.of(from);
    }
    return next(cell.text().strip()).orElse(read);
  }

  /** The first month of that name, or of that week, from now on. */
  private Optional<Read<YearMonth>> next(String text) {
    for (int year = from.getYear(); year <= from.getYear() + 1; year++) {
      Optional<YearMonth> month = months.of(SheetCell.of(text + " " + year)).value();
      if (month.isPresent() && !month.get().isBefore(from)) {
        return Optional.of(
            Read.likely(month.get(), "no year is written; it is taken as " + month.get()));
      }
    }
    return Optional.empty();
  }
}
