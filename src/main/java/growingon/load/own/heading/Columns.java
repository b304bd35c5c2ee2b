package growingon.load.own.heading;

import growingon.load.own.heading.HeadingRead.How;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Meaning;
import growingon.load.own.text.OfferMonth;
import growingon.load.own.text.Shapes;
import growingon.load.own.text.TaxWords;
import growingon.load.own.text.Units;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What the columns of a list are: by the grower's own words, by the headings, and where a heading
 * is open by its cells. Of two columns that claim the same the one of lower rank wins.
 */
public final class Columns {
  private final String sheet;
  private final int row;
  private final List<SheetRow> body;
  private final ColumnCells cells;
  private final OwnWords own;
  private final List<HeadingRead> reads = new ArrayList<>();
  private final List<Integer> ranks = new ArrayList<>();
  private final ByCells byCells;
  private final NumberColumns numbers;
  private final Set<Integer> notUnderstood = new HashSet<>();

  private Columns(String sheet, int row, List<SheetRow> body, OwnWords own) {
    this.sheet = sheet;
    this.row = row;
    this.body = body;
    this.cells = new ColumnCells(body);
    this.own = own;
    this.byCells = new ByCells(reads, ranks, notUnderstood, cells, own.list());
    this.numbers = new NumberColumns(reads, ranks, notUnderstood, body, own);
  }

  /**
   * The columns of a heading row.
   *
   * @param body rows below it
   * @param from first column of the list, and the one behind its last
   */
  public static List<HeadingRead> of(
      Sheet sheet, HeadingRow row, List<SheetRow> body, int from, int to, OwnWords own) {
    List<HeadingRead> reads = read(sheet, row, body, from, to, own);
    return reads.stream().noneMatch(each -> each.how() == How.YOURS)
        ? reads
        : asWithoutWords(reads, read(sheet, row, body, from, to, own.unsaid()));
  }

  /** A word that says what would be read without it is no more sure for that. */
  private static List<HeadingRead> asWithoutWords(
      List<HeadingRead> reads, List<HeadingRead> without) {
    return reads.stream()
        .map(
            read ->
                without.stream()
                    .filter(
                        each ->
                            read.how() == How.YOURS
                                && each.column() == read.column()
                                && each.is(read.ours()))
                    .findFirst()
                    .orElse(read))
        .toList();
  }

  private static List<HeadingRead> read(
      Sheet sheet, HeadingRow row, List<SheetRow> body, int from, int to, OwnWords own) {
    int number = sheet.rows().get(row.lastIndex()).number();
    Columns columns = new Columns(sheet.name(), number, body, own);
    row.texts().subMap(from, to).forEach(columns::add);
    if (own.list().isOffers()) {
      PriceBreaks.settle(columns.reads);
    }
    columns.settleOpen();
    columns.settleNames();
    columns.settleUnheaded();
    columns.numbers.newestCount();
    columns.settleRanks();
    columns.numbers.settleNumber();
    return List.copyOf(VatRates.settled(Sorts.settled(columns.reads, body), columns.cells, own));
  }

  private void add(int column, String heading) {
    List<SheetCell> filled = cells.of(column);
    String example = filled.isEmpty() ? "" : filled.get(0).text();
    Meaning meaning = Meaning.of(Meaning.OPEN, "");
    How how = How.OPEN;
    String why = "";
    Optional<String> said = own.find("heading", heading);
    Optional<HeadingWords.Found> found = own.headings().find(heading);
    if (said.isPresent()) {
      meaning = said(said.get(), found);
      how = How.YOURS;
    } else if (found.isPresent()) {
      meaning = found.get().meaning();
      how = how(found.get(), !filled.isEmpty());
    } else if (HeadingRow.isSize(heading)
        && (own.list().isOffers() || !cells.most(column, CellKinds::isMoney))) {
      meaning = Meaning.of(SIZE_HEADING, "");
      how = How.CERTAIN;
    } else {
      Optional<HeadingWords.Near> near =
          own.headings().nearest(heading).filter(each -> byCells.mayBe(each, column));
      meaning = openBut(near);
      why =
          near.map(each -> "not understood; is it " + each.heading() + "?")
              .orElse("not understood");
      notUnderstood.add(column);
    }
    reads.add(
        new HeadingRead(
            sheet,
            row,
            column,
            heading.strip(),
            meaning.ours(),
            meaning.unit(),
            how,
            meaning.choices(),
            filled.size(),
            example,
            why));
    ranks.add(meaning.rank());
  }

  /** Of a column without cells there is no doubt. */
  private static How how(HeadingWords.Found found, boolean filled) {
    if (found.meaning().isOpen()) {
      return How.OPEN;
    }
    boolean nod = found.nod() && (filled || !found.meaning().isInDoubt());
    return nod ? How.LIKELY : How.CERTAIN;
  }

