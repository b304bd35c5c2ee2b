package growingon.load.own.stated;

import growingon.load.own.heading.ColumnFacts;
import growingon.load.own.heading.HeadedCells;
import growingon.load.own.heading.HeadedCells.Filled;
import growingon.load.own.lot.Draft;
import growingon.load.own.lot.Stated;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.size.PotSize;
import growingon.load.own.text.Numbers;
import growingon.load.own.text.QualityText;
import growingon.nursery.market.Quality;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How many firsts and seconds a row states, as shares or as numbers of plants. Where it states only
 * one of them the rest are the other.
 */
final class StatedQualities {
  private static final double ALL = 100;

  private final HeadedCells heads;
  private final ColumnFacts facts;

  StatedQualities(HeadedCells heads, ColumnFacts facts) {
    this.heads = heads;
    this.facts = facts;
  }

  void read(SheetRow row, Draft draft) {
    OptionalDouble first = share(row, "first %", "number of firsts", draft);
    OptionalDouble second = share(row, "second %", "number of seconds", draft);
    if (first.isEmpty() && second.isEmpty()) {
      heads.each(row, "quality word", cell -> word(cell, draft));
      return;
    }
    double firsts = first.orElseGet(() -> ALL - second.getAsDouble());
    double seconds = second.orElse(ALL - firsts);
    if (firsts + seconds > ALL + 0.5) {
      draft.ask(
          Stated.SECOND,
          PotSize.plain(seconds),
          "with %s in 100 firsts they are over 100; how many in 100 are seconds?"
              .formatted(PotSize.plain(firsts)));
      return;
    }
    draft.stated.put(Stated.FIRST, PotSize.plain(firsts));
    draft.stated.put(Stated.SECOND, PotSize.plain(Math.min(seconds, rounded(ALL - firsts))));
  }

  /** All plants of a row are of the quality that it names, which wants a nod. */
  private static void word(Filled cell, Draft draft) {
    QualityText.of(cell.text())
        .filter(quality -> quality != Quality.FIRST)
        .ifPresent(
            quality -> {
              boolean isSecond = quality == Quality.SECOND;
              draft.stated.put(Stated.FIRST, "0");
              draft.stated.put(Stated.SECOND, isSecond ? "100" : "0");
              draft.nod(
                  Stated.SECOND,
                  cell.text(),
                  "%s are %s".formatted(cell.text(), isSecond ? "seconds" : "thirds"));
            });
  }

  private OptionalDouble share(SheetRow row, String percent, String number, Draft draft) {
    OptionalDouble[] share = {OptionalDouble.empty()};
    heads.each(row, percent, cell -> share[0] = percent(cell, facts.isShare(cell.head().column())));
    if (share[0].isEmpty()) {
      heads.each(row, percent, cell -> StatedCells.note(cell, draft));
      OptionalInt counted = heads.count(row, number);
      int all = draft.counted();
      if (counted.isPresent() && counted.getAsInt() <= all && all > 0) {
        return OptionalDouble.of(rounded(ALL * counted.getAsInt() / all));
      }
      heads.each(row, number, cell -> StatedCells.note(cell, draft));
    }
    return share[0];
  }

  private static double rounded(double percent) {
    return Math.rint(percent * 100) / 100;
  }

  /**
   * A share in percent.
   *
   * @param ofOne whether the column has parts of one
   */
  static OptionalDouble percent(Filled cell, boolean ofOne) {
    String text = cell.text();
    boolean signed = text.endsWith("%");
    OptionalDouble number = Numbers.money(signed ? text.substring(0, text.length() - 1) : text);
    double percent = number.orElse(-1) * (ofOne && !signed ? ALL : 1);
    return percent >= 0 && percent <= ALL
        ? OptionalDouble.of(rounded(percent))
        : OptionalDouble.empty();
  }
}
