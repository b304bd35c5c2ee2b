package growingon.start;

import growingon.load.TableFormats;
import growingon.load.quick.QuickLine;
import java.util.List;
import java.util.Map;

/** The rows of the quick sheet: nothing is filled in, so that nothing is asked. */
final class QuickRows {
  private QuickRows() {}

  static List<Map<String, String>> all() {
    return TableFormats.quickLines().stream()
        .map(
            line ->
                Map.of(
                    "line", line.name(),
                    "example", line.example(),
                    "usual", line.usual(),
                    "meaning", line.meaning(),
                    "moves", line.moves()))
        .toList();
  }

  /** How many lines a grower is asked for. */
  static int asked() {
    return (int) TableFormats.quickLines().stream().filter(QuickLine::isAsked).count();
  }
}
