package growingon.load.table.market;

import growingon.load.cell.Findings;
import growingon.load.cell.Range;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.MonthSpans;
import growingon.load.row.Row;
import growingon.load.row.Seasons;
import growingon.load.row.Wildcard;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.Defined;
import growingon.load.table.market.GradesTable.LadderRead;
import growingon.nursery.Settings;
import growingon.nursery.market.Demand;
import growingon.nursery.species.Species;
import growingon.nursery.time.Horizon;
import growingon.nursery.time.MonthShares;
import growingon.nursery.time.MonthSpan;
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
  private static final Heading<String> SPECIES =
      Heading.text("species")
          .choice("species")
          .means("A species, or * for every species of the ladder");
  private static final Heading<String> LADDER =
      Heading.text("ladder")
          .choice("ladder")
          .means("Needed with *; empty: the ladder of the species");
  private static final Heading<String> GRADE =
      Heading.named("grade").choice("grade").means("A grade of the ladder");
  private static final Heading<String> SEASON =
      Heading.text("season")
          .expert()
          .means("Only for this season, written 2026/27; empty: every season");
  private static final Heading<Double> UNITS =
      Heading.number("units", As.number(Range.FROM_ZERO))
          .means("Plants that you can sell in a season; empty: all that are ready");
  private static final Heading<Double> PRICE =
      Heading.money("price").means("List price of a first");
  private static final Heading<Double> MORE =
      Heading.money("more per mm")
          .expert()
          .usual(0.0)
          .means("Added to the price for each mm over the least trunk");
  private static final Heading<Double> UNITS_SPREAD =
      Heading.number("units spread %", As.percent(Range.of(0, 300)))
          .expert()
          .usual(0.0)
          .means("How unsure the units are from season to season, for chances");
  private static final Heading<Double> PRICE_SPREAD =
      Heading.number("price spread %", As.percent(Range.of(0, 300)))
          .expert()
          .usual(0.0)
          .means("How unsure the price is from season to season, for chances");
  public static final TableFormat FORMAT =
      TableFormat.of(
              "demand",
              SPECIES.needed(),
              LADDER,
              GRADE.needed(),
              PRICE.needed(),
              UNITS,
              MonthSpans.FROM,
              MonthSpans.TO,
              SEASON,
              MORE,
              UNITS_SPREAD.also("spread %"),
              PRICE_SPREAD)
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
    double price = row.get(PRICE.reading(As.money(settings.currency(), Range.PRICE)));
    double more = row.get(MORE.reading(As.money(settings.currency(), Range.FROM_ZERO)));
    double unitsSpread = row.get(UNITS_SPREAD);
    double priceSpread = row.get(PRICE_SPREAD);
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
      row.assume(LADDER.as(As.NAME), own.get());
    }
    return stated.or(() -> own);
  }

  private String grade(Row row, String ladder) {
    return ladders
        .find(ladder)
        .map(found -> row.getName(GRADE, found.grades()))
        .orElseGet(() -> row.get(GRADE));
  }

  private Optional<String> season(Row row) {
    if (Texts.key(row.cell(SEASON).shown()).equals("every")) {
      row.find(SEASON);
      return Optional.empty();
    }
    Optional<String> season = row.find(SEASON.as(Seasons.cell(settings.seasonStart())));
    season
        .flatMap(found -> Seasons.outside(found, horizon))
        .ifPresent(
            found -> row.remark(SEASON, where -> PlanAdvice.seasonOutsidePlan(where, found)));
    return season;
  }

  private static Optional<Double> units(Row row) {
    if (Texts.key(row.cell(UNITS).shown()).startsWith("all")) {
      row.find(UNITS.as(As.TEXT));
      return Optional.empty();
    }
    return row.find(UNITS);
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
