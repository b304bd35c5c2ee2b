package growingon.report.plan.work;

import growingon.nursery.time.Horizon;
import growingon.project.history.Happening;
import growingon.project.history.Work;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Paper;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.whole.WholeLot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One sheet of A3 for the wall: the year's jobs by month and place, with boxes. */
public final class WallSheet {
  private static final int WIDTH = 16;

  private final Context context;
  private final Horizon horizon;
  private final int months;
  private final Phrases say;

  /** Lots and plants of one job in a month and place. */
  private static final class Cell {
    int lots;
    int plants;
  }

  private WallSheet(Context context) {
    this.say = context.say();
    this.context = context;
    this.horizon = context.inputs().scenario().horizon();
    this.months = Math.min(Context.NEXT_MONTHS, horizon.months());
  }

  public static Sheet of(Context context) {
    WallSheet wall = new WallSheet(context);
    return FilledSheet.of(
            "Wall sheet",
            List.of("Print it on A3 and hang it up: a box a job, in the month in which it begins."),
            wall.table())
        .withPaper(Paper.A3);
  }

  private Table table() {
    TableOf<Map.Entry<String, List<Map<String, Cell>>>> table =
        TableOf.<Map.Entry<String, List<Map<String, Cell>>>>table("wall", "The year's jobs")
            .text("place", Map.Entry::getKey)
            .wide(14);
    for (int i = 0; i < months; i++) {
      int month = i;
      table
          .longText(say.month(horizon.month(month)), place -> said(place.getValue().get(month)))
          .wide(WIDTH);
    }
    return table.of(List.copyOf(byPlace().entrySet()));
  }

  /** Jobs by place, in the order of the places, and month. */
  private Map<String, List<Map<String, Cell>>> byPlace() {
    Map<String, List<Map<String, Cell>>> places = new LinkedHashMap<>();
    context
        .inputs()
        .scenario()
        .nursery()
        .places()
        .keySet()
        .forEach(each -> places.put(each, empty()));
    for (WholeLot lot : context.whole().lots()) {
      for (int i = 0; i < lot.history().happenings().size(); i++) {
        Happening done = lot.history().happenings().get(i);
        int plants = plants(lot, done, i);
        if (done.month() < months && plants > 0) {
          String place = done.place().orElse("no place");
          Cell cell =
              places
                  .computeIfAbsent(place, each -> empty())
                  .get(done.month())
                  .computeIfAbsent(done.job(), each -> new Cell());
          cell.lots++;
          cell.plants += plants;
        }
      }
    }
    places.values().removeIf(cells -> cells.stream().allMatch(Map::isEmpty));
    return places;
  }

  /** Whole plants of a job; of selling those that are sold, not all that stand. */
  private static int plants(WholeLot lot, Happening done, int happening) {
    return done.job().equals(Work.SELLING) ? lot.sold(done.month()) : lot.workedOn(happening);
  }

  private List<Map<String, Cell>> empty() {
    List<Map<String, Cell>> cells = new ArrayList<>();
    for (int month = 0; month < months; month++) {
      cells.add(new LinkedHashMap<>());
    }
    return cells;
  }

  private String said(Map<String, Cell> jobs) {
    List<String> lines = new ArrayList<>();
    jobs.forEach(
        (job, cell) ->
            lines.add(
                "☐ %s: %s, %s"
                    .formatted(
                        job, say.counted(cell.lots, "lot", "lots"), say.plants(cell.plants))));
    return lines.isEmpty() ? null : String.join("\n", lines);
  }
}
