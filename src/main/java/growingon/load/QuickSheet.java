package growingon.load;

import growingon.load.cell.Cell;
import growingon.load.cell.Findings;
import growingon.load.cell.MissingColumns;
import growingon.load.cell.Nearest;
import growingon.load.cell.NumberStyle;
import growingon.load.cell.Row;
import growingon.load.cell.Texts;
import growingon.load.quick.QuickLine;
import growingon.load.quick.QuickLines;
import growingon.load.quick.QuickScenario;
import growingon.load.quick.QuickTable;
import growingon.load.settings.PlanNames;
import growingon.load.source.RowCount;
import growingon.load.source.Table;
import growingon.load.table.StockTable;
import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.problem.Where;
import growingon.problem.advice.FileAdvice;
import growingon.problem.advice.ValueAdvice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The quick sheet: one question about one lot on offer, answered with nothing else. It stands in
 * {@link QuickTable}. It is asked if one of its cells is filled in, or if no stock list stands
 * beside it. It is then answered by itself, and no other table is read.
 */
final class QuickSheet {
  private QuickSheet() {}

  /** Whether the tables hold a quick sheet that is to be answered. */
  static boolean isAsked(Tables tables) {
    return tables
        .find(QuickTable.FORMAT)
        .filter(
            sheet ->
                tables.find(StockTable.FORMAT).isEmpty()
                    || sheet.rows().stream().anyMatch(row -> row.has(QuickTable.FILLED)))
        .isPresent();
  }

  /** The inputs that the quick sheet stands for. */
  static Loader.Reading read(NurseryFiles files, Findings before) {
    Table sheet = files.tables().find(QuickTable.FORMAT).orElseThrow();
    if (!sheet.isReadable()) {
      return new Loader.Reading(Optional.empty(), before.about(sheet.where()), RowCount.NONE);
    }
    Row row = gathered(sheet, before);
    String plan = Texts.clean(planName(files.name()));
    PlanNames.fault(files.where(), plan).ifPresent(fault -> row.fail(where -> fault));
    QuickScenario made = new QuickScenario(row, plan);
    Optional<Scenario> scenario = made.scenario();
    Findings findings = before.about(sheet.where());
    boolean besideTables = !files.tables().all().isEmpty();
    RowCount rows = RowCount.of(List.of(sheet), findings.problems());
    return new Loader.Reading(
        findings.hasErrors()
            ? Optional.empty()
            : scenario.map(each -> inputs(each, made, besideTables, findings)),
        findings,
        rows);
  }

  private static String planName(String files) {
    return files.equalsIgnoreCase(QuickTable.FORMAT.name())
        ? files
        : files + " " + QuickTable.FORMAT.name();
  }

  private static Inputs inputs(
      Scenario scenario, QuickScenario made, boolean besideTables, Findings findings) {
    return new Inputs(
        scenario,
        List.of(made.offer()),
        findings.assumptions(),
        0,
        Optional.empty(),
        List.of(),
        Optional.of(made.quick(besideTables, findings.assumptions())));
  }

  /** The lines as one row with a value for each. */
  private static Row gathered(Table sheet, Findings findings) {
    Map<String, Cell> cells = new LinkedHashMap<>();
    Map<String, Where> places = new LinkedHashMap<>();
    NumberStyle style = sheet.rows().stream().findFirst().map(Row::style).orElse(NumberStyle.POINT);
    for (Row row : sheet.rows()) {
      row.needs(QuickTable.LINE);
      if (row.has(QuickTable.LINE)) {
        add(row, cells, places);
      }
      row.accept(() -> row);
    }
    return new Row(
        QuickTable.FORMAT.name(),
        List.of(),
        () -> "",
        sheet.where(),
        style,
        cells,
        places,
        MissingColumns.NONE,
        findings);
  }

  private static void add(Row row, Map<String, Cell> cells, Map<String, Where> places) {
    String typed = row.cell(QuickTable.LINE).shown();
    List<String> names = QuickLines.all().stream().map(QuickLine::name).toList();
    Optional<String> known =
        names.stream()
            .filter(name -> Texts.headingKey(name).equals(Texts.headingKey(typed)))
            .findFirst();
    if (known.isEmpty()) {
      row.fail(
          QuickTable.LINE,
          where -> FileAdvice.unknownQuickLine(where, typed, Nearest.to(typed, names)));
    } else if (places.putIfAbsent(known.get(), row.where().column(QuickTable.FILLED.name()))
        != null) {
      row.fail(QuickTable.LINE, where -> ValueAdvice.defined(where, typed, known.get()));
    } else {
      cells.put(known.get(), row.cell(QuickTable.FILLED));
    }
  }
}
