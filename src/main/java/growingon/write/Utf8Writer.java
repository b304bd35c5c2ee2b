package growingon.write;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;

/**
 * Writes UTF-8 for one thread. Long tables are written in millions of small pieces, and {@link
 * java.io.BufferedWriter} locks for each and copies those of a sequence of characters first.
 */
final class Utf8Writer extends Writer {
  private final Writer out;
  private final char[] buffer = new char[1 << 13];
  private int used;

  Utf8Writer(OutputStream out) {
    this.out = new OutputStreamWriter(out, StandardCharsets.UTF_8);
  }

  @Override
  public void write(int character) throws IOException {
    if (used == buffer.length) {
      empty();
    }
    buffer[used++] = (char) character;
  }

  @Override
  public void write(char[] characters, int offset, int length) throws IOException {
    write(new String(characters, offset, length), 0, length);
  }

  @Override
  public void write(String text, int offset, int length) throws IOException {
    int from = offset;
    int end = offset + length;
    while (from < end) {
      if (used == buffer.length) {
        empty();
      }
      int part = Math.min(end - from, buffer.length - used);
      text.getChars(from, from + part, buffer, used);
      used += part;
      from += part;
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
    empty();
    out.close();
  }
}
