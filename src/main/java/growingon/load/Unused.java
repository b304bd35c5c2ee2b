package growingon.load;

import growingon.load.cell.Findings;
import growingon.load.cell.Nearest;
import growingon.load.cell.Texts;
import growingon.load.file.Tables;
import growingon.load.row.Row;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.StartedExamples;
import growingon.load.table.market.GradesTable;
import growingon.load.table.place.PlacesTable;
import growingon.load.table.route.RoutesTable;
import growingon.load.table.supply.ComponentsTable;
import growingon.load.table.supply.MaterialsTable;
import growingon.load.table.supply.MixesTable;
import growingon.load.table.supply.PotsTable;
import growingon.nursery.Nursery;
import growingon.nursery.lot.Lot;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.route.Route;
import growingon.nursery.route.Step;
import growingon.nursery.species.Species;
import growingon.nursery.supply.Mix;
import growingon.problem.advice.ValueAdvice;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Names that are defined and that nothing uses: no lot of the stock list and no offer, taken or
 * not. A slip in a definition makes such a name, and what it should have defined goes without.
 */
final class Unused {
  private final Tables tables;
  private final Findings findings;
  private final Map<TableFormat, Set<String>> used = new LinkedHashMap<>();

  private Unused(Tables tables, Findings findings) {
    this.tables = tables;
    this.findings = findings;
  }

  /**
   * Says, once for each table, what nothing uses, and warns of each name that is nearly one in use.
   *
   * @param lots those of the stock list and those on offer
   */
  static void remark(Tables tables, Nursery nursery, Collection<Lot> lots, Findings findings) {
    Unused unused = new Unused(tables, findings);
    lots.forEach(lot -> unused.note(lot, nursery));
    lots.stream()
        .map(Lot::route)
        .distinct()
        .forEach(route -> unused.note(nursery.routes().get(route), nursery));
    nursery.places().values().stream()
        .filter(place -> place.kind() == PlaceKind.QUARANTINE)
        .forEach(place -> unused.note(PlacesTable.FORMAT, place.name()));
    unused.tell(RoutesTable.FORMAT, RoutesTable.ROUTE.name(), "route", nursery.routes().keySet());
    unused.tell(PotsTable.FORMAT, PotsTable.POT.name(), "pot", nursery.pots().keySet());
    unused.tell(MixesTable.FORMAT, MixesTable.MIX.name(), "mix", nursery.mixes().keySet());
    unused.tell(
        ComponentsTable.FORMAT,
        ComponentsTable.COMPONENT.name(),
        "component",
        nursery.components().keySet());
    unused.tell(
        MaterialsTable.FORMAT,
        MaterialsTable.MATERIAL.name(),
        "material",
        nursery.materials().keySet());
    unused.tell(PlacesTable.FORMAT, PlacesTable.PLACE.name(), "place", nursery.places().keySet());
    unused.tell(
        GradesTable.FORMAT, GradesTable.LADDER.name(), "ladder", nursery.ladders().keySet());
  }

  private void note(TableFormat table, String name) {
    used.computeIfAbsent(table, each -> new LinkedHashSet<>()).add(name);
  }

  private void note(Lot lot, Nursery nursery) {
    lot.potting().pot().ifPresent(pot -> note(PotsTable.FORMAT, pot));
    lot.standing().place().ifPresent(place -> note(PlacesTable.FORMAT, place));
    Species species = nursery.species().get(lot.species());
    note(GradesTable.FORMAT, species.ladder());
    species.winterPlace().ifPresent(place -> note(PlacesTable.FORMAT, place));
  }

  private void note(Route route, Nursery nursery) {
    note(RoutesTable.FORMAT, route.name());
    route.steps().forEach(step -> note(step, nursery));
  }

  private void note(Step step, Nursery nursery) {
    step.pot().ifPresent(pot -> note(PotsTable.FORMAT, pot));
    step.place().ifPresent(place -> note(PlacesTable.FORMAT, place));
    step.materials().keySet().forEach(material -> note(MaterialsTable.FORMAT, material));
    Optional<Mix> mix = step.mix().map(nursery.mixes()::get);
    mix.ifPresent(
        found -> {
          note(MixesTable.FORMAT, found.name());
          found.parts().keySet().forEach(part -> note(ComponentsTable.FORMAT, part));
        });
  }

  private void tell(TableFormat format, String heading, String what, Set<String> defined) {
    Set<String> inUse = used.getOrDefault(format, Set.of());
    List<String> unused = defined.stream().filter(name -> !inUse.contains(name)).toList();
    if (!unused.isEmpty()) {
      tables.find(format).ifPresent(table -> tell(table, format, heading, what, unused));
    }
  }

  private void tell(
      Table table, TableFormat format, String heading, String what, List<String> unused) {
    Set<String> inUse = used.getOrDefault(format, Set.of());
    StartedExamples examples = StartedExamples.of(format);
    Map<String, List<Row>> rows =
        table.rows().stream()
            .collect(Collectors.groupingBy(row -> Texts.key(row.cell(heading).shown())));
    List<String> plain = new ArrayList<>();
    for (String name : unused) {
      List<Row> its = rows.getOrDefault(Texts.key(name), List.of());
      Optional<String> near = Nearest.slipOfUnused(name, inUse);
      if (near.isPresent() && !its.isEmpty()) {
        its.get(0).remark(heading, where -> ValueAdvice.unusedSlip(where, what, name, near.get()));
      } else if (!its.stream().allMatch(examples::has)) {
        plain.add(named(name, inUse));
      }
    }
    if (!plain.isEmpty()) {
      findings.add(ValueAdvice.unused(table.where(), what, plain));
    }
  }

  /** With the nearest name in use, where one is near. */
  private static String named(String name, Set<String> inUse) {
    return Nearest.to(name, inUse)
        .map(near -> name + " (nearest in use: " + near + ")")
        .orElse(name);
  }
}
