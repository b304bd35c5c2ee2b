package growingon.load;

import growingon.load.Cell.Field;
import growingon.load.Cell.Fields;
import growingon.nursery.Curve;
import growingon.nursery.Habit;
import growingon.nursery.Hemisphere;
import growingon.nursery.MonthShares;
import growingon.nursery.Place;
import growingon.nursery.Species;
import growingon.problem.Advice;
import growingon.problem.Where;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Species with their growth and loss assumptions.
 *
 * <pre>
 * species                 name
 * ladder                  its grade ladder
 * kind                    deciduous or evergreen [deciduous]
 * usual condition         growing condition where neither pot nor place names one
 * mm a year CONDITION     steady growth of the trunk; one column for each growing condition, such as
 *                         "mm a year field" and "mm a year training pot"; at least that of the
 *                         usual condition
 * most mm                 trunk at which growth stops, in every condition [none]
 * vigour spread %         between plants [20]
 * year spread %           between years [10]
 * first-year loss %       in the month of arrival and the 11 after
 * later loss %            a year after that
 * lot spread %            between lots beyond that, for chances [the nursery's]
 * loss spread %           of the loss between years [25]
 * root-work check 1       growth factor in the month of root work and the 11 after [0.6]
 * root-work check 2       growth factor in the 12 months after that [0.85]
 * pot-bound months        at full growth after potting [36]
 * pot-bound factor        growth factor after that [0.6]
 * winter place            place of potted plants in winter [none]
 * plant health note       [none]
 * </pre>
 *
 * species.json states the same where a column is too plain, with any growth curve for each
 * condition and with its own month shares. A species stands in one of the two.
 */
final class SpeciesTable {
  static final String SPECIES = "species";
  static final String LADDER = "ladder";
  static final String KIND = "kind";
  static final String USUAL_CONDITION = "usual condition";
  static final String MM_A_YEAR = "mm a year ";
  static final String MOST = "most mm";
  static final String VIGOUR_SPREAD = "vigour spread %";
  static final String LOT_SPREAD = "lot spread %";
  static final String YEAR_SPREAD = "year spread %";
  static final String FIRST_YEAR_LOSS = "first-year loss %";
  static final String LATER_LOSS = "later loss %";
  static final String LOSS_SPREAD = "loss spread %";
  static final String CHECK_1 = "root-work check 1";
  static final String CHECK_2 = "root-work check 2";
  static final String POT_BOUND_MONTHS = "pot-bound months";
  static final String POT_BOUND_FACTOR = "pot-bound factor";
  static final String WINTER_PLACE = "winter place";
  static final String HEALTH_NOTE = "plant health note";
  static final TableFormat FORMAT =
      TableFormat.of("species", SPECIES, LADDER, USUAL_CONDITION, FIRST_YEAR_LOSS, LATER_LOSS)
          .with(
              KIND,
              MOST,
              VIGOUR_SPREAD,
              YEAR_SPREAD,
              LOT_SPREAD,
              LOSS_SPREAD,
              CHECK_1,
              CHECK_2,
              POT_BOUND_MONTHS,
              POT_BOUND_FACTOR,
              WINTER_PLACE,
              HEALTH_NOTE)
          .withAny(MM_A_YEAR);

  /** Growth factors above this are a slip. */
  static final Range FACTOR = new Range(0, 2, true);

  static final Range SPREAD = Range.of(0, 300);
  static final Range POT_BOUND = Range.of(0, 1200);

  private final Names ladders;
  private final Defined<Place> places;
  private final Hemisphere hemisphere;
  private final Defined<Species> species;

  private SpeciesTable(
      Defined<Species> species, Names ladders, Defined<Place> places, Hemisphere hemisphere) {
    this.species = species;
    this.ladders = ladders;
    this.places = places;
    this.hemisphere = hemisphere;
  }

  /** Species of the table, then those of species.json. */
  static Defined<Species> read(
      Optional<Table> table,
      Optional<JsonObject> json,
      Names ladders,
      Defined<Place> places,
      Hemisphere hemisphere,
      Findings findings) {
    Defined<Species> none = Defined.none(new Names("species", FORMAT.name()));
    SpeciesTable reader = new SpeciesTable(none, ladders, places, hemisphere);
    table.ifPresent(reader::addTable);
    json.ifPresent(object -> reader.addJson(object, findings));
    if (table.isEmpty() && json.isEmpty()) {
      none.names().leaveOpen();
    }
    return reader.species;
  }

  private void addTable(Table table) {
    if (!table.isReadable()) {
      species.names().leaveOpen();
    }
    for (Row row : table.rows()) {
      String name = species.define(row, SPECIES);
      row.needs(SPECIES, LADDER, USUAL_CONDITION, FIRST_YEAR_LOSS, LATER_LOSS);
      add(name, row, steadyCurves(row));
    }
  }

  private static Map<String, Curve> steadyCurves(Row row) {
    double most = row.find(MOST, As.number(Range.OVER_ZERO)).orElse(Double.POSITIVE_INFINITY);
    Map<String, Curve> curves = new LinkedHashMap<>();
    for (String heading : row.headings()) {
      if (heading.startsWith(MM_A_YEAR)) {
        row.find(heading, As.number(Range.FROM_ZERO))
            .ifPresent(
                mm ->
                    curves.put(heading.substring(MM_A_YEAR.length()), new Curve.Steady(mm, most)));
      }
    }
    return curves;
  }

  private void addJson(JsonObject file, Findings findings) {
    if (file.isBroken()) {
      species.names().leaveOpen();
      return;
    }
    Field all = file.fields().fields().get(SpeciesShape.SPECIES);
    if (all == null || !(all.value() instanceof Fields entries)) {
      findings.add(Advice.missingValue(file.where().column(SpeciesShape.SPECIES)));
      return;
    }
    entries.fields().forEach((name, entry) -> addEntry(name, entry, file.where(), findings));
  }

  private void addEntry(String typed, Field entry, Where file, Findings findings) {
    Optional<String> named = name(typed, entry, file, findings);
    if (named.isEmpty()) {
      return;
    }
    String name = named.get();
    Where line = new Where(file.file(), "", entry.line(), name);
    if (!species.names().add(name)) {
      findings.add(Advice.speciesTwice(line, name));
      return;
    }
    if (!(entry.value() instanceof Fields fields)) {
      findings.add(Advice.missingValue(line));
      return;
    }
    Row row = JsonShape.row(FORMAT.name(), fields, name, file, findings);
    row.needs(LADDER, USUAL_CONDITION, SpeciesShape.Entry.GROWTH, FIRST_YEAR_LOSS, LATER_LOSS);
    add(name, row, Curves.read(row, name, file, findings));
  }

  private static Optional<String> name(String typed, Field entry, Where file, Findings findings) {
    Where line = new Where(file.file(), "", entry.line(), "");
    Cell cell = Cell.ofText(typed);
    if (cell.isEmpty()) {
      findings.add(Advice.nameless(line, "species"));
      return Optional.empty();
    }
    if (cell.shown().length() > As.LONGEST_NAME) {
      findings.add(Advice.nameTooLong(line, cell.shown(), As.LONGEST_NAME));
      return Optional.empty();
    }
    return Optional.of(cell.shown());
  }

  private void add(String name, Row row, Map<String, Curve> growth) {
    String ladder = row.getName(LADDER, ladders);
    Habit habit = row.get(KIND, As.word(Habit.class), Habit.DECIDUOUS);
    String usual = Texts.key(row.get(USUAL_CONDITION, As.NAME));
    MonthShares growthMonths =
        MonthLists.get(row, SpeciesShape.Entry.GROWTH_MONTHS, MonthLists.growth(habit, hemisphere));
    MonthShares lossMonths =
        MonthLists.get(row, SpeciesShape.Entry.LOSS_MONTHS, MonthLists.loss(habit, hemisphere));
    double vigourSpread = row.get(VIGOUR_SPREAD, As.percent(SPREAD), 0.2);
    double yearSpread = row.get(YEAR_SPREAD, As.percent(SPREAD), 0.1);
    OptionalDouble lotSpread = PlacesTable.optional(row.find(LOT_SPREAD, As.percent(SPREAD)));
    double firstYearLoss = row.get(FIRST_YEAR_LOSS, As.share());
    double laterLoss = row.get(LATER_LOSS, As.share());
    double lossSpread = row.get(LOSS_SPREAD, As.percent(SPREAD), 0.25);
    double check1 = row.get(CHECK_1, As.number(FACTOR), 0.6);
    double check2 = row.get(CHECK_2, As.number(FACTOR), 0.85);
    int potBoundMonths = row.get(POT_BOUND_MONTHS, As.whole(POT_BOUND), 36);
    double potBoundFactor = row.get(POT_BOUND_FACTOR, As.number(FACTOR), 0.6);
    Optional<String> winterPlace = row.findName(WINTER_PLACE, places.names());
    String healthNote = row.find(HEALTH_NOTE, As.TEXT).orElse("");
    if (!row.isFailed() && !growth.containsKey(usual)) {
      row.fail(USUAL_CONDITION, where -> Advice.usualWithoutCurve(where, usual, growth.keySet()));
    }
    row.accept(
            () ->
                new Species(
                    name,
                    ladder,
                    habit,
                    usual,
                    growth,
                    growthMonths,
                    vigourSpread,
                    yearSpread,
                    lotSpread,
                    firstYearLoss,
                    laterLoss,
                    lossMonths,
                    lossSpread,
                    check1,
                    check2,
                    potBoundMonths,
                    potBoundFactor,
                    winterPlace,
                    healthNote))
        .ifPresent(made -> species.values().put(name, made));
  }
}
