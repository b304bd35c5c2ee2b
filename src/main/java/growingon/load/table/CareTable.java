package growingon.load.table;

import growingon.load.cell.As;
import growingon.load.cell.MonthSpans;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.load.cell.Wildcard;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.nursery.Care;
import growingon.nursery.MonthSpan;
import growingon.nursery.PlaceKind;
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
  private static final String KIND = "place kind";
  private static final String MINUTES = "minutes per m2 a month";
  private static final String COST = "cost per m2 a month";
  public static final TableFormat FORMAT =
      TableFormat.of("care", KIND, MINUTES).with(MonthSpans.FROM, MonthSpans.TO, COST);

  private CareTable() {}

  public static List<Care> read(Optional<Table> table, String currency) {
    return table.map(Table::rows).orElse(List.of()).stream()
        .map(row -> care(row, currency))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Care> care(Row row, String currency) {
    row.needs(KIND, MINUTES);
    Optional<PlaceKind> kind =
        Wildcard.isIn(row, KIND) ? Optional.empty() : row.find(KIND, As.word(PlaceKind.class));
    MonthSpan months = MonthSpans.get(row);
    double minutes = row.get(MINUTES, As.number(Range.FROM_ZERO));
    double cost = row.get(COST, As.money(currency, Range.FROM_ZERO), 0.0);
    return row.accept(() -> new Care(kind, months, minutes, cost));
  }
}
