package growingon.write;

import java.util.Map;

/**
 * How a report's files differ from those of a plan.
 *
 * @param workbook what the workbook is called where it is not dated
 * @param texts further files, by name
 */
public record Beside(String workbook, Map<String, String> texts) {
  /** As a plan's. */
  static final Beside NOTHING = new Beside(FileNames.USUAL.workbook(), Map.of());

  public Beside {
    texts = Map.copyOf(texts);
  }
}
