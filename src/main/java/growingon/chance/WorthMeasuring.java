package growingon.chance;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What marking and measuring twenty trunks of a species in a growing condition, this October and
 * next, would take off the spread of cash at the end of the plan.
 *
 * @param rows what grows where, the most worth measuring first
 * @param all share of the standard deviation that measuring all of them would take off, drawn
 *     afresh; empty if there is nothing to learn
 */
public record WorthMeasuring(List<Row> rows, OptionalDouble all) {
  /** Trunks that are marked. */
  public static final int TRUNKS = 20;

  /** How a narrowing was found. */
  public enum Told {
    /** The draws were made once more. */
    DRAWN,
    /** Cash was regressed on what is not known: right in its order, flattering in its size. */
    ROUGH,
    /** Nothing that so many draws can tell. */
    TOO_SMALL;

    @Override
    public String toString() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
  }

  /**
   * A species in a growing condition.
   *
   * @param species its name
   * @param condition the growing condition
   * @param plants plants that grow there
   * @param mmASeason what they grow in a season by the plan's line, mm
   * @param sure how sure that is
   * @param sureAfter how sure it would be after measuring
   * @param narrowing share of the standard deviation of cash at the end that measuring takes off
   * @param told how it was found
   */
  @RecordBuilder
  public record Row(
      String species,
      String condition,
      double plants,
      double mmASeason,
      double sure,
      double sureAfter,
      double narrowing,
      Told told)
      implements WorthMeasuringRowBuilder.With {}

  public WorthMeasuring {
    rows = List.copyOf(rows);
  }
}
