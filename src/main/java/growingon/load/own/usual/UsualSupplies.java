package growingon.load.own.usual;

import growingon.load.own.size.PotSize;
import java.util.List;
import java.util.Map;

/** Substrate and materials as in the started nursery; on hand is nothing. */
final class UsualSupplies {
  private UsualSupplies() {}

  static List<Map<String, String>> mixes() {
    return List.of(
        UsualNursery.row("mix", "pot mix", "component", "grit", "parts", "4"),
        UsualNursery.row("mix", "pot mix", "component", "bark", "parts", "5"),
        UsualNursery.row("mix", "pot mix", "component", "coir", "parts", "1"));
  }

  static List<Map<String, String>> components() {
    return List.of(
        component("grit", "25", "5.40", "1.5"),
        component("bark", "60", "7.80", "0.6"),
        component("coir", "70", "9.20", "0.7"));
  }

  private static Map<String, String> component(
      String name, String litres, String price, String kg) {
    return UsualNursery.row(
        "component", name, "bag litres", litres, "bag price", price, "wet kg per litre", kg);
  }

  static List<Map<String, String>> materials() {
    return List.of(
        UsualNursery.row(
            "material",
            "wire",
            "unit",
            "m",
            "pack",
            "50",
            "pack price",
            "16",
            "comes back %",
            "40"));
  }

  /** A pot: what it costs is common practice, no source. */
  static Map<String, String> pot(PotSize pot) {
    return UsualNursery.row(
        "pot",
        pot.name(),
        "shape",
        "litres",
        "litres",
        PotSize.plain(pot.litres()),
        "condition",
        pot.litres() < UsualNursery.LARGE_POT ? "small pot" : UsualNursery.TRAINING_POT,
        "price",
        PotSize.plain(Math.rint((0.15 + 0.17 * pot.litres()) * 100) / 100),
        "reuse %",
        "50");
  }
}
