package growingon.load.quick;

import growingon.load.cell.Amount;
import growingon.load.cell.Currency;
import growingon.load.cell.Range;
import growingon.load.row.As;
import growingon.load.row.DormantSeason;
import growingon.load.row.Quantities;
import growingon.load.row.Row;
import growingon.load.settings.PlanReader;
import growingon.load.table.lot.LotCells;
import growingon.load.table.species.SpeciesTable;
import growingon.nursery.library.Figures;
import growingon.nursery.library.Library;
import growingon.nursery.library.Match;
import growingon.nursery.library.Taxon;
import growingon.nursery.lot.Form;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.lot.Trunks;
import growingon.nursery.species.FromLibrary;
import growingon.nursery.species.Habit;
import growingon.nursery.species.LibrarySite;
import growingon.nursery.species.Sure;
import growingon.nursery.time.Hemisphere;
import growingon.problem.advice.FileAdvice;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Every value of a quick sheet, typed or usual. All are read before anything is made of them, so
 * that a line that could not be read never gets into a species or a pot.
 */
final class QuickValues {
  private static final Range FREE = Range.FROM_ZERO;

  final String species;
  final int plants;
  final String currency;
  final double price;
  final double carriage;
  final YearMonth arrival;
  final Trunks trunks;
  final QualityShares quality;
  final double litres;
  final double soldAtMm;
  final double sellingPrice;
  final Optional<Double> freeM2;
  final Habit habit;
  final Hemisphere hemisphere;
  final Form form;
  final double girthFactor;
  final Growth growth;
  final Working working;
  final int seasons;

  /** How sure a growth is that nobody typed and no library has. */
  private static final double NOT_SURE = 0.5;

  /** Smaller pots are shallow ones to the library of species. */
  private static final double LITRES_OF_A_TRAINING_POT = 5;

  private final Row row;

  /** How they grow and die. */
  record Growth(
      double mmAYear,
      double sure,
      Optional<FromLibrary> fromLibrary,
      double check1,
      double check2,
      int potBoundMonths,
      double potBoundFactor,
      double vigourSpread,
      double firstYearLoss,
      double laterLoss) {}

  /** What is done with them, and what it costs. */
  record Working(
      double secondPriceShare,
      double pottingMinutes,
      double yearlyMinutes,
      double hourlyRate,
      double potPrice,
      double ballShare,
      double gritShare,
      double gritPrice,
      double barkPrice,
      double gapMm,
      double m2Cost,
      double discount) {}

  /** Reads every line; the row has failed if one of them cannot be read. */
  QuickValues(Row row) {
    this.row = row;
    checkFilled(row);
    species = row.get(QuickLines.SPECIES, As.NAME);
    plants = row.get(QuickLines.HOW_MANY, Quantities.plants(Quantities.SOME));
    currency = currency();
    price = row.get(QuickLines.PRICE, money());
    carriage = row.get(QuickLines.CARRIAGE, As.money(currency, Range.FROM_ZERO));
    arrival = row.get(QuickLines.ARRIVAL, As.MONTH);
    girthFactor = number(QuickLines.GIRTH_FACTOR, Range.of(0.1, 10));
    trunks =
        row.get(
            QuickLines.TRUNK,
            QuickCells.trunk(percent(QuickLines.TRUNK_SPREAD, LotCells.SPREADS), girthFactor));
    double firstsOfUsable = percent(QuickLines.FIRSTS_OF_USABLE, Range.SHARE);
    quality = row.get(QuickLines.QUALITY, QuickCells.quality(firstsOfUsable));
    litres = row.get(QuickLines.POT_LITRES, As.number(Range.POT));
    soldAtMm = row.get(QuickLines.SOLD_AT, As.number(Range.TRUNK));
    sellingPrice = row.get(QuickLines.SELLING_PRICE, money());
    freeM2 = row.find(QuickLines.FREE_M2, As.number(Range.OVER_ZERO));
    habit = row.get(QuickLines.KIND, As.word(Habit.class), QuickLines.habit(species));
    hemisphere = row.get(QuickLines.HEMISPHERE, As.word(Hemisphere.class), Hemisphere.NORTH);
    form = form();
    growth = growth();
    working = working();
    seasons = whole(QuickLines.YEARS, PlanReader.SEASONS);
  }

  /** Says in one sentence which of the ten are empty. */
  private static void checkFilled(Row row) {
    List<String> empty =
        QuickLines.TEN.stream().map(QuickLine::name).filter(line -> !row.has(line)).toList();
    row.missesQuietly(empty.toArray(String[]::new));
    if (empty.size() == 1) {
      row.fail(empty.get(0), where -> FileAdvice.quickLinesEmpty(where, empty));
    } else if (!empty.isEmpty()) {
      row.fail(where -> FileAdvice.quickLinesEmpty(where, empty));
    }
  }

