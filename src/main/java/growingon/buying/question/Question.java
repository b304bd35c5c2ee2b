package growingon.buying.question;

import growingon.buying.question.Choice.Holding;
import growingon.buying.question.Choice.Take;
import growingon.nursery.Inputs;
import growingon.nursery.Nursery;
import growingon.nursery.Plan;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Hold;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What is to be decided of a nursery and a plan: which offers are taken, how many of each, and what
 * is held of each lot. What is ordered already and what the plan itself says of holds is given.
 */
public final class Question {
  private static final int FEW_CHOICES = 50;

  private final Scenario scenario;
  private final List<Choice> choices = new ArrayList<>();
  private final List<Slot> slots = new ArrayList<>();
  private final Map<String, List<Slot>> byLadder = new LinkedHashMap<>();
  private final List<Lot> planned;

  /** Which choices are asked for. */
  public enum Scope {
    /** Purchases and holds. */
    ALL,
    /** Purchases; holds stay as given. */
    PURCHASES,
    /** Holds; takes stay as in the plan. */
    HOLDS
  }

  /**
   * A lot that may stand in the plan.
   *
   * @param lot the lot as given; of an order not placed yet without plants
   * @param order the order that it comes of, if it is not placed yet
   * @param take index of the choice of how many, or −1
   * @param holding index of the choice of what is held, or −1
   * @param made lots made already, by number and hold
   */
  private record Slot(
      Lot lot, Optional<Offer> order, int take, int holding, Map<List<Integer>, Lot> made) {}

  private Question(Inputs inputs, Scope scope) {
    this.scenario = inputs.scenario();
    this.planned = scenario.lots();
    boolean buys = scope != Scope.HOLDS;
    boolean holds = scope != Scope.PURCHASES;
    Holds possible = new Holds(inputs);
    Plan plan = scenario.plan();
    List<String> offered = new ArrayList<>();
    for (Offer offer : inputs.offers()) {
      offer.orders(scenario.horizon()).forEach(order -> offered.add(order.name()));
    }
    for (Lot lot : scenario.lots()) {
      if (!offered.contains(lot.name())) {
        add(lot, Optional.empty(), -1, holds ? holding(lot.name(), List.of(lot), possible) : -1);
      }
    }
    for (Offer offer : inputs.offers()) {
      addOffer(offer, plan, buys, holds ? possible : null);
    }
  }

  /** What is to be decided of what was read. */
  public static Question of(Inputs inputs, Scope scope) {
    return new Question(inputs, scope);
  }

  private void addOffer(Offer offer, Plan plan, boolean buys, Holds possible) {
    List<Offer> open = new ArrayList<>();
    List<Offer> placed = new ArrayList<>();
    for (Offer order : offer.orders(scenario.horizon())) {
      boolean ordered =
          plan.ordered().contains(order.name()) || plan.ordered().contains(offer.name());
      (buys && !ordered ? open : placed).add(order);
    }
    int take = -1;
    if (!open.isEmpty()) {
      take = choices.size();
      choices.add(new Take(offer, open, ladder(offer.lot())));
    }
    List<Lot> lots = new ArrayList<>();
    placed.stream().map(this::plannedLot).flatMap(Optional::stream).forEach(lots::add);
    open.forEach(order -> lots.add(held(order.lot(), offer)));
    int holding = possible == null || lots.isEmpty() ? -1 : holding(offer.name(), lots, possible);
    for (Offer order : placed) {
      plannedLot(order).ifPresent(lot -> add(lot, Optional.empty(), -1, holding));
    }
    for (Offer order : open) {
      add(held(order.lot(), offer), Optional.of(order), take, holding);
    }
  }

  private Optional<Lot> plannedLot(Offer order) {
    return planned.stream().filter(lot -> lot.name().equals(order.name())).findFirst();
  }

  private Lot held(Lot lot, Offer offer) {
    return scenario
        .plan()
        .held(lot.name(), offer.name())
        .map(said -> lot.withHold(said.hold()))
        .orElse(lot);
  }

  private int holding(String name, List<Lot> lots, Holds possible) {
    List<Optional<Hold>> holds = possible.of(name, lots);
    if (holds.size() < 2) {
      return -1;
    }
    boolean ofOffer =
        lots.stream().anyMatch(lot -> lot.purchase().isPresent() || lot.quantity() == 0);
    choices.add(new Holding(name, ofOffer, holds, ladder(lots.get(0))));
    return choices.size() - 1;
  }

  private void add(Lot lot, Optional<Offer> order, int take, int holding) {
    Slot slot = new Slot(lot, order, take, holding, new ConcurrentHashMap<>());
    slots.add(slot);
    byLadder.computeIfAbsent(ladder(lot), any -> new ArrayList<>()).add(slot);
  }

  private String ladder(Lot lot) {
    return scenario.nursery().ladderOf(lot).name();
  }

  /** The nursery and plan, with its lots as planned. */
  public Scenario scenario() {
    return scenario;
  }

  /** What a choice of many is of the whole beside one of few: 1 up to fifty choices. */
  public double shareOfFew() {
    return Math.min(1, FEW_CHOICES / (double) choices.size());
  }

