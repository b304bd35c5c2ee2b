package growingon.report.words;

import growingon.nursery.Nursery;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.time.Horizon;
import growingon.problem.Severity;
import growingon.report.figures.Context;
import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.List;

/** The dozen lines that a grower reads in the terminal. */
public final class Headlines {
  /** How those lines begin that can be spared first, the first to go in front. */
  private static final List<String> SPARED = List.of("Expected sales: ", "Sold of them: ");

  /** How a line begins that goes on with the one before. */
  private static final String GOES_ON = "  ";

  /** Most characters of a line. */
  public static final int WIDTH = 110;

  static final int LOTS_NAMED = 2;

  private Headlines() {}

  public static List<String> of(Context context) {
    Phrases say = context.say();
    List<String> lines = new ArrayList<>();
    lines.add(plan(context));
    lines.addAll(new SaleWords(context).headlines());
    lines.addAll(new SpaceWords(context).headlines());
    lines.add(new HoursWords(context).headline());
    PottedWords.headline(context).ifPresent(lines::add);
    new OrderWords(context).youngPlants().ifPresent(lines::add);
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
      lines.add(say.counted(warnings, "warning", "warnings") + ": see problems.txt.");
    }
    return lines;
  }

  /**
   * At most so many lines, for where there is less room: what lacks and what must be ordered before
   * what is sold, and no line without the one it goes on with.
   */
  public static List<String> fewer(List<String> lines, int most) {
    List<String> left = new ArrayList<>(lines);
    for (String spared : SPARED) {
      int at = 0;
      while (at < left.size() && !left.get(at).startsWith(spared)) {
        at++;
      }
      if (left.size() > most && at < left.size()) {
        left.remove(at);
        while (at < left.size() && left.get(at).startsWith(GOES_ON)) {
          left.remove(at);
        }
      }
    }
    int end = Math.max(0, Math.min(most, left.size()));
    while (end > 0 && end < left.size() && left.get(end).startsWith(GOES_ON)) {
      end--;
    }
    return List.copyOf(left.subList(0, end));
  }

  private static String plan(Context context) {
    Phrases say = context.say();
    Scenario scenario = context.inputs().scenario();
    Horizon horizon = scenario.horizon();
    Nursery nursery = scenario.nursery();
    double plants = scenario.lots().stream().mapToInt(Lot::quantity).sum();
    String name = nursery.settings().name();
    String plan = scenario.plan().name();
    return "%s: %s to %s, %s, %s."
        .formatted(
            name.equals(plan) ? name : name + ", " + plan,
            say.month(horizon.firstMonth()),
            say.month(horizon, horizon.months() - 1),
            say.counted(scenario.lots().size(), "lot", "lots"),
            say.plants(plants));
  }
}
