package growingon.load.source;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** What workbook.xml says: the sheets in order, and the day from which dates are counted. */
final class WorkbookParts extends DefaultHandler {
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  private final List<SheetPart> sheets = new ArrayList<>();
  private boolean from1904;

  /** A sheet. */
  record SheetPart(String name, String relation, boolean hidden) {}

  List<SheetPart> sheets() {
    return List.copyOf(sheets);
  }

  boolean from1904() {
    return from1904;
  }

  @Override
  public void startElement(String uri, String name, String qualified, Attributes attributes) {
    if (name.equals("workbookPr")) {
      String counted = attributes.getValue("date1904");
      from1904 = "1".equals(counted) || "true".equals(counted);
    } else if (name.equals("sheet") && attributes.getValue(RELATIONS, "id") != null) {
      String state = attributes.getValue("state");
      sheets.add(
          new SheetPart(
              String.valueOf(attributes.getValue("name")),
              attributes.getValue(RELATIONS, "id"),
              state != null && !state.equals("visible")));
    }
  }
}
