package growingon.load.table.place;

import growingon.load.cell.Findings;
import growingon.load.cell.Range;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.Defined;
import growingon.load.table.NurseryShape;
import growingon.nursery.place.Layout;
import growingon.nursery.place.LiftFrom;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
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
  public static final Heading<String> PLACE = Heading.text("place").means("Name");
  private static final Heading<PlaceKind> KIND =
      Heading.text("kind", As.word(PlaceKind.class))
          .choice("place kind")
          .means("bench, tunnel, standing ground, field bed or quarantine");
  private static final Heading<String> CONDITION =
      Heading.named("condition")
          .means(
              "Growing condition of plants in its ground, as in the headings \"mm a year ...\" of species");
  private static final Heading<Double> SQUARE_METRES =
      Heading.number("square metres", As.number(Range.FROM_ZERO)).means("Whole area");
  private static final Heading<Double> USABLE =
      Heading.number("usable %", As.percent(new Range(0, 100, true)))
          .usual(Place.USUAL_USABLE)
          .means("Part of it on which plants can stand; the rest are paths");
  private static final Heading<Double> BENCH_DEPTH =
      Heading.number("bench depth mm", As.number(Range.OVER_ZERO))
          .expert()
          .means("Depth across which whole rows must fit");
  private static final Heading<Double> KG_PER_M2 =
      Heading.number("kg per m2", As.number(Range.OVER_ZERO))
          .means("Most it may carry; empty: no limit given");
  private static final Heading<Double> COST =
      Heading.money("cost per m2 a year").usual(0.0).means("Used or not");
  private static final Heading<Layout> LAYOUT =
      Heading.text("layout", As.word(Layout.class))
          .choice("layout")
          .expert()
          .usual(Layout.SQUARE)
          .means("square or offset rows");
  private static final Heading<LiftFrom> LIFT_FROM =
      Heading.text("lift from", As.word(LiftFrom.class))
          .choice("lift from")
          .expert()
          .ifEmpty("bench for a bench, else ground")
          .means("Height from which pots are lifted");
  private static final Heading<YearMonth> FROM =
      Heading.month("from").expert().means("First month in which it can be used");
  private static final Heading<YearMonth> UNTIL =
      Heading.month("until").expert().means("Last month in which it can be used");
  private static final Heading<Double> MINUTES_A_SALE =
      Heading.number("minutes a sale", As.number(Range.FROM_ZERO))
          .expert()
          .means("Minutes of work to sell one plant from it; empty: the setting minutes a sale");
  private static final Heading<Double> EXTRA =
      Heading.money(NurseryShape.EXTRA_SQUARE_METRE)
          .expert()
          .means("What a square metre more would cost a month, for buying; empty: the setting");
  public static final TableFormat FORMAT =
      TableFormat.of(
          "places",
          PLACE.needed(),
          KIND.needed(),
          SQUARE_METRES.needed(),
          USABLE,
          CONDITION,
          COST,
          KG_PER_M2,
          BENCH_DEPTH,
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
    PlaceKind kind = row.get(KIND);
    Optional<String> condition = row.find(CONDITION).map(Texts::key);
    double squareMetres = row.get(SQUARE_METRES);
    double usable = row.get(USABLE);
    OptionalDouble benchDepth = As.optional(row.find(BENCH_DEPTH));
    OptionalDouble kgPerM2 = As.optional(row.find(KG_PER_M2));
    double cost = row.get(COST.reading(As.money(currency, Range.FROM_ZERO)));
    Layout layout = row.get(LAYOUT);
    LiftFrom liftFrom = row.get(LIFT_FROM, usualLift(kind));
    Optional<YearMonth> from = row.find(FROM);
    Optional<YearMonth> until = row.find(UNTIL);
    OptionalDouble sale = As.optional(row.find(MINUTES_A_SALE));
    OptionalDouble extra =
        As.optional(row.find(EXTRA.reading(As.money(currency, Range.FROM_ZERO))));
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
