package growingon.load.own;

import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A row of a list as it was read. What the list does not state, or what must be asked, is empty.
 *
 * @param sheet it stands on, and its row as the spreadsheet counts
 * @param lot its name: the list's own code, else made from plant and arrival
 * @param ownName the plant as the list calls it
 * @param called the species as the list calls it, without cultivar and size
 * @param taxon of the library
 * @param standIn name of the library that stands in where there is no taxon: a genus or a kind
 * @param quantity plants
 * @param about whether quantity, arrival or size is about only
 * @param trunkFromMm trunk, or the lower end of its class
 * @param years age that the list states
 * @param standard whether it says that the trees are standards
 */
public record OwnLot(
    String sheet,
    int row,
    String lot,
    String ownName,
    String called,
    Optional<String> taxon,
    String standIn,
    OptionalInt quantity,
    boolean about,
    OptionalDouble trunkFromMm,
    OptionalDouble trunkToMm,
    String pot,
    OptionalDouble potLitres,
    OptionalDouble heightCm,
    OptionalInt years,
    String form,
    boolean standard,
    String place,
    Optional<YearMonth> arrived,
    boolean arrivedAbout,
    Optional<YearMonth> potted,
    OptionalDouble unitCost,
    OptionalDouble sellingPrice,
    OptionalInt kept,
    String supplier,
    String passport,
    String origin,
    String note) {

  /** Whether its name bears a cultivar in quotes. */
  public boolean isClone() {
    return PlantText.of(ownName).cultivar().isPresent();
  }

  /** The class by which its usual trunk goes, as in {@code pot 3 litre}. */
  public String sizeClass() {
    return UsualTrunk.classOf(this);
  }

  OwnLot named(String name) {
    return new OwnLot(
        sheet,
        row,
        name,
        ownName,
        called,
        taxon,
        standIn,
        quantity,
        about,
        trunkFromMm,
        trunkToMm,
        pot,
        potLitres,
        heightCm,
        years,
        form,
        standard,
        place,
        arrived,
        arrivedAbout,
        potted,
        unitCost,
        sellingPrice,
        kept,
        supplier,
        passport,
        origin,
        note);
  }

  OwnLot at(String other) {
    return new OwnLot(
        sheet,
        row,
        lot,
        ownName,
        called,
        taxon,
        standIn,
        quantity,
        about,
        trunkFromMm,
        trunkToMm,
        pot,
        potLitres,
        heightCm,
        years,
        form,
        standard,
        other,
        arrived,
        arrivedAbout,
        potted,
        unitCost,
        sellingPrice,
        kept,
        supplier,
        passport,
        origin,
        note);
  }

  /** The same with the species called otherwise. */
  public OwnLot calledAs(String name) {
    return new OwnLot(
        sheet,
        row,
        lot,
        ownName,
        name,
        taxon,
        standIn,
        quantity,
        about,
        trunkFromMm,
        trunkToMm,
        pot,
        potLitres,
        heightCm,
        years,
        form,
        standard,
        place,
        arrived,
        arrivedAbout,
        potted,
        unitCost,
        sellingPrice,
        kept,
        supplier,
        passport,
        origin,
        note);
  }
}
