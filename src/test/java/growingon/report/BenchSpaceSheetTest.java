package growingon.report;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.Place;
import growingon.nursery.PlaceKind;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class BenchSpaceSheetTest {
  private static Sheet sheet(Nurseries nursery) {
    return BenchSpaceSheet.of(SmallNursery.context(nursery));
  }

  private static Place open(Place place, int fromYear, int fromMonth) {
    return new Place(
        place.name(),
        place.kind(),
        place.condition(),
        place.squareMetres(),
        place.usableShare(),
        place.benchDepthMm(),
        place.kgPerM2(),
        place.costPerM2Year(),
        place.layout(),
        place.liftFrom(),
        Optional.of(YearMonth.of(fromYear, fromMonth)),
        place.until(),
        OptionalDouble.empty());
  }

  @Test
  void overflow_closedPlace_isAllThatIsNeeded() {
    Nurseries nursery =
        Nurseries.bare()
            .place(open(Nurseries.place("bench", PlaceKind.BENCH, 20), 2027, 2))
            .lot(Lots.lot("a").plantsPerM2(8).place("bench").build());
    Cells overflow = Cells.of(sheet(nursery), "space-overflow");
    assertThat(overflow.rows()).hasSize(1);
    assertThat(overflow.rows().get(0))
        .containsExactly(
            "bench",
            "bench",
            YearMonth.of(2026, 11),
            YearMonth.of(2027, 1),
            YearMonth.of(2026, 11),
            12.5,
            0.0,
            12.5,
            null,
            null);
    assertThat(Cells.of(sheet(nursery), "bench-space").all("in use").subList(0, 4))
        .containsExactly(null, null, null, 0.625);
  }

  @Test
  void roomLeft_manyPlaces_isSplitIntoTablesThatFitAPage() {
    Nurseries nursery = Nurseries.bare().lot(Lots.lot("a").plantsPerM2(8).build());
    for (int i = 1; i <= 12; i++) {
      nursery.place(Nurseries.place("bench " + i, PlaceKind.BENCH, i));
    }
    List<Table> tables = sheet(nursery).tables();
    assertThat(tables)
        .extracting(Table::name)
        .containsExactly("space-overflow", "room-left", "room-left-2", "bench-space");
    assertThat(tables.get(1).columns()).hasSize(11);
    assertThat(tables.get(2).columns())
        .extracting(Column::heading)
        .containsExactly("month", "bench 11", "bench 12", "without a place");
    assertThat(tables.get(2).rows().get(0))
        .containsExactly(YearMonth.of(2026, 11), 11.0, 12.0, -12.5);
  }

  @Test
  void chart_morePlacesThanPanels_drawsThoseThatOverflowFirst() {
    Nurseries nursery =
        Nurseries.bare().lot(Lots.lot("a").plantsPerM2(8).place("bench 32").build());
    for (int i = 1; i <= 32; i++) {
      nursery.place(Nurseries.place("bench " + i, PlaceKind.BENCH, 5));
    }
    Context context = SmallNursery.context(nursery);
    Chart chart =
        Charts.of(context, new SeasonFigures(context.accounts())).stream()
            .filter(each -> each.name().equals("bench-space"))
            .findFirst()
            .orElseThrow();
    assertThat(chart.series().stream().map(Chart.Series::group).distinct())
        .hasSize(32)
        .startsWith("bench 32", "bench 1", "bench 2");
  }
}
