package growingon.load.own.usual;

import growingon.load.own.sheet.SheetCell;
import growingon.load.own.size.PotSize;
import growingon.load.own.text.MoneyText;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a season sells by the usual units and prices.
 *
 * @param trees of all species and grades
 * @param sales what they bring
 */
public record UsualSeason(double trees, double sales) {
  /** The row of to fill that says what was sold last year, and its two columns. */
  public static final String LAST_YEAR = "last year";

  public static final String SALES = "sales";
  public static final String TREES = "trees";

  static UsualSeason of(List<Map<String, String>> demand) {
    return new UsualSeason(
        ofAllSpecies(demand).mapToDouble(row -> number(row, "units")).sum(),
        ofAllSpecies(demand).mapToDouble(row -> number(row, "units") * number(row, "price")).sum());
  }

  private static Stream<Map<String, String>> ofAllSpecies(List<Map<String, String>> demand) {
    return demand.stream().filter(row -> row.get("species").equals("*"));
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** An amount or a number as people write it. */
  public static OptionalDouble amount(String text) {
    return MoneyText.of(SheetCell.of(text))
        .value()
        .map(money -> OptionalDouble.of(money.amount()))
        .orElse(OptionalDouble.empty());
  }

  /** A number as a cell. */
  public static String written(double number) {
    return PotSize.plain(number);
  }
}
