package growingon.nursery.library;

import growingon.nursery.library.Match.How;
import growingon.nursery.species.Habit;
import growingon.nursery.species.LibrarySite;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The shipped library of species: growth and losses of 74 taxa in six growing conditions, each with
 * what it rests on. No guess is made by the nearness of names.
 */
public final class Library {
  /** The condition of which the library has its figures. */
  public static final String FIELD = "field";

  /** The condition of a nursery's pots where nothing is said. */
  public static final String TRAINING_POT = "training pot";

  private static final int NEAREST = 3;

  private final List<Taxon> taxa;
  private final Map<String, GrowingCondition> conditions;
  private final Map<String, Source> sources;
  private final Map<String, Taxon> byName = new HashMap<>();
  private final Map<String, Taxon> byRelation = new HashMap<>();
  private final Map<String, List<Taxon>> byGenus;
  private final NearNames near;

  Library(List<Taxon> taxa, List<GrowingCondition> conditions, List<Source> sources) {
    this.taxa = List.copyOf(taxa);
    this.conditions = new LinkedHashMap<>();
    conditions.forEach(each -> this.conditions.put(each.name(), each));
    this.sources = new HashMap<>();
    sources.forEach(each -> this.sources.put(each.id(), each));
    for (Taxon taxon : taxa) {
      taxon.ownNames().forEach(name -> byName.put(PlantName.of(name).key(), taxon));
      taxon.standsInFor().forEach(name -> byRelation.put(PlantName.of(name).key(), taxon));
    }
    this.byGenus = Genera.of(taxa);
    this.near = new NearNames(taxa);
  }

  private static final class Holder {
    static final Library SHIPPED = Shipped.library();
  }

  /** The one that is shipped. */
  public static Library shipped() {
    return Holder.SHIPPED;
  }

  /** What is found for a name: botanical or English, with or without a cultivar in quotes. */
  public Match find(String typed) {
    PlantName name = PlantName.of(typed);
    return exact(name)
        .or(() -> standIn(name))
        .or(() -> several(name))
        .or(() -> genus(name))
        .orElseGet(() -> new Match.Nothing(near.to(name, NEAREST)));
  }

  private Optional<Match> exact(PlantName name) {
    return Optional.ofNullable(byName.get(name.key()))
        .map(taxon -> new Match.One(taxon, How.NAMED, name.cultivar()));
  }

  private Optional<Match> standIn(PlantName name) {
    return Optional.ofNullable(byRelation.get(name.key()))
        .map(taxon -> new Match.One(taxon.asStandIn(), How.STANDS_IN, name.cultivar()));
  }

  private Optional<Match> several(PlantName name) {
    List<Taxon> meant = near.endingWith(name);
    return meant.size() > 1 ? Optional.of(new Match.Several(meant)) : Optional.empty();
  }

  private Optional<Match> genus(PlantName name) {
    return Optional.ofNullable(byGenus.get(name.first()))
        .map(rows -> Middle.ofGenus(rows, "the genus " + Genera.shown(name.first())))
        .map(middle -> new Match.One(middle, How.GENUS, name.cultivar()));
  }

  /** The name that was meant if one or two letters of it were mistyped. */
  public Optional<String> slip(String typed) {
    return near.slip(PlantName.of(typed));
  }

  /** The middle of all rows of a kind. */
  public Match.One ofKind(Habit habit) {
    List<Taxon> kind = taxa.stream().filter(each -> each.habit() == habit).toList();
    return new Match.One(Middle.ofKind(kind, habit), How.KIND, Optional.empty());
  }

  /**
   * The figures of a name in a growing condition of the library, where they are found without a
   * question.
   */
  public Optional<Figures> find(String name, String condition) {
    Optional<GrowingCondition> where = condition(condition);
    return where.isPresent() && find(name) instanceof Match.One one
        ? Optional.of(one.taxon().in(where.get(), LibrarySite.USUAL))
        : Optional.empty();
  }

  /** The cultivar that stands in quotes in a plant's name. */
  public static Optional<String> cultivar(String name) {
    return PlantName.of(name).cultivar();
  }

  /** Every row, in order. */
  public List<Taxon> taxa() {
    return taxa;
  }

  /** The names of the growing conditions, in order. */
  public List<String> conditions() {
    return List.copyOf(conditions.keySet());
  }

  /** A growing condition by its name. */
  public Optional<GrowingCondition> condition(String name) {
    return Optional.ofNullable(conditions.get(name));
  }

  /** The sources of these ids, in the order of the ids. */
  public List<Source> sources(Collection<String> ids) {
    return new TreeSet<>(ids).stream().map(sources::get).toList();
  }
}
