package growingon.write.chart;

import growingon.report.model.Chart;
import growingon.write.chart.look.Format;
import growingon.write.chart.look.Hatch;
import growingon.write.text.SafeText;
import java.awt.Dimension;
import java.io.IOException;
import java.io.StringWriter;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Draws a chart as an SVG element for a page that holds several of them. */
public final class SvgPicture {
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";
  private static final int DECIMALS = 2;

  /** A chart of more values than this is smaller as PNG. */
  private static final int MOST_VALUES = 5_000;

  private SvgPicture() {}

  /** Whether a chart is better drawn as SVG than as PNG. */
  public static boolean suits(Chart chart) {
    return chart.series().size() * chart.categories().size() <= MOST_VALUES;
  }

  public static String draw(Chart chart, Format format) throws IOException {
    return draw(chart, format, new ChartPainter(chart, format));
  }

  /** The same of a chart that was laid out in that format before. */
  public static String draw(Chart chart, Format format, ChartPainter laidOut) throws IOException {
    SVGGraphics2D g2 = new SVGGraphics2D(context(chart, format), false);
    int height = laidOut.height();
    g2.setSVGCanvasSize(new Dimension(format.width(), height));
    laidOut.draw(g2);
    Element root = g2.getRoot();
    root.removeAttribute("width");
    root.removeAttribute("height");
    root.setAttribute("viewBox", "0 0 " + format.width() + " " + height);
    root.setAttribute("class", word(format));
    definitions(root).removeAttribute("id"); // it is the same in every picture
    root.setAttribute("role", "img");
    root.setAttribute("aria-label", ChartWords.alternative(chart));
    StringWriter text = new StringWriter(1 << 15);
    g2.stream(root, text, false, false);
    String whole = SafeText.forXml(text.toString());
    return whole.substring(whole.indexOf("<svg"));
  }

  private static Element definitions(Element root) {
    return (Element) root.getElementsByTagNameNS(NAMESPACE, "defs").item(0);
  }

  private static String word(Format format) {
    return format.name().toLowerCase(Locale.ROOT);
  }

  private static SVGGeneratorContext context(Chart chart, Format format) {
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
    context.setComment("");
    context.setPrecision(DECIMALS);
    context.setIDGenerator(new Named(chart.name() + "-" + word(format)));
    context.setExtensionHandler(new Hatch.AsPattern());
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

  /** Names that differ from those of the other pictures of the page. */
  private static final class Named extends SVGIDGenerator {
    private final String picture;
    private int number;

    Named(String picture) {
      this.picture = picture;
    }

    @Override
    public String generateID(String prefix) {
      return picture + "-" + prefix + ++number;
    }
  }
}
