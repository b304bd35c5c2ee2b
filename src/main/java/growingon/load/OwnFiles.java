package growingon.load;

import growingon.load.cell.Findings;
import growingon.load.file.AnswersGiven;
import growingon.load.file.NurseryFiles;
import growingon.load.file.Tables;
import growingon.load.list.OwnFile;
import growingon.load.list.OwnLists;
import growingon.load.list.OwnNursery;
import growingon.load.list.Said;
import growingon.load.own.ListReader;
import growingon.load.own.heading.ListKind;
import growingon.load.quick.QuickTable;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.lot.OffersTable;
import growingon.load.table.lot.StockTable;
import growingon.load.table.route.RoutesTable;
import growingon.load.table.species.SpeciesTable;
import growingon.problem.Severity;
import growingon.problem.Where;
import growingon.problem.advice.ListAdvice;
import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The files of a nursery whose stock may be a list of the grower's own.
 *
 * @param nursery with all tables
 * @param own the lists as read, if there are some
 * @param today files of the stock lists that are read as today's
 */
record OwnFiles(NurseryFiles nursery, Optional<OwnNursery> own, List<Path> today) {
  OwnFiles {
    today = List.copyOf(today);
  }

  /** Whether a workbook is a grower's list, not tables of ours. */
  static boolean isList(Path workbook) {
    Findings unheard = new Findings();
    Tables tables = new Tables(unheard);
    tables.addWorkbook(workbook);
    boolean ours =
        isReadable(tables, QuickTable.FORMAT)
            || ((isReadable(tables, StockTable.FORMAT) || isReadable(tables, OffersTable.FORMAT))
                && (tables.find(SpeciesTable.FORMAT).isPresent()
                    || tables.find(RoutesTable.FORMAT).isPresent()));
    boolean anyTable =
        isReadable(tables, SpeciesTable.FORMAT)
            || isReadable(tables, RoutesTable.FORMAT)
            || isReadable(tables, QuickTable.FORMAT);
    return !ours
        && !anyTable
        && (isOfNothingElse(tables, unheard)
            || OwnFile.read(workbook, new Findings()).filter(ListReader::isList).isPresent());
  }

  /** Sheets of which none is called as a table is, or nearly so: what else but a list is it? */
  private static boolean isOfNothingElse(Tables tables, Findings unheard) {
    return tables.all().isEmpty()
        && tables.find(QuickTable.FORMAT).isEmpty()
        && unheard.problems().stream().allMatch(each -> each.severity() == Severity.NOTICE);
  }

  private static boolean isReadable(Tables tables, TableFormat format) {
    return tables.find(format).filter(Table::isReadable).isPresent();
  }

  /** A list alone. */
  static Optional<OwnFiles> ofList(Path file, YearMonth firstMonth, Findings findings) {
    String name = NurseryFiles.baseOf(file.getFileName().toString());
    Where where = Where.file(file.getFileName().toString());
    NurseryFiles beside = beside(file, where, name, findings);
    return OwnNursery.read(
            new OwnLists(List.of(file), List.of()), Said.in(beside), name, firstMonth, findings)
        .map(own -> new OwnFiles(own.alone(where), Optional.of(own), List.of(file)));
  }

  /** What the grower has answered in files of that name beside a list. */
  private static NurseryFiles beside(Path list, Where where, String name, Findings findings) {
    Tables tables = new Tables(findings);
    List<String> found = new ArrayList<>();
    for (TableFormat format : List.of(AnswersGiven.OWN_WORDS, AnswersGiven.TO_FILL)) {
      Path file = list.toAbsolutePath().resolveSibling(format.name() + ".csv");
      if (Files.isRegularFile(file)) {
        tables.addCsv(file);
        found.add(file.getFileName().toString());
      }
    }
    if (!found.isEmpty()) {
      findings.add(ListAdvice.wordsBeside(where, String.join(", ", found)));
    }
    return new NurseryFiles(where, name, tables, Optional.empty(), Optional.empty());
  }

  /** A nursery's files with the lists that its own words name. */
  static Optional<OwnFiles> completed(
      NurseryFiles files,
      Path nursery,
      YearMonth firstMonth,
      Optional<Path> stock,
      Findings findings) {
    List<String> named = named(files, stock);
    List<String> offers = AnswersGiven.lists(files.tables(), ListKind.OFFERS);
    if (named.isEmpty() && offers.isEmpty()) {
      return Optional.of(new OwnFiles(files, Optional.empty(), List.of()));
    }
    Path folder = folderOf(nursery);
    List<Path> lists = found(folder, named, files, findings);
    List<Path> offered = found(folder, offers, files, findings);
    return lists.size() + offered.size() < named.size() + offers.size()
        ? Optional.empty()
        : OwnNursery.read(
                new OwnLists(lists, offered), Said.in(files), files.name(), firstMonth, findings)
            .map(
                own ->
                    new OwnFiles(
                        files.with(own.completed(files.tables())), Optional.of(own), lists));
  }

