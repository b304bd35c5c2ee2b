package growingon.report.edition;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.nursery.Quality;
import growingon.nursery.Scenario;
import growingon.project.Facts;
import growingon.project.LotHistory;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.report.edition.Availability.Line;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a customer can have of the plants that stand. */
class AvailabilityTest {
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

  /** Plants of standing lots of a line's species and grade free or sold in a month. */
  private static double freeOrSold(Projection projection, Line line, int month) {
    double sum = 0;
    for (LotHistory lot : projection.lots()) {
      boolean isOfLine =
          lot.lot().purchase().isEmpty() && lot.lot().species().equals(line.key().species());
      int quality = line.key().quality().ordinal();
      if (isOfLine && month >= 0) {
        sum += lot.monthStock(month).ready()[quality][line.key().rank()];
        sum +=
            lot.sales().stream()
                .filter(sale -> sale.month() == month && sale.grade() == line.key().rank())
                .filter(sale -> sale.quality() == Quality.values()[quality])
                .mapToDouble(sale -> sale.units())
                .sum();
      }
    }
    return sum;
  }
}
