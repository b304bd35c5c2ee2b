package growingon.load;

import growingon.load.file.Tables;
import growingon.load.quick.QuickLine;
import growingon.load.quick.QuickLines;
import growingon.load.row.Heading;
import growingon.load.row.Unit;
import growingon.load.settings.SettingsReader;
import growingon.load.source.JsonShape;
import growingon.load.table.NurseryShape;
import java.util.ArrayList;
import java.util.List;

/**
 * What the tables of a nursery look like, for whoever lays one out: the same constants by which
 * they are read, so that the two cannot drift apart.
 */
public final class TableFormats {
  /** A row to copy: the name of the setting ends in the currency that it is of. */
  private static final Setting RATE =
      new Setting(
          SettingsReader.RATE_PREFIX + "GBP",
          "Plan currency for ONE unit of the foreign currency that the name ends in; a row for each"
              + " [none]");

  private TableFormats() {}

  /** What a column holds, by which it is formatted. */
  public enum Holds {
    TEXT,
    NUMBER,
    MONEY,
    MONTH
  }

  /**
   * A column of a table.
   *
   * @param heading as it is read
   * @param holds what it holds
   * @param choice list that it chooses from; empty for none
   * @param ifEmpty what holds if a cell is empty; empty if nothing does or the meaning says it
   * @param meaning what it is
   * @param needed whether the table must have it
   * @param expert whether it is for who knows more
   */
  public record Column(
      String heading,
      Holds holds,
      String choice,
      String ifEmpty,
      String meaning,
      boolean needed,
      boolean expert) {
    private static Column of(Heading<?> heading) {
      Heading.Says says = heading.says();
      return new Column(
          heading.name(),
          Holds.valueOf(says.holds().name()),
          says.choice(),
          heading.ifEmpty(),
          says.meaning(),
          says.needed(),
          says.expert());
    }
  }

  /**
   * The columns of a table.
   *
   * @param table name of the sheet or CSV file
   * @param columns as they are laid out
   */
  public record TableHeadings(String table, List<Column> columns) {
    public TableHeadings {
      columns = List.copyOf(columns);
    }

    /** Headings that must be there. */
    public List<String> needed() {
      return columns.stream().filter(Column::needed).map(Column::heading).toList();
    }
  }

  /**
   * A setting.
   *
   * @param name as it stands in the sheet {@code settings}
   * @param says what it is, with its unit and default
   */
  public record Setting(String name, String says) {}

  /** Every table that a plan reads, the quick sheet among them. */
  public static List<TableHeadings> all() {
    return Tables.formats().stream()
        .map(
            format ->
                new TableHeadings(
                    format.name(), format.columns().stream().map(Column::of).toList()))
        .toList();
  }

  /** Unit that a heading names; empty where things are counted or named. */
  public static String unit(String heading) {
    return Unit.of(heading).word();
  }

  /** Every setting that a sheet can state in one cell, in the order of the settings' file. */
  public static List<Setting> settings() {
    List<Setting> settings = new ArrayList<>();
    for (String name : SettingsReader.keys()) {
      settings.add(new Setting(name, JsonShape.says(NurseryShape.class, name)));
      if (name.equals(NurseryShape.CURRENCY)) {
        settings.add(RATE);
      }
    }
    return settings;
  }

  /** The lines of the quick sheet in order: ten, the eleventh, and those with usual values. */
  public static List<QuickLine> quickLines() {
    return QuickLines.all();
  }
}
