package growingon.load.own;

import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.HeadingRow;
import growingon.load.own.heading.ListKind;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.Draft;
import growingon.load.own.lot.LotNames;
import growingon.load.own.lot.OfferNames;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.lot.Question;
import growingon.load.own.lot.Site;
import growingon.load.own.row.BenchChart;
import growingon.load.own.row.Editions;
import growingon.load.own.row.Legend;
import growingon.load.own.row.ListRead;
import growingon.load.own.row.SheetRead;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Titles;
import growingon.problem.MarkedText;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Reads a grower's own list; the way into this package. */
public final class ListReader {
  private static final List<String> DOLLARS = List.of("AUD", "NZD", "CAD");
  private static final Pattern CODE =
      Pattern.compile("(?<![\\p{L}\\d])(?:GBP|EUR|USD|CHF|AUD|NZD|CAD)(?![\\p{L}\\d])");

  private final OwnWords own;
  private final Site site;
  private final List<Draft> drafts = new ArrayList<>();
  private final List<Question> questions = new ArrayList<>();
  private final List<String> notices = new ArrayList<>();

  private ListReader(OwnWords own, Site site) {
    this.own = own;
    this.site = site;
  }

  /**
   * Reads a list.
   *
   * @param sheets its sheets that are not hidden
   * @param own what the grower has said that words mean
   * @param site of the nursery
   */
  public static ListRead read(Path file, List<Sheet> sheets, OwnWords own, Site site) {
    return new ListReader(own, site).read(file, sheets);
  }

  /**
   * Reads a supplier's list of plants that may be bought.
   *
   * @param from the first month in which they can come
   */
  public static ListRead readOffers(
      Path file, List<Sheet> sheets, OwnWords own, Site site, YearMonth from) {
    return read(file, sheets, own.in(ListKind.OFFERS), site.buyingFrom(from));
  }

  /** Whether any sheet looks like a list of plants. */
  public static boolean isList(List<Sheet> sheets) {
    return sheets.stream()
        .anyMatch(
            sheet -> HeadingRow.find(sheet, OwnWords.NONE).isPresent() || BenchChart.isOne(sheet));
  }

  /** The month that a title or the name of a file names with its year. */
  public static Optional<YearMonth> monthIn(String title) {
    return title.isBlank() ? Optional.empty() : Titles.month(SheetCell.of(title));
  }

  private ListRead read(Path file, List<Sheet> sheets) {
    List<SheetRead> reads = sheets.stream().map(sheet -> new SheetRead(sheet, own, site)).toList();
    Editions.passOver(reads, notices, questions);
    List<SheetRead> lists = reads.stream().filter(SheetRead::isList).toList();
    for (SheetRead read : lists) {
      if (!own.list().isOffers()) {
        place(read.lots, read, lists.size() > 1);
        place(read.asked, read, lists.size() > 1);
      }
      drafts.addAll(read.lots);
      notices.addAll(read.notices);
      questions.addAll(read.questions);
    }
    Legend legend = Legend.of(sheets);
    tellSheets(reads, legend);
    int good = drafts.size();
    lists.forEach(read -> drafts.addAll(read.asked));
    List<OwnLot> all = named(drafts.stream().map(Draft::lot).toList());
    askOfLots(all);
    List<OwnLot> lots = all.subList(0, good);
    if (!own.list().isOffers()) {
      askTwice(lots);
    }
    List<HeadingRead> heads = lists.stream().flatMap(read -> read.heads.stream()).toList();
    return new ListRead(
        own.list(),
        file,
        lots,
        heads,
        questions,
        reads.stream().map(SheetRead::account).toList(),
        lists.stream().flatMap(read -> read.totals.stream()).toList(),
        notices.stream().map(MarkedText::new).toList(),
        lists.stream()
            .map(read -> read.counted)
            .flatMap(Optional::stream)
            .max(YearMonth::compareTo),
        currencies(lists, sheets),
        drafts.subList(0, good).stream().flatMap(draft -> draft.aboutTexts.stream()).toList(),
        all.subList(good, all.size()),
        lists.stream().flatMap(read -> read.unusedTitles.stream()).toList(),
        legend);
  }

