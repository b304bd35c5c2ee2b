package growingon.load.own.lot;

import java.time.YearMonth;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What a list states of a lot in columns of the stock table that are read as they stand.
 *
 * @param cells by heading of ours, written as the stock table reads them
 */
public record Stated(Map<String, String> cells) {
  public static final String COUNTED = "counted";
  public static final String FIRST = "first %";
  public static final String SECOND = "second %";
  public static final String PLANTS = "plants per m2";
  public static final String GAP = "gap mm";

  public Stated {
    cells = Collections.unmodifiableMap(new TreeMap<>(cells));
  }

  /** Month of the count. */
  public Optional<YearMonth> counted() {
    return Optional.ofNullable(cells.get(COUNTED)).map(YearMonth::parse);
  }

  /** Plants on a square metre. */
  public OptionalDouble plantsAM2() {
    return number(PLANTS);
  }

  /** Free space between pots, mm. */
  public OptionalDouble gapMm() {
    return number(GAP);
  }

  private OptionalDouble number(String heading) {
    String text = cells.get(heading);
    return text == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
  }

  /**
   * Puts what is stated into the row of the stock table, in place of what is usual.
   *
   * @param arrived month in which the lot came
   * @param now the plan's first month: what is known cannot lie behind it
   */
  public void put(Map<String, String> row, YearMonth arrived, YearMonth now) {
    cells.forEach(
        (heading, cell) -> {
          switch (heading) {
            case COUNTED -> {
              if (!YearMonth.parse(cell).isBefore(arrived)) {
                past(row, heading, cell, now);
              }
            }
            case "root work", "training since" -> past(row, heading, cell, now);
            case PLANTS -> {
              row.remove(GAP);
              row.put(heading, cell);
            }
            default -> row.put(heading, cell);
          }
        });
  }

  private static void past(Map<String, String> row, String heading, String cell, YearMonth now) {
    if (!YearMonth.parse(cell).isAfter(now)) {
      row.put(heading, cell);
    }
  }
}
