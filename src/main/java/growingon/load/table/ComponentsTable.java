package growingon.load.table;

import growingon.load.cell.As;
import growingon.load.cell.Names;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.nursery.Component;
import growingon.nursery.Source;
import java.util.Optional;

/**
 * Substrate components.
 *
 * <pre>
 * component          name
 * bag litres         litres in a bag
 * bag price          price of a bag
 * on hand litres     litres on hand [0]
 * wet kg per litre   weight of a loose litre when wet
 * supplier, order lead months   as {@link SourceCells} says
 * </pre>
 */
public final class ComponentsTable {
  public static final String COMPONENT = "component";
  private static final String BAG_LITRES = "bag litres";
  private static final String BAG_PRICE = "bag price";
  private static final String ON_HAND = "on hand litres";
  private static final String WET_KG = "wet kg per litre";
  public static final TableFormat FORMAT =
      TableFormat.of("components", COMPONENT, BAG_LITRES, BAG_PRICE, WET_KG)
          .with(ON_HAND, SourceCells.SUPPLIER, SourceCells.LEAD);

  private static final Range BAG = Range.OVER_ZERO.usually(1, Range.OVER_ZERO.most());

  private ComponentsTable() {}

  public static Defined<Component> read(Optional<Table> table, String currency) {
    return Defined.rows(
        new Names("component", FORMAT.name()),
        table,
        COMPONENT,
        (name, row) -> component(name, row, currency));
  }

  private static Optional<Component> component(String name, Row row, String currency) {
    row.needs(COMPONENT, BAG_LITRES, BAG_PRICE, WET_KG);
    double bagLitres = row.get(BAG_LITRES, As.number(BAG));
    double bagPrice = row.get(BAG_PRICE, As.money(currency, Range.PRICE));
    double onHand = row.get(ON_HAND, As.number(Range.FROM_ZERO), 0.0);
    double wetKg = row.get(WET_KG, As.number(Range.FROM_ZERO));
    Source source = SourceCells.of(row);
    return row.accept(() -> new Component(name, bagLitres, bagPrice, onHand, wetKg, source));
  }
}
