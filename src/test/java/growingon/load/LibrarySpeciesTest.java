package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Assumption;
import growingon.nursery.Assumption.Grounds;
import growingon.nursery.Inputs;
import growingon.nursery.Settings;
import growingon.nursery.species.Climate;
import growingon.nursery.species.Curve;
import growingon.nursery.species.FromLibrary;
import growingon.nursery.species.Habit;
import growingon.nursery.species.LibrarySite;
import growingon.nursery.species.Species;
import growingon.problem.Loaded;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Species that take from the library what their row does not say. */
class LibrarySpeciesTest {
  private static final LoadOptions OPTIONS = new LoadOptions(LocalDate.of(2026, 11, 20));
  private static final String SETTINGS_END = "\"lowest cash allowed\": -2000,";

  @TempDir private Path folder;

  /** The tidy nursery, whose Rowan has nothing but its ladder and the library. */
  @BeforeEach
  void layOut() throws IOException {
    SmallNursery.copyTidy(folder);
    species("species,ladder,library", "Rowan,small trees,yes");
    settings("\"library conditions\": { \"Liner pot\": \"small pot\" }");
  }

  private void species(String... rows) throws IOException {
    Files.write(folder.resolve("species.csv"), List.of(rows));
  }

  /** Adds settings to those that are there. */
  private void settings(String... keys) throws IOException {
    Path file = folder.resolve("nursery.json");
    String all = SETTINGS_END + "\n  " + String.join(",\n  ", keys) + ",";
    Files.writeString(file, Files.readString(file).replace(SETTINGS_END, all));
  }

  private void change(String file, String from, String to) throws IOException {
    Path path = folder.resolve(file);
    String text = Files.readString(path);
    assertThat(text).contains(from);
    Files.writeString(path, text.replace(from, to));
  }

  private Inputs inputs() {
    Loaded<Inputs> loaded = Loader.load(folder, OPTIONS);
    assertThat(loaded.value()).as("%s", loaded.problems()).isPresent();
    return loaded.value().get();
  }

  private Species read(String name) {
    return inputs().scenario().nursery().species().get(name);
  }

  private List<String> problems() {
    return SmallNursery.problems(folder);
  }

  private List<Assumption> assumed(String subject) {
    return inputs().assumptions().stream()
        .filter(each -> each.table().equals("species") && each.subject().equals(subject))
        .toList();
  }

