package growingon.report.edition;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Quality;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import growingon.report.edition.Availability.Line;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a customer can have of the plants that stand. */
class AvailabilityTest {
  private static final YearMonth FIRST = YearMonth.of(2026, 11);

  /** The demonstration as it was when its list was found to be late. */
  private static final Projection OLDER =
      Projector.project(
          Loader.load(
                  Path.of("src/test/resources/nurseries/with-the-field-lot.json"),
                  new LoadOptions(LocalDate.of(2026, 11, 3)))
              .value()
              .orElseThrow()
              .scenario(),
          Facts.NONE);

  private static final List<Line> LISTED = new Availability(OLDER.scenario()).lines();

  private static List<Line> lines(Nurseries nursery) {
    return new Availability(nursery.scenario()).lines();
  }

  @Test
  void plantsThatStandReady_areThereNow_andBoughtOnesAreNotListed() {
    List<Line> lines =
        lines(
            Nurseries.bare()
                .sellsAll("one", "any", 20)
                .lot(Lots.lot("oaks").quantity(83).build())
                .lot(Lots.lot("to come").quantity(60).arrived(2027, 2).bought(3, 30).build()));

    assertThat(lines).hasSize(1);
    assertThat(lines.get(0).now()).isEqualTo(80);
    assertThat(lines.get(0).more()).isZero();
    assertThat(lines.get(0).from()).isEmpty();
  }

  @Test
  void fewerThanFive_areNotListed() {
    assertThat(
            lines(
                Nurseries.bare()
                    .sellsAll("one", "any", 20)
                    .lot(Lots.lot("oaks").quantity(4).build())))
        .isEmpty();
  }

  @Test
  void demonstration_whatIsSaidToBeThereNow_standsFreeInTheFirstMonth() {
    Scenario scenario =
        Loader.load(
                Path.of("plans", "with-the-field-lot.json"),
                new LoadOptions(LocalDate.of(2026, 11, 3)))
            .value()
            .orElseThrow()
            .scenario();
    Projection projection = Projector.project(scenario, Facts.NONE);
    for (Line line : new Availability(scenario).lines()) {
      if (line.now() > 0) {
        assertThat(freeOrSold(projection, line, 0)).as("%s", line).isGreaterThan(line.now() - 0.01);
      }
    }
  }

  /**
   * An older list named the month of the first planned sale: for these species and grades it stood
   * after the first month in which a free plant stands. Each line now names that month, found here
   * from the projection alone.
   */
  @ParameterizedTest
  @CsvSource({
    "Hawthorn, started, 2027-09",
    "Hawthorn, shaped, 2027-05",
    "Crab apple, started, 2027-07",
    "Zelkova, branched, 2027-04",
    "Zelkova, stout, 2027-05",
    "English yew, started, 2027-04",
    "English yew, layered, 2027-09",
    "English yew, veteran, 2027-03",
    "Field maple, branched, 2027-04",
    "Field maple, stout, 2027-05",
    "Hornbeam, started, 2027-05",
    "Hornbeam, branched, 2027-02",
    "Trident maple, branched, 2027-04",
    "Trident maple, stout, 2027-04",
    "Scots pine, started, 2027-04",
    "Scots pine, layered, 2027-05",
    "Chinese juniper, clothed, 2027-06"
  })
  void demonstration_lineThatWasLate_namesTheFirstMonthInWhichAFreePlantStands(
      String species, String grade, YearMonth late) {
    YearMonth told =
        LISTED.stream()
            .filter(line -> line.key().species().equals(species))
            .filter(line -> line.key().grade().equals(grade))
            .map(line -> line.first().orElse(FIRST))
            .min(Comparator.naturalOrder())
            .orElseThrow();

    assertThat(told).isEqualTo(firstFree(species, grade)).isBefore(late);
  }

  /** The eighteenth: fewer than five of a quality, which a list does not name. */
  @Test
  void demonstration_lateLineOfFewerThanFive_isNotListed() {
    assertThat(LISTED)
        .noneMatch(
            line ->
                line.key().species().equals("Field maple") && line.key().grade().equals("shaped"));
    for (Quality quality : Quality.values()) {
      assertThat(standing("Field maple", "shaped", quality)).isLessThan(5);
    }
  }

  /** The first month in which a plant of a standing lot that may be sold stands, or was sold. */
  private static YearMonth firstFree(String species, String grade) {
    int month = 0;
    while (free(species, grade, month) < 0.5) {
      month++;
    }
    return FIRST.plusMonths(month);
  }

  private static double free(String species, String grade, int month) {
    double sum = 0;
    for (LotHistory lot : OLDER.lots()) {
      List<String> grades = lot.grades().stream().map(Grade::name).toList();
      int rank = grades.indexOf(grade);
      boolean isOf = lot.lot().purchase().isEmpty() && lot.lot().species().equals(species);
      if (isOf) {
        sum += lot.monthStock(month).ready().ofGrade(rank);
        sum +=
            lot.sales().stream()
                .filter(sale -> sale.month() == month && sale.grade() == rank)
                .mapToDouble(sale -> sale.units())
                .sum();
      }
    }
    return sum;
  }

  @Test
  void demonstration_listsNothingThatIsNotBoughtYet() {
    Scenario without =
        OLDER
            .scenario()
            .withLots(
                OLDER.scenario().lots().stream().filter(lot -> lot.purchase().isEmpty()).toList());

    assertThat(OLDER.scenario().lots()).hasSizeGreaterThan(without.lots().size());
    assertThat(LISTED)
        .extracting(line -> line.key().species())
        .isSubsetOf(without.lots().stream().map(Lot::species).toList());
    assertThat(LISTED)
        .allSatisfy(
            line ->
                assertThat(standing(line.key().species(), line.key().grade(), line.key().quality()))
                    .as("%s", line)
                    .isGreaterThan(line.now() + line.more() - 0.01));
  }

  /** Most plants of standing lots that were ready or sold until the end of the next season. */
  private static double standing(String species, String grade, Quality quality) {
    double all = 0;
    for (LotHistory lot : OLDER.lots()) {
      if (lot.lot().purchase().isEmpty() && lot.lot().species().equals(species)) {
        int rank = lot.grades().stream().map(Grade::name).toList().indexOf(grade);
        int last = OLDER.horizon().seasonLast(1);
        double sold = 0;
        double most = 0;
        for (int month = 0; month <= last; month++) {
          int at = month;
          sold +=
              lot.sales().stream()
                  .filter(sale -> sale.month() == at && sale.grade() == rank)
                  .filter(sale -> sale.quality() == quality)
                  .mapToDouble(sale -> sale.units())
                  .sum();
          most = Math.max(most, sold + lot.monthStock(month).ready().of(quality, rank));
        }
        all += most;
      }
    }
    return all;
  }

  /** Plants of standing lots of a line's species and grade free or sold in a month. */
  private static double freeOrSold(Projection projection, Line line, int month) {
    double sum = 0;
    for (LotHistory lot : projection.lots()) {
      boolean isOfLine =
          lot.lot().purchase().isEmpty() && lot.lot().species().equals(line.key().species());
      if (isOfLine && month >= 0) {
        sum += lot.monthStock(month).ready().of(line.key().quality(), line.key().rank());
        sum +=
            lot.sales().stream()
                .filter(sale -> sale.month() == month && sale.grade() == line.key().rank())
                .filter(sale -> sale.quality() == line.key().quality())
                .mapToDouble(sale -> sale.units())
                .sum();
      }
    }
    return sum;
  }
}
