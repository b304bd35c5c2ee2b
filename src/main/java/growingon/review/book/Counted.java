package growingon.review.book;

import growingon.nursery.market.Quality;
import growingon.nursery.record.DaybookLine;
import growingon.problem.Where;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * One count of a lot: all its lines of a day together.
 *
 * @param date the day
 * @param rows its rows
 * @param plants plants alive; empty where trunks only were measured
 * @param qualities plants by quality; empty unless every line with plants says it
 * @param grades plants by grade, under an empty name those of which none is said; empty unless some
 *     line says one
 * @param trunkMm mean trunk, mm
 * @param trunkSpread spread as a share of the mean; empty unless every line with a trunk says it
 */
public record Counted(
    LocalDate date,
    List<Where> rows,
    OptionalDouble plants,
    Map<Quality, Double> qualities,
    Map<String, Double> grades,
    OptionalDouble trunkMm,
    OptionalDouble trunkSpread) {
  /** Puts the lines of one lot and day together. */
  static Counted of(List<DaybookLine> lines) {
    List<DaybookLine> ofPlants =
        lines.stream().filter(line -> line.quantity().isPresent()).toList();
    OptionalDouble plants =
        ofPlants.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                ofPlants.stream().mapToDouble(line -> line.quantity().getAsDouble()).sum());
    List<DaybookLine> measured = lines.stream().filter(line -> line.trunkMm().isPresent()).toList();
    return new Counted(
        lines.get(0).date(),
        lines.stream().map(DaybookLine::where).toList(),
        plants,
        qualities(ofPlants),
        grades(ofPlants),
        mean(measured),
        measured.isEmpty() ? spreadAlone(lines) : spread(measured));
  }

  private static Map<Quality, Double> qualities(List<DaybookLine> lines) {
    Map<Quality, Double> qualities = new EnumMap<>(Quality.class);
    for (DaybookLine line : lines) {
      if (line.quality().isEmpty()) {
        return Map.of();
      }
      qualities.merge(line.quality().get(), line.quantity().getAsDouble(), Double::sum);
    }
    return qualities;
  }

  private static Map<String, Double> grades(List<DaybookLine> lines) {
    if (lines.stream().allMatch(line -> line.grade().isEmpty())) {
      return Map.of();
    }
    Map<String, Double> grades = new HashMap<>();
    for (DaybookLine line : lines) {
      grades.merge(line.grade().orElse(""), line.quantity().getAsDouble(), Double::sum);
    }
    return grades;
  }

  /** Plants that a line measured speaks for; alike for all where one of them does not say. */
  private static double weight(DaybookLine line, List<DaybookLine> all) {
    return all.stream().allMatch(each -> each.quantity().orElse(0) > 0)
        ? line.quantity().getAsDouble()
        : 1;
  }

  private static OptionalDouble mean(List<DaybookLine> measured) {
    if (measured.isEmpty()) {
      return OptionalDouble.empty();
    }
    double plants = 0;
    double sum = 0;
    for (DaybookLine line : measured) {
      double weight = weight(line, measured);
      plants += weight;
      sum += weight * line.trunkMm().getAsDouble();
    }
    return OptionalDouble.of(sum / plants);
  }

  private static OptionalDouble spread(List<DaybookLine> measured) {
    if (measured.size() == 1) {
      return measured.get(0).trunkSpread();
    }
    double mean = mean(measured).getAsDouble();
    double plants = 0;
    double variance = 0;
    for (DaybookLine line : measured) {
      if (line.trunkSpread().isEmpty()) {
        return OptionalDouble.empty();
      }
      double trunk = line.trunkMm().getAsDouble();
      double within = line.trunkSpread().getAsDouble() * trunk;
      double weight = weight(line, measured);
      plants += weight;
      variance += weight * (within * within + (trunk - mean) * (trunk - mean));
    }
    return OptionalDouble.of(Math.sqrt(variance / plants) / mean);
  }

  private static OptionalDouble spreadAlone(List<DaybookLine> lines) {
    return lines.size() == 1 ? lines.get(0).trunkSpread() : OptionalDouble.empty();
  }
}
