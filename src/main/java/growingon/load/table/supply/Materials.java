package growingon.load.table.supply;

import growingon.load.cell.Amount;
import growingon.load.cell.Cell;
import growingon.load.cell.CellFault;
import growingon.load.cell.Range;
import growingon.load.cell.Spot;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.table.Defined;
import growingon.nursery.supply.Material;
import growingon.problem.advice.RouteAdvice;
import growingon.problem.advice.ValueAdvice;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The cell "materials" of a route step: amounts a plant, with semicolons between them, as in "2.4 m
 * wire; 5 ml dressing". The unit is that of the materials table and may be left out.
 */
public final class Materials {
  private static final Range PACK = Range.OVER_ZERO.usually(0.01, Range.OVER_ZERO.most());

  private final Defined<Material> known;

  public Materials(Defined<Material> known) {
    this.known = known;
  }

  /** The size of a pack, with or without its unit. */
  static As<Double> packIn(String unit) {
    return amount(unit, PACK);
  }

  /** An amount of a material, 0 or more. */
  static As<Double> amountOrNoneIn(String unit) {
    return amount(unit, Range.FROM_ZERO);
  }

  private static As<Double> amount(String unit, Range range) {
    return new As<>(
        0.0,
        (cell, spot) -> range.check(in(unit, cell, spot), cell.shown(), spot),
        Cell.Number::plain,
        heading -> unit);
  }

  private static double in(String unit, Cell cell, Spot spot) {
    if (cell instanceof Cell.Number number && !number.percent()) {
      return number.value();
    }
    if (!(cell instanceof Cell.Text text)) {
      throw new CellFault(where -> ValueAdvice.wrongUnit(where, cell.shown(), unit));
    }
    Amount amount = Amount.of(text.text(), spot.style());
    boolean fits = amount.behind().isEmpty() || Texts.key(amount.behind()).equals(Texts.key(unit));
    if (!amount.before().isEmpty() || !fits) {
      throw new CellFault(where -> ValueAdvice.wrongUnit(where, cell.shown(), unit));
    }
    return amount.value();
  }

  /** The cell of a step. */
  public As<Map<String, Double>> cell() {
    return new As<>(Map.of(), this::read, this::show, heading -> "");
  }

  private String show(Map<String, Double> amounts) {
    return String.join(
        "; ",
        amounts.entrySet().stream()
            .map(each -> Cell.Number.plain(each.getValue()) + " " + unit(each.getKey()))
            .toList());
  }

  private String unit(String material) {
    return known.find(material).map(found -> found.unit() + " ").orElse("") + material;
  }

  private Map<String, Double> read(Cell cell, Spot spot) {
    if (!(cell instanceof Cell.Text)) {
      throw new CellFault(where -> RouteAdvice.notAMaterialAmount(where, cell.shown()));
    }
    Map<String, Double> amounts = new LinkedHashMap<>();
    for (String part : cell.shown().split(";")) {
      if (!part.isBlank()) {
        add(amounts, part.strip(), spot);
      }
    }
    return amounts;
  }

  private void add(Map<String, Double> amounts, String part, Spot spot) {
    Amount amount =
        Amount.find(part, spot.style())
            .filter(found -> found.before().isEmpty() && !found.behind().isEmpty())
            .orElseThrow(() -> new CellFault(where -> RouteAdvice.notAMaterialAmount(where, part)));
    String material = material(amount.behind(), part);
    Range.OVER_ZERO.check(amount.value(), part);
    if (amounts.put(material, amount.value()) != null) {
      throw new CellFault(where -> RouteAdvice.materialTwice(where, material));
    }
  }

  /** "m wire" or "wire". */
  private String material(String text, String part) {
    int space = text.indexOf(' ');
    if (known.names().contains(text) || space < 0) {
      return known.names().spelling(text);
    }
    String unit = text.substring(0, space);
    String name = known.names().spelling(text.substring(space + 1).strip());
    Optional<String> stated = known.find(name).map(Material::unit);
    if (stated.isPresent() && !Texts.key(stated.get()).equals(Texts.key(unit))) {
      throw new CellFault(where -> RouteAdvice.wrongMaterialUnit(where, part, name, stated.get()));
    }
    return name;
  }
}
