package growingon.load.own.heading;

import growingon.load.own.text.Meaning;
import growingon.load.own.text.TaxWords;
import growingon.load.own.text.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A heading of a list and what it is taken for.
 *
 * @param sheet it stands on
 * @param row it stands in, as the spreadsheet counts
 * @param column from 0
 * @param heading as typed
 * @param ours column of ours, "?" while it is open, "not read"
 * @param unit of its cells, empty if none
 * @param how certain, by its cells, likely, open or yours
 * @param choices what it may be, where that is not certain
 * @param rows filled cells below it
 * @param example first of them
 * @param why what is said about it; empty if nothing needs to be
 */
public record HeadingRead(
    String sheet,
    int row,
    int column,
    String heading,
    String ours,
    String unit,
    How how,
    List<String> choices,
    int rows,
    String example,
    String why) {
  /** How sure a reading is. */
  public enum How {
    CERTAIN("certain"),
    BY_ITS_CELLS("by its cells"),
    LIKELY("likely"),
    OPEN("open"),
    YOURS("yours");

    private final String word;

    How(String word) {
      this.word = word;
    }

    @Override
    public String toString() {
      return word;
    }
  }

  private static final Set<String> COSTS = Set.of("unit cost", "row cost");

  public HeadingRead {
    choices = List.copyOf(choices);
  }

  /** What it may be said to be: its readings, and always that it is not read. */
  public List<String> choosable() {
    List<String> all = new ArrayList<>(choices);
    if (!all.isEmpty() && !all.contains(Meaning.NOT_READ)) {
      all.add(Meaning.NOT_READ);
    }
    return List.copyOf(all);
  }

  /** Whether it is taken as its words say, which may as well say something else. */
  public boolean isInDoubt() {
    return how == How.LIKELY && why.isEmpty() && choices.contains(ours);
  }

  /** Whether its cells number the rows. */
  boolean isNumbering() {
    return is(Meaning.NOT_READ) && how == How.BY_ITS_CELLS && choices.contains("quantity");
  }

  /** Where each row is one plant, what it cost is what its plant cost. */
  HeadingRead ofOnePlant() {
    return COSTS.contains(ours) && isInDoubt() && COSTS.containsAll(choices)
        ? as(ours, unit, How.CERTAIN, "")
        : this;
  }

  /** What else it may be. */
  public List<String> others() {
    return choices.stream().filter(each -> !each.equals(ours)).toList();
  }

  /** Whether it stands for no column, and every row is taken as a plant. */
  public boolean isPlantARow() {
    return is(Columns.PLANT_A_ROW);
  }

  public boolean is(String name) {
    return ours.equals(name);
  }

  /** The same with readings to choose from. */
  HeadingRead offering(List<String> readings) {
    return new HeadingRead(
        sheet, row, column, heading, ours, unit, how, readings, rows, example, why);
  }

  /** Whether its money is with VAT at a rate that its heading does not state. */
  public boolean lacksVatRate() {
    return unit.equals(Units.GROSS) && statedVat().isEmpty();
  }

  /** The rate of VAT, percent, that its heading or a title states for money that is with it. */
  public Optional<Double> statedVat() {
    return unit.equals(Units.GROSS)
        ? TaxWords.rate(heading).or(() -> TaxWords.rate(why))
        : Optional.empty();
  }

  HeadingRead as(String other, String itsUnit, How itsHow, String said) {
    return new HeadingRead(
        sheet, row, column, heading, other, itsUnit, itsHow, choices, rows, example, said);
  }
}
