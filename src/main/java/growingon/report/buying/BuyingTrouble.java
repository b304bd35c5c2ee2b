package growingon.report.buying;

import growingon.buying.Answer;
import growingon.buying.Extra;
import growingon.buying.Lack;
import growingon.buying.Outcome;
import growingon.buying.PlanValue.Kind;
import growingon.buying.Shortage;
import growingon.report.text.Phrases;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** What does not suffice before anything is bought. */
final class BuyingTrouble {
  /** Less is not told of. */
  private static final double LEAST_SHARE_OF_ROOM = 0.01;

  private static final double LEAST_HOURS = 0.05;

  private final BuyingFigures figures;
  private final Answer answer;
  private final Phrases say;

  BuyingTrouble(BuyingFigures figures) {
    this.figures = figures;
    this.answer = figures.answer;
    this.say = figures.say;
  }

  /** In a sentence; empty where all suffices. */
  Optional<String> words() {
    Outcome given = answer.plan(Kind.AS_GIVEN).orElseThrow().line();
    List<Shortage> all = answer.limits().asThereIs(figures.settings.lowestCash()).shortages(given);
    List<String> words =
        Stream.of(noRoom(all), noHours(all), noCash(all, given)).flatMap(Optional::stream).toList();
    return words.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Phrases.sentence(String.join(", and ", words))
                + ", before anything is bought; what follows "
                + (Extra.isToBeHad(answer.inputs().scenario())
                    ? "counts what more costs."
                    : "adds a hundredth to it at most."));
  }

  private static Optional<Shortage> most(
      List<Shortage> all, Lack.Kind what, ToDoubleFunction<Shortage> measure, double least) {
    return all.stream()
        .filter(each -> each.what() == what && measure.applyAsDouble(each) > least)
        .reduce(
            (most, each) ->
                measure.applyAsDouble(each) > measure.applyAsDouble(most) ? each : most);
  }

  private Optional<String> noRoom(List<Shortage> all) {
    List<String> places = List.copyOf(answer.inputs().scenario().nursery().places().keySet());
    return most(all, Lack.Kind.ROOM, Shortage::share, LEAST_SHARE_OF_ROOM)
        .map(
            most ->
                "%s lacks %s in %s"
                    .formatted(
                        places.get(most.place()),
                        say.squareMetres(most.amount()),
                        say.month(figures.horizon, most.month())));
  }

  private Optional<String> noHours(List<Shortage> all) {
    return most(all, Lack.Kind.HOURS, Shortage::amount, LEAST_HOURS)
        .map(
            most ->
                "%s are short in %s"
                    .formatted(say.hours(most.amount()), say.month(figures.horizon, most.month())));
  }

  private Optional<String> noCash(List<Shortage> all, Outcome given) {
    return all.stream().anyMatch(each -> each.what() == Lack.Kind.CASH)
        ? Optional.of(
            "cash falls to %s in %s"
                .formatted(
                    figures.money(given.lowestCash()),
                    say.month(figures.horizon, given.lowestMonth())))
        : Optional.empty();
  }
}