  private Assumption assumed(String subject, String what) {
    return assumed(subject).stream()
        .filter(each -> each.what().equals(what))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void row_withItsLadderAlone_isTheLibrarys() {
    Species rowan = read("Rowan");

    assertThat(problems()).isEmpty();
    assertThat(rowan.habit()).isEqualTo(Habit.DECIDUOUS);
    assertThat(rowan.usualCondition()).isEqualTo("training pot");
    assertThat(rowan.growth())
        .isEqualTo(
            Map.of(
                "field", new Curve.Steady(7.6, 500),
                "training pot", new Curve.Steady(7.6 * 0.35, 150),
                "liner pot", new Curve.Steady(7.6 * 0.28, 120)));
    assertThat(rowan.vigourSpread()).isEqualTo(0.24);
    assertThat(rowan.yearSpread()).isEqualTo(0.14);
    assertThat(rowan.firstYearLoss()).isEqualTo(0.1);
    assertThat(rowan.laterLoss()).isEqualTo(0.022, within(1e-12));
    assertThat(rowan.checkFirstYear()).isEqualTo(0.6);
    assertThat(rowan.healthNote()).isEqualTo("fire blight host");
    assertThat(rowan.sure().growthIn("training pot"))
        .isEqualTo(1 / (1 + 4 * (0.09 + 0.31 * 0.31 + 0.09)), within(1e-12));
    assertThat(rowan.sure().firstYearLoss()).isEqualTo(0.6);
    assertThat(rowan.sure().laterLoss()).isEqualTo(0.9);
    assertThat(rowan.fromLibrary())
        .contains(
            new FromLibrary(
                "Rowan (Sorbus aucuparia)",
                Set.of("field", "training pot", "liner pot"),
                List.of("S02", "S12", "S13", "S14", "S15", "S16", "S17", "S18", "S19", "S20")));
  }

  @Test
  void values_ofTheLibrary_areListedWithWhatTheyRestOn() {
    assertThat(assumed("Rowan", "library"))
        .isEqualTo(
            new Assumption(
                "species",
                "Rowan",
                "library",
                "yes: Rowan (Sorbus aucuparia)",
                "",
                "species.csv, row 2"));
    assertThat(assumed("Rowan"))
        .contains(
            lent(
                "mm a year training pot",
                "2.7",
                "mm",
                "library S02 S14",
                "1.4 to 5.2",
                "measured, from field × 0.35; no measurement in training pots found"),
            lent("mm a year field", "7.6", "mm", "library S02", "4.0 to 14.5", "measured"),
            lent("growth sure % training pot", "48", "%", "library", "", ""),
            lent("most mm training pot", "150", "mm", "library", "", ""),
            lent("kind", "deciduous", "", "library", "", ""),
            lent(
                "vigour spread %",
                "24", "%", "library", "", "usually raised as seedling; common practice"),
            lent(
                "first-year loss %",
                "10",
                "%",
                "library S15 S16 S17 S18 S19 S20",
                "",
                "in a training pot; middling to transplant, common practice"),
            lent("first-year loss sure %", "60", "%", "library", "", ""),
            lent("later loss sure %", "90", "%", "library", "", ""),
            lent("plant health note", "fire blight host", "", "library", "", "common practice"),
            lent("transplanting", "middling", "", "library", "", "common practice"),
            lent("winter protection", "no", "", "library", "", "common practice"),
            new Assumption("species", "Rowan", "usual condition", "training pot", "", "default"));
  }

  private static Assumption lent(
      String what, String value, String unit, String source, String range, String basis) {
    return new Assumption(
        "species", "Rowan", what, value, unit, source, Optional.of(new Grounds(range, basis)));
  }

  // A typed cell wins, each by itself

  private record Typed(String heading, String cell, java.util.function.Function<Species, ?> what) {}

  @TestFactory
  Stream<DynamicTest> cell_thatIsTyped_winsAndLeavesAllOthersToTheLibrary() {
    List<Typed> typed =
        List.of(
            new Typed("kind", "evergreen", Species::habit),
            new Typed("usual condition", "field", Species::usualCondition),
            new Typed("mm a year field", "11", each -> each.growth().get("field")),
            new Typed("mm a year training pot", "5", each -> each.growth().get("training pot")),
            new Typed("mm a year liner pot", "4", each -> each.growth().get("liner pot")),
            new Typed("vigour spread %", "31", Species::vigourSpread),
            new Typed("year spread %", "9", Species::yearSpread),
            new Typed("first-year loss %", "3", Species::firstYearLoss),
            new Typed("later loss %", "4", Species::laterLoss),
            new Typed("first-year loss sure %", "71", each -> each.sure().firstYearLoss()),
            new Typed("later loss sure %", "72", each -> each.sure().laterLoss()),
            new Typed("plant health note", "none known", Species::healthNote));
    Species lent = read("Rowan");
    return typed.stream()
        .map(
            cell ->
                DynamicTest.dynamicTest(cell.heading(), () -> typedCellWins(cell, typed, lent)));
  }

  private void typedCellWins(Typed cell, List<Typed> all, Species lent) throws IOException {
    species("species,ladder,library," + cell.heading(), "Rowan,small trees,yes," + cell.cell());
    Species own = read("Rowan");

    assertThat(cell.what().apply(own)).isNotEqualTo(cell.what().apply(lent));
    // Losses are those of the usual condition, and a typed loss is as sure as the settings say.
    boolean moves = cell.heading().equals("usual condition");
    for (Typed other : all) {
      boolean follows =
          (moves && other.heading().contains("loss %"))
              || other.heading().equals(cell.heading().replace("loss %", "loss sure %"));
      if (other != cell && !follows) {
        assertThat(other.what().apply(own)).as(other.heading()).isEqualTo(other.what().apply(lent));
      }
    }
  }

  @Test
  void mostMm_typed_holdsInEveryCondition() throws IOException {
    species("species,ladder,library,most mm", "Rowan,small trees,yes,77");

    assertThat(read("Rowan").growth().values())
        .extracting(curve -> ((Curve.Steady) curve).mostMm())
        .containsOnly(77.0);
  }

  @Test
  void growth_typedInOneCondition_isTheNurserysThereAndAsSureAsTheSettingsSay() throws IOException {
    species("species,ladder,library,mm a year training pot", "Rowan,small trees,yes,5");
    settings("\"assumptions sure %\": 70");

    Species rowan = read("Rowan");

    assertThat(rowan.growth().get("training pot")).isEqualTo(new Curve.Steady(5, 150));
    assertThat(rowan.sure().growthIn("training pot")).isEqualTo(0.7);
    assertThat(rowan.sure().growthIn("field")).isEqualTo(1 / (1 + 4 * 0.2561), within(1e-12));
    assertThat(rowan.fromLibrary().orElseThrow().conditions())
        .containsExactlyInAnyOrder("field", "liner pot");
  }

  @Test
  void growthSure_typed_holdsForTheLibrarysGrowthToo() throws IOException {
    species("species,ladder,library,growth sure %", "Rowan,small trees,yes,65 %");

    assertThat(read("Rowan").sure().growth().values()).containsOnly(0.65);
  }

  @Test
  void allCells_typed_leaveNothingToTheLibrary() throws IOException {
    species(
        "species,ladder,library,mm a year field,mm a year training pot,mm a year liner pot,"
            + "first-year loss %,later loss %",
        "Rowan,small trees,yes,8,3.5,5,6,2");

    FromLibrary from = read("Rowan").fromLibrary().orElseThrow();

    assertThat(from.conditions()).isEmpty();
    assertThat(from.sources()).isEmpty();
  }

  // Names

  @Test
  void libraryName_inAnotherRow_isTaken() throws IOException {
    species("species,ladder,library", "Rowan,small trees,Sorbus aucuparia");

    assertThat(problems()).isEmpty();
    assertThat(read("Rowan").fromLibrary().orElseThrow().row())
        .isEqualTo("Rowan (Sorbus aucuparia)");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "no", "No", "false"})
  void library_emptyOrNo_isNotAsked(String cell) throws IOException {
    species(
        "species,ladder,library,usual condition,first-year loss %,later loss %",
        "Rowan,small trees," + cell + ",,,");

    assertThat(problems())
        .containsExactly(
            "error: species.csv, row 2: this row lacks usual condition, first-year loss % and later"
                + " loss % (Rowan); complete it, or move totals and remarks out of the table");
  }

