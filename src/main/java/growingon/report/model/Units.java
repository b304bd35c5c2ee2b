package growingon.report.model;

import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Units of a table: one that several columns share is said once, below the title, and not in each
 * heading.
 *
 * @param shared units that are said once, and what of
 */
public record Units(Map<String, String> shared) {
  private static final int SEVERAL = 2;

  public Units {
    shared = new LinkedHashMap<>(shared);
  }

  /** The units of a table. */
  public static Units of(Table table) {
    Map<String, List<Column>> byUnit = new LinkedHashMap<>();
    table.columns().stream()
        .filter(column -> !column.unit().isEmpty())
        .forEach(
            column -> byUnit.computeIfAbsent(column.unit(), u -> new ArrayList<>()).add(column));
    Map<String, String> shared = new LinkedHashMap<>();
    byUnit.forEach(
        (unit, columns) -> {
          if (columns.size() >= SEVERAL) {
            shared.put(unit, measured(columns.get(0).kind()));
          }
        });
    return new Units(shared);
  }

  private static String measured(Kind kind) {
    return switch (kind) {
      case MONEY, MONEY_EACH -> "amounts";
      case SQUARE_METRES -> "space";
      case KG -> "weights";
      case MM -> "measures";
      case HOURS -> "time";
      case LITRES -> "volumes";
      case SHARE -> "shares";
      default -> "numbers";
    };
  }

  /** A column's heading, with its unit unless that is said once. */
  public String heading(Column column) {
    return shared.containsKey(column.unit()) ? column.heading() : column.headingWithUnit();
  }

  /** {@code Amounts in GBP, space in m².}; empty where no unit is shared. */
  public Optional<String> line() {
    if (shared.isEmpty()) {
      return Optional.empty();
    }
    List<String> parts = new ArrayList<>();
    shared.forEach(
        (unit, what) -> parts.add(what + (unit.startsWith("in ") ? " " : " in ") + unit));
    return Optional.of(Phrases.sentence(String.join(", ", parts)) + ".");
  }
}
