package growingon.project;

import growingon.nursery.place.Spacing;
import growingon.nursery.route.Step;
import growingon.nursery.route.StepBuilder;
import growingon.nursery.route.When;
import java.time.Month;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A step to be built up in a test; it does nothing until told. */
public final class Steps {
  private final StepBuilder step;
  private final Map<String, Double> materials = new LinkedHashMap<>();

  private Steps(String name, When when) {
    this.step = Step.named(name, when);
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
    step.toMonth(Optional.of(month));
    return this;
  }

  public Steps minutes(double value) {
    step.minutes(value);
    return this;
  }

  public Steps pot(String value, String mixName) {
    step.pot(Optional.of(value)).mix(Optional.ofNullable(mixName));
    return this;
  }

  public Steps ball(double keptShare, double liftedLitres) {
    step.ballKeptShare(keptShare).liftedBallLitres(liftedLitres);
    return this;
  }

  public Steps outOfThePot() {
    step.potEnds(true);
    return this;
  }

  public Steps growthAfter(double first, double second) {
    step.growthAfter(new Step.GrowthAfter(OptionalDouble.of(first), OptionalDouble.of(second)));
    return this;
  }

  public Steps plantsPerM2(double plants) {
    step.spacing(Optional.of(new Spacing(0, OptionalDouble.of(plants))));
    return this;
  }

  public Steps place(String value) {
    step.place(Optional.of(value));
    return this;
  }

  public Steps gap(double mm) {
    step.spacing(Optional.of(new Spacing(mm, OptionalDouble.empty())));
    return this;
  }

  public Steps loss(double share) {
    step.lossShare(share);
    return this;
  }

  public Steps cull(double share) {
    step.cullShare(share);
    return this;
  }

  public Steps sort() {
    step.sort(true);
    return this;
  }

  public Steps rootWork() {
    step.rootWork(true);
    return this;
  }

  public Steps trainingStarts() {
    step.trainingStarts(true);
    return this;
  }

  public Steps material(String material, double amount) {
    materials.put(material, amount);
    return this;
  }

  public Step build() {
    return step.materials(materials).build();
  }
}
