package growingon.demo;

import growingon.nursery.Inputs;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The till of the nursery without a daybook: what the daybook of the two seasons has as sold or
 * come back, without the lot and with VAT, and one sale of what is no plant.
 */
final class DemoReceipts {
  static final Path FILE = Path.of("demo-data", "without-a-daybook", "receipts.csv");

  private static final double WITH_VAT = 1.2;
  private static final String LEAF_MOULD = "2023-11-04,Leaf mould in bags,,12,57.60,20\n";
  private static final String LEAF_MOULD_DAY = LEAF_MOULD.substring(0, 10);

  private DemoReceipts() {}

  /** The table of receipts of a daybook. */
  static String text(Inputs inputs) {
    Map<String, String> species = species(inputs);
    StringBuilder text = new StringBuilder("date,species,grade,number,amount with VAT,VAT %\n");
    boolean hasLeafMould = false;
    for (DaybookLine line : inputs.daybook()) {
      if (line.what() == What.SOLD || line.what() == What.RETURNED) {
        boolean isLater = line.date().toString().compareTo(LEAF_MOULD_DAY) > 0;
        text.append(isLater && !hasLeafMould ? LEAF_MOULD : "");
        hasLeafMould |= isLater;
        text.append(row(line, species.get(line.lot())));
      }
    }
    return text.toString();
  }

  private static String row(DaybookLine line, String species) {
    int sign = line.what() == What.RETURNED ? -1 : 1;
    return String.format(
        Locale.ROOT,
        "%s,%s,%s,%.0f,%.2f,20\n",
        line.date(),
        species,
        line.grade().orElse(""),
        sign * line.quantity().orElseThrow(),
        sign * line.amount().orElseThrow() * WITH_VAT);
  }

  private static Map<String, String> species(Inputs inputs) {
    Map<String, String> species = new HashMap<>();
    inputs.scenario().lots().forEach(lot -> species.put(lot.name(), lot.species()));
    List<DaybookLine> splits =
        inputs.daybook().stream().filter(line -> line.what() == What.SPLIT).toList();
    splits.forEach(line -> species.put(line.toLot().orElseThrow(), species.get(line.lot())));
    return species;
  }
}
