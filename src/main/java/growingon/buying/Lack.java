package growingon.buying;

import java.util.List;
import java.util.Set;

/**
 * What is lacking.
 *
 * @param what of what
 * @param name what it is: {@code room in Winter tunnel}, {@code hours}, {@code cash}
 * @param month month in which most is lacking
 * @param amount square metres, hours or money
 * @param others the names of what else is lacking
 */
public record Lack(Kind what, String name, int month, double amount, List<String> others) {
  public Lack {
    others = List.copyOf(others);
  }

  /** The same beside all that is lacking. */
  Lack beside(Set<String> all) {
    List<String> rest = all.stream().filter(each -> !each.equals(name)).toList();
    return new Lack(what, name, month, amount, rest);
  }

  /** What may be lacking. */
  public enum Kind {
    /** Square metres of a place. */
    ROOM,
    /** Hours. */
    HOURS,
    /** Cash. */
    CASH
  }
}
