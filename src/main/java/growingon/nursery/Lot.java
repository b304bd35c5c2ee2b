package growingon.nursery;

import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

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
    Papers papers) {
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
    return changed(
        parts -> {
          parts.name = newName;
          parts.quantity = newQuantity;
          parts.kept = newKept;
        });
  }

  /** The same lot sorting otherwise. */
  public Lot withQuality(QualityShares newQuality) {
    return changed(parts -> parts.quality = newQuality);
  }

  /** The same lot with something else held back, or nothing. */
  public Lot withHold(Optional<Hold> newHold) {
    return changed(parts -> parts.hold = newHold);
  }

  /** The same lot bought otherwise. */
  public Lot withPurchase(Optional<Purchase> newPurchase) {
    return changed(parts -> parts.purchase = newPurchase);
  }

  /**
   * The same lot under another name and with other papers, for those who are not to see its own.
   */
  public Lot as(String newName, Papers newPapers) {
    return changed(
        parts -> {
          parts.name = newName;
          parts.papers = newPapers;
        });
  }

  /** The same lot, come in another month; what is counted from its arrival moves along. */
  public Lot arrivedIn(YearMonth month) {
    return changed(
        parts -> {
          parts.arrived = month;
          parts.counted = month;
          parts.notBefore = notBefore.plusMonths(ChronoUnit.MONTHS.between(arrived, month));
        });
  }

  /** The same lot with other trunks. */
  public Lot withTrunks(Trunks others) {
    return changed(parts -> parts.trunks = others);
  }

  private Lot changed(Consumer<Parts> change) {
    Parts parts = new Parts(this);
    change.accept(parts);
    return parts.lot();
  }

  /** The parts of a lot, each of which can be put in place of another. */
  private static final class Parts {
    private String name;
    private final String species;
    private final Form form;
    private int quantity;
    private YearMonth arrived;
    private YearMonth counted;
    private Trunks trunks;
    private QualityShares quality;
    private final Potting potting;
    private final Standing standing;
    private final String route;
    private final Optional<String> lastStep;
    private final Optional<YearMonth> trainingSince;
    private Optional<Hold> hold;
    private int kept;
    private YearMonth notBefore;
    private final int apartMonths;
    private final boolean untouched;
    private final double unitCost;
    private Optional<Purchase> purchase;
    private Papers papers;

    Parts(Lot of) {
      this.name = of.name;
      this.species = of.species;
      this.form = of.form;
      this.quantity = of.quantity;
      this.arrived = of.arrived;
      this.counted = of.counted;
      this.trunks = of.trunks;
      this.quality = of.quality;
      this.potting = of.potting;
      this.standing = of.standing;
      this.route = of.route;
      this.lastStep = of.lastStep;
      this.trainingSince = of.trainingSince;
      this.hold = of.hold;
      this.kept = of.kept;
      this.notBefore = of.notBefore;
      this.apartMonths = of.apartMonths;
      this.untouched = of.untouched;
      this.unitCost = of.unitCost;
      this.purchase = of.purchase;
      this.papers = of.papers;
    }

    Lot lot() {
      return new Lot(
          name,
          species,
          form,
          quantity,
          arrived,
          counted,
          trunks,
          quality,
          potting,
          standing,
          route,
          lastStep,
          trainingSince,
          hold,
          kept,
          notBefore,
          apartMonths,
          untouched,
          unitCost,
          purchase,
          papers);
    }
  }
}
