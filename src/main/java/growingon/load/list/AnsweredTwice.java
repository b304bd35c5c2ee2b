package growingon.load.list;

import growingon.load.cell.Findings;
import growingon.load.file.Tables;
import growingon.load.row.Row;
import growingon.load.source.Answer;
import growingon.problem.advice.ListAdvice;
import java.util.List;
import java.util.stream.Stream;

/** Values that were changed in their table and answered in the sheet to fill as well. */
final class AnsweredTwice {
  private AnsweredTwice() {}

  /** Tells which of the two holds. */
  static void tell(List<Answer> answers, Tables typed, Findings findings) {
    answers.forEach(answer -> tell(answer, typed, findings));
  }

  private static void tell(Answer answer, Tables typed, Findings findings) {
    Stream<Row> rows =
        Tables.formats().stream()
            .filter(format -> format.name().equals(answer.table()))
            .flatMap(format -> typed.find(format).stream())
            .flatMap(table -> table.rows().stream());
    rows.filter(row -> !answer.usual().isEmpty() && row.isCalled(answer.row()))
        .forEach(
            row -> {
              String there = row.cell(answer.column()).shown();
              boolean changed = !there.isEmpty() && !UsualCells.isSame(there, answer.usual());
              if (changed && !UsualCells.isSame(there, answer.cell().shown())) {
                findings.add(
                    ListAdvice.answeredTwice(
                        row.where().column(answer.column()),
                        there,
                        answer.cell().shown(),
                        answer.where()));
              }
            });
  }
}
