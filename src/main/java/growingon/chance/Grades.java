package growingon.chance;

import growingon.nursery.Grade;
import growingon.nursery.Ladder;
import growingon.nursery.Nursery;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Numbers the grades of all ladders of a nursery. */
final class Grades {
  private final Map<String, int[]> byLadder = new HashMap<>();
  private final List<Chances.GradeName> names = new ArrayList<>();

  Grades(Nursery nursery) {
    for (Ladder ladder : nursery.ladders().values()) {
      int[] numbers = new int[ladder.grades().size()];
      for (int grade = 0; grade < numbers.length; grade++) {
        Grade each = ladder.grades().get(grade);
        numbers[grade] = names.size();
        names.add(new Chances.GradeName(ladder.name(), each.name()));
      }
      byLadder.put(ladder.name(), numbers);
    }
  }

  int[] of(Ladder ladder) {
    return byLadder.get(ladder.name());
  }

  int size() {
    return names.size();
  }

  List<Chances.GradeName> names() {
    return names;
  }
}
