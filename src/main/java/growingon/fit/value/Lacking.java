package growingon.fit.value;

import growingon.nursery.number.Writing;
import java.util.stream.Stream;

/**
 * How much there is of what a verdict needs.
 *
 * @param there how many there are
 * @param needed how many it takes
 * @param what what they are, as in "seasons"
 */
public record Lacking(long there, int needed, String what) {
  /** What is not there yet, as in "3 of 6 seasons and 12 of 20 counts"; empty if all is. */
  public static String of(Lacking... all) {
    return Writing.list(
        Stream.of(all)
            .filter(each -> each.there < each.needed)
            .map(each -> "%d of %d %s".formatted(each.there, each.needed, each.what))
            .toList());
  }
}
