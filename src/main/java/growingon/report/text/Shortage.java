package growingon.report.text;

import growingon.nursery.time.Horizon;
import java.util.List;
import java.util.stream.IntStream;

/** Says when something is short or too much. */
record Shortage(Phrases say, List<Spell> spells, Horizon horizon) {

  /**
   * {@code from Nov 2027 to Mar 2028}, {@code in Mar 2028 and Mar 2029}, or {@code in 15 months
   * (Nov–Mar) from Nov 2026 to Mar 2031}.
   */
  String when() {
    Spell first = spells.get(0);
    Spell last = spells.get(spells.size() - 1);
    String span = say.span(horizon.month(first.first()), horizon.month(last.last()));
    if (spells.size() == 1) {
      return span;
    }
    if (Spell.months(spells) == 2) {
      return "in %s and %s"
          .formatted(say.month(horizon, first.first()), say.month(horizon, last.last()));
    }
    String calendar = Phrases.calendarSpan(calendarMonths());
    String some = "in " + Spell.months(spells) + " months ";
    return some + ("all year".equals(calendar) ? "" : "(" + calendar + ") ") + span;
  }

  /**
   * {@code by 14.5 m²} where one month is short, else {@code most in Jan 2028, by 14.5 m²}.
   *
   * @param amount of the worst month, with its unit
   */
  String most(String amount) {
    return Spell.months(spells) == 1
        ? "by " + amount
        : "most in " + say.month(horizon, Spell.worst(spells).worst()) + ", by " + amount;
  }

  /** The same for a short line: {@code by 14.5 m²}, {@code by up to 14.5 m² (Jan 2028)}. */
  String upTo(String amount) {
    return Spell.months(spells) == 1
        ? "by " + amount
        : "by up to %s (%s)".formatted(amount, say.month(horizon, Spell.worst(spells).worst()));
  }

  private List<Integer> calendarMonths() {
    return spells.stream()
        .flatMapToInt(spell -> IntStream.rangeClosed(spell.first(), spell.last()))
        .map(month -> horizon.month(month).getMonthValue())
        .boxed()
        .toList();
  }
}
