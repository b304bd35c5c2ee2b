package growingon.load.table;

import growingon.load.cell.As;
import growingon.load.cell.Heading;
import growingon.load.cell.Names;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.load.cell.Texts;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.nursery.Reading;
import growingon.nursery.Species;
import growingon.problem.Where;
import growingon.problem.advice.DaybookAdvice;
import growingon.problem.advice.FitAdvice;
import growingon.problem.advice.LotAdvice;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Trunks that were measured, a reading a row, from which {@code fit} learns how plants really grow.
 *
 * <pre>
 * plant            your name for a tagged plant; empty for the mean of a sample of a lot
 * lot              lot it stands in; a sample needs it
 * species          as on the sheet species [that of the lot]; needed without a lot
 * condition        growing condition [that of the lot]; needed without a lot
 * date             the day; up to the 15th it is of the beginning of the month, later of its end
 * trunk mm         trunk just above the root flare, or the mean of a sample; a row without says
 *                  nothing, which is told
 * girth cm         girth in place of the trunk
 * trunk spread %   of a sample [15]
 * measured         how many trunks a sample is of, or "all" [20, or all where they are fewer]
 * potted           of a plant without a lot: month in which it was potted [unknown]
 * root work        of a plant without a lot: month in which its roots were cut [never]
 * note             [none]
 * </pre>
 */
public final class RecordsTable {
  private static final Heading<String> PLANT =
      Heading.named("plant")
          .means(
              "Your name for a tagged tree, such as OAK 07; empty for the mean of a sample of a lot");
  private static final Heading<String> LOT =
      Heading.text("lot").choice("lot").means("Lot it stands in; a sample needs it");
  private static final Heading<String> CONDITION =
      Heading.named("condition")
          .expert()
          .means("Growing condition; empty: as the lot, and needed without one");
  private static final Heading<LocalDate> DATE =
      Heading.text("date", As.DATE)
          .means("The day, as 2027-10-20; read the same trees each October");
  private static final Heading<YearMonth> POTTED =
      Heading.month("potted")
          .expert()
          .means("Of a tree without a lot: month in which it was potted");
  private static final Heading<YearMonth> ROOT_WORK =
      Heading.month("root work")
          .expert()
          .means("Of a tree without a lot: month in which its roots were cut");
  private static final double MM_IN_CM = 10;

  public static final TableFormat FORMAT =
      TableFormat.of(
              "records",
              PLANT,
              LOT,
              DATE.needed(),
              LotCells.TRUNK.means("Trunk just above the root flare, or the mean of a sample"),
              LotCells.NOTE,
              LotCells.SPECIES
                  .expert()
                  .means("What it is; empty: as the lot, and needed without one"),
              CONDITION,
              TrunkCells.GIRTH,
              LotCells.TRUNK_SPREAD.means("How unlike the trunks of a sample are"),
              TrunkCells.MEASURED.means("How many trunks a sample is of, or all"),
              POTTED,
              ROOT_WORK)
          .aboutAll();

  private final Definitions known;
  private final Names lots;
  private final Map<String, String> speciesOfLots;
  private final LocalDate today;
  private final Map<String, Reading> kinds = new HashMap<>();
  private final Map<List<Object>, Where> days = new HashMap<>();

  private RecordsTable(
      Definitions known, Names lots, Map<String, String> speciesOfLots, LocalDate today) {
    this.known = known;
    this.lots = lots;
    this.speciesOfLots = speciesOfLots;
    this.today = today;
  }

  /** Passes over its rows where nobody learns from them. */
  public static void leave(Optional<Table> table) {
    table.ifPresent(found -> found.rows().forEach(row -> row.accept(() -> row)));
  }

  /**
   * Reads it.
   *
   * @param lots names of all lots that there are or were
   * @param speciesOfLots their species, as far as known
   */
  public static List<Reading> read(
      Optional<Table> table,
      Definitions known,
      Names lots,
      Map<String, String> speciesOfLots,
      LocalDate today) {
    RecordsTable reader = new RecordsTable(known, lots, speciesOfLots, today);
    List<Reading> readings = new ArrayList<>();
    table.ifPresent(
        found -> found.rows().forEach(row -> reader.reading(row).ifPresent(readings::add)));
    return readings;
  }

