package growingon.money;

import static growingon.money.SideBySideProperties.assertAlike;

import growingon.chance.luck.Draws;
import growingon.nursery.Scenario;
import growingon.project.Nurseries;
import growingon.project.Programme;
import growingon.project.lot.Luck;
import growingon.whole.RandomNurseries;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A run in the memory of an earlier one knows nothing of it. */
class RerunsProperties {
  private static final int RUNS = 6;

  @Provide
  Arbitrary<Nurseries> nurseries() {
    return RandomNurseries.any();
  }

  @Property(tries = 150)
  void runAfterOthers_comesToWhatItComesToAlone(
      @ForAll("nurseries") Nurseries nursery, @ForAll int seed) {
    Random random = new Random(seed);
    Scenario scenario = SideBySideProperties.valued(nursery.scenario(), random.nextBoolean());
    GradeNumbers grades = new GradeNumbers(scenario.nursery());
    Programme programme = Programme.of(scenario);
    Tally again = new Tally(programme, grades);

    for (int run = 0; run < RUNS; run++) {
      Luck luck = random.nextInt(4) == 0 ? Luck.NONE : new Draws(scenario).luck(random.nextInt(9));
      if (random.nextInt(4) == 0) {
        again.runBeside(List.of(), luck);
      } else {
        again.run(luck);
      }

      Tally alone = new Tally(Programme.of(scenario), grades);
      alone.run(luck);
      assertAlike(again, alone);
    }
  }
}
