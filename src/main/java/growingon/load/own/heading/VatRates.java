package growingon.load.own.heading;

import growingon.load.own.size.SizeGrammar;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Units;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Columns that say at which rate of VAT a row is, as tills have them. Prices beside one may be with
 * it, and are not read till that is said.
 */
public final class VatRates {
  private static final String BESIDE_VAT = "its list says at which rate of VAT";

  private static final String NET = "another column is this with VAT";

  /** Prices are rounded to the hundredth. */
  private static final double ROUNDING = 0.0151;

  private static final Set<String> HEADINGS =
      Set.of(
          "vat",
          "vat %",
          "vat rate",
          "tax",
          "tax %",
          "tax rate",
          "mwst",
          "mwst %",
          "mwst satz",
          "ust",
          "ust %",
          "tva",
          "tva %",
          "taux tva",
          "btw",
          "btw %",
          "iva",
          "iva %",
          "aliquota iva",
          "tipo iva");

  /** No country has a higher rate, percent. */
  private static final double MOST = 30;

  private VatRates() {}

  /**
   * The same columns, the prices beside a rate not read till it is said whether they are with it.
   */
  static List<HeadingRead> settled(List<HeadingRead> reads, ColumnCells cells, OwnWords own) {
    Optional<HeadingRead> rate = reads.stream().filter(read -> isRate(read, cells)).findFirst();
    if (rate.isEmpty() || own.list().isOffers()) {
      return reads;
    }
    int column = rate.get().column();
    return reads.stream()
        .map(
            read ->
                !read.is("selling price") || Units.saysWithoutVat(Keys.of(read.heading()))
                    ? read
                    : isNetOfAnother(read, reads, column, cells)
                        ? read.as(read.ours(), Units.MONEY, read.how(), NET)
                        : read.as(read.ours(), Units.GROSS, read.how(), BESIDE_VAT))
        .toList();
  }

  /** Whether another column is this price with VAT at the rate of each row. */
  private static boolean isNetOfAnother(
      HeadingRead price, List<HeadingRead> reads, int rate, ColumnCells cells) {
    return reads.stream()
        .anyMatch(
            other ->
                other.column() != price.column()
                    && other.column() != rate
                    && cells.all(
                        List.of(price.column(), rate, other.column()),
                        (net, percent, gross) ->
                            Math.abs(net * (1 + percent / 100) - gross) < ROUNDING));
  }

  private static boolean isRate(HeadingRead read, ColumnCells cells) {
    return HEADINGS.contains(Keys.of(read.heading()))
        && cells.all(
            read.column(),
            cell ->
                SizeGrammar.bare(cell.text().replace("%", ""))
                    .filter(rate -> rate.to() <= MOST)
                    .isPresent());
  }

  /** Whether a heading counts as with VAT only because a rate of VAT stands beside it. */
  public static boolean suppose(HeadingRead head) {
    return head.why().equals(BESIDE_VAT);
  }
}
