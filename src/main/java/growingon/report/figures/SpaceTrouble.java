package growingon.report.figures;

import growingon.money.Accounts;
import growingon.nursery.Nursery;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.project.need.SpaceUse.PlaceMonth;
import growingon.report.text.Spell;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A place that does not hold what is to stand in it.
 *
 * @param name of the place; none for lots without one
 * @param place the place; none for lots without one
 * @param spells when it does not fit, in order of time
 */
public record SpaceTrouble(Optional<String> name, Optional<Place> place, List<Spell> spells) {
  /** Every such place: quarantine first, then where most is missing; lots without a place last. */
  public static List<SpaceTrouble> of(Accounts accounts) {
    Nursery nursery = accounts.projection().scenario().nursery();
    List<SpaceTrouble> troubles = new ArrayList<>();
    if (nursery.places().isEmpty()) {
      return troubles;
    }
    for (Optional<String> name : accounts.space().places()) {
      List<PlaceMonth> months = accounts.space().months(name);
      List<Spell> spells = Spell.of(months.size(), month -> months.get(month).overflowM2());
      if (!spells.isEmpty()) {
        troubles.add(new SpaceTrouble(name, name.map(nursery.places()::get), spells));
      }
    }
    troubles.sort(
        Comparator.comparing((SpaceTrouble each) -> each.place().isEmpty())
            .thenComparing(each -> !each.isQuarantine())
            .thenComparing(each -> -each.worst().most()));
    return troubles;
  }

  private boolean isQuarantine() {
    return place.filter(each -> each.kind() == PlaceKind.QUARANTINE).isPresent();
  }

  public Spell worst() {
    return Spell.worst(spells);
  }
}
