package growingon.load.table.species;

import growingon.load.cell.Cell;
import growingon.load.row.As;
import growingon.load.row.Row;
import growingon.nursery.Assumption.Grounds;
import growingon.nursery.library.Figures;
import growingon.nursery.library.GrowingCondition;
import growingon.nursery.library.Library;
import growingon.nursery.library.Match;
import growingon.nursery.library.Taxon;
import growingon.nursery.species.Curve;
import growingon.nursery.species.FromLibrary;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What the row of a species takes from the library of species where its own cells are empty, one by
 * one. Each such value is listed with what it rests on.
 */
final class Lent {
  private static final String COMMON_PRACTICE = "common practice";

  private final LibraryShelf shelf;
  private final Row row;
  private final Optional<Taxon> taxon;
  private final boolean clone;
  private final boolean refused;
  private final Map<String, Figures> growth = new LinkedHashMap<>();
  private final Set<String> sources = new TreeSet<>();

  private Lent(LibraryShelf shelf, Row row, Optional<Taxon> taxon, boolean clone, boolean refused) {
    this.shelf = shelf;
    this.row = row;
    this.taxon = taxon;
    this.clone = clone;
    this.refused = refused;
  }

  static Lent nothing(LibraryShelf shelf, Row row) {
    return new Lent(shelf, row, Optional.empty(), false, false);
  }

  /** The library was asked in vain, which has been reported: nobody misses what it would give. */
  static Lent refused(LibraryShelf shelf, Row row) {
    row.missesQuietly(
        SpeciesTable.FIRST_YEAR_LOSS, SpeciesTable.LATER_LOSS, SpeciesShape.Entry.GROWTH);
    return new Lent(shelf, row, Optional.empty(), false, true);
  }

  static Lent of(LibraryShelf shelf, Row row, Match.One match, boolean clone) {
    return new Lent(shelf, row, Optional.of(match.taxon()), clone, false);
  }

  /** Whether the row asks the library: then only its name and ladder are needed. */
  boolean isAsked() {
    return taxon.isPresent() || refused;
  }

  /** A value of the row, else what the library says in the same words, else what is usual. */
  <T> T get(String heading, As<T> as, T usual, Function<Taxon, T> ofTaxon, String basis) {
    if (row.has(heading) || taxon.isEmpty()) {
      return row.get(heading, as, usual);
    }
    T value = ofTaxon.apply(taxon.get());
    tell(heading, as.shown().apply(value), basis);
    return value;
  }

  /** Spread between plants: by propagation, or that of a clone. */
  double vigourSpread(String heading, As<Double> as, double usual) {
    String basis =
        taxon
            .map(each -> clone ? "a cultivar is a clone; " + COMMON_PRACTICE : raised(each))
            .orElse("");
    return get(
        heading, as, usual, each -> clone ? Taxon.CLONE_VIGOUR_SPREAD : each.vigourSpread(), basis);
  }

  private static String raised(Taxon taxon) {
    String how =
        taxon.propagation().equals("either") ? "seedling, cutting or graft" : taxon.propagation();
    return "usually raised as " + how + "; " + COMMON_PRACTICE;
  }

  /** The caution where the row has no note of its own. */
  String healthNote(String heading) {
    Optional<String> typed = row.find(heading, As.TEXT);
    String caution = taxon.map(Taxon::caution).orElse("");
    if (typed.isEmpty() && !caution.isEmpty()) {
      tell(heading, caution, COMMON_PRACTICE);
    }
    return typed.orElse(caution);
  }

  /** What the library says besides, though no figure of the plan goes by it. */
  void tellBesides() {
    taxon.ifPresent(
        each -> {
          tell("transplanting", each.transplanting().toString(), COMMON_PRACTICE);
          tell("winter protection", each.winterProtection() ? "yes" : "no", COMMON_PRACTICE);
        });
  }

  private void tell(String heading, String value, String basis) {
    row.lend(heading, value, new Grounds("", basis), List.of());
  }

