package growingon.report.figures;

import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Purchase;
import growingon.nursery.lot.Trunks;
import growingon.nursery.time.Horizon;
import growingon.project.history.Happening;
import growingon.project.history.Reached;
import growingon.project.history.Stood;
import growingon.project.history.Work;
import growingon.project.lot.LotHistory;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.whole.WholeLot;
import growingon.whole.WholeSale;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** The line of life of one lot: what happens to it, in order of time. */
public final class LotLife {
  /**
   * One event.
   *
   * @param month offset of its month
   * @param order place within the month: arrival, work, moves, grades, season end
   * @param event one or two words
   * @param what what happened
   * @param plants plants it concerns, or that stand afterwards
   * @param place where the lot stands afterwards, if in a place
   * @param hours hours of work; NaN where none are asked for
   * @param received money received; NaN where none is asked for
   */
  public record Event(
      int month,
      int order,
      String event,
      String what,
      Plants plants,
      Optional<String> place,
      double hours,
      double received) {}

  private static final double HALF_A_CENT = 0.005;

  private final LotHistory lot;
  private final WholeLot whole;
  private final Horizon horizon;
  private final Phrases say;
  private final List<Event> events = new ArrayList<>();

  private LotLife(WholeLot whole, Horizon horizon, Phrases say) {
    this.lot = whole.history();
    this.whole = whole;
    this.horizon = horizon;
    this.say = say;
  }

  public static List<Event> of(WholeLot lot, Horizon horizon, Phrases say) {
    LotLife life = new LotLife(lot, horizon, say);
    if (life.lot.start() >= life.lot.months()) {
      return List.of();
    }
    life.begins();
    for (int i = 0; i < life.lot.happenings().size(); i++) {
      life.works(i);
    }
    life.moves();
    life.lot.reached().forEach(life::reaches);
    for (int i = 0; i < life.lot.seasons().size(); i++) {
      life.seasonEnds(new SeasonEnd(lot, i), life.lot.seasons().get(i).meanTrunkMm());
    }
    life.events.sort(Comparator.comparingInt(Event::month).thenComparingInt(Event::order));
    return life.events;
  }

  private void add(int month, int order, String event, String what, Plants plants) {
    add(new Event(month, order, event, what, plants, placeIn(month), Double.NaN, Double.NaN));
  }

  private void add(Event event) {
    events.add(event);
  }

  private Optional<String> placeIn(int month) {
    Stood stood = lot.stood(month);
    return stood == null ? Optional.empty() : stood.place();
  }

  private void begins() {
    Lot plants = lot.lot();
    boolean arrives = horizon.contains(plants.arrived());
    List<String> parts = new ArrayList<>();
    parts.add(arrives ? plants.form().toString() : "here since " + say.month(plants.arrived()));
    parts.add("trunk " + trunks(plants.trunks()));
    plants.potting().pot().ifPresent(pot -> parts.add("in pot " + pot));
    plants.purchase().ifPresent(bought -> parts.add(price(bought, plants)));
    if (whole.diedBefore() > 0) {
      parts.add(say.plants(whole.diedBefore()) + " died since the count");
    }
    waits(plants).ifPresent(parts::add);
    Plants number = Plants.of(lot.standingAtStart(), whole.standingAtStart());
    add(lot.start(), 0, arrives ? "arrives" : "stands", String.join("; ", parts), number);
  }

  private String price(Purchase bought, Lot plants) {
    return "%s each, %s landed"
        .formatted(say.each(bought.unitPrice()), say.money(bought.landed(plants.quantity())));
  }

  private Optional<String> waits(Lot plants) {
    int apartUntil = horizon.offset(plants.arrived()) + plants.apartMonths() - 1;
    List<String> waits = new ArrayList<>();
    if (apartUntil >= lot.start()) {
      waits.add("stands apart to " + say.month(horizon, apartUntil));
    }
    if (horizon.offset(plants.notBefore()) > lot.start()) {
      waits.add("not sold before " + say.month(plants.notBefore()));
    }
    return waits.isEmpty() ? Optional.empty() : Optional.of(Phrases.list(waits));
  }

  /** 14 mm on average, or 10 to 14 mm. */
  String trunks(Trunks trunks) {
    return trunks instanceof Trunks.SizeClass evenly
        ? "%s to %s mm".formatted(mm(evenly.fromMm()), mm(evenly.toMm()))
        : mm(trunks.meanMm()) + " mm on average";
  }

  private String mm(double value) {
    return say.whole(value);
  }

  private void works(int index) {
    Happening done = lot.happenings().get(index);
    int died = whole.diedOf(index);
    int culled = whole.culledAt(index);
    if (whole.workedOn(index) + died + culled == 0) {
      return;
    }
    List<String> parts = new ArrayList<>();
    done.pot().ifPresent(pot -> parts.add("into pot " + pot + used(done)));
    if (died > 0) {
      parts.add(say.plants(died) + " lost by it");
    }
    if (culled > 0) {
      parts.add(say.plants(culled) + " culled");
    }
    if (done.months() > 1) {
      parts.add("work spread to " + say.month(horizon, done.month() + done.months() - 1));
    }
    if (!done.place().equals(done.toPlace()) && !isMovedForWinter(done)) {
      parts.add(moved(done));
    }
    if (done.dueMonth().isPresent()) {
      parts.add("was due in " + say.month(horizon, done.dueMonth().getAsInt()));
    }
    add(
        new Event(
            done.month(),
            1,
            done.job(),
            String.join("; ", parts),
            Plants.of(done.plants(), whole.workedOn(index)),
            done.toPlace(),
            done.hours(),
            Double.NaN));
  }

