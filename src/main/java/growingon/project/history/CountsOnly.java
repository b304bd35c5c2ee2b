package growingon.project.history;

import java.util.HashMap;
import java.util.Map;

/** Takes down nothing but how plants are just before they are counted. */
public final class CountsOnly extends Unheard {
  private final Map<Integer, BeforeCount> months = new HashMap<>();

  /** How plants were, by month. */
  public Map<Integer, BeforeCount> months() {
    return months;
  }

  @Override
  public boolean asksForCounts() {
    return true;
  }

  @Override
  public void beforeCount(int month, BeforeCount how) {
    months.put(month, how);
  }
}
