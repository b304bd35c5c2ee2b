package growingon.load;

import growingon.load.cell.Findings;
import growingon.load.file.AsLaidOut;
import growingon.load.list.OwnLists;
import growingon.load.list.OwnNursery;
import growingon.load.own.account.OwnReport;
import growingon.load.own.question.Fill;
import growingon.nursery.record.InList;
import growingon.problem.Loaded;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is laid out in a new nursery folder around lists of the grower's own.
 *
 * @param tables every table but the stock, rows as texts by heading
 * @param words rows of the sheet own words
 * @param fills rows of the sheet to fill
 * @param asked how many of the fills are asked for; those behind them are closed
 * @param sentences what is said of the lists
 * @param wordChoices what a row of own words may be, by its index
 * @param fillChoices what a row of to fill may be, by its index
 * @param fillsInList what a row of to fill asks of, by its index
 */
public record LaidOut(
    Map<String, List<Map<String, String>>> tables,
    List<List<String>> words,
    List<List<String>> fills,
    int asked,
    List<String> sentences,
    Map<Integer, List<String>> wordChoices,
    Map<Integer, List<String>> fillChoices,
    Map<Integer, InList> fillsInList) {

  /** Headings of the sheet own words. */
  public static List<String> wordColumns() {
    return OwnReport.wordColumns();
  }

  /** Name of the sheet that keeps what the tables were laid out with. */
  public static String keptIn() {
    return AsLaidOut.FORMAT.name();
  }

  /** Headings of that sheet. */
  public static List<String> keptColumns() {
    return AsLaidOut.FORMAT.needed();
  }

  /** Its rows. */
  public List<List<String>> kept() {
    return AsLaidOut.rows(tables);
  }

  /** Headings of the sheet to fill. */
  public static List<String> fillColumns() {
    return OwnReport.fillColumns();
  }

  /**
   * Reads lists and lays out all that is not in them.
   *
   * @param lists files of the grower's own
   * @param offers files of suppliers
   * @param folder that they are named from
   * @param name of the nursery
   */
  public static Loaded<LaidOut> of(
      List<Path> lists, List<Path> offers, Path folder, String name, LoadOptions options) {
    Findings findings = new Findings();
    OwnLists files = new OwnLists(lists, offers);
    Optional<OwnNursery> read = OwnNursery.begin(files, name, options.thisMonth(), findings);
    read.ifPresent(own -> Moves.tell(own, options));
    return read.map(
            own ->
                Loaded.of(
                    of(own, paths(lists, folder), paths(offers, folder)),
                    findings.problems().stream().filter(problem -> !problem.isError()).toList()))
        .orElseGet(() -> Loaded.failed(findings.problems()));
  }

  private static List<String> paths(List<Path> lists, Path folder) {
    Path from = folder.toAbsolutePath().normalize();
    List<String> paths = new ArrayList<>();
    for (Path list : lists) {
      Path whole = list.toAbsolutePath().normalize();
      boolean sameRoot = whole.getRoot().equals(from.getRoot());
      paths.add((sameRoot ? from.relativize(whole) : whole).toString().replace('\\', '/'));
    }
    return paths;
  }

  private static LaidOut of(OwnNursery own, List<String> paths, List<String> offers) {
    List<List<String>> words = own.report().wordRows(paths, offers);
    List<List<String>> fills = own.fills().stream().map(Fill::cells).toList();
    int asked = (int) own.fills().stream().filter(each -> !each.block().equals("more")).count();
    Map<Integer, List<String>> choices = new HashMap<>();
    Map<Integer, InList> inList = new HashMap<>();
    for (int i = 0; i < own.fills().size(); i++) {
      int index = i;
      own.fills().get(i).inList().ifPresent(cell -> inList.put(index, cell));
      if (!own.fills().get(i).choices().isEmpty()) {
        choices.put(i, own.fills().get(i).choices());
      }
    }
    return new LaidOut(
        own.usual().tables(),
        words,
        fills,
        asked,
        own.report().sentences(),
        own.report().wordChoices(words),
        choices,
        inList);
  }
}
