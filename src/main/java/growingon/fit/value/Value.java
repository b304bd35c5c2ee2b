package growingon.fit.value;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;

/**
 * An assumption held against the records. Speeds are factors on what was assumed first, 1 for just
 * that; losses (a year) and spreads are per cent, 5 for 5 %. A number that is not there is NaN.
 *
 * @param species its species
 * @param condition its growing condition; empty for what is of the species
 * @param what which assumption
 * @param old what was assumed first
 * @param value what the records and the assumption together say
 * @param p10 one in ten it is less
 * @param p90 one in ten it is more
 * @param mmOld mm a year at the mean trunk of the records by the old speed; NaN for other values
 * @param mmNew the same by the new one
 * @param trunkMm that mean trunk, mm
 * @param counts intervals, units or plants that it rests on
 * @param lots lots among them
 * @param seasons seasons among them
 * @param weight how much of it rests on the records, 0 to 1
 * @param verdict what to make of it
 * @param inFile what goes into the proposal, in the unit of {@code value}: the old value unless it
 *     is changed
 * @param sureOld how sure the old one was, 0 to 1; NaN for spreads
 * @param sureNew how sure the new one is, 0 to 1; NaN for spreads
 * @param why in words
 */
@RecordBuilder
public record Value(
    String species,
    String condition,
    What what,
    double old,
    double value,
    double p10,
    double p90,
    double mmOld,
    double mmNew,
    double trunkMm,
    int counts,
    int lots,
    int seasons,
    double weight,
    Verdict verdict,
    double inFile,
    double sureOld,
    double sureNew,
    String why)
    implements ValueBuilder.With {
  /** Which assumption. */
  public enum What {
    GROWTH("growth speed"),
    FIRST_YEAR_LOSS("first-year loss %"),
    LATER_LOSS("later loss %"),
    VIGOUR_SPREAD("vigour spread %"),
    YEAR_SPREAD("year spread %"),
    LOSS_SPREAD("loss spread %"),
    CURVE("curve");

    private final String word;

    What(String word) {
      this.word = word;
    }

    @Override
    public String toString() {
      return word;
    }

    /** Whether it is a speed or a loss, which one may be more or less sure of. */
    boolean isSure() {
      return this == GROWTH || this == FIRST_YEAR_LOSS || this == LATER_LOSS;
    }
  }

  /** What to make of a value. */
  public enum Verdict {
    CHANGED("changed"),
    AGREES("agrees"),
    TOO_THIN("too few counts to tell"),
    NO_RECORDS("no records"),
    KNOWN("taken as known"),
    DOES_NOT_FIT("does not fit at all"),
    DOES_NOT_SETTLE("does not settle");

    private final String word;

    Verdict(String word) {
      this.word = word;
    }

    @Override
    public String toString() {
      return word;
    }
  }

  public Value {
    Objects.requireNonNull(what);
    Objects.requireNonNull(verdict);
    Objects.requireNonNull(why);
  }

  /** Whether it goes into the proposal. */
  public boolean isChanged() {
    return verdict == Verdict.CHANGED;
  }

  /** Whether the proposal says how sure it is now. */
  public boolean isLearnt() {
    return what.isSure() && (verdict == Verdict.CHANGED || verdict == Verdict.AGREES);
  }

  /** A value of which nothing else is said yet: no number is there. */
  public static ValueBuilder of(String species, What what, Verdict verdict) {
    return ValueBuilder.builder()
        .species(species)
        .what(what)
        .verdict(verdict)
        .condition("")
        .old(Double.NaN)
        .value(Double.NaN)
        .p10(Double.NaN)
        .p90(Double.NaN)
        .mmOld(Double.NaN)
        .mmNew(Double.NaN)
        .trunkMm(Double.NaN)
        .inFile(Double.NaN)
        .sureOld(Double.NaN)
        .sureNew(Double.NaN)
        .why("");
  }
}
