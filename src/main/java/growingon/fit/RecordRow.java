package growingon.fit;

import java.time.YearMonth;

/**
 * An interval, or a row that nothing is learnt from.
 *
 * @param subject the lot, group or plant
 * @param species its species, empty if not known
 * @param condition its growing condition, empty if not known
 * @param from month for whose end the first measurement holds
 * @param to the same of the second one
 * @param trunkFrom first mean trunk, mm; NaN for none
 * @param trunkTo the second one
 * @param expected what the first assumptions expected, mm
 * @param deviation standard deviation of the difference, mm
 * @param clock growth years in between
 * @param gone plants gone without a line
 * @param sold plants sold in between
 * @param used whether growth is learnt from it
 * @param why why not, or what else is to be told
 */
public record RecordRow(
    String subject,
    String species,
    String condition,
    YearMonth from,
    YearMonth to,
    double trunkFrom,
    double trunkTo,
    double expected,
    double deviation,
    double clock,
    double gone,
    double sold,
    boolean used,
    String why) {
  /** Trunk seen less the one expected, mm. */
  public double difference() {
    return trunkTo - expected;
  }

  /** The difference in standard deviations. */
  public double z() {
    return difference() / deviation;
  }

  /** Whether two trunks were measured. */
  public boolean isInterval() {
    return !Double.isNaN(trunkFrom) && !Double.isNaN(trunkTo);
  }
}
