package growingon.report.figures;

import growingon.nursery.Nursery;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Ladder;
import growingon.report.model.Colours;
import java.util.ArrayList;
import java.util.List;

/** Every grade of every ladder in one order, with what it is called and its colour. */
public final class Grades {
  /**
   * A grade.
   *
   * @param ladder name of its ladder
   * @param index its index on it, 0 = lowest
   * @param name its own name
   * @param label as shown: its name, with the ladder's where two ladders have a grade of that name
   * @param colour the same in every chart
   */
  public record Named(String ladder, int index, String name, String label, int colour) {}

  private final List<Named> all = new ArrayList<>();

  Grades(Nursery nursery) {
    List<String> names =
        nursery.ladders().values().stream()
            .flatMap(ladder -> ladder.grades().stream())
            .map(Grade::name)
            .toList();
    for (Ladder ladder : nursery.ladders().values()) {
      for (int index = 0; index < ladder.grades().size(); index++) {
        String name = ladder.grades().get(index).name();
        boolean alone = names.indexOf(name) == names.lastIndexOf(name);
        String label = alone ? name : name + " (" + ladder.name() + ")";
        all.add(new Named(ladder.name(), index, name, label, Colours.grade(index)));
      }
    }
  }

  /** All of them, ladder by ladder, lowest first. */
  public List<Named> all() {
    return all;
  }

  /**
   * The panel of a chart that a grade stands in: its ladder, or the part of a longer ladder, named
   * by its lowest and highest grade.
   */
  public String panel(Named grade) {
    List<String> names =
        all.stream().filter(each -> each.ladder().equals(grade.ladder())).map(Named::name).toList();
    if (names.size() <= Colours.STEPS) {
      return grade.ladder();
    }
    int first = grade.index() - grade.index() % Colours.STEPS;
    int last = Math.min(names.size(), first + Colours.STEPS) - 1;
    String part = first == last ? "" : " to " + names.get(last);
    return "%s, %s%s".formatted(grade.ladder(), names.get(first), part);
  }

  /** Place of a grade in {@link #all}. */
  public int indexOf(String ladder, int grade) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).ladder().equals(ladder) && all.get(i).index() == grade) {
        return i;
      }
    }
    throw new IllegalArgumentException("no grade " + grade + " on ladder " + ladder);
  }
}
