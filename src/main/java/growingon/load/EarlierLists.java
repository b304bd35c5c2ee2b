package growingon.load;

import growingon.load.cell.Findings;
import growingon.load.cell.Texts;
import growingon.load.source.CsvFile;
import growingon.load.source.Grid;
import growingon.load.source.Table;
import growingon.load.source.Workbook;
import growingon.load.table.Definitions;
import growingon.load.table.LotChecks;
import growingon.load.table.StockTable;
import growingon.nursery.Horizon;
import growingon.problem.Where;
import growingon.problem.advice.FileAdvice;
import growingon.problem.advice.FitAdvice;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Stock lists of earlier years: every CSV file and workbook in the folder {@code earlier} of a
 * nursery, in our words or in the grower's own, and older own lists. Each row holds for the
 * beginning of the month in its column counted, else of the month in the file's name.
 */
final class EarlierLists {
  static final String FOLDER = "earlier";

  private static final Set<String> READ = Set.of("csv", "xlsx");

  private final PastSources sources;
  private final Findings findings;

  EarlierLists(PastSources sources, Findings findings) {
    this.sources = sources;
    this.findings = findings;
  }

  /** The rows of a list. */
  private interface Rows {
    /**
     * Reads them.
     *
     * @param then what was known in the month of the list
     * @param now today's lots, of which a list in the grower's own words takes what it does not say
     * @param mayLack whether rows may lack numbers of plants or trunks
     */
    StockTable.Sheet read(Definitions then, StockTable.Sheet now, boolean mayLack);
  }

  /**
   * A list, and the months that it is of.
   *
   * @param name of its file, as the grower knows it
   * @param isOwn whether it is in the grower's own words
   * @param usual month of rows that do not say theirs
   * @param month month of the list as a whole
   */
  record Dated(String name, boolean isOwn, YearMonth usual, YearMonth month, Rows rows) {
    /** A list in our words. */
    static Dated ours(String name, Table table, YearMonth usual, YearMonth month) {
      return new Dated(
          name,
          false,
          usual,
          month,
          (then, now, mayLack) ->
              mayLack
                  ? StockTable.readEarlier(Optional.of(table), then, new LotChecks(then))
                  : StockTable.readSheet(Optional.of(table), then, new LotChecks(then)));
    }

    /** Its rows as a list of the past, which may lack numbers of plants or trunks. */
    StockTable.Sheet read(Definitions known, StockTable.Sheet now) {
      return rows.read(at(known, usual, month), now, true);
    }

    /** Its rows with all that a plan needs to begin with them. */
    StockTable.Sheet readWhole(Definitions known, StockTable.Sheet now) {
      return rows.read(at(known, usual, month), now, false);
    }
  }

