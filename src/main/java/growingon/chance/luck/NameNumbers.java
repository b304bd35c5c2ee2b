package growingon.chance.luck;

import com.google.common.hash.HashFunction;
import com.google.common.hash.Hashing;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Numbers that stand for names in the keys of random numbers, each worked out once. */
public final class NameNumbers {
  private final HashFunction hash = Hashing.farmHashFingerprint64();
  private final Map<String, Long> known = new ConcurrentHashMap<>();

  long of(String name) {
    Long number = known.get(name);
    return number != null
        ? number
        : known.computeIfAbsent(
            name, each -> hash.hashString(each, StandardCharsets.UTF_8).asLong());
  }
}
