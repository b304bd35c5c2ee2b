package growingon.write.chart.plot;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.number.Writing;
import growingon.report.model.Chart;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.write.SampleReport;
import growingon.write.chart.ChartPainter;
import growingon.write.chart.ChartWords;
import growingon.write.chart.Letters;
import growingon.write.chart.PngPicture;
import growingon.write.chart.SvgPicture;
import growingon.write.chart.look.Format;
import growingon.write.chart.look.Lettering;
import growingon.write.chart.look.Palette;
import java.awt.Font;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import javax.imageio.ImageIO;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.w3c.dom.Element;

class ChartPartsTest {
  private static final double LETTER = 13;

  @Property(tries = 300)
  void monthLabels_forAnyLength_neverTouch(
      @ForAll @IntRange(min = 1, max = 480) int months,
      @ForAll @IntRange(min = 150, max = 1400) int pixels) {
    double room = (double) pixels / months;
    List<AxisMarks.Mark> marks =
        AxisMarks.of(
            SampleReport.months(months), room, label -> LETTER * label.length(), Writing.USUAL);
    for (int i = 1; i < marks.size(); i++) {
      AxisMarks.Mark left = marks.get(i - 1);
      AxisMarks.Mark right = marks.get(i);
      double between = (right.at() - left.at()) * room;
      assertThat(between)
          .isGreaterThan(LETTER * (left.label().length() + right.label().length()) / 2);
    }
    assertThat(marks).isNotEmpty();
  }

  @Example
  void monthLabels_forAYearAndForForty_areMonthsAndRoundYears() {
    assertThat(labels(12, 1200))
        .containsExactly("Nov 2026", "Jan 2027", "Mar 2027", "May 2027", "Jul 2027", "Sep 2027");
    assertThat(labels(480, 1200))
        .containsExactly("2030", "2035", "2040", "2045", "2050", "2055", "2060", "2065");
  }

  private static List<String> labels(int months, double pixels) {
    return AxisMarks.of(
            SampleReport.months(months),
            pixels / months,
            label -> LETTER * label.length(),
            Writing.USUAL)
        .stream()
        .map(AxisMarks.Mark::label)
        .toList();
  }

  @Example
  void seasonLabels_oneOfThemLong_allStandIfNoTwoTouch() {
    List<String> seasons =
        List.of("2026/27 from Nov", "2027/28", "2028/29", "a very long name of a season");
    assertThat(AxisMarks.of(seasons, 200, label -> LETTER * label.length(), Writing.USUAL))
        .extracting(AxisMarks.Mark::label)
        .containsExactly("2026/27 from Nov", "2027/28", "2028/29", "a very long name …");
  }

  @Example
  void secondBandOfBars_standsBesideTheFirst_soThatBothAreSeen() {
    Chart.Series low = new Chart.Series("P10", Chart.Role.LOW, List.of(1.0), "", 7);
    Chart.Series high = new Chart.Series("P90", Chart.Role.HIGH, List.of(2.0), "", 7);
    double[] first = Curve.strokes(low, high, Palette.stroke(0, 2), 0).x();
    double[] second = Curve.strokes(low, high, Palette.stroke(0, 2), 1).x();
    double right = Arrays.stream(first).filter(Double::isFinite).max().orElseThrow();
    assertThat(Arrays.stream(second).filter(Double::isFinite).min().orElseThrow())
        .isGreaterThan(right);
    assertThat(Arrays.stream(second).filter(Double::isFinite).max().orElseThrow()).isLessThan(0.88);
  }

  @Example
  void labelsWithLittleRoom_areBrokenInTwoLines_andSeasonsLoseTheirMonth() {
    List<String> limits = List.of("branched wanted", "West ground", "hours", "a b c");
    assertThat(AxisMarks.of(limits, 120, label -> LETTER * label.length(), Writing.USUAL))
        .extracting(AxisMarks.Mark::label)
        .containsExactly("branched\nwanted", "West\nground", "hours", "a\nb c");
    assertThat(
            AxisMarks.of(
                List.of("2026/27 from Nov", "2027/28"),
                120,
                label -> LETTER * label.length(),
                Writing.USUAL))
        .extracting(AxisMarks.Mark::label)
        .containsExactly("2026/27", "2027/28");
  }

  /** A name that is left out could be known from none beside it, so each is shortened instead. */
  @Example
  void namesWithLessRoom_areCut_andNoneIsLeftOut() {
    List<String> lots = List.of("Maples by the barn", "Hornbeams by the road", "Yews", "Crabs");
    assertThat(AxisMarks.of(lots, 110, label -> LETTER * label.length(), Writing.USUAL))
        .extracting(AxisMarks.Mark::label)
        .containsExactly("Maples…\n…e barn", "Hornbe…\n…e road", "Yews", "Crabs");
    assertThat(AxisMarks.of(lots, 60, label -> LETTER * label.length(), Writing.USUAL))
        .hasSizeLessThan(lots.size());
  }

  @Property
  void endLabels_thatFit_areSpreadInOrderWithinTheChart(
      @ForAll @Size(min = 1, max = 30) List<@DoubleRange(min = 0, max = 700) Double> wished) {
    double[] sorted = wished.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    double[] heights = DoubleStream.generate(() -> 20).limit(sorted.length).toArray();
    double[] spread = EndLabels.spread(sorted, heights, 0, 700);
    for (int i = 1; i < spread.length; i++) {
      assertThat(spread[i] - spread[i - 1]).isGreaterThanOrEqualTo(20 - 1e-9);
    }
    assertThat(spread[0]).isGreaterThanOrEqualTo(10 - 1e-9);
    assertThat(spread[spread.length - 1]).isLessThanOrEqualTo(690);
  }

