package growingon.project;

import growingon.project.history.Recorder;
import growingon.project.lot.Luck;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/**
 * Runs a programme again and again, by one thread at a time. What its lots need is made once, and
 * filled again for each run, as new memory costs more than the work in it.
 */
public final class Reruns {
  private final Programme programme;
  private final IntFunction<Recorder> recorders;
  private final List<LotState> lots = new ArrayList<>();
  private Run run;

  Reruns(Programme programme, IntFunction<Recorder> recorders) {
    this.programme = programme;
    this.recorders = recorders;
  }

  /** Runs the months once; recorders are told from the beginning again. */
  public void run(Luck luck) {
    if (run == null) {
      run = new Run(programme, luck);
      lots.addAll(run.lots(recorders));
    } else {
      run.begin(luck);
      lots.forEach(lot -> lot.begin(run));
    }
    run.run(lots);
  }
}
