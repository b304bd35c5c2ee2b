package growingon.load.own.lot;

import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** The parts of a lot as read, each of which can be put in place of another. */
final class OwnLotParts {
  String sheet;
  int row;
  String lot;
  String ownName;
  String called;
  Optional<String> taxon;
  String standIn;
  OptionalInt quantity;
  boolean about;
  OptionalDouble trunkFromMm;
  OptionalDouble trunkToMm;
  String pot;
  OptionalDouble potLitres;
  OptionalDouble heightCm;
  OptionalInt years;
  String form;
  boolean standard;
  String place;
  Optional<YearMonth> arrived;
  boolean arrivedAbout;
  Optional<YearMonth> potted;
  OptionalDouble unitCost;
  OptionalDouble sellingPrice;
  OptionalInt kept;
  String supplier;
  String passport;
  String origin;
  String note;
  Terms terms;
  Stated stated;

  /** Those of a lot. */
  OwnLotParts(OwnLot of) {
    this.sheet = of.sheet();
    this.row = of.row();
    this.lot = of.lot();
    this.ownName = of.ownName();
    this.called = of.called();
    this.taxon = of.taxon();
    this.standIn = of.standIn();
    this.quantity = of.quantity();
    this.about = of.about();
    this.trunkFromMm = of.trunkFromMm();
    this.trunkToMm = of.trunkToMm();
    this.pot = of.pot();
    this.potLitres = of.potLitres();
    this.heightCm = of.heightCm();
    this.years = of.years();
    this.form = of.form();
    this.standard = of.standard();
    this.place = of.place();
    this.arrived = of.arrived();
    this.arrivedAbout = of.arrivedAbout();
    this.potted = of.potted();
    this.unitCost = of.unitCost();
    this.sellingPrice = of.sellingPrice();
    this.kept = of.kept();
    this.supplier = of.supplier();
    this.passport = of.passport();
    this.origin = of.origin();
    this.note = of.note();
    this.terms = of.terms();
    this.stated = of.stated();
  }

  /** The lot that they make. */
  OwnLot lot() {
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
        note,
        terms,
        stated);
  }
}