  @Test
  void cultivar_isAClone_andSaid() throws IOException {
    rename("Sorbus aucuparia 'Fastigiata'");

    assertThat(problems())
        .containsExactly(
            "notice: species.csv, row 2, column library: the library leaves out the cultivar and"
                + " takes Rowan (Sorbus aucuparia) (Sorbus aucuparia 'Fastigiata'); type your own"
                + " growth where you know better");
    Species clone = read("Sorbus aucuparia 'Fastigiata'");
    assertThat(clone.vigourSpread()).isEqualTo(0.12);
    assertThat(assumed(clone.name(), "vigour spread %").grounds())
        .contains(new Grounds("", "a cultivar is a clone; common practice"));
  }

  /** Calls the Rowan otherwise, in every table. */
  private void rename(String name) throws IOException {
    species("species,ladder,library", name + ",small trees,yes");
    for (String file : List.of("stock.csv", "offers.csv", "demand.csv")) {
      Path path = folder.resolve(file);
      Files.writeString(path, Files.readString(path).replace("Rowan", name));
    }
  }

  @Test
  void relation_standsIn_andIsSaid() throws IOException {
    rename("Large-leaved lime");

    assertThat(problems())
        .containsExactly(
            "notice: species.csv, row 2, column library: the library takes a near relation for it,"
                + " Small-leaved lime (Tilia cordata) (Large-leaved lime); type your own growth"
                + " where you know better");
    assertThat(assumed("Large-leaved lime", "mm a year field").grounds())
        .contains(new Grounds("5.9 to 24", "genus"));
  }

