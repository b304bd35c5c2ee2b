package growingon.nursery.species;

import growingon.nursery.number.Check;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.supply.Pot;
import growingon.nursery.time.MonthShares;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A taxon with its growth and loss assumptions. Shares are 0 to 1, rates are a year.
 *
 * @param name as in the stock list
 * @param ladder name of its grade ladder
 * @param habit deciduous or evergreen
 * @param usualCondition growing condition where neither pot nor place names one
 * @param growth a curve for each growing condition
 * @param growthMonths how a year's growth falls over the months
 * @param vigourSpread coefficient of variation between plants
 * @param yearSpread coefficient of variation between years
 * @param lotSpread coefficient of variation of growth between lots, beyond that of years; empty for
 *     the nursery's
 * @param firstYearLoss share lost in the arrival month and the 11 after
 * @param laterLoss share lost a year after that
 * @param lossMonths how a year's loss falls over the months
 * @param lossSpread coefficient of variation of the loss between years
 * @param checkFirstYear growth factor in the month of root work and the next 11
 * @param checkSecondYear growth factor for the 12 months after that
 * @param potBoundMonths months at full rate after potting
 * @param potBoundFactor growth factor after that
 * @param winterPlace where potted plants stand in winter, if not in their own place
 * @param healthNote plant health note, may be empty
 * @param sure how sure growth and losses are; taken as known where null
 * @param fromLibrary what of it is from the library of species; empty if nothing is
 */
@RecordBuilder
public record Species(
    String name,
    String ladder,
    Habit habit,
    String usualCondition,
    Map<String, Curve> growth,
    MonthShares growthMonths,
    double vigourSpread,
    double yearSpread,
    OptionalDouble lotSpread,
    double firstYearLoss,
    double laterLoss,
    MonthShares lossMonths,
    double lossSpread,
    double checkFirstYear,
    double checkSecondYear,
    int potBoundMonths,
    double potBoundFactor,
    Optional<String> winterPlace,
    String healthNote,
    Sure sure,
    Optional<FromLibrary> fromLibrary)
    implements SpeciesBuilder.With {
  /** Spread of vigour between plants, where nothing is said. */
  public static final double USUAL_VIGOUR_SPREAD = 0.2;

  /** Spread of growth between years, where nothing is said. */
  public static final double USUAL_YEAR_SPREAD = 0.1;

  /** Spread of losses between years, where nothing is said. */
  public static final double USUAL_LOSS_SPREAD = 0.25;

  /** Growth in the first year after root work, where nothing is said. */
  public static final double USUAL_CHECK_FIRST_YEAR = 0.6;

  /** Growth in the second year after root work, where nothing is said. */
  public static final double USUAL_CHECK_SECOND_YEAR = 0.85;

  /** Months at full rate after potting, where nothing is said. */
  public static final int USUAL_POT_BOUND_MONTHS = 36;

  /** Growth after that, where nothing is said. */
  public static final double USUAL_POT_BOUND_FACTOR = 0.6;

  public Species {
    Check.named(name, "a species");
    Check.named(ladder, "the ladder of " + name);
    Check.named(usualCondition, "the usual condition of " + name);
    growth = Map.copyOf(growth);
    Check.that(growth.containsKey(usualCondition), "the usual condition needs a curve", growth);
    Check.notNegative(vigourSpread, "vigour spread");
    Check.notNegative(yearSpread, "year spread");
    Check.notNegative(lotSpread.orElse(0), "lot spread");
    Check.share(firstYearLoss, "first-year loss");
    Check.share(laterLoss, "later loss");
    Check.notNegative(lossSpread, "loss spread");
    Check.positive(checkFirstYear, "root-work check 1");
    Check.positive(checkSecondYear, "root-work check 2");
    Check.notNegative(potBoundMonths, "pot-bound months");
    Check.positive(potBoundFactor, "pot-bound factor");
    Objects.requireNonNull(habit);
    Objects.requireNonNull(growthMonths);
    Objects.requireNonNull(lossMonths);
    Objects.requireNonNull(winterPlace);
    Objects.requireNonNull(healthNote);
    sure = sure == null ? Sure.known(growth.keySet()) : sure;
    Check.that(
        sure.growth().keySet().containsAll(growth.keySet()),
        "of every growth it must be said how sure it is",
        sure.growth().keySet());
    Objects.requireNonNull(fromLibrary);
  }

  /** Factor on growth so long after root work, where the work itself does not say otherwise. */
  public double checkIn(RootWorkYear year) {
    return switch (year) {
      case FIRST -> checkFirstYear;
      case SECOND -> checkSecondYear;
      case NONE -> 1;
    };
  }

  /** Whether plants that were potted so many months ago have too small a pot. */
  public boolean isPotBound(int monthsSincePotting) {
    return monthsSincePotting >= potBoundMonths;
  }

  /** The same species with other spreads. */
  public Species varyingBy(
      double otherVigourSpread, double otherYearSpread, double otherLossSpread) {
    return with()
        .vigourSpread(otherVigourSpread)
        .yearSpread(otherYearSpread)
        .lossSpread(otherLossSpread)
        .build();
  }

  /** The same species with other losses. */
  public Species losing(double otherFirstYearLoss, double otherLaterLoss) {
    return with().firstYearLoss(otherFirstYearLoss).laterLoss(otherLaterLoss).build();
  }

  /**
   * The growing condition of plants in a pot or without one, in a place or without one: the place's
   * in a field bed or without a pot, else the pot's, else the usual one.
   */
  public String conditionIn(Optional<Pot> pot, Optional<Place> place) {
    boolean ofPlace =
        pot.isEmpty() || place.filter(each -> each.kind() == PlaceKind.FIELD_BED).isPresent();
    Optional<String> named =
        ofPlace ? place.flatMap(Place::condition) : pot.flatMap(Pot::condition);
    return named.orElse(usualCondition);
  }

  /** A species that so far has its usual values and no growth. */
  public static SpeciesBuilder named(String name) {
    return SpeciesBuilder.builder()
        .name(name)
        .habit(Habit.DECIDUOUS)
        .growthMonths(MonthShares.EVEN)
        .vigourSpread(USUAL_VIGOUR_SPREAD)
        .yearSpread(USUAL_YEAR_SPREAD)
        .lossMonths(MonthShares.EVEN)
        .lossSpread(USUAL_LOSS_SPREAD)
        .checkFirstYear(USUAL_CHECK_FIRST_YEAR)
        .checkSecondYear(USUAL_CHECK_SECOND_YEAR)
        .potBoundMonths(USUAL_POT_BOUND_MONTHS)
        .potBoundFactor(USUAL_POT_BOUND_FACTOR)
        .healthNote("");
  }
}
