package growingon.fit.evidence;

import growingon.nursery.Scenario;
import growingon.nursery.species.Species;
import growingon.project.history.Sale;
import growingon.project.history.SeasonStock;
import growingon.project.lot.LotHistory;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Plants of a grade that a season has for sale: those sold in it and those ready and unsold at its
 * end.
 *
 * @param season name of the season
 * @param species their species
 * @param grade their grade
 * @param order place of the grade on its ladder, from the lowest
 * @param old plants by the assumptions of the files
 * @param now plants by the proposed ones
 */
public record Saleable(
    String season, String species, String grade, int order, double old, double now) {
  private static final Comparator<Saleable> IN_ORDER =
      Comparator.comparing(Saleable::season)
          .thenComparing(Saleable::species)
          .thenComparing(Saleable::order);

  private record Key(int season, String species, int order, String grade) {}

  /** Plants more than by the files; negative for fewer. */
  public double difference() {
    return now - old;
  }

  /** The next full season after the last record, and the one after. */
  public static List<Saleable> of(
      Evidence evidence, Map<String, Species> old, Map<String, Species> now) {
    Onward onward = Onward.of(evidence.past());
    Map<Key, double[]> numbers =
        new TreeMap<>(
            Comparator.comparing(Key::season)
                .thenComparing(Key::species)
                .thenComparing(Key::order)
                .thenComparing(Key::grade));
    add(onward, histories(evidence, onward, old), 0, numbers);
    add(onward, histories(evidence, onward, now), 1, numbers);
    List<Saleable> all = new ArrayList<>();
    numbers.forEach(
        (key, both) ->
            all.add(
                new Saleable(
                    onward.horizon().seasonName(key.season()),
                    key.species(),
                    key.grade(),
                    key.order(),
                    both[0],
                    both[1])));
    all.sort(IN_ORDER);
    return all;
  }

  /** The histories by which records were read will do where lots grow on from them by the same. */
  private static Collection<LotHistory> histories(
      Evidence evidence, Onward onward, Map<String, Species> species) {
    Scenario known = evidence.past().scenario();
    return onward.scenario().equals(known) && species.equals(known.nursery().species())
        ? evidence.histories().values()
        : onward.grownBy(species);
  }

  private static void add(
      Onward onward, Collection<LotHistory> histories, int which, Map<Key, double[]> numbers) {
    for (LotHistory lot : histories) {
      for (Sale sale : lot.sales()) {
        int sold = onward.horizon().season(sale.month());
        if (sale.grade() >= 0 && onward.isAsked(sold)) {
          add(numbers, lot, sold, sale.grade(), which, sale.units());
        }
      }
      for (SeasonStock stock : lot.seasons()) {
        if (onward.isAsked(stock.season())) {
          addReady(numbers, lot, stock, which);
        }
      }
    }
  }

  private static void addReady(
      Map<Key, double[]> numbers, LotHistory lot, SeasonStock stock, int which) {
    for (int grade = 0; grade < stock.ready().grades(); grade++) {
      add(numbers, lot, stock.season(), grade, which, stock.ready().ofGrade(grade));
    }
  }

  private static void add(
      Map<Key, double[]> numbers, LotHistory lot, int season, int grade, int which, double plants) {
    if (plants > 0) {
      Key key = new Key(season, lot.lot().species(), grade, lot.grades().get(grade).name());
      numbers.computeIfAbsent(key, each -> new double[2])[which] += plants;
    }
  }
}