  @Test
  void genus_isSaid() throws IOException {
    rename("Quercus rubra");

    assertThat(problems())
        .containsExactly(
            "notice: species.csv, row 2, column library: the library does not have it and takes the"
                + " middle of the genus Quercus, as deciduous (Quercus rubra); type your own growth"
                + " where you know better");
    assertThat(assumed("Quercus rubra", "library").value()).isEqualTo("yes: the genus Quercus");
  }

  @Test
  void genus_ofANameWithASlip_isWarnedOf() throws IOException {
    rename("Sorbus aucupria");

    assertThat(problems())
        .containsExactly(
            "warning: species.csv, row 2, column library: the library does not have it and takes the"
                + " middle of the genus Sorbus, as deciduous (Sorbus aucupria); if Sorbus aucuparia"
                + " is meant, write that");
  }

  @Test
  void kind_isTakenForASpeciesTheLibraryLacks_andSaid() throws IOException {
    rename("Wollemia nobilis");
    species("species,ladder,library", "Wollemia nobilis,small trees,evergreen");

    assertThat(problems())
        .containsExactly(
            "notice: species.csv, row 2, column library: the library takes the middle of all its"
                + " evergreen rows (Wollemia nobilis); type your own growth where you know better");
    assertThat(read("Wollemia nobilis").habit()).isEqualTo(Habit.EVERGREEN);
    assertThat(assumed("Wollemia nobilis", "mm a year field").grounds().orElseThrow().basis())
        .isEqualTo("kind");
  }

  @Test
  void name_theLibraryLacks_isAnErrorThatOffersTheNearest() throws IOException {
    rename("Rowen");

    assertThat(problems())
        .containsExactly(
            "error: species.csv, row 2, column library: the library has no such species (Rowen);"
                + " the nearest name is Rowan; else write another of its names, deciduous or"
                + " evergreen, or your own growth and losses");
  }

  @Test
  void name_withNoneNear_isAnError() throws IOException {
    rename("Wollemia nobilis");

    assertThat(problems())
        .containsExactly(
            "error: species.csv, row 2, column library: the library has no such species (Wollemia"
                + " nobilis); write another of its names, deciduous or evergreen, or your own growth"
                + " and losses");
  }

  @Test
  void name_withSeveralNear_isAnErrorThatOffersThem() throws IOException {
    species("species,ladder,library", "Rowan,small trees,European lurch");

    assertThat(problems())
        .containsExactly(
            "error: species.csv, row 2, column library: the library has no such species (European"
                + " lurch); the nearest names are European larch, European beech and European ash;"
                + " else write another of its names, deciduous or evergreen, or your own growth and"
                + " losses");
  }

  @Test
  void word_thatFitsSeveral_isAnErrorThatListsThem() throws IOException {
    rename("Larch");

    assertThat(problems())
        .containsExactly(
            "error: species.csv, row 2, column library: the library has several: European larch and"
                + " Japanese larch (Larch); write under library which is meant");
  }

  @Test
  void speciesWithoutARow_isToldTheRowToPaste() throws IOException {
    change("stock.csv", "Yews,Yew", "Yews,Acer palmatum");

    assertThat(problems())
        .containsExactly(
            "error: stock.csv, row 3, column species: unknown species (Acer palmatum); add to the"
                + " table species the row Acer palmatum,small trees,library yes: 6.7 mm a year in"
                + " the field, 3.5 to 12.8, measured");
  }

  @Test
  void speciesWithoutARow_ofAnOffer_withTwoLadders_isToldTheRowToPaste() throws IOException {
    Files.writeString(
        folder.resolve("grades.csv"),
        Files.readString(folder.resolve("grades.csv")) + "large trees,only,1,60,,\n");
    change("offers.csv", "Far Fields,Yew", "Far Fields,Acer palmatum 'Deshojo'");

    assertThat(problems())
        .contains(
            "error: offers.csv, row 4, column species: unknown species (Acer palmatum 'Deshojo');"
                + " add to the table species the row Acer palmatum 'Deshojo',<ladder>,library yes:"
                + " 6.7 mm a year in the field, 3.5 to 12.8, measured");
  }

