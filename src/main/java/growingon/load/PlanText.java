package growingon.load;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import growingon.load.settings.PlanShape;
import growingon.nursery.Plan;
import growingon.nursery.Plan.PlannedHold;
import growingon.nursery.lot.Hold;
import growingon.nursery.market.HorizonValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A plan as a plan.json that can be read again. */
public final class PlanText {
  private PlanText() {}

  /**
   * The text of the file.
   *
   * @param nursery the nursery's folder or workbook, as seen from the file
   * @param comments lines put above it
   */
  public static String of(Plan plan, String nursery, List<String> comments) {
    List<String> keys = new ArrayList<>();
    keys.add(key(PlanShape.NAME, quoted(plan.name())));
    keys.add(key(PlanShape.NURSERY, quoted(nursery)));
    keys.add(key(PlanShape.FIRST_MONTH, quoted(plan.firstMonth().toString())));
    keys.add(key(PlanShape.SEASONS, Integer.toString(plan.seasons())));
    keys.add(key(PlanShape.TAKE, takes(plan)));
    if (!plan.holds().isEmpty()) {
      keys.add(key(PlanShape.HOLD, holds(plan)));
    }
    if (!plan.ordered().isEmpty()) {
      List<String> ordered = plan.ordered().stream().map(PlanText::quoted).toList();
      keys.add(key(PlanShape.ORDERED, "[" + String.join(", ", ordered) + "]"));
    }
    keys.add(key(PlanShape.SLICES, Integer.toString(plan.slices())));
    keys.add(key(PlanShape.DRAWS, Integer.toString(plan.draws())));
    keys.add(key(PlanShape.SEED, Long.toString(plan.seed())));
    keys.add(key(PlanShape.HORIZON_VALUE, value(plan.horizonValue())));
    StringBuilder text = new StringBuilder();
    comments.forEach(line -> text.append("// ").append(line).append('\n'));
    return text.append("{\n").append(String.join(",\n", keys)).append("\n}\n").toString();
  }

  private static String key(String name, String value) {
    return "  " + quoted(name) + ": " + value;
  }

  private static String quoted(String text) {
    return '"' + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
  }

  private static String takes(Plan plan) {
    List<String> takes = new ArrayList<>();
    plan.take().forEach((offer, number) -> takes.add(quoted(offer) + ": " + number));
    return "{ " + String.join(", ", takes) + " }";
  }

  private static String holds(Plan plan) {
    List<String> lines = new ArrayList<>();
    for (Map.Entry<String, PlannedHold> each : plan.holds().entrySet()) {
      lines.add("    " + quoted(each.getKey()) + ": { " + hold(each.getValue()) + " }");
    }
    return "{\n" + String.join(",\n", lines) + "\n  }";
  }

  private static String hold(PlannedHold planned) {
    List<String> parts = new ArrayList<>();
    if (planned.hold().isEmpty()) {
      parts.add("\"share %\": 0");
    } else {
      Hold hold = planned.hold().get();
      parts.add("\"grade\": " + quoted(hold.grade()));
      parts.add("\"share %\": " + percent(hold.share()));
      parts.add("\"which\": " + quoted(hold.which().toString()));
    }
    if (planned.advised()) {
      parts.add("\"advised\": true");
    }
    return String.join(", ", parts);
  }

  private static String value(HorizonValue value) {
    return value.isStockValue() ? "\"stock value\"" : percent(value.shareOfList());
  }

  /** The percentage that reads back as the same share. */
  private static String percent(double share) {
    double percent = share * 100;
    double rounded = Math.rint(percent * 1e6) / 1e6;
    double said = rounded / 100 == share ? rounded : percent;
    return said == Math.rint(said) ? Long.toString((long) said) : Double.toString(said);
  }
}
