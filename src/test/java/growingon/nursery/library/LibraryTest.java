package growingon.nursery.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import growingon.nursery.library.Match.How;
import growingon.nursery.species.Climate;
import growingon.nursery.species.Habit;
import growingon.nursery.species.LibrarySite;
import growingon.nursery.species.Sure;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The library of species: every figure of it, every name, and what is said of other names. */
class LibraryTest {
  private static final Library LIBRARY = Library.shipped();

  /** Every species in every growing condition, as worked out once and looked through by eye. */
  private static List<CSVRecord> rows() throws IOException {
    return rows("/library/figures.csv");
  }

  private static List<CSVRecord> rows(String resource) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream stream = LibraryTest.class.getResourceAsStream(resource)) {
      return format.parse(new InputStreamReader(stream, StandardCharsets.UTF_8)).getRecords();
    }
  }

  @Test
  void library_hasARowForEachOf74SpeciesAndSixConditions() throws IOException {
    assertThat(LIBRARY.taxa()).hasSize(74);
    assertThat(LIBRARY.conditions())
        .containsExactly(
            "field", "open bed", "nursery pot", "small pot", "training pot", "shallow pot");
    assertThat(rows()).hasSize(444);
  }

  @TestFactory
  Stream<DynamicTest> figures_ofEveryRow_areRightToTheLastDigit() throws IOException {
    Map<String, Taxon> taxa =
        LIBRARY.taxa().stream().collect(Collectors.toMap(Taxon::species, each -> each));
    return rows().stream()
        .map(
            row ->
                DynamicTest.dynamicTest(
                    row.get("species") + ", " + row.get("condition"),
                    () -> compare(row, taxa.get(row.get("species")))));
  }

  private static void compare(CSVRecord row, Taxon taxon) {
    GrowingCondition condition = LIBRARY.condition(row.get("condition")).orElseThrow();
    Figures figures = taxon.in(condition, LibrarySite.USUAL);

    assertThat(row.get("mm a year low")).isIn(bothWays(figures.low()));
    assertThat(row.get("mm a year mid")).isIn(bothWays(figures.mmAYear()));
    assertThat(row.get("mm a year high")).isIn(bothWays(figures.high()));
    assertThat(whole(100 * figures.growthSure())).isEqualTo(row.get("growth sure %"));
    assertThat(figures.basis()).isEqualTo(row.get("basis"));
    assertThat(from(figures, condition)).isEqualTo(row.get("growth from"));
    assertThat(whole(figures.mostMm())).isEqualTo(row.get("most mm"));
    assertThat(whole(100 * figures.firstYearLoss())).isEqualTo(row.get("first-year loss %"));
    assertThat(whole(100 * figures.firstYearLossSure()))
        .isEqualTo(row.get("first-year loss sure %"));
    assertThat("%.1f".formatted(100 * figures.laterLoss())).isEqualTo(row.get("later loss %"));
    assertThat(whole(100 * figures.laterLossSure())).isEqualTo(row.get("later loss sure %"));
    assertThat(String.join(" ", figures.growthSources())).isEqualTo(row.get("growth source ids"));
    assertThat(String.join(" ", figures.lossSources())).isEqualTo(row.get("loss source ids"));
    compareTaxon(row, taxon);
  }

  private static void compareTaxon(CSVRecord row, Taxon taxon) {
    assertThat(taxon.name()).isEqualTo(row.get("name"));
    assertThat(String.join("; ", taxon.otherNames())).isEqualTo(row.get("other names"));
    assertThat(String.join("; ", taxon.standsInFor())).isEqualTo(row.get("stands in for"));
    assertThat(taxon.habit()).hasToString(row.get("kind"));
    assertThat(taxon.sources()).hasToString(row.get("sources of growth"));
    assertThat(whole(100 * taxon.vigourSpread())).isEqualTo(row.get("vigour spread %"));
    assertThat(whole(100 * taxon.yearSpread())).isEqualTo(row.get("year spread %"));
    assertThat(taxon.transplanting()).hasToString(row.get("transplanting"));
    assertThat(taxon.propagation()).isEqualTo(row.get("usual propagation"));
    assertThat(taxon.winterProtection() ? "yes" : "no").isEqualTo(row.get("winter protection"));
    assertThat(taxon.caution()).isEqualTo(row.get("caution"));
  }

  private static List<String> bothWays(double mm) {
    double clean = Math.rint(mm * 1e9) / 1e9;
    return List.of(
        Figures.shown(clean, RoundingMode.HALF_UP), Figures.shown(clean, RoundingMode.HALF_DOWN));
  }

  private static String whole(double value) {
    return "%.0f".formatted(value);
  }

  /** The table was written with an x for the cross, and without what was not found. */
  private static String from(Figures figures, GrowingCondition condition) {
    String from = figures.from().split(";")[0];
    return from.isEmpty() ? figures.basis() : from.replace("from field ×", "from field: x");
  }

  @Test
  void basis_ofTheRows_is41Measured7Wild7Genus19CommonPractice() {
    assertThat(
            LIBRARY.taxa().stream()
                .collect(Collectors.groupingBy(Taxon::basis, Collectors.counting())))
        .isEqualTo(
            Map.of(
                Basis.MEASURED, 41L,
                Basis.WILD, 7L,
                Basis.GENUS, 7L,
                Basis.COMMON_PRACTICE, 19L));
  }

  @Test
  void sources_thatRowsName_haveTheirCitation() {
    Set<String> named = new TreeSet<>();
    LIBRARY.taxa().forEach(taxon -> named.addAll(taxon.growthSources()));
    LIBRARY.taxa().forEach(taxon -> named.addAll(taxon.lossSources()));
    LIBRARY
        .conditions()
        .forEach(name -> named.addAll(LIBRARY.condition(name).orElseThrow().sources()));

    assertThat(LIBRARY.sources(named)).hasSize(named.size()).doesNotContainNull();
    assertThat(LIBRARY.sources(Set.of("S02")).get(0).citation())
        .isEqualTo(
            "City of Frankfurt am Main, Grünflächenamt: tree register (Baumkataster), 2021 and 2022");
  }

  // Names

  @TestFactory
  Stream<DynamicTest> names_ofEveryRow_findItAndNoOther() {
    Map<String, String> found = new HashMap<>();
    return LIBRARY.taxa().stream()
        .flatMap(
            taxon ->
                Stream.concat(
                    taxon.ownNames().map(name -> finds(name, taxon, How.NAMED, found)),
                    taxon.standsInFor().stream()
                        .map(name -> finds(name, taxon, How.STANDS_IN, found))));
  }

  private static DynamicTest finds(String name, Taxon taxon, How how, Map<String, String> found) {
    return DynamicTest.dynamicTest(
        name,
        () -> {
          Match.One one = one(name);
          assertThat(one.taxon().species()).isEqualTo(taxon.species());
          assertThat(one.how()).isEqualTo(how);
          assertThat(found.put(name, taxon.species())).isIn(null, taxon.species());
        });
  }

  @Test
  void names_ofTheLibrary_are289AndNoneIsOfTwoRows() {
    Map<String, Set<String>> rows = new HashMap<>();
    for (Taxon taxon : LIBRARY.taxa()) {
      Stream.concat(taxon.ownNames(), taxon.standsInFor().stream())
          .forEach(
              name -> rows.computeIfAbsent(name, each -> new TreeSet<>()).add(taxon.species()));
    }

    assertThat(rows).hasSize(289).allSatisfy((name, of) -> assertThat(of).as(name).hasSize(1));
  }

  private static Match.One one(String name) {
    assertThat(LIBRARY.find(name)).as(name).isInstanceOf(Match.One.class);
    return (Match.One) LIBRARY.find(name);
  }

  @ParameterizedTest
  @CsvSource({
    "ACER PALMATUM, Acer palmatum",
    "japanese  maple, Acer palmatum",
    "Photinia × fraseri, Photinia x fraseri",
    "Photinia fraseri, Photinia x fraseri",
    "×Cuprocyparis leylandii, x Cuprocyparis leylandii",
    "Acer tataricum ssp. ginnala, Acer tataricum subsp. ginnala",
    "Acer tataricum var. ginnala, Acer tataricum subsp. ginnala",
    "small leaved lime, Tilia cordata",
    "Siebolds beech, Fagus crenata",
    "Siebold’s Beech, Fagus crenata",
    "crab-apple, Malus",
    "sweetgum, Liquidambar styraciflua"
  })
  void name_typedAnotherWay_isFound(String typed, String species) {
    Match.One one = one(typed);

    assertThat(one.taxon().species()).isEqualTo(species);
    assertThat(one.how()).isEqualTo(How.NAMED);
    assertThat(one.cultivar()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '|',
      value = {
        "Acer palmatum 'Deshojo', Acer palmatum, Deshojo",
        "Acer palmatum ‘Orange Dream’, Acer palmatum, Orange Dream",
        "Japanese maple \"Sango-kaku\", Acer palmatum, Sango-kaku",
        "Malus 'Evereste', Malus, Evereste",
        "Taxus baccata 'King's Hill', Taxus baccata, King's Hill"
      })
  void cultivar_inQuotes_isLeftOut(String typed, String species, String cultivar) {
    assertThat(one(typed).taxon().species()).isEqualTo(species);
    assertThat(one(typed).cultivar()).contains(cultivar);
    assertThat(Library.cultivar(typed)).contains(cultivar);
  }

  @Test
  void relation_standsIn_noSurerThanItsGenus() {
    Taxon broadLeaved = one("Tilia platyphyllos").taxon();

    assertThat(broadLeaved.name()).isEqualTo("Small-leaved lime");
    assertThat(broadLeaved.basis()).isEqualTo(Basis.GENUS);
    // ½ √((1 − p)/p) = s, s² = 0.40² + 0.36²: by hand
    assertThat(field(broadLeaved).growthSure()).isEqualTo(1 / (1 + 4 * 0.2896), within(1e-12));
    assertThat(field(broadLeaved).mmAYear()).isEqualTo(11.8);
  }

  @Test
  void relation_ofACommonPracticeRow_isNoSurerThanThatRow() {
    assertThat(one("Buxus microphylla").taxon().basis()).isEqualTo(Basis.COMMON_PRACTICE);
  }

  private static Figures field(Taxon taxon) {
    return taxon.in(LIBRARY.condition(Library.FIELD).orElseThrow(), LibrarySite.USUAL);
  }

  @Test
  void genus_isTheGeometricMeanOfItsMeasuredRows() {
    Match.One red = one("Quercus rubra");

    assertThat(red.how()).isEqualTo(How.GENUS);
    assertThat(red.taxon().shown()).isEqualTo("the genus Quercus");
    assertThat(red.taxon().fieldMm()).isEqualTo(Math.sqrt(9.4 * 8.6), within(1e-9));
    assertThat(red.taxon().basis()).isEqualTo(Basis.GENUS);
    assertThat(red.taxon().habit()).isEqualTo(Habit.DECIDUOUS);
    assertThat(red.taxon().growthSources()).containsExactly("S01", "S02", "S03", "S05");
    assertThat(red.taxon().firstYearLoss()).isEqualTo(0.15);
  }

  @Test
  void genus_withMeasuredRows_leavesOutTheOthers() {
    // Pinus sylvestris, nigra and thunbergii are measured; parviflora and mugo are not.
    assertThat(one("Pinus strobus").taxon().fieldMm())
        .isEqualTo(Math.cbrt(8.1 * 8.9 * 8.4), within(1e-9));
    assertThat(one("Pinus strobus").taxon().firstYearLoss()).isEqualTo(0.15);
  }

  @Test
  void genus_withoutMeasuredRows_isNoSurerThanTheyAre() {
    assertThat(one("Pyracantha rogersiana").taxon().basis()).isEqualTo(Basis.COMMON_PRACTICE);
    assertThat(one("Pyracantha rogersiana").taxon().fieldMm()).isEqualTo(6.0, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Acer", "Acer sp.", "acer spp.", "Acer 'Autumn Blaze'"})
  void genus_alone_isItsMean(String typed) {
    assertThat(one(typed).how()).isEqualTo(How.GENUS);
    assertThat(one(typed).taxon().fieldMm())
        .isEqualTo(Math.pow(7.9 * 6.7 * 7.2 * 8.6, 0.25), within(1e-9));
  }

  static Stream<Arguments> words() {
    return Stream.of(
        arguments("larch", List.of("European larch", "Japanese larch")),
        arguments("Redwood", List.of("Dawn redwood", "Coast redwood")),
        arguments("black pine", List.of("Austrian pine", "Japanese black pine")),
        arguments("laurel", List.of("Cherry laurel", "Bay")),
        arguments("oak", List.of("English oak", "Holm oak")),
        arguments("elm", List.of("Chinese elm", "Field elm")),
        arguments("juniper", List.of("Chinese juniper", "Common juniper")),
        arguments("thorn", List.of("Hawthorn", "Blackthorn", "Firethorn")),
        arguments(
            "pine",
            List.of(
                "Scots pine",
                "Austrian pine",
                "Japanese black pine",
                "Japanese white pine",
                "Mountain pine")),
        arguments(
            "MAPLE",
            List.of(
                "Field maple",
                "Trident maple",
                "Japanese maple",
                "Paperbark maple",
                "Norway maple",
                "Amur maple")));
  }

  @ParameterizedTest
  @MethodSource("words")
  void word_thatFitsSeveral_isNoneOfThem(String word, List<String> names) {
    assertThat(LIBRARY.find(word)).isInstanceOf(Match.Several.class);
    assertThat(((Match.Several) LIBRARY.find(word)).taxa())
        .extracting(Taxon::name)
        .isEqualTo(names);
  }

  @Test
  void several_haveAMiddle_forAListThatGoesOn() {
    Taxon larch = ((Match.Several) LIBRARY.find("larch")).middle();

    assertThat(larch.fieldMm()).isEqualTo(Math.sqrt(9.5 * 8.9), within(1e-9));
    assertThat(larch.basis()).isEqualTo(Basis.GENUS);
    assertThat(larch.shown()).isEqualTo("the middle of European larch, Japanese larch");
  }

  @Test
  void nothing_offersTheNearest_butTakesNone() {
    assertThat(LIBRARY.find("Japanse maple"))
        .isEqualTo(new Match.Nothing(List.of("Japanese maple")));
    assertThat(LIBRARY.find("plum")).isEqualTo(new Match.Nothing(List.of("Cherry plum")));
    assertThat(LIBRARY.find("Wollemia nobilis")).isEqualTo(new Match.Nothing(List.of()));
    assertThat(LIBRARY.find("'Deshojo'")).isEqualTo(new Match.Nothing(List.of()));
    assertThat(LIBRARY.find("x")).isEqualTo(new Match.Nothing(List.of()));
  }

  @Test
  void kind_isTheMiddleOfAllItsRows() {
    Taxon evergreen = LIBRARY.ofKind(Habit.EVERGREEN).taxon();
    double logs =
        LIBRARY.taxa().stream()
            .filter(each -> each.habit() == Habit.EVERGREEN)
            .mapToDouble(each -> Math.log(each.fieldMm()))
            .average()
            .orElseThrow();

    assertThat(evergreen.fieldMm()).isEqualTo(Math.exp(logs), within(1e-9));
    assertThat(evergreen.basis()).isEqualTo(Basis.KIND);
    assertThat(evergreen.habit()).isEqualTo(Habit.EVERGREEN);
    assertThat(evergreen.shown()).isEqualTo("all evergreen rows");
    assertThat(field(evergreen).growthSure()).isEqualTo(1 / (1 + 4 * 0.3625), within(1e-12));
    assertThat(evergreen.caution()).isEmpty();
  }

  // Figures

  @Test
  void find_withACondition_givesItsFigures() {
    Figures pot = LIBRARY.find("Japanese maple", "training pot").orElseThrow();

    assertThat(Figures.shown(pot.mmAYear())).isEqualTo("2.3");
    assertThat(pot.mmAYear()).isEqualTo(6.7 * 0.35, within(1e-12));
    assertThat(pot.range()).isEqualTo("1.2 to 4.6");
    assertThat(pot.grounds())
        .isEqualTo("measured, from field × 0.35; no measurement in training pots found");
    assertThat(LIBRARY.find("Japanese maple", "field").orElseThrow().grounds())
        .isEqualTo("measured");
    assertThat(LIBRARY.find("Japanese maple", "open bed").orElseThrow().grounds())
        .isEqualTo("measured, from field × 0.75");
    assertThat(LIBRARY.find("larch", "field")).isEmpty();
    assertThat(LIBRARY.find("Japanese maple", "roof tray")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    // The contract's own figures: from three species 52 to 69 % in the field, 50 to 56 % in pots.
    "field, 0, 52",
    "field, 3, 69",
    "training pot, 0, 50",
    "training pot, 3, 56"
  })
  void siteSpeed_restingOnSpecies_makesGrowthSurer(String condition, int from, long sure) {
    LibrarySite site = new LibrarySite(Climate.TEMPERATE, 1, from, Map.of());
    Figures figures =
        one("Field maple").taxon().in(LIBRARY.condition(condition).orElseThrow(), site);

    assertThat(Math.round(100 * figures.growthSure())).isEqualTo(sure);
  }

  @Test
  void siteSpeed_multipliesGrowthAlone() {
    LibrarySite site = new LibrarySite(Climate.TEMPERATE, 1.2, 0, Map.of());
    GrowingCondition pot = LIBRARY.condition("training pot").orElseThrow();
    Figures usual = one("Hornbeam").taxon().in(pot, LibrarySite.USUAL);
    Figures fast = one("Hornbeam").taxon().in(pot, site);

    assertThat(fast.mmAYear()).isEqualTo(1.2 * usual.mmAYear(), within(1e-12));
    assertThat(fast.low()).isEqualTo(1.2 * usual.low(), within(1e-12));
    assertThat(fast.growthSure()).isEqualTo(usual.growthSure());
    assertThat(fast.firstYearLoss()).isEqualTo(usual.firstYearLoss());
    assertThat(fast.from())
        .isEqualTo("from field × 0.35 × site speed 1.2; no measurement in training pots found");
  }

  @ParameterizedTest
  @CsvSource({
    // By hand: s = ½ √((1 − p)/p) and e^(1.2816 s).
    "1, 0, 1",
    "0.9, 0.16667, 1.23812",
    "0.8, 0.25, 1.37766",
    "0.5, 0.5, 1.89800"
  })
  void sure_isAWidthOfGrowth(double sure, double spread, double factor) {
    assertThat(Sure.spread(sure)).isEqualTo(spread, within(1e-5));
    assertThat(Sure.factor(sure)).isEqualTo(factor, within(1e-4));
    assertThat(Sure.ofVariance(spread * spread)).isEqualTo(sure, within(1e-4));
  }

  /**
   * Norway spruces of A. von Guttenberg, Growth and yield of spruce in the high mountains (1915),
   * as in Zeide, Forest Science 39 (1993), and the data set gutten of the R package FAwR; not used
   * in the library. The trunks of its site 1 at breast height after some ten years; a trunk is 1.25
   * times as thick at its base, and trees in rows make 0.8 of that: together 1.
   */
  @Test
  void norwaySpruce_hasTheTreesOfAnotherSourceInItsRange() throws IOException {
    Figures spruce = LIBRARY.find("Norway spruce", "field").orElseThrow();
    List<Double> grown =
        rows("/library/norway-spruce.csv").stream()
            .map(
                tree ->
                    10
                        * Double.parseDouble(tree.get("diameter cm at 1.3 m"))
                        / Double.parseDouble(tree.get("age years at 1.3 m")))
            .sorted()
            .toList();

    assertThat(spruce.range()).isEqualTo("3.6 to 12.4");
    assertThat(grown).hasSize(21).allMatch(mm -> mm > spruce.low() && mm < spruce.high());
    assertThat(grown.get(10)).isEqualTo(spruce.mmAYear(), within(0.15));
  }
}
