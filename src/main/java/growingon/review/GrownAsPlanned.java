package growingon.review;

import growingon.nursery.Scenario;
import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.known.LotFacts;
import growingon.project.known.MonthFacts;
import growingon.project.lot.Facts;
import growingon.review.book.Bookkeeping;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is there, had it grown as planned since it was first measured. */
final class GrownAsPlanned {
  /** A measuring so soon after a lot has come says how it came, not how it grew. */
  private static final int MONTHS_OF_COMING = 3;

  private GrownAsPlanned() {}

  static Projection of(Scenario scenario, Facts known, Bookkeeping daybook) {
    Horizon horizon = scenario.horizon();
    Map<String, LotFacts> facts = new HashMap<>();
    daybook
        .lots()
        .forEach(
            lot -> {
              int until = LuckOrMore.start(lot, horizon) + MONTHS_OF_COMING;
              LotFacts of = known.byLot().get(lot.name());
              facts.put(lot.name(), unmeasured(of, until));
            });
    return Projector.project(scenario, new Facts(facts));
  }

  private static LotFacts unmeasured(LotFacts of, int until) {
    Map<Integer, MonthFacts> months = new HashMap<>();
    of.months().forEach((month, each) -> months.put(month, month <= until ? each : counted(each)));
    return new LotFacts(of.part(), of.soldThrough(), of.goneThrough(), of.atStart(), months);
  }

  private static MonthFacts counted(MonthFacts of) {
    Optional<MonthFacts.Count> count =
        of.count()
            .filter(each -> each.living().isPresent())
            .map(
                each ->
                    new MonthFacts.Count(
                        each.living(),
                        each.qualities(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()));
    return new MonthFacts(of.changes(), of.leaving(), count);
  }
}
