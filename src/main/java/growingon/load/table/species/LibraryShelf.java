package growingon.load.table.species;

import growingon.load.cell.Cell;
import growingon.load.cell.CellFault;
import growingon.load.cell.Spot;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.nursery.library.Figures;
import growingon.nursery.library.GrowingCondition;
import growingon.nursery.library.Library;
import growingon.nursery.library.Match;
import growingon.nursery.library.Taxon;
import growingon.nursery.species.Climate;
import growingon.nursery.species.Habit;
import growingon.nursery.species.LibrarySite;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.LibraryAdvice;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The library of species as this nursery may use it: which row a species means, and what its
 * growing conditions are called there.
 */
final class LibraryShelf {
  private static final Match NOTHING = new Match.Nothing(List.of());

  private final LibrarySite site;
  private final Set<String> conditions;
  private boolean climateTold;

  /**
   * A shelf.
   *
   * @param conditions growing conditions that pots and places of the nursery name
   */
  LibraryShelf(LibrarySite site, Set<String> conditions) {
    this.site = site;
    this.conditions = Set.copyOf(conditions);
  }

  LibrarySite site() {
    return site;
  }

  Set<String> conditions() {
    return conditions;
  }

  /** What a growing condition of the nursery is in the library. */
  Optional<GrowingCondition> condition(String own) {
    return Library.shipped().condition(site.conditionOf(own).orElse(own));
  }

  /** What a species takes from the library, by its column library. */
  Lent lend(Row row, String name) {
    Optional<Match.One> match = row.get(SpeciesTable.LIBRARY, reading(name), Optional.empty());
    if (match.isEmpty()) {
      return isRefused(row) ? Lent.refused(this, row) : Lent.nothing(this, row);
    }
    checkClimate(row);
    return Lent.of(this, row, match.get(), isClone(match.get(), name));
  }

  /** Whether the library was asked for in vain, which has been reported. */
  private static boolean isRefused(Row row) {
    Cell cell = row.cell(SpeciesTable.LIBRARY);
    return !cell.isEmpty() && As.yesOrNo(cell).orElse(true);
  }

  private static boolean isClone(Match.One match, String name) {
    return match.cultivar().isPresent() || Library.cultivar(name).isPresent();
  }

  /** Says it at the first species that asks the library, since it is one fault. */
  private void checkClimate(Row row) {
    Climate climate = site.climate();
    if (climateTold) {
      return;
    }
    climateTold = true;
    String found = row.cell(SpeciesTable.LIBRARY).shown();
    String words = climate.toString();
    if (climate.isBeyondLibrary()) {
      row.fail(SpeciesTable.LIBRARY, where -> LibraryAdvice.climateBeyond(where, found, words));
    } else if (climate.isUnlikeLibrary()) {
      row.remark(SpeciesTable.LIBRARY, where -> LibraryAdvice.climateUnlike(where, found, words));
    }
  }

  /** A species without a row is told the row that the library would fill. */
  Names.Remedy rows(Names ladders) {
    String ladder = ladders.all().size() == 1 ? ladders.all().get(0) : "<ladder>";
    return (where, typed, nearest) -> {
      Match match = site.climate().isBeyondLibrary() ? NOTHING : Library.shipped().find(typed);
      if (match instanceof Match.Several several) {
        List<String> names = several.taxa().stream().map(Taxon::name).toList();
        return Optional.of(LibraryAdvice.speciesOfSeveral(where, typed, nearest, names));
      }
      return match instanceof Match.One one
          ? Optional.of(
              LibraryAdvice.speciesWithoutRow(
                  where, typed, nearest, row(typed, ladder, one.taxon())))
          : Optional.empty();
    };
  }

  private String row(String name, String ladder, Taxon taxon) {
    Figures field = taxon.in(Library.shipped().condition(Library.FIELD).orElseThrow(), site);
    return "%s,%s,library yes: %s mm a year in the field, %s, %s"
        .formatted(name, ladder, Figures.shown(field.mmAYear()), field.range(), field.grounds());
  }

  /** The column library: yes for the species' own name, or another name, or a kind. */
  private static As<Optional<Match.One>> reading(String name) {
    return new As<>(
        Optional.empty(),
        (cell, spot) -> match(cell, name, spot),
        match -> match.map(LibraryShelf::shown).orElse("no"),
        heading -> "");
  }

  private static String shown(Match.One match) {
    return "yes: " + match.taxon().shown();
  }

  private static Optional<Match.One> match(Cell cell, String name, Spot spot) {
    Optional<Boolean> yes = As.yesOrNo(cell);
    if (yes.isPresent() && !yes.get()) {
      return Optional.empty();
    }
    String asked = yes.isPresent() ? name : As.NAME.reader().read(cell, spot);
    if (asked.isEmpty()) {
      return Optional.empty();
    }
    Match.One match =
        Arrays.stream(Habit.values())
            .filter(habit -> habit.toString().equals(Texts.key(asked)))
            .findFirst()
            .map(Library.shipped()::ofKind)
            .orElseGet(() -> one(asked));
    notice(match, asked, name).ifPresent(spot::remark);
    return Optional.of(match);
  }

  /**
   * The one row that is meant.
   *
   * @throws CellFault if there is none, or more than one
   */
  private static Match.One one(String asked) {
    Match match = Library.shipped().find(asked);
    if (match instanceof Match.Several several) {
      List<String> names = several.taxa().stream().map(Taxon::name).toList();
      throw new CellFault(where -> LibraryAdvice.severalInLibrary(where, asked, names));
    }
    if (match instanceof Match.Nothing nothing) {
      throw new CellFault(where -> LibraryAdvice.notInLibrary(where, asked, nothing.nearest()));
    }
    return (Match.One) match;
  }

  /** What was meant if a name is mistyped; a genus by itself is meant. */
  private static Optional<String> slip(String asked) {
    return asked.contains(" ") ? Library.shipped().slip(asked) : Optional.empty();
  }

  /** What is said where the match is not by a name of the row itself. */
  private static Optional<Function<Where, Problem>> notice(
      Match.One match, String asked, String name) {
    String row = match.taxon().shown();
    String habit = match.taxon().habit().toString();
    return switch (match.how()) {
      case NAMED -> match.cultivar().map(any -> where -> LibraryAdvice.cultivar(where, asked, row));
      case STANDS_IN -> Optional.of(where -> LibraryAdvice.relation(where, asked, row));
      case GENUS ->
          Optional.of(where -> LibraryAdvice.genus(where, asked, row, habit, slip(asked)));
      case KIND -> Optional.of(where -> LibraryAdvice.kind(where, asked, name));
    };
  }
}
