package growingon.problem;

import java.util.List;
import java.util.Optional;

/**
 * A value read from the input together with every problem found while reading it. There is no value
 * exactly if at least one problem is an error.
 *
 * @param <T> what was read
 */
public record Loaded<T>(Optional<T> value, List<Problem> problems) {
  public Loaded {
    problems = List.copyOf(problems);
    if (value.isPresent() == problems.stream().anyMatch(Problem::isError)) {
      throw new IllegalArgumentException("a value is there exactly if no problem is an error");
    }
  }

  /** A good value, perhaps with warnings and notices. */
  public static <T> Loaded<T> of(T value, List<Problem> problems) {
    return new Loaded<>(Optional.of(value), problems);
  }

  /** No value; at least one of the problems is an error. */
  public static <T> Loaded<T> failed(List<Problem> problems) {
    return new Loaded<>(Optional.empty(), problems);
  }
}