  /** What the grower says a heading is, in the unit that it states. */
  private static Meaning said(String ours, Optional<HeadingWords.Found> found) {
    String unit = found.map(each -> each.meaning().unit()).orElse("");
    boolean same = found.filter(each -> each.meaning().ours().equals(ours)).isPresent();
    return Meaning.of(ours, same ? unit : Units.usualOf(ours, unit));
  }

  private static Meaning openBut(Optional<HeadingWords.Near> near) {
    return new Meaning(Meaning.OPEN, "", 1, near.map(HeadingWords.Near::choices).orElse(List.of()));
  }

  /** A list without numbers, whose rows are one plant each. */
  public static final String PLANT_A_ROW = "plant a row";

  /** Not what a plant costs or is to fetch; it goes to the note. */
  private static final String OTHER_PRICE = "other price";

  /** Months beside that of the arrival. */
  private static final Set<String> MONTHS =
      Set.of("counted", "root work", "training since", "not before");

  /** A second count, which holds where the number of plants is empty. */
  public static final String NUMBER_ELSE = "second count";

  public static final int PLANT_A_ROW_COLUMN = 1_000_000;

  /** Its cells are numbers of plants of the size that it names. */
  public static final String SIZE_HEADING = "size heading";

  private boolean has(String ours) {
    return reads.stream().anyMatch(each -> each.is(ours));
  }

  private void settleOpen() {
    for (int i = 0; i < reads.size(); i++) {
      HeadingRead read = reads.get(i);
      if (read.how() == How.OPEN && notUnderstood.contains(read.column())) {
        if (byCells.sayPots(read.column())) {
          reads.set(i, read.as("size", "", How.LIKELY, "its cells are pots and roots"));
        } else if (PriceBreaks.isStep(read)) {
          reads.set(i, read.as("note", "", How.LIKELY, "a price by number"));
        } else if (read.choices().isEmpty()) {
          reads.set(i, read.offering(byCells.offered(read.column())));
        }
      } else if (read.how() == How.OPEN && !read.choices().isEmpty()) {
        Optional<String> chosen = byCells.of(read);
        if (chosen.isPresent()) {
          choose(i, chosen.get());
        } else {
          reads.set(i, read.offering(byCells.withOffered(read)));
        }
      } else if (read.is("quantity")
          && read.how() != How.YOURS
          && own.list().isOffers()
          && !cells.most(read.column(), CellKinds::isCount)
          && cells.most(read.column(), OfferMonth::isOne)) {
        choose(i, "arrived");
      } else if (read.is("quantity") && cells.most(read.column(), CellKinds::isMonthAlone)) {
        choose(i, CountedWords.saysLast(read.heading()) ? "counted" : "arrived");
      } else if (byCells.arePotsCounted(read)) {
        choose(i, "quantity");
      } else if (byCells.areStems(read)) {
        choose(i, "clear stem");
      } else if (byCells.areGirths(read)) {
        choose(i, "girth cm");
      } else if (read.is("place") && !has("pot") && byCells.arePots(read.column())) {
        choose(i, "pot");
      } else if (read.is("place detail") && byCells.isNumbering(read)) {
        choose(i, Meaning.NOT_READ);
      } else if (MONTHS.contains(read.ours()) && read.how() != How.YOURS) {
        reads.set(i, byCells.ofMonths(read));
      } else if (read.is("form")
          && cells.most(read.column(), cell -> Shapes.ALL.contains(Keys.of(cell.text())))) {
        choose(i, "habit");
      }
    }
    settlePrices();
  }

  private void choose(int index, String ours) {
    HeadingRead read = reads.get(index);
    String unit = Units.usualOf(ours, read.unit());
    reads.set(index, read.as(ours, unit, How.BY_ITS_CELLS, "taken by its cells"));
  }

  /** A price beside a unit cost is what is asked for, beside a selling price what was paid. */
  private void settlePrices() {
    for (int i = 0; i < reads.size(); i++) {
      HeadingRead read = reads.get(i);
      boolean price =
          read.how() == How.OPEN
              && !notUnderstood.contains(read.column())
              && Set.copyOf(read.choices()).equals(Set.of("unit cost", "selling price"));
      if (price && has("unit cost") != has("selling price")) {
        choose(i, has("unit cost") ? "selling price" : "unit cost");
      }
    }
    netAndGross();
    if (own.list().isOffers() && !has("unit cost")) {
      firstOf(OTHER_PRICE).ifPresent(this::takeOnlyPrice);
    }
  }

