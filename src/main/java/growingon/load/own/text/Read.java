package growingon.load.own.text;

import java.util.Objects;
import java.util.Optional;

/**
 * What a cell was read as.
 *
 * @param value empty where the cell states none, or it must be asked for
 * @param about whether it is about only
 * @param nod what is said where the reading is likely and a nod is asked for; empty if it is sure
 * @param ask what is asked where there is no one reading; empty if nothing is
 * @param note what the cell says besides
 * @param <T> of the value
 */
public record Read<T>(Optional<T> value, boolean about, String nod, String ask, String note) {
  public Read {
    Objects.requireNonNull(value);
    Objects.requireNonNull(nod);
    Objects.requireNonNull(ask);
    Objects.requireNonNull(note);
  }

  public static <T> Read<T> of(T value) {
    return new Read<>(Optional.of(value), false, "", "", "");
  }

  static <T> Read<T> about(T value) {
    return new Read<>(Optional.of(value), true, "", "", "");
  }

  public static <T> Read<T> likely(T value, String nod) {
    return new Read<>(Optional.of(value), false, nod, "", "");
  }

  static <T> Read<T> ask(String question) {
    return new Read<>(Optional.empty(), false, "", question, "");
  }

  public static <T> Read<T> none() {
    return new Read<>(Optional.empty(), false, "", "", "");
  }

  Read<T> noting(String more) {
    return new Read<>(value, about, nod, ask, more.strip());
  }

  Read<T> roughly() {
    return new Read<>(value, true, nod, ask, note);
  }

  public boolean isAsked() {
    return !ask.isEmpty();
  }
}
