package growingon.report.edition;

import com.google.common.hash.Hashing;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Names that stand for the lots' own: a letter and a number from a hash, so that a lot has the same
 * one from run to run and it tells nothing. Of two lots with the same hash, which is rare, the one
 * with the later full hash gets the next number.
 */
final class Aliases {
  private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";
  private static final int LEAST_NUMBERS = 1000;

  private final Map<String, String> aliases = new HashMap<>();

  Aliases(List<String> names) {
    List<String> all =
        names.stream().distinct().sorted(Comparator.comparing(Aliases::hash)).toList();
    int numbers = LEAST_NUMBERS;
    while (numbers * LETTERS.length() < 4L * all.size()) {
      numbers *= 10;
    }
    long codes = (long) numbers * LETTERS.length();
    Set<Long> taken = new HashSet<>();
    for (String name : all) {
      long code = Math.floorMod(hash(name), codes);
      while (!taken.add(code)) {
        code = (code + 1) % codes;
      }
      char letter = LETTERS.charAt((int) (code / numbers));
      aliases.put(name, "lot " + letter + code % numbers);
    }
  }

  String of(String name) {
    return aliases.get(name);
  }

  private static Long hash(String name) {
    return Hashing.sha256().hashString(name, StandardCharsets.UTF_8).asLong();
  }
}
