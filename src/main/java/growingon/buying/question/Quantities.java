package growingon.buying.question;

import growingon.buying.question.Choice.Holding;
import growingon.buying.question.Choice.Take;
import growingon.nursery.lot.Offer;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The numbers of an offer that are tried: all that can be had where they are few, else a coarse
 * ladder of them, doubled from the least and evenly spread, with every price break, to which those
 * about the best are added. Doubled, so that a small number that fits lies between two of them.
 */
public final class Quantities {
  /** So many numbers of an offer are tried at once. */
  static final int FEW = 25;

  /** So many where there is little else to be decided. */
  private static final int MANY = 100;

  /** None, the most and the price breaks come on top of those evenly spread. */
  private static final int BESIDES = 4;

  /** At most so many combinations are all tried. */
  public static final int ALL_TRIED = 2000;

  /** More of an offer than this are not looked for where it names no most. */
  public static final int MOST = 5000;

  private final Offer offer;
  private final int most;
  private final int atOnce;
  private final SortedSet<Integer> tried = new TreeSet<>();

  /**
   * The numbers of an offer.
   *
   * @param most greatest number that is tried
   * @param planned a number that the plan takes, 0 for none
   * @param atOnce how many numbers are tried at once
   */
  public Quantities(Take take, int most, int planned, int atOnce) {
    this.offer = take.offer();
    this.most = most;
    this.atOnce = atOnce;
    tried.add(0);
    if (planned > 0) {
      tried.add(planned);
    }
    addIfAllowed(offer.least());
    for (long number = offer.least(); number <= most; number *= 2) {
      addIfAllowed(up((int) number));
    }
    addBetween(0, most + 1, atOnce - tried.size());
    addIfAllowed(most / offer.multiple() * offer.multiple());
    offer.breaks().forEach(step -> addIfAllowed(up(step.least())));
  }

  /**
   * How many numbers of each offer are tried at once: more than a few where all combinations with
   * what may be held still are few, since what lies between two numbers is only looked at about the
   * best.
   */
  public static int atOnce(List<Choice> choices) {
    double combinations = ALL_TRIED;
    int offers = 0;
    for (Choice choice : choices) {
      if (choice instanceof Holding holding) {
        combinations /= holding.holds().size();
      } else {
        offers++;
      }
    }
    double each = Math.pow(combinations, 1.0 / Math.max(1, offers));
    return (int) Math.max(FEW, Math.min(MANY, each - BESIDES));
  }

  private int up(int number) {
    int multiple = offer.multiple();
    return (number + multiple - 1) / multiple * multiple;
  }

  private void addIfAllowed(int number) {
    if (number <= most && offer.allows(number)) {
      tried.add(number);
    }
  }

  /** Numbers that are tried, 0 first. */
  public List<Integer> tried() {
    return List.copyOf(tried);
  }

  /** The number tried next below; 0 for the least. */
  int below(int number) {
    SortedSet<Integer> lower = tried.headSet(number);
    return lower.isEmpty() ? 0 : lower.last();
  }

  private int above(int number) {
    SortedSet<Integer> higher = tried.tailSet(number + 1);
    return higher.isEmpty() ? most + 1 : higher.first();
  }

  /** Lower numbers to give way to: the next below, the half, and the others that are tried. */
  public List<Integer> lower(int number) {
    List<Integer> lower = new ArrayList<>(List.of(below(number)));
    int half = up(Math.max(offer.least(), number / 2));
    if (half < number && offer.allows(half)) {
      lower.add(half);
    }
    tried.headSet(number).forEach(lower::add);
    return lower.stream().distinct().toList();
  }

  /** Adds the numbers about one; whether there were any that were not tried. */
  public boolean refine(int about) {
    int before = tried.size();
    if (about > 0) {
      addBetween(below(about), above(about), FEW - 2);
    }
    return tried.size() > before;
  }

  /** Adds at most so many, evenly spread, of those that can be had between two numbers. */
  private void addBetween(int low, int high, int most) {
    List<Integer> allowed = new ArrayList<>();
    for (int number = up(Math.max(low + 1, offer.least()));
        number < high;
        number += offer.multiple()) {
      if (number <= this.most && offer.allows(number)) {
        allowed.add(number);
      }
    }
    int steps = Math.min(Math.max(0, most), allowed.size());
    for (int i = 0; i < steps; i++) {
      int index =
          steps == 1 ? 0 : (int) Math.round((double) i * (allowed.size() - 1) / (steps - 1));
      tried.add(allowed.get(index));
    }
  }
}
