package growingon.load.table.species;

import growingon.load.cell.Cell;
import growingon.load.cell.Cell.Field;
import growingon.load.cell.Cell.Fields;
import growingon.load.cell.Findings;
import growingon.load.cell.Range;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.source.JsonObject;
import growingon.load.source.JsonShape;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.Defined;
import growingon.nursery.Settings;
import growingon.nursery.place.Place;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.problem.Where;
import growingon.problem.advice.DefinitionAdvice;
import growingon.problem.advice.TableAdvice;
import growingon.problem.advice.ValueAdvice;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Species with their growth and loss assumptions.
 *
 * <pre>
 * species                 name
 * ladder                  its grade ladder
 * kind                    deciduous or evergreen [deciduous]
 * library                 whether the library of species gives what is empty here: yes by the
 *                         species' own name, or another name of the library, or deciduous or
 *                         evergreen [no]
 * usual condition         growing condition where neither pot nor place names one [needed; from the
 *                         library training pot]
 * mm a year CONDITION     steady growth of the trunk; one column for each growing condition, such as
 *                         "mm a year field" and "mm a year training pot"; at least that of the
 *                         usual condition [needed; from the library]
 * growth sure %           how sure that is, 1 to 100 [the setting assumptions sure %; the library's]
 * growth sure % CONDITION the same for one growing condition
 * most mm                 trunk at which growth stops, in every condition [none]
 * vigour spread %         between plants [20]
 * year spread %           between years [10]
 * first-year loss %       in the month of arrival and the 11 after [needed; from the library]
 * first-year loss sure %  as growth sure %
 * later loss %            a year after that [needed; from the library]
 * later loss sure %       as growth sure %
 * lot spread %            between lots beyond that, for chances [the nursery's]
 * loss spread %           of the loss between years [25]
 * root-work check 1       growth factor in the month of root work and the 11 after [0.6]
 * root-work check 2       growth factor in the 12 months after that [0.85]
 * pot-bound months        at full growth after potting [36]
 * pot-bound factor        growth factor after that [0.6]
 * winter place            place of potted plants in winter [none]
 * plant health note       [none]
 * learnt until, prior ... written by fit: the last month of the records it learnt from, and what was
 *                         assumed, and how sure, before it learnt anything
 * </pre>
 *
 * Each cell that is filled in wins over the library. species.json states the same where a column is
 * too plain, with any growth curve for each condition, how sure each is, and with its own month
 * shares. A species stands in one of the two.
 */
public final class SpeciesTable {
  static final String SPECIES = "species";
  static final String LADDER = "ladder";
  static final String KIND = "kind";
  static final String LIBRARY = "library";
  static final String USUAL_CONDITION = "usual condition";
  static final String MM_A_YEAR = "mm a year ";
  static final String GROWTH_SURE = "growth sure %";
  static final String MOST = "most mm";
  static final String VIGOUR_SPREAD = "vigour spread %";
  static final String LOT_SPREAD = "lot spread %";
  static final String YEAR_SPREAD = "year spread %";
  static final String FIRST_YEAR_LOSS = "first-year loss %";
  static final String FIRST_YEAR_LOSS_SURE = "first-year loss sure %";
  static final String LATER_LOSS = "later loss %";
  static final String LATER_LOSS_SURE = "later loss sure %";
  static final String LOSS_SPREAD = "loss spread %";
  static final String CHECK_1 = "root-work check 1";
  static final String CHECK_2 = "root-work check 2";
  static final String POT_BOUND_MONTHS = "pot-bound months";
  static final String POT_BOUND_FACTOR = "pot-bound factor";
  static final String WINTER_PLACE = "winter place";
  static final String HEALTH_NOTE = "plant health note";

  /** Columns that fit writes begin so: what was assumed before it learnt anything. */
  public static final String PRIOR = SpeciesShape.Entry.PRIOR + " ";

  /** Of these some say how sure that was. */
  public static final String PRIOR_SURE = SpeciesShape.Entry.PRIOR_SURE + " ";

  /** Growth factors above this are a slip. */
  public static final Range FACTOR = new Range(0, 2, true);

  public static final Range SPREAD = Range.of(0, 300);
  public static final Range POT_BOUND = Range.of(0, 1200);

  public static final TableFormat FORMAT =
      TableFormat.of(
              "species",
              Heading.text(SPECIES).means("Name as you use it on the other sheets").needed(),
              Heading.text(LADDER)
                  .choice("ladder")
                  .means("Its ladder of grades, as on the sheet grades")
                  .needed(),
              Heading.text(LIBRARY)
                  .choice("library")
                  .ifEmpty("no")
                  .means(
                      "Whether the library of species gives what you leave empty in this row: yes by its own name, or another name of the library, or deciduous or evergreen; what you fill in wins"),
              Heading.named(USUAL_CONDITION)
                  .means(
                      "How it grows where neither pot nor place says: one of the conditions in the headings \"mm a year ...\". Needed, unless library says yes: then training pot"),
              Heading.number(FIRST_YEAR_LOSS, As.number(Range.FROM_ZERO))
                  .means(
                      "How many in 100 die in the first twelve months here. Needed, unless library says yes"),
              Heading.number(LATER_LOSS, As.number(Range.FROM_ZERO))
                  .means(
                      "How many in 100 die in each year after that. Needed, unless library says yes"),
              Heading.text(KIND)
                  .choice("kind")
                  .ifEmpty("deciduous")
                  .means("Whether it keeps its leaves; decides in which months it grows"),
              Heading.number(GROWTH_SURE, As.sure())
                  .expert()
                  .means(
                      "How sure you are of its growth: 100 is known, 80 a good guess, 50 a book's figure; empty: the setting assumptions sure %, or what the library says of its own"),
              Heading.number(FIRST_YEAR_LOSS_SURE, As.number(Range.FROM_ZERO))
                  .expert()
                  .means("How sure you are of its first-year loss; empty: as growth sure %"),
              Heading.number(LATER_LOSS_SURE, As.number(Range.FROM_ZERO))
                  .expert()
                  .means("How sure you are of its later loss; empty: as growth sure %"),
              Heading.text(HEALTH_NOTE).means("Shown with the jobs"),
              Heading.text(WINTER_PLACE)
                  .choice("place")
                  .expert()
                  .means("Where its pots stand in winter; empty: where they are"),
              Heading.number(MOST, As.number(Range.OVER_ZERO))
                  .expert()
                  .means("Trunk at which it stops; empty: none"),
              Heading.number(VIGOUR_SPREAD, As.number(Range.FROM_ZERO))
                  .expert()
                  .ifEmpty("20")
                  .means("How unlike the plants grow"),
              Heading.number(YEAR_SPREAD, As.number(Range.FROM_ZERO))
                  .expert()
                  .ifEmpty("10")
                  .means("How unlike the years are, for chances"),
              Heading.number(LOT_SPREAD, As.percent(SPREAD))
                  .expert()
                  .means(
                      "How unlike lots grow beyond that, for chances; empty: the setting lot spread %"),
              Heading.number(LOSS_SPREAD, As.percent(SPREAD))
                  .expert()
                  .usual(Species.USUAL_LOSS_SPREAD)
                  .means("How unlike the losses of the years are, for chances"),
              Heading.number(CHECK_1, As.number(FACTOR))
                  .expert()
                  .usual(Species.USUAL_CHECK_FIRST_YEAR)
                  .means("Growth in the year after roots are cut: 1 is full growth"),
              Heading.number(CHECK_2, As.number(FACTOR))
                  .expert()
                  .usual(Species.USUAL_CHECK_SECOND_YEAR)
                  .means("Growth in the year after that"),
              Heading.number(POT_BOUND_MONTHS, As.whole(POT_BOUND))
                  .expert()
                  .usual(Species.USUAL_POT_BOUND_MONTHS)
                  .means("Months of full growth after potting"),
              Heading.number(POT_BOUND_FACTOR, As.number(FACTOR))
                  .expert()
                  .usual(Species.USUAL_POT_BOUND_FACTOR)
                  .means("Growth after those months"))
          .withAny(
              MM_A_YEAR,
              KIND,
              Heading.number("mm a year field", As.number(Range.FROM_ZERO))
                  .means(
                      "Growth of the trunk in a year in the condition field; for another condition add a column with its name"),
              Heading.number("mm a year training pot", As.number(Range.FROM_ZERO))
                  .means("Growth of the trunk in a year in the condition training pot"))
          .withUnoffered(PRIOR, GROWTH_SURE + " ")
          .understanding(Map.of(SpeciesShape.Entry.LEARNT_UNTIL, SpeciesShape.Entry.LEARNT_UNTIL));

  private static final String[] ALONE = {
    SPECIES, LADDER, USUAL_CONDITION, FIRST_YEAR_LOSS, LATER_LOSS
  };

  private static final String[] ENTRY_ALONE = {
    LADDER, USUAL_CONDITION, SpeciesShape.Entry.GROWTH, FIRST_YEAR_LOSS, LATER_LOSS
  };

  /** What a row needs that asks the library for the rest. */
  private static final String[] ASKED = {SPECIES, LADDER};

  private static final String[] ENTRY_ASKED = {LADDER};

  private final Names ladders;
  private final Defined<Place> places;
  private final Settings settings;
  private final LibraryShelf shelf;
  private final Findings findings;
  private final Defined<Species> species;

  private SpeciesTable(
      Names ladders,
      Defined<Place> places,
      Settings settings,
      LibraryShelf shelf,
      Findings findings) {
    this.ladders = ladders;
    this.places = places;
    this.settings = settings;
    this.shelf = shelf;
    this.findings = findings;
    this.species = Defined.none(new Names("species", FORMAT.name()).offering(shelf.rows(ladders)));
  }

  /** The heading that is meant by what stands behind another word, else the same. */
  public static String keyOf(String typed) {
    return Stream.of(FIRST_YEAR_LOSS, LATER_LOSS, VIGOUR_SPREAD, YEAR_SPREAD, LOSS_SPREAD)
        .filter(each -> Texts.headingKey(each).equals(Texts.headingKey(typed)))
        .findFirst()
        .orElse(typed);
  }

  /**
   * Species of the table, then those of species.json.
   *
   * @param conditions growing conditions that pots and places name
   */
  public static Defined<Species> read(
      Optional<Table> table,
      Optional<JsonObject> json,
      Names ladders,
      Defined<Place> places,
      Settings settings,
      Set<String> conditions,
      Findings findings) {
    LibraryShelf shelf = new LibraryShelf(settings.library(), conditions);
    SpeciesTable reader = new SpeciesTable(ladders, places, settings, shelf, findings);
    table.ifPresent(reader::addTable);
    json.ifPresent(reader::addJson);
    if (table.isEmpty() && json.isEmpty()) {
      reader.species.names().leaveOpen();
    }
    return reader.species;
  }

  private void addTable(Table table) {
    if (!table.isReadable()) {
      species.names().leaveOpen();
    }
    for (Row row : table.rows()) {
      String name = species.define(row, SPECIES);
      Lent lent = shelf.lend(row, name);
      row.needs(lent.isAsked() ? ASKED : ALONE);
      Optional<Double> most = row.find(MOST, As.number(Range.OVER_ZERO));
      add(name, row, lent, steadyCurves(row, lent, most), most);
    }
  }

  private static Map<String, Curve> steadyCurves(Row row, Lent lent, Optional<Double> most) {
    Map<String, Curve> curves = new LinkedHashMap<>();
    for (String heading : row.headings()) {
      if (heading.startsWith(MM_A_YEAR)) {
        String condition = heading.substring(MM_A_YEAR.length());
        row.find(heading, As.number(Range.FROM_ZERO))
            .ifPresent(
                mm -> curves.put(condition, new Curve.Steady(mm, lent.mostMm(condition, most))));
      }
    }
    return curves;
  }

  private void addJson(JsonObject file) {
    if (file.isBroken()) {
      species.names().leaveOpen();
      return;
    }
    Field all = file.fields().fields().get(SpeciesShape.SPECIES);
    if (all == null || !(all.value() instanceof Fields entries)) {
      findings.add(TableAdvice.missingValue(file.where().column(SpeciesShape.SPECIES)));
      return;
    }
    entries.fields().forEach((name, entry) -> addEntry(name, entry, file.where()));
  }

  private void addEntry(String typed, Field entry, Where file) {
    Optional<String> named = name(typed, entry, file);
    if (named.isEmpty()) {
      return;
    }
    String name = named.get();
    Where line = new Where(file.file(), "", entry.line(), name);
    if (!species.names().add(name)) {
      findings.add(DefinitionAdvice.speciesTwice(line, name));
      return;
    }
    if (!(entry.value() instanceof Fields fields)) {
      findings.add(TableAdvice.missingValue(line));
      return;
    }
    Row row = JsonShape.row(FORMAT.name(), fields, name, file, findings);
    Lent lent = shelf.lend(row, name);
    row.needs(lent.isAsked() ? ENTRY_ASKED : ENTRY_ALONE);
    add(name, row, lent, Curves.read(row, name, file, findings), Optional.empty());
  }

  private Optional<String> name(String typed, Field entry, Where file) {
    Where line = new Where(file.file(), "", entry.line(), "");
    Cell cell = Cell.ofText(typed);
    if (cell.isEmpty()) {
      findings.add(ValueAdvice.nameless(line, "species"));
      return Optional.empty();
    }
    if (cell.shown().length() > As.LONGEST_NAME) {
      findings.add(ValueAdvice.nameTooLong(line, cell.shown(), As.LONGEST_NAME));
      return Optional.empty();
    }
    return Optional.of(cell.shown());
  }

  private void add(
      String name, Row row, Lent lent, Map<String, Curve> growth, Optional<Double> most) {
    new SpeciesRow(name, row, lent, settings, findings)
        .read(growth, most, ladders, places)
        .ifPresent(made -> species.values().put(name, made));
  }
}
