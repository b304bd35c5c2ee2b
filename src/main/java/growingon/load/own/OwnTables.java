package growingon.load.own;

import growingon.nursery.OwnReading.Listed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Lists as they were read, in tables for whoever wants to check it. */
final class OwnTables {
  private final List<ListRead> lists;
  private final UsualNursery usual;
  private final List<Fill> fills;

  OwnTables(List<ListRead> lists, UsualNursery usual, List<Fill> fills) {
    this.lists = lists;
    this.usual = usual;
    this.fills = fills;
  }

  /** All of them; that of offers where there are some. */
  List<Listed> all() {
    List<Listed> tables = new ArrayList<>(List.of(stock(), words(), toFill(), rows(), totals()));
    if (lists.stream().anyMatch(list -> list.kind().isOffers())) {
      tables.add(1, offers());
    }
    return tables;
  }

  private Listed stock() {
    List<List<Object>> rows = new ArrayList<>();
    List<OwnLot> called = usual.lots();
    int i = 0;
    for (ListRead list : lists) {
      for (OwnLot lot : list.kind().isOffers() ? List.<OwnLot>of() : list.lots()) {
        rows.add(
            stockRow(list.file(), lot, i < called.size() ? called.get(i).called() : lot.called()));
        i++;
      }
    }
    return new Listed(
        "stock-as-read",
        "Your list as it was read",
        List.of(
            "list",
            "sheet",
            "row",
            "lot",
            "own_name",
            "species",
            "library",
            "quantity",
            "about",
            "trunk_from_mm",
            "trunk_to_mm",
            "trunk_basis",
            "pot",
            "pot_litres",
            "height_cm",
            "place",
            "arrived",
            "arrived_basis",
            "unit_cost",
            "selling_price",
            "note"),
        rows);
  }

  private static List<Object> stockRow(String file, OwnLot lot, String called) {
    List<Object> row =
        new ArrayList<>(List.of(file, lot.sheet(), lot.row(), lot.lot(), lot.ownName(), called));
    boolean stated = lot.trunkFromMm().isPresent();
    row.add(lot.taxon().orElse(""));
    row.add(lot.quantity().isPresent() ? lot.quantity().getAsInt() : "");
    row.add(lot.about() ? "yes" : "no");
    row.add(stated ? hundredths(lot.trunkFromMm()) : UsualTrunk.mm(lot));
    row.add(stated ? hundredths(lot.trunkToMm()) : UsualTrunk.mm(lot));
    row.add(stated ? "list" : "usual");
    row.add(lot.pot());
    row.add(number(lot.potLitres()));
    row.add(number(lot.heightCm()));
    row.add(lot.place());
    row.add(lot.arrived().map(Object::toString).orElse(""));
    row.add(lot.arrived().isPresent() ? "list" : "usual");
    row.add(number(lot.unitCost()));
    row.add(number(lot.sellingPrice()));
    row.add(lot.note());
    return row;
  }

  private Listed offers() {
    List<List<Object>> rows = new ArrayList<>();
    Map<String, OwnLot> called = new HashMap<>();
    usual.offers().forEach(offer -> called.put(offer.lot(), offer));
    for (ListRead list : lists) {
      for (OwnLot offer : list.kind().isOffers() ? list.lots() : List.<OwnLot>of()) {
        rows.add(offerRow(list.file(), called.getOrDefault(offer.lot(), offer)));
      }
    }
    return new Listed(
        "offers-as-read",
        "What suppliers offer, as it was read",
        List.of(
            "list",
            "sheet",
            "row",
            "offer",
            "own_name",
            "species",
            "library",
            "form",
            "trunk_from_mm",
            "trunk_to_mm",
            "trunk_basis",
            "pot",
            "pot_litres",
            "height_cm",
            "unit_price",
            "more_at",
            "least",
            "multiple",
            "most",
            "month",
            "month_basis",
            "supplier",
            "note"),
        rows);
  }

  private List<Object> offerRow(String file, OwnLot offer) {
    List<Object> row = new ArrayList<>();
    row.addAll(List.of(file, offer.sheet(), offer.row(), offer.lot(), offer.ownName()));
    row.addAll(List.of(offer.called(), offer.taxon().orElse(""), UsualNursery.form(offer)));
    boolean stated = offer.trunkFromMm().isPresent();
    row.add(stated ? hundredths(offer.trunkFromMm()) : UsualTrunk.mm(offer));
    row.add(stated ? hundredths(offer.trunkToMm()) : UsualTrunk.mm(offer));
    row.add(stated ? "list" : "usual");
    row.add(offer.pot());
    row.add(number(offer.potLitres()));
    row.add(number(offer.heightCm()));
    row.add(number(offer.unitCost()));
    row.add(
        String.join(
            "; ",
            offer.terms().breaks().entrySet().stream()
                .map(each -> each.getKey() + ": " + PotSize.plain(each.getValue()))
                .toList()));
    row.add(whole(offer.terms().least()));
    row.add(whole(offer.terms().multiple()));
    row.add(whole(offer.quantity()));
    row.add(usual.arrival(offer).toString());
    row.add(offer.arrived().isPresent() ? "list" : "usual");
    row.add(offer.supplier());
    row.add(offer.note());
    return row;
  }

  private static Object whole(OptionalInt value) {
    return value.isPresent() ? value.getAsInt() : "";
  }

  private static Object hundredths(OptionalDouble value) {
    return value.isPresent() ? Math.rint(value.getAsDouble() * 100) / 100 : "";
  }

  private static Object number(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : "";
  }

  private Listed words() {
    List<List<Object>> rows = new ArrayList<>();
    new OwnWordRows(lists).of(List.of(), List.of()).forEach(row -> rows.add(new ArrayList<>(row)));
    return new Listed("own-words", "What your words mean here", OwnWordRows.COLUMNS, rows);
  }

  private Listed toFill() {
    List<List<Object>> rows = new ArrayList<>();
    fills.forEach(fill -> rows.add(new ArrayList<>(fill.cells())));
    return new Listed("to-fill", "What moves the answer most, to fill in", Fill.COLUMNS, rows);
  }

  private Listed rows() {
    List<List<Object>> rows = new ArrayList<>();
    for (ListRead list : lists) {
      for (SheetAccount a : list.accounts()) {
        rows.add(
            List.of(
                list.file(),
                a.sheet(),
                a.read(),
                a.rows(),
                a.titles(),
                a.headings(),
                a.headingsAgain(),
                a.lots(),
                a.groups(),
                a.totals(),
                a.notes(),
                a.struckOut(),
                a.gone(),
                a.asked(),
                a.notRead()));
      }
    }
    return new Listed(
        "rows-read",
        "Every row of your list accounted for",
        List.of(
            "list",
            "sheet",
            "read",
            "rows",
            "titles",
            "headings",
            "headings_again",
            "lots",
            "groups",
            "totals",
            "notes",
            "struck_out",
            "gone",
            "asked",
            "not_read"),
        rows);
  }

  private Listed totals() {
    List<List<Object>> rows = new ArrayList<>();
    for (ListRead list : lists) {
      for (StatedTotal total : list.totals()) {
        rows.add(
            List.of(
                list.file(),
                total.sheet(),
                total.row(),
                total.stated(),
                total.read(),
                total.agrees() ? "yes" : "no"));
      }
    }
    return new Listed(
        "list-totals",
        "Totals that your list states",
        List.of("list", "sheet", "row", "stated", "read", "agrees"),
        rows);
  }
}
