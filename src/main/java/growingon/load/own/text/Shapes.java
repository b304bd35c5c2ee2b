package growingon.load.own.text;

import java.util.Set;

/** Words for how a tree is shaped, as {@code Keys} writes them. */
public final class Shapes {
  public static final Set<String> ALL =
      Set.of(
          "bush",
          "std",
          "standard",
          "half std",
          "cone",
          "cloud",
          "hst",
          "kugel",
          "ball",
          "pyramid",
          "spiral",
          "multi stem",
          "multistem",
          "ms",
          "feathered",
          "busch",
          "stammbusch",
          "solitar",
          "pleached",
          "fastigiate",
          "weeping",
          "tige",
          "cepee",
          "boule",
          "hoogstam",
          "struik",
          "bol",
          "umbrella",
          "espalier",
          "column",
          "dome",
          "hochstamm",
          "halbstamm",
          "heister");

  private Shapes() {}
}
