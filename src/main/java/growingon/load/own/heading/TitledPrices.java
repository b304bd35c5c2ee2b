package growingon.load.own.heading;

import growingon.load.own.heading.HeadingRead.How;
import growingon.load.own.text.Meaning;
import growingon.load.own.text.TaxWords;
import growingon.load.own.text.Units;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Prices of which a title above the list says whether they are with VAT: those asked, for what was
 * paid is in no title.
 */
public final class TitledPrices {
  private static final String SAID = "a title says what its prices are";
  private static final Set<String> EITHER = Set.of("unit cost", "selling price");

  private TitledPrices() {}

  /** Money with or without VAT, where a title says it of prices. */
  public static Optional<String> vatOf(String title) {
    return TaxWords.ofTitle(title);
  }

  /**
   * The same columns: a price alone is what is asked, and prices are with VAT if a title says so.
   */
  public static List<HeadingRead> settled(List<HeadingRead> reads, Optional<String> title) {
    Optional<String> vat = title.flatMap(TitledPrices::vatOf);
    return vat.isEmpty()
        ? reads
        : reads.stream().map(read -> settled(read, vat.get(), SAID + ": " + title.get())).toList();
  }

  private static HeadingRead settled(HeadingRead read, String vat, String said) {
    boolean open = read.is(Meaning.OPEN) && Set.copyOf(read.choices()).equals(EITHER);
    boolean silent = TaxWords.of(read.heading()).isEmpty();
    if (open) {
      return read.as("selling price", silent ? vat : read.unit(), How.LIKELY, said);
    }
    boolean grossByItself = read.unit().equals(Units.GROSS);
    return read.is("selling price") && silent && (vat.equals(Units.GROSS) || grossByItself)
        ? read.as(read.ours(), vat, read.how(), said)
        : read;
  }
}
