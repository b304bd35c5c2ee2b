package growingon.report.words;

import growingon.nursery.Horizon;
import growingon.nursery.Lot;
import growingon.nursery.Nursery;
import growingon.nursery.Scenario;
import growingon.problem.Severity;
import growingon.report.figures.Context;
import growingon.report.text.Labels;
import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.List;

/** The dozen lines that a grower reads in the terminal. */
public final class Headlines {
  /** Most characters of a line. */
  public static final int WIDTH = 110;

  static final int LOTS_NAMED = 2;

  private Headlines() {}

  public static List<String> of(Context context) {
    List<String> lines = new ArrayList<>();
    lines.add(plan(context));
    lines.addAll(new SaleWords(context).headlines());
    lines.addAll(new SpaceWords(context).headlines());
    lines.add(new HoursWords(context).headline());
    lines.add(new OrderWords(context).headline());
    lines.add(new CashWords(context).headline());
    if (context.chances().isPresent() && !context.inputs().scenario().lots().isEmpty()) {
      lines.addAll(new ChanceWords(context).headlines());
    } else {
      context.bought().stream()
          .limit(LOTS_NAMED)
          .map(bought -> new BoughtWords(context, bought).headline())
          .forEach(lines::add);
    }
    long warnings =
        context.problems().stream().filter(each -> each.severity() == Severity.WARNING).count();
    if (warnings > 0) {
      lines.add(Phrases.counted(warnings, "warning", "warnings") + ": see problems.txt.");
    }
    return lines;
  }

  private static String plan(Context context) {
    Scenario scenario = context.inputs().scenario();
    Horizon horizon = scenario.horizon();
    Nursery nursery = scenario.nursery();
    double plants = scenario.lots().stream().mapToInt(Lot::quantity).sum();
    return "%s, %s: %s to %s, %s, %s."
        .formatted(
            nursery.settings().name(),
            scenario.plan().name(),
            Labels.month(horizon.firstMonth()),
            Phrases.month(horizon, horizon.months() - 1),
            Phrases.counted(scenario.lots().size(), "lot", "lots"),
            Phrases.plants(plants));
  }
}
