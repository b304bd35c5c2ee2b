package growingon.whole;

import java.util.Arrays;

/**
 * Rounds several numbers that rise over time, each of them down or up at every tick. Of all ways to
 * do so the cheapest is taken: nearest to what is expected, and to what others have left over.
 *
 * <p>Where their sum is to be rounded down or up too there always is such a way: the sums over time
 * of each number are one set of nested sums, those of all numbers together another, and a table
 * with two nested sets of sums can be rounded so that every sum in both is rounded down or up (its
 * constraints are totally unimodular). It is found tick by tick, from the cheapest ways to each
 * state of the tick before; a state says which numbers are rounded up, a bit each.
 */
final class Rounding {
  /** More numbers than this are to be rounded in groups. */
  static final int MOST = 6;

  /** What is out of bounds costs more than all else together. */
  private static final double OUT_OF_BOUNDS = 1e6;

  /** How far each number is off counts less than how far they are together. */
  private static final double EACH = 0.3;

  private static final int NOT_FOUND = -1;

  /**
   * States of a tick with the cheapest way to each: its price, and its place in the tick before.
   */
  private static final class Found {
    final int[] states;
    final int[] from;
    final double[] price;
    int size;

    Found(int most) {
      states = new int[most];
      from = new int[most];
      price = new double[most];
    }
  }

  private final double[][] parts;
  private final double[][] sums;
  private final long[][] low;
  private final int[] open;
  private final int[] moving;
  private final double[][] weights;
  private final double[][] targets;
  private final int ticks;
  private final double[][] ownPrice;
  private final double[][] risePrice;
  private final int[] place;
  private final int[][] states;
  private final int[][] from;
  private double least;

  /**
   * Numbers to be rounded.
   *
   * @param parts [number][tick] by how much each rises
   * @param ticks how many ticks there are
   */
  Rounding(double[][] parts, int ticks) {
    this.parts = parts;
    this.ticks = ticks;
    this.sums = new double[parts.length][ticks];
    this.low = new long[parts.length][ticks];
    this.open = new int[ticks];
    this.moving = new int[ticks];
    this.weights = new double[parts.length][ticks];
    this.targets = new double[parts.length][ticks];
    this.ownPrice = new double[parts.length][2];
    this.risePrice = new double[parts.length][3];
    this.place = new int[1 << parts.length];
    this.states = new int[ticks][];
    this.from = new int[ticks][];
    for (int number = 0; number < parts.length; number++) {
      addUp(number);
    }
  }

  private void addUp(int number) {
    double sum = 0;
    for (int tick = 0; tick < ticks; tick++) {
      sum += parts[number][tick];
      sums[number][tick] = sum;
      low[number][tick] = Ticks.floor(sum);
      open[tick] |= Ticks.ceil(sum) > low[number][tick] ? 1 << number : 0;
      moving[tick] |= tick == 0 || parts[number][tick] > 0 ? 1 << number : 0;
    }
  }

  /** A number had best be such a one up to a tick; adds to the price of being off, squared. */
  void wish(int number, int tick, double target, double weight) {
    double all = weights[number][tick] + weight;
    double mean = targets[number][tick] * weights[number][tick] + target * weight;
    targets[number][tick] = mean / all;
    weights[number][tick] = all;
  }

  /**
   * The cheapest way. The sums of all numbers and of a group of them are to be those expected,
   * rounded down or up.
   *
   * @param expected what all numbers together are expected to be up to each tick
   * @param leftOver what others left over of that
   * @param group the first of the numbers of the group; the last number is its last
   * @return [number][tick] whole plants up to the tick
   */
  int[][] cheapest(double[] expected, double[] leftOver, int group) {
    Arrays.fill(place, NOT_FOUND);
    Found before = new Found(1);
    before.size = 1;
    for (int tick = 0; tick < ticks; tick++) {
      setPrices(tick);
      Found found = step(tick, before);
      double[] all = ofAll(tick, expected[tick], leftOver[tick]);
      addOwnPrices(tick, found, all, group, ofGroup(tick, group));
      before = withinBounds(tick, found);
    }
    int last = cheapest(before);
    least = before.price[last];
    return wayTo(last);
  }

  /** Whether the way found keeps within bounds. */
  boolean isWithinBounds() {
    return least < OUT_OF_BOUNDS;
  }

  private void setPrices(int tick) {
    for (int number = 0; number < parts.length; number++) {
      boolean moves = (moving[tick] >> number & 1) != 0;
      boolean wished = weights[number][tick] > 0 || tick > 0 && weights[number][tick - 1] > 0;
      if (moves || wished) {
        setOwnPrice(number, tick);
      }
      if (moves) {
        setRisePrice(number, tick);
      }
    }
  }

  /** What a number costs rounded down and up. */
  private void setOwnPrice(int number, int tick) {
    for (int up = 0; up <= 1; up++) {
      double off = low[number][tick] + up - sums[number][tick];
      double missed = low[number][tick] + up - targets[number][tick];
      ownPrice[number][up] = EACH * off * off + weights[number][tick] * missed * missed;
    }
  }

