package growingon.report.plan.work;

import growingon.nursery.Nursery;
import growingon.nursery.lot.Lot;
import growingon.nursery.route.Step;
import growingon.nursery.time.Horizon;
import growingon.project.history.Happening;
import growingon.project.history.Stood;
import growingon.project.need.HoursUse;
import growingon.project.need.SpaceUse;
import growingon.project.need.SpaceUse.PlaceMonth;
import growingon.report.figures.Context;
import growingon.report.text.Phrases;
import growingon.whole.WholeLot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What falls due in the next twelve months beside the steps of routes: plants that come, what must
 * be told before they do, and wire to be taken off.
 */
final class DueBeside {

  /** Months after which wire begins to cut into what it shapes; common practice, no source. */
  static final int MONTHS_OF_WIRE = 8;

  private final Context context;
  private final Nursery nursery;
  private final Horizon horizon;
  private final HoursUse hours;
  private final SpaceUse space;
  private final Phrases say;

  /**
   * A thing that falls due.
   *
   * @param month offset from the plan's first
   */
  record Due(int month, String what, String lot, int plants, Optional<String> place, String note) {}

  /** What is done in a place in a month is one line for all its lots. */
  private record Walk(int month, Optional<String> place) {}

  private DueBeside(Context context) {
    this.say = context.say();
    this.context = context;
    this.nursery = context.inputs().scenario().nursery();
    this.horizon = context.inputs().scenario().horizon();
    this.hours = context.accounts().hours();
    this.space = context.accounts().space();
  }

  /** All of the next twelve months, by month. */
  static List<Due> of(Context context) {
    return new DueBeside(context).due();
  }

  private List<Due> due() {
    List<Due> due = new ArrayList<>();
    Map<Walk, List<Due>> off = new LinkedHashMap<>();
    for (WholeLot lot : context.whole().lots()) {
      arrival(lot, due);
      wireOff(lot, off);
    }
    off.values().forEach(alike -> due.add(together(alike)));
    due.removeIf(
        each ->
            each.month() < 0 || each.month() >= Math.min(Context.NEXT_MONTHS, horizon.months()));
    due.sort(Comparator.comparingInt(Due::month));
    return due;
  }

  /** Wire that comes off in one month and place is one job. */
  private Due together(List<Due> alike) {
    Due first = alike.get(0);
    if (alike.size() == 1) {
      return first;
    }
    return new Due(
        first.month(),
        first.what(),
        say.counted(alike.size(), "lot", "lots"),
        alike.stream().mapToInt(Due::plants).sum(),
        first.place(),
        String.join(", ", alike.stream().map(Due::lot).toList()));
  }

  private void arrival(WholeLot whole, List<Due> due) {
    Lot lot = whole.history().lot();
    if (lot.purchase().isEmpty() || lot.quantity() == 0) {
      return;
    }
    int month = horizon.offset(lot.arrived());
    Optional<String> place = placeIn(whole, month);
    due.add(
        new Due(
            month,
            "%s %s come: unload, %s"
                .formatted(
                    say.whole(lot.quantity()),
                    lot.species(),
                    pottedIn(whole, month) ? "pot" : isPotted(lot) ? "set down" : "heel in"),
            lot.name(),
            lot.quantity(),
            place,
            room(month, place)));
    if (isFromAbroad(lot)) {
      due.add(
          new Due(
              Math.max(0, month - 1),
              "tell plant health before this import arrives",
              lot.name(),
              lot.quantity(),
              place,
              "from %s, arrives in %s".formatted(lot.papers().origin(), say.month(lot.arrived()))));
    }
  }

  private static boolean isPotted(Lot lot) {
    return lot.potting().pot().isPresent();
  }

  private static boolean pottedIn(WholeLot lot, int month) {
    return lot.history().happenings().stream()
        .anyMatch(each -> each.month() == month && each.pot().isPresent());
  }

  private static Optional<String> placeIn(WholeLot lot, int month) {
    boolean within = month >= 0 && month < lot.history().months();
    Stood stood = within ? lot.history().stood(month) : null;
    return stood == null ? lot.history().lot().standing().place() : stood.place();
  }

  private boolean isFromAbroad(Lot lot) {
    String origin = lot.papers().origin().strip().toLowerCase(Locale.ROOT);
    return !origin.isEmpty()
        && nursery
            .settings()
            .country()
            .filter(country -> !country.strip().toLowerCase(Locale.ROOT).equals(origin))
            .isPresent();
  }

  /** Room and hours of the month in which plants come. */
  private String room(int month, Optional<String> place) {
    if (month < 0 || month >= horizon.months()) {
      return "";
    }
    List<String> parts = new ArrayList<>();
    if (place.isPresent() && space.places().contains(place)) {
      PlaceMonth there = space.months(place).get(month);
      parts.add(
          there.overflowM2() > Phrases.NEGLIGIBLE
              ? say.squareMetres(there.overflowM2()) + " too little there"
              : say.squareMetres(there.roomM2()) + " still free there");
    }
    Optional<Double> available = hours.available(month);
    parts.add(
        available
            .map(all -> "%s needed of %s".formatted(say.whole(hours.needed(month)), say.hours(all)))
            .orElseGet(() -> say.hours(hours.needed(month)) + " needed"));
    return String.join("; ", parts);
  }

  /** Months after each step that puts wire on. */
  private void wireOff(WholeLot lot, Map<Walk, List<Due>> off) {
    List<Step> steps = nursery.routeOf(lot.history().lot()).steps();
    for (Happening done : lot.history().happenings()) {
      boolean wired =
          steps.stream()
              .filter(step -> step.name().equals(done.job()))
              .anyMatch(step -> step.materials().keySet().stream().anyMatch(DueBeside::isWire));
      int month = done.month() + MONTHS_OF_WIRE;
      if (wired && month < horizon.months() && lot.standingAfterWork(month) > 0) {
        off.computeIfAbsent(new Walk(month, placeIn(lot, month)), each -> new ArrayList<>())
            .add(
                new Due(
                    month,
                    "wire off",
                    lot.history().lot().name(),
                    lot.standingAfterWork(month),
                    placeIn(lot, month),
                    "wired in " + say.month(horizon.month(done.month()))));
      }
    }
  }

  private static boolean isWire(String material) {
    return material.toLowerCase(Locale.ROOT).contains("wire");
  }
}