  /** Two columns of one price, without and with VAT, are what is asked. */
  private void netAndGross() {
    Map<Integer, String> units = new TreeMap<>();
    for (int i = 0; i < reads.size(); i++) {
      HeadingRead read = reads.get(i);
      if (read.how() == How.OPEN && read.choices().contains("selling price")) {
        int index = i;
        TaxWords.of(read.heading()).ifPresent(unit -> units.put(index, unit));
      }
    }
    boolean both = units.values().containsAll(List.of(Units.MONEY, Units.GROSS));
    if (both && !has("selling price") && !own.list().isOffers()) {
      units.forEach(
          (i, unit) ->
              reads.set(
                  i,
                  reads
                      .get(i)
                      .as("selling price", unit, How.BY_ITS_CELLS, "without and with VAT")));
    }
  }

  /** What a supplier would have others pay is what they ask for where they say nothing else. */
  private void takeOnlyPrice(int index) {
    HeadingRead read = reads.get(index);
    reads.set(index, read.as("unit cost", read.unit(), How.LIKELY, "no other price is there"));
  }

  /** Variety, common name and genus are the species where nothing else is. */
  private void settleNames() {
    codesAreLots();
    if (!has("species")) {
      firstOf("variety")
          .or(() -> firstOf("common name"))
          .ifPresent(index -> rename(index, "species"));
    }
    if (!has("species") && has("genus")) {
      firstOf("cultivar").ifPresent(index -> rename(index, "species"));
    }
    for (int i = 0; i < reads.size(); i++) {
      if (reads.get(i).is("variety")) {
        rename(i, "cultivar");
      }
    }
    if (!has("species") && !has("genus")) {
      columnOfPlants();
    }
  }

  /** A column of names that holds figures alone, or single words beside plants, holds codes. */
  private void codesAreLots() {
    for (int i = 0; i < reads.size(); i++) {
      HeadingRead read = reads.get(i);
      boolean name = Set.of("species", "common name", "variety").contains(read.ours());
      if (name && read.how() != How.YOURS && byCells.areCodes(read)) {
        choose(i, !cells.allDiffer(read.column()) ? "note" : has("lot") ? Meaning.NOT_READ : "lot");
      }
    }
  }

  private Optional<Integer> firstOf(String ours) {
    for (int i = 0; i < reads.size(); i++) {
      if (reads.get(i).is(ours)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** What stands beside the rows without a heading is remarks on them. */
  private void settleUnheaded() {
    for (int i = 0; i < reads.size(); i++) {
      HeadingRead read = reads.get(i);
      if (read.how() == How.OPEN && read.heading().endsWith(HeadingRow.NO_HEADING)) {
        reads.set(i, read.as("note", "", How.BY_ITS_CELLS, "words beside the rows"));
      }
    }
  }

  private void rename(int index, String ours) {
    HeadingRead read = reads.get(index);
    reads.set(index, read.as(ours, read.unit(), read.how(), read.why()));
  }

  private void columnOfPlants() {
    int best = -1;
    double most = 0;
    for (int i = 0; i < reads.size(); i++) {
      double share = byCells.plants(reads.get(i).column());
      if (share > most && reads.get(i).how() != How.YOURS) {
        best = i;
        most = share;
      }
    }
    if (best >= 0) {
      HeadingRead read = reads.get(best);
      reads.set(best, read.as("species", "", How.LIKELY, "its cells are plants"));
    }
  }

  /**
   * Of two that claim the same the lower rank wins; quantities and prices are compared in the row.
   */
  private void settleRanks() {
    for (int i = 0; i < reads.size(); i++) {
      HeadingRead read = reads.get(i);
      if (isSingle(read.ours())) {
        int rank = effectiveRank(i);
        String name = read.heading();
        for (int j = 0; j < reads.size(); j++) {
          boolean same = reads.get(j).is(read.ours()) && j != i;
          if (same && rank < effectiveRank(j)) {
            if (numbers.fillsGaps(j, i)) {
              reads.set(
                  j, reads.get(j).as(NUMBER_ELSE, "", How.LIKELY, "where " + name + " is empty"));
            } else {
              giveWay(j, name);
            }
          }
        }
      }
    }
  }

  private int effectiveRank(int index) {
    return reads.get(index).how() == How.YOURS ? 0 : ranks.get(index);
  }

  private void giveWay(int index, String to) {
    HeadingRead read = reads.get(index);
    String other =
        read.is("species") ? "common name" : read.is("selling price") ? OTHER_PRICE : "note";
    reads.set(index, read.as(other, read.unit(), read.how(), to + " says it; kept in the note"));
  }

  private static boolean isSingle(String ours) {
    return !Set.of(
            "note",
            "place",
            "place detail",
            Meaning.NOT_READ,
            Meaning.OPEN,
            SIZE_HEADING,
            "size",
            "selling price",
            "lost",
            "sold",
            "reserved",
            "opening",
            "available",
            "quality word",
            "habit")
        .contains(ours);
  }
}
