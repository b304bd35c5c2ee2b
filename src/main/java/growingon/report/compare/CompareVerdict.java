package growingon.report.compare;

import growingon.chance.Chances;
import growingon.money.CashFlow;
import growingon.nursery.Settings;
import growingon.nursery.time.Horizon;
import growingon.project.need.SpaceUse.PlaceMonth;
import growingon.report.compare.CompareReport.Side;
import growingon.report.text.Odds;
import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a reader of two plans wants first: which earns more, how surely, and whether it can be. */
final class CompareVerdict {
  private final Side first;
  private final Side second;
  private final Settings settings;

  CompareVerdict(Side first, Side second) {
    this.first = first;
    this.second = second;
    this.settings = second.inputs().scenario().nursery().settings();
  }

  /** Gain and chance, then the lowest cash, then the room that is missing. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    sentences.add(gain());
    sentences.add(cash());
    room().ifPresent(sentences::add);
    return sentences;
  }

  private String gain() {
    double gain = second.accounts().presentValue() - first.accounts().presentValue();
    boolean more = gain >= 0;
    String amount = second.say().money(Math.abs(gain));
    String line =
        "%s is worth %s %s than %s in today's money, on the plan's line"
            .formatted(
                Phrases.sentence(second.label()), amount, more ? "more" : "less", first.label());
    return line + inDraws().map(", and more "::concat).orElse("") + ".";
  }

  /** In how many draws the second is worth more than the first on the same luck. */
  Optional<String> inDraws() {
    if (first.chances().isEmpty() || second.chances().isEmpty()) {
      return Optional.empty();
    }
    Chances one = first.chances().get();
    Chances other = second.chances().get();
    int draws = Math.min(one.values().length, other.values().length);
    int more = 0;
    for (int draw = 0; draw < draws; draw++) {
      more += other.values()[draw] > one.values()[draw] ? 1 : 0;
    }
    return draws == 0 ? Optional.empty() : Optional.of(Odds.in((double) more / draws, draws));
  }

  private String cash() {
    OptionalDouble limit = settings.lowestCash();
    double lowest = lowest(second);
    String allowed =
        limit.isEmpty()
            ? ""
            : (lowest < limit.getAsDouble() ? ", below the %s allowed" : ", above the %s allowed")
                .formatted(second.say().money(limit.getAsDouble()));
    return "Its lowest cash is %s%s; that of %s is %s."
        .formatted(lowestTold(second), allowed, first.label(), lowestTold(first));
  }

  private static double lowest(Side side) {
    CashFlow cash = side.accounts().cash();
    return cash.balances()[cash.lowestMonth()];
  }

  private static String lowestTold(Side side) {
    Horizon horizon = side.accounts().projection().horizon();
    return "%s (%s)"
        .formatted(
            side.say().money(lowest(side)),
            side.say().month(horizon, side.accounts().cash().lowestMonth()));
  }

  private Optional<String> room() {
    return second.inputs().scenario().nursery().places().isEmpty()
        ? Optional.empty()
        : Optional.of("It %s; %s %s.".formatted(missing(second), first.label(), missing(first)));
  }

  private static String missing(Side side) {
    Horizon horizon = side.accounts().projection().horizon();
    return side.accounts().space().places().stream()
        .flatMap(place -> side.accounts().space().months(place).stream())
        .filter(month -> month.overflowM2() > Phrases.NEGLIGIBLE)
        .max(Comparator.comparingDouble(PlaceMonth::overflowM2))
        .map(
            worst ->
                "lacks up to %s of room (%s, %s)"
                    .formatted(
                        side.say().squareMetres(worst.overflowM2()),
                        worst.place().orElse("lots without a place"),
                        side.say().month(horizon, worst.month())))
        .orElse("lacks no room");
  }
}
