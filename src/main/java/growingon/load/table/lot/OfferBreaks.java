package growingon.load.table.lot;

import growingon.load.cell.Range;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Row;
import growingon.nursery.lot.Offer.PriceBreak;
import growingon.problem.advice.PlanAdvice;
import growingon.problem.advice.ValueAdvice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The rows of one offer as its price breaks. */
final class OfferBreaks {
  private static final Set<String> OF_A_BREAK =
      Set.of(OffersTable.OFFER.name(), OffersTable.LEAST.name(), OffersTable.UNIT_PRICE.name());

  private OfferBreaks() {}

  /** The prices of an offer by the least quantity; reports what its rows say otherwise. */
  static List<PriceBreak> read(String name, List<Row> rows, String currency) {
    Set<Integer> leasts = new HashSet<>();
    List<PriceBreak> breaks = new ArrayList<>();
    for (Row row : rows) {
      checkBreakRow(row, rows.get(0));
      int least = row.get(OffersTable.LEAST);
      double price = row.get(OffersTable.UNIT_PRICE.reading(As.money(currency, Range.PRICE)));
      if (!row.isFailed() && !leasts.add(least)) {
        row.fail(OffersTable.LEAST, where -> PlanAdvice.leastTwice(where, name, least));
      }
      boolean first = row == rows.get(0);
      PriceBreak made = new PriceBreak(Math.max(1, least), Math.max(0, price));
      breaks.add(made);
      if (!first) {
        row.accept(() -> made);
      }
    }
    breaks.sort(Comparator.comparingInt(PriceBreak::least));
    return breaks;
  }

  /** Rows after the first may say nothing else than it about the offer. */
  private static void checkBreakRow(Row row, Row main) {
    if (row == main) {
      return;
    }
    row.needs(OffersTable.UNIT_PRICE);
    for (String heading : row.headings()) {
      String here = row.cell(heading).shown();
      if (!OF_A_BREAK.contains(heading)
          && !Texts.key(here).equals(Texts.key(main.cell(heading).shown()))) {
        row.fail(heading, where -> ValueAdvice.otherwiseAbove(where, here));
      }
    }
  }

  /** A row with a least that was there before has been reported, and makes no break. */
  static List<PriceBreak> distinct(List<PriceBreak> breaks) {
    Set<Integer> leasts = new HashSet<>();
    return breaks.stream().filter(each -> leasts.add(each.least())).toList();
  }
}
