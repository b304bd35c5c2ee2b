package growingon.report.text;

/**
 * How often something happens in the draws, in words: of 100 draws, or of all where there are
 * fewer. Never is said only of what happens in no draw, always only of what happens in each.
 */
public final class Odds {
  private static final int HUNDRED = 100;

  private Odds() {}

  /** in 83 of 100 draws, in all of 100 draws, in none of 7 draws. */
  public static String in(double chance, int draws) {
    if (draws == 1) {
      return chance > 0 ? "in the one draw made" : "not in the one draw made";
    }
    long happens = Math.round(chance * draws);
    String often = happens == 0 ? "none" : happens == draws ? "all" : counted(chance, draws);
    return "in " + often + " of " + Math.min(HUNDRED, draws) + " draws";
  }

  /** 83 of 100, 0 of 100. */
  public static String bare(double chance, int draws) {
    long happens = Math.round(chance * draws);
    String often = happens == 0 ? "0" : happens == draws ? "" : counted(chance, draws);
    int of = Math.min(HUNDRED, draws);
    return (often.isEmpty() ? Integer.toString(of) : often) + " of " + of;
  }

  /** The same where the draws have just been named: in 9, in none, in all. */
  public static String briefly(double chance, int draws) {
    long happens = Math.round(chance * draws);
    if (draws == 1) {
      return in(chance, draws);
    }
    return happens == 0 ? "in none" : happens == draws ? "in all" : "in " + counted(chance, draws);
  }

  /** Of 100, whole; 0 only where it never happens, and 100 only where it always does. */
  public static long whole(double chance) {
    long whole = Math.round(chance * HUNDRED);
    return chance <= 0 || chance >= 1 ? whole : Math.max(1, Math.min(HUNDRED - 1, whole));
  }

  private static String counted(double chance, int draws) {
    if (draws <= HUNDRED) {
      return Long.toString(Math.round(chance * draws));
    }
    long whole = Math.round(chance * HUNDRED);
    return whole == 0 ? "fewer than 1" : whole == HUNDRED ? "more than 99" : Long.toString(whole);
  }
}