  @Test
  void speciesWithoutARow_thatMayBeSeveral_isToldWhich() throws IOException {
    change("stock.csv", "Yews,Yew", "Yews,larch");

    assertThat(problems())
        .containsExactly(
            "error: stock.csv, row 3, column species: unknown species (larch); add a row to the"
                + " table species, with one of European larch and Japanese larch under library");
  }

  @Test
  void speciesWithoutARow_thatTheLibraryLacks_isUnknownAsEver() throws IOException {
    change("stock.csv", "Yews,Yew", "Yews,Yow");

    assertThat(problems())
        .containsExactly(
            "error: stock.csv, row 3, column species: unknown species (Yow); the nearest known one"
                + " is Yew");
  }

  @Test
  void speciesWithoutARow_nearAnotherName_isToldBoth() throws IOException {
    change("stock.csv", "12,Rowan", "12,Rowans");
    change("stock.csv", "Yews,Yew", "Yews,Box");

    assertThat(problems())
        .containsExactly(
            "error: stock.csv, row 2, column species: unknown species (Rowans); the nearest known"
                + " one is Rowan",
            "error: stock.csv, row 3, column species: unknown species (Box); add to the table"
                + " species the row Box,small trees,library yes: 2.5 mm a year in the field, 1.2 to"
                + " 5.4, common practice");
  }

  // Growing conditions

  @Test
  void condition_byAnotherName_isTheLibrarysAsTheSettingSays() {
    assertThat(inputs().scenario().nursery().settings().library().conditions())
        .isEqualTo(Map.of("liner pot", "small pot"));
    assertThat(assumed("Rowan", "mm a year liner pot").grounds().orElseThrow().basis())
        .isEqualTo("measured, from field × 0.28; no measurement in small pots found");
  }

  @Test
  void condition_thatIsNotOfTheLibrary_isAnErrorWhereALotComesIntoIt() throws IOException {
    change("nursery.json", "\"library conditions\": { \"Liner pot\": \"small pot\" },", "");

    assertThat(problems())
        .containsExactly(
            "error: stock.csv, row 2, column species: the lot 12 comes to grow in the condition"
                + " liner pot, which the library does not know, and Rowan has no growth of its own"
                + " there (Rowan); call it one of field, open bed, nursery pot, small pot, training"
                + " pot and shallow pot, or add the setting library condition liner pot with one of"
                + " these, or add mm a year liner pot");
  }

  @Test
  void usualCondition_thatIsNotOfTheLibrary_isAnError() throws IOException {
    species("species,ladder,library,usual condition", "Rowan,small trees,yes,Roof tray");

    assertThat(problems())
        .containsExactly(
            "error: species.csv, row 2, column usual condition: the library knows no such growing"
                + " condition (roof tray); call it one of field, open bed, nursery pot, small pot,"
                + " training pot and shallow pot, or add the setting library condition roof tray"
                + " with one of these, or add mm a year roof tray");
  }

  @Test
  void usualCondition_withGrowthOfItsOwn_needsNoLibrary_andLossesAreThoseInTheField()
      throws IOException {
    species(
        "species,ladder,library,usual condition,mm a year roof tray",
        "Rowan,small trees,yes,roof tray,1");

    assertThat(problems()).isEmpty();
    assertThat(read("Rowan").firstYearLoss()).isEqualTo(0.08);
    assertThat(assumed("Rowan", "first-year loss %").grounds().orElseThrow().basis())
        .isEqualTo("in the field; middling to transplant, common practice");
  }

  @Test
  void libraryCondition_inATableOfSettings_isRead() throws IOException {
    Files.delete(folder.resolve("nursery.json"));
    Files.writeString(
        folder.resolve("settings.csv"),
        "name,value\ncurrency,EUR\nhourly rate,21\ndiscount rate % a year,3\n"
            + "exchange rate CHF,1.05\nLibrary condition Liner pot,shallow pot\nsite speed,1.2\n"
            + "site speed from,3\nclimate,temperate\nassumptions sure %,75\n");

    Settings settings = inputs().scenario().nursery().settings();

    assertThat(settings.assumptionsSure()).isEqualTo(0.75);
    assertThat(settings.library())
        .isEqualTo(new LibrarySite(Climate.TEMPERATE, 1.2, 3, Map.of("liner pot", "shallow pot")));
    assertThat(read("Rowan").growth().get("liner pot"))
        .isEqualTo(new Curve.Steady(7.6 * 0.12 * 1.2, 100));
    assertThat(assumed("Rowan", "mm a year field").grounds())
        .contains(new Grounds("5.7 to 14.6", "measured, from field × site speed 1.2"));
  }