  /** What it costs to get there from before: rounded down from up, alike, or up from down. */
  private void setRisePrice(int number, int tick) {
    long before = tick == 0 ? 0 : low[number][tick - 1];
    for (int change = -1; change <= 1; change++) {
      long rise = low[number][tick] - before + change;
      double price = bounds(rise - parts[number][tick]);
      risePrice[number][change + 1] = tick > 0 && rise < 0 ? Double.POSITIVE_INFINITY : price;
    }
  }

  /** Whether a whole number is that which was expected, rounded down or up. */
  private static boolean isWithinOne(double off) {
    return Math.abs(off) < 1 - Ticks.ROUNDING;
  }

  /** Numbers that do not rise stay rounded as they were, the others are rounded down or up. */
  private Found step(int tick, Found before) {
    int free = moving[tick] & open[tick];
    Found found = new Found(before.size << Integer.bitCount(free));
    for (int i = 0; i < before.size; i++) {
      int still = before.states[i] & ~moving[tick];
      for (int up = free; up >= 0; up = up == 0 ? -1 : (up - 1) & free) {
        double price = before.price[i] + rise(moving[tick], before.states[i], still | up);
        if (price < Double.POSITIVE_INFINITY) {
          add(found, still | up, i, price);
        }
      }
    }
    for (int i = 0; i < found.size; i++) {
      place[found.states[i]] = NOT_FOUND;
    }
    return found;
  }

  private double rise(int moving, int before, int state) {
    double sum = 0;
    for (int left = moving; left != 0; left &= left - 1) {
      int number = Integer.numberOfTrailingZeros(left);
      sum += risePrice[number][1 + (state >> number & 1) - (before >> number & 1)];
    }
    return sum;
  }

  private void add(Found found, int state, int from, double price) {
    int at = place[state];
    if (at == NOT_FOUND) {
      at = found.size++;
      place[state] = at;
      found.states[at] = state;
      found.price[at] = Double.POSITIVE_INFINITY;
    }
    if (price < found.price[at]) {
      found.price[at] = price;
      found.from[at] = from;
    }
  }

  /** Prices of the sum of all numbers, by how many of them are rounded up. */
  private double[] ofAll(int tick, double expected, double leftOver) {
    double off = -expected;
    for (int number = 0; number < parts.length; number++) {
      off += low[number][tick];
    }
    double[] prices = new double[Integer.bitCount(open[tick]) + 1];
    for (int up = 0; up < prices.length; up++) {
      double inAll = off + up + leftOver;
      prices[up] = inAll * inAll + bounds(off + up);
    }
    return prices;
  }

  /** Prices of the sum of the group's numbers, by how many of them are rounded up. */
  private double[] ofGroup(int tick, int group) {
    double off = 0;
    for (int number = group; number < parts.length; number++) {
      off += low[number][tick] - sums[number][tick];
    }
    double[] prices = new double[Integer.bitCount(open[tick] >> group) + 1];
    for (int up = 0; up < prices.length; up++) {
      prices[up] = bounds(off + up);
    }
    return prices;
  }

  private static double bounds(double off) {
    return isWithinOne(off) ? 0 : OUT_OF_BOUNDS;
  }

  private void addOwnPrices(int tick, Found found, double[] all, int group, double[] some) {
    double rest = 0;
    for (double[] own : ownPrice) {
      rest += own[0];
    }
    for (int i = 0; i < found.size; i++) {
      int state = found.states[i];
      double price = rest + all[Integer.bitCount(state)] + some[Integer.bitCount(state >> group)];
      for (int left = state; left != 0; left &= left - 1) {
        int number = Integer.numberOfTrailingZeros(left);
        price += ownPrice[number][1] - ownPrice[number][0];
      }
      found.price[i] += price;
    }
  }

  /** The states found, but for those that are out of bounds where others are not. */
  private Found withinBounds(int tick, Found found) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < found.size; i++) {
      least = Math.min(least, found.price[i]);
    }
    int kept = 0;
    for (int i = 0; i < found.size; i++) {
      if (found.price[i] < least + OUT_OF_BOUNDS) {
        found.states[kept] = found.states[i];
        found.from[kept] = found.from[i];
        found.price[kept++] = found.price[i];
      }
    }
    found.size = kept;
    states[tick] = found.states;
    from[tick] = found.from;
    return found;
  }

  private static int cheapest(Found found) {
    int cheapest = 0;
    for (int i = 1; i < found.size; i++) {
      cheapest = found.price[i] < found.price[cheapest] ? i : cheapest;
    }
    return cheapest;
  }

  private int[][] wayTo(int last) {
    int[][] way = new int[parts.length][ticks];
    int at = last;
    for (int tick = ticks - 1; tick >= 0; tick--) {
      for (int number = 0; number < parts.length; number++) {
        way[number][tick] = (int) low[number][tick] + (states[tick][at] >> number & 1);
      }
      at = from[tick][at];
    }
    return way;
  }
}
