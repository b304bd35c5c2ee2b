package growingon.load.list;

import growingon.load.cell.Cell;
import growingon.load.file.Tables;
import growingon.load.own.usual.UsualNursery;
import growingon.load.own.usual.UsualSeason;
import growingon.load.row.Row;
import growingon.load.source.Answer;
import growingon.load.table.market.DemandTable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What was sold last year, and how many trees that was: usual units and prices are as many times as
 * much, so that a season sells so many and brings so much. What the list or the grower states of
 * prices and units stays.
 */
record LastYear(OptionalDouble sales, OptionalDouble trees) {
  private static final String UNITS = "units";
  private static final String PRICE = "price";

  static LastYear of(List<Answer> answers) {
    return new LastYear(said(answers, UsualSeason.SALES), said(answers, UsualSeason.TREES));
  }

  private static OptionalDouble said(List<Answer> answers, String column) {
    return answers.stream()
        .filter(LastYear::isOne)
        .filter(answer -> answer.column().equals(column))
        .flatMapToDouble(answer -> UsualSeason.amount(answer.cell().shown()).stream())
        .filter(value -> value > 0)
        .findFirst();
  }

  /** Whether an answer says it. */
  static boolean isOne(Answer answer) {
    return answer.table().equals(DemandTable.FORMAT.name())
        && answer.row().equals(UsualSeason.LAST_YEAR);
  }

  /** Puts it into the demand of a nursery, where that is as it was laid out. */
  void scale(Tables all, UsualNursery usual) {
    if (sales.isEmpty() && trees.isEmpty()) {
      return;
    }
    UsualSeason season = usual.season();
    double sold = trees.orElse(season.trees() * sales.orElse(0) / season.sales());
    double byUnits = sold / season.trees();
    double byPrice = sales.orElse(season.sales() * byUnits) / season.sales() / byUnits;
    Map<String, Map<String, String>> laidOut = new HashMap<>();
    usual.tables().get(DemandTable.FORMAT.name()).forEach(row -> laidOut.put(name(row), row));
    all.change(
        DemandTable.FORMAT,
        row -> {
          Map<String, String> its = laidOut.getOrDefault(name(row), Map.of());
          Row scaled = times(row, its, UNITS, byUnits, 1);
          return row.cell("species").shown().equals("*")
              ? times(scaled, its, PRICE, byPrice, 100)
              : scaled;
        });
  }

  private static String name(Map<String, String> row) {
    return String.join("|", row.get("species"), row.get("ladder"), row.get("grade"));
  }

  private static String name(Row row) {
    return String.join(
        "|", row.cell("species").shown(), row.cell("ladder").shown(), row.cell("grade").shown());
  }

  /**
   * A cell that is as it was laid out times a factor, in so many parts of one; at least one part.
   */
  private static Row times(
      Row row, Map<String, String> laidOut, String column, double factor, int parts) {
    String now = row.cell(column).shown();
    if (!now.equals(laidOut.get(column))) {
      return row;
    }
    double scaled = Math.max(1, Math.rint(Double.parseDouble(now) * factor * parts)) / parts;
    return row.with(column, Cell.ofText(UsualSeason.written(scaled)), row.where());
  }
}
