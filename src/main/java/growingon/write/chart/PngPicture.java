package growingon.write.chart;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * A picture as PNG bytes (PNG specification, third edition, section 5); the same picture gives the
 * same bytes. The encoder of the Java library tries five filters on every row, which a flat chart
 * gains nothing from and which takes longer than drawing it.
 */
public final class PngPicture {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final int MODEST_COMPRESSION = 4;

  private PngPicture() {}

  /**
   * Encodes a picture.
   *
   * @param image of type {@link BufferedImage#TYPE_INT_RGB}
   */
  public static byte[] encode(BufferedImage image) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 17);
    DataOutputStream out = new DataOutputStream(bytes);
    out.write(SIGNATURE);
    chunk(out, "IHDR", header(image));
    chunk(out, "IDAT", pixels(image));
    chunk(out, "IEND", new byte[0]);
    return bytes.toByteArray();
  }

  /** Width, height, eight bits a channel, red green blue, usual compression and filters. */
  private static byte[] header(BufferedImage image) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeInt(image.getWidth());
    out.writeInt(image.getHeight());
    out.write(new byte[] {8, 2, 0, 0, 0});
    return bytes.toByteArray();
  }

  private static byte[] pixels(BufferedImage image) throws IOException {
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    int width = image.getWidth();
    byte[] row = new byte[1 + 3 * width]; // the first byte says that the row is not filtered
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 17);
    Deflater deflater = new Deflater(MODEST_COMPRESSION);
    try (DeflaterOutputStream out = new DeflaterOutputStream(bytes, deflater, 1 << 15)) {
      for (int start = 0; start < pixels.length; start += width) {
        fill(row, pixels, start, width);
        out.write(row);
      }
    } finally {
      deflater.end();
    }
    return bytes.toByteArray();
  }

  private static void fill(byte[] row, int[] pixels, int start, int width) {
    for (int x = 0, at = 1; x < width; x++, at += 3) {
      int pixel = pixels[start + x];
      row[at] = (byte) (pixel >> 16);
      row[at + 1] = (byte) (pixel >> 8);
      row[at + 2] = (byte) pixel;
    }
  }

  private static void chunk(DataOutputStream out, String type, byte[] data) throws IOException {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(name);
    check.update(data);
    out.writeInt(data.length);
    out.write(name);
    out.write(data);
    out.writeInt((int) check.getValue());
  }
}
