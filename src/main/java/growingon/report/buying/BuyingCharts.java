package growingon.report.buying;

import growingon.buying.answer.Answer;
import growingon.buying.answer.LimitWorth;
import growingon.buying.answer.OfferAnswer;
import growingon.buying.answer.OfferAnswer.Tried;
import growingon.buying.answer.PlanValue;
import growingon.buying.answer.PlanValue.Kind;
import growingon.buying.engine.Outcome;
import growingon.report.chart.Charts;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Mark;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.report.model.Colours;
import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** The charts of an answer. */
final class BuyingCharts {
  static final String PLANS = "buying-plans";
  static final String LIMITS = "buying-limits";
  static final String ROOM = "buying-room";
  private static final String NUMBERS = "buying-numbers";
  private static final int OFFERS = 6;
  private static final int LIMITS_DRAWN = 5;

  private final BuyingFigures figures;
  private final Answer answer;
  private final Phrases say;

  BuyingCharts(BuyingFigures figures) {
    this.say = figures.say;
    this.figures = figures;
    this.answer = figures.answer;
  }

  List<Chart> all() {
    List<Chart> charts = new ArrayList<>();
    charts.add(plans());
    if (!answer.limitsWorth().isEmpty()) {
      charts.add(limits());
    }
    room(charts);
    for (int i = 0; i < Math.min(OFFERS, answer.offers().size()); i++) {
      charts.add(numbers(answer.offers().get(i), numbersName(i)));
    }
    return charts;
  }

  private static String numbersName(int index) {
    return index == 0 ? NUMBERS : NUMBERS + "-" + (index + 1);
  }

