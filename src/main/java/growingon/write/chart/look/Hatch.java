package growingon.write.chart.look;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.PaintContext;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.TexturePaint;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import org.apache.batik.svggen.DefaultExtensionHandler;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGPaintDescriptor;
import org.w3c.dom.Element;

/** Vermilion with dark lines across, so that it stands out in a black print too. */
public final class Hatch implements Paint {
  public static final Hatch OVER = new Hatch();

  private static final int TILE = 6;
  private static final Color LINES = new Color(0x6B, 0x2C, 0x00);
  private static final float STROKE = 1.2f;

  /** Dots of the tile for each unit, so that it is sharp where a drawing is enlarged. */
  private static final int DOTS = 4;

  private final TexturePaint texture =
      new TexturePaint(tile(), new Rectangle2D.Double(0, 0, TILE, TILE));

  private Hatch() {}

  private static BufferedImage tile() {
    BufferedImage tile = new BufferedImage(TILE * DOTS, TILE * DOTS, BufferedImage.TYPE_INT_RGB);
    Graphics2D g2 = tile.createGraphics();
    g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g2.scale(DOTS, DOTS);
    g2.setPaint(Palette.OVER);
    g2.fillRect(0, 0, TILE, TILE);
    g2.setPaint(LINES);
    g2.setStroke(new BasicStroke(STROKE));
    g2.drawLine(0, TILE, TILE, 0);
    g2.dispose();
    return tile;
  }

  @Override
  public PaintContext createContext(
      ColorModel model,
      Rectangle device,
      Rectangle2D user,
      AffineTransform transform,
      RenderingHints hints) {
    return texture.createContext(model, device, user, transform, hints);
  }

  @Override
  public int getTransparency() {
    return OPAQUE;
  }

  /** The same as an SVG pattern of lines, which is sharp at any size. */
  public static final class AsPattern extends DefaultExtensionHandler {
    private Element pattern;

    @Override
    public SVGPaintDescriptor handlePaint(Paint paint, SVGGeneratorContext context) {
      if (!(paint instanceof Hatch)) {
        return super.handlePaint(paint, context);
      }
      boolean isNew = pattern == null;
      pattern = isNew ? pattern(context) : pattern;
      String reference = "url(#" + pattern.getAttribute("id") + ")";
      return new SVGPaintDescriptor(reference, "1", isNew ? pattern : null);
    }

    private static Element pattern(SVGGeneratorContext context) {
      Element pattern = element(context, "pattern");
      pattern.setAttribute("id", context.getIDGenerator().generateID("hatch"));
      pattern.setAttribute("patternUnits", "userSpaceOnUse");
      pattern.setAttribute("width", Integer.toString(TILE));
      pattern.setAttribute("height", Integer.toString(TILE));
      Element ground = element(context, "rect");
      ground.setAttribute("width", Integer.toString(TILE));
      ground.setAttribute("height", Integer.toString(TILE));
      ground.setAttribute("fill", hex(Palette.OVER));
      ground.setAttribute("stroke", "none");
      pattern.appendChild(ground);
      Element line = element(context, "path");
      line.setAttribute("d", "M0 " + TILE + " L" + TILE + " 0");
      line.setAttribute("stroke", hex(LINES));
      line.setAttribute("stroke-width", Float.toString(STROKE));
      pattern.appendChild(line);
      return pattern;
    }

    private static Element element(SVGGeneratorContext context, String name) {
      return context.getDOMFactory().createElementNS("http://www.w3.org/2000/svg", name);
    }

    private static String hex(Color colour) {
      return "#%06x".formatted(colour.getRGB() & 0xFFFFFF);
    }
  }
}
