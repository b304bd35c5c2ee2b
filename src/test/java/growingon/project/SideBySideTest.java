package growingon.project;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Demand;
import growingon.nursery.time.MonthSpan;
import growingon.project.history.PartRecorder;
import growingon.project.history.Unheard;
import growingon.project.lot.Luck;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Which lots of programmes run side by side are run once, and which apart. */
class SideBySideTest {
  /** Two maples of one age and a larch, each species wanted for itself. */
  private static Programme programme(double wanted) {
    Nurseries nursery =
        Nurseries.working()
            .withoutDemand()
            .demand(row("maple", wanted))
            .demand(row("larch", wanted))
            .seasons(3)
            .lots(List.of(lot("first", "maple"), lot("second", "maple"), lot("other", "larch")));
    Scenario scenario = nursery.scenario();
    return Programme.of(scenario);
  }

  private static Demand row(String species, double units) {
    return new Demand(
        Optional.of(species),
        "patio trees",
        "started",
        Optional.empty(),
        MonthSpan.ALL_YEAR,
        OptionalDouble.of(units),
        40,
        0,
        0,
        0);
  }

  private static Lot lot(String name, String species) {
    return Lots.lot(name)
        .species(species)
        .arrived(2024, 11)
        .quantity(100)
        .trunks(30, 0.1)
        .quality(1, 0, true)
        .place("ground")
        .plantsPerM2(9)
        .route("field tree")
        .build();
  }

  private static List<SideBySide.Told> run(Programme first, Programme other) {
    return first.runBeside(List.of(other), Luck.NONE, (programme, lot) -> new Deaf());
  }

  @Test
  void lotThatSellsAlikeInBoth_isRunOnce() {
    Programme all = programme(1000);
    List<SideBySide.Told> told = run(all, all.without("second"));

    assertThat(told.get(1).lots()[0]).isSameAs(told.get(0).lots()[0]);
    assertThat(told.get(1).lots()[1]).isSameAs(told.get(0).lots()[2]);
  }

  @Test
  void lotThatSellsMoreWhereAnotherIsMissing_goesApart_theOthersDoNot() {
    Programme all = programme(50);
    List<SideBySide.Told> told = run(all, all.without("second"));

    assertThat(told.get(1).lots()[0]).isNotSameAs(told.get(0).lots()[0]);
    assertThat(told.get(1).lots()[1]).isSameAs(told.get(0).lots()[2]);
  }

  @Test
  void turns_nameEveryPartOfEveryLot() {
    Programme all = programme(50);

    for (SideBySide.Told told : run(all, all.without("other"))) {
      int[] parts = new int[told.lots().length];
      for (int turn : told.turns()) {
        for (int lot = 0; lot < parts.length; lot++) {
          parts[lot] += turn == SideBySide.EVERY_LOT || turn == lot ? 1 : 0;
        }
      }
      List<Integer> ofLots = new ArrayList<>();
      for (PartRecorder each : told.lots()) {
        ofLots.add(((Deaf) each).parts);
      }
      assertThat(parts).containsExactly(ofLots.stream().mapToInt(Integer::intValue).toArray());
    }
  }

  /** Counts its parts and takes nothing else down. */
  private static final class Deaf extends Unheard implements PartRecorder {
    private int parts;

    @Override
    public void partOver() {
      parts++;
    }

    @Override
    public PartRecorder goingApart() {
      Deaf same = new Deaf();
      same.parts = parts;
      return same;
    }
  }
}
