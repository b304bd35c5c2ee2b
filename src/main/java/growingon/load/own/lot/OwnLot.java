package growingon.load.own.lot;

import growingon.load.own.plant.PlantText;
import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;

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
 * @param terms on which a supplier offers them; none for plants that stand in the nursery
 * @param stated what the list states in other columns of the stock table
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
    String note,
    Terms terms,
    Stated stated) {

  /** Whether its name bears a cultivar in quotes. */
  public boolean isClone() {
    return PlantText.of(ownName).cultivar().isPresent();
  }

  /** The class by which its usual trunk goes, as in {@code pot 3 litre}. */
  public String sizeClass() {
    return UsualTrunk.classOf(this);
  }

  /** Least number that can be bought, of an offer. */
  public OptionalInt least() {
    return terms.least();
  }

  /** In multiples of which it is sold, of an offer. */
  public OptionalInt multiple() {
    return terms.multiple();
  }

  private OwnLot changed(Consumer<OwnLotParts> change) {
    OwnLotParts parts = new OwnLotParts(this);
    change.accept(parts);
    return parts.lot();
  }

  /** The same under another name. */
  public OwnLot named(String name) {
    return changed(parts -> parts.lot = name);
  }

  /** The same at another place. */
  OwnLot at(String other) {
    return changed(parts -> parts.place = other);
  }

  /** The same with the species called otherwise. */
  public OwnLot calledAs(String name) {
    return changed(parts -> parts.called = name);
  }

  /** With the number that was asked for. */
  OwnLot withQuantity(int number) {
    return changed(parts -> parts.quantity = OptionalInt.of(number));
  }

  /** Of a supplier, where the list names none. */
  public OwnLot from(String theirName) {
    return supplier.isEmpty() ? changed(parts -> parts.supplier = theirName) : this;
  }

  /** With the arrival that was asked for. */
  OwnLot withArrival(YearMonth month) {
    return changed(
        parts -> {
          parts.arrived = Optional.of(month);
          parts.arrivedAbout = false;
        });
  }

  /** With the trunk that was asked for, mm. */
  OwnLot withTrunk(double from, double to) {
    return changed(
        parts -> {
          parts.trunkFromMm = OptionalDouble.of(from);
          parts.trunkToMm = OptionalDouble.of(to);
        });
  }

  /** With the pot that was asked for. */
  OwnLot withPot(String name, double litres) {
    return changed(
        parts -> {
          parts.pot = name;
          parts.potLitres = OptionalDouble.of(litres);
        });
  }

  /** With the height that was asked for, cm. */
  OwnLot withHeight(double cm) {
    return changed(parts -> parts.heightCm = OptionalDouble.of(cm));
  }

  /** With the cost of a plant that was asked for. */
  OwnLot withCost(double amount) {
    return changed(parts -> parts.unitCost = OptionalDouble.of(amount));
  }

  /** With the price that was asked for. */
  OwnLot withPrice(double amount) {
    return changed(parts -> parts.sellingPrice = OptionalDouble.of(amount));
  }

  /** The same with an answer of the grower's, where it belongs to a lot as read. */
  public OwnLot answered(String column, String text, Site site) {
    return LotAnswers.isPart(column) ? LotAnswers.with(this, column, text, site) : this;
  }

  /** Whether an answer of a column belongs to a lot as read, not to its row in the stock table. */
  public static boolean isPart(String column) {
    return LotAnswers.isPart(column);
  }
}
