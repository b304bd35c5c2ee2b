package growingon.fit.evidence;

import growingon.fit.past.Past;
import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.lot.LotHistory;
import growingon.review.book.Booked;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the past says of growth and losses: intervals between two measurements, and spans between
 * two counts.
 *
 * @param past the records put together
 * @param histories what the engine makes of them by the first assumptions, by lot
 * @param intervals of growth, those refused among them
 * @param spans of losses, those refused among them
 * @param plants tagged plants that were read, with what is learnt of each
 */
public record Evidence(
    Past past,
    Map<String, LotHistory> histories,
    List<Interval> intervals,
    List<LossSpan> spans,
    List<TaggedPlant> plants) {

  /**
   * A tagged plant.
   *
   * @param name its name
   * @param species its species
   * @param readings how often it was read
   * @param growth what it grew from its first reading to its last, in one growing condition
   * @param steps what it grew from each reading to the next, in one growing condition
   */
  public record TaggedPlant(
      String name,
      String species,
      int readings,
      Optional<PlantGrowth> growth,
      List<PlantGrowth> steps) {}

  /**
   * What one plant grew between two readings.
   *
   * @param fromMm trunk the first time, mm
   * @param toMm trunk the second time, mm
   * @param years growth years of a plant of vigour 1
   * @param condition its growing condition
   * @param seasons seasons it grew in
   */
  public record PlantGrowth(
      double fromMm, double toMm, double years, String condition, Set<Integer> seasons) {}

  /** Intervals between counts, and spans between numbers, of each lot. */
  public static Evidence of(Past past) {
    Projection projection = Projector.projectKnown(past.scenario(), past.facts());
    Map<String, LotHistory> histories = new LinkedHashMap<>();
    projection.lots().forEach(history -> histories.put(history.lot().name(), history));
    Map<String, Booked> books = new HashMap<>();
    past.booked().forEach(book -> books.put(book.lot().name(), book));
    LossSpans spans = new LossSpans(past, histories);
    List<LossSpan> losses = new ArrayList<>();
    List<Interval> intervals = new ArrayList<>();
    for (Booked book : past.booked()) {
      List<LossSpan> ofLot = spans.of(book);
      losses.addAll(ofLot);
      intervals.addAll(new LotIntervals(past, histories.get(book.lot().name()), book, ofLot).all());
    }
    TaggedIntervals tagged = new TaggedIntervals(past, histories, books);
    intervals.addAll(tagged.intervals());
    return new Evidence(past, histories, List.copyOf(intervals), losses, tagged.plants());
  }

  /** The same where some intervals are refused. */
  public Evidence with(List<Interval> others) {
    return new Evidence(past, histories, List.copyOf(others), spans, plants);
  }

  /** Those that a speed is learnt from. */
  public List<Interval> used() {
    return intervals.stream().filter(Interval::isUsed).toList();
  }

  Horizon horizon() {
    return past.horizon();
  }
}
