package growingon.report.plan.space;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.report.Cells;
import growingon.report.SmallNursery;
import growingon.report.chart.Charts;
import growingon.report.figures.Context;
import growingon.report.model.Chart;
import growingon.report.model.Column;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BenchSpaceSheetTest {
  private static Sheet sheet(Nurseries nursery) {
    return BenchSpaceSheet.of(SmallNursery.context(nursery));
  }

  private static Place open(Place place, int fromYear, int fromMonth) {
    return Place.named(place.name(), place.kind())
        .condition(place.condition())
        .squareMetres(place.squareMetres())
        .usableShare(place.usableShare())
        .benchDepthMm(place.benchDepthMm())
        .kgPerM2(place.kgPerM2())
        .costPerM2Year(place.costPerM2Year())
        .layout(place.layout())
        .liftFrom(place.liftFrom())
        .from(Optional.of(YearMonth.of(fromYear, fromMonth)))
        .until(place.until())
        .build();
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
        .containsExactly(
            "space-overflow",
            "room-next",
            "room-next-2",
            "room-left",
            "room-left-2",
            "bench-space");
    assertThat(tables.get(3).columns()).hasSize(11);
    assertThat(tables.get(4).columns())
        .extracting(Column::heading)
        .containsExactly("month", "bench 11", "bench 12", "without a place");
    assertThat(tables.get(4).rows().get(0))
        .containsExactly(YearMonth.of(2026, 11), 11.0, 12.0, -12.5);
  }

  @Test
  void chart_morePlacesThanPanels_drawsThoseThatOverflowFirst() {
    Nurseries nursery = Nurseries.bare();
    for (int i = 1; i <= 32; i++) {
      nursery.place(Nurseries.place("bench " + i, PlaceKind.BENCH, i == 32 ? 5 : 50));
      nursery.lot(Lots.lot("lot " + i).plantsPerM2(8).place("bench " + i).build());
    }
    Chart chart = spaceChart(nursery);
    assertThat(chart.series().stream().map(Chart.Series::group).distinct())
        .hasSize(32)
        .startsWith("bench 32", "bench 1", "bench 2");
  }

  private static Chart spaceChart(Nurseries nursery) {
    Context context = SmallNursery.context(nursery);
    return Charts.of(context).stream()
        .filter(each -> each.name().equals("bench-space"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void chart_placesInWhichNothingStands_areNamedAndNotDrawn() {
    Nurseries nursery =
        Nurseries.bare()
            .place(Nurseries.place("bench", PlaceKind.BENCH, 5))
            .place(Nurseries.place("tunnel", PlaceKind.TUNNEL, 20))
            .lot(Lots.lot("a").plantsPerM2(8).place("bench").build());
    Chart chart = spaceChart(nursery);
    assertThat(chart.series().stream().map(Chart.Series::group).distinct()).containsOnly("bench");
    assertThat(chart.subtitle())
        .isEqualTo("Above the line it does not fit. Nothing stands in tunnel.");
    nursery.place(Nurseries.place("ground", PlaceKind.STANDING_GROUND, 20));
    nursery.place(Nurseries.place("corner", PlaceKind.QUARANTINE, 20));
    nursery.place(Nurseries.place("shed", PlaceKind.TUNNEL, 20));
    nursery.place(Nurseries.place("yard", PlaceKind.TUNNEL, 20));
    assertThat(spaceChart(nursery).subtitle())
        .endsWith("Nothing stands in tunnel, ground, corner and 2 more places.");
  }

  @Test
  void chart_placeThatDoesNotHoldWhatStands_isMarkedWithAmountAndMonth() {
    Nurseries nursery =
        Nurseries.bare()
            .place(Nurseries.place("bench", PlaceKind.BENCH, 5))
            .place(Nurseries.place("ground", PlaceKind.STANDING_GROUND, 50))
            .lot(Lots.lot("a").plantsPerM2(8).place("bench").build())
            .lot(Lots.lot("b").plantsPerM2(8).place("ground").build());
    Chart chart = spaceChart(nursery);
    assertThat(chart.marks())
        .containsExactly(
            Chart.Mark.beyond("7.5 m² missing, Nov 2026", 0, 12.5, "bench"),
            new Chart.Mark(
                Chart.MarkKind.POINT, "most 12.5 of 50 m², Nov 2026", 0.5, 12.5, "ground"));
  }
}
