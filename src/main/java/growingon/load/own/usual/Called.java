package growingon.load.own.usual;

import growingon.load.own.lot.OwnLot;
import growingon.load.own.plant.PlantNames;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What the plants of a list are called in a plan. */
final class Called {
  private Called() {}

  /** A taxon is called as the list calls it most often. */
  static Map<String, String> most(List<OwnLot> lots) {
    Map<String, Map<String, Integer>> names = new TreeMap<>();
    for (OwnLot lot : lots) {
      lot.taxon()
          .ifPresent(
              taxon ->
                  names
                      .computeIfAbsent(taxon, each -> new LinkedHashMap<>())
                      .merge(lot.called(), 1, Integer::sum));
    }
    Map<String, String> most = new HashMap<>();
    names.forEach(
        (taxon, called) -> {
          int top = called.values().stream().max(Integer::compare).orElse(0);
          called.entrySet().stream()
              .filter(each -> each.getValue() == top)
              .findFirst()
              .ifPresent(each -> most.put(taxon, each.getKey()));
          int all = called.values().stream().mapToInt(Integer::intValue).sum();
          if (top * 2 <= all) {
            most.put(taxon, sameBeginning(called.keySet(), taxon).orElse(taxon));
          }
        });
    return most;
  }

  /** Of several names of a taxon what all begin with, if it names the taxon too. */
  private static Optional<String> sameBeginning(Set<String> names, String taxon) {
    List<String> words = null;
    for (String name : names) {
      List<String> its = List.of(name.split(" "));
      int same = 0;
      while (words != null
          && same < Math.min(words.size(), its.size())
          && words.get(same).equalsIgnoreCase(its.get(same))) {
        same++;
      }
      words = words == null ? its : words.subList(0, same);
    }
    return Optional.of(String.join(" ", words))
        .filter(
            name -> PlantNames.shipped().find(name, "").taxon().filter(taxon::equals).isPresent());
  }
}
