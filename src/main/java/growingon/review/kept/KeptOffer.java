package growingon.review.kept;

/**
 * An offer as it was read when the plan was frozen.
 *
 * @param name of the offer
 * @param taken plants taken, 0 for none
 * @param species its species
 * @param supplier who offers it, empty if not said
 * @param passport its passport, empty if not said
 * @param unitPrice price of a plant at the quantity taken, or at the least quantity; its currency
 * @param currency code of the currency
 * @param rate plan currency for one unit of it
 * @param carriage for the whole order, its currency
 * @param importCharges for the whole order, its currency
 * @param arrival month of arrival, as 2027-02
 * @param trunkMm mean trunk, mm
 * @param first share of firsts
 * @param second share of seconds
 * @param qualitySure how sure the shares are, 0 to 1
 * @param lossSure how sure its loss is, 0 to 1
 * @param fails chance that it fails as a whole, 0 to 1
 */
public record KeptOffer(
    String name,
    int taken,
    String species,
    String supplier,
    String passport,
    double unitPrice,
    String currency,
    double rate,
    double carriage,
    double importCharges,
    String arrival,
    double trunkMm,
    double first,
    double second,
    double qualitySure,
    double lossSure,
    double fails) {

  /** An offer of which nothing else is kept yet. */
  public static Builder named(String name, String species, String arrival) {
    Builder builder = new Builder();
    builder.name = name;
    builder.species = species;
    builder.arrival = arrival;
    return builder;
  }

  /** Its parts by name; what is not said has its usual value. */
  public static final class Builder {
    private String name;
    private int taken = 0;
    private String species;
    private String supplier = "";
    private String passport = "";
    private double unitPrice = 0;
    private String currency = "";
    private double rate = 1;
    private double carriage = 0;
    private double importCharges = 0;
    private String arrival;
    private double trunkMm = 0;
    private double first = 0;
    private double second = 0;
    private double qualitySure = 0;
    private double lossSure = 0;
    private double fails = 0;

    private Builder() {}

    public Builder taken(int value) {
      this.taken = value;
      return this;
    }

    public Builder supplier(String value) {
      this.supplier = value;
      return this;
    }

    public Builder passport(String value) {
      this.passport = value;
      return this;
    }

    public Builder unitPrice(double value) {
      this.unitPrice = value;
      return this;
    }

    public Builder currency(String value) {
      this.currency = value;
      return this;
    }

    public Builder rate(double value) {
      this.rate = value;
      return this;
    }

    public Builder carriage(double value) {
      this.carriage = value;
      return this;
    }

    public Builder importCharges(double value) {
      this.importCharges = value;
      return this;
    }

    public Builder trunkMm(double value) {
      this.trunkMm = value;
      return this;
    }

    public Builder first(double value) {
      this.first = value;
      return this;
    }

    public Builder second(double value) {
      this.second = value;
      return this;
    }

    public Builder qualitySure(double value) {
      this.qualitySure = value;
      return this;
    }

    public Builder lossSure(double value) {
      this.lossSure = value;
      return this;
    }

    public Builder fails(double value) {
      this.fails = value;
      return this;
    }

    public KeptOffer build() {
      return new KeptOffer(
          name,
          taken,
          species,
          supplier,
          passport,
          unitPrice,
          currency,
          rate,
          carriage,
          importCharges,
          arrival,
          trunkMm,
          first,
          second,
          qualitySure,
          lossSure,
          fails);
    }
  }
}
