package growingon.load.own;

import java.util.OptionalDouble;

/**
 * The trunk of a lot whose list states none: by its height, its pot or its age. Common practice, no
 * source.
 */
final class UsualTrunk {
  private static final double MM_A_CM = 0.1;
  private static final double LARGE_POT = 10;
  private static final double OF_ONE_LITRE = 5;
  private static final double POWER = 0.55;
  private static final double[] BY_AGE = {3, 5, 7, 9};
  private static final double ELSE = 10;

  /** Spread of such trunks, percent of their mean. */
  static final int SPREAD = 30;

  private UsualTrunk() {}

  static double mm(OwnLot lot) {
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
  static String classOf(OwnLot lot) {
    if (lot.potLitres().isPresent()) {
      return "pot " + lot.pot();
    }
    if (lot.heightCm().isPresent()) {
      return "no pot, height " + PotSize.plain(lot.heightCm().getAsDouble());
    }
    return lot.years().isPresent() ? "no pot, age " + lot.years().getAsInt() : "no pot";
  }

  private static double tenths(double mm) {
    return Math.rint(mm * 10) / 10;
  }
}
