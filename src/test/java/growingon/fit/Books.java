package growingon.fit;

import growingon.fit.past.FitRecords;
import growingon.nursery.Inputs;
import growingon.nursery.lot.Lot;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.nursery.record.Reading;
import growingon.nursery.record.StockList;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.nursery.time.MonthShares;
import growingon.problem.Where;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Records to be written in a test: stock lists, counts, sales and readings. */
public final class Books {
  /** ψ² is 0.08², as in the cases that were worked by hand. */
  public static final double LOT_SPREAD = Math.sqrt(Math.exp(0.0064) - 1);

  private final Nurseries nursery;
  private final List<StockList> lists = new ArrayList<>();
  private final List<DaybookLine> lines = new ArrayList<>();
  private final List<Reading> readings = new ArrayList<>();
  private final Map<Where, Integer> measured = new HashMap<>();
  private YearMonth until = YearMonth.of(2030, 10);
  private int row = 1;

  private Books(Nurseries nursery) {
    this.nursery = nursery;
  }

  public static Books of(Nurseries nursery) {
    return new Books(nursery);
  }

  /** A species with the planner's own spreads, without checks and pot-bound roots. */
  public static Species species(String name, Curve curve) {
    return species(name, "one", curve, 0.06, 0.02);
  }

  static Species species(
      String name, String ladder, Curve curve, double firstYearLoss, double laterLoss) {
    return Species.named(name)
        .ladder(ladder)
        .usualCondition("pot")
        .growth(Map.of("pot", curve))
        .growthMonths(MonthShares.of(0, 0, 5, 10, 20, 25, 20, 12, 6, 2, 0, 0))
        .firstYearLoss(firstYearLoss)
        .laterLoss(laterLoss)
        .checkFirstYear(1)
        .checkSecondYear(1)
        .potBoundMonths(1200)
        .potBoundFactor(1)
        .sure(new Sure(Map.of("pot", Sure.USUAL), Sure.USUAL, Sure.USUAL))
        .build();
  }

  /** A list of a month, each lot with the number of trunks measured. */
  public Books list(int year, int month, Object... lotsAndMeasured) {
    List<StockList.Row> rows = new ArrayList<>();
    for (int i = 0; i < lotsAndMeasured.length; i += 2) {
      rows.add(
          new StockList.Row(
              (Lot) lotsAndMeasured[i],
              true,
              true,
              OptionalInt.of((Integer) lotsAndMeasured[i + 1]),
              where("stock " + year)));
    }
    rows.add(readToTenths(year, month));
    lists.add(new StockList("stock " + year, YearMonth.of(year, month), rows));
    return this;
  }

  /** A lot of another species that makes it plain that trunks were read to a tenth of a mm. */
  private StockList.Row readToTenths(int year, int month) {
    Lot lot =
        Lots.lot("ash of " + year)
            .trunks(10.1, 0.1)
            .arrived(year - 1, month)
            .counted(year, month)
            .build();
    return new StockList.Row(lot, true, true, OptionalInt.empty(), where("stock " + year));
  }

  Books count(String date, String lot, double plants, double trunk, double spread, int of) {
    Where where = where("daybook");
    measured.put(where, of);
    return add(
        date,
        lot,
        What.COUNTED,
        OptionalDouble.of(plants),
        Optional.empty(),
        OptionalDouble.of(trunk),
        OptionalDouble.of(spread),
        where);
  }

  Books countPlants(String date, String lot, double plants) {
    return line(date, lot, What.COUNTED, plants);
  }

  Books line(String date, String lot, What what, double plants) {
    return add(
        date,
        lot,
        what,
        OptionalDouble.of(plants),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        where("daybook"));
  }

  public Books sold(String date, String lot, double plants, String grade) {
    return add(
        date,
        lot,
        What.SOLD,
        OptionalDouble.of(plants),
        Optional.of(grade),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        where("daybook"));
  }

  private Books add(
      String date,
      String lot,
      What what,
      OptionalDouble plants,
      Optional<String> grade,
      OptionalDouble trunk,
      OptionalDouble spread,
      Where where) {
    lines.add(
        DaybookLine.of(LocalDate.parse(date), lot, what, where)
            .quantity(plants)
            .grade(grade)
            .trunkMm(trunk)
            .trunkSpread(spread)
            .build());
    return this;
  }

  public Books tag(String plant, String lot, String date, double mm) {
    return tag(plant, lot, date, mm, 1);
  }

  public Books tag(String plant, String lot, String date, double typed, double mmPerTyped) {
    readings.add(
        new Reading(
            Optional.of(plant),
            Optional.of(lot),
            Optional.empty(),
            Optional.empty(),
            LocalDate.parse(date),
            typed * mmPerTyped,
            mmPerTyped,
            0,
            OptionalInt.empty(),
            Optional.empty(),
            Optional.empty(),
            where("records")));
    return this;
  }

  private Where where(String file) {
    return new Where(file, "", ++row, "");
  }

  Books until(int year, int month) {
    until = YearMonth.of(year, month);
    return this;
  }

  public FitRecords records() {
    Inputs inputs =
        new Inputs(
            nursery.scenario(), List.of(), List.of(), 0, Optional.empty(), lines, Optional.empty());
    return new FitRecords(inputs, lists, readings, measured, Map.of(), until);
  }
}
