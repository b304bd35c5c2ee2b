package growingon.buying.question;

import java.util.Arrays;

/** A value for each choice: the number of plants taken of an offer, the index of a hold. */
public final class Candidate {
  private final int[] values;

  private Candidate(int[] values) {
    this.values = values;
  }

  /** Nothing bought, everything held as given. */
  static Candidate nothing(int choices) {
    return new Candidate(new int[choices]);
  }

  /** The value of a choice. */
  public int value(int choice) {
    return values[choice];
  }

  /** The same but for one choice. */
  public Candidate with(int choice, int value) {
    int[] other = values.clone();
    other[choice] = value;
    return new Candidate(other);
  }

  /** Number of choices. */
  public int size() {
    return values.length;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Candidate that && Arrays.equals(values, that.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return Arrays.toString(values);
  }
}
