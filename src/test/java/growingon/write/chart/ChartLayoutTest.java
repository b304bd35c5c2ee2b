package growingon.write.chart;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Mark;
import growingon.report.model.Chart.MarkKind;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.write.SampleReport;
import growingon.write.chart.look.Format;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.time.Year;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Charts of every kind and of odd shapes can be read: on half a page, and on a telephone. */
class ChartLayoutTest {
  /** Sixty letters, umlauts among them. */
  private static final String LONG = "Größere Gehölze für übermäßig schöne Höfe, Nördlinger Straße";

  /** A4 across between the margins of the workbook, mm. */
  private static final double PAGE_WIDE = 274;

  private static final double PAGE_HIGH = 181;

  private static final double MM_A_POINT = 25.4 / 72;

  /** What is drawn, in months or seasons. */
  private record Shape(
      String name, List<String> categories, int series, int groups, IntToDoubleFunction value) {
    Chart as(ChartKind kind) {
      boolean panels = kind == ChartKind.PANELS || kind == ChartKind.BAR_PANELS;
      List<Series> all = new ArrayList<>();
      for (int group = 0; group < (panels ? groups : 1); group++) {
        all.addAll(series(kind, panels ? names(group) : ""));
      }
      return new Chart("odd", LONG + " " + name, LONG, kind, "EUR", categories, all, marks(kind));
    }

    private String names(int number) {
      return number % 2 == 0 ? LONG + number : "bench " + number;
    }

    private List<Series> series(ChartKind kind, String group) {
      List<Series> all = new ArrayList<>();
      if (kind == ChartKind.BRIDGE) {
        return steps();
      }
      for (int i = 0; i < series; i++) {
        all.add(new Series(names(i), Role.VALUE, values(), group, 10 + i % 5));
      }
      if (kind == ChartKind.SWINGS) {
        return swings();
      }
      if (kind != ChartKind.HISTOGRAM) {
        all.add(new Series("P10", Role.LOW, values(), group, 7));
        all.add(new Series("P90", Role.HIGH, values(), group, 7));
        all.add(new Series("there", Role.LIMIT, constant(value.applyAsDouble(0)), group, 7));
      }
      return all;
    }

    /** Each row a step of one of three series, as those of a bridge are. */
    private List<Series> steps() {
      List<Series> all = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        int own = i;
        List<Double> values =
            IntStream.range(0, categories.size())
                .mapToObj(row -> row % 3 == own ? value.applyAsDouble(row) : (Double) Double.NaN)
                .toList();
        all.add(new Series("step " + i, Role.VALUE, values, "", i));
      }
      return all;
    }

    private List<Series> swings() {
      return List.of(
          new Series("at P10", Role.LOW, values(), "", 4),
          new Series("at P90", Role.HIGH, constant(value.applyAsDouble(1)), "", 0),
          new Series("plan's line", Role.LINE, constant(value.applyAsDouble(0)), "", 7));
    }

    private List<Mark> marks(ChartKind kind) {
      int last = categories.size() - 1;
      double height = value.applyAsDouble(last);
      if (Double.isNaN(height) || kind == ChartKind.BRIDGE || kind == ChartKind.SWINGS) {
        return List.of();
      }
      String group = kind == ChartKind.PANELS || kind == ChartKind.BAR_PANELS ? names(0) : "";
      return List.of(
          new Mark(MarkKind.UPRIGHT, "today: records to Oct 2024", 0, 0, group),
          new Mark(MarkKind.UPRIGHT, "P90 1,234,567", last + 1, 0, group),
          new Mark(MarkKind.UPRIGHT, "mean 1,234,000", last + 1, 0, group),
          new Mark(MarkKind.POINT, "lowest: EUR -1,234,567, Mar 2027", 0.5, height, group),
          new Mark(MarkKind.BEYOND, "1,234.5 m² missing, Mar 2027", last + 0.5, height, group));
    }

    private List<Double> values() {
      return IntStream.range(0, categories.size()).mapToObj(value::applyAsDouble).toList();
    }

