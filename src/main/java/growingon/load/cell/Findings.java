package growingon.load.cell;

import growingon.nursery.Assumption;
import growingon.problem.Problem;
import growingon.problem.Where;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** What comes up while reading: every problem, and every value used with where it came from. */
public final class Findings {
  /** Source of a value that no file states. */
  public static final String DEFAULT = "default";

  private final List<Problem> problems = new ArrayList<>();
  private final List<Assumption> assumptions = new ArrayList<>();
  private final Map<String, String> texts = new HashMap<>();

  public void add(Problem problem) {
    problems.add(problem);
  }

  public void add(Assumption assumption) {
    assumptions.add(assumption);
  }

  /** A text that many rows share, such as a species or a place, kept once for all of them. */
  public String once(String text) {
    return texts.computeIfAbsent(text, each -> each);
  }

  /** Of what was found so far that of one sheet, or of no row in particular. */
  public Findings about(Where sheet) {
    Findings some = new Findings();
    problems.stream()
        .filter(each -> isOfNoRow(each.where()) || isIn(each.where(), sheet))
        .forEach(some::add);
    assumptions.forEach(some::add);
    return some;
  }

  /** What was found, without some of the problems. */
  public Findings without(Predicate<Problem> which) {
    Findings some = new Findings();
    problems.stream().filter(which.negate()).forEach(some::add);
    assumptions.forEach(some::add);
    return some;
  }

  private static boolean isOfNoRow(Where place) {
    return place.sheet().isEmpty() && place.row() == 0;
  }

  private static boolean isIn(Where place, Where sheet) {
    return place.file().equals(sheet.file()) && place.sheet().equals(sheet.sheet());
  }

  public List<Problem> problems() {
    return List.copyOf(problems);
  }

  public List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }

  public boolean hasErrors() {
    return problems.stream().anyMatch(Problem::isError);
  }
}
