package growingon.buying.answer;

import growingon.buying.question.Choice;
import growingon.buying.question.Choice.Holding;
import growingon.buying.question.Move;
import growingon.buying.question.Question;
import growingon.nursery.market.Demand;
import java.util.ArrayList;
import java.util.List;

/**
 * A demand row of which more might be wanted.
 *
 * @param index its row in the nursery's demand
 */
record WantedMore(Question question, int index) {
  Demand row() {
    return question.nursery().demand().get(index);
  }

  /** Plants wanted a season. */
  double units() {
    return row().units().orElseThrow();
  }

  /** thick (oak) 2027/28. */
  String name() {
    return "%s (%s)%s"
        .formatted(
            row().grade(),
            row().species().orElse(row().ladder()),
            row().season().map(season -> " " + season).orElse(""));
  }

  /** All demand, of this row a share more. */
  List<Demand> demand(double more) {
    List<Demand> demand = new ArrayList<>(question.nursery().demand());
    demand.set(index, row().withUnits(1 + more));
    return demand;
  }

  /** Whether a move sells otherwise to the buyers of the row: what it came to says nothing then. */
  boolean isMetBy(Move move) {
    return move.changes().stream().anyMatch(this::isMetBy);
  }

  private boolean isMetBy(Move.Change change) {
    Choice choice = question.choice(change.choice());
    boolean isOfGrade =
        !(choice instanceof Holding holding)
            || holding
                .hold(change.value())
                .filter(it -> it.grade().equals(row().grade()))
                .isPresent();
    return choice.ladder().equals(row().ladder()) && isOfGrade;
  }
}
