package growingon.review.book;

import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import java.util.Comparator;
import java.util.List;

/** The order in which lines are taken, so that their order in the file does not matter. */
final class DayOrder {
  /** Lines of one day in the order in which they are taken. */
  private static final List<What> ORDER =
      List.of(
          What.ARRIVED,
          What.RETURNED,
          What.FOUND,
          What.SPLIT,
          What.MOVED,
          What.DIED,
          What.CULLED,
          What.LOST,
          What.SOLD,
          What.USED,
          What.POTTED,
          What.RELEASED,
          What.SPENT,
          What.COUNTED);

  static final Comparator<DaybookLine> IN_ORDER =
      Comparator.comparing(DaybookLine::date)
          .thenComparing(line -> ORDER.indexOf(line.what()))
          .thenComparing(DaybookLine::lot)
          .thenComparing(line -> line.toLot().orElse(""))
          .thenComparing(line -> line.grade().orElse(""))
          .thenComparing(line -> line.quality().map(Enum::ordinal).orElse(-1))
          .thenComparing(line -> line.quantity().orElse(-1))
          .thenComparing(line -> line.amount().orElse(-1))
          .thenComparing(line -> line.hours().orElse(-1))
          .thenComparing(line -> line.trunkMm().orElse(-1))
          .thenComparing(DaybookLine::reason)
          .thenComparing(DaybookLine::customer)
          .thenComparing(line -> line.where().row());

  private DayOrder() {}

  /** Whether plants go, or are counted, after all have come and are split. */
  static boolean isAfterSplits(DaybookLine line) {
    return ORDER.indexOf(line.what()) > ORDER.indexOf(What.MOVED);
  }
}
