package growingon.review;

import growingon.money.CostKind;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Quality;
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
 * @param wholeBalance the same in whole plants
 * @param costToDate all that was spent on it up to then, before the plan too
 * @param costPerLiving {@code costToDate} for each plant that lived to stand, be sold or be used;
 *     empty for none
 */
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
    OptionalDouble costPerLiving) {
  /**
   * Plants of a grade.
   *
   * @param grade name of the grade, empty for plants without one
   * @param plants plants alive
   */
  public record OfGrade(String grade, Compared plants) {}

  public LotReview {
    Objects.requireNonNull(balance);
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
  public static Builder of(Lot lot) {
    Builder builder = new Builder();
    builder.lot = lot;
    return builder;
  }

  /** The parts of this one, of which some can be put in place of others. */
  public Builder but() {
    Builder builder = new Builder();
    builder.lot = lot;
    builder.splitFrom = splitFrom;
    builder.part = part;
    builder.isRecorded = isRecorded;
    builder.lastCount = lastCount;
    builder.place = place;
    builder.alive = alive;
    builder.qualities = qualities;
    builder.trunkMm = trunkMm;
    builder.trunkSpread = trunkSpread;
    builder.grades = grades;
    builder.unitsSold = unitsSold;
    builder.sales = sales;
    builder.hours = hours;
    builder.costs = costs;
    builder.result = result;
    builder.balance = balance;
    builder.wholeBalance = Optional.of(wholeBalance);
    builder.costToDate = costToDate;
    builder.costPerLiving = costPerLiving;
    return builder;
  }

  /** Its parts by name; what is not said has its usual value. */
  public static final class Builder {
    private Lot lot;
    private Optional<String> splitFrom = Optional.empty();
    private double part = 1;
    private boolean isRecorded = false;
    private Optional<LocalDate> lastCount = Optional.empty();
    private Optional<String> place = Optional.empty();
    private Compared alive;
    private Map<Quality, Compared> qualities = Map.of();
    private Compared trunkMm;
    private Compared trunkSpread;
    private List<OfGrade> grades = List.of();
    private Compared unitsSold;
    private Compared sales;
    private Compared hours;
    private Map<CostKind, Compared> costs = Map.of();
    private Compared result;
    private Whereabouts balance;
    private Optional<Whereabouts> wholeBalance = Optional.empty();
    private double costToDate = 0;
    private OptionalDouble costPerLiving = OptionalDouble.empty();

    private Builder() {}

    public Builder lot(Lot value) {
      this.lot = value;
      return this;
    }

    public Builder splitFrom(Optional<String> value) {
      this.splitFrom = value;
      return this;
    }

    public Builder part(double value) {
      this.part = value;
      return this;
    }

    public Builder isRecorded(boolean value) {
      this.isRecorded = value;
      return this;
    }

    public Builder lastCount(Optional<LocalDate> value) {
      this.lastCount = value;
      return this;
    }

    public Builder place(Optional<String> value) {
      this.place = value;
      return this;
    }

    public Builder alive(Compared value) {
      this.alive = value;
      return this;
    }

    public Builder qualities(Map<Quality, Compared> value) {
      this.qualities = value;
      return this;
    }

    public Builder trunkMm(Compared value) {
      this.trunkMm = value;
      return this;
    }

    public Builder trunkSpread(Compared value) {
      this.trunkSpread = value;
      return this;
    }

    public Builder grades(List<OfGrade> value) {
      this.grades = value;
      return this;
    }

    public Builder unitsSold(Compared value) {
      this.unitsSold = value;
      return this;
    }

    public Builder sales(Compared value) {
      this.sales = value;
      return this;
    }

    public Builder hours(Compared value) {
      this.hours = value;
      return this;
    }

    public Builder costs(Map<CostKind, Compared> value) {
      this.costs = value;
      return this;
    }

    public Builder result(Compared value) {
      this.result = value;
      return this;
    }

    public Builder balance(Whereabouts value) {
      this.balance = value;
      return this;
    }

    /** Where not said, the nearest whole plants. */
    public Builder wholeBalance(Whereabouts value) {
      this.wholeBalance = Optional.of(value);
      return this;
    }

    public Builder costToDate(double value) {
      this.costToDate = value;
      return this;
    }

    public Builder costPerLiving(OptionalDouble value) {
      this.costPerLiving = value;
      return this;
    }

    public LotReview build() {
      return new LotReview(
          lot,
          splitFrom,
          part,
          isRecorded,
          lastCount,
          place,
          alive,
          qualities,
          trunkMm,
          trunkSpread,
          grades,
          unitsSold,
          sales,
          hours,
          costs,
          result,
          balance,
          wholeBalance.orElseGet(balance::nearest),
          costToDate,
          costPerLiving);
    }
  }
}
