package growingon.load.table.supply;

import growingon.load.cell.Range;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.Defined;
import growingon.nursery.supply.Material;
import growingon.nursery.supply.Source;
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
  public static final Heading<String> MATERIAL =
      Heading.text("material").means("Name, as routes use it");
  private static final Heading<String> UNIT =
      Heading.named("unit").means("What it is counted in: m, ml, pcs");
  private static final Heading<Double> PACK =
      Heading.number("pack", As.number(Range.FROM_ZERO)).means("Units in a pack");
  private static final Heading<Double> PACK_PRICE =
      Heading.money("pack price").means("Of one pack");
  private static final Heading<Double> ON_HAND =
      Heading.number("on hand", As.number(Range.FROM_ZERO)).usual(0.0).means("Units you have");
  private static final Heading<Double> COMES_BACK =
      Heading.number("comes back %", As.share())
          .usual(0.0)
          .means("How much of 100 can be used again a year later");
  public static final TableFormat FORMAT =
      TableFormat.of(
          "materials",
          MATERIAL.needed(),
          UNIT.needed(),
          PACK.needed(),
          PACK_PRICE.needed(),
          ON_HAND,
          COMES_BACK,
          SourceCells.SUPPLIER,
          SourceCells.LEAD);

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
    String unit = row.get(UNIT);
    As<Double> amount = Materials.packIn(unit);
    double pack = row.get(PACK.reading(amount));
    double price = row.get(PACK_PRICE.reading(As.money(currency, Range.PRICE)));
    double onHand = row.get(ON_HAND.reading(Materials.amountOrNoneIn(unit)));
    double comesBack = row.get(COMES_BACK);
    Source source = SourceCells.of(row);
    return row.accept(() -> new Material(name, unit, pack, price, onHand, comesBack, source));
  }
}
