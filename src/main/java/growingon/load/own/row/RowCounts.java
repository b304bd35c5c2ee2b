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
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads how many plants a row is. */
final class RowCounts {
  private static final String A_PACK =
      "(?:bdl|bd|bund|bunde|bundle|tray|flat|vpe|kiste|plaque|caisse|box|pack|bandeja|metre|meter|mètre|metro)s?";

  /** Bd à 25, tray of 84; 84 to the tray, 4 per metre, 50-cell. */
  private static final Pattern PACK =
      Pattern.compile(
          "(?i)\\b"
              + A_PACK
              + "\\b\\.?\\s*(?:of|à|a|zu|de|x|@)?\\s*(\\d{1,4})\\b"
              + "|\\b(\\d{1,4})\\s*(?:-\\s*cells?\\b|(?:to|per|in|je|pro|par|por|/)\\s*(?:the|a|an|la|le|il|un|une)?\\s*"
              + A_PACK
              + "\\b)");

  private static final Pattern FIGURE = Pattern.compile("(\\d{1,4})");

  /** 84s, 104er: a tray of so many plants. */
  private static final Pattern CELLS =
      Pattern.compile("(?i)(\\d{2,4})(?:s|er|\\s*-?cells?|\\s*-?zellen)");

  /** What a number and a price are for, as in per 10. */
  private static final Pattern PER =
      Pattern.compile(
          "(?:per|je|pro|par|por|a|zu)? ?(?:10|20|25|50|100|1000|c|hundert|hundred|cent|cento)");

  private static final Pattern TIMES_ALONE =
      Pattern.compile("(?:^|(?<![0-9.,\\s])\\s+)[x×]\\s?([0-9]{1,4})(?:$|\\s)");

  /** 31-33, S 110-113, F-10 bis F-13. */
  private static final Pattern TAGS =
      Pattern.compile(
          "(?i)(\\p{L}{0,4}[ .-]{0,2})([0-9]{1,6})\\s*(?:[-–]|bis|to|à|au|t/m|tot|al?)\\s*(?:\\1)?([0-9]{1,6})");

  /** 121 a+b: a tree a letter. */
  private static final Pattern LETTERED =
      Pattern.compile("(?i).*[0-9]\\s*\\p{L}(?:\\s*[+&,/]\\s*\\p{L})+");

