package growingon.nursery.lot;

import growingon.nursery.number.Check;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Optional;

/**
 * Plants of one species that arrived together and are treated alike: a row of the stock list, or an
 * offer taken up.
 *
 * @param name unique
 * @param species its species
 * @param form how the plants came
 * @param quantity plants as at {@code counted}
 * @param arrived month of arrival
 * @param counted month of the count; a count older than the plan is carried forward
 * @param trunks trunks as at {@code counted}
 * @param quality how it sorts
 * @param potting what it stands in
 * @param standing where and how it stands
 * @param route its route
 * @param lastStep the last step done, if stated
 * @param trainingSince when training started, if it has
 * @param hold what is held back, if anything
 * @param kept plants never for sale
 * @param notBefore first month of sale
 * @param apartMonths months it stands apart from arrival
 * @param untouched whether it is held officially while it stands apart: no work but care
 * @param unitCost cost to date of one plant, spent before the plan
 * @param purchase what it costs, if it is bought within the plan
 * @param papers where it comes from
 */
@RecordBuilder
public record Lot(
    String name,
    String species,
    Form form,
    int quantity,
    YearMonth arrived,
    YearMonth counted,
    Trunks trunks,
    QualityShares quality,
    Potting potting,
    Standing standing,
    String route,
    Optional<String> lastStep,
    Optional<YearMonth> trainingSince,
    Optional<Hold> hold,
    int kept,
    YearMonth notBefore,
    int apartMonths,
    boolean untouched,
    double unitCost,
    Optional<Purchase> purchase,
    Papers papers)
    implements LotBuilder.With {
  public Lot {
    Check.named(name, "a lot");
    Check.named(species, "the species of " + name);
    Check.named(route, "the route of " + name);
    Objects.requireNonNull(form);
    Objects.requireNonNull(trunks);
    Objects.requireNonNull(quality);
    Objects.requireNonNull(potting);
    Objects.requireNonNull(standing);
    Objects.requireNonNull(lastStep);
    Objects.requireNonNull(trainingSince);
    Objects.requireNonNull(hold);
    Objects.requireNonNull(notBefore);
    Objects.requireNonNull(purchase);
    Objects.requireNonNull(papers);
    Check.notNegative(quantity, "quantity of " + name);
    Check.that(kept >= 0 && kept <= quantity, "kept lies between 0 and the quantity", kept);
    Check.notNegative(apartMonths, "apart months of " + name);
    Check.notNegative(unitCost, "unit cost of " + name);
    Check.that(!counted.isBefore(arrived), "a lot is counted on or after arrival", counted);
  }

  /** The same lot with another name and number of plants. */
  public Lot withQuantity(String newName, int newQuantity, int newKept) {
    return with().name(newName).quantity(newQuantity).kept(newKept).build();
  }

  /**
   * The same lot under another name and with other papers, for those who are not to see its own.
   */
  public Lot as(String newName, Papers newPapers) {
    return with().name(newName).papers(newPapers).build();
  }

  /** The same lot, come in another month; what is counted from its arrival moves along. */
  public Lot arrivedIn(YearMonth month) {
    return with()
        .arrived(month)
        .counted(month)
        .notBefore(notBefore.plusMonths(ChronoUnit.MONTHS.between(arrived, month)))
        .build();
  }

  /** A lot of which nothing else is said yet: what is not said has its usual value. */
  public static LotBuilder named(String name, String species) {
    return LotBuilder.builder()
        .name(name)
        .species(species)
        .potting(Potting.NONE)
        .papers(Papers.NONE);
  }
}
