package growingon.load.table.species;

import growingon.load.cell.Cell;
import growingon.load.cell.Cell.Field;
import growingon.load.cell.Cell.Fields;
import growingon.load.cell.CellFault;
import growingon.load.cell.Findings;
import growingon.load.cell.Nearest;
import growingon.load.cell.Range;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Row;
import growingon.load.source.JsonShape;
import growingon.load.table.species.SpeciesShape.Growth;
import growingon.nursery.species.Curve;
import growingon.problem.Where;
import growingon.problem.advice.DefinitionAdvice;
import growingon.problem.advice.TableAdvice;
import growingon.problem.advice.ValueAdvice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The growth curves of a species in species.json: condition to law and parameters. */
final class Curves {
  private static final As<Double> ABOVE = As.number(Range.OVER_ZERO);
  private static final As<Double> RATE = As.number(Range.FROM_ZERO);

  private static final Map<String, List<String>> PARAMETERS =
      Map.of(
          "steady", List.of(Growth.STEADY_MM, Growth.MOST_MM),
          "levelling", List.of(Growth.FINAL_MM, Growth.RATE_K),
          "logistic", List.of(Growth.FINAL_MM, Growth.RATE_R),
          "gompertz", List.of(Growth.FINAL_MM, Growth.RATE_R),
          "richards", List.of(Growth.FINAL_MM, Growth.RATE_K, Growth.POWER_P),
          "theta-logistic", List.of(Growth.FINAL_MM, Growth.RATE_R, Growth.POWER_Q));

  private Curves() {}

  /** The curves; a faulty one fails the species. */
  static Map<String, Curve> read(Row species, String name, Where file, Findings findings) {
    Map<String, Curve> curves = new LinkedHashMap<>();
    if (species.cell(SpeciesShape.Entry.GROWTH) instanceof Fields conditions) {
      conditions
          .fields()
          .forEach((typed, field) -> add(curves, species, typed, field, name, file, findings));
    }
    return curves;
  }

  private static void add(
      Map<String, Curve> curves,
      Row species,
      String typed,
      Field field,
      String name,
      Where file,
      Findings findings) {
    String condition = Texts.key(typed);
    Where line = new Where(file.file(), "", field.line(), typed);
    if (!(field.value() instanceof Fields parameters)) {
      species.fail(where -> TableAdvice.missingValue(line));
      return;
    }
    Row row =
        JsonShape.row(
            SpeciesTable.FORMAT.name(), parameters, name + ", " + condition, file, findings);
    Optional<Curve> curve = curve(row);
    if (row.isFailed()) {
      species.fault();
    }
    if (curve.isPresent() && curves.put(condition, curve.get()) != null) {
      species.fail(where -> ValueAdvice.defined(line, typed, condition));
    }
  }

  private static Optional<Curve> curve(Row row) {
    row.needs(Growth.CURVE);
    String word = row.get(Growth.CURVE, law());
    if (row.isFailed()) {
      return Optional.empty();
    }
    List<String> parameters = PARAMETERS.get(word);
    row.headings().stream()
        .filter(each -> !each.equals(Growth.CURVE) && !parameters.contains(each))
        .forEach(
            each ->
                row.fail(
                    each, where -> DefinitionAdvice.notOfCurve(where, each, word, parameters)));
    row.needs(
        parameters.stream().filter(each -> !each.equals(Growth.MOST_MM)).toArray(String[]::new));
    Curve curve = row.isFailed() ? null : of(word, row);
    return row.accept(() -> curve);
  }

  private static As<String> law() {
    List<String> laws =
        Stream.of("steady", "levelling", "logistic", "gompertz", "richards", "theta-logistic")
            .toList();
    return new As<>("steady", (cell, spot) -> law(cell, laws), text -> text, heading -> "");
  }

  private static String law(Cell cell, List<String> laws) {
    String key = Texts.headingKey(cell.shown());
    return laws.stream()
        .filter(each -> Texts.headingKey(each).equals(key))
        .findFirst()
        .orElseThrow(
            () ->
                new CellFault(
                    where ->
                        ValueAdvice.notOneOf(
                            where, cell.shown(), laws, Nearest.to(cell.shown(), laws))));
  }

  /** Reads every parameter before any curve is made, since a placeholder would not fit in one. */
  private static Curve of(String word, Row row) {
    Map<String, Double> values = new LinkedHashMap<>();
    for (String each : PARAMETERS.get(word)) {
      boolean rate = List.of(Growth.STEADY_MM, Growth.RATE_K, Growth.RATE_R).contains(each);
      row.find(each, rate ? RATE : ABOVE).ifPresent(value -> values.put(each, value));
    }
    return row.isFailed() ? null : made(word, values);
  }

  private static Curve made(String word, Map<String, Double> values) {
    double finalMm = values.getOrDefault(Growth.FINAL_MM, 0.0);
    return switch (word) {
      case "steady" ->
          new Curve.Steady(
              values.get(Growth.STEADY_MM),
              values.getOrDefault(Growth.MOST_MM, Double.POSITIVE_INFINITY));
      case "levelling" -> new Curve.Levelling(finalMm, values.get(Growth.RATE_K));
      case "logistic" -> new Curve.Logistic(finalMm, values.get(Growth.RATE_R));
      case "gompertz" -> new Curve.Gompertz(finalMm, values.get(Growth.RATE_R));
      case "richards" ->
          new Curve.Richards(finalMm, values.get(Growth.RATE_K), values.get(Growth.POWER_P));
      default ->
          new Curve.ThetaLogistic(finalMm, values.get(Growth.RATE_R), values.get(Growth.POWER_Q));
    };
  }
}
