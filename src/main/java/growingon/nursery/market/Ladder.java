package growingon.nursery.market;

import growingon.nursery.number.Check;
import java.util.List;

/**
 * A grade ladder, lowest grade first; least trunks do not fall on the way up.
 *
 * @param name as species name it
 * @param grades lowest first, at least one
 */
public record Ladder(String name, List<Grade> grades) {
  public Ladder {
    Check.named(name, "a ladder");
    grades = List.copyOf(grades);
    Check.that(!grades.isEmpty(), "a ladder needs a grade", name);
    for (int i = 1; i < grades.size(); i++) {
      Check.that(
          grades.get(i).leastTrunkMm() >= grades.get(i - 1).leastTrunkMm(),
          "least trunks must not fall up the ladder " + name,
          grades.get(i).name());
    }
  }

  /** Index of a grade, 0 = lowest; −1 if the ladder does not have it. */
  public int indexOf(String grade) {
    for (int i = 0; i < grades.size(); i++) {
      if (grades.get(i).name().equals(grade)) {
        return i;
      }
    }
    return -1;
  }
}