  /**
   * The sheet's name is the place where nothing else says it; the rows of each of several sheets
   * are rows of its own.
   */
  private static void place(List<Draft> of, SheetRead read, boolean several) {
    for (Draft draft : of) {
      if (draft.place.isEmpty()) {
        draft.place = read.place().orElse("");
      } else if (draft.placeIsDetail && several) {
        draft.place =
            read.place()
                    .filter(sheet -> !Keys.of(draft.place).contains(Keys.of(sheet)))
                    .map(sheet -> sheet + ", ")
                    .orElse("")
                + draft.place;
      }
    }
  }

  private void tellSheets(List<SheetRead> reads, Legend legend) {
    for (SheetRead read : reads) {
      if (!read.isList() && !read.sheet().rows().isEmpty()) {
        notices.add("%s is not read as a list: %s".formatted(read.sheet().name(), read.why));
      }
      if (read.isList() && read.sheet().coloured()) {
        notices.add(
            read.sheet()
                .said(
                    "colours and cell comments are not read; make a column of what they mean"
                        + colours(read, legend)));
      }
    }
  }

  /** What the list itself says that colours mean: on its sheet, else on one for that. */
  private static String colours(SheetRead read, Legend legend) {
    return read.colours.isEmpty()
        ? legend.aboutColours()
        : " (%s)".formatted(String.join("; ", read.colours));
  }

  private void askOfLots(List<OwnLot> lots) {
    for (int i = 0; i < lots.size(); i++) {
      String name = lots.get(i).lot();
      long plants = lots.get(i).quantity().orElse(0);
      drafts.get(i).questions.forEach(each -> questions.add(each.ofLot(name, plants)));
    }
  }

  private List<OwnLot> named(List<OwnLot> lots) {
    return own.list().isOffers() ? OfferNames.named(lots) : LotNames.named(lots);
  }

  /** One code twice with one name and size: more, or the same plants? */
  private void askTwice(List<OwnLot> lots) {
    Set<List<Object>> seen = new HashSet<>();
    for (int i = 0; i < lots.size(); i++) {
      String code = drafts.get(i).code;
      OwnLot lot = lots.get(i);
      if (!code.isEmpty()
          && !seen.add(
              List.of(
                  Keys.of(code),
                  Keys.of(lot.ownName()),
                  lot.potLitres(),
                  lot.trunkFromMm(),
                  lot.heightCm()))) {
        questions.add(
            new Question(
                lot.sheet(),
                lot.row(),
                lot.lot(),
                "quantity",
                code,
                Integer.toString(lot.quantity().orElse(0)),
                "%s stands in the list twice: more plants, or the same?".formatted(code),
                lot.quantity().orElse(0),
                false,
                List.of()));
      }
    }
  }

  /** Those of the prices; where none has a sign, those that stand anywhere else. */
  private static Set<String> currencies(List<SheetRead> lists, List<Sheet> sheets) {
    Set<String> found = new TreeSet<>();
    lists.forEach(list -> found.addAll(list.currencies));
    return found.isEmpty() ? mentioned(sheets) : found;
  }

  private static Set<String> mentioned(List<Sheet> sheets) {
    Map<String, String> signs = Map.of("£", "GBP", "€", "EUR", "$", "USD");
    Set<String> found = new TreeSet<>();
    for (Sheet sheet : sheets) {
      for (SheetRow row : sheet.rows()) {
        row.cells().values().stream()
            .filter(cell -> cell.isText() && cell.text().length() < 200)
            .forEach(
                cell -> {
                  signs.forEach((sign, code) -> addIf(found, cell.text().contains(sign), code));
                  CODE.matcher(cell.text()).results().forEach(code -> found.add(code.group()));
                });
      }
    }
    // A dollar is that of the country that is named: no list mixes two.
    if (DOLLARS.stream().anyMatch(found::contains)) {
      found.remove("USD");
    }
    return found;
  }

  private static void addIf(Set<String> found, boolean there, String code) {
    if (there) {
      found.add(code);
    }
  }
}
