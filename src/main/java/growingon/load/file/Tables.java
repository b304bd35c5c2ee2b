package growingon.load.file;

import growingon.load.cell.Findings;
import growingon.load.cell.Nearest;
import growingon.load.cell.Texts;
import growingon.load.quick.QuickTable;
import growingon.load.row.Row;
import growingon.load.settings.SettingsReader;
import growingon.load.source.Answer;
import growingon.load.source.CsvFile;
import growingon.load.source.Grid;
import growingon.load.source.JsonShape;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.source.Workbook;
import growingon.load.table.lot.OffersTable;
import growingon.load.table.lot.StockTable;
import growingon.load.table.market.DemandTable;
import growingon.load.table.market.GradesTable;
import growingon.load.table.market.OtherCashTable;
import growingon.load.table.market.QualitiesTable;
import growingon.load.table.past.DaybookTable;
import growingon.load.table.past.ReceiptsTable;
import growingon.load.table.past.RecordsTable;
import growingon.load.table.place.CareTable;
import growingon.load.table.place.HoursTable;
import growingon.load.table.place.PlacesTable;
import growingon.load.table.route.RoutesTable;
import growingon.load.table.species.SpeciesTable;
import growingon.load.table.supply.ComponentsTable;
import growingon.load.table.supply.MaterialsTable;
import growingon.load.table.supply.MixesTable;
import growingon.load.table.supply.PotsTable;
import growingon.problem.Where;
import growingon.problem.advice.FileAdvice;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** The tables found so far, by name. */
public final class Tables {
  private static final List<TableFormat> FORMATS =
      List.of(
          StockTable.FORMAT,
          OffersTable.FORMAT,
          SpeciesTable.FORMAT,
          RoutesTable.FORMAT,
          GradesTable.FORMAT,
          QualitiesTable.FORMAT,
          DemandTable.FORMAT,
          PotsTable.FORMAT,
          ComponentsTable.FORMAT,
          MixesTable.FORMAT,
          MaterialsTable.FORMAT,
          PlacesTable.FORMAT,
          CareTable.FORMAT,
          HoursTable.FORMAT,
          OtherCashTable.FORMAT,
          DaybookTable.FORMAT,
          RecordsTable.FORMAT,
          ReceiptsTable.FORMAT,
          SettingsReader.FORMAT,
          QuickTable.FORMAT);

  /** What is asked of a grower beside the tables. */
  private static final List<TableFormat> ASKED =
      List.of(AnswersGiven.TO_FILL, AnswersGiven.OWN_WORDS, AsLaidOut.FORMAT);

  private final Map<String, Table> tables = new LinkedHashMap<>();
  private final Findings findings;
  private Optional<Where> unread = Optional.empty();

  public Tables(Findings findings) {
    this.findings = findings;
  }

  /** The same tables, to which others may be added. */
  public Tables copy() {
    Tables copy = new Tables(findings);
    copy.tables.putAll(tables);
    copy.unread = unread;
    return copy;
  }

  /**
   * The same tables, none of their rows read yet: a row keeps what came of its reading, and two may
   * read beside each other only what is their own.
   *
   * @param told what is wrong with them
   */
  public Tables afresh(Findings told) {
    Tables copy = new Tables(told);
    tables.forEach((name, table) -> copy.tables.put(name, table.afresh(told)));
    copy.unread = unread;
    return copy;
  }

  /** Adds rows to a table, or the table if it is not there. */
  public void extend(TableFormat format, Grid grid, Findings found) {
    Table more = Table.of(grid, format, found);
    tables.merge(format.name(), more, Table::and);
  }

  /**
   * An answer takes the place of the cell that it names; a setting that is not there is added.
   * Whether there is such a row or setting.
   */
  public boolean answer(Answer answer) {
    Table table = tables.get(answer.table());
    if (table == null || (!table.has(answer) && !table.isOf(SettingsReader.FORMAT))) {
      return false;
    }
    if (table.has(answer)) {
      tables.put(answer.table(), table.answered(answer));
    } else {
      Map<String, String> setting =
          Map.of("name", answer.row(), JsonShape.VALUE, answer.cell().shown());
      extend(SettingsReader.FORMAT, TextRows.grid(answer.where(), List.of(setting)), findings);
    }
    return true;
  }

  /** Every row of a table as something makes it. */
  public void change(TableFormat format, UnaryOperator<Row> change) {
    tables.computeIfPresent(format.name(), (name, table) -> table.with(change));
  }

  /** Some rows of a table only. */
  public void keep(TableFormat format, Predicate<Row> which) {
    tables.computeIfPresent(format.name(), (name, table) -> table.keeping(which));
  }

  public Optional<Table> find(TableFormat format) {
    return Optional.ofNullable(tables.get(format.name()));
  }

  /**
   * A table, also one that is not there but may stand in a workbook that could not be read, which
   * has been reported: then nobody needs to hear that it is missing.
   */
  public Optional<Table> findOrUnread(TableFormat format) {
    return find(format).or(() -> unread.map(where -> Table.unreadable(format, where)));
  }

  /** The same without a table, which is read from elsewhere. */
  void remove(TableFormat format) {
    tables.remove(format.name());
  }

  /** Every table but the quick sheet, which stands for itself. */
  public List<Table> all() {
    return tables.values().stream()
        .filter(each -> ASKED.stream().noneMatch(each::isOf) && !each.isOf(QuickTable.FORMAT))
        .toList();
  }

  /** Adds the table of a CSV file, if its name is that of a table. */
  public void addCsv(Path file) {
    String name = file.getFileName().toString();
    String base = name.substring(0, name.lastIndexOf('.'));
    Where where = Where.file(name);
    format(base)
        .ifPresentOrElse(
            format -> add(format, where, () -> CsvFile.read(file, format, findings)),
            () -> remarkUnread(where, base));
  }

  /** Adds the tables of a workbook. */
  public void addWorkbook(Path file) {
    Optional<List<Grid>> sheets = Workbook.read(file, findings);
    if (sheets.isEmpty()) {
      unread = Optional.of(Where.file(file.getFileName().toString()));
    }
    for (Grid grid : sheets.orElse(List.of())) {
      String sheet = grid.where().sheet();
      format(sheet)
          .ifPresentOrElse(
              format -> addSheet(grid, format), () -> remarkUnread(grid.where(), sheet));
    }
  }

  private void addSheet(Grid grid, TableFormat format) {
    if (grid.rows().isEmpty()) {
      findings.add(FileAdvice.emptySheet(grid.where()));
      return;
    }
    add(format, grid.where(), () -> Table.of(grid, format, findings));
  }

  private void add(TableFormat format, Where where, Supplier<Table> table) {
    Table there = tables.get(format.name());
    if (there != null) {
      findings.add(FileAdvice.tableTwice(where, format.name(), there.where()));
      return;
    }
    tables.put(format.name(), table.get());
  }

  /** Every table that is read here, the quick sheet among them. */
  public static List<TableFormat> formats() {
    return FORMATS;
  }

  private static Optional<TableFormat> format(String name) {
    String key = Texts.headingKey(name);
    return Stream.concat(FORMATS.stream(), ASKED.stream())
        .filter(format -> format.name().equals(key))
        .findFirst();
  }

  /** A sheet or file that is no table, perhaps because of a slip in its name. */
  private void remarkUnread(Where where, String name) {
    if (!Workbook.isForWhoeverTypes(name)) {
      List<String> names = FORMATS.stream().map(TableFormat::name).toList();
      findings.add(FileAdvice.noTable(where, name, Nearest.to(name, names)));
    }
  }
}