  /** Names of the charts of numbers. */
  List<String> numbersNames() {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < Math.min(OFFERS, answer.offers().size()); i++) {
      names.add(numbersName(i));
    }
    return names;
  }

  private Chart plans() {
    List<PlanValue> plans =
        answer.plans().stream().filter(plan -> plan.kind() != Kind.AS_GIVEN).toList();
    List<Series> series = new ArrayList<>();
    series.add(of("gain, middle", Role.VALUE, plans, plan -> plan.gain().p50()));
    if (answer.draws() > 0) {
      series.add(of("P10", Role.LOW, plans, plan -> plan.gain().p10()));
      series.add(of("P90", Role.HIGH, plans, plan -> plan.gain().p90()));
    }
    return new Chart(
        PLANS,
        "What each plan gains over the plan as given",
        answer.draws() == 0
            ? "On the plan's line, in today's money."
            : "In today's money; eight draws of ten lie within the stroke.",
        ChartKind.BARS,
        "gain in " + figures.currency,
        plans.stream().map(plan -> plan.kind().toString()).toList(),
        series);
  }

  private static Series of(
      String name, Role role, List<PlanValue> plans, ToDoubleFunction<PlanValue> value) {
    List<Double> values = plans.stream().map(value::applyAsDouble).toList();
    return new Series(name, role, values, "", Colours.CASH);
  }

  private Chart limits() {
    List<LimitWorth> limits = answer.limitsWorth().stream().limit(LIMITS_DRAWN).toList();
    List<Series> series = new ArrayList<>();
    int[] colours = {Colours.SPACE, Colours.CASH, Colours.EDGE};
    for (int step = 0; step < limits.get(0).steps().size(); step++) {
      int at = step;
      List<Double> worth = limits.stream().map(limit -> limit.steps().get(at).worth()).toList();
      String name = say.percent(limits.get(0).steps().get(step).share()) + " more";
      series.add(new Series(name, Role.VALUE, worth, "", colours[step % colours.length]));
    }
    return new Chart(
        LIMITS,
        "What more of each limit would be worth",
        "In today's money, with what one would then do. The charge of a larger place is taken off,"
            + " what else it costs is not.",
        ChartKind.BARS,
        figures.currency,
        limits.stream().map(BuyingCharts::shortName).toList(),
        series);
  }

  /** Short enough to stand under a bar. */
  private static String shortName(LimitWorth limit) {
    return switch (limit.what()) {
      case ROOM -> limit.name();
      case DEMAND -> limit.name().replaceFirst(" \\(.*", "") + " wanted";
      case HOURS -> "hours";
      case CASH -> "cash";
    };
  }

  /** Room as given and as recommended in the place where least is left as recommended. */
  private void room(List<Chart> charts) {
    Outcome line = answer.recommended().line();
    Outcome given = answer.plan(Kind.AS_GIVEN).orElseThrow().line();
    List<String> places = List.copyOf(answer.inputs().scenario().nursery().places().keySet());
    int tightest = -1;
    double most = 0;
    for (int place = 0; place < places.size(); place++) {
      for (int month = 0; month < line.hours().length; month++) {
        double share =
            line.space()[place][month] / Math.max(0.1, answer.limits().capacity()[place][month]);
        if (share > most) {
          most = share;
          tightest = place;
        }
      }
    }
    if (tightest < 0) {
      return;
    }
    String place = places.get(tightest);
    charts.add(
        new Chart(
            ROOM,
            "Room needed in " + place,
            "As recommended against as given and what there is.",
            ChartKind.LINES,
            "m²",
            Charts.months(figures.horizon),
            List.of(
                line("as given", Role.VALUE, given.space()[tightest], Colours.REST),
                line("as recommended", Role.VALUE, line.space()[tightest], Colours.CASH),
                line("there is", Role.LIMIT, answer.limits().capacity()[tightest], Colours.KEPT))));
  }

  private static Series line(String name, Role role, double[] values, int colour) {
    return new Series(name, role, Arrays.stream(values).boxed().toList(), "", colour);
  }

  private Chart numbers(OfferAnswer offer, String name) {
    List<Tried> tried = offer.numbers();
    List<Series> series = new ArrayList<>();
    add(
        series,
        "does as well as the best",
        Colours.BETTER,
        tried,
        each -> each.fits() && each.isGood());
    add(series, "fits", Colours.SPACE, tried, each -> each.fits() && !each.isGood());
    add(series, "does not fit", Colours.REST, tried, each -> !each.fits());
    if (answer.draws() > 0) {
      series.add(edge("P10", Role.LOW, tried, each -> each.gain().p10()));
      series.add(edge("P90", Role.HIGH, tried, each -> each.gain().p90()));
    }
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < tried.size(); i++) {
      int number = tried.get(i).number();
      double gain = tried.get(i).gain().mean();
      if (number == offer.advised()) {
        marks.add(Mark.point("buy " + number, i, gain));
      } else if (number == offer.planned() && number > 0) {
        marks.add(Mark.point("as planned", i, gain));
      }
    }
    return new Chart(
        name,
        "What so many " + offer.take().name() + " would gain by the plan's end",
        "Beside all else that is recommended, in today's money"
            + (answer.draws() == 0 ? "." : "; eight draws of ten lie within the stroke.")
            + ofAll(tried),
        ChartKind.STACKED_BARS,
        figures.currency,
        tried.stream().map(each -> Integer.toString(each.number())).toList(),
        series,
        marks);
  }

  /** What the only colour means, as one colour alone has no key. */
  private static String ofAll(List<Tried> tried) {
    if (tried.stream().noneMatch(Tried::fits)) {
      return " None of these numbers fits.";
    }
    return tried.stream().allMatch(each -> each.fits() && each.isGood())
        ? " All of these numbers do as well."
        : "";
  }

  private static void add(
      List<Series> series, String name, int colour, List<Tried> tried, Predicate<Tried> which) {
    if (tried.stream().anyMatch(which)) {
      List<Double> values =
          tried.stream()
              .map(each -> which.test(each) ? each.gain().mean() : (Double) Double.NaN)
              .toList();
      series.add(new Series(name, Role.VALUE, values, "", colour));
    }
  }

  private static Series edge(
      String name, Role role, List<Tried> tried, ToDoubleFunction<Tried> value) {
    return new Series(
        name, role, tried.stream().map(value::applyAsDouble).toList(), "", Colours.EDGE);
  }
}
