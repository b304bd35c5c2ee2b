package growingon.load.row;

import growingon.load.cell.Texts;
import java.util.Set;

/** Units that a heading names and that may be typed into its cells. */
public enum Unit {
  MM("mm", "mm", "millimetre", "millimetres", "mm/year", "mm a year", "mm per year"),
  CM("cm", "cm", "centimetre", "centimetres"),
  LITRES("litres", "l", "litre", "litres", "liter", "liters", "ltr"),
  KG_PER_M2("kg/m2", "kg", "kg/m2", "kg per m2"),
  KG("kg", "kg", "kg/l", "kg per litre"),
  MINUTES("minutes", "min", "mins", "minute", "minutes", "min/m2"),
  HOURS("hours", "h", "hr", "hrs", "hour", "hours"),
  PER_M2("plants/m2", "/m2", "per m2", "plants/m2", "plants per m2"),
  M2("m2", "m2", "sqm", "sq m", "square metre", "square metres"),
  MONTHS("months", "month", "months"),
  PERCENT("%", "%", "percent", "per cent", "pct"),
  COUNT("", "plant", "plants", "tree", "trees", "pot", "pots", "pc", "pcs", "piece", "pieces");

  private final String word;
  private final Set<String> spellings;

  Unit(String word, String... spellings) {
    this.word = word;
    this.spellings = Set.of(spellings);
  }

  /** As it is named in reports; empty where things are counted. */
  public String word() {
    return word;
  }

  /** Whether the text typed behind a number is this unit. */
  public boolean accepts(String typed) {
    return typed.isEmpty() || spellings.contains(Texts.key(typed).replace('²', '2'));
  }

  /** The unit that a heading names, by whole words. */
  public static Unit of(String heading) {
    String words = " " + heading + " ";
    if (words.contains(" % ")) {
      return PERCENT;
    }
    if (heading.equals(Spacings.PLANTS.name())) {
      return PER_M2;
    }
    if (words.contains(" kg ")) {
      return words.contains(" m2 ") ? KG_PER_M2 : KG;
    }
    for (Unit unit : new Unit[] {MM, CM, LITRES, MINUTES, HOURS, MONTHS}) {
      if (words.contains(" " + unit.word + " ")) {
        return unit;
      }
    }
    return words.contains(" metres ") ? M2 : COUNT;
  }
}
