package growingon.review;

import growingon.money.CostKind;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Quality;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A lot as planned and as it came, at the end of the daybook's last month. A lot split off by the
 * daybook is a lot of its own; of what happened before it was split off, and of the plan, it has
 * its share.
 *
 * @param lot the lot
 * @param splitFrom the lot it was split off from; empty for one of the stock list or an offer
 * @param part the share of the plants of {@code lot} that this one stands for, 0 to 1; 1 unless
 *     there was a split
 * @param isRecorded whether the daybook says anything of it within the plan
 * @param lastCount when it was last counted
 * @param place where it stands by the projection; nowhere without a place or when none is left
 * @param alive plants alive, kept ones among them
 * @param qualities plants alive by quality, kept ones left out; a quality without any is left out
 * @param trunkMm mean trunk, mm; real where it was measured, grown on from then by the projection
 * @param trunkSpread spread of the trunks as a share of their mean
 * @param grades plants alive by grade, lowest first
 * @param unitsSold plants sold up to then
 * @param sales money of sales up to then
 * @param hours hours worked up to then
 * @param costs costs up to then by kind; kinds without any are left out
 * @param result sales less costs up to then, those before the plan left out
 * @param balance where its plants went
 * @param wholeBalance the same in whole plants; the nearest where null
 * @param costToDate all that was spent on it up to then, before the plan too
 * @param costPerLiving {@code costToDate} for each plant that lived to stand, be sold or be used;
 *     empty for none
 */
@RecordBuilder
public record LotReview(
    Lot lot,
    Optional<String> splitFrom,
    double part,
    boolean isRecorded,
    Optional<LocalDate> lastCount,
    Optional<String> place,
    Compared alive,
    Map<Quality, Compared> qualities,
    Compared trunkMm,
    Compared trunkSpread,
    List<OfGrade> grades,
    Compared unitsSold,
    Compared sales,
    Compared hours,
    Map<CostKind, Compared> costs,
    Compared result,
    Whereabouts balance,
    Whereabouts wholeBalance,
    double costToDate,
    OptionalDouble costPerLiving)
    implements LotReviewBuilder.With {
  /**
   * Plants of a grade.
   *
   * @param grade name of the grade, empty for plants without one
   * @param plants plants alive
   */
  public record OfGrade(String grade, Compared plants) {}

  public LotReview {
    Objects.requireNonNull(balance);
    wholeBalance = wholeBalance == null ? balance.nearest() : wholeBalance;
    Stream.of(alive, trunkMm, trunkSpread, unitsSold, sales, hours, result)
        .forEach(Objects::requireNonNull);
    qualities = ordered(qualities, Quality.class);
    costs = ordered(costs, CostKind.class);
    grades = List.copyOf(grades);
  }

  private static <K extends Enum<K>> Map<K, Compared> ordered(Map<K, Compared> map, Class<K> type) {
    EnumMap<K, Compared> sorted = new EnumMap<>(type);
    sorted.putAll(map);
    return Collections.unmodifiableMap(sorted);
  }

  /** All costs up to then together. */
  public Compared allCosts() {
    return costs.values().stream()
        .reduce(new Compared(0, 0, false, Optional.empty()), Compared::plus);
  }

  /** A lot whose figures are still to be said. */
  public static LotReviewBuilder of(Lot lot) {
    return LotReviewBuilder.builder()
        .lot(lot)
        .part(1)
        .qualities(Map.of())
        .grades(List.of())
        .costs(Map.of());
  }
}
