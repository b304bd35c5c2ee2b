package growingon.load.own.size;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What the cells of a row say of its size, gathered cell by cell: the first that says it counts.
 */
public final class SizeParts {
  private static final double LEAST_THICK_CM = 20;
  private static final double MOST_THICK_CM = 100;
  private static final double LARGE_POT_LITRES = 70;

  private Optional<PotSize> pot = Optional.empty();
  private Optional<Span> trunkMm = Optional.empty();
  private Optional<Span> girthCm = Optional.empty();
  private Optional<Span> heightCm = Optional.empty();
  private Optional<Span> open = Optional.empty();
  private OptionalInt years = OptionalInt.empty();
  private Optional<String> form = Optional.empty();
  private boolean standard;
  private boolean openMayBeTrunk;
  private OptionalDouble trunkUnitMm = OptionalDouble.empty();
  private final List<String> notes = new ArrayList<>();
  private final Set<String> asks = new LinkedHashSet<>();
  private final Set<Nod> nods = new LinkedHashSet<>();

  /**
   * A likely reading.
   *
   * @param said what is taken for what
   * @param ofPot whether the pot is taken so, else the girth
   */
  public record Nod(String said, boolean ofPot) {}

  public void pot(PotSize found) {
    if (pot.isPresent() && pot.get().litres() != found.litres()) {
      ask("pot: %s or %s?".formatted(pot.get().name(), found.name()));
    }
    pot = pot.or(() -> Optional.of(found));
  }

  public void trunk(Span mm) {
    trunkMm = trunkMm.or(() -> Optional.of(mm));
  }

  public void girth(Span cm) {
    if (girthCm.isPresent() && !girthCm.get().equals(cm)) {
      ask("girth: which of the two sizes?");
    }
    girthCm = girthCm.or(() -> Optional.of(cm));
  }

  public void height(Span cm) {
    if (heightCm.isPresent() && differs(heightCm.get(), cm)) {
      ask("height: which of the two sizes?");
    }
    heightCm = heightCm.or(() -> Optional.of(cm));
  }

  private static boolean differs(Span one, Span other) {
    return Math.abs(one.from() - other.from()) > 1e-6 || Math.abs(one.to() - other.to()) > 1e-6;
  }

  /** A range of which only the row can tell what it is. */
  public void open(Span range) {
    open = open.or(() -> Optional.of(range));
  }

  /** What trunks of a column that names them without a unit are in: so many mm. */
  public void trunksIn(double mm) {
    trunkUnitMm = OptionalDouble.of(mm);
  }

  /** A stem of so many cm, which may be round or thick. */
  void stemInCm(Span range) {
    open(range);
    openMayBeTrunk = true;
  }

  void trunkWithoutUnit(Span range) {
    if (trunkUnitMm.isPresent()) {
      trunk(range.times(trunkUnitMm.getAsDouble()));
    } else {
      open(range);
      openMayBeTrunk = true;
    }
  }

  public void age(int found) {
    years = years.isPresent() ? years : OptionalInt.of(found);
  }

  public void form(String found) {
    form = form.or(() -> Optional.of(found));
  }

  public void standard() {
    standard = true;
  }

  void note(String text) {
    if (!text.isBlank()) {
      notes.add(text.strip());
    }
  }

  void ask(String question) {
    asks.add(question);
  }

  void nodOfPot(String said) {
    nods.add(new Nod(said, true));
  }

  private void nodOfGirth(Span range) {
    nods.add(new Nod("%s is a girth in cm".formatted(shown(range)), false));
  }

  /** Leaves unread what was taken as likely only. */
  public void without(Nod refused) {
    if (refused.ofPot) {
      pot = Optional.empty();
    } else {
      girthCm = Optional.empty();
    }
  }

  /** Decides what an open range is, now that the whole row is known. */
  public void settle() {
    if (openMayBeTrunk && girthCm.isPresent()) {
      open = Optional.empty();
    }
    if (open.isEmpty()) {
      return;
    }
    Span range = open.get();
    boolean small = pot.isPresent() && pot.get().litres() < 15;
    if (openMayBeTrunk) {
      settleTrunk(range);
    } else if (isLowInALargePot(range)) {
      ask("size: is %s a girth or a height?".formatted(shown(range)));
    } else if (!range.isGirthClass() || (range.from() >= 50 && !standard)) {
      asHeight(range);
    } else if (standard) {
      girth(range);
    } else if (range.from() < 20 && !small) {
      girth(range);
      nodOfGirth(range);
    } else if (range.from() >= 20 && small) {
      height(range);
    } else {
      ask("size: is %s a girth or a height?".formatted(shown(range)));
    }
    open = Optional.empty();
  }

  /** A tree of 40-50 in 130 litres is that thick, or a ball that high. Common practice. */
  private boolean isLowInALargePot(Span range) {
    return !standard
        && !range.pointed()
        && range.from() >= LEAST_THICK_CM
        && range.to() < MOST_THICK_CM
        && pot.filter(each -> each.litres() >= LARGE_POT_LITRES).isPresent();
  }

  private void settleTrunk(Span range) {
    if (range.isGirthClass()) {
      girth(range);
      nodOfGirth(range);
    } else {
      ask("size: is %s the trunk in mm or the girth in cm?".formatted(shown(range)));
    }
  }

  private void asHeight(Span range) {
    if (range.from() < 10 && !range.pointed()) {
      ask("size: what is %s?".formatted(shown(range)));
    } else {
      height(range.from() < 10 ? range.times(100) : range);
    }
  }

  public static String shown(Span span) {
    return span.isClass()
        ? PotSize.plain(span.from()) + "-" + PotSize.plain(span.to())
        : PotSize.plain(span.from());
  }

  boolean isEmpty() {
    return pot.isEmpty()
        && trunkMm.isEmpty()
        && girthCm.isEmpty()
        && heightCm.isEmpty()
        && open.isEmpty()
        && years.isEmpty()
        && form.isEmpty();
  }

  public boolean hasSize() {
    return trunkMm.isPresent() || girthCm.isPresent() || heightCm.isPresent() || open.isPresent();
  }

  public Optional<PotSize> pot() {
    return pot;
  }

  public Optional<Span> trunkMm() {
    return trunkMm;
  }

  public Optional<Span> girthCm() {
    return girthCm;
  }

  public Optional<Span> heightCm() {
    return heightCm;
  }

  public OptionalInt years() {
    return years;
  }

  public Optional<String> form() {
    return form;
  }

  public boolean isStandard() {
    return standard;
  }

  /** The range that is not decided yet. */
  public Optional<Span> pending() {
    return open;
  }

  public List<String> notes() {
    return List.copyOf(notes);
  }

  public List<String> asks() {
    return List.copyOf(asks);
  }

  public List<Nod> nods() {
    return List.copyOf(nods);
  }
}
