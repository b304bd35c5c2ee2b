package growingon.load.table.place;

import growingon.load.cell.Range;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.MonthSpans;
import growingon.load.row.Row;
import growingon.load.row.Wildcard;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.nursery.place.Care;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.time.MonthSpan;
import java.util.List;
import java.util.Optional;

/**
 * Watering, weeding and the like by area in use.
 *
 * <pre>
 * place kind                 bench, tunnel, standing ground, field bed, quarantine, or * for all
 * from month, to month       words or 1 to 12 [the whole year]
 * minutes per m2 a month     for a square metre in use
 * cost per m2 a month        for a square metre in use [0]
 * </pre>
 */
public final class CareTable {
  private static final Heading<PlaceKind> KIND =
      Heading.text("place kind", As.word(PlaceKind.class))
          .choice("place kind")
          .means("Kind of place, or * for all");
  private static final Heading<Double> MINUTES =
      Heading.number("minutes per m2 a month", As.number(Range.FROM_ZERO))
          .means("Watering, weeding and the like, for a square metre in use");
  private static final Heading<Double> COST =
      Heading.money("cost per m2 a month").expert().usual(0.0).means("For a square metre in use");
  public static final TableFormat FORMAT =
      TableFormat.of(
          "care",
          KIND.needed(),
          MINUTES.needed(),
          MonthSpans.FROM.means("First month of the year"),
          MonthSpans.TO.means("Last month of the year"),
          COST);

  private CareTable() {}

  public static List<Care> read(Optional<Table> table, String currency) {
    return table.map(Table::rows).orElse(List.of()).stream()
        .map(row -> care(row, currency))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Care> care(Row row, String currency) {
    row.needs(KIND, MINUTES);
    Optional<PlaceKind> kind = Wildcard.isIn(row, KIND) ? Optional.empty() : row.find(KIND);
    MonthSpan months = MonthSpans.get(row);
    double minutes = row.get(MINUTES);
    double cost = row.get(COST.reading(As.money(currency, Range.FROM_ZERO)));
    return row.accept(() -> new Care(kind, months, minutes, cost));
  }
}
