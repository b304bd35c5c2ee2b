package growingon.report.plan;

import growingon.chance.Chances;
import growingon.chance.Quantiles;
import growingon.money.Accounts;
import growingon.money.GradeName;
import growingon.nursery.Horizon;
import growingon.project.SpaceUse.PlaceMonth;
import growingon.report.build.FilledSheet;
import growingon.report.build.QuantileCells;
import growingon.report.chart.ChanceCharts;
import growingon.report.figures.Context;
import growingon.report.figures.SeasonFigures;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.report.words.ChanceWords;
import growingon.report.words.NotKnownTables;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** How sure the plan is: quantiles of the draws beside the plan's line. */
final class ChancesSheet {
  static final String NAME = "Chances";

  private final Context context;
  private final Chances chances;
  private final Accounts accounts;
  private final Horizon horizon;
  private final SeasonFigures figures;
  private final QuantileCells money;
  private final QuantileCells squareMetres = new QuantileCells("m²", Kind.SQUARE_METRES);
  private final QuantileCells hours = new QuantileCells("hours", Kind.HOURS);
  private final QuantileCells plants = new QuantileCells("", Kind.PLANTS);

  private ChancesSheet(Context context, Chances chances) {
    this.context = context;
    this.chances = chances;
    this.accounts = context.accounts();
    this.horizon = accounts.projection().horizon();
    this.figures = context.seasons();
    this.money =
        new QuantileCells(context.inputs().scenario().nursery().settings().currency(), Kind.MONEY);
  }

  /** Empty without draws, and without lots to draw. */
  static Sheet of(Context context) {
    if (context.chances().isEmpty() || context.inputs().scenario().lots().isEmpty()) {
      return Sheet.of(NAME);
    }
    ChancesSheet sheet = new ChancesSheet(context, context.chances().get());
    return FilledSheet.of(
            NAME, new ChanceWords(context).sheet(), sheet.tables().toArray(Table[]::new))
        .withCharts(ChanceCharts.gains(sheet.chances.gambles()));
  }

  private List<Table> tables() {
    List<Table> tables = new ArrayList<>(new NotKnownTables(context).tables());
    tables.addAll(List.of(sales(), cash(), lots(), units(), stock(), space(), hours()));
    return tables;
  }

  private static List<Column> columns(List<Column> first, List<Column> quantiles, Column... last) {
    List<Column> columns = new ArrayList<>(first);
    columns.addAll(quantiles);
    columns.addAll(List.of(last));
    return columns;
  }

  private static List<Object> row(List<Object> first, List<Object> quantiles, Object... last) {
    List<Object> row = new ArrayList<>(first);
    row.addAll(quantiles);
    row.addAll(List.of(last));
    return row;
  }

  private Table sales() {
    Rows rows = new Rows();
    for (int season = 0; season < horizon.seasons(); season++) {
      rows.add(
          row(
              List.of(horizon.seasonLabel(season)),
              money.cells(figures.money(season), chances.sales().get(season))));
    }
    return new Table(
        "chance-sales",
        "Sales by season",
        List.of("Seasons are drawn together, but their P10 and P90 do not add up."),
        columns(List.of(Rows.season()), money.columns()),
        rows.list());
  }

  private Table cash() {
    Rows rows = new Rows();
    for (int season = 0; season < horizon.seasons(); season++) {
      int last = horizon.seasonLast(season);
      rows.add(
          row(
              List.of(horizon.seasonLabel(season)),
              money.cells(accounts.cash().balances()[last], chances.cash().get(last))));
    }
    return new Table(
        "chance-cash",
        "Cash at the end of each season",
        List.of("The chart on Cash and the table chance-cash-months have every month."),
        columns(List.of(Rows.season()), money.columns()),
        rows.list());
  }

  private Table lots() {
    Rows rows = new Rows();
    chances
        .lotResults()
        .forEach(
            (lot, drawn) ->
                rows.add(row(List.of(lot), money.cells(accounts.lot(lot).result(), drawn))));
    return new Table(
        "chance-lots",
        "The result of each lot",
        List.of(
            "Sales less costs over the whole plan, as on Lots; plants standing at the end have no"
                + " value here."),
        columns(List.of(Rows.lot()), money.columns()),
        rows.list());
  }

