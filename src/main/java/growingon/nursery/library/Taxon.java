package growingon.nursery.library;

import growingon.nursery.number.Check;
import growingon.nursery.species.Habit;
import growingon.nursery.species.LibrarySite;
import growingon.nursery.species.Sure;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A row of the library: a species, or the middle of a genus or kind. Winter protection, cautions
 * and transplanting are common practice, no source.
 *
 * @param species botanical name; of a middle what it is the middle of
 * @param name English name
 * @param otherNames further names of the same
 * @param standsInFor names of near relations for which it may stand in
 * @param habit deciduous or evergreen
 * @param fieldMm growth of the trunk in the field, mm a year
 * @param basis what that rests on
 * @param sources how many sources measured it
 * @param mostMm trunk at which growth ends
 * @param vigourSpread coefficient of variation between plants, by its usual propagation
 * @param yearSpread coefficient of variation between years
 * @param firstYearLoss share lost in the field in the first year
 * @param laterLoss share lost in the field a year after that
 * @param transplanting how well it bears being moved
 * @param propagation how it is usually raised
 * @param winterProtection whether its pots want protection in winter
 * @param caution what to beware of, may be empty
 * @param growthSources ids of the sources of growth
 * @param lossSources ids of the sources of losses
 */
@RecordBuilder
public record Taxon(
    String species,
    String name,
    List<String> otherNames,
    List<String> standsInFor,
    Habit habit,
    double fieldMm,
    Basis basis,
    int sources,
    double mostMm,
    double vigourSpread,
    double yearSpread,
    double firstYearLoss,
    double laterLoss,
    Transplanting transplanting,
    String propagation,
    boolean winterProtection,
    String caution,
    List<String> growthSources,
    List<String> lossSources)
    implements TaxonBuilder.With {
  /** Spread between plants of one clone: common practice, no source. */
  public static final double CLONE_VIGOUR_SPREAD = 0.12;

  private static final double LATER_LOSS_SURE = 0.9;

  public Taxon {
    Check.named(species, "a row of the library");
    Check.named(name, species);
    otherNames = List.copyOf(otherNames);
    standsInFor = List.copyOf(standsInFor);
    Objects.requireNonNull(habit);
    Check.positive(fieldMm, "growth of " + species);
    Objects.requireNonNull(basis);
    Check.notNegative(sources, "sources of " + species);
    Check.positive(mostMm, "greatest trunk of " + species);
    Check.notNegative(vigourSpread, "vigour spread of " + species);
    Check.notNegative(yearSpread, "year spread of " + species);
    Check.share(firstYearLoss, "first-year loss of " + species);
    Check.share(laterLoss, "later loss of " + species);
    Objects.requireNonNull(transplanting);
    Objects.requireNonNull(propagation);
    Objects.requireNonNull(caution);
    growthSources = List.copyOf(growthSources);
    lossSources = List.copyOf(lossSources);
  }

  /** {@code Japanese maple (Acer palmatum)}, or one name where both are the same. */
  public String shown() {
    return name.equalsIgnoreCase(species) ? name : name + " (" + species + ")";
  }

  /** Every name by which it is found as itself. */
  Stream<String> ownNames() {
    return Stream.concat(Stream.of(species, name), otherNames.stream());
  }

  /** The same standing in for a relation: no surer than its genus would be. */
  Taxon asStandIn() {
    return with().basis(basis.orWeaker(Basis.GENUS)).sources(0).build();
  }

  /**
   * Its figures in a growing condition. Growth is that in the field times the condition's factor;
   * how far it may be off has three parts, of the nursery, the species and the condition, whose
   * variances are added up. Losses of the first year are whole per cents.
   */
  public Figures in(GrowingCondition condition, LibrarySite site) {
    double mm = fieldMm * condition.factor() * site.speed();
    double own = basis.spread(sources);
    double variance =
        condition.siteVariance(site.speedFrom())
            + own * own
            + condition.ownSpread() * condition.ownSpread();
    double sure = Sure.ofVariance(variance);
    double off = Sure.factor(sure);
    return new Figures(
        mm,
        mm / off,
        mm * off,
        sure,
        basis.toString(),
        from(condition, site),
        Math.min(mostMm, condition.mostMm().orElse(mostMm)),
        Stream.concat(growthSources.stream(), condition.sources().stream()).distinct().toList(),
        Math.round(100 * firstYearLoss * condition.firstYearLossFactor()) / 100.0,
        transplanting.lossSure(),
        laterLoss + condition.laterLossMore(),
        LATER_LOSS_SURE,
        lossSources);
  }

  private static String from(GrowingCondition condition, LibrarySite site) {
    String times = condition.factor() == 1 ? "" : " × " + number(condition.factor());
    String speed = site.speed() == 1 ? "" : " × site speed " + number(site.speed());
    String steps = times + speed;
    String unmeasured =
        condition.isOfPots() ? "; no measurement in " + condition.pots() + " found" : "";
    return steps.isEmpty() ? "" : "from field" + steps + unmeasured;
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
