package growingon.write.chart;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.write.SampleReport;
import growingon.write.chart.look.Format;
import growingon.write.chart.look.Palette;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class ChartPainterTest {
  @Test
  void chart_ofEachSample_showsTheColoursOfItsSeries() {
    for (Chart chart : SampleReport.charts()) {
      BufferedImage image = ChartPainter.paint(chart);
      assertThat(image.getWidth()).isEqualTo(1600);
      assertThat(image.getHeight()).isEqualTo(ChartPainter.height(chart)).isBetween(900, 1060);
      for (Series series : chart.series()) {
        Color colour = series.role() == Role.LIMIT ? Color.BLACK : Palette.of(series.colour());
        assertThat(count(image, colour)).as(chart.name() + " " + series.name()).isGreaterThan(200);
      }
    }
  }

  static Stream<Arguments> oddShapes() {
    return Stream.of(
            shape("one month", 1, 1, i -> 5),
            shape("one month of many series", 1, 12, i -> 5),
            shape("all nought", 24, 3, i -> 0),
            shape("gaps", 24, 3, i -> i % 3 == 0 ? Double.NaN : i),
            shape("every second a gap", 24, 1, i -> i % 2 == 0 ? Double.NaN : i),
            shape("below nought", 24, 3, i -> -i),
            shape("both signs", 24, 3, i -> i - 12),
            shape("forty series", 72, 40, i -> i + 1),
            shape("forty years", 480, 4, i -> i),
            shape("huge", 24, 2, i -> 1e9 * i),
            shape("tiny", 24, 2, i -> 1e-6 * i))
        .flatMap(
            shape ->
                Stream.of(ChartKind.values()).map(kind -> Arguments.of(shape.name(), kind, shape)));
  }

  private static Shape shape(String name, int months, int count, IntToDoubleFunction value) {
    List<Series> series = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      series.add(series("series " + i, Role.VALUE, months, value, "group " + i, i));
    }
    return new Shape(name, months, series);
  }

  record Shape(String name, int months, List<Series> series) {
    Chart as(ChartKind kind) {
      return new Chart("odd", "Odd", "", kind, "things", SampleReport.months(months), series);
    }
  }

  @ParameterizedTest(name = "{0} as {1}")
  @MethodSource("oddShapes")
  void chart_ofOddShape_isDrawn(String name, ChartKind kind, Shape shape) {
    BufferedImage image = ChartPainter.paint(shape.as(kind));
    assertThat(inked(image)).as("pixels that are not white").isGreaterThan(2_000);
  }

  @ParameterizedTest
  @EnumSource(ChartKind.class)
  void chart_withoutFigures_saysSo(ChartKind kind) {
    Chart gaps = new Shape("gaps", 3, List.of(valueSeries(3, i -> Double.NaN))).as(kind);
    Chart nothing = new Chart("odd", "Odd", "", kind, "things", List.of(), List.of());
    assertThat(ChartPainter.paint(gaps).getWidth()).isEqualTo(1600);
    assertThat(inked(ChartPainter.paint(nothing))).isGreaterThan(500);
  }

  @Test
  void stack_drawn_reachesTheSumOfItsSeries() {
    Chart stacked =
        new Shape("two", 2, List.of(valueSeries(2, i -> 30), valueSeries(2, i -> 70)))
            .as(ChartKind.STACKED_BARS);
    Chart single =
        new Shape("two", 2, List.of(valueSeries(2, i -> 100))).as(ChartKind.STACKED_BARS);
    Color blue = Palette.of(0);
    assertThat(top(ChartPainter.paint(stacked), blue))
        .isEqualTo(top(ChartPainter.paint(single), blue));
  }

  @Test
  void panel_withMoreThanItsLimit_showsTheRestHatched() {
    BufferedImage over = ChartPainter.paint(panel(12));
    BufferedImage within = ChartPainter.paint(panel(8));
    assertThat(count(over, Palette.OVER)).isGreaterThan(5_000);
    assertThat(count(within, Palette.OVER)).isZero();
  }

  private static Chart panel(double needed) {
    return new Chart(
        "space",
        "Space",
        "",
        ChartKind.PANELS,
        "m²",
        SampleReport.months(12),
        List.of(
            series("needed", Role.VALUE, 12, i -> needed, "bench", 4),
            series("there", Role.LIMIT, 12, i -> 10, "bench", 7)));
  }

  @Test
  void band_amongLines_isShadedBetweenItsEdges() {
    BufferedImage image =
        ChartPainter.paint(
            new Shape(
                    "fan",
                    12,
                    List.of(
                        series("P10", Role.LOW, 12, i -> 20, "", 4),
                        series("P90", Role.HIGH, 12, i -> 80, "", 4),
                        series("plan's line", Role.VALUE, 12, i -> 50, "", 0)))
                .as(ChartKind.LINES));
    assertThat(count(image, Palette.pale(4))).isGreaterThan(300_000);
    assertThat(count(image, Palette.of(0))).isGreaterThan(2_000);
  }

  @Test
  void band_onBars_isAStrokeFromItsLowerToItsUpperEdge() {
    Series bars = series("sales", Role.VALUE, 6, i -> 50, "", 0);
    Series high = series("P90", Role.HIGH, 6, i -> 80, "", 2);
    BufferedImage image =
        ChartPainter.paint(
            new Shape("fan", 6, List.of(bars, series("P10", Role.LOW, 6, i -> 20, "", 2), high))
                .as(ChartKind.STACKED_BARS));
    Chart to80 =
        new Shape("to 80", 6, List.of(series("sales", Role.VALUE, 6, i -> 80, "", 0)))
            .as(ChartKind.STACKED_BARS);
    assertThat(count(image, Palette.of(2))).isGreaterThan(3_000);
    assertThat(top(image, Palette.of(2)))
        .isBetween(top(ChartPainter.paint(to80), Palette.of(0)) - 3, 900);
    assertThat(top(image, Palette.of(2))).isLessThan(top(image, Palette.of(0)));
  }

  @Test
  void swings_drawn_haveABarToEachEndOfEachRow() {
    List<Series> series =
        List.of(
            series("at P10", Role.LOW, 3, i -> -40 + 10 * i, "", 1),
            series("at P90", Role.HIGH, 3, i -> 60 - 10 * i, "", 0),
            series("plan's line", Role.LINE, 3, i -> 10, "", 7));
    Chart chart =
        new Chart(
            "swings",
            "Swings",
            "",
            ChartKind.SWINGS,
            "EUR",
            List.of("one", "two", "three"),
            series);
    BufferedImage image = ChartPainter.paint(chart);
    // bars of 50, 40 and 30 on either side
    assertThat((double) count(image, Palette.of(1)) / count(image, Palette.of(0)))
        .isBetween(0.95, 1.05);
    assertThat(count(image, Palette.of(0))).isGreaterThan(20_000);
    assertThat(image.getHeight()).isEqualTo(ChartPainter.height(chart)).isBetween(400, 1100);
  }

  @Test
  void panels_moreThanThirty_areNotDrawnAndSo() {
    BufferedImage thirty = ChartPainter.paint(SampleReport.space(72, 30));
    BufferedImage more = ChartPainter.paint(SampleReport.space(72, 34));
    assertThat(more.getHeight()).isEqualTo(thirty.getHeight()).isEqualTo(1600);
  }

  @Test
  void limit_onBars_showsWhatLiesBeyondItHatched() {
    List<Series> series =
        List.of(
            series("potting", Role.VALUE, 6, i -> 60, "", 10),
            series("wiring", Role.VALUE, 6, i -> i == 4 ? 70 : 20, "", 11),
            series("available", Role.LIMIT, 6, i -> 100, "", 7));
    BufferedImage image =
        ChartPainter.paint(new Shape("hours", 6, series).as(ChartKind.STACKED_BARS));
    assertThat(count(image, Palette.OVER)).isGreaterThan(2_000);
  }

  @Test
  void chart_drawnTwice_isTheSameToTheByte() throws IOException {
    for (Chart chart : SampleReport.charts()) {
      assertThat(PngPicture.encode(ChartPainter.paint(chart)))
          .isEqualTo(PngPicture.encode(ChartPainter.paint(chart)));
      assertThat(SvgPicture.draw(chart, Format.NARROW))
          .isEqualTo(SvgPicture.draw(chart, Format.NARROW));
    }
  }

  private static Series valueSeries(int months, IntToDoubleFunction value) {
    return series("value", Role.VALUE, months, value, "", 0);
  }

  private static Series series(
      String name, Role role, int months, IntToDoubleFunction value, String group, int colour) {
    List<Double> values = IntStream.range(0, months).mapToObj(value::applyAsDouble).toList();
    return new Series(name, role, values, group, colour);
  }

  private static long count(BufferedImage image, Color colour) {
    return pixels(image).filter(pixel -> pixel == (colour.getRGB() & 0xFFFFFF)).count();
  }

  private static long inked(BufferedImage image) {
    return pixels(image).filter(pixel -> pixel != 0xFFFFFF).count();
  }

  private static IntStream pixels(BufferedImage image) {
    return IntStream.of(
            image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()))
        .map(pixel -> pixel & 0xFFFFFF);
  }

  /** First row from the top, below the heading, with a run of the colour. */
  private static int top(BufferedImage image, Color colour) {
    for (int y = 150; y < image.getHeight(); y++) {
      int run = 0;
      for (int x = 0; x < 1100; x++) {
        run += image.getRGB(x, y) == colour.getRGB() ? 1 : 0;
      }
      if (run > 40) {
        return y;
      }
    }
    throw new AssertionError("nothing drawn in " + colour);
  }
}
