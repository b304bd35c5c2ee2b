package growingon.load.own.row;

import growingon.load.own.heading.ColumnFacts;
import growingon.load.own.heading.Columns;
import growingon.load.own.heading.HeadedCells;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.Ledger;
import growingon.load.own.heading.ListKind;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.heading.SizeGroup;
import growingon.load.own.heading.SoldOff;
import growingon.load.own.lot.Draft;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.size.PotSize;
import growingon.load.own.text.CountText;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Read;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads how many plants a row is. */
final class RowCounts {
  private static final Pattern PACK =
      Pattern.compile(
          "(?i)(?:bdl|bd|bund|bundle|tray|vpe|kiste|plaque)s?\\.?\\s*(?:of|à|a|zu|de)?\\s*(\\d+)");
  private static final String HOW_MANY = "how many plants are these?";
  private static final Pattern TIMES_ALONE =
      Pattern.compile("(?:^|(?<![0-9.,\\s])\\s+)[x×]\\s?([0-9]{1,4})(?:$|\\s)");
  private static final Pattern TAGS = Pattern.compile("([0-9]{1,6})\\s*[-–]\\s*([0-9]{1,6})");

  private final HeadedCells heads;
  private final OwnWords own;
  private final ListKind list;
  private final boolean soldOff;
  private final ColumnFacts facts;

  RowCounts(HeadedCells heads, OwnWords own, boolean soldOff, ColumnFacts facts) {
    this.facts = facts;
    this.heads = heads;
    this.own = own;
    this.list = own.list();
    this.soldOff = soldOff;
  }

  /** The number of plants of a row. */
  void read(SheetRow row, Draft draft) {
    List<Read<Integer>> reads = new ArrayList<>();
    List<String> texts = new ArrayList<>();
    numbers(row, draft, reads, texts);
    if (reads.isEmpty() && list.isOffers()) {
      return;
    }
    if (reads.isEmpty() && isUnderASize()) {
      reads.add(Read.of(0));
      texts.add("");
    }
    if (reads.isEmpty()) {
      draft.rowAsked = true;
      draft.ask("quantity", "", HOW_MANY);
      return;
    }
    Read<Integer> read = lowest(reads, texts, draft);
    if (read.isAsked() || own.refuses("quantity", read.nod())) {
      draft.rowAsked = true;
      draft.ask("quantity", texts.get(0), read.isAsked() ? read.ask() : HOW_MANY);
      return;
    }
    if (read.about()) {
      draft.about = true;
      draft.about(texts.get(0));
    }
    List<String> either = CountText.either(texts.get(0));
    if (!either.isEmpty()) {
      draft.ask(
          "quantity",
          texts.get(0),
          either.get(0),
          "which number holds: %s?".formatted(String.join(" or ", either)),
          either);
    } else if (!read.nod().isEmpty()) {
      draft.nod("quantity", texts.get(0), read.nod());
    }
    draft.note(read.note());
    takeQuantity(row, read.value().orElse(0), texts.get(0), draft);
  }

  /** A price under a size without a number: none of that size are there. */
  private boolean isUnderASize() {
    return heads.all().stream().anyMatch(head -> head.column() == SizeGroup.SIZE_COLUMN);
  }

  /** Every number that the row states, and the cells that it stands in. */
  private void numbers(SheetRow row, Draft draft, List<Read<Integer>> reads, List<String> texts) {
    heads.each(
        row,
        "quantity",
        cell -> {
          if (list.isOffers() && RowTerms.isPlenty(cell.text())) {
            return;
          }
          reads.add(CountText.isGone(cell.cell()) ? Read.of(0) : CountText.of(cell.cell()));
          texts.add(cell.text());
          draft.quantityIsText |= cell.cell().isText();
        });
    Read<Integer> packed = packs(row, draft);
    if (packed.value().isPresent()) {
      reads.add(packed);
      texts.add("packs");
    }
    left(row, reads, texts);
    boolean named = !heads.first(row, "species").isEmpty();
    if (reads.isEmpty() && facts.isTreeARow() && named) {
      reads.add(Read.of(1));
      texts.add("");
    }
    if (reads.isEmpty() && heads.all().stream().anyMatch(head -> head.is(Columns.PLANT_A_ROW))) {
      reads.add(Read.of(plantsOfRow(row)));
      texts.add(heads.first(row, "lot"));
    }
  }

  /**
   * What was there less what was sold and lost is left where no number says it; where the rows add
   * up but one, that row's two numbers are both read.
   */
  private void left(SheetRow row, List<Read<Integer>> reads, List<String> texts) {
    OptionalInt left = Ledger.left(heads, row);
    boolean says = reads.stream().anyMatch(read -> read.value().isPresent());
    if (left.isPresent() && (reads.isEmpty() || says && facts.isLedger())) {
      String sum = "%s less what was sold and lost".formatted(heads.first(row, "opening"));
      reads.add(
          reads.isEmpty()
              ? Read.likely(left.getAsInt(), sum + " is read as " + left.getAsInt())
              : Read.of(left.getAsInt()));
      texts.add(Integer.toString(left.getAsInt()));
    }
  }