  @Example
  void endLabels_alreadyApart_stay() {
    double[] middles = {10, 200, 670};
    assertThat(EndLabels.spread(middles, new double[] {20, 20, 60}, 0, 700))
        .containsExactly(10, 200, 670);
  }

  @Example
  void picture_encodedAndReadBack_isTheSame() throws IOException {
    BufferedImage image = ChartPainter.paint(SampleReport.charts().get(0));
    BufferedImage back = ImageIO.read(new ByteArrayInputStream(PngPicture.encode(image)));
    assertThat(Arrays.equals(pixels(image), pixels(back))).isTrue();
  }

  private static int[] pixels(BufferedImage image) {
    int width = image.getWidth();
    return image.getRGB(0, 0, width, image.getHeight(), null, 0, width);
  }

  @Example
  void words_ofAChart_nameItsPanels() {
    assertThat(ChartWords.alternative(SampleReport.space(12, 2)))
        .isEqualTo(
            "Chart: Bench space by place, in m², Nov 2026 to Oct 2027."
                + " Hatched: more than the place holds. Shown: long bench, short bench."
                + " The figures are in figures.json.");
  }

  @Example
  void words_ofAChart_tellWhatIsMarked() {
    Chart chart = SampleReport.charts().get(5);
    Chart marked =
        new Chart(
            chart.name(),
            chart.title(),
            chart.subtitle(),
            chart.kind(),
            chart.unit(),
            chart.categories(),
            chart.series(),
            List.of(
                Chart.Mark.point("lowest: EUR -3,412, May 2028", 18, -3412),
                Chart.Mark.beyond("2.5 m² missing, Jan 2027", 2, 12, "long bench")));
    assertThat(ChartWords.alternative(marked))
        .endsWith(
            " Marked: lowest: EUR -3,412, May 2028; long bench 2.5 m² missing, Jan 2027."
                + " The figures are in figures.json.");
  }

  @Example
  void outlines_ofBlocksThatTouch_haveNoSeamsBetweenMonths() {
    Block block =
        new Block(
            Palette.of(0),
            0,
            1,
            new double[] {0, 0, Double.NaN, 0},
            new double[] {5, 5, Double.NaN, 7});
    assertThat(block.outlines())
        .containsExactly(
            new double[] {0, 5, 2, 5, 2, 0, 0, 0}, new double[] {3, 7, 4, 7, 4, 0, 3, 0});
  }

  @Example
  void hatching_onThePage_isOnePatternOfLines() throws IOException {
    String svg = SvgPicture.draw(SampleReport.space(72, 6), Format.WIDE);
    var patterns = Letters.parse(svg).getElementsByTagNameNS("*", "pattern");
    assertThat(patterns.getLength()).isEqualTo(1);
    Element pattern = (Element) patterns.item(0);
    assertThat(svg).contains("url(#" + pattern.getAttribute("id") + ")");
    // else it would take the black stroke of the whole picture
    Element ground = (Element) pattern.getElementsByTagNameNS("*", "rect").item(0);
    assertThat(ground.getAttribute("stroke")).isEqualTo("none");
    assertThat(pattern.getElementsByTagNameNS("*", "path").getLength()).isEqualTo(1);
  }

  @Example
  void lines_ofALongText_breakAtWordsAndEndWithAnEllipsis() {
    Font font = Format.WIDE.text();
    double width = Lettering.width("Größere Gehölze", font) + 1;
    String text = "Größere Gehölze für schöne Höfe und Gärten";
    assertThat(Lettering.lines(text, font, width, 3))
        .containsExactly("Größere Gehölze", "für schöne Höfe", "und Gärten");
    assertThat(Lettering.lines(text, font, width, 2))
        .hasSize(2)
        .last(InstanceOfAssertFactories.STRING)
        .startsWith("für schöne")
        .endsWith("…");
    assertThat(Lettering.lines("Sechzigbuchstabenlangerortsname", font, width, 3))
        .hasSizeGreaterThan(1)
        .allMatch(each -> Lettering.width(each, font) <= width);
  }

  @Example
  void bridge_steps_beginWhereTheOneBeforeEnded() {
    List<Block> blocks =
        Block.bridge(
            List.of(
                bar(100.0, Double.NaN, Double.NaN, 60.0),
                bar(Double.NaN, 30.0, Double.NaN, Double.NaN),
                bar(Double.NaN, Double.NaN, -70.0, Double.NaN)),
            4,
            0.1,
            0.9);

    assertThat(blocks.get(0).low()).containsExactly(0, Double.NaN, Double.NaN, 0);
    assertThat(blocks.get(0).high()).containsExactly(100, Double.NaN, Double.NaN, 60);
    assertThat(blocks.get(1).low()[1]).isEqualTo(100);
    assertThat(blocks.get(1).high()[1]).isEqualTo(130);
    assertThat(blocks.get(2).low()[2]).isEqualTo(130);
    assertThat(blocks.get(2).high()[2]).isEqualTo(60);
  }

  private static Series bar(Double... values) {
    return new Series("", Role.VALUE, List.of(values), "", 0);
  }
}
