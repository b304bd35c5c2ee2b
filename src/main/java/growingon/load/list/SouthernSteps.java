package growingon.load.list;

import growingon.load.cell.Cell;
import growingon.load.file.Tables;
import growingon.load.own.usual.UsualNursery;
import growingon.load.table.route.RoutesTable;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.ListAdvice;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Steps of a nursery south of the equator that stand as they are laid out for the north. */
final class SouthernSteps {
  private SouthernSteps() {}

  /** Those that are as they were fall half a year later; what is to be told of it. */
  static Optional<Problem> turn(Tables all, UsualNursery usual) {
    Map<List<String>, String> turned = usual.turnedSouth();
    List<Where> places = new ArrayList<>();
    all.change(
        RoutesTable.FORMAT,
        row -> {
          List<String> step =
              Stream.of("route", "step", "when").map(each -> row.cell(each).shown()).toList();
          Optional<String> when = Optional.ofNullable(turned.get(step));
          when.ifPresent(found -> places.add(row.where()));
          return when.map(found -> row.with("when", Cell.ofText(found), row.where())).orElse(row);
        });
    return places.isEmpty()
        ? Optional.empty()
        : Optional.of(ListAdvice.routesTurned(places.get(0), places.size()));
  }
}
