package growingon.load.table.species;

import growingon.load.cell.Cell;
import growingon.load.cell.Cell.Fields;
import growingon.load.cell.Findings;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.MonthLists;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.source.JsonShape;
import growingon.load.table.Defined;
import growingon.nursery.Settings;
import growingon.nursery.library.Figures;
import growingon.nursery.library.Library;
import growingon.nursery.library.Taxon;
import growingon.nursery.place.Place;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Habit;
import growingon.nursery.species.Species;
import growingon.nursery.species.SpeciesBuilder;
import growingon.nursery.species.Sure;
import growingon.nursery.species.UsualMonths;
import growingon.nursery.time.Hemisphere;
import growingon.nursery.time.MonthShares;
import growingon.problem.advice.DefinitionAdvice;
import growingon.problem.advice.LibraryAdvice;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The values of a species in its row, in its entry of species.json, or from the library. */
final class SpeciesRow {
  private final String name;
  private final Row row;
  private final Lent lent;
  private final Settings settings;
  private final Findings findings;

  SpeciesRow(String name, Row row, Lent lent, Settings settings, Findings findings) {
    this.name = name;
    this.row = row;
    this.lent = lent;
    this.settings = settings;
    this.findings = findings;
  }

  /**
   * The species, unless something is wrong with it.
   *
   * @param stated growth as the row states it, by condition
   * @param most trunk at which growth ends, where the row states one for all conditions
   */
  Optional<Species> read(
      Map<String, Curve> stated, Optional<Double> most, Names ladders, Defined<Place> places) {
    SpeciesBuilder made = Species.named(name);
    made.ladder(row.getName(SpeciesTable.LADDER, ladders));
    Habit habit =
        lent.get(SpeciesTable.KIND, As.word(Habit.class), Habit.DECIDUOUS, Taxon::habit, "");
    String usual = usualCondition();
    Map<String, Curve> growth = new LinkedHashMap<>(stated);
    lent.addGrowth(growth, usual, most);
    made.habit(habit).usualCondition(usual).growth(growth);
    readMonths(habit, made);
    readSpreads(made);
    readLosses(usual, made);
    readChecks(made);
    made.winterPlace(row.findName(SpeciesTable.WINTER_PLACE, places.names()));
    made.healthNote(lent.healthNote(SpeciesTable.HEALTH_NOTE));
    made.sure(sure(growth));
    lent.tellBesides();
    checkUsual(usual, growth);
    return row.accept(() -> made.fromLibrary(lent.fromLibrary()).build());
  }

  private void readMonths(Habit habit, SpeciesBuilder into) {
    Hemisphere hemisphere = settings.hemisphere();
    into.growthMonths(
        months(SpeciesShape.Entry.GROWTH_MONTHS, UsualMonths.growth(habit, hemisphere)));
    into.lossMonths(months(SpeciesShape.Entry.LOSS_MONTHS, UsualMonths.loss(habit, hemisphere)));
  }

  private void readSpreads(SpeciesBuilder into) {
    As<Double> spread = As.percent(SpeciesTable.SPREAD);
    into.vigourSpread(
        lent.vigourSpread(SpeciesTable.VIGOUR_SPREAD, spread, Species.USUAL_VIGOUR_SPREAD));
    into.yearSpread(
        lent.get(
            SpeciesTable.YEAR_SPREAD, spread, Species.USUAL_YEAR_SPREAD, Taxon::yearSpread, ""));
    into.lotSpread(As.optional(row.find(SpeciesTable.LOT_SPREAD, spread)));
  }

  private void readLosses(String usual, SpeciesBuilder into) {
    into.firstYearLoss(lent.loss(SpeciesTable.FIRST_YEAR_LOSS, usual, Figures::firstYearLoss));
    into.laterLoss(lent.loss(SpeciesTable.LATER_LOSS, usual, Figures::laterLoss));
    into.lossSpread(
        row.get(
            SpeciesTable.LOSS_SPREAD, As.percent(SpeciesTable.SPREAD), Species.USUAL_LOSS_SPREAD));
  }

