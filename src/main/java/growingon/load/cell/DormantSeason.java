package growingon.load.cell;

import growingon.nursery.Hemisphere;
import growingon.nursery.MonthSpan;
import java.time.Month;

/**
 * The months in which plants without leaves are lifted and moved: November to March on the northern
 * half of the world, May to September on the southern.
 */
public final class DormantSeason {
  private static final MonthSpan NORTH = new MonthSpan(11, 3);
  private static final MonthSpan SOUTH = new MonthSpan(5, 9);

  private DormantSeason() {}

  public static boolean contains(Month month, Hemisphere hemisphere) {
    return span(hemisphere).contains(month.getValue());
  }

  /** As in "November to March". */
  public static String words(Hemisphere hemisphere) {
    MonthSpan span = span(hemisphere);
    return As.nameOf(Month.of(span.from())) + " to " + As.nameOf(Month.of(span.to()));
  }

  private static MonthSpan span(Hemisphere hemisphere) {
    return hemisphere == Hemisphere.NORTH ? NORTH : SOUTH;
  }
}
