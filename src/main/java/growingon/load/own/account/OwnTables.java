package growingon.load.own.account;

import growingon.load.own.lot.OwnLot;
import growingon.load.own.lot.UsualTrunk;
import growingon.load.own.question.Fill;
import growingon.load.own.row.ListRead;
import growingon.load.own.row.SheetAccount;
import growingon.load.own.row.StatedTotal;
import growingon.load.own.size.PotSize;
import growingon.load.own.usual.UsualNursery;
import growingon.nursery.record.OwnReading.Linked;
import growingon.nursery.record.OwnReading.Listed;
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

  /** A row of a list, and the name by which the plan calls its plants. */
  private record ReadRow(ListRead list, OwnLot row, String name) {
    boolean isSized() {
      return row.trunkFromMm().isPresent();
    }

    String basisOf(boolean stated) {
      return stated ? "list" : "usual";
    }

    Object trunk(OptionalDouble mm) {
      return isSized() ? hundredths(mm) : UsualTrunk.mm(row);
    }
  }

  private static ListedOf<ReadRow> ofRows(String name, String title, String what) {
    return ListedOf.<ReadRow>table(name, title)
        .column("list", each -> each.list.file())
        .column("sheet", each -> each.row.sheet())
        .column("row", each -> inList(each.list, each.row.sheet(), each.row.row()))
        .column(what, each -> each.row.lot())
        .column("own_name", each -> each.row.ownName())
        .column("species", ReadRow::name)
        .column("library", each -> each.row.taxon().orElse(""));
  }

  /** The number of a row, linked to it. */
  private static Linked inList(ListRead list, String sheet, int row) {
    return new Linked(row, list.cell(sheet, row, 0));
  }

  private static ListedOf<ReadRow> withSize(ListedOf<ReadRow> table) {
    return table
        .column("trunk_from_mm", each -> each.trunk(each.row.trunkFromMm()))
        .column("trunk_to_mm", each -> each.trunk(each.row.trunkToMm()))
        .column("trunk_basis", each -> each.basisOf(each.isSized()))
        .column("pot", each -> each.row.pot())
        .column("pot_litres", each -> number(each.row.potLitres()))
        .column("height_cm", each -> number(each.row.heightCm()));
  }

  private Listed stock() {
    List<ReadRow> rows = new ArrayList<>();
    List<OwnLot> called = usual.lots();
    for (ListRead list : lists) {
      for (OwnLot lot : list.kind().isOffers() ? List.<OwnLot>of() : list.lots()) {
        int i = rows.size();
        rows.add(new ReadRow(list, lot, i < called.size() ? called.get(i).called() : lot.called()));
      }
    }
    return withSize(
            ofRows("stock-as-read", "Your list as it was read", "lot")
                .column("quantity", each -> whole(each.row.quantity()))
                .column("about", each -> each.row.about() ? "yes" : "no"))
        .column("place", each -> each.row.place())
        .column("arrived", each -> each.row.arrived().map(Object::toString).orElse(""))
        .column("arrived_basis", each -> each.basisOf(each.row.arrived().isPresent()))
        .column("unit_cost", each -> number(each.row.unitCost()))
        .column("selling_price", each -> number(each.row.sellingPrice()))
        .column("note", each -> each.row.note())
        .of(rows);
  }

  private Listed offers() {
    List<ReadRow> rows = new ArrayList<>();
    Map<String, OwnLot> called = new HashMap<>();
    usual.offers().forEach(offer -> called.put(offer.lot(), offer));
    for (ListRead list : lists) {
      for (OwnLot offer : list.kind().isOffers() ? list.lots() : List.<OwnLot>of()) {
        OwnLot its = called.getOrDefault(offer.lot(), offer);
        rows.add(new ReadRow(list, its, its.called()));
      }
    }
    return withSize(
            ofRows("offers-as-read", "What suppliers offer, as it was read", "offer")
                .column("form", each -> UsualNursery.form(each.row)))
        .column("unit_price", each -> number(each.row.unitCost()))
        .column("more_at", each -> moreAt(each.row))
        .column("least", each -> whole(each.row.terms().least()))
        .column("multiple", each -> whole(each.row.terms().multiple()))
        .column("most", each -> whole(each.row.quantity()))
        .column("month", each -> usual.arrival(each.row).toString())
        .column("month_basis", each -> each.basisOf(each.row.arrived().isPresent()))
        .column("supplier", each -> each.row.supplier())
        .column("note", each -> each.row.note())
        .of(rows);
  }

  private static String moreAt(OwnLot offer) {
    return String.join(
        "; ",
        offer.terms().breaks().entrySet().stream()
            .map(each -> each.getKey() + ": " + PotSize.plain(each.getValue()))
            .toList());
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
    fills.forEach(fill -> rows.add(linked(fill)));
    return new Listed("to-fill", "What your list does not say, to fill in", Fill.COLUMNS, rows);
  }

  /** The cells of a question, the last of them linked to what it asks of. */
  private static List<Object> linked(Fill fill) {
    List<Object> cells = new ArrayList<>(fill.cells());
    fill.inList().ifPresent(cell -> cells.set(cells.size() - 1, new Linked(cell.toString(), cell)));
    return cells;
  }

  /** A sheet of a list. */
  private record Account(String file, SheetAccount of) {}

  private Listed rows() {
    return ListedOf.<Account>table("rows-read", "Every row of your list accounted for")
        .column("list", Account::file)
        .column("sheet", each -> each.of.sheet())
        .column("read", each -> each.of.read())
        .column("rows", each -> each.of.rows())
        .column("titles", each -> each.of.titles())
        .column("headings", each -> each.of.headings())
        .column("headings_again", each -> each.of.headingsAgain())
        .column("lots", each -> each.of.lots())
        .column("groups", each -> each.of.groups())
        .column("totals", each -> each.of.totals())
        .column("notes", each -> each.of.notes())
        .column("struck_out", each -> each.of.struckOut())
        .column("gone", each -> each.of.gone())
        .column("asked", each -> each.of.asked())
        .column("not_read", each -> each.of.notRead())
        .of(
            lists.stream()
                .flatMap(list -> list.accounts().stream().map(of -> new Account(list.file(), of)))
                .toList());
  }

  /** A total that a list states. */
  private record Total(ListRead list, StatedTotal of) {}

  private Listed totals() {
    return ListedOf.<Total>table("list-totals", "Totals that your list states")
        .column("list", each -> each.list.file())
        .column("sheet", each -> each.of.sheet())
        .column("row", each -> inList(each.list, each.of.sheet(), each.of.row()))
        .column("stated", each -> each.of.stated())
        .column("read", each -> each.of.read())
        .column("agrees", each -> each.of.agrees() ? "yes" : "no")
        .of(
            lists.stream()
                .flatMap(list -> list.totals().stream().map(of -> new Total(list, of)))
                .toList());
  }
}
