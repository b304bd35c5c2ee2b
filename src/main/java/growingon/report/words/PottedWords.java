package growingon.report.words;

import growingon.project.history.Happening;
import growingon.report.figures.Context;
import growingon.report.text.Phrases;
import growingon.whole.WholeLot;
import java.util.List;
import java.util.Optional;

/** What is potted soon, in one line. */
final class PottedWords {

  private PottedWords() {}

  /** The line for the terminal; empty if nothing is potted in the next twelve months. */
  static Optional<String> headline(Context context) {
    Phrases say = context.say();
    int lots = 0;
    long trees = 0;
    double litres = 0;
    for (WholeLot lot : context.whole().lots()) {
      List<Happening> happenings = lot.history().happenings();
      boolean any = false;
      for (int i = 0; i < happenings.size(); i++) {
        Happening done = happenings.get(i);
        if (done.month() < Context.NEXT_MONTHS && done.pot().isPresent() && lot.workedOn(i) > 0) {
          any = true;
          trees += lot.workedOn(i);
          litres += done.substrateLitres();
        }
      }
      lots += any ? 1 : 0;
    }
    return lots == 0
        ? Optional.empty()
        : Optional.of(
            "Potted in the next twelve months: %s, %s, %s litres of mix."
                .formatted(
                    say.counted(lots, "lot", "lots"),
                    say.counted(trees, "tree", "trees"),
                    say.whole(litres)));
  }
}
