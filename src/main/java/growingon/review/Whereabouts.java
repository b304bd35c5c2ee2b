package growingon.review;

import growingon.review.book.Tally;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.function.ToDoubleFunction;

/**
 * Where the plants of a lot came from and went, up to the end of the daybook's last month: arrived
 * + split in + returned + found = died + culled + sold + used + split out + lost + standing.
 *
 * @param arrived plants that it started with
 * @param splitIn came from other lots
 * @param returned came back
 * @param found turned up, by the daybook or because a count found more
 * @param died died, by the daybook or, where it says nothing, by the plan's losses
 * @param culled thrown out, likewise
 * @param sold sold
 * @param used used for classes or display
 * @param splitOut went to other lots that were there already
 * @param lost gone, by the daybook or because a count found fewer
 * @param standing alive
 */
@RecordBuilder
public record Whereabouts(
    double arrived,
    double splitIn,
    double returned,
    double found,
    double died,
    double culled,
    double sold,
    double used,
    double splitOut,
    double lost,
    double standing)
    implements WhereaboutsBuilder.With {
  /** Of a lot that has not arrived yet. */
  static final Whereabouts NOT_YET_HERE = new Whereabouts(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

  /** The same in the next whole plants. */
  Whereabouts nearest() {
    return new Whereabouts(
        Math.rint(arrived),
        Math.rint(splitIn),
        Math.rint(returned),
        Math.rint(found),
        Math.rint(died),
        Math.rint(culled),
        Math.rint(sold),
        Math.rint(used),
        Math.rint(splitOut),
        Math.rint(lost),
        Math.rint(standing));
  }

  /**
   * The same without less than nothing lost or found. A count holds for the end of its month, so
   * what it misses and what is found later in that month make good for each other.
   */
  private Whereabouts evened() {
    double less = Math.min(0, lost);
    double fewer = Math.min(0, found);
    return with().found(found - fewer - less).lost(lost - less - fewer).build();
  }

  /** The same with what each part lacks to be as booked. */
  Whereabouts plus(ToDoubleFunction<Tally.Of> lacks) {
    return new Whereabouts(
            arrived + lacks.applyAsDouble(Tally.Of.ARRIVED),
            splitIn + lacks.applyAsDouble(Tally.Of.SPLIT_IN),
            returned + lacks.applyAsDouble(Tally.Of.RETURNED),
            found + lacks.applyAsDouble(Tally.Of.FOUND),
            died + lacks.applyAsDouble(Tally.Of.DIED),
            culled + lacks.applyAsDouble(Tally.Of.CULLED),
            sold + lacks.applyAsDouble(Tally.Of.SOLD),
            used + lacks.applyAsDouble(Tally.Of.USED),
            splitOut + lacks.applyAsDouble(Tally.Of.SPLIT_OUT),
            lost + lacks.applyAsDouble(Tally.Of.LOST),
            standing)
        .evened();
  }

  /** What came less what went and what stands; nil but for rounding. */
  public double difference() {
    return arrived
        + splitIn
        + returned
        + found
        - (died + culled + sold + used + splitOut + lost + standing);
  }
}
