package growingon.report.plan.space;

import growingon.nursery.time.Horizon;
import growingon.problem.Problem;
import growingon.problem.advice.ValueAdvice;
import growingon.project.need.SpaceUse;
import growingon.project.need.SpaceUse.PlaceMonth;
import growingon.report.text.Phrases;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Places that are asked for so much more than their room that somebody mistyped a number. */
public final class RoomSlips {
  /** No nursery overfills a place so many times. */
  private static final double TIMES = 1000;

  private RoomSlips() {}

  /** A warning for each such place, with the month in which it is asked for most. */
  public static List<Problem> of(SpaceUse space, Horizon horizon, Phrases say) {
    return space.places().stream()
        .filter(Optional::isPresent)
        .flatMap(place -> fullest(space.months(place)).stream())
        .map(
            month ->
                ValueAdvice.roomLooksLikeASlip(
                    month.place().get(),
                    month.neededM2(),
                    month.capacityM2(),
                    say.month(horizon, month.month())))
        .toList();
  }

  private static Optional<PlaceMonth> fullest(List<PlaceMonth> months) {
    return months.stream()
        .filter(month -> month.capacityM2() > 0)
        .filter(month -> month.neededM2() >= TIMES * month.capacityM2())
        .max(Comparator.comparingDouble(PlaceMonth::neededM2));
  }
}
