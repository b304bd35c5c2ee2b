package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Inputs;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.market.Demand;
import growingon.nursery.market.HorizonValue;
import growingon.nursery.market.OtherCash;
import growingon.nursery.route.Step;
import growingon.problem.Loaded;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Columns and keys that a table may have, added one at a time to a small nursery. */
class ColumnsTest {
  private static final LoadOptions OPTIONS = new LoadOptions(LocalDate.of(2026, 11, 20));

  @TempDir private Path folder;

  @BeforeEach
  void layOut() throws IOException {
    SmallNursery.copyTidy(folder);
  }

  /** Types a value into the first row of a table, under a column that is there or added. */
  private void add(String table, String heading, String value) throws IOException {
    Path file = folder.resolve(table + ".csv");
    List<String> lines = new ArrayList<>(Files.readAllLines(file));
    int there = List.of(lines.get(0).split(",", -1)).indexOf(heading);
    if (there >= 0) {
      String[] cells = lines.get(1).split(",", -1);
      cells[there] = value;
      lines.set(1, String.join(",", cells));
      Files.write(file, lines);
      return;
    }
    lines.set(0, lines.get(0) + "," + heading);
    for (int i = 1; i < lines.size(); i++) {
      lines.set(i, lines.get(i) + "," + (i == 1 ? value : ""));
    }
    Files.write(file, lines);
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

  private List<String> problems() {
    return Loader.load(folder, OPTIONS).problems().stream().map(Object::toString).toList();
  }

  private Lot firstLot() {
    return inputs().scenario().lots().get(0);
  }

  private Offer firstOffer() {
    return inputs().offers().get(0);
  }

  private Settings settings() {
    return inputs().scenario().nursery().settings();
  }

  @Test
  void untouchedAndHeeledIn_areOfTheLot() throws IOException {
    add("stock", "untouched", "yes");
    add("stock", "heeled in per m2", "25");

    assertThat(firstLot().untouched()).isTrue();
    assertThat(firstLot().standing().heeledInPerM2()).isEqualTo(OptionalDouble.of(25));
  }

  /** Arrival is in February 2027: until June is four months, until February a whole year. */
  @ParameterizedTest
  @CsvSource({"2, 2", "until June, 4", "Until jun., 4", "until March, 1", "until February, 12"})
  void apartMonths_areANumber_orUntilAMonth(String typed, int months) throws IOException {
    add("offers", "apart months", typed);

    assertThat(firstOffer().arrival()).isEqualTo(YearMonth.of(2027, 2));
    assertThat(firstOffer().lot().apartMonths()).isEqualTo(months);
  }

  @ParameterizedTest
  @CsvSource({"'', '', 0", "Hungary, '', 1", "Hungary, Belgium, 1", "belgium, Belgium, 0"})
  void apartMonths_empty_areOneForPlantsFromAnotherCountry(
      String origin, String country, int months) throws IOException {
    add("offers", "origin", origin);
    if (!country.isEmpty()) {
      change("nursery.json", "\"currency\"", "\"country\": \"" + country + "\", \"currency\"");
    }

    assertThat(firstOffer().lot().apartMonths()).isEqualTo(months);
  }

  @Test
  void offer_comesInAPot_withItsOwnBall_andIsOrderedByAMonth() throws IOException {
    add("offers", "pot", "liner pot");
    add("offers", "ball kept %", "80");
    add("offers", "order by", "Aug 2026");

    assertThat(firstOffer().lot().potting().pot()).contains("liner pot");
    assertThat(firstOffer().lot().potting().ballKept()).isEqualTo(OptionalDouble.of(0.8));
    assertThat(firstOffer().orderBy()).contains(YearMonth.of(2026, 8));
    assertThat(firstOffer().taken(200).potting().pot()).contains("liner pot");
  }

  @Test
  void offerOrderedAfterItsArrival_isAskedAbout() throws IOException {
    add("offers", "order by", "Apr 2027");

    assertThat(problems())
        .contains(
            "offers.csv, row 2, column order by: it is ordered after it arrives in 2027-02 (2027-04);"
                + " correct one of them");
  }

  private Step step(int index) {
    return inputs().scenario().nursery().routes().get("pot and wire").steps().get(index);
  }

  @Test
  void growthAfterRootWork_isOfTheStep_andSaidToDoNothingWithoutRootWork() throws IOException {
    add("routes", "growth after 1 %", "90");

    assertThat(step(0).growthAfter().first()).isEqualTo(OptionalDouble.of(0.9));
    assertThat(step(0).growthAfter().second()).isEmpty();

    add("routes", "root work", "no");
    assertThat(problems())
        .contains(
            "routes.csv, row 2, column growth after 1 %: growth after root work changes nothing in a"
                + " step without root work (90); write yes under root work, or leave this empty");
  }

  @Test
  void potNone_takesThePlantsOutOfTheirPots_andHasNoMix() throws IOException {
    change(
        "routes.csv",
        "pot and wire,wire,3 months after pot up,,12.5,,,,,,,,",
        "pot and wire,wire,3 months after pot up,,12.5,none,,,,,,20,");
    change(
        "routes.csv",
        "pot and wire,pot on,March year 2,April,9,training pot,light mix,40,",
        "pot and wire,pot on,March year 2,April,9,training pot,light mix,,3");

    assertThat(step(1).potEnds()).isTrue();
    assertThat(step(1).pot()).isEmpty();
    assertThat(step(0).potEnds()).isFalse();

    change(
        "routes.csv",
        "pot and wire,wire,3 months after pot up,,12.5,none,,",
        "pot and wire,wire,3 months after pot up,,12.5,None,light mix,");
    assertThat(problems()).anyMatch(line -> line.contains("a mix needs a pot in the same step"));
  }

  @Test
  void otherCash_ofALot_withItsMonthsAndHours() throws IOException {
    add("other cash", "lot", "yews");
    add("other cash", "from", "2027-03");
    add("other cash", "to", "2028-02");
    add("other cash", "hours", "1.5");

    OtherCash row = inputs().scenario().nursery().otherCash().get(0);
    assertThat(row.lot()).contains("Yews");
    assertThat(row.from()).contains(YearMonth.of(2027, 3));
    assertThat(row.until()).contains(YearMonth.of(2028, 2));
    assertThat(row.hours()).isEqualTo(1.5);
  }

  @Test
  void otherCash_ofAnOffer_orOfNobodyKnown() throws IOException {
    add("other cash", "offer", "spring liners");
    assertThat(inputs().scenario().nursery().otherCash().get(0).lot()).contains("spring liners");

    change("other cash.csv", "spring liners", "sprin liners");
    assertThat(problems())
        .anyMatch(
            line ->
                line.contains("unknown lot or offer (sprin liners)")
                    && line.contains("spring liners"));
  }

  @Test
  void demand_unitsAndPriceVaryEachByItsOwn_andTheOldColumnIsTheUnits() throws IOException {
    add("demand", "price spread %", "12");
    Demand row = inputs().scenario().nursery().demand().get(0);
    assertThat(row.priceSpread()).isCloseTo(0.12, within(1e-12));
  }

  @Test
  void placesMinutesASale_winOverTheSettings() throws IOException {
    add("places", "minutes a sale", "25");
    change("nursery.json", "\"currency\"", "\"minutes a sale\": 3, \"currency\"");

    assertThat(settings().minutesASale()).isEqualTo(3);
    assertThat(inputs().scenario().nursery().places().values().iterator().next().minutesASale())
        .isEqualTo(OptionalDouble.of(25));
  }

  @Test
  void settings_ofTheSecondPerson_underBothNames() throws IOException {
    assertThat(settings().secondPersonMinutes()).isEqualTo(2);

    change("nursery.json", "\"currency\"", "\"lift minutes\": 4, \"currency\"");
    assertThat(settings().secondPersonMinutes()).isEqualTo(4);

    change("nursery.json", "\"lift minutes\": 4", "\"second person minutes\": 5");
    assertThat(settings().secondPersonMinutes()).isEqualTo(5);
    assertThat(settings().lotSpread()).isCloseTo(0.08, within(1e-12));
  }

  @Test
  void horizonValue_isAShare_orTheStocks_underEitherKey() throws IOException {
    change("plan.json", "\"seasons\"", "\"horizon value\": \"stock value\", \"seasons\"");
    assertThat(inputs().scenario().plan().horizonValue().isStockValue()).isTrue();

    change("plan.json", "\"stock value\"", "40");
    assertThat(inputs().scenario().plan().horizonValue())
        .isEqualTo(new HorizonValue.OfListPrice(0.4));

    change("plan.json", "\"horizon value\"", "\"horizon value % of list price\"");
    assertThat(inputs().scenario().plan().horizonValue())
        .isEqualTo(new HorizonValue.OfListPrice(0.4));
  }
}
