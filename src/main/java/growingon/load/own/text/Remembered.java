package growingon.load.own.text;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * What was worked out of texts that come again and again down a list; no more than so many, so that
 * a long list fills no memory.
 */
public final class Remembered<V> {
  private static final int MOST = 20_000;
  private static final int LONGEST = 100;

  private final Map<String, V> known = new ConcurrentHashMap<>();

  public V get(String text, Function<String, V> worked) {
    if (text.length() > LONGEST) {
      return worked.apply(text);
    }
    V before = known.get(text);
    if (before != null) {
      return before;
    }
    V value = worked.apply(text);
    if (known.size() < MOST) {
      known.put(text, value);
    }
    return value;
  }
}