  @Test
  void libraryCondition_thatIsNone_isAnError() throws IOException {
    change("nursery.json", "\"small pot\"", "\"smal pot\"");

    assertThat(problems())
        .contains(
            "error: nursery.json, line 11, key Liner pot: this must be one of field, open bed,"
                + " nursery pot, small pot, training pot and shallow pot (smal pot); perhaps small"
                + " pot is meant");
  }

  // Site

  @Test
  void siteSpeed_leavesOwnFiguresAlone() throws IOException {
    species("species,ladder,library,mm a year training pot", "Rowan,small trees,yes,5");
    settings("\"site speed\": 1.5");

    assertThat(read("Rowan").growth().get("training pot")).isEqualTo(new Curve.Steady(5, 150));
    assertThat(read("Rowan").growth().get("field")).isEqualTo(new Curve.Steady(7.6 * 1.5, 500));
  }

  @ParameterizedTest
  @CsvSource({"mediterranean", "boreal"})
  void climate_unlikeTheLibrarys_isWarnedOfOnce(String climate) throws IOException {
    settings("\"climate\": \"" + climate + "\"");
    species("species,ladder,library", "Rowan,small trees,yes", "Field maple,small trees,yes");

    assertThat(problems())
        .containsExactly(
            "warning: species.csv, row 2, column library: the trees of the library grew in temperate"
                + " places, and the nursery lies in a "
                + climate
                + " climate (yes); measure 20 trees of a species, and type what they make a year");
  }

  @ParameterizedTest
  @CsvSource({"subtropical", "tropical", "dry"})
  void climate_beyondTheLibrary_isRefusedOnce(String climate) throws IOException {
    settings("\"climate\": \"" + climate + "\"");
    species("species,ladder,library", "Rowan,small trees,yes", "Field maple,small trees,yes");

    assertThat(problems())
        .containsExactly(
            "error: species.csv, row 2, column library: the library is not for a "
                + climate
                + " climate: its trees grew in temperate places, and live oaks in Florida nursery"
                + " rows made 30 mm a year where it would say 5 to 18 (yes); type your own growth"
                + " and losses");
  }

  @Test
  void climate_beyondTheLibrary_offersNoRowToPaste() throws IOException {
    settings("\"climate\": \"dry\"");
    species(
        "species,ladder,usual condition,first-year loss %,later loss %,mm a year training pot,"
            + "mm a year liner pot",
        "Rowan,small trees,training pot,6,2,3.5,5");
    change("stock.csv", "Yews,Yew", "Yews,Acer palmatum");

    assertThat(problems())
        .containsExactly(
            "error: stock.csv, row 3, column species: unknown species (Acer palmatum); see the table"
                + " species");
  }

  @Test
  void climate_thatIsNone_isAnError() throws IOException {
    settings("\"climate\": \"mild\"");

    assertThat(problems())
        .containsExactly(
            "error: nursery.json, line 11, key climate: this must be one of temperate,"
                + " mediterranean, boreal, subtropical, tropical and dry (mild); write one of them");
  }

  @Test
  void siteSpeed_outOfRange_isAnError() throws IOException {
    settings("\"site speed\": 0");

    assertThat(problems())
        .containsExactly(
            "error: nursery.json, line 11, key site speed: this must be between 0.1 and 10 (0);"
                + " correct it");
  }

  // How sure

