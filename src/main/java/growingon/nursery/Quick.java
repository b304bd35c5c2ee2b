package growingon.nursery;

import growingon.nursery.number.Check;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The question of a quick sheet, as far as the scenario made from it does not say it: one lot on
 * offer, asked about with ten cells.
 *
 * @param soldAtMm trunk from which a plant is sold, mm
 * @param sellingPrice of one first, plan currency
 * @param potLitres of the pot, to the brim
 * @param freeM2 free square metres, if space is the question
 * @param besideTables whether it stands beside a nursery's tables, which are then not read
 * @param usual every value that nobody typed
 */
public record Quick(
    double soldAtMm,
    double sellingPrice,
    double potLitres,
    OptionalDouble freeM2,
    boolean besideTables,
    List<Usual> usual) {
  /**
   * A value that nobody typed.
   *
   * @param what name in the quick sheet
   * @param value as used
   * @param unit its unit, may be empty
   * @param moves what it moves, as in "when they are ready"
   */
  public record Usual(String what, String value, String unit, String moves) {
    public Usual {
      Check.named(what, "a usual value");
      Objects.requireNonNull(value);
      Objects.requireNonNull(unit);
      Objects.requireNonNull(moves);
    }
  }

  public Quick {
    Check.positive(soldAtMm, "the trunk sold at");
    Check.notNegative(sellingPrice, "selling price");
    Check.positive(potLitres, "pot litres");
    Objects.requireNonNull(freeM2);
    usual = List.copyOf(usual);
  }
}
