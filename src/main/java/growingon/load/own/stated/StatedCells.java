package growingon.load.own.stated;

import growingon.load.own.heading.ColumnFacts;
import growingon.load.own.heading.HeadedCells;
import growingon.load.own.heading.HeadedCells.Filled;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.Draft;
import growingon.load.own.lot.Site;
import growingon.load.own.lot.Stated;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.size.PotSize;
import growingon.load.own.text.Keys;
import growingon.load.own.text.MonthText;
import growingon.load.own.text.Numbers;
import growingon.load.own.text.Read;
import growingon.load.own.text.Units;
import java.time.YearMonth;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Reads what a row states in columns of the stock table beside plant, number, size, place and
 * money. What such a cell says and cannot be taken goes to the note, so that nothing is lost.
 */
public final class StatedCells {
  private static final List<String> MONTHS =
      List.of("counted", "root work", "training since", "not before");

  /** Columns whose cells name something that only the tables of the nursery know. */
  private static final List<String> NAMES =
      List.of("route", "last step", "hold to grade", "hold share %", "from lot");

  /** How plants stand at their supplier's, whose other columns are notes already. */
  private static final List<String> OF_STANDING =
      List.of("spacing cm", "plants per m2", "gap mm", "apart months");

  private static final Set<String> YES = Set.of("yes", "y", "x", "ja", "j", "oui", "si", "s", "✓");
  private static final Set<String> NO = Set.of("no", "n", "nein", "non", "nee");
  private static final double MM2_IN_M2 = 1e6;

  private final HeadedCells heads;
  private final ColumnFacts facts;
  private final MonthCells months;
  private final StatedQualities qualities;
  private final boolean ofOffers;

  /** Of a list. */
  public StatedCells(HeadedCells heads, ColumnFacts facts, Site site, OwnWords own) {
    this.heads = heads;
    this.facts = facts;
    this.months = new MonthCells(facts, site.south());
    this.qualities = new StatedQualities(heads, facts);
    this.ofOffers = own.list().isOffers();
  }

  /** What a row states, once number, size and pot of its lot are read. */
  public void read(SheetRow row, Draft draft) {
    if (!ofOffers) {
      MONTHS.forEach(ours -> heads.each(row, ours, cell -> month(cell, draft)));
    }
    qualities.read(row, draft);
    heads.each(row, "trunk spread %", cell -> spread(cell, draft));
    if (ofOffers) {
      OF_STANDING.forEach(ours -> heads.each(row, ours, cell -> note(cell, draft)));
    } else {
      readStanding(row, draft);
    }
  }

  /** Of plants that stand in the nursery. */
  private void readStanding(SheetRow row, Draft draft) {
    heads.each(row, "spacing cm", cell -> spacing(cell, draft));
    heads.each(row, "plants per m2", cell -> density(cell, draft));
    heads.each(row, "gap mm", cell -> gap(cell, draft));
    heads.each(row, "sorted", cell -> sorted(cell, draft));
    heads.each(row, "apart months", cell -> apart(cell, draft));
    if (draft.size.pot().isEmpty()) {
      heads.each(row, "potted", cell -> note(cell, draft));
    }
    NAMES.forEach(ours -> heads.each(row, ours, cell -> note(cell, draft)));
  }

  static void note(Filled cell, Draft draft) {
    draft.note(cell.head().heading() + " " + cell.text());
  }

  private void month(Filled cell, Draft draft) {
    String ours = cell.head().ours();
    if (MonthText.isNow(cell.cell())) {
      return;
    }
    Read<YearMonth> read = months.read(cell);
    boolean early =
        ours.equals(Stated.COUNTED)
            && read.value().isPresent()
            && draft.arrived.filter(read.value().get()::isBefore).isPresent();
    if (read.isAsked()) {
      draft.ask(ours, cell.text(), read.ask());
    } else if (early) {
      draft.ask(ours, cell.text(), "they came in %s; which month?".formatted(draft.arrived.get()));
    } else {
      read.value().ifPresent(month -> draft.stated.putIfAbsent(ours, month.toString()));
    }
  }

  private static void spread(Filled cell, Draft draft) {
    OptionalDouble percent = StatedQualities.percent(cell, false);
    if (percent.isPresent()) {
      draft.stated.putIfAbsent("trunk spread %", PotSize.plain(percent.getAsDouble()));
    } else {
      note(cell, draft);
    }
  }

  /** From trunk to trunk: one number, or one along the row and one between rows. */
  private void spacing(Filled cell, Draft draft) {
    String[] sides = cell.text().toLowerCase(java.util.Locale.ROOT).split("[x×*]");
    double area = 1;
    for (String side : sides) {
      OptionalDouble mm = mm(cell, side);
      area *= mm.orElse(0) * (sides.length == 1 ? mm.orElse(0) : 1);
    }
    if (sides.length <= 2 && area > 0) {
      density(MM2_IN_M2 / area, draft);
    } else {
      note(cell, draft);
    }
  }

  /** A length in the unit that it states, else in that of its column. */
  private OptionalDouble mm(Filled cell, String text) {
    String bare = text.strip().replaceAll("(?:mm|cm|m|in|ft|\"|”|'|’|′)\\.?$", "").strip();
    String said =
        text.strip()
            .substring(bare.length())
            .strip()
            .replaceAll("[\"”]", "in")
            .replaceAll("['’′]", "ft");
    String unit = said.isEmpty() ? facts.unit(cell.head().column()) : said;
    OptionalDouble number = Numbers.money(bare);
    return number.isPresent() && Units.isLength(unit)
        ? OptionalDouble.of(number.getAsDouble() * Units.mm(unit))
        : OptionalDouble.empty();
  }

  private static void density(Filled cell, Draft draft) {
    OptionalDouble number = Numbers.money(cell.text());
    if (number.isPresent() && number.getAsDouble() > 0) {
      density(number.getAsDouble(), draft);
    } else {
      note(cell, draft);
    }
  }

  private static void density(double plantsAM2, Draft draft) {
    draft.stated.putIfAbsent(Stated.PLANTS, PotSize.plain(Math.rint(plantsAM2 * 1e4) / 1e4));
  }

  /** Between pots; in the ground the plants a square metre count. */
  private void gap(Filled cell, Draft draft) {
    OptionalDouble mm = mm(cell, cell.text());
    if (mm.isPresent() && draft.size.pot().isPresent()) {
      draft.stated.putIfAbsent(Stated.GAP, PotSize.plain(mm.getAsDouble()));
    } else {
      note(cell, draft);
    }
  }

  private static void sorted(Filled cell, Draft draft) {
    String key = Keys.of(cell.text());
    if (YES.contains(key) || NO.contains(key)) {
      draft.stated.putIfAbsent("sorted", YES.contains(key) ? "yes" : "no");
    } else {
      note(cell, draft);
    }
  }

  private static void apart(Filled cell, Draft draft) {
    if (cell.text().matches("[0-9]|[1-5][0-9]|60")) {
      draft.stated.putIfAbsent("apart months", cell.text());
    } else {
      note(cell, draft);
    }
  }
}
