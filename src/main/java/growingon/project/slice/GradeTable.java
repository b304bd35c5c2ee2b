package growingon.project.slice;

import growingon.nursery.market.Grade;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * By how many grades of a ladder a trunk is thick enough for: which grade a plant has, and which it
 * sells as, while its training has gone on for some months. The same for all lots of the ladder, so
 * they share it, and it is never changed.
 */
final class GradeTable {
  private final int from;
  private final int until;

  /** The grade it has, −1 for none, whether or not it waits for a better one. */
  final int[] has;

  /** The grade it sells as, −1 for none. */
  final int[] sellsAs;

  /** Whether plants of any trunk sell. */
  final boolean anySells;

  private GradeTable(List<Grade> ladder, int from, int until) {
    int grades = ladder.size();
    this.from = from;
    this.until = until;
    this.has = IntStream.rangeClosed(0, grades).map(thick -> highestMet(ladder, thick)).toArray();
    this.sellsAs =
        IntStream.rangeClosed(0, grades)
            .map(thick -> waits(ladder, has[thick], thick) ? -1 : has[thick])
            .toArray();
    this.anySells = Arrays.stream(sellsAs).anyMatch(grade -> grade >= 0);
  }

  /**
   * All tables of a ladder, one after another as training goes on.
   *
   * @param ladder grades, lowest first
   */
  static GradeTable[] of(List<Grade> ladder) {
    int[] changes =
        ladder.stream()
            .flatMapToInt(
                grade ->
                    IntStream.of(
                        grade.leastTrainingMonths(),
                        grade.leastTrainingMonths() - grade.waitMonths()))
            .sorted()
            .distinct()
            .toArray();
    GradeTable[] tables = new GradeTable[changes.length + 2];
    int from = Grading.UNTRAINED;
    for (int i = 0; i < tables.length; i++) {
      int end = i == 0 ? Grading.UNTRAINED + 1 : Integer.MAX_VALUE;
      int until = i > 0 && i <= changes.length ? changes[i - 1] : end;
      tables[i] = new GradeTable(ladder, from, until);
      from = until;
    }
    return tables;
  }

  /** Of the tables of a ladder the one for so many months of training. */
  static GradeTable at(int trainingMonths, GradeTable[] tables) {
    int at = 0;
    while (!tables[at].holds(trainingMonths)) {
      at++;
    }
    return tables[at];
  }

  /**
   * Whether it is the one for so many months of training; negative where training is to start so
   * many months from now, {@link Grading#UNTRAINED} where it is not.
   */
  boolean holds(int trainingMonths) {
    return trainingMonths >= from && trainingMonths < until;
  }

  /** Whether training has gone on long enough for a grade. */
  static boolean isTrained(Grade grade, int trainingMonths) {
    return grade.leastTrainingMonths() <= Math.max(0, trainingMonths);
  }

  private int highestMet(List<Grade> ladder, int thickFor) {
    int best = thickFor - 1;
    while (best >= 0 && !isTrained(ladder.get(best), from)) {
      best--;
    }
    return best;
  }

  private boolean waits(List<Grade> ladder, int best, int thickFor) {
    return from != Grading.UNTRAINED
        && ladder.subList(best + 1, thickFor).stream()
            .anyMatch(grade -> grade.leastTrainingMonths() - (long) from <= grade.waitMonths());
  }
}
