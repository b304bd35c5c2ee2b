package growingon.nursery.library;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * What the library says of a species in a growing condition. All growth is steady.
 *
 * @param mmAYear growth of the trunk
 * @param low growth that 10 of 100 nurseries stay below
 * @param high growth that 90 of 100 nurseries stay below
 * @param growthSure how sure the growth is, as a share
 * @param basis what it rests on
 * @param from how it was worked out from the growth in the field; empty in the field itself
 * @param mostMm trunk at which it ends
 * @param growthSources ids of the sources of growth
 * @param firstYearLoss share lost in the arrival month and the 11 after
 * @param firstYearLossSure how sure that is, as a share
 * @param laterLoss share lost a year after that
 * @param laterLossSure how sure that is, as a share
 * @param lossSources ids of the sources of losses
 */
public record Figures(
    double mmAYear,
    double low,
    double high,
    double growthSure,
    String basis,
    String from,
    double mostMm,
    List<String> growthSources,
    double firstYearLoss,
    double firstYearLossSure,
    double laterLoss,
    double laterLossSure,
    List<String> lossSources) {
  private static final double WHOLE_FROM_MM = 19.95;

  public Figures {
    growthSources = List.copyOf(growthSources);
    lossSources = List.copyOf(lossSources);
  }

  /** {@code 3.5 to 12.8}. */
  public String range() {
    return shown(low) + " to " + shown(high);
  }

  /** {@code measured, from field × 0.35; no measurement in training pots found}. */
  public String grounds() {
    return from.isEmpty() ? basis : basis + ", " + from;
  }

  /** Millimetres with one decimal, from 20 on with none. */
  public static String shown(double mm) {
    return shown(mm, RoundingMode.HALF_UP);
  }

  static String shown(double mm, RoundingMode ties) {
    int decimals = mm < WHOLE_FROM_MM ? 1 : 0;
    return BigDecimal.valueOf(mm).setScale(decimals, ties).toPlainString();
  }
}