  private static final Set<Integer> BETWEEN = Set.of((int) '+', (int) '&', (int) ',', (int) '/');
  private static final Set<String> PER_PACK = Set.of("per pack", "multiple");

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
      draft.ask("quantity", "", CountText.HOW_MANY);
      return;
    }
    Read<Integer> read = lowest(reads, texts, draft);
    if (read.isAsked() || own.refuses("quantity", read.nod())) {
      draft.rowAsked = true;
      draft.ask("quantity", texts.get(0), read.isAsked() ? read.ask() : CountText.HOW_MANY);
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
          reads.add(CountText.isGone(cell.cell()) ? Read.of(0) : number(cell, row, draft));
          texts.add(cell.text());
          draft.quantityIsText |= cell.cell().isText();
        });
    if (reads.isEmpty()) {
      heads.each(row, Columns.NUMBER_ELSE, cell -> second(cell, reads, texts));
    }
    Read<Integer> packed = packs(row, draft);
    if (packed.value().isPresent()) {
      reads.add(packed);
      texts.add("%s x %s".formatted(heads.first(row, "packs"), heads.first(row, "per pack")));
    }
    left(row, reads, texts);
    if (reads.isEmpty() && draft.namedNumber.isPresent()) {
      int number = draft.namedNumber.getAsInt();
      reads.add(
          Read.likely(number, "%d before the name is the number of plants".formatted(number)));
      texts.add(Integer.toString(number));
    }
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

  /** A second count, where the first is empty. */
  private static void second(
      HeadedCells.Filled cell, List<Read<Integer>> reads, List<String> texts) {
    Optional<Integer> number = CountText.of(cell.cell()).value();
    if (number.isPresent()) {
      String said =
          "%s of %s is read, as nothing else counts".formatted(cell.text(), cell.head().heading());
      reads.add(number.get() == 0 ? Read.of(0) : Read.likely(number.get(), said));
      texts.add(cell.text());
    }
  }

  /** A number of plants; of trays and bundles, if the row says how many are in one. */
  private Read<Integer> number(HeadedCells.Filled cell, SheetRow row, Draft draft) {
    Read<Integer> read = CountText.of(cell.cell());
    OptionalInt packs = CountText.packs(cell.text());
    double each = packs.isPresent() ? said(row, draft).orElse(0) : 0;
    int plants = (int) Math.min(CountText.MOST, packs.orElse(0) * each);
    return each == 0
        ? read
        : Read.likely(
            plants, "%s of %s is read as %d".formatted(cell.text(), PotSize.plain(each), plants));
  }

  /** How many plants are in one tray, bundle or the like, as a cell or the title above says. */
  private OptionalDouble said(SheetRow row, Draft draft) {
    for (HeadingRead head : heads.all()) {
      Pattern each = PER_PACK.contains(head.ours()) ? FIGURE : CELLS;
      Matcher cells = each.matcher(row.text(head.column()).strip());
      if (cells.matches()) {
        return OptionalDouble.of(Double.parseDouble(cells.group(1)));
      }
    }
    for (HeadingRead head : heads.all()) {
      OptionalDouble pack =
          head.is("quantity") ? OptionalDouble.empty() : pack(row.text(head.column()));
      if (pack.isPresent()) {
        return pack;
      }
    }
    return pack(draft.terms);
  }

  private static OptionalDouble pack(String text) {
    Matcher pack = PACK.matcher(text);
    return pack.find()
        ? OptionalDouble.of(
            Double.parseDouble(pack.group(1) == null ? pack.group(2) : pack.group(1)))
        : OptionalDouble.empty();
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
    if (tags.matches()) {
      return Math.max(1, Integer.parseInt(tags.group(3)) - Integer.parseInt(tags.group(2)) + 1);
    }
    String tag = heads.first(row, "lot");
    return LETTERED.matcher(tag).matches()
        ? 1 + (int) tag.chars().filter(BETWEEN::contains).count()
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
    askOfName(row, number, unit, draft);
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
          Optional<Integer> held = CountText.of(cell.cell()).value();
          if (held.isEmpty() || held.get() > 0) {
            draft.note(held.map(Object::toString).orElse(cell.text()) + " reserved");
          }
        });
  }

  /** Asks what a plain number is of where the name has another, or says bundles of so many. */
  private void askOfName(SheetRow row, int number, String unit, Draft draft) {
    OptionalDouble pack = pack(heads.joined(row, "species"));
    String plain = Integer.toString(number);
    if (unit.isEmpty() && pack.isPresent() && number > 0) {
      String all = PotSize.plain(number * pack.getAsDouble());
      draft.ask(
          "quantity",
          plain,
          plain,
          "is %s the number of plants, or of packs of %s?"
              .formatted(plain, PotSize.plain(pack.getAsDouble())),
          List.of(plain, all));
    }
    if (draft.namedNumber.orElse(number) != number) {
      String named = Integer.toString(draft.namedNumber.getAsInt());
      draft.ask(
          "quantity",
          named + " and " + plain,
          plain,
          "which number holds: %s or %s?".formatted(named, plain),
          List.of(named, plain));
    }
  }

  /** Plants in one of the unit; 0 where the list does not say. */
  private double perUnit(String unit, SheetRow row, Draft draft) {
    if (unit.isEmpty()
        || PER.matcher(unit).matches()
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
    OptionalInt packed = heads.count(row, list.isOffers() ? "multiple" : "per pack");
    if (packed.isPresent()) {
      return packed.getAsInt();
    }
    return said(row, draft).orElse(0);
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