  /** As stated, else as a sign beside a price says, else the usual one. */
  private String currency() {
    String usual =
        Stream.of(QuickLines.PRICE, QuickLines.CARRIAGE, QuickLines.SELLING_PRICE)
            .flatMap(line -> Amount.mark(row.cell(line).shown()).stream())
            .flatMap(mark -> Currency.code(mark).stream())
            .findFirst()
            .orElse(QuickLines.get(QuickLines.CURRENCY).usual());
    return row.get(QuickLines.CURRENCY, As.currency(), usual);
  }

  private Form form() {
    boolean dormant = DormantSeason.contains(arrival.getMonth(), hemisphere);
    Form read =
        row.get(QuickLines.FORM, As.word(Form.class), dormant ? Form.ROOT_BALL : Form.CONTAINER);
    if (!row.isFailed()) {
      LotCells.checkArrival(row, QuickLines.ARRIVAL, read, arrival, hemisphere);
    }
    return read;
  }

  private Growth growth() {
    Optional<Match.One> match = row.has(QuickLines.GROWTH) ? Optional.empty() : inLibrary();
    Optional<Figures> lent = match.map(each -> figures(each.taxon()));
    return new Growth(
        row.get(
            QuickLines.GROWTH,
            As.number(FREE),
            lent.map(each -> Double.parseDouble(Figures.shown(each.mmAYear())))
                .orElse(usualGrowth(habit))),
        row.has(QuickLines.GROWTH) ? Sure.USUAL : lent.map(Figures::growthSure).orElse(NOT_SURE),
        match.map(each -> fromLibrary(each.taxon(), lent.get())),
        number(QuickLines.CHECK_1, SpeciesTable.FACTOR),
        number(QuickLines.CHECK_2, SpeciesTable.FACTOR),
        whole(QuickLines.POT_BOUND_MONTHS, SpeciesTable.POT_BOUND),
        number(QuickLines.POT_BOUND_FACTOR, SpeciesTable.FACTOR),
        percent(QuickLines.VIGOUR_SPREAD, SpeciesTable.SPREAD),
        percent(QuickLines.FIRST_YEAR_LOSS, Range.SHARE),
        percent(QuickLines.LATER_LOSS, Range.SHARE));
  }

  private Optional<Match.One> inLibrary() {
    return Library.shipped().find(species) instanceof Match.One one
        ? Optional.of(one)
        : Optional.empty();
  }

  private Figures figures(Taxon taxon) {
    String condition = litres < LITRES_OF_A_TRAINING_POT ? "shallow pot" : Library.TRAINING_POT;
    return taxon.in(Library.shipped().condition(condition).orElseThrow(), LibrarySite.USUAL);
  }

  private static FromLibrary fromLibrary(Taxon taxon, Figures figures) {
    return new FromLibrary(
        taxon.shown(),
        Set.of(QuickScenario.CONDITION),
        figures.growthSources().stream().sorted().toList());
  }

  private Working working() {
    return new Working(
        percent(QuickLines.SECOND_PRICE, Range.SHARE),
        number(QuickLines.POTTING, FREE),
        number(QuickLines.YEARLY, FREE),
        money(QuickLines.HOURLY_RATE),
        row.get(QuickLines.POT_PRICE, money(), QuickLines.POT_PRICE_A_LITRE * litres),
        row.get(QuickLines.BALL, As.share(), form == Form.BARE_ROOT ? 0.0 : QuickLines.BALL_SHARE),
        percent(QuickLines.GRIT, Range.SHARE),
        money(QuickLines.GRIT_PRICE),
        money(QuickLines.BARK_PRICE),
        number(QuickLines.GAP, FREE),
        money(QuickLines.M2_COST),
        percent(QuickLines.DISCOUNT, Range.SHARE));
  }

  private static double usualGrowth(Habit habit) {
    return habit == Habit.DECIDUOUS
        ? QuickLines.GROWTH_DECIDUOUS_MM
        : QuickLines.GROWTH_EVERGREEN_MM;
  }

  private As<Double> money() {
    return As.money(currency, Range.PRICE);
  }

  private double money(String line) {
    return row.get(line, money(), usual(line));
  }

  private double number(String line, Range range) {
    return row.get(line, As.number(range), usual(line));
  }

  private int whole(String line, Range range) {
    return row.get(line, As.whole(range), (int) usual(line));
  }

  private double percent(String line, Range range) {
    return row.get(line, As.percent(range), usual(line) / 100);
  }

  private static double usual(String line) {
    return Double.parseDouble(QuickLines.get(line).usual());
  }

  /** Whether a usual value had any effect: some are for one way to fill in a cell only. */
  boolean matters(String line) {
    return switch (line) {
      case QuickLines.TRUNK_SPREAD -> trunks instanceof Trunks.Measured;
      case QuickLines.GIRTH_FACTOR -> QuickCells.isGirth(row.cell(QuickLines.TRUNK), row.style());
      case QuickLines.FIRSTS_OF_USABLE -> QuickCells.isOneNumber(row.cell(QuickLines.QUALITY));
      default -> true;
    };
  }
}
