package growingon.money;

import growingon.nursery.Nursery;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Ladder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Numbers the grades of all ladders of a nursery. */
public final class GradeNumbers {
  private final Map<String, int[]> byLadder = new HashMap<>();
  private final List<GradeName> names = new ArrayList<>();

  /** Numbers the grades of a nursery. */
  public GradeNumbers(Nursery nursery) {
    for (Ladder ladder : nursery.ladders().values()) {
      int[] numbers = new int[ladder.grades().size()];
      for (int grade = 0; grade < numbers.length; grade++) {
        Grade each = ladder.grades().get(grade);
        numbers[grade] = names.size();
        names.add(new GradeName(ladder.name(), each.name()));
      }
      byLadder.put(ladder.name(), numbers);
    }
  }

  /** Numbers of a ladder's grades, lowest first. */
  int[] of(Ladder ladder) {
    return byLadder.get(ladder.name());
  }

  /** How many grades there are. */
  public int size() {
    return names.size();
  }

  /** Their names, by number. */
  public List<GradeName> names() {
    return names;
  }
}
