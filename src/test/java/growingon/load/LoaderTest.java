package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.table.supply.PotTops;
import growingon.nursery.Assumption;
import growingon.nursery.Inputs;
import growingon.nursery.Plan;
import growingon.nursery.Settings;
import growingon.nursery.lot.Form;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.lot.Trunks;
import growingon.nursery.market.HorizonValue;
import growingon.nursery.market.OtherCash;
import growingon.nursery.market.Quality;
import growingon.nursery.route.When;
import growingon.nursery.species.Climate;
import growingon.nursery.species.LibrarySite;
import growingon.nursery.species.Species;
import growingon.nursery.time.Hemisphere;
import growingon.nursery.time.MonthShares;
import growingon.nursery.time.MonthSpan;
import growingon.problem.Loaded;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is read from where, and what holds where a file says nothing. */
class LoaderTest {
  private static final LoadOptions OPTIONS = new LoadOptions(LocalDate.of(2026, 11, 20));

  @TempDir private Path folder;

  @BeforeEach
  void layOut() throws IOException {
    SmallNursery.copyTidy(folder);
  }

  private static Inputs load(Path what) {
    Loaded<Inputs> loaded = Loader.load(what, OPTIONS);
    assertThat(loaded.value()).as("%s", loaded.problems()).isPresent();
    return loaded.value().get();
  }

  private void change(String file, String from, String to) throws IOException {
    Path path = folder.resolve(file);
    String text = Files.readString(path);
    assertThat(text).contains(from);
    Files.writeString(path, text.replace(from, to));
  }

