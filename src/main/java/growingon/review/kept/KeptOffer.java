package growingon.review.kept;

import io.soabase.recordbuilder.core.RecordBuilder;

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
@RecordBuilder
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
  public static KeptOfferBuilder named(String name, String species, String arrival) {
    return KeptOfferBuilder.builder()
        .name(name)
        .species(species)
        .arrival(arrival)
        .supplier("")
        .passport("")
        .currency("")
        .rate(1);
  }
}
