package growingon.load.own.row;

import growingon.load.own.plant.PlantNames;
import growingon.load.own.plant.PlantText;
import growingon.load.own.text.Keys;
import java.util.regex.Pattern;

/** The name of a plant where a mark, an empty cell or a beginning of it means what stands above. */
final class NameAbove {
  private static final Pattern MARK_BEFORE =
      Pattern.compile("^(?:\"|''|„|”|do\\.?|dto\\.?|ditto|id\\.|idem|[íi]d\\.|same,)\\s+(?=\\S)");

  /** Copper do. below Beech. */
  private static final Pattern MARK_BEHIND =
      Pattern.compile("(?<=\\p{L}{3})\\s+(?:\"|''|do\\.|dto\\.)$");

  private String nameAbove = "";

  /** What a column of genera said last. */
  private String genusAbove = "";

  /** A title begins anew. */
  void forget() {
    nameAbove = "";
  }

  void remember(String name, String genusCell) {
    nameAbove = name;
    genusAbove = genusCell.isEmpty() || RowWords.isDitto(genusCell) ? genusAbove : genusCell;
  }

  /** The name, also where a mark or an empty cell means the one above. */
  String of(String typed, String genusCell, String cultivar) {
    String text = typed;
    if (text.isEmpty() && !genusCell.isEmpty()) {
      text = RowWords.isDitto(genusCell) ? nameAbove : (genusCell + " " + cultivar).strip();
    }
    if (text.isEmpty() || RowWords.isDitto(text)) {
      return nameAbove.isEmpty() ? text : nameAbove;
    }
    if (MARK_BEFORE.matcher(text).lookingAt() && !nameAbove.isEmpty()) {
      String rest = MARK_BEFORE.matcher(text).replaceFirst("");
      return genusAndSpecies(nameAbove, rest) + " " + rest;
    }
    if (MARK_BEHIND.matcher(text).find() && !nameAbove.isEmpty()) {
      return MARK_BEHIND.matcher(text).replaceFirst("") + " " + nameAbove;
    }
    if (genusCell.isEmpty() && !genusAbove.isEmpty() && isEpithet(text)) {
      return genusAbove + " " + text;
    }
    if (!genusCell.isEmpty()
        && !RowWords.isDitto(genusCell)
        && !Keys.of(text).startsWith(Keys.of(genusCell))) {
      return genusCell + " " + text;
    }
    return text;
  }

  /** Whether a name begins like the second word of a botanical one, whose genus stands above. */
  private static boolean isEpithet(String name) {
    return Character.isLowerCase(name.charAt(0));
  }

  /** What a mark before a word stands for: the name above without its cultivar. */
  private static String genusAndSpecies(String name, String rest) {
    String called = PlantText.called(name);
    String[] words = called.split(" ");
    boolean otherSpecies =
        words.length > 1
            && isEpithet(rest)
            && PlantText.isEpithet(Keys.of(rest).split(" ")[0])
            && PlantNames.shipped().isGenus(PlantNames.shipped().genusIn(words[0]));
    if (otherSpecies) {
      return words[0];
    }
    boolean botanical =
        words.length > 2
            && PlantNames.shipped().isGenus(Keys.of(words[0]))
            && PlantText.isEpithet(Keys.of(words[1]));
    return botanical ? words[0] + " " + words[1] : called;
  }
}
