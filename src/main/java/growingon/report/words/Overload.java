package growingon.report.words;

import growingon.money.Accounts;
import growingon.nursery.place.Place;
import growingon.nursery.time.Horizon;
import growingon.project.need.SpaceUse.PlaceMonth;
import growingon.report.text.Phrases;
import growingon.report.text.Spell;
import java.util.List;

/**
 * A place that carries more on a square metre than it may, where its heaviest lot stands.
 *
 * @param place the place, which has a limit
 * @param spells when it carries too much, in order of time
 * @param heaviestLot name of the heaviest lot in the worst month
 */
public record Overload(Place place, List<Spell> spells, String heaviestLot) {
  /** Every such place, in the order of the table. */
  public static List<Overload> of(Accounts accounts) {
    return accounts.projection().scenario().nursery().places().values().stream()
        .filter(place -> place.kgPerM2().isPresent())
        .map(place -> of(place, accounts.space().months(place)))
        .filter(overload -> !overload.spells().isEmpty())
        .toList();
  }

  private static Overload of(Place place, List<PlaceMonth> months) {
    double limit = place.kgPerM2().getAsDouble();
    List<Spell> spells =
        Spell.of(months.size(), month -> months.get(month).heaviestKgPerM2() - limit);
    String lot = spells.isEmpty() ? "" : months.get(Spell.worst(spells).worst()).heaviestLot();
    return new Overload(place, spells, lot);
  }

  /** A sentence for a sheet. */
  String told(Horizon horizon, Phrases say) {
    return "%s carries more than its %s kg/m² %s, %s where %s stands; give the pots more room or another place."
        .formatted(
            Phrases.sentence(place.name()),
            say.whole(place.kgPerM2().getAsDouble()),
            say.when(spells, horizon),
            say.most(spells, horizon, amount(say)),
            heaviestLot);
  }

  /** Long bench (by up to 5 kg/m², Sep 2032). */
  String named(Horizon horizon, Phrases say) {
    return "%s (by up to %s, %s)"
        .formatted(place.name(), amount(say), say.month(horizon, Spell.worst(spells).worst()));
  }

  /** A line for the terminal. */
  String headline(Horizon horizon, Phrases say) {
    return "Too heavy: %s %s, %s."
        .formatted(place.name(), say.when(spells, horizon), say.upTo(spells, horizon, amount(say)));
  }

  private String amount(Phrases say) {
    return say.number(Spell.worst(spells).most()) + " kg/m²";
  }
}
