package growingon.write.text;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;

/**
 * Writes UTF-8 for one thread. Long tables are written in millions of small pieces, nearly all of
 * them ASCII; {@link java.io.OutputStreamWriter} locks and copies twice for each.
 */
public final class Utf8Writer extends Writer {
  private static final int ASCII = 0x80;

  private final OutputStream out;
  private final byte[] buffer = new byte[1 << 13];
  private int used;

  /** The first half of a pair whose other half is written next, or nothing. */
  private String half = "";

  public Utf8Writer(OutputStream out) {
    this.out = out;
  }

  /** Writes a text of which the caller knows that it is ASCII. */
  @SuppressWarnings("deprecation") // It drops what is above a byte, of which there is nothing.
  void ascii(String text) throws IOException {
    int length = text.length();
    if (length > buffer.length - used || !half.isEmpty()) {
      write(text, 0, length);
    } else {
      text.getBytes(0, length, buffer, used);
      used += length;
    }
  }

  @Override
  public void write(int character) throws IOException {
    if (character < ASCII && half.isEmpty()) {
      put((byte) character);
    } else {
      encode(String.valueOf((char) character));
    }
  }

  @Override
  public void write(char[] characters, int offset, int length) throws IOException {
    write(new String(characters, offset, length), 0, length);
  }

  @Override
  public void write(String text, int offset, int length) throws IOException {
    int end = offset + length;
    int at = offset;
    while (at < end && text.charAt(at) < ASCII && half.isEmpty()) {
      put((byte) text.charAt(at));
      at++;
    }
    if (at < end) {
      encode(text.substring(at, end));
    }
  }

  private void encode(String text) throws IOException {
    String whole = half + text;
    int end = whole.length();
    half = Character.isHighSurrogate(whole.charAt(end - 1)) ? whole.substring(end - 1) : "";
    for (byte each : whole.substring(0, end - half.length()).getBytes(StandardCharsets.UTF_8)) {
      put(each);
    }
  }

  @Override
  public void write(String text) throws IOException {
    write(text, 0, text.length());
  }

  @Override
  public Writer append(CharSequence text, int start, int end) throws IOException {
    write(text.toString(), start, end - start);
    return this;
  }

  private void put(byte each) throws IOException {
    if (used == buffer.length) {
      empty();
    }
    buffer[used++] = each;
  }

  private void empty() throws IOException {
    out.write(buffer, 0, used);
    used = 0;
  }

  @Override
  public void flush() throws IOException {
    empty();
    out.flush();
  }

  @Override
  public void close() throws IOException {
    for (byte each : half.getBytes(StandardCharsets.UTF_8)) {
      put(each);
    }
    empty();
    out.close();
  }
}
