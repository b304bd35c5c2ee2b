package growingon.project;

import growingon.nursery.Scenario;
import growingon.project.history.BeforeCount;
import growingon.project.history.CountsOnly;
import growingon.project.lot.Facts;
import growingon.project.lot.Luck;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Projects a nursery's lots over the months of a plan, as src/doc/model.md says under "How the plan
 * is reckoned".
 */
public final class Projector {
  private Projector() {}

  /**
   * The plan's line: expected numbers of plants, month by month.
   *
   * @param scenario a checked scenario
   * @return what happens to every lot
   * @throws IllegalStateException if plants are lost or made, which is a fault of the program
   */
  public static Projection project(Scenario scenario) {
    return project(Programme.of(scenario));
  }

  /** The same of a scenario that is made ready already. */
  public static Projection project(Programme programme) {
    return programme.expected();
  }

  /**
   * The plan's line from what is there: what is known to have happened takes the place of what was
   * expected. Besides, it takes down how lots stand at every month's end.
   *
   * @param scenario a checked scenario
   * @param facts what is known; {@link Facts#NONE} for the plan's line as it is
   * @throws IllegalStateException if plants are lost or made, which is a fault of the program
   */
  public static Projection project(Scenario scenario, Facts facts) {
    return new Run(Programme.of(scenario), Luck.NONE, facts).withHistories(true);
  }

  /**
   * The same without how lots stand at every month's end, for who runs it again and again.
   *
   * @param scenario a checked scenario
   * @param facts what is known
   */
  public static Projection projectKnown(Scenario scenario, Facts facts) {
    return new Run(Programme.of(scenario), Luck.NONE, facts).withHistories(false);
  }

  /**
   * The same where nothing is asked but how plants are just before they are counted, which takes a
   * small part of the time.
   *
   * @return by lot and month
   */
  public static Map<String, Map<Integer, BeforeCount>> countsKnown(Scenario scenario, Facts facts) {
    Programme programme = Programme.of(scenario);
    List<CountsOnly> counts = programme.lots().stream().map(each -> new CountsOnly()).toList();
    new Run(programme, Luck.NONE, facts).withRecorders(counts::get);
    Map<String, Map<Integer, BeforeCount>> byLot = new HashMap<>();
    for (int i = 0; i < counts.size(); i++) {
      byLot.put(programme.lots().get(i).lot.name(), counts.get(i).months());
    }
    return byLot;
  }
}