  private Table units() {
    return byGrade(
        "chance-units",
        "Plants sold, by season and grade",
        "Grades of which none is sold in a season are left out.",
        chances.units(),
        figures::sold);
  }

  private Table stock() {
    return byGrade(
        "chance-stock",
        "Plants standing at the end of each season, by grade",
        "Kept plants and those without a grade are left out.",
        chances.stock(),
        figures::standing);
  }

  /** A number of plants on the plan's line. */
  private interface Line {
    Plants at(int grade, int season);
  }

  private Table byGrade(
      String name, String title, String note, Map<GradeName, List<Quantiles>> drawn, Line line) {
    Rows rows = new Rows();
    for (int season = 0; season < horizon.seasons(); season++) {
      for (Map.Entry<GradeName, List<Quantiles>> each : drawn.entrySet()) {
        int grade = index(each.getKey());
        Quantiles quantiles = each.getValue().get(season);
        if (quantiles.mean() > 0 || line.at(grade, season).whole() > 0) {
          rows.add(
              row(
                  List.of(horizon.seasonLabel(season), figures.grades().all().get(grade).label()),
                  plants.cells(line.at(grade, season), quantiles)));
        }
      }
    }
    Column grade = Column.of("grade", "grade", "", Kind.TEXT);
    return new Table(
        name,
        title,
        List.of(note),
        columns(List.of(Rows.season(), grade), plants.columns()),
        rows.list());
  }

  private int index(GradeName name) {
    var grades = context.inputs().scenario().nursery().ladders().get(name.ladder()).grades();
    int index =
        IntStream.range(0, grades.size())
            .filter(i -> grades.get(i).name().equals(name.grade()))
            .findFirst()
            .orElseThrow();
    return figures.grades().indexOf(name.ladder(), index);
  }

  private Table space() {
    Rows rows = new Rows();
    for (int season = 0; season < horizon.seasons(); season++) {
      for (String place : chances.space().keySet()) {
        int month = tightest(place, season);
        if (chances.space().get(place).get(month).mean() > 0) {
          rows.add(
              row(
                  List.of(
                      horizon.seasonLabel(season),
                      place,
                      horizon.month(month),
                      there(place, month)),
                  squareMetres.cells(needed(place, month), chances.space().get(place).get(month)),
                  chances.chanceOfOverflow().get(place)[month]));
        }
      }
    }
    return new Table(
        "chance-space",
        "Space in the tightest month of each season",
        List.of(
            "Tightest: where P90 lies highest over, or least below, what is there; the table"
                + " chance-space-months has every month."),
        columns(
            List.of(Rows.season(), Rows.place(), Rows.month(), there()),
            squareMetres.columns(),
            overflows()),
        rows.list());
  }

  private int tightest(String place, int season) {
    List<Quantiles> drawn = chances.space().get(place);
    return IntStream.rangeClosed(horizon.seasonFirst(season), horizon.seasonLast(season))
        .boxed()
        .reduce(
            (a, b) ->
                drawn.get(b).p90() - there(place, b) > drawn.get(a).p90() - there(place, a) ? b : a)
        .orElseThrow();
  }

  private static Column there() {
    return Column.of("capacity", "there", "m²", Kind.SQUARE_METRES);
  }

  private static Column overflows() {
    return Column.of("chance_overflows", "chance that it overflows", "", Kind.SHARE);
  }

  private double there(String place, int month) {
    return context
        .inputs()
        .scenario()
        .nursery()
        .places()
        .get(place)
        .capacityM2(horizon.month(month));
  }

  private double needed(String place, int month) {
    List<PlaceMonth> months = accounts.space().months(place);
    return months == null ? 0 : months.get(month).neededM2();
  }

  private Table hours() {
    boolean stated = chances.chanceOfShortHours().length > 0;
    Rows rows = new Rows();
    for (int month = 0; month < horizon.months(); month++) {
      List<Object> row =
          row(
              List.of(horizon.month(month)),
              hours.cells(accounts.hours().needed(month), chances.hours().get(month)));
      if (stated) {
        row.add(1, accounts.hours().available(month).orElseThrow());
        row.add(chances.chanceOfShortHours()[month]);
      }
      if (chances.hours().get(month).mean() > 0) {
        rows.add(row);
      }
    }
    List<Column> columns = new ArrayList<>(columns(List.of(Rows.month()), hours.columns()));
    if (stated) {
      columns.add(1, Column.of("available", "available", "hours", Kind.HOURS));
      columns.add(Column.of("chance_short", "chance that they do not suffice", "", Kind.SHARE));
    }
    return new Table(
        "chance-hours",
        "Hours of work by month",
        stated ? List.of() : List.of("The nursery does not say how many hours it has."),
        columns,
        rows.list());
  }