  private Optional<Reading> reading(Row row) {
    row.needs(DATE);
    if (!row.has(LotCells.TRUNK) && !row.has(TrunkCells.GIRTH)) {
      row.remark(LotCells.TRUNK, FitAdvice::noTrunkRead);
      row.accept(() -> row);
      return Optional.empty();
    }
    Optional<LocalDate> date = date(row);
    Optional<String> plant = row.find(PLANT);
    Optional<String> lot = row.findName(LOT, lots);
    Optional<String> species = row.findName(LotCells.SPECIES, known.species().names());
    Optional<String> condition = row.find(CONDITION).map(Texts::key);
    boolean girth = row.has(TrunkCells.GIRTH);
    Optional<Double> trunk = trunk(row, girth);
    double spread = row.get(LotCells.TRUNK_SPREAD);
    Optional<Integer> measured = row.find(TrunkCells.MEASURED);
    Optional<YearMonth> potted = row.find(POTTED);
    Optional<YearMonth> rootWork = row.find(ROOT_WORK);
    checkWhose(row, plant, lot, species, condition);
    if (row.isFailed()) {
      return Optional.empty();
    }
    double mmPerTyped = girth ? mmOfGirthCm() : 1;
    Optional<Reading> reading =
        row.accept(
            () ->
                new Reading(
                    plant,
                    lot,
                    species,
                    condition,
                    date.orElseThrow(),
                    trunk.orElseThrow() * mmPerTyped,
                    mmPerTyped,
                    spread,
                    measured.map(OptionalInt::of).orElse(OptionalInt.empty()),
                    potted,
                    rootWork,
                    row.where()));
    reading.filter(read -> read.plant().isPresent()).ifPresent(read -> checkPlant(row, read));
    return row.isFailed() ? Optional.empty() : reading;
  }

  private Optional<LocalDate> date(Row row) {
    Optional<LocalDate> date = row.find(DATE);
    date.filter(day -> day.isAfter(today))
        .ifPresent(
            day ->
                row.fail(
                    DATE, where -> DaybookAdvice.afterToday(where, row.cell(DATE).shown(), today)));
    return date;
  }

  private double mmOfGirthCm() {
    return MM_IN_CM / Math.PI * known.settings().girthBaseFactor();
  }

  private Optional<Double> trunk(Row row, boolean girth) {
    if (girth && row.has(LotCells.TRUNK)) {
      row.fail(LotCells.TRUNK, LotAdvice::trunkTwice);
      return Optional.empty();
    }
    String heading = girth ? TrunkCells.GIRTH.name() : LotCells.TRUNK.name();
    return row.find(heading, As.number(girth ? Range.OVER_ZERO : Range.TRUNK));
  }

  private void checkWhose(
      Row row,
      Optional<String> plant,
      Optional<String> lot,
      Optional<String> species,
      Optional<String> condition) {
    if (row.isFailed()) {
      return;
    }
    if (plant.isEmpty() && lot.isEmpty()) {
      row.fail(PLANT, FitAdvice::sampleWithoutLot);
      return;
    }
    if (lot.isEmpty()) {
      List<String> missing = new ArrayList<>();
      if (species.isEmpty()) {
        missing.add(LotCells.SPECIES.name());
      }
      if (condition.isEmpty()) {
        missing.add(CONDITION.name());
      }
      if (!missing.isEmpty()) {
        row.fail(missing.get(0), where -> FitAdvice.kindNeeded(where, missing));
        return;
      }
    }
    Optional<String> ofLot = lot.map(speciesOfLots::get);
    if (ofLot.isPresent() && species.isPresent() && !ofLot.equals(species)) {
      row.fail(
          LotCells.SPECIES,
          where ->
              FitAdvice.otherKindThanLot(where, species.get(), lot.get(), ofLot.orElseThrow()));
    }
    checkCondition(row, species.or(() -> ofLot), condition);
  }

  private void checkCondition(Row row, Optional<String> species, Optional<String> condition) {
    Optional<Species> known = species.flatMap(this.known.species()::find);
    if (known.isPresent()
        && condition.isPresent()
        && !known.get().growth().containsKey(condition.get())) {
      row.fail(
          CONDITION,
          where -> FitAdvice.noSuchCondition(where, condition.get(), species.orElseThrow()));
    }
  }

  private void checkPlant(Row row, Reading reading) {
    String plant = reading.plant().orElseThrow();
    Where twice = days.putIfAbsent(List.of(plant, reading.date()), reading.where());
    if (twice != null) {
      row.fail(PLANT, where -> FitAdvice.plantTwice(where, plant, reading.date(), twice));
      return;
    }
    Reading first = kinds.putIfAbsent(plant, reading);
    boolean isOther =
        first != null
            && !(first.lot().equals(reading.lot())
                && first.species().equals(reading.species())
                && first.condition().equals(reading.condition()));
    if (isOther) {
      row.fail(PLANT, where -> FitAdvice.plantOfTwoKinds(where, plant, first.where()));
    }
  }
}
