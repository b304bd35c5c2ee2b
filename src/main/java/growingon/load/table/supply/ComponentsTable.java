package growingon.load.table.supply;

import growingon.load.cell.Range;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.Defined;
import growingon.nursery.supply.Component;
import growingon.nursery.supply.Source;
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
  private static final Range BAG = Range.OVER_ZERO.usually(1, Range.OVER_ZERO.most());

  public static final Heading<String> COMPONENT = Heading.text("component").means("Name");
  private static final Heading<Double> BAG_LITRES =
      Heading.number("bag litres", As.number(BAG)).means("Litres in a bag");
  private static final Heading<Double> BAG_PRICE = Heading.money("bag price").means("Of one bag");
  private static final Heading<Double> ON_HAND =
      Heading.number("on hand litres", As.number(Range.FROM_ZERO))
          .usual(0.0)
          .means("Litres you have");
  private static final Heading<Double> WET_KG =
      Heading.number("wet kg per litre", As.number(Range.FROM_ZERO))
          .means("Weight of a loose litre when wet");
  public static final TableFormat FORMAT =
      TableFormat.of(
          "components",
          COMPONENT.needed(),
          BAG_LITRES.needed(),
          BAG_PRICE.needed(),
          WET_KG.needed(),
          ON_HAND,
          SourceCells.SUPPLIER,
          SourceCells.LEAD);

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
    double bagLitres = row.get(BAG_LITRES);
    double bagPrice = row.get(BAG_PRICE.reading(As.money(currency, Range.PRICE)));
    double onHand = row.get(ON_HAND);
    double wetKg = row.get(WET_KG);
    Source source = SourceCells.of(row);
    return row.accept(() -> new Component(name, bagLitres, bagPrice, onHand, wetKg, source));
  }
}