  /** A nursery's files, its lists not read but only found. */
  static OwnFiles found(NurseryFiles files, Path nursery, Optional<Path> stock) {
    List<Path> today =
        named(files, stock).stream()
            .flatMap(path -> found(folderOf(nursery), path).stream())
            .toList();
    return new OwnFiles(files, Optional.empty(), today);
  }

  private static Path folderOf(Path nursery) {
    return Files.isDirectory(nursery) ? nursery : nursery.toAbsolutePath().getParent();
  }

  /** Today's stock lists as they are named: this once, else in own words. */
  private static List<String> named(NurseryFiles files, Optional<Path> stock) {
    return stock
        .map(file -> List.of(file.toAbsolutePath().toString()))
        .orElseGet(() -> AnswersGiven.lists(files.tables(), ListKind.STOCK));
  }

  /** Those that are there; of others it is told. */
  private static List<Path> found(
      Path folder, List<String> named, NurseryFiles files, Findings findings) {
    List<Path> lists = new ArrayList<>();
    for (String path : named) {
      Optional<Path> found = found(folder, path);
      if (found.isEmpty()) {
        findings.add(ListAdvice.listGone(Where.file(files.name()), path, newest(folder, path)));
      }
      found.ifPresent(lists::add);
    }
    return lists;
  }

  /** The file, or the newest that a name with a star matches. */
  private static Optional<Path> found(Path folder, String path) {
    if (path.contains("*")) {
      return newestFirst(folder, path).findFirst();
    }
    try {
      Path file = folder.resolve(path).normalize();
      return Files.isRegularFile(file) ? Optional.of(file) : Optional.empty();
    } catch (InvalidPathException noPath) {
      return Optional.empty();
    }
  }

  /**
   * Files that a name with a star matches, by the months that their names say where all say one: a
   * copy or an old list saved again is no newer for that. Else as they were saved, of those saved
   * at one time the last by name first.
   */
  private static Stream<Path> newestFirst(Path folder, String path) {
    List<Path> files = matching(folder, path);
    Comparator<Path> saved = Comparator.comparing(OwnFiles::saved).thenComparing(Path::toString);
    boolean dated = files.stream().allMatch(file -> month(file).isPresent());
    Comparator<Path> newest =
        dated
            ? Comparator.comparing((Path file) -> month(file).orElseThrow()).thenComparing(saved)
            : saved;
    return files.stream().sorted(newest.reversed());
  }

  private static Optional<YearMonth> month(Path file) {
    return OwnFile.monthSaid(file.getFileName().toString());
  }

  private static List<Path> matching(Path folder, String path) {
    int slash = Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\'));
    Path in = slash < 0 ? folder : folder.resolve(path.substring(0, slash)).normalize();
    PathMatcher matcher =
        FileSystems.getDefault().getPathMatcher("glob:" + path.substring(slash + 1));
    try (Stream<Path> files = Files.list(in)) {
      return files
          .filter(file -> matcher.matches(file.getFileName()))
          .filter(file -> !file.getFileName().toString().startsWith("~$"))
          .filter(Files::isRegularFile)
          .toList();
    } catch (IOException unreadable) {
      return List.of();
    }
  }

  /** Lists that own words name by a star, but for those that are today's. */
  List<Path> older(Path nursery) {
    Path folder = folderOf(nursery);
    Set<Path> read = new HashSet<>(today.stream().map(OwnFiles::whole).toList());
    List<Path> older = new ArrayList<>();
    for (String path : AnswersGiven.lists(nursery().tables(), ListKind.STOCK)) {
      if (path.contains("*")) {
        newestFirst(folder, path).filter(file -> !read.contains(whole(file))).forEach(older::add);
      }
    }
    return older;
  }

  private static Path whole(Path file) {
    return file.toAbsolutePath().normalize();
  }

  private static long saved(Path file) {
    try {
      return Files.getLastModifiedTime(file).toMillis();
    } catch (IOException gone) {
      return 0;
    }
  }

  /** The newest list beside one that is gone. */
  private static Optional<String> newest(Path folder, String path) {
    int slash = Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\'));
    String beside = slash < 0 ? "" : path.substring(0, slash + 1);
    return Stream.of("*.xlsx", "*.csv")
        .flatMap(ending -> matching(folder, beside + ending).stream())
        .filter(file -> !file.getFileName().toString().equals("nursery.xlsx"))
        .max(Comparator.comparing(OwnFiles::saved))
        .map(file -> beside + file.getFileName());
  }

  /** What was read of the nursery, with how the lists were read. */
  Loader.Reading reading(Loader.Reading read) {
    return own.isEmpty()
        ? read
        : new Loader.Reading(
            read.inputs()
                .map(
                    inputs ->
                        inputs.withOwn(
                            own.get().report().reading(), own.get().marked(inputs.assumptions()))),
            read.findings().without(own.get()::isNoNews),
            read.rows(),
            read.past());
  }
}