  /** What is decided: of each offer, then what is held of it, in the order of the tables. */
  public List<Choice> choices() {
    return List.copyOf(choices);
  }

  /** A choice by its index. */
  public Choice choice(int index) {
    return choices.get(index);
  }

  /** Whether a choice is how many of an offer are taken. */
  public boolean isTake(int choice) {
    return choices.get(choice) instanceof Take;
  }

  /** Index of the take of an offer; −1 if it is not decided. */
  public int takeOf(String offer) {
    for (int i = 0; i < choices.size(); i++) {
      if (choices.get(i) instanceof Take take && take.name().equals(offer)) {
        return i;
      }
    }
    return -1;
  }

  /** Index of what is held of a lot or offer; −1 if it is not decided. */
  public int holdingOf(String name) {
    for (int i = 0; i < choices.size(); i++) {
      if (choices.get(i) instanceof Holding holding && holding.name().equals(name)) {
        return i;
      }
    }
    return -1;
  }

  /** Ladders of lots, by name, in the order in which lots of them come up. */
  public List<String> ladders() {
    return List.copyOf(byLadder.keySet());
  }

  /** Nothing bought beyond what is ordered, everything held as given. */
  public Candidate asGiven() {
    return Candidate.nothing(choices.size());
  }

  /**
   * The plan's own purchases with everything held as given; of an offer that comes again, as many
   * as of its first order.
   */
  public Candidate asPlanned() {
    Candidate candidate = asGiven();
    for (int i = 0; i < choices.size(); i++) {
      if (choices.get(i) instanceof Take take) {
        int number = scenario.plan().taken(take.orders().get(0).name(), take.name());
        candidate = candidate.with(i, number);
      }
    }
    return candidate;
  }

  /** The lots of a candidate in the order in which a plan that says the same has them. */
  public List<Lot> lots(Candidate candidate) {
    return lots(slots, candidate);
  }

  /** Those of one ladder. */
  public List<Lot> lots(String ladder, Candidate candidate) {
    return lots(byLadder.get(ladder), candidate);
  }

  private List<Lot> lots(List<Slot> slots, Candidate candidate) {
    List<Lot> lots = new ArrayList<>(slots.size());
    for (Slot slot : slots) {
      int number = slot.take() < 0 ? 0 : candidate.value(slot.take());
      if (slot.order().isEmpty() || number > 0) {
        lots.add(lot(slot, number, slot.holding() < 0 ? 0 : candidate.value(slot.holding())));
      }
    }
    return lots;
  }

  private Lot lot(Slot slot, int number, int hold) {
    return slot.made().computeIfAbsent(List.of(number, hold), any -> make(slot, number, hold));
  }

  /** The first hold is what each lot has as given, which may differ between orders. */
  private Lot make(Slot slot, int number, int hold) {
    Lot lot =
        slot.order()
            .map(order -> order.taken(number).withHold(slot.lot().hold()))
            .orElse(slot.lot());
    return hold == 0 ? lot : lot.withHold(((Holding) choices.get(slot.holding())).hold(hold));
  }

  /** Values that tell which lots of a ladder a candidate has. */
  public List<Integer> key(String ladder, Candidate candidate) {
    List<Integer> key = new ArrayList<>();
    for (int i = 0; i < choices.size(); i++) {
      if (choices.get(i).ladder().equals(ladder)) {
        key.add(candidate.value(i));
      }
    }
    return key;
  }

  /** Plants bought. */
  public int bought(Candidate candidate) {
    int plants = 0;
    for (int i = 0; i < choices.size(); i++) {
      if (choices.get(i) instanceof Take take) {
        plants += candidate.value(i) * take.orders().size();
      }
    }
    return plants;
  }

  /** How many choices differ from another candidate. */
  public int changes(Candidate candidate, Candidate from) {
    int changes = 0;
    for (int i = 0; i < choices.size(); i++) {
      changes += counts(candidate, i) && candidate.value(i) != from.value(i) ? 1 : 0;
    }
    return changes;
  }

  /** Whether a choice moves anything: what is held of an offer counts only where it is taken. */
  public boolean counts(Candidate candidate, int choice) {
    int take = choices.get(choice) instanceof Holding holding ? takeOf(holding.name()) : -1;
    return take < 0 || candidate.value(take) > 0;
  }

  /** Whether an offer, or an order of one, is decided. */
  public boolean decides(String offer) {
    return choices.stream()
        .filter(Take.class::isInstance)
        .map(Take.class::cast)
        .anyMatch(take -> take.orders().stream().anyMatch(order -> order.name().equals(offer)));
  }

  /** Whether a name is that of an offer that a candidate does not take. */
  public boolean isNotTaken(String name, Candidate candidate) {
    int take = takeOf(name);
    return take >= 0 && candidate.value(take) == 0;
  }

  /** The same with nothing said of what is held of offers that are not taken. */
  public Candidate tidy(Candidate candidate) {
    Candidate tidy = candidate;
    for (int i = 0; i < choices.size(); i++) {
      tidy = counts(tidy, i) ? tidy : tidy.with(i, 0);
    }
    return tidy;
  }

  /** The nursery of the plan. */
  public Nursery nursery() {
    return scenario.nursery();
  }
}
