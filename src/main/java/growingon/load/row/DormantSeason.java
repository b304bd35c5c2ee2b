package growingon.load.row;

import growingon.nursery.time.Hemisphere;
import growingon.nursery.time.MonthSpan;
import java.time.Month;

/**
 * The months in which plants without leaves are lifted and moved: November to March on the northern
 * half of the world, May to September on the southern.
 */
public final class DormantSeason {
  private DormantSeason() {}

  public static boolean contains(Month month, Hemisphere hemisphere) {
    return hemisphere.dormantSeason().contains(month.getValue());
  }

  /** As in "November to March". */
  public static String words(Hemisphere hemisphere) {
    MonthSpan span = hemisphere.dormantSeason();
    return As.nameOf(Month.of(span.from())) + " to " + As.nameOf(Month.of(span.to()));
  }
}
