package growingon.buying.question;

import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Hold;
import growingon.nursery.lot.Hold.Which;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Ladder;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.lot.LotHistory;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What may be held of each lot: of a grade above the lowest that some of its plants reach within
 * the plan and that somebody wants, a quarter, a half, three quarters or all, the best first.
 */
final class Holds {
  private static final List<Double> SHARES = List.of(0.25, 0.5, 0.75, 1.0);

  private final Scenario scenario;
  private final Projection all;

  /** Of the lots read and those of every offer, which are looked at in one projection. */
  Holds(Inputs inputs) {
    this.scenario = inputs.scenario();
    List<Lot> lots = new ArrayList<>(scenario.lots());
    List<String> there = lots.stream().map(Lot::name).toList();
    for (Offer offer : inputs.offers()) {
      offer.orders(scenario.horizon()).stream()
          .filter(order -> !there.contains(order.name()))
          .forEach(order -> lots.add(order.taken(order.least())));
    }
    this.all = Projector.project(scenario.withLots(lots));
  }

  /** What may be held of lots of one name, as given first. */
  List<Optional<Hold>> of(String name, List<Lot> lots) {
    Optional<Hold> given = lots.get(0).hold();
    List<Optional<Hold>> holds = new ArrayList<>(List.of(given));
    boolean isSaid =
        Optional.ofNullable(scenario.plan().holds().get(name))
            .filter(said -> !said.advised())
            .isPresent();
    if (isSaid || lots.stream().allMatch(this::hasNothingToHold)) {
      return holds;
    }
    if (given.isPresent()) {
      holds.add(Optional.empty());
    }
    Ladder ladder = scenario.nursery().ladderOf(lots.get(0));
    for (int grade = 1; grade < ladder.grades().size(); grade++) {
      if (isWorthWaitingFor(grade, ladder, lots)) {
        add(ladder.grades().get(grade), given, holds);
      }
    }
    return holds;
  }

  private static void add(Grade grade, Optional<Hold> given, List<Optional<Hold>> holds) {
    for (double share : SHARES) {
      Hold hold = new Hold(grade.name(), share, Which.BEST);
      if (given.filter(hold::holdsAs).isEmpty()) {
        holds.add(Optional.of(hold));
      }
    }
  }

  private boolean hasNothingToHold(Lot lot) {
    LotHistory history = all.lot(lot.name());
    return history.lot().quantity() == history.lot().kept();
  }

  private boolean isWorthWaitingFor(int grade, Ladder ladder, List<Lot> lots) {
    String name = ladder.grades().get(grade).name();
    boolean wanted =
        scenario.nursery().demand().stream()
            .filter(row -> row.ladder().equals(ladder.name()) && row.grade().equals(name))
            .anyMatch(row -> row.species().map(lots.get(0).species()::equals).orElse(true));
    return wanted && lots.stream().anyMatch(lot -> all.lot(lot.name()).reaches(grade));
  }
}
