package growingon.load.row;

import growingon.load.cell.CellFault;
import growingon.load.cell.Nearest;
import growingon.load.cell.Texts;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.FileAdvice;
import growingon.problem.advice.ValueAdvice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The names that a table defines, compared without regard to case and spaces. A name whose own row
 * is faulty counts as known, so that one fault is not reported again wherever the name is used.
 */
public final class Names {
  /** What is said of a name that nothing defines, if there is more to say than that. */
  public interface Remedy {
    Optional<Problem> of(Where where, String typed, Optional<String> nearest);
  }

  private final String what;
  private final String table;
  private final Map<String, String> spellings = new LinkedHashMap<>();
  private final As<String> reading =
      new As<>(
          "",
          (cell, spot) -> spelling(As.NAME.reader().read(cell, spot)),
          text -> text,
          heading -> "");
  private boolean open;
  private boolean ignored;
  private boolean absent;
  private Remedy remedy = (where, typed, nearest) -> Optional.empty();

  /**
   * No names yet.
   *
   * @param what what is named, as in "unknown species"
   * @param table the table that defines them
   */
  public Names(String what, String table) {
    this.what = what;
    this.table = table;
  }

  /** Every name is taken as known: the table could not be read, which is problem enough. */
  public Names leaveOpen() {
    open = true;
    return this;
  }

  /** There is no table that defines such names, which is said at the first of them. */
  public void markAbsent() {
    absent = true;
  }

  /** Whether every name is taken as known. */
  public boolean isOpen() {
    return open;
  }

  /** Says more of a name that nothing defines. */
  public Names offering(Remedy more) {
    remedy = more;
    return this;
  }

  /** Names count as not given: the nursery does not keep such a table. */
  public Names ignore() {
    ignored = true;
    return this;
  }

  /** The same names, to which others may be added. */
  public Names copy() {
    Names same = new Names(what, table);
    same.spellings.putAll(spellings);
    same.open = open;
    same.ignored = ignored;
    same.absent = absent;
    return same;
  }

  /** These names and others, which a third table may name. */
  public Names and(Names others) {
    Names all = new Names(what + " or " + others.what, table + " or " + others.table);
    all.spellings.putAll(others.spellings);
    all.spellings.putAll(spellings);
    all.open = open || others.open;
    return all;
  }

  /** A cell read as one of the names, spelt as where it is defined. */
  As<String> reading() {
    return reading;
  }

  /** Adds a name; false if it was there before. */
  public boolean add(String name) {
    return spellings.putIfAbsent(Texts.key(name), name) == null;
  }

  /** Takes another name for one that is defined; a name that is there already keeps its meaning. */
  public void addOther(String other, String name) {
    spellings.putIfAbsent(Texts.key(other), name);
  }

  public boolean contains(String name) {
    return spellings.containsKey(Texts.key(name));
  }

  public Optional<String> find(String name) {
    return Optional.ofNullable(spellings.get(Texts.key(name)));
  }

  public List<String> all() {
    return List.copyOf(spellings.values());
  }

  /**
   * The defining spelling, empty text if such names are not looked at.
   *
   * @throws CellFault if nothing defines the name
   */
  public String spelling(String typed) {
    if (ignored) {
      return "";
    }
    return find(typed).orElseGet(() -> unknown(typed));
  }

  private String unknown(String typed) {
    if (open) {
      return typed;
    }
    if (absent) {
      open = true;
      throw new CellFault(where -> FileAdvice.noTableOf(where, typed, table));
    }
    Optional<String> nearest = Nearest.to(typed, spellings.values());
    throw new CellFault(
        where ->
            remedy
                .of(where, typed, nearest)
                .orElseGet(() -> ValueAdvice.unknownName(where, what, typed, table, nearest)));
  }
}
