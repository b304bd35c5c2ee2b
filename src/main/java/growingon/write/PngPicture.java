package growingon.write;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** A picture as PNG bytes; the same picture gives the same bytes. */
final class PngPicture {
  /** Of 0 (smallest file) to 1 (quickest): flat charts shrink well at little cost. */
  private static final float HASTE = 0.5f;

  private PngPicture() {}

  static byte[] encode(BufferedImage image) throws IOException {
    ImageWriter writer = writer();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 17);
    try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageWriteParam parameters = writer.getDefaultWriteParam();
      parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      parameters.setCompressionQuality(HASTE);
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), parameters);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private static ImageWriter writer() throws IOException {
    Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName("png");
    if (!writers.hasNext()) {
      throw new IOException("this Java cannot write PNG pictures");
    }
    return writers.next();
  }
}
