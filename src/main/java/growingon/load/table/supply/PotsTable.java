package growingon.load.table.supply;

import growingon.load.cell.Range;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.Defined;
import growingon.nursery.supply.Pot;
import growingon.nursery.supply.PotShape;
import growingon.nursery.supply.Source;
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
  public static final Heading<String> POT = Heading.text("pot").means("Name of the pot");
  private static final Heading<PotShape> SHAPE =
      Heading.text("shape", As.word(PotShape.class))
          .choice("shape")
          .means("round, square, rectangular, or litres where only the volume is known");
  private static final Heading<Double> TOP =
      Heading.number("top mm", As.number(Range.OVER_ZERO))
          .means(
              "Inside at the top: diameter, side, or long side; not needed for round pots with litres");
  private static final Heading<Double> BASE =
      Heading.number("base mm", As.number(Range.OVER_ZERO)).expert().means("Inside at the base");
  private static final Heading<Double> HEIGHT =
      Heading.number("height mm", As.number(Range.OVER_ZERO)).expert().means("Inside height");
  private static final Heading<Double> WIDTH =
      Heading.number("width mm", As.number(Range.OVER_ZERO))
          .expert()
          .means("Short side of the top of a rectangular pot");
  private static final Heading<Double> LITRES =
      Heading.number("litres", As.number(Range.POT))
          .means("Volume to the brim; if empty it is worked out from the measures");
  private static final Heading<String> CONDITION =
      Heading.named("condition")
          .means(
              "Growing condition of plants in it, as in the headings \"mm a year ...\" of species");
  private static final Heading<Double> FILL =
      Heading.number("fill %", As.share())
          .expert()
          .usual(0.9)
          .means("Part of the volume that is filled");
  private static final Heading<Double> PRICE = Heading.money("price").means("Of one pot");
  private static final Heading<Integer> PACK =
      Heading.number("pack", As.whole(Range.from(1))).usual(1).means("Pots in a pack");
  private static final Heading<Double> ON_HAND =
      Heading.number("on hand", As.number(Range.FROM_ZERO)).usual(0.0).means("Pots you have");
  private static final Heading<Double> REUSE =
      Heading.number("reuse %", As.share())
          .usual(0.0)
          .means("How many in 100 emptied pots can be used again");
  private static final Heading<Double> EMPTY_KG =
      Heading.number("empty kg", As.number(Range.FROM_ZERO))
          .usual(0.0)
          .means("Weight of the empty pot");
  public static final TableFormat FORMAT =
      TableFormat.of(
          "pots",
          POT.needed(),
          SHAPE.needed(),
          PRICE.needed(),
          LITRES,
          TOP,
          CONDITION,
          PACK,
          ON_HAND,
          REUSE,
          EMPTY_KG,
          SourceCells.SUPPLIER,
          SourceCells.LEAD,
          BASE,
          HEIGHT,
          WIDTH,
          FILL);

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
    Optional<String> condition = row.find(CONDITION).map(Texts::key);
    double fill = row.get(FILL);
    double price = row.get(PRICE.reading(As.money(currency, Range.PRICE)));
    int pack = row.get(PACK);
    double onHand = row.get(ON_HAND);
    double reuse = row.get(REUSE);
    double emptyKg = row.get(EMPTY_KG);
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
    PotShape shape = row.get(SHAPE);
    boolean stated = row.has(LITRES) || shape == PotShape.LITRES;
    if (!row.isFailed()) {
      row.needs(neededFor(shape, stated));
    }
    Optional<Double> litres = row.find(LITRES);
    double top = top(row, shape, litres);
    double width = row.find(WIDTH).orElse(top);
    return new Measures(
        shape,
        top,
        row.find(BASE).orElse(0.0),
        row.find(HEIGHT).orElse(0.0),
        shape == PotShape.RECTANGULAR ? width : top,
        litres.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
  }

  private static String[] neededFor(PotShape shape, boolean stated) {
    if (shape == PotShape.LITRES) {
      return new String[] {LITRES.name()};
    }
    if (stated) {
      return switch (shape) {
        case SQUARE -> new String[] {TOP.name()};
        case RECTANGULAR -> new String[] {TOP.name(), WIDTH.name()};
        default -> new String[0];
      };
    }
    return shape == PotShape.RECTANGULAR
        ? new String[] {TOP.name(), BASE.name(), HEIGHT.name(), WIDTH.name()}
        : new String[] {TOP.name(), BASE.name(), HEIGHT.name()};
  }

  private static double top(Row row, PotShape shape, Optional<Double> litres) {
    As<Double> length = As.number(Range.OVER_ZERO);
    boolean round = shape == PotShape.ROUND || shape == PotShape.LITRES;
    return round && litres.isPresent()
        ? row.get(TOP, PotTops.topMm(litres.get()))
        : row.find(TOP).orElse(0.0);
  }

  /** The label of a pot is not its volume: say so where they are far apart. */
  private static void compareLabel(Row row, Pot pot) {
    if (pot.statedLitres().isEmpty() && pot.brimLitres() > Range.POT.usualMost()) {
      row.remark(
          TOP, where -> ValueAdvice.potIsHuge(where, row.cell(TOP).shown(), pot.brimLitres()));
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
    return pot.with().statedLitres(OptionalDouble.empty()).build();
  }
}
