package growingon.fit.value;

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
    String why) {
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

  /** The same with other words. */
  public Value because(String other) {
    return new Value(
        species, condition, what, old, value, p10, p90, mmOld, mmNew, trunkMm, counts, lots,
        seasons, weight, verdict, inFile, sureOld, sureNew, other);
  }

  /** A value of which nothing else is said yet. */
  public static Builder of(String species, What what, Verdict verdict) {
    Builder builder = new Builder();
    builder.species = species;
    builder.what = what;
    builder.verdict = verdict;
    return builder;
  }

  /** Its parts by name; what is not said has its usual value. */
  public static final class Builder {
    private String species;
    private String condition = "";
    private What what;
    private double old = Double.NaN;
    private double value = Double.NaN;
    private double p10 = Double.NaN;
    private double p90 = Double.NaN;
    private double mmOld = Double.NaN;
    private double mmNew = Double.NaN;
    private double trunkMm = Double.NaN;
    private int counts = 0;
    private int lots = 0;
    private int seasons = 0;
    private double weight = 0;
    private Verdict verdict;
    private double inFile = Double.NaN;
    private double sureOld = Double.NaN;
    private double sureNew = Double.NaN;
    private String why = "";

    private Builder() {}

    public Builder condition(String value) {
      this.condition = value;
      return this;
    }

    public Builder old(double value) {
      this.old = value;
      return this;
    }

    public Builder value(double value) {
      this.value = value;
      return this;
    }

    public Builder p10(double value) {
      this.p10 = value;
      return this;
    }

    public Builder p90(double value) {
      this.p90 = value;
      return this;
    }

    public Builder mmOld(double value) {
      this.mmOld = value;
      return this;
    }

    public Builder mmNew(double value) {
      this.mmNew = value;
      return this;
    }

    public Builder trunkMm(double value) {
      this.trunkMm = value;
      return this;
    }

    public Builder counts(int value) {
      this.counts = value;
      return this;
    }

    public Builder lots(int value) {
      this.lots = value;
      return this;
    }

    public Builder seasons(int value) {
      this.seasons = value;
      return this;
    }

    public Builder weight(double value) {
      this.weight = value;
      return this;
    }

    public Builder inFile(double value) {
      this.inFile = value;
      return this;
    }

    public Builder sureOld(double value) {
      this.sureOld = value;
      return this;
    }

    public Builder sureNew(double value) {
      this.sureNew = value;
      return this;
    }

    public Builder why(String value) {
      this.why = value;
      return this;
    }

    public Value build() {
      return new Value(
          species, condition, what, old, value, p10, p90, mmOld, mmNew, trunkMm, counts, lots,
          seasons, weight, verdict, inFile, sureOld, sureNew, why);
    }
  }
}
