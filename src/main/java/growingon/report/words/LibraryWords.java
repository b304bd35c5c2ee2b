package growingon.report.words;

import growingon.nursery.Nursery;
import growingon.nursery.Scenario;
import growingon.nursery.library.Library;
import growingon.nursery.library.Source;
import growingon.nursery.lot.Lot;
import growingon.nursery.number.Writing;
import growingon.nursery.species.FromLibrary;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.report.build.TableOf;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What is said of species that grow as the library of species says. */
public final class LibraryWords {
  /** Below this a width is said with its decimal, from here on in halves. */
  private static final double WIDE = 1.25;

  public static final String PLACE =
      "Place beats species: the same 22 species grow 2.5 times as fast in one set of cities as in"
          + " another.";

  public static final String COMMON_PRACTICE =
      "Winter protection, cautions and how well species bear transplanting are common practice, no"
          + " source. No species of the library was measured in a pot.";

  private final Nursery nursery;
  private final Set<String> there;
  private final Phrases say;

  public LibraryWords(Scenario scenario) {
    this.say = Phrases.of(scenario);
    this.nursery = scenario.nursery();
    this.there = scenario.lots().stream().map(Lot::species).collect(Collectors.toSet());
  }

  /** For the first page; empty if every species of the plan grows as the nursery says. */
  public Optional<String> summary() {
    List<Species> borrowing =
        species().stream().filter(each -> !conditions(each).isEmpty()).toList();
    if (borrowing.isEmpty()) {
      return Optional.empty();
    }
    double off = borrowing.stream().mapToDouble(LibraryWords::widest).max().orElseThrow();
    boolean one = borrowing.size() == 1;
    return Optional.of(
        ("%s at library speed, not the nursery's own: field figures from elsewhere, no measurement for pots;"
                + " right within ×/÷ %s in 8 of 10 nurseries. 20 marked trees of %s settle more than"
                + " this table.")
            .formatted(
                one ? "1 species grows" : borrowing.size() + " species grow",
                width(off),
                one ? "it" : "each"));
  }

  /** Whole citations of what the species of this plan have from the library. */
  public static Table sources(Scenario scenario) {
    Writing writing = scenario.nursery().settings().writing();
    return TableOf.<Source>table(
            "library-sources", "Sources of the library of species in this plan")
        .note(
            "Only figures derived from these are in the program, no table of theirs. Read: in"
                + " part where a text was not read in full.")
        .text("source", Source::id)
        .longText("citation", Source::citation)
        .text("year", Source::year)
        .longText("what it measures", source -> writing.told(source.measures()))
        .longText("licence", Source::licence)
        .text("read", Source::read)
        .of(Library.shipped().sources(new LibraryWords(scenario).sources()));
  }

  /** Ids of the sources of what the species of the plan have from the library. */
  public Set<String> sources() {
    return species().stream()
        .flatMap(each -> each.fromLibrary().stream())
        .flatMap(each -> each.sources().stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private List<Species> species() {
    return nursery.species().values().stream().filter(each -> there.contains(each.name())).toList();
  }

  private static Set<String> conditions(Species species) {
    return species.fromLibrary().map(FromLibrary::conditions).orElse(Set.of());
  }

  private static double widest(Species species) {
    return conditions(species).stream()
        .mapToDouble(condition -> Sure.factor(species.sure().growthIn(condition)))
        .max()
        .orElseThrow();
  }

  private String width(double factor) {
    return factor < WIDE ? say.decimals(factor, 1) : say.number(Math.rint(2 * factor) / 2);
  }
}
