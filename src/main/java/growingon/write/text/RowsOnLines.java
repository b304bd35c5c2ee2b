package growingon.write.text;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;

/** JSON layout that a person can read and compare: objects indented, a row of a table on a line. */
@SuppressWarnings("serial") // never serialized
public final class RowsOnLines extends DefaultPrettyPrinter {
  private static final DefaultIndenter BREAK = new DefaultIndenter("  ", "\n");

  /** Arrays around the place being written. */
  private int arrays;

  public RowsOnLines() {
    _objectIndenter = BREAK;
    _arrayIndenter = BREAK;
  }

  @Override
  public void writeStartArray(JsonGenerator out) throws IOException {
    enter(1);
    super.writeStartArray(out);
  }

  @Override
  public void writeEndArray(JsonGenerator out, int values) throws IOException {
    super.writeEndArray(out, values);
    enter(-1);
  }

  /** Within the elements of an array nothing breaks. */
  private void enter(int step) {
    arrays += step;
    _objectIndenter = arrays > 0 ? FixedSpaceIndenter.instance : BREAK;
    _arrayIndenter = arrays > 1 ? NopIndenter.instance : BREAK;
  }
}