  private Lot lot(String name) {
    return load(folder).scenario().lots().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private Offer offer(String name) {
    return load(folder).offers().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void folderWithAPlan_isThatPlan() {
    Plan plan = load(folder).scenario().plan();

    assertThat(plan.name()).isEqualTo("first plan");
    assertThat(plan.firstMonth()).isEqualTo(YearMonth.of(2026, 11));
    assertThat(plan.seasons()).isEqualTo(4);
    assertThat(plan.take()).isEqualTo(Map.of("spring liners", 200));
    assertThat(plan.seed()).isEqualTo(7);
  }

  @Test
  void folderWithoutAPlan_hasItsNameThisMonthFiveSeasonsAndWhatIsMarked() throws IOException {
    Files.delete(folder.resolve("plan.json"));

    Plan plan = load(folder).scenario().plan();

    assertThat(plan.name()).isEqualTo(folder.getFileName().toString());
    assertThat(plan.firstMonth()).isEqualTo(YearMonth.of(2026, 11));
    assertThat(plan.seasons()).isEqualTo(5);
    assertThat(plan.take()).isEqualTo(Map.of("spring liners", 100));
    assertThat(plan.slices()).isEqualTo(64);
    assertThat(plan.seed()).isEqualTo(1);
    assertThat(plan.horizonValue()).isEqualTo(HorizonValue.NOTHING);
  }

  @Test
  void planFile_findsItsNurseryFromItsOwnFolder() throws IOException {
    Path plans = Files.createDirectory(folder.resolve("plans"));
    Path file = plans.resolve("quick look.json");
    Files.writeString(
        file,
        "{\"nursery\": \"..\", \"first month\": \"2026-12\", \"report folder\": \"out\","
            + " \"take\": {}}");

    Inputs inputs = load(file);

    assertThat(inputs.scenario().plan().name()).isEqualTo("quick look");
    assertThat(inputs.scenario().plan().firstMonth()).isEqualTo(YearMonth.of(2026, 12));
    assertThat(inputs.scenario().plan().take()).isEmpty();
    assertThat(inputs.scenario().lots()).hasSize(3);
    assertThat(inputs.reportFolder()).contains(plans.resolve("out").toAbsolutePath().normalize());
  }

  @Test
  void nurseryOfOffersAlone_isRead() throws IOException {
    Files.delete(folder.resolve("stock.csv"));

    Inputs inputs = load(folder);

    assertThat(SmallNursery.problems(folder)).isEmpty();
    assertThat(inputs.scenario().lots()).extracting(Lot::name).containsExactly("spring liners");
    assertThat(inputs.stockRows()).isZero();
  }

  @Test
  void routeThatSortsTwice_isRead() throws IOException {
    change(
        "routes.csv",
        "pot on,March year 2,April,9,training pot,light mix,40,,Yard,100,,2,,,",
        "pot on,March year 2,April,9,training pot,light mix,40,,Yard,100,,2,,yes,");

    assertThat(SmallNursery.problems(folder)).isEmpty();
  }

  @Test
  void plansBesideTheTables_areNotReportedAsNotRead() throws IOException {
    Path run = folder.resolve("with less.json");
    Files.writeString(run, "{\"first month\": \"2026-11\", \"take\": {}}");
    Files.writeString(folder.resolve("other.json"), "{\"seasons\": 3}");

    assertThat(SmallNursery.problems(run)).isEmpty();
    assertThat(SmallNursery.problems(folder)).isEmpty();
  }

  @Test
  void jsonThatIsNoPlan_isReportedAsNotRead() throws IOException {
    Files.writeString(folder.resolve("customers.json"), "{\"Anna\": 3}");

    assertThat(SmallNursery.problems(folder))
        .containsExactly("notice: customers.json: this file is not read");
  }

  @Test
  void planFileWithoutTake_takesTheOffersMarked() throws IOException {
    Path file = folder.resolve("other.json");
    Files.writeString(file, "{\"first month\": \"2026-12\"}");

    assertThat(load(file).scenario().plan().take()).isEqualTo(Map.of("spring liners", 100));
  }

  @Test
  void planOfANurseryThatIsNotThere_saysWhereItWasSought() throws IOException {
    Path file = folder.resolve("other.json");
    Files.writeString(file, "{\"nursery\": \"nowhere\"}");

    assertThat(SmallNursery.problems(file))
        .containsExactly(
            "error: other.json, line 1, key nursery: there is no such nursery folder ("
                + folder.toAbsolutePath().resolve("nowhere")
                + "); the path is seen from the plan's own folder");
  }

  @Test
  void whatIsNotThere_isSaid() {
    assertThat(SmallNursery.problems(Path.of("no-such-folder")))
        .containsExactly(
            "error: no-such-folder: there is no such file or folder; give a plan.json, a nursery"
                + " folder or one .xlsx workbook");
  }

  @Test
  void singleTable_isAList_orNoPlan() {
    assertThat(SmallNursery.problems(folder.resolve("stock.csv"))).isEmpty();
    assertThat(SmallNursery.problems(folder.resolve("routes.csv")))
        .containsExactly(
            "error: routes.csv: no sheet has among its first 60 rows one of headings with a plant's name and one more"
                + " (routes.csv); write headings above the columns, such as plant, size, number");
    assertThat(SmallNursery.problems(folder.resolve("nursery.json")))
        .containsExactly(
            "error: nursery.json: this file is part of a nursery, not a plan; give its folder");
  }

  @Test
  void folderWithALoneTable_lacksWhatAPlanNeeds(@TempDir Path empty) throws IOException {
    String name = empty.getFileName().toString();
    Files.copy(folder.resolve("care.csv"), empty.resolve("care.csv"));

    assertThat(SmallNursery.problems(empty))
        .containsExactly(
            "error: "
                + name
                + ": there is neither a table stock nor a table offers, so there are no lots to"
                + " plan; add one of them",
            "error: "
                + name
                + ": there is no table routes; add a sheet of that name to a workbook"
                + " of the folder, or routes.csv",
            "error: "
                + name
                + ": there is no table grades; add a sheet of that name to a workbook"
                + " of the folder, or grades.csv",
            "error: "
                + name
                + ": there is neither a table species nor species.json; add one of"
                + " them",
            "error: "
                + name
                + ": the settings lack currency, hourly rate and discount rate % a year;"
                + " add to nursery.json or to a table settings what is missing",
            "notice: there is no table places, so the plan says nothing about space, and places"
                + " named elsewhere do not count",
            "warning: there is no demand, so nothing is sold; add a table demand with prices");
  }

  @Test
  void oneWorkbook_isAWholeNursery(@TempDir Path elsewhere) throws IOException {
    Path file = elsewhere.resolve("My nursery.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Books.row(book.createSheet("settings"), 0, 0, "name", "value");
      Books.row(book.getSheet("settings"), 1, 0, "currency", "EUR");
      Books.row(book.getSheet("settings"), 2, 0, "hourly rate", 20);
      Books.row(book.getSheet("settings"), 3, 0, "discount rate % a year", 3);
      Books.row(
          book.createSheet("species"),
          0,
          0,
          "species",
          "ladder",
          "usual condition",
          "mm a year open bed",
          "first-year loss %",
          "later loss %");
      Books.row(book.getSheet("species"), 1, 0, "Larch", "all", "open bed", 4, 5, 2);
      Books.row(book.createSheet("grades"), 0, 0, "ladder", "grade", "rank", "least trunk mm");
      Books.row(book.getSheet("grades"), 1, 0, "all", "good", 1, 20);
      Books.row(book.createSheet("routes"), 0, 0, "route", "step", "when", "minutes");
      Books.row(book.getSheet("routes"), 1, 0, "plain", "prune", "every year in July", 3);
      Books.row(
          book.createSheet("stock"),
          0,
          0,
          "lot",
          "species",
          "form",
          "quantity",
          "arrived",
          "trunk mm",
          "route",
          "place");
      Books.row(
          book.getSheet("stock"),
          1,
          0,
          "larches",
          "larch",
          "seedling",
          80,
          "2025-04",
          7,
          "plain",
          "behind the shed");
      Books.save(book, file);
    }

    Inputs inputs = load(file);

    assertThat(inputs.scenario().plan().name()).isEqualTo("My nursery");
    assertThat(inputs.scenario().nursery().settings().name()).isEqualTo("My nursery");
    assertThat(inputs.scenario().nursery().places()).isEmpty();
    assertThat(inputs.scenario().lots()).singleElement().extracting(Lot::quantity).isEqualTo(80);
    assertThat(inputs.scenario().lots().get(0).standing().place()).isEmpty();
    assertThat(SmallNursery.problems(file))
        .containsExactly(
            "notice: there is no table places, so the plan says nothing about space, and places"
                + " named elsewhere do not count",
            "warning: there is no demand, so nothing is sold; add a table demand with prices");
  }

  @Test
  void settings_whereNothingIsSaid_haveTheirDefaults() throws IOException {
    Files.delete(folder.resolve("hours.csv"));
    Files.writeString(
        folder.resolve("nursery.json"),
        "{\"currency\": \"CHF\", \"hourly rate\": 30, \"discount rate % a year\": 2}");

    Settings settings = load(folder).scenario().nursery().settings();

    assertThat(settings)
        .isEqualTo(
            Settings.named(folder.getFileName().toString())
                .hemisphere(Hemisphere.NORTH)
                .seasonStart(Month.OCTOBER)
                .currency("CHF")
                .hourlyRate(30)
                .discountRate(0.02)
                .wasteShare(0.05)
                .orderLeadMonths(1)
                .winter(new MonthSpan(11, 3))
                .winterMoveMinutes(1)
                .secondPersonMinutes(2)
                .girthBaseFactor(1.25)
                .labourSpread(0.1)
                .yearEnd(Month.SEPTEMBER)
                .lotSpread(0.08)
                .assumptionsSure(0.8)
                .library(new LibrarySite(Climate.TEMPERATE, 1, 0, Map.of()))
                .build());
  }

  @Test
  void southernNursery_hasTheYearTurnedRound() throws IOException {
    change("nursery.json", "\"currency\"", "\"hemisphere\": \"south\", \"currency\"");

    Inputs inputs = load(folder);
    Settings settings = inputs.scenario().nursery().settings();
    Species rowan = inputs.scenario().nursery().species().get("Rowan");

    assertThat(settings.seasonStart()).isEqualTo(Month.APRIL);
    assertThat(settings.winter()).isEqualTo(new MonthSpan(5, 9));
    assertThat(rowan.growthMonths())
        .isEqualTo(MonthShares.of(0, 0, 3, 12, 22, 22, 16, 12, 8, 4, 1, 0).mirrored());
  }

  @Test
  void seasonsFromJanuary_areWrittenWithOneYear() throws IOException {
    change("nursery.json", "\"currency\"", "\"season start month\": \"January\", \"currency\"");
    change("demand.csv", "2027/28", "2028");

    assertThat(load(folder).scenario().nursery().demand().get(1).season()).contains("2028");
  }

  @Test
  void hoursAWeek_areSpreadOverTheMonthsByTheirDays() throws IOException {
    Files.delete(folder.resolve("hours.csv"));
    change("nursery.json", "\"hourly rate\"", "\"hours a week\": 70, \"hourly rate\"");

    List<Double> hours = load(folder).scenario().nursery().settings().hoursAvailable().get();

    assertThat(hours.get(0)).isEqualTo(310);
    assertThat(hours.get(1)).isEqualTo(282.5);
    assertThat(hours.get(3)).isEqualTo(300);
  }

  @Test
  void qualities_withoutARow_haveTheirDefaults() {
    var qualities = load(folder).scenario().nursery().qualities();

    assertThat(qualities.get(Quality.FIRST).priceShare()).isEqualTo(1);
    assertThat(qualities.get(Quality.SECOND).priceShare()).isEqualTo(0.6);
    assertThat(qualities.get(Quality.SECOND).potted()).isTrue();
    assertThat(qualities.get(Quality.THIRD).priceShare()).isEqualTo(0.15);
    assertThat(qualities.get(Quality.THIRD).potted()).isFalse();
  }

  @Test
  void stockRow_whereNothingIsSaid_hasItsDefaults() {
    Lot yews = lot("Yews");

    assertThat(yews.counted()).isEqualTo(YearMonth.of(2026, 11));
    assertThat(yews.quality().first()).isEqualTo(1);
    assertThat(yews.quality().sorted()).isTrue();
    assertThat(yews.potting().pot()).isEmpty();
    assertThat(yews.potting().potted()).isEmpty();
    assertThat(yews.lastStep()).isEmpty();
    assertThat(yews.kept()).isZero();
    assertThat(yews.apartMonths()).isZero();
    assertThat(yews.standing().heightLeftMm()).isEqualTo(600);
  }

  @Test
  void notBefore_isHalfAYearAfterArrivalForPlantsLiftedFromTheGround() {
    assertThat(lot("Yews").form()).isEqualTo(Form.BARE_ROOT);
    assertThat(lot("Yews").notBefore()).isEqualTo(YearMonth.of(2025, 5));
    assertThat(lot("Old rowans").notBefore()).isEqualTo(lot("Old rowans").arrived());
    assertThat(offer("spring liners").lot().notBefore()).isEqualTo(YearMonth.of(2027, 8));
  }

  @Test
  void girthClass_becomesATrunkClass() {
    Trunks.SizeClass trunks = (Trunks.SizeClass) lot("Old rowans").trunks();

    // girth 10 to 12 cm: 10 x cm / pi x 1.25
    assertThat(trunks.fromMm()).isCloseTo(39.789, Offset.offset(0.001));
    assertThat(trunks.toMm()).isCloseTo(47.746, Offset.offset(0.001));
  }

  @Test
  void holdGradeWithoutAShare_holdsAll() {
    assertThat(lot("Old rowans").hold().get().share()).isEqualTo(1);
  }

  @Test
  void offerTaken_costsThePriceOfItsBreakInPlanCurrency() throws IOException {
    change("plan.json", "\"spring liners\": 200", "\"spring liners\": 200, \"BIG yews\": 10");

    assertThat(lot("spring liners").purchase().get().unitPrice()).isEqualTo(2.10);
    assertThat(lot("big yews").purchase().get().unitPrice())
        .isCloseTo(55 * 1.05, Offset.offset(1e-9));
    assertThat(lot("big yews").purchase().get().carriage()).isEqualTo(630);
    assertThat(load(folder).scenario().lots())
        .extracting(Lot::name)
        .containsExactly("12", "Yews", "Old rowans", "spring liners", "big yews");
  }

  @Test
  void priceBreak_holdsFromItsLeastUpwards() throws IOException {
    change("offers.csv", ",50,50,500,", ",50,1,500,");

    assertThat(offer("spring liners").unitPrice(199)).isEqualTo(2.40);
    assertThat(offer("spring liners").unitPrice(200)).isEqualTo(2.10);
  }

  @Test
  void draws_areTwoHundredWhereThePlanSaysNone() throws IOException {
    assertThat(load(folder).scenario().plan().draws()).isEqualTo(200);

    change("offers.csv", "80,15,70,", "80,15,,");

    assertThat(load(folder).scenario().plan().draws()).isEqualTo(200);
  }

  /** Lots times draws are at most 100,000, and there are never fewer than 100. */
  @Test
  void draws_ofVeryManyLots_areFewer() {
    assertThat(Plan.usualDraws(0)).isEqualTo(200);
    assertThat(Plan.usualDraws(500)).isEqualTo(200);
    assertThat(Plan.usualDraws(800)).isEqualTo(125);
    assertThat(Plan.usualDraws(5000)).isEqualTo(100);
  }

  @Test
  void potOfWhichOnlyTheLitresAreKnown_hasATopFromTheTable() {
    assertThat(load(folder).scenario().nursery().pots().get("big tub").topMm()).isEqualTo(400);
    assertThat(PotTops.topMm(2.17)).isEqualTo(170);
    assertThat(PotTops.topMm(2.6)).isBetween(170.0, 190.0);
    assertThat(PotTops.topMm(2000)).isCloseTo(1600, Offset.offset(1e-6));
  }

  @Test
  void routes_keepEveryWayToSayWhen() {
    assertThat(load(folder).scenario().nursery().routes().values())
        .flatExtracting(route -> route.steps().stream().map(step -> step.when()).toList())
        .containsExactly(
            new When.Arrival(),
            new When.After(3, "pot up"),
            new When.InYear(Month.MARCH, 2),
            new When.Every(3, Month.MARCH),
            new When.InYear(Month.MARCH, 1),
            new When.Once(Month.MARCH, 40));
  }

  @Test
  void otherCash_isOnceOrEveryMonthOrEverySeason() {
    assertThat(load(folder).scenario().nursery().otherCash())
        .extracting(OtherCash::every)
        .containsExactly(OtherCash.Every.MONTH, OtherCash.Every.SEASON, OtherCash.Every.ONCE);
  }

  @Test
  void everyValueUsed_isListedWithItsSource() {
    List<Assumption> assumptions = load(folder).assumptions();

    assertThat(assumptions)
        .contains(
            new Assumption("stock", "12", "trunk mm", "14.5", "mm", "stock.csv, row 2"),
            new Assumption("stock", "12", "unit cost", "3.25", "EUR", "stock.csv, row 2"),
            new Assumption("stock", "Yews", "height left mm", "600", "mm", "default"),
            new Assumption("species", "Rowan", "loss spread %", "25", "%", "default"),
            new Assumption("species", "Yew", "later loss %", "1.5", "%", "species.json, line 14"),
            new Assumption("species", "Yew, field", "g", "4", "", "species.json, line 10"),
            new Assumption(
                "settings", "", "hours paid in cash %", "60", "%", "nursery.json, line 6"),
            new Assumption("settings", "", "waste %", "5", "%", "default"),
            new Assumption("plan", "take", "spring liners", "200", "plants", "plan.json, line 5"),
            new Assumption("offers", "big yews", "carriage", "600", "CHF", "offers.csv, row 4"),
            new Assumption("qualities", "second", "price %", "60", "%", "default"));
  }

  /** Though the exchange rates are told in it too. */
  @Test
  void styleOfNumbers_isListedOnce() throws IOException {
    SmallNursery.change(
        folder.resolve("nursery.json"),
        "\"currency\"",
        "\"number style\": \"1.234,5\", \"currency\"");

    assertThat(load(folder).assumptions())
        .extracting(Assumption::what)
        .containsOnlyOnce("number style");
  }

  @Test
  void repeatedReading_givesTheSame() {
    Loader.Reading first = SmallNursery.read(folder);
    Loader.Reading second = SmallNursery.read(folder);

    assertThat(second.inputs()).isEqualTo(first.inputs());
    assertThat(second.findings().problems()).isEqualTo(first.findings().problems());
  }
}