  /** One plant, or as many as its tags or an x8 say. */
  private int plantsOfRow(SheetRow row) {
    for (HeadingRead head : heads.all()) {
      Matcher times = TIMES_ALONE.matcher(row.text(head.column()));
      if (times.find()) {
        return Integer.parseInt(times.group(1));
      }
    }
    Matcher tags = TAGS.matcher(heads.first(row, "lot"));
    return tags.matches()
        ? Math.max(1, Integer.parseInt(tags.group(2)) - Integer.parseInt(tags.group(1)) + 1)
        : 1;
  }

  /** Two numbers in a row that differ are asked; the lower holds till then. */
  private static Read<Integer> lowest(List<Read<Integer>> reads, List<String> texts, Draft draft) {
    Read<Integer> best = reads.get(0);
    for (Read<Integer> read : reads) {
      boolean lower =
          read.value().isPresent()
              && best.value().isPresent()
              && read.value().get() < best.value().get();
      best = best.isAsked() || lower ? read : best;
    }
    boolean differ =
        reads.stream().map(Read::value).flatMap(Optional::stream).distinct().count() > 1;
    if (differ && best.value().orElse(0) > 0) {
      draft.ask(
          "quantity",
          String.join(" and ", texts),
          Integer.toString(best.value().get()),
          "which number holds: %s?".formatted(String.join(" or ", texts)),
          texts);
    }
    return best;
  }

  private Read<Integer> packs(SheetRow row, Draft draft) {
    OptionalInt packs = heads.count(row, "packs");
    OptionalInt each = heads.count(row, "per pack");
    boolean counted = heads.all().stream().anyMatch(head -> head.is("quantity"));
    if (packs.isEmpty() || (each.isEmpty() && counted)) {
      return Read.none();
    }
    if (each.isEmpty()) {
      return Read.none();
    }
    draft.note("%d x %d".formatted(packs.getAsInt(), each.getAsInt()));
    return Read.of(packs.getAsInt() * each.getAsInt());
  }

  private void takeQuantity(SheetRow row, int number, String found, Draft draft) {
    String unit = Keys.of(heads.first(row, "count unit"));
    double each = perUnit(unit, row, draft);
    String said = "%s of %s plants".formatted(heads.first(row, "count unit"), PotSize.plain(each));
    if (each == 0 || (each > 1 && own.refuses("quantity", said))) {
      draft.rowAsked = true;
      draft.ask(
          "quantity",
          found + " " + heads.first(row, "count unit"),
          "how many plants are in one %s?".formatted(heads.first(row, "count unit")));
      return;
    }
    draft.perUnit = each;
    draft.quantity = OptionalInt.of((int) Math.min(CountText.MOST, Math.rint(number * each)));
    if (each > 1) {
      draft.nod("quantity", found, said);
    }
    beforeOrAfter(row, draft);
    heads.each(
        row,
        "kept",
        cell ->
            CountText.of(cell.cell())
                .value()
                .ifPresent(
                    value ->
                        draft.kept =
                            OptionalInt.of(Math.min(value, draft.quantity.orElse(value)))));
    heads.each(
        row,
        "reserved",
        cell -> {
          if (!cell.text().strip().equals("0")) {
            draft.note(cell.text() + " reserved");
          }
        });
  }

  /** Plants in one of the unit; 0 where the list does not say. */
  private double perUnit(String unit, SheetRow row, Draft draft) {
    if (unit.isEmpty()
        || unit.matches(
            "ea|each|st|stk|stuck|stueck|pc|pcs|pz|ud|uds|no|plant|plants|piece|1|c|100|unit|u|stuks|pce")) {
      return 1;
    }
    if (unit.matches("pr|pair|pairs|paar|paire|2")) {
      return 2;
    }
    if (unit.matches("doz|dozen|12|dz")) {
      return 12;
    }
    Matcher inUnit = PACK.matcher(heads.first(row, "count unit"));
    if (inUnit.find()) {
      return Double.parseDouble(inUnit.group(1));
    }
    OptionalInt packed = heads.count(row, list.isOffers() ? "multiple" : "per pack");
    if (packed.isPresent()) {
      return packed.getAsInt();
    }
    Matcher said = PACK.matcher(heads.first(row, "note"));
    return said.find() ? Double.parseDouble(said.group(1)) : 0;
  }

  /** A number beside what was sold or lost may be the one before or after. */
  private void beforeOrAfter(SheetRow row, Draft draft) {
    if (soldOff && draft.quantity.isPresent()) {
      int before = draft.quantity.getAsInt();
      double taken = SoldOff.taken(heads, row) * draft.perUnit;
      draft.quantity = OptionalInt.of((int) Math.max(0, before - taken));
      draft.takenOff = before - draft.quantity.getAsInt();
    }
    for (String ours : List.of("sold", "lost")) {
      heads.each(row, ours, cell -> draft.note(isNil(cell) ? "" : cell.text() + " " + ours));
    }
  }

  private static boolean isNil(HeadedCells.Filled cell) {
    return CountText.isGone(cell.cell());
  }
}
