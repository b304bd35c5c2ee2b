package growingon.nursery.record;

import growingon.nursery.market.Quality;
import growingon.nursery.number.Check;
import growingon.problem.Where;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One happening of the daybook.
 *
 * @param date the day
 * @param lot the lot it happened to; empty for what was spent on none
 * @param what what happened
 * @param quantity plants; empty where a happening may be of the whole lot, or is of none
 * @param toLot the lot that plants were split off or moved to
 * @param grade the grade counted or sold
 * @param quality the quality counted or sold
 * @param trunkMm mean trunk as measured, mm
 * @param trunkSpread spread of the trunks measured, as a share of their mean
 * @param amount money paid or received, plan currency, never negative; what happened says which
 * @param hours hours worked
 * @param customer code of a customer, may be empty
 * @param reason why, may be empty
 * @param note free text, may be empty
 * @param where the row of the daybook, for whatever is to be said of it later
 */
@RecordBuilder
public record DaybookLine(
    LocalDate date,
    String lot,
    What what,
    OptionalDouble quantity,
    Optional<String> toLot,
    Optional<String> grade,
    Optional<Quality> quality,
    OptionalDouble trunkMm,
    OptionalDouble trunkSpread,
    OptionalDouble amount,
    OptionalDouble hours,
    String customer,
    String reason,
    String note,
    Where where)
    implements DaybookLineBuilder.With {
  /** Whether it is of no lot, but of the whole nursery. */
  public boolean isOfNoLot() {
    return lot.isEmpty();
  }

  /** What can happen to a lot. */
  public enum What {
    /** Plants came, bought or raised. */
    ARRIVED("arrived", true),
    /** Plants alive were counted, or trunks measured, or both. */
    COUNTED("counted", false),
    /** Plants were sold. */
    SOLD("sold", true),
    /** Plants died. */
    DIED("died", true),
    /** Plants were thrown out. */
    CULLED("culled", true),
    /** Plants became a lot of their own, or joined another. */
    SPLIT("split", true),
    /** The whole lot went to another place, or plants joined another lot. */
    MOVED("moved", false),
    /** The lot was potted; all of it where no quantity is given. */
    POTTED("potted", false),
    /** Plants went into a class or display and are no longer stock. */
    USED("used", true),
    /** Plants sold or used came back. */
    RETURNED("returned", true),
    /** Plants turned up that no record knew of. */
    FOUND("found", true),
    /** Plants are gone, and nobody knows how. */
    LOST("lost", true),
    /** Money or hours were spent. */
    SPENT("spent", false),
    /** The lot need no longer stand apart. */
    RELEASED("released", false);

    private final String word;
    private final boolean ofPlants;

    What(String word, boolean ofPlants) {
      this.word = word;
      this.ofPlants = ofPlants;
    }

    /** Whether it makes no sense without a number of plants. */
    public boolean needsQuantity() {
      return ofPlants;
    }

    /** Whether it may be of no lot, but of the whole nursery. */
    public boolean mayBeOfNoLot() {
      return this == SPENT;
    }

    /** Whether plants may go to another lot by it. */
    public boolean mayJoin() {
      return this == SPLIT || this == MOVED;
    }

    /** The word used in files and reports. */
    @Override
    public String toString() {
      return word;
    }
  }

  public DaybookLine {
    Objects.requireNonNull(date);
    Objects.requireNonNull(what);
    Check.that(!lot.isBlank() || what.mayBeOfNoLot(), what + " needs a lot", lot);
    notNegative(quantity, "quantity");
    Check.that(!what.needsQuantity() || quantity.isPresent(), what + " needs a quantity", quantity);
    Check.that(what != What.SPLIT || toLot.isPresent(), "a split goes to a lot", toLot);
    Check.that(toLot.isEmpty() || what.mayJoin(), what + " goes to no other lot", toLot);
    Check.that(!toLot.equals(Optional.of(lot)), "plants go to another lot", lot);
    Objects.requireNonNull(grade);
    Objects.requireNonNull(quality);
    trunkMm.ifPresent(mm -> Check.positive(mm, "trunk"));
    notNegative(trunkSpread, "trunk spread");
    notNegative(amount, "amount");
    notNegative(hours, "hours");
    Check.that(
        what != What.SPENT || amount.isPresent() || hours.isPresent(),
        "money or hours are spent",
        amount);
    Objects.requireNonNull(customer);
    Objects.requireNonNull(reason);
    Objects.requireNonNull(note);
    Objects.requireNonNull(where);
  }

  private static void notNegative(OptionalDouble value, String what) {
    value.ifPresent(found -> Check.notNegative(found, what));
  }

  /** A line that says nothing but what happened to which lot. */
  public static DaybookLineBuilder of(LocalDate date, String lot, What what, Where where) {
    return DaybookLineBuilder.builder()
        .date(date)
        .lot(lot)
        .what(what)
        .where(where)
        .customer("")
        .reason("")
        .note("");
  }
}