  /** The long tables: every month of space and cash, and the errors of all quantiles. */
  static List<Table> longTables(Context context) {
    if (context.chances().isEmpty() || context.inputs().scenario().lots().isEmpty()) {
      return List.of();
    }
    ChancesSheet sheet = new ChancesSheet(context, context.chances().get());
    List<Table> tables = new ArrayList<>();
    if (!sheet.chances.space().isEmpty()) {
      tables.add(sheet.spaceMonths());
    }
    tables.add(sheet.cashMonths());
    tables.add(sheet.quantiles());
    return tables;
  }

  private Table spaceMonths() {
    Rows rows = new Rows();
    chances
        .space()
        .forEach(
            (place, months) -> {
              for (int month = 0; month < months.size(); month++) {
                rows.add(
                    row(
                        List.of(place, horizon.month(month), there(place, month)),
                        squareMetres.cellsWithErrors(needed(place, month), months.get(month)),
                        chances.chanceOfOverflow().get(place)[month]));
              }
            });
    return new Table(
        "chance-space-months",
        "Chances: space by place and month",
        List.of(),
        columns(
            List.of(Rows.place(), Rows.month(), there()),
            squareMetres.columnsWithErrors(),
            overflows()),
        rows.list());
  }

  private Table cashMonths() {
    double[] balances = accounts.cash().balances();
    Rows rows = new Rows();
    for (int month = 0; month < balances.length; month++) {
      rows.add(
          row(
              List.of(horizon.month(month)),
              money.cellsWithErrors(balances[month], chances.cash().get(month))));
    }
    return new Table(
        "chance-cash-months",
        "Chances: cash at the end of each month",
        List.of(Sentences.WITHOUT_VAT),
        columns(List.of(Rows.month()), money.columnsWithErrors()),
        rows.list());
  }

  /** What the sheet shows of sales, plants, hours and lots, with the errors of the quantiles. */
  private Table quantiles() {
    QuantileCells numbers = new QuantileCells("", Kind.NUMBER);
    Rows rows = new Rows();
    for (int season = 0; season < horizon.seasons(); season++) {
      String label = horizon.seasonLabel(season);
      add(rows, "sales", "", label, figures.money(season), chances.sales().get(season));
      for (GradeName name : chances.units().keySet()) {
        int grade = index(name);
        String shown = figures.grades().all().get(grade).label();
        double sold = figures.sold(grade, season).whole();
        add(rows, "plants sold", shown, label, sold, chances.units().get(name).get(season));
        double standing = figures.standing(grade, season).whole();
        add(rows, "plants standing", shown, label, standing, chances.stock().get(name).get(season));
      }
    }
    for (int month = 0; month < horizon.months(); month++) {
      String when = horizon.month(month).toString();
      add(rows, "hours", "", when, accounts.hours().needed(month), chances.hours().get(month));
    }
    chances
        .lotResults()
        .forEach((lot, drawn) -> add(rows, "result", lot, "", accounts.lot(lot).result(), drawn));
    return new Table(
        "chance-quantiles",
        "Chances: quantiles with their sampling errors",
        List.of(
            "Sales and results in the plan's currency, without VAT. ±: sampling error, one standard"
                + " error."),
        columns(
            List.of(
                Column.of("what", "what", "", Kind.TEXT),
                Column.of("of", "of", "", Kind.TEXT),
                Column.of("when", "when", "", Kind.TEXT)),
            numbers.columnsWithErrors()),
        rows.list());
  }

  private static void add(
      Rows rows, String what, String of, String when, double plan, Quantiles drawn) {
    List<Object> row = new ArrayList<>();
    row.add(what);
    row.add(Rows.text(of));
    row.add(Rows.text(when));
    row.addAll(new QuantileCells("", Kind.NUMBER).cellsWithErrors(plan, drawn));
    rows.add(row);
  }
}
