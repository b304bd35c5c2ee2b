package growingon.report.plan;

import growingon.chance.Chances;
import growingon.chance.Quantiles;
import growingon.money.Accounts;
import growingon.money.GradeName;
import growingon.nursery.time.Horizon;
import growingon.report.build.ColumnOf;
import growingon.report.build.FilledSheet;
import growingon.report.build.QuantileColumns;
import growingon.report.build.TableOf;
import growingon.report.chart.ChanceCharts;
import growingon.report.figures.Context;
import growingon.report.figures.SeasonFigures;
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
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** How sure the plan is: quantiles of the draws beside the plan's line. */
final class ChancesSheet {
  static final String NAME = "Chances";

  private final Context context;
  private final Chances chances;
  private final Accounts accounts;
  private final Horizon horizon;
  private final SeasonFigures figures;
  private final QuantileColumns money;
  private final QuantileColumns squareMetres = new QuantileColumns("m²", Kind.SQUARE_METRES);
  private final QuantileColumns hours = new QuantileColumns("hours", Kind.HOURS);
  private final QuantileColumns plants = new QuantileColumns("", Kind.PLANTS);

  private ChancesSheet(Context context, Chances chances) {
    this.context = context;
    this.chances = chances;
    this.accounts = context.accounts();
    this.horizon = accounts.projection().horizon();
    this.figures = context.seasons();
    this.money =
        new QuantileColumns(
            context.inputs().scenario().nursery().settings().currency(), Kind.MONEY);
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

  private IntStream seasons() {
    return IntStream.range(0, horizon.seasons());
  }

  private Table sales() {
    return TableOf.<Integer>table("chance-sales", "Sales by season")
        .note("Seasons are drawn together, but their P10 and P90 do not add up.")
        .column(Rows.season(), horizon::seasonLabel)
        .columns(money.of(figures::money, chances.sales()::get))
        .of(seasons().boxed().toList());
  }

  private Table cash() {
    double[] balances = accounts.cash().balances();
    return TableOf.<Integer>table("chance-cash", "Cash at the end of each season")
        .note("The chart on Cash and the table chance-cash-months have every month.")
        .column(Rows.season(), horizon::seasonLabel)
        .columns(
            money.of(
                season -> balances[horizon.seasonLast(season)],
                season -> chances.cash().get(horizon.seasonLast(season))))
        .of(seasons().boxed().toList());
  }

  private Table lots() {
    return TableOf.<Map.Entry<String, Quantiles>>table("chance-lots", "The result of each lot")
        .note(
            "Sales less costs over the whole plan, as on Lots; plants standing at the end have no"
                + " value here.")
        .column(Rows.lot(), Map.Entry::getKey)
        .columns(money.of(lot -> accounts.lot(lot.getKey()).result(), Map.Entry::getValue))
        .of(List.copyOf(chances.lotResults().entrySet()));
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

  /** Plants of a grade in a season. */
  private record InGrade(int season, int grade, Plants plan, Quantiles drawn) {
    boolean isAny() {
      return drawn.mean() > 0 || plan.whole() > 0;
    }
  }

  private Table byGrade(
      String name, String title, String note, Map<GradeName, List<Quantiles>> drawn, Line line) {
    return TableOf.<InGrade>table(name, title)
        .note(note)
        .column(Rows.season(), each -> horizon.seasonLabel(each.season))
        .text("grade", each -> figures.grades().all().get(each.grade).label())
        .columns(plants.of(InGrade::plan, InGrade::drawn))
        .of(
            seasons()
                .boxed()
                .flatMap(
                    season ->
                        drawn.entrySet().stream()
                            .map(each -> inGrade(season, each.getKey(), each.getValue(), line)))
                .filter(InGrade::isAny)
                .toList());
  }

  private InGrade inGrade(int season, GradeName name, List<Quantiles> drawn, Line line) {
    int grade = index(name);
    return new InGrade(season, grade, line.at(grade, season), drawn.get(season));
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

  /** A place in a month. */
  private record Room(int season, String place, int month) {}

  private Table space() {
    return room(
            TableOf.<Room>table("chance-space", "Space in the tightest month of each season")
                .note(
                    "Tightest: where P90 lies highest over, or least below, what is there; the table"
                        + " chance-space-months has every month.")
                .column(Rows.season(), each -> horizon.seasonLabel(each.season)),
            squareMetres.of(this::needed, this::drawn))
        .of(
            seasons()
                .boxed()
                .flatMap(
                    season ->
                        chances.space().keySet().stream()
                            .map(place -> new Room(season, place, tightest(place, season))))
                .filter(each -> drawn(each).mean() > 0)
                .toList());
  }

  private TableOf<Room> room(TableOf<Room> table, List<ColumnOf<Room>> quantiles) {
    return table
        .column(Rows.place(), Room::place)
        .column(Rows.month(), each -> horizon.month(each.month))
        .column(
            "capacity", "there", "m²", Kind.SQUARE_METRES, each -> there(each.place, each.month))
        .columns(quantiles)
        .column(
            "chance_overflows",
            "chance that it overflows",
            "",
            Kind.SHARE,
            each -> chances.chanceOfOverflow().get(each.place)[each.month]);
  }

  private Quantiles drawn(Room room) {
    return chances.space().get(room.place).get(room.month);
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

  private double there(String place, int month) {
    return context
        .inputs()
        .scenario()
        .nursery()
        .places()
        .get(place)
        .capacityM2(horizon.month(month));
  }

  private double needed(Room room) {
    return accounts.space().months(Optional.of(room.place)).get(room.month).neededM2();
  }

  private Table hours() {
    boolean stated = chances.chanceOfShortHours().length > 0;
    TableOf<Integer> table =
        TableOf.<Integer>table("chance-hours", "Hours of work by month")
            .column(Rows.month(), horizon::month);
    if (stated) {
      table.column(
          "available",
          "hours",
          Kind.HOURS,
          month -> accounts.hours().available(month).orElseThrow());
    } else {
      table.note("The nursery does not say how many hours it has.");
    }
    table.columns(hours.of(accounts.hours()::needed, chances.hours()::get));
    if (stated) {
      table.column(
          "chance_short",
          "chance that they do not suffice",
          "",
          Kind.SHARE,
          month -> chances.chanceOfShortHours()[month]);
    }
    return table.of(
        IntStream.range(0, horizon.months())
            .filter(month -> chances.hours().get(month).mean() > 0)
            .boxed()
            .toList());
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
    return room(
            TableOf.table("chance-space-months", "Chances: space by place and month"),
            squareMetres.withErrors(this::needed, this::drawn))
        .of(chances.space().entrySet().stream().flatMap(this::months).toList());
  }

  private Stream<Room> months(Map.Entry<String, List<Quantiles>> place) {
    return IntStream.range(0, place.getValue().size())
        .mapToObj(month -> new Room(horizon.season(month), place.getKey(), month));
  }

  private Table cashMonths() {
    double[] balances = accounts.cash().balances();
    return TableOf.<Integer>table("chance-cash-months", "Chances: cash at the end of each month")
        .note(Sentences.WITHOUT_VAT)
        .column(Rows.month(), horizon::month)
        .columns(money.withErrors(month -> balances[month], chances.cash()::get))
        .of(IntStream.range(0, balances.length).boxed().toList());
  }

  /** A figure of the sheet with its quantiles. */
  private record Figure(String what, String of, String when, double plan, Quantiles drawn) {}

  /** What the sheet shows of sales, plants, hours and lots, with the errors of the quantiles. */
  private Table quantiles() {
    return TableOf.<Figure>table(
            "chance-quantiles", "Chances: quantiles with their sampling errors")
        .note(
            "Sales and results in the plan's currency, without VAT. ±: sampling error, one standard"
                + " error.")
        .text("what", Figure::what)
        .text("of", each -> Rows.text(each.of))
        .text("when", each -> Rows.text(each.when))
        .columns(new QuantileColumns("", Kind.NUMBER).withErrors(Figure::plan, Figure::drawn))
        .of(all());
  }

  private List<Figure> all() {
    List<Figure> all = new ArrayList<>();
    seasons().forEach(season -> all.addAll(season(season)));
    for (int month = 0; month < horizon.months(); month++) {
      String when = horizon.month(month).toString();
      double needed = accounts.hours().needed(month);
      all.add(new Figure("hours", "", when, needed, chances.hours().get(month)));
    }
    chances
        .lotResults()
        .forEach(
            (lot, drawn) ->
                all.add(new Figure("result", lot, "", accounts.lot(lot).result(), drawn)));
    return all;
  }

  private List<Figure> season(int season) {
    String label = horizon.seasonLabel(season);
    List<Figure> all = new ArrayList<>();
    all.add(new Figure("sales", "", label, figures.money(season), chances.sales().get(season)));
    for (GradeName name : chances.units().keySet()) {
      int grade = index(name);
      String of = figures.grades().all().get(grade).label();
      double sold = figures.sold(grade, season).whole();
      all.add(new Figure("plants sold", of, label, sold, chances.units().get(name).get(season)));
      double standing = figures.standing(grade, season).whole();
      all.add(
          new Figure(
              "plants standing", of, label, standing, chances.stock().get(name).get(season)));
    }
    return all;
  }
}
