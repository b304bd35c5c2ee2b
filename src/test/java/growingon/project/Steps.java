package growingon.project;

import growingon.nursery.Spacing;
import growingon.nursery.Step;
import growingon.nursery.When;
import java.time.Month;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A step to be built up in a test; it does nothing until told. */
public final class Steps {
  private final String name;
  private final When when;
  private Optional<Month> toMonth = Optional.empty();
  private double minutes;
  private Optional<String> pot = Optional.empty();
  private Optional<String> mix = Optional.empty();
  private double ballKept = 0.5;
  private double liftedBall;
  private Optional<String> place = Optional.empty();
  private Optional<Spacing> spacing = Optional.empty();
  private double loss;
  private double cull;
  private boolean sort;
  private boolean rootWork;
  private boolean training;
  private boolean potEnds;
  private Step.GrowthAfter growthAfter = Step.GrowthAfter.OF_SPECIES;
  private final Map<String, Double> materials = new LinkedHashMap<>();

  private Steps(String name, When when) {
    this.name = name;
    this.when = when;
  }

  public static Steps onArrival(String name) {
    return new Steps(name, new When.Arrival());
  }

  public static Steps in(String name, Month month, int year) {
    return new Steps(name, new When.InYear(month, year));
  }

  public static Steps after(String name, int months, String step) {
    return new Steps(name, new When.After(months, step));
  }

  public static Steps every(String name, int years, Month month) {
    return new Steps(name, new When.Every(years, month));
  }

  public static Steps once(String name, Month month, double trunkMm) {
    return new Steps(name, new When.Once(month, trunkMm));
  }

  public Steps to(Month month) {
    toMonth = Optional.of(month);
    return this;
  }

  public Steps minutes(double value) {
    minutes = value;
    return this;
  }

  public Steps pot(String value, String mixName) {
    pot = Optional.of(value);
    mix = Optional.ofNullable(mixName);
    return this;
  }

  public Steps ball(double keptShare, double liftedLitres) {
    ballKept = keptShare;
    liftedBall = liftedLitres;
    return this;
  }

  public Steps outOfThePot() {
    potEnds = true;
    return this;
  }

  public Steps growthAfter(double first, double second) {
    growthAfter = new Step.GrowthAfter(OptionalDouble.of(first), OptionalDouble.of(second));
    return this;
  }

  public Steps plantsPerM2(double plants) {
    spacing = Optional.of(new Spacing(0, OptionalDouble.of(plants)));
    return this;
  }

  public Steps place(String value) {
    place = Optional.of(value);
    return this;
  }

  public Steps gap(double mm) {
    spacing = Optional.of(new Spacing(mm, OptionalDouble.empty()));
    return this;
  }

  public Steps loss(double share) {
    loss = share;
    return this;
  }

  public Steps cull(double share) {
    cull = share;
    return this;
  }

  public Steps sort() {
    sort = true;
    return this;
  }

  public Steps rootWork() {
    rootWork = true;
    return this;
  }

  public Steps trainingStarts() {
    training = true;
    return this;
  }

  public Steps material(String material, double amount) {
    materials.put(material, amount);
    return this;
  }

  public Step build() {
    return Step.named(name, when)
        .toMonth(toMonth)
        .minutes(minutes)
        .pot(pot)
        .potEnds(potEnds)
        .mix(mix)
        .ballKeptShare(ballKept)
        .liftedBallLitres(liftedBall)
        .place(place)
        .spacing(spacing)
        .lossShare(loss)
        .cullShare(cull)
        .sort(sort)
        .rootWork(rootWork)
        .growthAfter(growthAfter)
        .trainingStarts(training)
        .materials(materials)
        .build();
  }
}
