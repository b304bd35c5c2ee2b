package growingon.load.own.account;

import growingon.load.own.heading.Columns;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.ListKind;
import growingon.load.own.heading.SizeGroup;
import growingon.load.own.lot.Evergreens;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.plant.PlantMatch;
import growingon.load.own.plant.PlantNames;
import growingon.load.own.row.ListRead;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Meaning;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.lang3.StringUtils;

/** The sheet own words: lists, then headings, species, places and pots; the open ones first. */
final class OwnWordRows {
  static final List<String> COLUMNS =
      List.of("kind", "yours", "ours", "where", "how", "rows", "example");

  private static final Comparator<List<String>> OPEN_FIRST =
      Comparator.comparing(row -> !row.get(COLUMNS.indexOf("how")).equals("open"));

  private final List<ListRead> lists;

  OwnWordRows(List<ListRead> lists) {
    this.lists = lists;
  }

  /**
   * Its rows.
   *
   * @param paths of lists of stock
   * @param offers paths of lists of suppliers
   */
  List<List<String>> of(List<String> paths, List<String> offers) {
    List<List<String>> rows = new ArrayList<>();
    paths.forEach(path -> rows.add(certain(ListKind.STOCK.word(), path, "", "")));
    offers.forEach(path -> rows.add(certain(ListKind.OFFERS.word(), path, "", "")));
    List<List<String>> heads = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (ListRead list : lists) {
      for (HeadingRead head : list.headings()) {
        if (head.column() != SizeGroup.SIZE_COLUMN
            && seen.add(list.kind().heading() + Keys.of(head.heading()) + head.ours())) {
          heads.add(headRow(list.kind(), head));
        }
      }
    }
    heads.sort(OPEN_FIRST);
    rows.addAll(heads);
    rows.addAll(names());
    return rows;
  }

  /** For rows of own words that are open headings: what each may be, by the row's index. */
  Map<Integer, List<String>> choices(List<List<String>> rows) {
    Map<String, List<String>> byHeading = new HashMap<>();
    for (ListRead list : lists) {
      for (HeadingRead head : list.headings()) {
        if (head.is(Meaning.OPEN) && !head.choosable().isEmpty()) {
          byHeading.putIfAbsent(list.kind().heading() + Keys.of(head.heading()), head.choosable());
        }
      }
    }
    Map<Integer, List<String>> choices = new HashMap<>();
    for (int i = 0; i < rows.size(); i++) {
      List<String> row = rows.get(i);
      List<String> its = byHeading.get(row.get(0) + Keys.of(row.get(1)));
      if (row.get(2).isEmpty() && its != null) {
        choices.put(i, its);
      }
    }
    return choices;
  }

  private static List<String> certain(String kind, String yours, String ours, String rows) {
    return List.of(kind, yours, ours, "every list", "certain", rows, "");
  }

  private static List<String> headRow(ListKind kind, HeadingRead head) {
    String ours =
        head.is(Meaning.OPEN)
            ? ""
            : head.is(Columns.SIZE_HEADING) ? "quantity of " + head.heading() : head.ours();
    String choices =
        (head.is(Meaning.OPEN) && !head.choices().isEmpty()) || head.isInDoubt()
            ? " (" + String.join(" or ", head.choices()) + "?)"
            : "";
    return List.of(
        kind.heading(),
        head.heading(),
        ours,
        "every list",
        head.is(Meaning.OPEN) ? "open" : head.how().toString(),
        Integer.toString(head.rows()),
        head.example() + choices);
  }

  private static String notKnown(String standIn) {
    if (standIn.isEmpty()) {
      return "not in the library";
    }
    return Evergreens.isKind(standIn)
        ? "which one? " + standIn + " till then"
        : "of the genus " + StringUtils.capitalize(standIn);
  }

  private static boolean isNodded(String name) {
    return PlantNames.shipped().find(name, "").how() == PlantMatch.How.NODDED;
  }

  private List<List<String>> names() {
    Map<String, List<OwnLot>> species = new LinkedHashMap<>();
    Map<String, Integer> places = new LinkedHashMap<>();
    Map<String, Integer> pots = new LinkedHashMap<>();
    lists.stream()
        .filter(list -> list.kind().isOffers())
        .flatMap(list -> list.lots().stream())
        .forEach(lot -> species.computeIfAbsent(lot.ownName(), each -> new ArrayList<>()).add(lot));
    for (OwnLot lot : ListRead.lotsOfStock(lists)) {
      species.computeIfAbsent(lot.ownName(), each -> new ArrayList<>()).add(lot);
      places.merge(lot.place(), 1, Integer::sum);
      pots.merge(lot.pot(), 1, Integer::sum);
    }
    List<List<String>> rows = new ArrayList<>();
    species.forEach(
        (name, lots) -> {
          Optional<String> taxon = lots.get(0).taxon();
          rows.add(
              List.of(
                  "species",
                  name,
                  taxon.orElse(""),
                  "every list",
                  taxon.isEmpty() ? "open" : isNodded(name) ? "likely" : "certain",
                  Integer.toString(lots.size()),
                  taxon.isPresent() ? "" : notKnown(lots.get(0).standIn())));
        });
    rows.sort(OPEN_FIRST);
    places.forEach((name, number) -> rows.add(certain("place", name, name, number.toString())));
    pots.forEach((name, number) -> rows.add(certain("pot", name, name, number.toString())));
    rows.removeIf(row -> row.get(1).isEmpty());
    return rows;
  }
}
