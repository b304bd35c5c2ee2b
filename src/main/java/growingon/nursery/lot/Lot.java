package growingon.nursery.lot;

import growingon.nursery.number.Check;
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
    return but().name(newName).quantity(newQuantity).kept(newKept).build();
  }

  /** The same lot sorting otherwise. */
  public Lot withQuality(QualityShares newQuality) {
    return but().quality(newQuality).build();
  }

  /** The same lot with something else held back, or nothing. */
  public Lot withHold(Optional<Hold> newHold) {
    return but().hold(newHold).build();
  }

  /** The same lot bought otherwise. */
  public Lot withPurchase(Optional<Purchase> newPurchase) {
    return but().purchase(newPurchase).build();
  }

  /**
   * The same lot under another name and with other papers, for those who are not to see its own.
   */
  public Lot as(String newName, Papers newPapers) {
    return but().name(newName).papers(newPapers).build();
  }

  /** The same lot, come in another month; what is counted from its arrival moves along. */
  public Lot arrivedIn(YearMonth month) {
    return but()
        .arrived(month)
        .counted(month)
        .notBefore(notBefore.plusMonths(ChronoUnit.MONTHS.between(arrived, month)))
        .build();
  }

  /** The same lot with other trunks. */
  public Lot withTrunks(Trunks others) {
    return but().trunks(others).build();
  }

  /** A lot of which nothing else is said yet. */
  public static Builder named(String name, String species) {
    Builder builder = new Builder();
    builder.name = name;
    builder.species = species;
    return builder;
  }

  /** The parts of this one, of which some can be put in place of others. */
  public Builder but() {
    Builder builder = new Builder();
    builder.name = name;
    builder.species = species;
    builder.form = form;
    builder.quantity = quantity;
    builder.arrived = arrived;
    builder.counted = counted;
    builder.trunks = trunks;
    builder.quality = quality;
    builder.potting = potting;
    builder.standing = standing;
    builder.route = route;
    builder.lastStep = lastStep;
    builder.trainingSince = trainingSince;
    builder.hold = hold;
    builder.kept = kept;
    builder.notBefore = notBefore;
    builder.apartMonths = apartMonths;
    builder.untouched = untouched;
    builder.unitCost = unitCost;
    builder.purchase = purchase;
    builder.papers = papers;
    return builder;
  }

  /** Its parts by name; what is not said has its usual value. */
  public static final class Builder {
    private String name;
    private String species;
    private Form form;
    private int quantity = 0;
    private YearMonth arrived;
    private YearMonth counted;
    private Trunks trunks;
    private QualityShares quality;
    private Potting potting = Potting.NONE;
    private Standing standing;
    private String route;
    private Optional<String> lastStep = Optional.empty();
    private Optional<YearMonth> trainingSince = Optional.empty();
    private Optional<Hold> hold = Optional.empty();
    private int kept = 0;
    private YearMonth notBefore;
    private int apartMonths = 0;
    private boolean untouched = false;
    private double unitCost = 0;
    private Optional<Purchase> purchase = Optional.empty();
    private Papers papers = Papers.NONE;

    private Builder() {}

    public Builder name(String value) {
      this.name = value;
      return this;
    }

    public Builder form(Form value) {
      this.form = value;
      return this;
    }

    public Builder quantity(int value) {
      this.quantity = value;
      return this;
    }

    public Builder arrived(YearMonth value) {
      this.arrived = value;
      return this;
    }

    public Builder counted(YearMonth value) {
      this.counted = value;
      return this;
    }

    public Builder trunks(Trunks value) {
      this.trunks = value;
      return this;
    }

    public Builder quality(QualityShares value) {
      this.quality = value;
      return this;
    }

    public Builder potting(Potting value) {
      this.potting = value;
      return this;
    }

    public Builder standing(Standing value) {
      this.standing = value;
      return this;
    }

    public Builder route(String value) {
      this.route = value;
      return this;
    }

    public Builder lastStep(Optional<String> value) {
      this.lastStep = value;
      return this;
    }

    public Builder trainingSince(Optional<YearMonth> value) {
      this.trainingSince = value;
      return this;
    }

    public Builder hold(Optional<Hold> value) {
      this.hold = value;
      return this;
    }

    public Builder kept(int value) {
      this.kept = value;
      return this;
    }

    public Builder notBefore(YearMonth value) {
      this.notBefore = value;
      return this;
    }

    public Builder apartMonths(int value) {
      this.apartMonths = value;
      return this;
    }

    public Builder untouched(boolean value) {
      this.untouched = value;
      return this;
    }

    public Builder unitCost(double value) {
      this.unitCost = value;
      return this;
    }

    public Builder purchase(Optional<Purchase> value) {
      this.purchase = value;
      return this;
    }

    public Builder papers(Papers value) {
      this.papers = value;
      return this;
    }

    public Lot build() {
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