  /** What slows growth: root work, and a pot grown full. */
  private void readChecks(SpeciesBuilder into) {
    As<Double> factor = As.number(SpeciesTable.FACTOR);
    into.checkFirstYear(row.get(SpeciesTable.CHECK_1, factor, Species.USUAL_CHECK_FIRST_YEAR));
    into.checkSecondYear(row.get(SpeciesTable.CHECK_2, factor, Species.USUAL_CHECK_SECOND_YEAR));
    into.potBoundMonths(
        row.get(
            SpeciesTable.POT_BOUND_MONTHS,
            As.whole(SpeciesTable.POT_BOUND),
            Species.USUAL_POT_BOUND_MONTHS));
    into.potBoundFactor(
        row.get(SpeciesTable.POT_BOUND_FACTOR, factor, Species.USUAL_POT_BOUND_FACTOR));
  }

  private String usualCondition() {
    return Texts.key(
        lent.isAsked()
            ? row.get(SpeciesTable.USUAL_CONDITION, As.NAME, Library.TRAINING_POT)
            : row.get(SpeciesTable.USUAL_CONDITION, As.NAME));
  }

  private MonthShares months(String heading, MonthShares usual) {
    return MonthLists.get(row, heading, usual);
  }

  private void checkUsual(String usual, Map<String, Curve> growth) {
    if (row.isFailed() || growth.containsKey(usual)) {
      return;
    }
    row.fail(
        SpeciesTable.USUAL_CONDITION,
        where ->
            lent.isAsked()
                ? LibraryAdvice.conditionUnknown(where, usual, Library.shipped().conditions())
                : DefinitionAdvice.usualWithoutCurve(where, usual, growth.keySet()));
  }

  private Sure sure(Map<String, Curve> growth) {
    double usual = settings.assumptionsSure();
    return new Sure(
        growthSure(growth),
        lent.lossSure(
            SpeciesTable.FIRST_YEAR_LOSS_SURE,
            SpeciesTable.FIRST_YEAR_LOSS,
            usual,
            Figures::firstYearLossSure),
        lent.lossSure(
            SpeciesTable.LATER_LOSS_SURE, SpeciesTable.LATER_LOSS, usual, Figures::laterLossSure));
  }

  /** For each condition as typed, as the library says of its own growth, or as is usual. */
  private Map<String, Double> growthSure(Map<String, Curve> growth) {
    Map<String, Double> sure = new LinkedHashMap<>();
    Cell cell = row.cell(SpeciesTable.GROWTH_SURE);
    if (cell instanceof Fields byCondition) {
      sure.putAll(byCondition(byCondition, growth));
    } else if (!cell.isEmpty()) {
      double all = row.get(SpeciesTable.GROWTH_SURE, As.sure());
      growth.keySet().forEach(condition -> sure.put(condition, all));
    }
    for (String condition : growth.keySet()) {
      row.find(SpeciesTable.GROWTH_SURE + " " + condition, As.sure())
          .ifPresent(share -> sure.put(condition, share));
    }
    growth.keySet().stream()
        .filter(condition -> !sure.containsKey(condition))
        .forEach(condition -> lent.growthSure(condition).ifPresent(p -> sure.put(condition, p)));
    if (!sure.keySet().containsAll(growth.keySet())) {
      double usual = settings.assumptionsSure();
      row.assume(SpeciesTable.GROWTH_SURE, As.sure(), usual);
      growth.keySet().forEach(condition -> sure.putIfAbsent(condition, usual));
    }
    return sure;
  }

  private Map<String, Double> byCondition(Fields typed, Map<String, Curve> growth) {
    Row each =
        JsonShape.row(
            SpeciesTable.FORMAT.name(),
            typed,
            name + ", " + SpeciesTable.GROWTH_SURE,
            row.where(),
            findings);
    Map<String, Double> sure = new LinkedHashMap<>();
    for (String heading : each.headings()) {
      String condition = Texts.key(heading);
      if (!row.isFailed() && !growth.containsKey(condition)) {
        each.fail(
            heading, where -> LibraryAdvice.sureWithoutGrowth(where, heading, growth.keySet()));
      }
      each.find(heading, As.sure()).ifPresent(share -> sure.put(condition, share));
    }
    if (each.isFailed()) {
      row.fault();
    }
    return sure;
  }
}
