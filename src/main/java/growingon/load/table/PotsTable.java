package growingon.load.table;

import growingon.load.cell.As;
import growingon.load.cell.Cell;
import growingon.load.cell.Names;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.load.cell.Texts;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.nursery.Pot;
import growingon.nursery.PotShape;
import growingon.nursery.Source;
import growingon.problem.advice.DefinitionAdvice;
import growingon.problem.advice.ValueAdvice;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Pots.
 *
 * <pre>
 * pot            name
 * shape          round, square, rectangular, or litres where only the volume is known
 * top mm         inner top: diameter, side, or the long side [of shape litres and of round pots with
 *                litres: from a table of common sizes]
 * base mm        base, along top mm (not needed where litres are stated)
 * height mm      inner height (not needed where litres are stated)
 * width mm       short side of the top of a rectangular pot
 * litres         volume to the brim; if stated it holds whatever the measures give
 * condition      growing condition of plants in it [none]
 * fill %         of the volume that is filled [90]
 * price          of one pot
 * pack           pots in a pack [1]
 * on hand        pots on hand [0]
 * reuse %        of emptied pots that can be used again [0]
 * empty kg       weight of the empty pot [0]
 * supplier, order lead months   as {@link SourceCells} says
 * </pre>
 */
public final class PotsTable {
  public static final String POT = "pot";
  private static final String SHAPE = "shape";
  private static final String TOP = "top mm";
  private static final String BASE = "base mm";
  private static final String HEIGHT = "height mm";
  private static final String WIDTH = "width mm";
  private static final String LITRES = "litres";
  private static final String CONDITION = "condition";
  private static final String FILL = "fill %";
  private static final String PRICE = "price";
  private static final String PACK = "pack";
  private static final String ON_HAND = "on hand";
  private static final String REUSE = "reuse %";
  private static final String EMPTY_KG = "empty kg";
  public static final TableFormat FORMAT =
      TableFormat.of("pots", POT, SHAPE, PRICE)
          .with(
              TOP,
              BASE,
              HEIGHT,
              WIDTH,
              LITRES,
              CONDITION,
              FILL,
              PACK,
              ON_HAND,
              REUSE,
              EMPTY_KG,
              SourceCells.SUPPLIER,
              SourceCells.LEAD);

  /** A stated volume may differ so much from the measures before it is remarked upon. */
  private static final double LABEL_TOLERANCE = 0.2;

  private PotsTable() {}

  public static Defined<Pot> read(Optional<Table> table, String currency) {
    return Defined.rows(
        new Names("pot", FORMAT.name()), table, POT, (name, row) -> pot(name, row, currency));
  }

  private static Optional<Pot> pot(String name, Row row, String currency) {
    row.needs(POT, SHAPE, PRICE);
    Measures measures = measures(row);
    Optional<String> condition = row.find(CONDITION, As.NAME).map(Texts::key);
    double fill = row.get(FILL, As.share(), 0.9);
    double price = row.get(PRICE, As.money(currency, Range.PRICE));
    int pack = row.get(PACK, As.whole(Range.from(1)), 1);
    double onHand = row.get(ON_HAND, As.number(Range.FROM_ZERO), 0.0);
    double reuse = row.get(REUSE, As.share(), 0.0);
    double emptyKg = row.get(EMPTY_KG, As.number(Range.FROM_ZERO), 0.0);
    Source source = SourceCells.of(row);
    Optional<Pot> pot =
        row.accept(
            () ->
                Pot.named(name, measures.shape)
                    .topMm(measures.top)
                    .baseMm(measures.base)
                    .heightMm(measures.height)
                    .widthMm(measures.width)
                    .statedLitres(measures.litres)
                    .condition(condition)
                    .fillShare(fill)
                    .price(price)
                    .pack(pack)
                    .onHand(onHand)
                    .reuseShare(reuse)
                    .emptyKg(emptyKg)
                    .source(source)
                    .build());
    pot.ifPresent(made -> compareLabel(row, made));
    return pot;
  }

  private record Measures(
      PotShape shape,
      double top,
      double base,
      double height,
      double width,
      OptionalDouble litres) {}

  private static Measures measures(Row row) {
    As<Double> length = As.number(Range.OVER_ZERO);
    PotShape shape = row.get(SHAPE, As.word(PotShape.class));
    boolean stated = row.has(LITRES) || shape == PotShape.LITRES;
    if (!row.isFailed()) {
      row.needs(neededFor(shape, stated));
    }
    Optional<Double> litres = row.find(LITRES, As.number(Range.POT));
    double top = top(row, shape, litres);
    double width = row.find(WIDTH, length).orElse(top);
    return new Measures(
        shape,
        top,
        row.find(BASE, length).orElse(0.0),
        row.find(HEIGHT, length).orElse(0.0),
        shape == PotShape.RECTANGULAR ? width : top,
        litres.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
  }

  private static String[] neededFor(PotShape shape, boolean stated) {
    if (shape == PotShape.LITRES) {
      return new String[] {LITRES};
    }
    if (stated) {
      return switch (shape) {
        case SQUARE -> new String[] {TOP};
        case RECTANGULAR -> new String[] {TOP, WIDTH};
        default -> new String[0];
      };
    }
    return shape == PotShape.RECTANGULAR
        ? new String[] {TOP, BASE, HEIGHT, WIDTH}
        : new String[] {TOP, BASE, HEIGHT};
  }

  private static double top(Row row, PotShape shape, Optional<Double> litres) {
    As<Double> length = As.number(Range.OVER_ZERO);
    boolean round = shape == PotShape.ROUND || shape == PotShape.LITRES;
    return round && litres.isPresent()
        ? row.get(TOP, length, PotTops.topMm(litres.get()))
        : row.find(TOP, length).orElse(0.0);
  }

  /** The label of a pot is not its volume: say so where they are far apart. */
  private static void compareLabel(Row row, Pot pot) {
    if (pot.statedLitres().isEmpty() && pot.brimLitres() > Range.POT.usualMost()) {
      String litres = Cell.Number.plain(Math.rint(pot.brimLitres()));
      row.remark(TOP, where -> ValueAdvice.potIsHuge(where, row.cell(TOP).shown(), litres));
    }
    if (pot.baseMm() > pot.topMm()) {
      row.remark(BASE, where -> DefinitionAdvice.baseOverTop(where, row.cell(BASE).shown()));
    }
    boolean measured = pot.baseMm() > 0 && pot.heightMm() > 0 && pot.shape() != PotShape.LITRES;
    if (pot.statedLitres().isEmpty() || !measured) {
      return;
    }
    double stated = pot.statedLitres().getAsDouble();
    double brim = withoutLabel(pot).brimLitres();
    if (Math.abs(brim - stated) > LABEL_TOLERANCE * brim) {
      row.remark(
          LITRES,
          where ->
              DefinitionAdvice.litresAgainstMeasures(
                  where, row.cell(LITRES).shown(), brim, stated));
    }
  }

  private static Pot withoutLabel(Pot pot) {
    return pot.but().statedLitres(OptionalDouble.empty()).build();
  }
}
