package growingon.report.figures;

import growingon.project.history.Stood;
import growingon.project.need.SpaceUse.PlaceMonth;
import growingon.report.text.Plants;
import growingon.whole.WholeLot;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Plants that stand in each place in each month, after its steps. */
public final class PlacePlants {
  private final Map<Optional<String>, int[]> whole = new HashMap<>();

  private PlacePlants() {}

  public static PlacePlants of(Context context) {
    PlacePlants plants = new PlacePlants();
    context.whole().lots().forEach(plants::add);
    return plants;
  }

  private void add(WholeLot lot) {
    int months = lot.history().months();
    for (int month = lot.history().start(); month < months; month++) {
      Stood stood = lot.history().stood(month);
      if (stood != null) {
        whole.computeIfAbsent(stood.place(), place -> new int[months])[month] +=
            lot.standingAfterWork(month);
      }
    }
  }

  /** Plants of a place in a month. */
  public Plants in(PlaceMonth month) {
    int[] ofPlace = whole.get(month.place());
    return Plants.of(month.plants(), ofPlace == null ? 0 : ofPlace[month.month()]);
  }
}