  /** What the library says of a growing condition of the nursery; empty if it does not know it. */
  Optional<Figures> in(String condition) {
    return taxon.flatMap(
        each -> shelf.condition(condition).map(known -> each.in(known, shelf.site())));
  }

  /**
   * Trunk at which growth ends in a condition.
   *
   * @param typed where the row says so, for all conditions
   */
  double mostMm(String condition, Optional<Double> typed) {
    Optional<Double> lent =
        typed.isPresent() ? Optional.empty() : in(condition).map(Figures::mostMm);
    lent.ifPresent(mm -> tell(SpeciesTable.MOST + " " + condition, Cell.Number.plain(mm), ""));
    return typed.or(() -> lent).orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * Adds growth in every condition that the row does not speak of and the nursery has.
   *
   * @param curves by condition, as far as the row states them
   * @param usual the usual condition
   * @param most greatest trunk, where the row states it
   */
  void addGrowth(Map<String, Curve> curves, String usual, Optional<Double> most) {
    Set<String> wanted = new LinkedHashSet<>(List.of(usual));
    wanted.addAll(new TreeSet<>(shelf.conditions()));
    wanted.removeAll(curves.keySet());
    for (String condition : wanted) {
      in(condition)
          .ifPresent(
              figures -> {
                growth.put(condition, figures);
                tellGrowth(condition, figures);
                curves.put(condition, new Curve.Steady(figures.mmAYear(), mostMm(condition, most)));
              });
    }
  }

  private void tellGrowth(String condition, Figures figures) {
    sources.addAll(figures.growthSources());
    row.lend(
        SpeciesTable.MM_A_YEAR + condition,
        Figures.shown(figures.mmAYear()),
        new Grounds(figures.range(), figures.grounds()),
        figures.growthSources());
  }

  /** How sure growth taken from the library is; empty if it is the row's own. */
  Optional<Double> growthSure(String condition) {
    Optional<Double> sure = Optional.ofNullable(growth.get(condition)).map(Figures::growthSure);
    sure.ifPresent(
        share ->
            tell(
                SpeciesTable.GROWTH_SURE + " " + condition,
                Long.toString(Math.round(share * 100)),
                ""));
    return sure;
  }

  /** A loss of the row, else what the library says for the usual condition. */
  double loss(String heading, String usual, Function<Figures, Double> ofFigures) {
    if (row.has(heading) || taxon.isEmpty()) {
      return row.get(heading, As.share());
    }
    GrowingCondition condition = lossCondition(usual);
    Figures figures = taxon.get().in(condition, shelf.site());
    double value = ofFigures.apply(figures);
    sources.addAll(figures.lossSources());
    row.lend(
        heading,
        As.share().shown().apply(value),
        new Grounds("", lossBasis(condition)),
        figures.lossSources());
    return value;
  }

  private String lossBasis(GrowingCondition condition) {
    return "%s; %s to transplant, %s"
        .formatted(condition.where(), taxon.orElseThrow().transplanting(), COMMON_PRACTICE);
  }

  /** Losses are those of the usual condition, in the field where the library does not know it. */
  private GrowingCondition lossCondition(String usual) {
    return shelf
        .condition(usual)
        .orElseGet(() -> Library.shipped().condition(Library.FIELD).orElseThrow());
  }

  /** How sure a loss is: as typed, as the library says of its own loss, or as is usual. */
  double lossSure(
      String heading, String lossHeading, double usual, Function<Figures, Double> ofFigures) {
    if (row.has(heading) || row.has(lossHeading) || taxon.isEmpty()) {
      return row.get(heading, As.sure(), usual);
    }
    double sure = ofFigures.apply(taxon.get().in(lossCondition(Library.FIELD), shelf.site()));
    tell(heading, As.sure().shown().apply(sure), "");
    return sure;
  }

  /** What the species has from the library. */
  Optional<FromLibrary> fromLibrary() {
    return taxon.map(each -> new FromLibrary(each.shown(), growth.keySet(), List.copyOf(sources)));
  }
}
