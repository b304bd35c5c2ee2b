package growingon.write;

import growingon.report.Chart;
import growingon.report.Chart.ChartKind;
import java.awt.Dimension;
import java.io.IOException;
import java.io.StringWriter;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Draws a chart as an SVG element for a page that holds several of them. */
final class SvgPicture {
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";
  private static final int DECIMALS = 2;

  private SvgPicture() {}

  /** Whether a chart is drawn well as SVG: stacked areas show hairlines where they meet. */
  static boolean suits(Chart chart) {
    return chart.kind() != ChartKind.STACKED_AREAS && chart.kind() != ChartKind.PANELS;
  }

  static String draw(Chart chart) throws IOException {
    SVGGraphics2D g2 = new SVGGraphics2D(context(chart), false);
    g2.setSVGCanvasSize(new Dimension(ChartPainter.WIDTH, ChartPainter.height(chart)));
    ChartPainter.draw(g2, chart);
    Element root = g2.getRoot();
    root.removeAttribute("width");
    root.removeAttribute("height");
    root.setAttribute(
        "viewBox", "0 0 %d %d".formatted(ChartPainter.WIDTH, ChartPainter.height(chart)));
    root.setAttribute("role", "img");
    root.setAttribute("aria-label", ChartWords.alternative(chart));
    StringWriter text = new StringWriter(1 << 15);
    g2.stream(root, text, false, false);
    String whole = SafeText.forXml(text.toString());
    return whole.substring(whole.indexOf("<svg"));
  }

  private static SVGGeneratorContext context(Chart chart) {
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
    context.setComment("");
    context.setPrecision(DECIMALS);
    context.setIDGenerator(new Named(chart.name()));
    return context;
  }

  private static Document document() {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(NAMESPACE, "svg", null);
    } catch (ParserConfigurationException impossible) {
      throw new IllegalStateException("the Java library makes no XML", impossible);
    }
  }

  /** Names that differ from those of the other charts of the page. */
  private static final class Named extends SVGIDGenerator {
    private final String chart;
    private int number;

    Named(String chart) {
      this.chart = chart;
    }

    @Override
    public String generateID(String prefix) {
      return chart + "-" + prefix + ++number;
    }
  }
}
