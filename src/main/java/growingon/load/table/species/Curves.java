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
import growingon.nursery.species.Curve.Law;
import growingon.nursery.species.Curve.Parameter;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.DefinitionAdvice;
import growingon.problem.advice.TableAdvice;
import growingon.problem.advice.ValueAdvice;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The growth curves of a species in species.json: condition to law and parameters. */
final class Curves {
  private static final As<Double> ABOVE = As.number(Range.OVER_ZERO);
  private static final As<Double> RATE = As.number(Range.FROM_ZERO);
  private static final List<Law> LAWS = List.of(Law.values());
  private static final As<Law> LAW =
      new As<>(Law.STEADY, (cell, spot) -> law(cell), Law::toString, heading -> "");

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
    Law law = row.get(Growth.CURVE, LAW);
    if (row.isFailed()) {
      return Optional.empty();
    }
    List<String> names = law.allParameters().stream().map(Parameter::toString).toList();
    row.headings().stream()
        .filter(each -> !each.equals(Growth.CURVE) && !names.contains(each))
        .forEach(
            each ->
                row.fail(
                    each,
                    where -> DefinitionAdvice.notOfCurve(where, each, law.toString(), names)));
    row.needs(law.parameters().stream().map(Parameter::toString).toArray(String[]::new));
    Curve curve = row.isFailed() ? null : of(law, row);
    return row.accept(() -> curve);
  }

  private static Law law(Cell cell) {
    String key = Texts.headingKey(cell.shown());
    return LAWS.stream()
        .filter(each -> Texts.headingKey(each.toString()).equals(key))
        .findFirst()
        .orElseThrow(() -> new CellFault(where -> notOne(where, cell.shown())));
  }

  private static Problem notOne(Where where, String typed) {
    List<String> words = LAWS.stream().map(Law::toString).toList();
    return ValueAdvice.notOneOf(where, typed, words, Nearest.to(typed, words));
  }

  /** Reads every parameter before any curve is made, since a placeholder would not fit in one. */
  private static Curve of(Law law, Row row) {
    Map<Parameter, Double> values = new EnumMap<>(Parameter.class);
    for (Parameter each : law.allParameters()) {
      row.find(each.toString(), each.isRate() ? RATE : ABOVE)
          .ifPresent(value -> values.put(each, value));
    }
    return row.isFailed() ? null : law.of(values);
  }
}