    private List<Double> constant(double each) {
      return Collections.nCopies(categories.size(), each);
    }
  }

  private static List<String> seasons(int count) {
    return IntStream.range(0, count)
        .mapToObj(
            i ->
                "%s/%02d%s".formatted(Year.of(2026 + i), (27 + i) % 100, i == 0 ? " from Nov" : ""))
        .toList();
  }

  private static List<String> rows(int count) {
    return IntStream.range(0, count).mapToObj(i -> i % 3 == 0 ? LONG : "cause " + i).toList();
  }

  static Stream<Arguments> shapes() {
    List<Shape> byMonth =
        List.of(
            new Shape("a month", SampleReport.months(1), 1, 1, i -> 5),
            new Shape("six seasons", SampleReport.months(72), 5, 8, i -> 100 + i),
            new Shape("forty seasons", SampleReport.months(480), 2, 9, i -> 1e6 + 1e5 * i),
            new Shape("thirty places", SampleReport.months(72), 1, 30, i -> 1000 - i),
            new Shape("too many places", SampleReport.months(36), 1, 34, i -> 50 * (i % 12)),
            new Shape("all nil", SampleReport.months(24), 3, 2, i -> 0),
            new Shape("below nil", SampleReport.months(24), 2, 3, i -> -12_345 * i),
            new Shape("both signs", SampleReport.months(24), 2, 4, i -> 500 * i - 6000),
            new Shape("gaps", SampleReport.months(24), 2, 5, i -> i % 3 == 0 ? Double.NaN : i),
            new Shape("tiny", SampleReport.months(24), 2, 1, i -> 1e-6 * i));
    List<Shape> bySeason =
        List.of(
            new Shape("a season", seasons(1), 1, 1, i -> 12_345),
            new Shape("a season of five", seasons(1), 5, 2, i -> 12_345),
            new Shape("six seasons", seasons(6), 5, 4, i -> 20_000 - 900 * i),
            new Shape("forty seasons", seasons(40), 5, 30, i -> 1e6),
            new Shape("all nil", seasons(6), 2, 1, i -> 0));
    List<Shape> byRow =
        List.of(
            new Shape("a row", rows(1), 1, 1, i -> 1000),
            new Shape("ten rows", rows(10), 2, 1, i -> 1000 * i - 4000),
            new Shape("nil", rows(3), 2, 1, i -> 0),
            new Shape("huge", rows(5), 2, 1, i -> -1e9 * i));
    return Stream.of(
            pairs(byMonth, ChartKind.PANELS, ChartKind.LINES, ChartKind.STACKED_BARS),
            pairs(bySeason, ChartKind.BAR_PANELS, ChartKind.STACKED_BARS, ChartKind.BARS),
            pairs(byRow, ChartKind.SWINGS, ChartKind.BRIDGE))
        .flatMap(each -> each);
  }

  private static Stream<Arguments> pairs(List<Shape> shapes, ChartKind... kinds) {
    return Stream.of(kinds)
        .flatMap(
            kind -> shapes.stream().map(shape -> Arguments.of(kind, shape.name(), shape.as(kind))));
  }

  @ParameterizedTest(name = "{0} of {1}")
  @MethodSource("shapes")
  void letters_ofAnyShape_standApartWithinThePicture(ChartKind kind, String name, Chart chart)
      throws IOException {
    for (Format format : Format.values()) {
      List<Letters> letters = Letters.of(Letters.parse(SvgPicture.draw(chart, format)));
      Rectangle2D picture =
          new Rectangle2D.Double(0, 0, format.width(), ChartPainter.height(chart, format));
      assertThat(letters).as(format + " has letters").hasSizeGreaterThan(2);
      assertThat(Letters.where(letters, each -> !picture.contains(each.ink())))
          .as(format + ": outside the picture")
          .isEmpty();
      assertThat(Letters.overlapping(letters)).as(format + ": overlapping").isEmpty();
    }
  }

  @ParameterizedTest(name = "{0} of {1}")
  @MethodSource("shapes")
  void letters_onPaperAndTelephone_areLargeEnough(ChartKind kind, String name, Chart chart)
      throws IOException {
    boolean fillsAPage = chart.series().stream().map(Series::group).distinct().count() > 9;
    double height = ChartPainter.height(chart, Format.WIDE);
    double paperMm = fillsAPage ? within(PAGE_WIDE, PAGE_HIGH, height) : onHalfAPage(height);
    double points = paperMm / Format.WIDE.width() / MM_A_POINT;
    assertThat(Letters.of(Letters.parse(SvgPicture.draw(chart, Format.WIDE))))
        .allMatch(each -> each.size() * points >= 7, "7 points on paper");
    assertThat(Letters.of(Letters.parse(SvgPicture.draw(chart, Format.NARROW))))
        .allMatch(each -> each.size() >= 12, "12 pixels on a telephone");
  }

  /** Width in mm of a picture of such a height in units, in a frame of so many mm. */
  private static double within(double wide, double high, double height) {
    return Math.min(wide, high * Format.WIDE.width() / height);
  }

  /** The upper half of the page or the left one, whichever suits the picture. */
  private static double onHalfAPage(double height) {
    return Math.max(
        within(PAGE_WIDE, PAGE_HIGH / 2, height), within(PAGE_WIDE / 2, PAGE_HIGH, height));
  }

  @Test
  void classes_ofAHistogram_andTheirUprights_standApart() throws IOException {
    List<String> edges =
        IntStream.range(0, 17).mapToObj(i -> "%,d".formatted(2000 * i - 12_000)).toList();
    List<Double> draws = IntStream.range(0, 17).mapToObj(i -> (double) i % 9).toList();
    Chart chart =
        new Chart(
            "gains",
            LONG,
            LONG,
            ChartKind.HISTOGRAM,
            "draws of 100, by gain in EUR",
            edges,
            List.of(new Series("pays", Role.VALUE, draws, "", 0)),
            List.of(
                Mark.upright("mean 2,673", 7.3),
                Mark.upright("P10 -2,226", 7.2),
                Mark.upright("P90 8,017", 7.5)));
    for (Format format : Format.values()) {
      List<Letters> letters = Letters.of(Letters.parse(SvgPicture.draw(chart, format)));
      assertThat(Letters.overlapping(letters)).isEmpty();
      assertThat(letters.stream().map(Letters::text))
          .contains("mean 2,673", "P10 -2,226", "P90 8,017");
    }
  }
}
