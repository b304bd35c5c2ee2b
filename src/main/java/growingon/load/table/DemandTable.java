package growingon.load.table;

import growingon.load.cell.As;
import growingon.load.cell.Findings;
import growingon.load.cell.MonthSpans;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.load.cell.Seasons;
import growingon.load.cell.Texts;
import growingon.load.cell.Wildcard;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.GradesTable.LadderRead;
import growingon.nursery.Demand;
import growingon.nursery.Horizon;
import growingon.nursery.MonthShares;
import growingon.nursery.MonthSpan;
import growingon.nursery.Settings;
import growingon.nursery.Species;
import growingon.problem.advice.FileAdvice;
import growingon.problem.advice.PlanAdvice;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What can be sold of a grade in a season, and at what price. Without this table nothing is sold.
 *
 * <pre>
 * species                a species, or * for any of the ladder
 * ladder                 its grade ladder; needed with * [the species' ladder]
 * grade                  a grade of it
 * season                 2026/27 (2026 where seasons start in January), or every [every]
 * from month, to month   words or 1 to 12 [the whole year]
 * units                  plants a season, or all [all that is ready]
 * price                  list price of a plant
 * more per mm            added to the price per mm of trunk above the grade's least [0]
 * units spread %         of the units from season to season, for chances [0]; also "spread %"
 * price spread %         of the price from season to season, for chances [0]
 * </pre>
 */
public final class DemandTable {
  private static final String SPECIES = "species";
  private static final String LADDER = "ladder";
  private static final String GRADE = "grade";
  private static final String SEASON = "season";
  private static final String UNITS = "units";
  private static final String PRICE = "price";
  private static final String MORE = "more per mm";
  private static final String UNITS_SPREAD = "units spread %";
  private static final String PRICE_SPREAD = "price spread %";
  public static final TableFormat FORMAT =
      TableFormat.of("demand", SPECIES, GRADE, PRICE)
          .with(
              LADDER,
              SEASON,
              MonthSpans.FROM,
              MonthSpans.TO,
              UNITS,
              MORE,
              UNITS_SPREAD,
              PRICE_SPREAD)
          .alias("spread %", UNITS_SPREAD)
          .about(SPECIES, LADDER, GRADE);

  private final Defined<Species> species;
  private final Defined<LadderRead> ladders;
  private final Settings settings;
  private final Horizon horizon;

  private DemandTable(
      Defined<Species> species, Defined<LadderRead> ladders, Settings settings, Horizon horizon) {
    this.species = species;
    this.ladders = ladders;
    this.settings = settings;
    this.horizon = horizon;
  }

  public static List<Demand> read(
      Optional<Table> table,
      Defined<Species> species,
      Defined<LadderRead> ladders,
      Settings settings,
      Horizon horizon,
      Findings findings) {
    if (table.isEmpty() || (table.get().isReadable() && table.get().rows().isEmpty())) {
      findings.add(FileAdvice.noDemand());
    }
    DemandTable reader = new DemandTable(species, ladders, settings, horizon);
    return table.map(Table::rows).orElse(List.of()).stream()
        .map(reader::demand)
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<Demand> demand(Row row) {
    row.needs(SPECIES, GRADE, PRICE);
    boolean any = Wildcard.isIn(row, SPECIES);
    Optional<String> one = any ? Optional.empty() : row.findName(SPECIES, species.names());
    Optional<String> ladder = ladder(row, one, any);
    String grade = ladder.map(found -> grade(row, found)).orElse("");
    Optional<String> season = season(row);
    MonthSpan months = MonthSpans.get(row);
    Optional<Double> units = units(row);
    double price = row.get(PRICE, As.money(settings.currency(), Range.PRICE));
    double more = row.get(MORE, As.money(settings.currency(), Range.FROM_ZERO), 0.0);
    double unitsSpread = row.get(UNITS_SPREAD, As.percent(Range.of(0, 300)), 0.0);
    double priceSpread = row.get(PRICE_SPREAD, As.percent(Range.of(0, 300)), 0.0);
    checkPattern(row, months);
    return row.accept(
        () ->
            new Demand(
                one,
                ladder.orElse(""),
                grade,
                season,
                months,
                As.optional(units),
                price,
                more,
                unitsSpread,
                priceSpread));
  }

  /** The ladder of the row, which must be that of its species; empty if that one is faulty. */
  private Optional<String> ladder(Row row, Optional<String> one, boolean any) {
    Optional<String> stated = row.findName(LADDER, ladders.names());
    if (any && !row.has(LADDER)) {
      row.fail(LADDER, PlanAdvice::starWithoutLadder);
    }
    Optional<Species> known = one.flatMap(species::find);
    Optional<String> own = known.map(Species::ladder);
    if (stated.isPresent() && own.isPresent() && !stated.equals(own)) {
      row.fail(
          LADDER,
          where ->
              PlanAdvice.otherLadder(
                  where, row.cell(LADDER).shown(), known.get().name(), own.get()));
    }
    if (stated.isEmpty() && own.isPresent() && !row.has(LADDER)) {
      row.assume(LADDER, As.NAME, own.get());
    }
    return stated.or(() -> own);
  }

  private String grade(Row row, String ladder) {
    return ladders
        .find(ladder)
        .map(found -> row.getName(GRADE, found.grades()))
        .orElseGet(() -> row.get(GRADE, As.NAME));
  }

  private Optional<String> season(Row row) {
    if (Texts.key(row.cell(SEASON).shown()).equals("every")) {
      row.find(SEASON, As.TEXT);
      return Optional.empty();
    }
    Optional<String> season = row.find(SEASON, Seasons.cell(settings.seasonStart()));
    season
        .flatMap(found -> Seasons.outside(found, horizon))
        .ifPresent(
            found -> row.remark(SEASON, where -> PlanAdvice.seasonOutsidePlan(where, found)));
    return season;
  }

  private static Optional<Double> units(Row row) {
    if (Texts.key(row.cell(UNITS).shown()).startsWith("all")) {
      row.find(UNITS, As.TEXT);
      return Optional.empty();
    }
    return row.find(UNITS, As.number(Range.FROM_ZERO));
  }

  /** Months without any share of the year's sales sell nothing. */
  private void checkPattern(Row row, MonthSpan months) {
    MonthShares pattern = settings.salesPattern();
    double share =
        IntStream.rangeClosed(1, 12)
            .filter(months::contains)
            .mapToDouble(month -> pattern.get(month - 1))
            .sum();
    if (!row.isFailed() && share == 0) {
      row.remark(MonthSpans.FROM, PlanAdvice::noSalesInMonths);
    }
  }
}
