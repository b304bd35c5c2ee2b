package growingon.load.own.heading;

import growingon.load.own.text.Meaning;
import growingon.load.own.text.Units;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the rows of a list are: plants that stand in the nursery, or plants that may be bought. */
public enum ListKind {
  STOCK("list", "stock", "lot"),
  OFFERS("offers list", "offers", "offer");

  /** What a supplier's column is where the same heading in a stock list is another. */
  private static final Map<String, String> OF_A_SUPPLIER =
      Map.of("selling price", "unit cost", "per pack", "multiple", "not before", "arrived");

  /** What a supplier says of plants that are theirs; it is kept in the note. */
  private static final Set<String> OF_THEIR_OWN =
      Set.of(
          "place",
          "place detail",
          "potted",
          "counted",
          "sorted",
          "root work",
          "packs",
          "kept",
          "opening",
          "available",
          "sold",
          "lost",
          "reserved",
          "on order",
          "last step",
          "training since",
          "hold to grade",
          "from lot",
          "route");

  private final String word;
  private final String table;
  private final String row;

  ListKind(String word, String table, String row) {
    this.word = word;
    this.table = table;
    this.row = row;
  }

  /** Its kind in own words. */
  public String word() {
    return word;
  }

  /** The table that its rows become rows of. */
  public String table() {
    return table;
  }

  /** The kind of its headings in own words. */
  public String heading() {
    return this == STOCK ? OwnWords.HEADING : "offers " + OwnWords.HEADING;
  }

  /** What one of its rows is called. */
  public String row() {
    return row;
  }

  public boolean isOffers() {
    return this == OFFERS;
  }

  /** What a heading of the shipped words stands for in a list of this kind. */
  Meaning meaning(Meaning shipped) {
    if (!isOffers()) {
      return shipped;
    }
    if (shipped.isOpen() && shipped.choices().contains("unit cost")) {
      return new Meaning("unit cost", Units.MONEY, 1, List.of());
    }
    if (shipped.ours().equals("row cost")) {
      return Meaning.of(Meaning.NOT_READ, "");
    }
    if (OF_THEIR_OWN.contains(shipped.ours())) {
      return Meaning.of("note", "");
    }
    boolean price = Units.isMoney(shipped.unit());
    return new Meaning(
        OF_A_SUPPLIER.getOrDefault(shipped.ours(), shipped.ours()),
        shipped.unit(),
        price ? shipped.rank() + 1 : shipped.rank(),
        shipped.choices());
  }
}
