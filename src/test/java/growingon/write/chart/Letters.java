package growingon.write.chart;

import growingon.write.chart.look.Lettering;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

/** The letters of a drawing, read back from its SVG. */
public record Letters(String text, double size, Rectangle2D ink) {
  /** Ink of a letter above and below its line, as shares of its size. */
  private static final double ABOVE = 0.74;

  private static final double BELOW = 0.16;

  public static Document parse(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    } catch (Exception broken) {
      throw new AssertionError("not XML: " + broken.getMessage(), broken);
    }
  }

  static List<Letters> of(Document drawing) {
    List<Letters> all = new ArrayList<>();
    var texts = drawing.getElementsByTagNameNS("*", "text");
    for (int i = 0; i < texts.getLength(); i++) {
      all.add(of((Element) texts.item(i)));
    }
    return all;
  }

  private static Letters of(Element text) {
    if (!inherited(text, "transform").isEmpty()) {
      throw new AssertionError("turned or moved: " + text.getTextContent());
    }
    String words = text.getTextContent().replaceAll("^\\s*\\n\\s*|\\s*\\n\\s*$", "");
    double size = Double.parseDouble(inherited(text, "font-size").replace("px", ""));
    boolean bold = "bold".equals(inherited(text, "font-weight"));
    Font font =
        new Font(Font.SANS_SERIF, bold ? Font.BOLD : Font.PLAIN, 1).deriveFont((float) size);
    double x = Double.parseDouble(text.getAttribute("x"));
    double y = Double.parseDouble(text.getAttribute("y"));
    Rectangle2D ink =
        new Rectangle2D.Double(
            x, y - ABOVE * size, Lettering.width(words, font), (ABOVE + BELOW) * size);
    return new Letters(words, size, ink);
  }

  private static String inherited(Element element, String name) {
    for (Node node = element; node instanceof Element each; node = node.getParentNode()) {
      if (each.hasAttribute(name)) {
        return each.getAttribute(name);
      }
    }
    return "";
  }

  /** Every two that overlap. */
  static List<String> overlapping(List<Letters> all) {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        Rectangle2D both = all.get(i).ink().createIntersection(all.get(j).ink());
        if (both.getWidth() > 0.5 && both.getHeight() > 0.5) {
          found.add(all.get(i).text() + " | " + all.get(j).text());
        }
      }
    }
    return found;
  }

  static List<String> where(List<Letters> all, Predicate<Letters> fault) {
    return all.stream()
        .filter(fault)
        .map(each -> "%s at %s".formatted(each.text(), each.ink()))
        .toList();
  }
}
