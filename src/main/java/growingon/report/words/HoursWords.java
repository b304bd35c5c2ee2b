package growingon.report.words;

import growingon.nursery.time.Horizon;
import growingon.project.need.HoursUse;
import growingon.report.figures.Context;
import growingon.report.text.Phrases;
import growingon.report.text.Spell;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** What is said about hours. */
public final class HoursWords {
  /** The work that has no job of its own among the largest. */
  public static final String OTHER_WORK = "other work";

  private final HoursUse hours;
  private final Horizon horizon;
  private final List<Spell> spells;
  private final Phrases say;

  public HoursWords(Context context) {
    this.say = context.say();
    this.hours = context.accounts().hours();
    this.horizon = context.accounts().projection().horizon();
    this.spells = Spell.of(horizon.months(), hours::shortBy);
  }

  /** When hours are short, and by how many. */
  public String summary() {
    if (hours.byJob().isEmpty()) {
      return "The plan needs no hours: neither its routes nor its care table state minutes.";
    }
    if (hours.available(0).isEmpty()) {
      return "The nursery does not say how many hours it has; the plan needs most in %s, %s."
          .formatted(say.month(horizon, busiest()), say.hours(hours.needed(busiest())));
    }
    if (spells.isEmpty()) {
      return "The hours suffice in every month; the busiest is %s, with %s of %s."
          .formatted(
              say.month(horizon, busiest()),
              say.hours(hours.needed(busiest())),
              say.hours(hours.available(busiest()).orElseThrow()));
    }
    return told();
  }

  private String told() {
    Spell worst = Spell.worst(spells);
    return "Hours are short %s, %s (%s needed, %s available); %s takes most of them."
        .formatted(
            say.when(spells, horizon),
            say.most(spells, horizon, say.hours(worst.most())),
            say.whole(hours.needed(worst.worst())),
            say.whole(hours.available(worst.worst()).orElseThrow()),
            largestJob(worst.worst()));
  }

  private String largestJob(int month) {
    return hours.byJob().entrySet().stream()
        .max(Comparator.comparingDouble(job -> job.getValue()[month]))
        .map(Map.Entry::getKey)
        .orElseThrow();
  }

  /** The month with most hours needed, the first of equals. */
  private int busiest() {
    return IntStream.range(0, horizon.months())
        .boxed()
        .reduce((a, b) -> hours.needed(b) > hours.needed(a) ? b : a)
        .orElseThrow();
  }

  /** The line for the terminal. */
  String headline() {
    if (hours.byJob().isEmpty()) {
      return "Hours: none needed.";
    }
    if (hours.available(0).isEmpty()) {
      return "Hours: %s needed in the busiest month, %s; the nursery does not say how many it has."
          .formatted(say.whole(hours.needed(busiest())), say.month(horizon, busiest()));
    }
    if (spells.isEmpty()) {
      return "Hours: enough in every month.";
    }
    String amount = say.hours(Spell.worst(spells).most());
    return "Hours short: %s, %s."
        .formatted(say.when(spells, horizon), say.upTo(spells, horizon, amount));
  }
}
