package growingon.nursery.place;

import growingon.nursery.number.Check;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.YearMonth;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A bench, tunnel bay, standing ground, field bed or quarantine place.
 *
 * @param name as lots name it
 * @param kind what sort of place
 * @param condition growing condition, if it names one
 * @param squareMetres whole floor or bench area
 * @param usableShare share of it on which plants can stand
 * @param benchDepthMm depth across which whole rows must fit, if it is a bench of that sort
 * @param kgPerM2 greatest load, if known
 * @param costPerM2Year yearly cost of a square metre, used or not
 * @param layout square or offset rows
 * @param liftFrom height from which pots are lifted
 * @param from first month it can be used, if not always
 * @param until last month it can be used, if not for ever
 * @param minutesASale minutes of work to sell one plant from it; empty for the nursery's
 * @param extraM2Cost what a square metre more would cost a month; empty for the nursery's
 */
@RecordBuilder
public record Place(
    String name,
    PlaceKind kind,
    Optional<String> condition,
    double squareMetres,
    double usableShare,
    OptionalDouble benchDepthMm,
    OptionalDouble kgPerM2,
    double costPerM2Year,
    Layout layout,
    LiftFrom liftFrom,
    Optional<YearMonth> from,
    Optional<YearMonth> until,
    OptionalDouble minutesASale,
    OptionalDouble extraM2Cost) {
  /** Share of a place on which plants can stand, where nothing is said. */
  public static final double USUAL_USABLE = 0.7;

  public Place {
    Check.named(name, "a place");
    Objects.requireNonNull(kind);
    Objects.requireNonNull(condition);
    Objects.requireNonNull(layout);
    Objects.requireNonNull(liftFrom);
    Objects.requireNonNull(from);
    Objects.requireNonNull(until);
    Check.notNegative(minutesASale.orElse(0), "minutes a sale of " + name);
    Check.notNegative(squareMetres, "square metres of " + name);
    Check.that(usableShare > 0 && usableShare <= 1, "usable share of " + name, usableShare);
    Check.positive(benchDepthMm.orElse(1), "bench depth of " + name);
    Check.positive(kgPerM2.orElse(1), "load limit of " + name);
    Check.notNegative(costPerM2Year, "cost of " + name);
    Check.notNegative(extraM2Cost.orElse(0), "cost of more of " + name);
  }

  /** Whether it can be used in the month. */
  public boolean isOpen(YearMonth month) {
    return from.map(first -> !month.isBefore(first)).orElse(true)
        && until.map(last -> !month.isAfter(last)).orElse(true);
  }

  /** Square metres on which plants can stand in the month; 0 when it is closed. */
  public double capacityM2(YearMonth month) {
    return isOpen(month) ? squareMetres * usableShare : 0;
  }

  /** What the whole place costs in a month, used or not; nothing while it is closed. */
  public double monthlyCost(YearMonth month) {
    return isOpen(month) ? squareMetres * costPerM2Year / 12 : 0;
  }

  /** What a square metre in use is charged in a month: the cost of the usable share alone. */
  public double chargePerM2(YearMonth month) {
    return isOpen(month) ? costPerM2Year / 12 / usableShare : 0;
  }

  /** A place that is open always and of which nothing else is said yet. */
  public static PlaceBuilder named(String name, PlaceKind kind) {
    return PlaceBuilder.builder()
        .name(name)
        .kind(kind)
        .usableShare(USUAL_USABLE)
        .layout(Layout.SQUARE);
  }
}
