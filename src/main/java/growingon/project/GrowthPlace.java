package growingon.project;

import growingon.growth.Flow;
import growingon.nursery.species.Species;
import growingon.project.history.Unheard;
import growingon.project.lot.Luck;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A species in a growing condition in which some lot of a plan grows: in the plan's first month, or
 * where none does then, as its lots come into it.
 *
 * @param species its name
 * @param condition the growing condition
 * @param plants plants alive
 * @param trunkMm their mean trunk, mm
 * @param mmASeason what a trunk of that size grows in a season by the species' law there, mm
 */
public record GrowthPlace(
    String species, String condition, double plants, double trunkMm, double mmASeason) {

  /** Every one of a plan's line, species by species in the order of its lots. */
  public static List<GrowthPlace> of(Programme programme) {
    List<Noted> lots = programme.lots().stream().map(plan -> new Noted(plan.species)).toList();
    programme.run(Luck.NONE, lots::get);
    Map<String, List<Stay>> together = new LinkedHashMap<>();
    for (Noted lot : lots) {
      for (Stay stay : lot.stays) {
        together
            .computeIfAbsent(stay.species.name() + "\n" + stay.condition, k -> new ArrayList<>())
            .add(stay);
      }
    }
    return together.values().stream().map(GrowthPlace::of).toList();
  }

  private static GrowthPlace of(List<Stay> stays) {
    List<Stay> first = stays.stream().filter(stay -> stay.month == 0).toList();
    Collection<Stay> taken = first.isEmpty() ? stays : first;
    double plants = taken.stream().mapToDouble(Stay::plants).sum();
    double trunks = taken.stream().mapToDouble(stay -> stay.plants * stay.trunkMm).sum();
    Stay any = stays.get(0);
    double mean = plants > 0 ? trunks / plants : any.trunkMm;
    Flow flow = Flow.of(any.species.growth().get(any.condition));
    return new GrowthPlace(
        any.species.name(), any.condition, plants, mean, flow.advance(mean, 1) - mean);
  }

  /** A lot's first month in a condition. */
  private record Stay(
      Species species, String condition, int month, double plants, double trunkMm) {}

  /** Notes in which conditions a lot grows. */
  private static final class Noted extends Unheard {
    private final Species species;
    private final List<Stay> stays = new ArrayList<>();
    private final List<String> seen = new ArrayList<>();
    private double living;
    private double trunkMm;

    Noted(Species species) {
      this.species = species;
    }

    @Override
    public boolean asksForTrunks() {
      return true;
    }

    @Override
    public void monthOver(int month, double plants) {
      living = plants;
    }

    @Override
    public void trunk(int month, double meanMm) {
      trunkMm = meanMm;
    }

    @Override
    public void growsIn(int month, String condition) {
      if (living > 0 && trunkMm > 0 && !seen.contains(condition)) {
        seen.add(condition);
        stays.add(new Stay(species, condition, month, living, trunkMm));
      }
    }
  }
}
