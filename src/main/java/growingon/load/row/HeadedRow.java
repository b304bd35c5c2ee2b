package growingon.load.row;

import growingon.load.cell.Cell;
import growingon.problem.Problem;
import growingon.problem.Where;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The ways to the values of a row by its columns; a column knows how it is read. */
abstract class HeadedRow {
  HeadedRow() {}

  /** A value that must be there or has a default. */
  public <T> T get(Heading<T> heading) {
    return heading.usual().isPresent()
        ? get(heading.name(), heading.as(), heading.usual().get())
        : get(heading.name(), heading.as());
  }

  /** A value whose default goes by others. */
  public <T> T get(Heading<T> heading, T ifEmpty) {
    return get(heading.name(), heading.as(), ifEmpty);
  }

  /** A value that may be missing; empty also if it cannot be read, and then the row has failed. */
  public <T> Optional<T> find(Heading<T> heading) {
    return find(heading.name(), heading.as());
  }

  /** The same, but nothing is said of a value that cannot be read: it will be read again. */
  public <T> Optional<T> peek(Heading<T> heading) {
    return peek(heading.name(), heading.as());
  }

  /** A name that must be there, spelt as where it is defined. */
  public String getName(Heading<String> heading, Names names) {
    return get(heading.name(), names.reading());
  }

  /** A name, spelt as where it is defined; empty also if nothing defines it. */
  public Optional<String> findName(Heading<String> heading, Names names) {
    return find(heading.name(), names.reading()).filter(name -> !name.isEmpty());
  }

  public boolean has(Heading<?> heading) {
    return has(heading.name());
  }

  public Cell cell(Heading<?> heading) {
    return cell(heading.name());
  }

  /** Reports in one sentence what is missing of the values that the row needs. */
  public void needs(Heading<?>... headings) {
    needs(Stream.of(headings).map(Heading::name).toArray(String[]::new));
  }

  /** Lists a value that was not in the file. */
  public <T> void assume(Heading<T> heading, T value) {
    assume(heading.name(), heading.as(), value);
  }

  /** Reports that the row cannot be used as it is. */
  public void fail(Heading<?> heading, Function<Where, Problem> problem) {
    fail(heading.name(), problem);
  }

  /** Reports something that the user should know, and goes on. */
  public void remark(Heading<?> heading, Function<Where, Problem> problem) {
    remark(heading.name(), problem);
  }

  /** A value of a JSON file, which has no columns, that must be there. */
  public abstract <T> T get(String heading, As<T> as);

  /** A value of a JSON file with a default. */
  public abstract <T> T get(String heading, As<T> as, T ifEmpty);

  /** A value of a JSON file that may be missing. */
  public abstract <T> Optional<T> find(String heading, As<T> as);

  abstract <T> Optional<T> peek(String heading, As<T> as);

  /** Whether anything stands under a heading. */
  public abstract boolean has(String heading);

  /** What stands under a heading. */
  public abstract Cell cell(String heading);

  abstract void needs(String... headings);

  /** Lists a value that was not in the file. */
  public abstract <T> void assume(String heading, As<T> as, T value);

  /** Reports that the row cannot be used as it is. */
  public abstract void fail(String heading, Function<Where, Problem> problem);

  /** Reports something that the user should know, and goes on. */
  public abstract void remark(String heading, Function<Where, Problem> problem);
}