  private String used(Happening done) {
    String again = done.potsUsed() < 0.5 ? " (its own again)" : "";
    return done.substrateLitres() < 0.5
        ? again
        : again + " with " + say.counted(done.substrateLitres(), "litre", "litres") + " of mix";
  }

  /** Whether the winter move of the same month tells the move already. */
  private boolean isMovedForWinter(Happening done) {
    return !done.job().equals(Work.WINTER_MOVE)
        && lot.happenings().stream()
            .anyMatch(
                other -> other.month() == done.month() && other.job().equals(Work.WINTER_MOVE));
  }

  private static String moved(Happening done) {
    return "from " + named(done.place()) + " to " + named(done.toPlace());
  }

  private static String named(Optional<String> place) {
    return place.orElse("no place");
  }

  /** Moves that no step made: into its own place after a time apart. */
  private void moves() {
    for (int month = lot.start() + 1; month < lot.months(); month++) {
      Optional<String> before = placeIn(month - 1);
      Optional<String> now = placeIn(month);
      if (isThere(month) && !now.equals(before) && !isTold(month, now)) {
        String what = "from " + named(before) + " to its own place";
        double exact = lot.stood(month).plants();
        add(month, 2, "moves", what, Plants.of(exact, whole.standingAfterWork(month)));
      }
    }
  }

  private boolean isThere(int month) {
    return lot.stood(month) != null && whole.standingAfterWork(month) > 0;
  }

  private boolean isTold(int month, Optional<String> place) {
    return lot.happenings().stream()
        .anyMatch(
            done ->
                done.month() == month
                    && done.toPlace().equals(place)
                    && !done.place().equals(place));
  }

  private void reaches(Reached reached) {
    String grade = lot.grades().get(reached.grade()).name();
    Map<Integer, String> tenths = new LinkedHashMap<>();
    put(tenths, reached.firstTenth(), "a tenth has");
    put(tenths, reached.middle(), "half have");
    put(tenths, reached.lastTenth(), "nine tenths have");
    tenths.forEach((month, who) -> addGrade(month, who, grade));
  }

  private static void put(Map<Integer, String> tenths, OptionalInt month, String who) {
    month.ifPresent(each -> tenths.put(each, who));
  }

  private void addGrade(int month, String who, String grade) {
    if (whole.standing(month) > 0) {
      add(month, 3, "grade", who + " reached " + grade, standing(month));
    }
  }

  private Plants standing(int month) {
    return Plants.of(lot.standing(month), whole.standing(month));
  }

  private void seasonEnds(SeasonEnd end, double meanTrunkMm) {
    int first = Math.max(lot.start(), horizon.seasonFirst(end.season()));
    int last = horizon.seasonLast(end.season());
    int died = whole.diedUpTo(last) - whole.diedUpTo(first - 1);
    int culled = whole.culledUpTo(last) - whole.culledUpTo(first - 1);
    int sold = whole.soldUpTo(last) - whole.soldUpTo(first - 1);
    double received = received(first, last);
    if (whole.standing(last) + sold + died + culled == 0 && received < HALF_A_CENT) {
      return;
    }
    List<String> parts = new ArrayList<>();
    parts.add(horizon.seasonLabel(end.season()));
    if (sold > 0) {
      parts.add(say.plants(sold) + " sold (" + soldByGrade(first, last) + ")");
    }
    if (died > 0) {
      parts.add(say.plants(died) + " died");
    }
    if (culled > 0) {
      parts.add(say.plants(culled) + " culled");
    }
    parts.addAll(stands(whole.standing(last), end, meanTrunkMm));
    String event = last == lot.months() - 1 ? "end of plan" : "season end";
    String what = String.join("; ", parts);
    add(new Event(last, 4, event, what, standing(last), placeIn(last), Double.NaN, received));
  }

  private List<String> stands(int standing, SeasonEnd end, double meanTrunkMm) {
    if (standing == 0) {
      return List.of("none stands");
    }
    long ready = end.ready().whole();
    return List.of(
        "%s, mean trunk %s mm"
            .formatted(
                say.counted(standing, "stands", "stand"),
                say.writing().marked(Double.toString(Math.round(meanTrunkMm * 10) / 10.0))),
        ready == 0 ? "none ready to sell" : say.whole(ready) + " ready to sell");
  }

  private String soldByGrade(int first, int last) {
    int[] byGrade = new int[lot.grades().size()];
    for (WholeSale sale : whole.sales()) {
      if (sale.month() >= first && sale.month() <= last) {
        byGrade[sale.grade()] += sale.whole();
      }
    }
    List<String> parts = new ArrayList<>();
    for (int grade = 0; grade < byGrade.length; grade++) {
      if (byGrade[grade] > 0) {
        parts.add(byGrade[grade] + " " + lot.grades().get(grade).name());
      }
    }
    return Phrases.list(parts);
  }

  /** What the season's whole plants brought. */
  private double received(int first, int last) {
    return whole.sales().stream()
        .filter(sale -> sale.month() >= first && sale.month() <= last)
        .mapToDouble(WholeSale::receipts)
        .sum();
  }
}
