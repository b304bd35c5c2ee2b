package growingon.buying;

import growingon.nursery.ExtraCosts;
import growingon.nursery.Horizon;
import growingon.nursery.Place;
import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.project.HoursUse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;

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

  private static final double CHANCE_ALLOWED = 0.1;

  private static final String ROOM_IN = "room in ";
  private static final String HOURS = "hours";
  private static final String CASH = "cash";

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
    Sum sum = new Sum();
    walk(outcome, change, sum);
    return sum.shares;
  }

  private static final class Sum implements Consumer<Shortage> {
    private double shares;

    @Override
    public void accept(Shortage each) {
      shares += each.share();
    }
  }

  /** What is most lacking for a candidate, by how far it is over its limit; empty if it fits. */
  Optional<Lack> lack(Outcome outcome, List<String> places) {
    List<Shortage> all =
        shortages(outcome).stream()
            .filter(each -> each.share() > 0)
            .sorted(Comparator.comparingInt(Shortage::month))
            .toList();
    Set<String> names = new LinkedHashSet<>();
    all.forEach(each -> names.add(name(each, places)));
    // The first of those that are equally far.
    return all.stream()
        .reduce((most, each) -> each.share() > most.share() ? each : most)
        .map(most -> lack(most, places).beside(names));
  }

  private static Lack lack(Shortage of, List<String> places) {
    return new Lack(of.what(), name(of, places), of.month(), of.amount(), List.of());
  }

  private static String name(Shortage of, List<String> places) {
    return switch (of.what()) {
      case ROOM -> ROOM_IN + places.get(of.place());
      case HOURS -> HOURS;
      case CASH -> CASH;
    };
  }

  /**
   * What there is, with nothing allowed over it.
   *
   * @param lowest lowest cash allowed, if there is one
   */
  public Limits asThereIs(OptionalDouble lowest) {
    double floor = lowest.orElse(Double.NEGATIVE_INFINITY);
    return new Limits(capacity, capacity, available, available, floor, chanceBelow, 0);
  }

  /** All that is short: each place month by month, then hours and cash. */
  public List<Shortage> shortages(Outcome outcome) {
    return shortages(outcome, Change.NONE);
  }

  /** The same where something more is changed. */
  List<Shortage> shortages(Outcome outcome, Change change) {
    List<Shortage> all = new ArrayList<>();
    walk(outcome, change, all::add);
    return all;
  }

  private void walk(Outcome outcome, Change change, Consumer<Shortage> to) {
    int months = hours.length;
    int places = room.length;
    for (int place = 0; place < places; place++) {
      for (int month = 0; month < months; month++) {
        double needed = outcome.space()[place][month] + change.needs(place, month, months);
        double limit = room[place][month];
        tell(Lack.Kind.ROOM, place, month, needed - limit, limit, to);
      }
    }
    for (int month = 0; month < months; month++) {
      double needed = outcome.hours()[month] + change.needs(places, month, months);
      tell(Lack.Kind.HOURS, places, month, needed - hours[month], hours[month], to);
      double cash = outcome.cash()[month] - change.needs(places + 1, month, months);
      tell(Lack.Kind.CASH, places + 1, month, lowestCash - cash, lowestCash, to);
    }
  }

  private static void tell(
      Lack.Kind what, int place, int month, double over, double limit, Consumer<Shortage> to) {
    if (over > 0) {
      to.accept(new Shortage(what, place, month, over, limit));
    }
  }
}
