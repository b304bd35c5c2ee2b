package growingon.load.table;

import growingon.load.cell.As;
import growingon.load.cell.Names;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.nursery.Material;
import growingon.nursery.Source;
import java.util.Optional;

/**
 * Materials used up by the work.
 *
 * <pre>
 * material       name, as routes name it
 * unit           what it is counted in: m, ml, pcs
 * pack           units in a pack
 * pack price     price of a pack
 * on hand        units on hand [0]
 * comes back %   that can be used again twelve months later [0]
 * supplier, order lead months   as {@link SourceCells} says
 * </pre>
 */
public final class MaterialsTable {
  public static final String MATERIAL = "material";
  private static final String UNIT = "unit";
  private static final String PACK = "pack";
  private static final String PACK_PRICE = "pack price";
  private static final String ON_HAND = "on hand";
  private static final String COMES_BACK = "comes back %";
  public static final TableFormat FORMAT =
      TableFormat.of("materials", MATERIAL, UNIT, PACK, PACK_PRICE)
          .with(ON_HAND, COMES_BACK, SourceCells.SUPPLIER, SourceCells.LEAD);

  private MaterialsTable() {}

  public static Defined<Material> read(Optional<Table> table, String currency) {
    return Defined.rows(
        new Names("material", FORMAT.name()),
        table,
        MATERIAL,
        (name, row) -> material(name, row, currency));
  }

  private static Optional<Material> material(String name, Row row, String currency) {
    row.needs(MATERIAL, UNIT, PACK, PACK_PRICE);
    String unit = row.get(UNIT, As.NAME);
    As<Double> amount = Materials.packIn(unit);
    double pack = row.get(PACK, amount);
    double price = row.get(PACK_PRICE, As.money(currency, Range.PRICE));
    double onHand = row.get(ON_HAND, Materials.amountOrNoneIn(unit), 0.0);
    double comesBack = row.get(COMES_BACK, As.share(), 0.0);
    Source source = SourceCells.of(row);
    return row.accept(() -> new Material(name, unit, pack, price, onHand, comesBack, source));
  }
}
