package growingon.nursery.library;

import java.util.Arrays;

/** Words of the library's tables that stand for values of an enumeration. */
final class OneOf {
  private OneOf() {}

  static <E extends Enum<E>> E word(E[] values, String word) {
    return Arrays.stream(values)
        .filter(each -> each.toString().equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the library has no word " + word));
  }
}
