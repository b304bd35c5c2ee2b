package growingon.nursery.route;

import growingon.nursery.number.Check;
import java.util.List;

/**
 * The growing-on route of a lot: its steps in order.
 *
 * @param name as lots name it
 * @param steps in row order; names are unique
 */
public record Route(String name, List<Step> steps) {
  public Route {
    Check.named(name, "a route");
    steps = List.copyOf(steps);
    Check.that(
        steps.stream().map(Step::name).distinct().count() == steps.size(),
        "step names of a route must differ",
        name);
  }

  /** Index of a step, −1 if there is none of that name. */
  public int indexOf(String step) {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).name().equals(step)) {
        return i;
      }
    }
    return -1;
  }
}
