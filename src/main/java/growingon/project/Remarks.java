package growingon.project;

import growingon.nursery.number.Writing;
import growingon.nursery.route.StepsDone;
import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Severity;
import growingon.problem.Where;
import java.time.YearMonth;

/** Sentences about what a projection had to decide. */
final class Remarks {
  private Remarks() {}

  static Problem lateStep(
      String lot, String step, YearMonth due, YearMonth done, int years, Writing writing) {
    String moved =
        years == 0
            ? "its later dated steps stay as they are"
            : "its later dated steps move by "
                + MarkedText.number(years)
                + (years == 1 ? " year" : " years");
    return new Problem(
        Severity.NOTICE,
        Reason.ASSUMED,
        "lot %s: step %s was due in %s and is done in %s; %s"
            .formatted(lot, step, writing.month(due), writing.month(done), moved),
        Where.NOWHERE,
        "",
        "if it is done already, name it as last step in the stock list");
  }

  static Problem lastStepDisagrees(String lot, String step, String potOfStep, String potOfLot) {
    return new Problem(
        Severity.WARNING,
        Reason.CONTRADICTION,
        "lot %s: by its dates the last step done is %s, which would leave it in pot %s"
            .formatted(lot, step, potOfStep),
        Where.NOWHERE,
        "the stock list says " + potOfLot,
        "type the last step done into the stock list");
  }

  static Problem clash(String lot, StepsDone.Clash clash, Writing writing) {
    return new Problem(
        Severity.WARNING,
        Reason.CONTRADICTION,
        "lot %s: by %s the step %s was done in %s, but %s lies in %s"
            .formatted(
                lot,
                clash.heading(),
                clash.step(),
                writing.month(clash.month()),
                clash.before(),
                writing.month(clash.earliest())),
        Where.NOWHERE,
        "",
        "correct one of them in the stock list; the plan goes on from what is typed");
  }

  static Problem standsInItsPot(String lot, String step, String place) {
    return new Problem(
        Severity.NOTICE,
        Reason.ASSUMED,
        "lot %s: the step %s sets it on the field bed %s in its pot".formatted(lot, step, place),
        Where.NOWHERE,
        "",
        "if it is planted out, write none under pot in that step, or mark its root work");
  }

  static Problem noQuarantine(String lot) {
    return new Problem(
        Severity.WARNING,
        Reason.MISSING,
        "lot %s is to stand apart, but the nursery has no quarantine place; it stands in its own"
                .formatted(lot)
            + " place until it is released",
        Where.NOWHERE,
        "",
        "add a place of the kind quarantine, or set apart months to 0");
  }
}
