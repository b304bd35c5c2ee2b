package growingon.load.own.account;

import growingon.load.own.question.Fill;
import growingon.load.own.question.Moved;
import growingon.load.own.row.ListRead;
import growingon.load.own.usual.UsualNursery;
import growingon.nursery.number.Writing;
import growingon.nursery.record.OwnReading;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;

/** How lists were read: in a few sentences, and in tables for whoever wants to check it. */
public final class OwnReport {
  private final List<ListRead> lists;
  private final UsualNursery usual;
  private final List<Fill> fills;
  private final Moved moved;
  private final Function<Fill, OptionalInt> rowOf;
  private final Writing writing;

  /**
   * The report of lists, of the nursery laid out for them, and of what is asked.
   *
   * @param moved what each that is asked moves, as far as that is known
   * @param rowOf row of one on the sheet that the grower has, if it is there
   * @param writing how numbers and months are written
   */
  public OwnReport(
      List<ListRead> lists,
      UsualNursery usual,
      List<Fill> fills,
      Moved moved,
      Function<Fill, OptionalInt> rowOf,
      Writing writing) {
    this.lists = List.copyOf(lists);
    this.usual = usual;
    this.fills = List.copyOf(fills);
    this.moved = moved;
    this.rowOf = rowOf;
    this.writing = writing;
  }

  /** Sentences and tables. */
  public OwnReading reading() {
    return new OwnReading(
        lists.stream().map(ListRead::file).collect(Collectors.toSet()),
        sentences(),
        new OwnTables(lists, usual, fills).all());
  }

  /** What a grower reads first. */
  public List<String> sentences() {
    return new OwnSentences(lists, usual, fills, moved, rowOf, writing).all();
  }

  /**
   * The rows of own words: lists, then headings, species, places and pots; the open ones first.
   *
   * @param paths of lists of stock
   * @param offers paths of lists of suppliers
   */
  public List<List<String>> wordRows(List<String> paths, List<String> offers) {
    return new OwnWordRows(lists).of(paths, offers);
  }

  /** For rows of own words that are open headings: what each may be, by the row's index. */
  public Map<Integer, List<String>> wordChoices(List<List<String>> rows) {
    return new OwnWordRows(lists).choices(rows);
  }

  /** Columns of the sheet own words. */
  public static List<String> wordColumns() {
    return OwnWordRows.COLUMNS;
  }

  /** Columns of the sheet to fill. */
  public static List<String> fillColumns() {
    return Fill.COLUMNS;
  }
}
