package growingon.fit.past;

import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.species.Species;
import growingon.project.Projector;
import growingon.project.history.BeforeCount;
import growingon.project.lot.Facts;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Runs of the engine over what is known. A fit begins where the one before ended and asks for the
 * same again: one run in five is remembered.
 */
public final class KnownRuns {
  /** Runs that are remembered: those of two rounds of slopes. */
  private static final int REMEMBERED = 16;

  private final Past past;
  private final Map<Asked, Map<String, Map<Integer, BeforeCount>>> runs = new Latest<>();

  KnownRuns(Past past) {
    this.past = past;
  }

  /** What a run is asked. */
  private record Asked(Map<String, Species> species, double thicker) {}

  /** Remembers what was asked for last. */
  private static final class Latest<K, V> extends LinkedHashMap<K, V> {
    private static final long serialVersionUID = 1;

    Latest() {
      super(REMEMBERED, 0.75f, true);
    }

    @Override
    protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
      return size() > REMEMBERED;
    }
  }

  /**
   * How the plants of each lot stand before each month's count.
   *
   * @param species how species grow
   * @param thicker factor on every trunk that was measured
   */
  public Map<String, Map<Integer, BeforeCount>> counts(
      Map<String, Species> species, double thicker) {
    Asked asked = new Asked(species, thicker);
    synchronized (runs) {
      Map<String, Map<Integer, BeforeCount>> before = runs.get(asked);
      if (before != null) {
        return before;
      }
    }
    Map<String, Map<Integer, BeforeCount>> counts = run(species, thicker);
    synchronized (runs) {
      runs.put(asked, counts);
    }
    return counts;
  }

  private Map<String, Map<Integer, BeforeCount>> run(Map<String, Species> species, double thicker) {
    Scenario known = past.scenarioToLast();
    Scenario scenario =
        known
            .in(known.nursery().withSpecies(species))
            .withLots(thicker == 1 ? known.lots() : thicker(known.lots(), thicker));
    Facts facts = thicker == 1 ? past.facts() : past.facts().withTrunks(thicker);
    return Projector.countsKnown(scenario, facts);
  }

  private static List<Lot> thicker(List<Lot> lots, double factor) {
    return lots.stream().map(lot -> lot.withTrunks(lot.trunks().times(factor))).toList();
  }
}
