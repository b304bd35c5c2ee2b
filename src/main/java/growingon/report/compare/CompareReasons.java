package growingon.report.compare;

import growingon.nursery.Assumption;
import growingon.report.compare.CompareReport.Side;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What differs between the files of two plans. A row that only one of them has is one difference,
 * not one for each of its values.
 */
record CompareReasons(Side first, Side second) {
  private static final String NONE = "";
  private static final String PLAN = "plan";
  private static final Set<String> MOVE_NOTHING = Set.of("name", "draws", "seed");

  /** A value's table, subject and name. */
  private record Key(String table, String subject, String what) {
    Key row() {
      return new Key(table, subject, NONE);
    }
  }

  List<Difference> list() {
    Map<Key, List<Assumption>> before = byKey(first);
    Map<Key, List<Assumption>> after = byKey(second);
    Set<Key> rowsBefore = rows(before.keySet());
    Set<Key> rowsAfter = rows(after.keySet());
    Set<Key> all = new LinkedHashSet<>(before.keySet());
    all.addAll(after.keySet());
    Set<Key> toldRows = new LinkedHashSet<>();
    List<Difference> list = new ArrayList<>();
    for (Key key : all) {
      boolean onlyOne = rowsBefore.contains(key.row()) != rowsAfter.contains(key.row());
      if (onlyOne && !key.subject().isEmpty() && !key.table().equals(PLAN)) {
        if (toldRows.add(key.row())) {
          list.add(wholeRow(key, rowsBefore.contains(key.row())));
        }
      } else if (!movesNothing(key) && !values(before, key).equals(values(after, key))) {
        list.add(difference(key, before, after));
      }
    }
    return list;
  }

  private static Map<Key, List<Assumption>> byKey(Side side) {
    Map<Key, List<Assumption>> map = new LinkedHashMap<>();
    for (Assumption each : side.inputs().assumptions()) {
      map.computeIfAbsent(key(each), any -> new ArrayList<>()).add(each);
    }
    return map;
  }

  private static Key key(Assumption value) {
    return new Key(value.table(), value.subject(), value.what());
  }

  /** Plans are called and drawn as they like: both are compared on the luck of the first. */
  private static boolean movesNothing(Key key) {
    return key.table().equals(PLAN) && MOVE_NOTHING.contains(key.what());
  }

  private static Set<Key> rows(Set<Key> keys) {
    Set<Key> rows = new LinkedHashSet<>();
    keys.forEach(key -> rows.add(key.row()));
    return rows;
  }

  private static String values(Map<Key, List<Assumption>> map, Key key) {
    return String.join(
        "; ", map.getOrDefault(key, List.of()).stream().map(Assumption::value).toList());
  }

  private static Difference wholeRow(Key key, boolean inFirst) {
    return new Difference(
        key.table(),
        key.subject(),
        "row",
        inFirst ? "there" : NONE,
        inFirst ? NONE : "there",
        NONE);
  }

  private static Difference difference(
      Key key, Map<Key, List<Assumption>> before, Map<Key, List<Assumption>> after) {
    String unit =
        after.getOrDefault(key, before.getOrDefault(key, List.of())).stream()
            .map(Assumption::unit)
            .findFirst()
            .orElse(NONE);
    return new Difference(
        key.table(), key.subject(), key.what(), values(before, key), values(after, key), unit);
  }
}