  /** The lists of a nursery, the oldest first. */
  List<Dated> find() {
    Path folder = sources.nursery().resolve(FOLDER);
    List<Dated> lists = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      for (Path file : files(folder)) {
        String name = FOLDER + "/" + file.getFileName();
        own(file, name)
            .map(own -> dated(own, file, name, true))
            .orElseGet(() -> dated(file))
            .ifPresent(lists::add);
      }
    }
    for (Path file : sources.older()) {
      String name = file.getFileName().toString();
      own(file, name).flatMap(own -> dated(own, file, name, false)).ifPresent(lists::add);
    }
    lists.sort(Comparator.comparing(Dated::month).thenComparing(Dated::name));
    return lists;
  }

  /** Month of the oldest list of a nursery; what is wrong with the lists is not said. */
  static Optional<YearMonth> oldestMonth(PastSources sources) {
    return new EarlierLists(sources, new Findings()).find().stream().map(Dated::month).findFirst();
  }

  /** A list in the grower's own words, where it is none in ours. */
  private Optional<OwnEarlierList> own(Path file, String name) {
    if (!READ.contains(NurseryFiles.extensionOf(name)) || isOurs(file)) {
      return Optional.empty();
    }
    return OwnFile.read(file, new Findings())
        .flatMap(sheets -> OwnEarlierList.of(name, sheets, sources));
  }

  private static boolean isOurs(Path file) {
    return table(file, new Findings()).filter(Table::isReadable).isPresent();
  }

  private Optional<Dated> dated(OwnEarlierList own, Path file, String name, boolean isNeeded) {
    Optional<YearMonth> month = OwnFile.monthSaid(file.getFileName().toString()).or(own::month);
    if (month.isEmpty() && isNeeded) {
      findings.add(FitAdvice.monthOfList(Where.file(name)));
    } else if (month.isEmpty()) {
      findings.add(FitAdvice.olderListWithoutMonth(Where.file(name)));
    }
    return month.map(
        found ->
            new Dated(
                name,
                true,
                found,
                found,
                (then, now, mayLack) -> own.sheet(found, then, now, findings)));
  }

  private List<Path> files(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(Files::isRegularFile)
          .filter(file -> !file.getFileName().toString().startsWith("."))
          .filter(file -> !file.getFileName().toString().startsWith("~$"))
          .sorted()
          .toList();
    } catch (IOException broken) {
      findings.add(FileAdvice.cannotRead(Where.file(FOLDER), String.valueOf(broken.getMessage())));
      return List.of();
    }
  }

  private Optional<Dated> dated(Path file) {
    String name = file.getFileName().toString();
    Optional<Table> table = table(file, findings);
    if (table.isEmpty() || !table.get().isReadable()) {
      return Optional.empty();
    }
    Optional<YearMonth> counted = StockTable.lastCounted(table.get());
    Optional<YearMonth> named = OwnFile.monthInNumbers(name);
    Optional<YearMonth> month =
        named.isPresent() && counted.isPresent()
            ? named.filter(each -> !each.isBefore(counted.get())).or(() -> counted)
            : named.or(() -> counted);
    if (month.isEmpty() || (named.isEmpty() && !StockTable.isCountedThroughout(table.get()))) {
      findings.add(FitAdvice.monthOfList(Where.file(FOLDER + "/" + name)));
      return Optional.empty();
    }
    return Optional.of(
        Dated.ours(FOLDER + "/" + name, table.get(), named.orElse(month.get()), month.get()));
  }

  /** What was known, seen from the month of a list. */
  private static Definitions at(Definitions known, YearMonth usual, YearMonth last) {
    YearMonth first = usual.isBefore(last) ? last : usual;
    Horizon horizon = new Horizon(first, 1, known.settings().seasonStart());
    return new Definitions(
        known.settings(),
        horizon,
        known.ladders(),
        known.pots(),
        known.places(),
        known.species(),
        known.routes());
  }

  private static Optional<Table> table(Path file, Findings findings) {
    String name = file.getFileName().toString();
    return switch (NurseryFiles.extensionOf(name)) {
      case "csv" -> Optional.of(CsvFile.read(file, StockTable.FORMAT, findings));
      case "xlsx" -> sheet(file, findings);
      default -> {
        findings.add(FileAdvice.otherSpreadsheet(Where.file(FOLDER + "/" + name)));
        yield Optional.empty();
      }
    };
  }

  /** The sheet "stock" of a workbook, or its only one. */
  private static Optional<Table> sheet(Path file, Findings findings) {
    Optional<List<Grid>> sheets = Workbook.read(file, findings);
    List<Grid> filled =
        sheets.orElse(List.of()).stream().filter(grid -> !grid.rows().isEmpty()).toList();
    Optional<Grid> grid =
        filled.stream()
            .filter(each -> Texts.headingKey(each.where().sheet()).equals(StockTable.FORMAT.name()))
            .findFirst()
            .or(() -> filled.size() == 1 ? filled.stream().findFirst() : Optional.empty());
    if (grid.isEmpty() && sheets.isPresent()) {
      findings.add(
          FileAdvice.missingTable(
              Where.file(FOLDER + "/" + file.getFileName()), StockTable.FORMAT.name()));
    }
    return grid.map(found -> Table.of(found, StockTable.FORMAT, findings));
  }
}
