package growingon.load.table;

import growingon.load.cell.As;
import growingon.load.cell.Findings;
import growingon.load.cell.Names;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.load.cell.Texts;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.nursery.Layout;
import growingon.nursery.LiftFrom;
import growingon.nursery.Place;
import growingon.nursery.PlaceKind;
import growingon.problem.advice.DefinitionAdvice;
import growingon.problem.advice.FileAdvice;
import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Places where plants stand. A nursery without this table gets no answer about space.
 *
 * <pre>
 * place               name
 * kind                bench, tunnel, standing ground, field bed or quarantine
 * condition           growing condition of plants in it that have no pot, or that stand in a field
 *                     bed [none]
 * square metres       whole floor or bench area
 * usable %            of it on which plants can stand [70]
 * bench depth mm      depth across which whole rows must fit [none]
 * kg per m2           greatest load [none]
 * cost per m2 a year  used or not [0]
 * layout              square or offset [square]
 * lift from           bench or ground: height from which pots are lifted [bench of a bench, else
 *                     ground]
 * from, until         first and last month in which it can be used [always]
 * minutes a sale      minutes of work to sell one plant from it [the nursery's]
 * extra square metre costs a month  what more of it would cost, for buying [the nursery's]
 * </pre>
 */
public final class PlacesTable {
  public static final String PLACE = "place";
  private static final String KIND = "kind";
  private static final String CONDITION = "condition";
  private static final String SQUARE_METRES = "square metres";
  private static final String USABLE = "usable %";
  private static final String BENCH_DEPTH = "bench depth mm";
  private static final String KG_PER_M2 = "kg per m2";
  private static final String COST = "cost per m2 a year";
  private static final String LAYOUT = "layout";
  private static final String LIFT_FROM = "lift from";
  private static final String FROM = "from";
  private static final String UNTIL = "until";
  private static final String MINUTES_A_SALE = "minutes a sale";
  private static final String EXTRA = NurseryShape.EXTRA_SQUARE_METRE;
  public static final TableFormat FORMAT =
      TableFormat.of("places", PLACE, KIND, SQUARE_METRES)
          .with(
              CONDITION,
              USABLE,
              BENCH_DEPTH,
              KG_PER_M2,
              COST,
              LAYOUT,
              LIFT_FROM,
              FROM,
              UNTIL,
              MINUTES_A_SALE,
              EXTRA);

  private PlacesTable() {}

  public static Defined<Place> read(Optional<Table> table, String currency, Findings findings) {
    Names names = new Names("place", FORMAT.name());
    if (table.isEmpty()) {
      findings.add(FileAdvice.noPlaces());
      return Defined.none(names.ignore());
    }
    return Defined.rows(names, table, PLACE, (name, row) -> place(name, row, currency));
  }

  private static Optional<Place> place(String name, Row row, String currency) {
    row.needs(PLACE, KIND, SQUARE_METRES);
    As<Double> length = As.number(Range.OVER_ZERO);
    PlaceKind kind = row.get(KIND, As.word(PlaceKind.class));
    Optional<String> condition = row.find(CONDITION, As.NAME).map(Texts::key);
    double squareMetres = row.get(SQUARE_METRES, As.number(Range.FROM_ZERO));
    double usable = row.get(USABLE, As.percent(new Range(0, 100, true)), Place.USUAL_USABLE);
    OptionalDouble benchDepth = As.optional(row.find(BENCH_DEPTH, length));
    OptionalDouble kgPerM2 = As.optional(row.find(KG_PER_M2, length));
    double cost = row.get(COST, As.money(currency, Range.FROM_ZERO), 0.0);
    Layout layout = row.get(LAYOUT, As.word(Layout.class), Layout.SQUARE);
    LiftFrom liftFrom = row.get(LIFT_FROM, As.word(LiftFrom.class), usualLift(kind));
    Optional<YearMonth> from = row.find(FROM, As.MONTH);
    Optional<YearMonth> until = row.find(UNTIL, As.MONTH);
    OptionalDouble sale = As.optional(row.find(MINUTES_A_SALE, As.number(Range.FROM_ZERO)));
    OptionalDouble extra = As.optional(row.find(EXTRA, As.money(currency, Range.FROM_ZERO)));
    if (from.isPresent() && until.isPresent() && until.get().isBefore(from.get())) {
      row.fail(
          UNTIL, where -> DefinitionAdvice.closesBeforeOpening(where, until.get(), from.get()));
    }
    return row.accept(
        () ->
            Place.named(name, kind)
                .condition(condition)
                .squareMetres(squareMetres)
                .usableShare(usable)
                .benchDepthMm(benchDepth)
                .kgPerM2(kgPerM2)
                .costPerM2Year(cost)
                .layout(layout)
                .liftFrom(liftFrom)
                .from(from)
                .until(until)
                .minutesASale(sale)
                .extraM2Cost(extra)
                .build());
  }

  private static LiftFrom usualLift(PlaceKind kind) {
    return kind == PlaceKind.BENCH ? LiftFrom.BENCH : LiftFrom.GROUND;
  }
}