  @Test
  void sure_whereNothingIsSaid_isTheSettingOr80() throws IOException {
    assertThat(read("Yew").sure().growthIn("field")).isEqualTo(0.8);
    assertThat(read("Yew").sure().firstYearLoss()).isEqualTo(0.8);
    assertThat(read("Yew").sure().laterLoss()).isEqualTo(0.8);
    assertThat(read("Yew").fromLibrary()).isEmpty();
    assertThat(assumed("Yew", "growth sure %").value()).isEqualTo("80");
    settings("\"assumptions sure %\": 90");

    assertThat(read("Yew").sure().growthIn("field")).isEqualTo(0.9);
    assertThat(read("Yew").sure().laterLoss()).isEqualTo(0.9);
  }

  @Test
  void sure_ofSpeciesJson_mayBeOneForEachCondition() throws IOException {
    change(
        "species.json",
        "\"later loss %\": 1.5,",
        "\"later loss %\": 1.5, \"later loss sure %\": 66,\n"
            + "\"growth sure %\": { \"Training pot\": 60 },");

    assertThat(read("Yew").sure().growth()).isEqualTo(Map.of("training pot", 0.6, "field", 0.8));
    assertThat(read("Yew").sure().laterLoss()).isEqualTo(0.66);
    assertThat(problems()).isEmpty();
  }

  @Test
  void sure_ofSpeciesJson_mayBeOneForAll() throws IOException {
    change(
        "species.json", "\"later loss %\": 1.5,", "\"later loss %\": 1.5, \"growth sure %\": 55,");

    assertThat(read("Yew").sure().growth()).isEqualTo(Map.of("training pot", 0.55, "field", 0.55));
  }

  @Test
  void sure_ofAConditionWithoutGrowth_isAnError() throws IOException {
    change(
        "species.json",
        "\"later loss %\": 1.5,",
        "\"later loss %\": 1.5,\n\"growth sure %\": { \"roof tray\": 60 },");

    assertThat(problems())
        .containsExactly(
            "error: species.json, line 15, key roof tray: the species has no growth in this"
                + " condition (roof tray); it has growth for field and training pot");
  }

  @ParameterizedTest
  @CsvSource({
    "growth sure %, 0",
    "growth sure %, 0.5",
    "first-year loss sure %, 0",
    "later loss sure %, -3"
  })
  void sure_below1_isAnErrorThatSaysWhatToWrite(String heading, String cell) throws IOException {
    species("species,ladder,library," + heading, "Rowan,small trees,yes," + cell);

    assertThat(problems())
        .containsExactly(
            "error: species.csv, row 2, column "
                + heading
                + ": how sure something is must be between 1 and 100 ("
                + cell
                + "); write 20 or so where you hardly know");
  }

  @Test
  void sure_above100_isAnError() throws IOException {
    species("species,ladder,library,growth sure %", "Rowan,small trees,yes,120");
    settings("\"assumptions sure %\": 0");

    assertThat(problems())
        .containsExactly(
            "error: nursery.json, line 11, key assumptions sure %: how sure something is must be"
                + " between 1 and 100 (0); write 20 or so where you hardly know",
            "error: species.csv, row 2, column growth sure %: this must be between 1 and 100 (120);"
                + " correct it");
  }

  @Test
  void speciesJson_mayAskTheLibraryToo() throws IOException {
    species(
        "species,ladder,usual condition,first-year loss %,later loss %,mm a year training pot,"
            + "mm a year liner pot",
        "Rowan,small trees,training pot,6,2,3.5,5");
    Files.writeString(
        folder.resolve("species.json"),
        "{ \"species\": { \"Yew\": { \"ladder\": \"small trees\", \"library\": true,"
            + " \"growth\": { \"training pot\": { \"curve\": \"steady\", \"g\": 2 } } } } }");

    Species yew = read("Yew");

    assertThat(problems()).isEmpty();
    assertThat(yew.habit()).isEqualTo(Habit.EVERGREEN);
    assertThat(yew.growth().get("training pot"))
        .isEqualTo(new Curve.Steady(2, Double.POSITIVE_INFINITY));
    assertThat(yew.growth().get("field")).isEqualTo(new Curve.Steady(7.3, 600));
    assertThat(yew.healthNote()).isEqualTo("poisonous in all parts but the red flesh");
    assertThat(yew.fromLibrary().orElseThrow().conditions())
        .containsExactlyInAnyOrder("field", "liner pot");
  }
}
