package growingon.load.table.supply;

import growingon.load.cell.Range;
import growingon.load.row.As;
import growingon.load.row.Groups;
import growingon.load.row.Heading;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.Defined;
import growingon.nursery.supply.Component;
import growingon.nursery.supply.Mix;
import growingon.problem.advice.DefinitionAdvice;
import growingon.problem.advice.ValueAdvice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Substrate mixes, one component a row.
 *
 * <pre>
 * mix           name of the mix
 * component     a component
 * parts         parts by volume, more than 0
 * shrinkage %   volume lost when unlike particle sizes are mixed, on any one row of the mix [10]
 * firming %     more that goes in when the mix is firmed, on any one row of the mix [10]
 * </pre>
 */
public final class MixesTable {
  public static final Heading<String> MIX =
      Heading.text("mix").means("Name of the mix; its components follow row by row");
  private static final Heading<String> COMPONENT =
      Heading.text("component").choice("component").means("As on the sheet components");
  private static final Heading<Double> PARTS =
      Heading.number("parts", As.number(Range.OVER_ZERO)).means("Parts by volume");
  private static final Heading<Double> SHRINKAGE =
      Heading.number("shrinkage %", As.number(Range.FROM_ZERO))
          .expert()
          .ifEmpty("10")
          .means("Volume lost in mixing; on one row of the mix");
  private static final Heading<Double> FIRMING =
      Heading.number("firming %", As.number(Range.FROM_ZERO))
          .expert()
          .ifEmpty("10")
          .means("More that goes in when the mix is firmed; on one row of the mix");
  public static final TableFormat FORMAT =
      TableFormat.of("mixes", MIX.needed(), COMPONENT.needed(), PARTS.needed(), SHRINKAGE, FIRMING)
          .about(MIX, COMPONENT);

  private MixesTable() {}

  public static Defined<Mix> read(Optional<Table> table, Defined<Component> components) {
    Defined<Mix> mixes = Defined.of(new Names("mix", FORMAT.name()), table);
    table.ifPresent(
        found -> {
          found.rows().forEach(row -> row.needs(MIX, COMPONENT, PARTS));
          Groups.by(MIX, found.rows())
              .forEach((name, rows) -> add(mixes, name, rows, components.names()));
        });
    return mixes;
  }

  private static void add(Defined<Mix> mixes, String name, List<Row> rows, Names components) {
    mixes.names().add(name);
    Map<String, Double> parts = new LinkedHashMap<>();
    rows.forEach(row -> addPart(row, parts, components));
    double shrinkage =
        typedOnce(rows, SHRINKAGE.name(), Range.of(0, 90), Mix.usualShrinkage(parts.size()));
    double firming = typedOnce(rows, FIRMING.name(), Range.of(0, 100), Mix.USUAL_FIRMING);
    rows.forEach(row -> row.accept(() -> name));
    if (rows.stream().allMatch(Row::isAccepted)) {
      mixes.values().put(name, new Mix(name, parts, shrinkage, firming));
    }
  }

  private static void addPart(Row row, Map<String, Double> parts, Names components) {
    String component = row.getName(COMPONENT, components);
    double amount = row.get(PARTS);
    if (!component.isEmpty() && parts.putIfAbsent(component, amount) != null) {
      row.fail(COMPONENT, where -> DefinitionAdvice.componentTwice(where, component));
    }
  }

  /** A value of the whole mix, typed on any of its rows; on several only if it is the same. */
  private static double typedOnce(List<Row> rows, String heading, Range range, double usual) {
    Optional<Double> typed = Optional.empty();
    for (Row row : rows) {
      Optional<Double> here = row.find(heading, As.percent(range));
      if (here.isPresent() && typed.isPresent() && !here.equals(typed)) {
        row.fail(heading, where -> ValueAdvice.otherwiseAbove(where, row.cell(heading).shown()));
      }
      typed = typed.or(() -> here);
    }
    if (rows.stream().noneMatch(row -> row.has(heading))) {
      rows.get(0).assume(heading, As.percent(range), usual);
    }
    return typed.orElse(usual);
  }
}
