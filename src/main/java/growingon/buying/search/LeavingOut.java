package growingon.buying.search;

import growingon.buying.question.Candidate;
import growingon.buying.question.Move;
import growingon.buying.question.Question;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Undoes changes that bring too little to be worth saying, that which brings least first.
 *
 * @param threshold a change that brings less is not worth saying
 */
record LeavingOut(Question question, Judge judge, double threshold) {

  /**
   * One after another, each valued again before it is undone, until all that is left is worth it.
   */
  Candidate oneByOne(Candidate from) {
    Candidate now = from;
    boolean undone = true;
    while (undone) {
      undone = false;
      for (Weighed each : small(now)) {
        if (judge.judge(now, List.of(each.move())).get(0).helps(-threshold)) {
          now = question.tidy(each.move().from(now));
          undone = true;
        }
      }
    }
    return now;
  }

  /**
   * The first 1, 2, 4, 8 … of them at once: so many that they bring no more together than each by
   * itself, but for what is not worth saying.
   *
   * @param seesAll values many changes together and drops none
   */
  Candidate together(Candidate from, Judge seesAll) {
    List<Weighed> small = small(from);
    List<Move> together = Taking.together(small);
    List<Judged> judged = seesAll.judge(from, together);
    Candidate least = from;
    double alone = 0;
    for (int i = 0, number = 0; i < together.size(); i++) {
      for (; number < together.get(i).changes().size(); number++) {
        alone += small.get(number).gain();
      }
      if (judged.get(i).helps(alone - threshold)) {
        least = question.tidy(together.get(i).from(from));
      }
    }
    return least;
  }

  private List<Weighed> small(Candidate from) {
    return Weighed.by(judge, from, undoings(from)).stream()
        .filter(each -> each.judged().helps(-threshold))
        .sorted(Comparator.comparingDouble(Weighed::gain).reversed())
        .toList();
  }

  private List<Move> undoings(Candidate from) {
    List<Move> undoings = new ArrayList<>();
    for (int choice = 0; choice < from.size(); choice++) {
      if (from.value(choice) != 0 && question.counts(from, choice)) {
        undoings.add(Move.of(choice, 0));
      }
    }
    return undoings;
  }
}
