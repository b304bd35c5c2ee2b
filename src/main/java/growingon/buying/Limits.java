package growingon.buying;

import growingon.buying.OfferAnswer.Lack;
import growingon.nursery.ExtraCosts;
import growingon.nursery.Horizon;
import growingon.nursery.Place;
import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.project.HoursUse;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What a candidate must keep within on the plan's line: room and hours, up to a hundredth over what
 * there is, and the lowest cash allowed. Where the nursery as given is over a limit already, it
 * must not get worse. Of what more can be had at a cost there is no limit.
 *
 * @param room square metres, [place in the order of the table][month]; infinite for no limit
 * @param capacity square metres that there are, likewise
 * @param hours hours by month; infinite for no limit
 * @param available hours that there are
 * @param lowestCash lowest cash at the end of a month; −infinite for no limit
 * @param chanceBelow chance that cash may fall below the lowest allowed, 0 to 1
 * @param allowed share of what there is by which room and hours may be over it
 */
public record Limits(
    double[][] room,
    double[][] capacity,
    double[] hours,
    double[] available,
    double lowestCash,
    double chanceBelow,
    double allowed) {
  /** Room and hours may be over what there is by so much of it. */
  static final double ALLOWED = 0.01;

  private static final double ROUNDING = 1e-9;
  private static final double CHANCE_ALLOWED = 0.1;

  private static final String ROOM_IN = "room in ";
  private static final String HOURS = "hours";
  private static final String CASH = "cash";

  /** A scale for shortages of limits that are nil. */
  private static final double ONE = 1;

  /**
   * The limits of a nursery.
   *
   * @param given the plan's line as given, which may be over them
   * @param allowed share of what there is by which room and hours may be over it
   */
  static Limits of(Scenario scenario, Outcome given, double allowed) {
    Horizon horizon = scenario.horizon();
    int months = horizon.months();
    double[][] capacity = new double[scenario.nursery().places().size()][months];
    double[][] room = new double[capacity.length][months];
    ExtraCosts extra = scenario.nursery().settings().extraCosts();
    int index = 0;
    for (Place place : scenario.nursery().places().values()) {
      for (int month = 0; month < months; month++) {
        capacity[index][month] = place.capacityM2(horizon.month(month));
        room[index][month] =
            extra.squareMetre(place).isPresent()
                ? Double.POSITIVE_INFINITY
                : limit(capacity[index][month], given.space()[index][month], allowed);
      }
      index++;
    }
    Settings settings = scenario.nursery().settings();
    Optional<double[]> stated = HoursUse.available(settings, horizon);
    double[] available = stated.orElseGet(() -> infinite(months));
    double[] hours = infinite(months);
    for (int month = 0; month < months && stated.isPresent() && extra.hour().isEmpty(); month++) {
      hours[month] = limit(available[month], given.hours()[month], allowed);
    }
    OptionalDouble lowest = settings.lowestCash();
    double floor =
        lowest.isPresent()
            ? Math.min(lowest.getAsDouble(), given.lowestCash())
            : Double.NEGATIVE_INFINITY;
    return new Limits(room, capacity, hours, available, floor, CHANCE_ALLOWED, allowed);
  }

  private static double limit(double available, double asGiven, double allowed) {
    return Math.max(available, asGiven) + allowed * available;
  }

  private static double[] infinite(int months) {
    double[] none = new double[months];
    Arrays.fill(none, Double.POSITIVE_INFINITY);
    return none;
  }

  /** No limits at all. */
  Limits lifted() {
    double[][] open = new double[room.length][];
    for (int place = 0; place < open.length; place++) {
      open[place] = infinite(hours.length);
    }
    return new Limits(
        open, capacity, infinite(hours.length), available, Double.NEGATIVE_INFINITY, 1, allowed);
  }

  /** With so much more of a place, as a share of what there is. */
  Limits withMoreRoom(int place, double more) {
    double[] bigger = room[place].clone();
    for (int month = 0; month < bigger.length; month++) {
      double capacityThen = capacity[place][month] * (1 + more);
      bigger[month] = Math.max(bigger[month], capacityThen * (1 + allowed));
    }
    return withRoom(place, bigger);
  }

  /** With no limit of a place. */
  Limits withoutRoom(int place) {
    return withRoom(place, infinite(hours.length));
  }

  private Limits withRoom(int place, double[] months) {
    double[][] changed = room.clone();
    changed[place] = months;
    return new Limits(changed, capacity, hours, available, lowestCash, chanceBelow, allowed);
  }

  /** With so many more hours in every month, as a share of what there are. */
  Limits withMoreHours(double more) {
    double[] longer = hours.clone();
    for (int month = 0; month < longer.length; month++) {
      longer[month] = Math.max(longer[month], available[month] * (1 + more) * (1 + allowed));
    }
    return new Limits(room, capacity, longer, available, lowestCash, chanceBelow, allowed);
  }

  /** With no limit of hours. */
  Limits withoutHours() {
    return new Limits(
        room, capacity, infinite(hours.length), available, lowestCash, chanceBelow, allowed);
  }

  /** With so much less cash allowed. */
  Limits withLessCash(double less) {
    return new Limits(room, capacity, hours, available, lowestCash - less, chanceBelow, allowed);
  }

  /** The same with another chance of too little cash allowed. */
  Limits withChanceBelow(double chance) {
    return new Limits(
        room, capacity, hours, available, lowestCash, Math.max(chance, CHANCE_ALLOWED), allowed);
  }

  /** Whether a candidate keeps within them on the plan's line. */
  boolean allow(Outcome outcome) {
    return shortage(outcome) == 0;
  }

  /** How far a candidate is over them: the sum over all of excess by limit. */
  double shortage(Outcome outcome) {
    return shortage(outcome, Change.NONE);
  }

  /** The same where something more is changed. */
  double shortage(Outcome outcome, Change change) {
    int months = hours.length;
    int things = room.length;
    double sum = 0;
    for (int place = 0; place < things; place++) {
      for (int month = 0; month < months; month++) {
        double needed = outcome.space()[place][month] + change.needs(place, month, months);
        sum += excess(needed, room[place][month]);
      }
    }
    for (int month = 0; month < months; month++) {
      sum += excess(outcome.hours()[month] + change.needs(things, month, months), hours[month]);
      double cash = outcome.cash()[month] - change.needs(things + 1, month, months);
      double missing = lowestCash - cash;
      sum += missing > ROUNDING ? missing / Math.max(ONE, Math.abs(lowestCash)) : 0;
    }
    return sum;
  }

  /** What is most lacking for a candidate, by how far it is over its limit; empty if it fits. */
  Optional<Lack> lack(Outcome outcome, List<String> places) {
    Lack most = null;
    Set<String> all = new LinkedHashSet<>();
    double furthest = 0;
    for (int month = 0; month < hours.length; month++) {
      for (int place = 0; place < room.length; place++) {
        double needed = outcome.space()[place][month];
        double over = excess(needed, room[place][month]);
        note(all, over, ROOM_IN + places.get(place));
        if (over > furthest) {
          furthest = over;
          double lacks = needed - room[place][month];
          most = new Lack(Lack.Kind.ROOM, ROOM_IN + places.get(place), month, lacks, List.of());
        }
      }
      double over = excess(outcome.hours()[month], hours[month]);
      note(all, over, HOURS);
      if (over > furthest) {
        furthest = over;
        double lacks = outcome.hours()[month] - hours[month];
        most = new Lack(Lack.Kind.HOURS, HOURS, month, lacks, List.of());
      }
      double missing = lowestCash - outcome.cash()[month];
      double share = missing > ROUNDING ? missing / Math.max(ONE, Math.abs(lowestCash)) : 0;
      note(all, share, CASH);
      if (share > furthest) {
        furthest = share;
        most = new Lack(Lack.Kind.CASH, CASH, month, missing, List.of());
      }
    }
    return Optional.ofNullable(most).map(lack -> lack.beside(all));
  }

  private static void note(Set<String> all, double over, String name) {
    if (over > 0) {
      all.add(name);
    }
  }

  private static double excess(double needed, double limit) {
    double over = needed - limit;
    return over > ROUNDING ? over / Math.max(ONE, limit) : 0;
  }
}
