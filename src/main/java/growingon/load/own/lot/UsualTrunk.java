package growingon.load.own.lot;

import growingon.load.own.size.PotSize;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The trunk of a lot whose list states none: by its height, its pot or its age. Common practice, no
 * source.
 */
public final class UsualTrunk {
  private static final double MM_A_CM = 0.1;
  private static final double LARGE_POT = 10;
  private static final double OF_ONE_LITRE = 5;
  private static final double POWER = 0.55;
  private static final double[] BY_AGE = {3, 5, 7, 9};
  private static final double ELSE = 10;

  /** Spread of such trunks, percent of their mean. */
  private static final int SPREAD = 30;

  private UsualTrunk() {}

  public static double mm(OwnLot lot) {
    boolean small = lot.potLitres().isEmpty() || lot.potLitres().getAsDouble() < LARGE_POT;
    OptionalDouble height = lot.heightCm();
    if (height.isPresent() && small) {
      return tenths(Math.max(1, MM_A_CM * height.getAsDouble()));
    }
    if (lot.potLitres().isPresent()) {
      return tenths(OF_ONE_LITRE * Math.pow(lot.potLitres().getAsDouble(), POWER));
    }
    int years = lot.years().orElse(0);
    return years >= 1 && years <= BY_AGE.length ? BY_AGE[years - 1] : ELSE;
  }

  /** The class of lots that have one usual trunk. */
  public static String classOf(OwnLot lot) {
    if (lot.potLitres().isPresent()) {
      return "pot " + lot.pot();
    }
    if (lot.heightCm().isPresent()) {
      return "no pot, height " + PotSize.plain(lot.heightCm().getAsDouble());
    }
    return lot.years().isPresent() ? "no pot, age " + lot.years().getAsInt() : "no pot";
  }

  /** The trunk of a lot in its row of a table: as its list states it, else the usual one. */
  public static void put(OwnLot lot, Map<String, String> row) {
    if (lot.trunkFromMm().isEmpty()) {
      row.put("trunk mm", PotSize.plain(mm(lot)));
      row.put("trunk spread %", Integer.toString(SPREAD));
      row.put("usual trunk of", classOf(lot));
    } else if (lot.trunkToMm().orElse(0) > lot.trunkFromMm().getAsDouble()) {
      row.put("trunk from mm", PotSize.plain(lot.trunkFromMm().getAsDouble()));
      row.put("trunk to mm", PotSize.plain(lot.trunkToMm().getAsDouble()));
    } else {
      row.put("trunk mm", PotSize.plain(lot.trunkFromMm().getAsDouble()));
    }
  }

  private static double tenths(double mm) {
    return Math.rint(mm * 10) / 10;
  }
}
