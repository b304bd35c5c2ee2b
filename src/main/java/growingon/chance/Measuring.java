package growingon.chance;

import growingon.chance.WorthMeasuring.Row;
import growingon.chance.WorthMeasuring.Told;
import growingon.chance.luck.DrawnLuck;
import growingon.chance.luck.Keyed;
import growingon.chance.luck.NameNumbers;
import growingon.chance.luck.NotKnown;
import growingon.chance.luck.Spreads;
import growingon.money.GradeNumbers;
import growingon.money.Tally;
import growingon.nursery.Scenario;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.project.GrowthPlace;
import growingon.project.Programme;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntConsumer;

/**
 * Finds what is worth measuring. Cash at the end, regressed on what is not known, ranks what grows
 * where; as growth works in steps that flatters, so the first, and all together, are drawn afresh.
 */
final class Measuring {
  /** Draws that are made once more. */
  static final int AFRESH = 100;

  /** Below so many standard errors a slope is nothing. */
  private static final double ERRORS = 2;

  private final Scenario scenario;
  private final double[] cash;
  private final int threads;
  private final NameNumbers names = new NameNumbers();
  private final List<Candidate> candidates;

  /** A species in a condition whose growth is not known. */
  private record Candidate(GrowthPlace where, double sure, double sureAfter) {
    /** Share of the variance of what is not known that measuring takes. */
    double learnt() {
      double plants = Sure.plants(sureAfter);
      return 1 - Sure.plants(sure) / plants;
    }
  }

  /**
   * For a plan that was drawn.
   *
   * @param cash at the end, by draw
   */
  Measuring(Scenario scenario, double[] cash, int threads) {
    this.scenario = scenario;
    this.cash = cash;
    this.threads = threads;
    this.candidates =
        GrowthPlace.of(Programme.of(scenario)).stream()
            .filter(where -> where.mmASeason() > 0 && where.plants() > 0)
            .map(this::candidate)
            .filter(each -> each.sure < 1)
            .toList();
  }

  private Candidate candidate(GrowthPlace where) {
    Species species = scenario.nursery().species().get(where.species());
    double sure = species.sure().growthIn(where.condition());
    double variance =
        Measured.variance(
            species, scenario.nursery().settings(), where.trunkMm(), where.mmASeason());
    return new Candidate(where, sure, Measured.sureAfter(sure, Measured.plants(variance)));
  }

  WorthMeasuring find() {
    if (candidates.isEmpty()) {
      return new WorthMeasuring(List.of(), OptionalDouble.empty());
    }
    List<Row> rows = regressed();
    Row first = rows.get(0);
    if (first.told() == Told.ROUGH) {
      Scenario measured =
          scenario.withSure(each -> measured(each, List.of(candidates.get(indexOf(first)))));
      rows.set(0, first.with().narrowing(narrowing(measured)).told(Told.DRAWN).build());
    }
    Scenario all = scenario.withSure(each -> measured(each, candidates));
    return new WorthMeasuring(rows, OptionalDouble.of(narrowing(all)));
  }

  private int indexOf(Row row) {
    for (int i = 0; i < candidates.size(); i++) {
      GrowthPlace where = candidates.get(i).where;
      if (where.species().equals(row.species()) && where.condition().equals(row.condition())) {
        return i;
      }
    }
    throw new IllegalArgumentException(row.toString());
  }

  private static Species measured(Species species, List<Candidate> which) {
    Sure sure = species.sure();
    for (Candidate each : which) {
      if (each.where.species().equals(species.name())) {
        sure = sure.withGrowth(each.where.condition(), each.sureAfter);
      }
    }
    return species.withSure(sure);
  }

  /** Rows in the order of what they narrow by regression. */
  private List<Row> regressed() {
    List<Row> rows = new ArrayList<>();
    if (cash.length < candidates.size() + 2 + AFRESH / 2) {
      candidates.forEach(each -> rows.add(row(each, 0, Told.TOO_SMALL)));
      return rows;
    }
    Regression regression = new Regression(scores(), cash);
    double[] b = regression.slopes();
    double before = spread(b);
    double variance = Math.pow(deviation(cash), 2);
    for (int i = 0; i < b.length; i++) {
      double[] after = b.clone();
      after[i] *= Math.sqrt(1 - candidates.get(i).learnt());
      double left = Math.max(0, 1 - (before - spread(after)) / variance);
      boolean small = Math.abs(b[i]) < ERRORS * regression.errors()[i] || left >= 1;
      Told told = small ? Told.TOO_SMALL : Told.ROUGH;
      rows.add(row(candidates.get(i), small ? 0 : 1 - Math.sqrt(left), told));
    }
    rows.sort(Comparator.comparingDouble(Row::narrowing).reversed());
    return rows;
  }

  private static Row row(Candidate of, double narrowing, Told told) {
    return new Row(
        of.where.species(),
        of.where.condition(),
        of.where.plants(),
        of.where.mmASeason(),
        of.sure,
        of.sureAfter,
        narrowing,
        told);
  }

  private double[][] scores() {
    double[][] scores = new double[cash.length][candidates.size()];
    for (int draw = 0; draw < scores.length; draw++) {
      Keyed keyed = new Keyed(scenario.plan().seed(), draw);
      for (int i = 0; i < candidates.size(); i++) {
        GrowthPlace where = candidates.get(i).where;
        scores[draw][i] = NotKnown.score(keyed, names, where.species(), where.condition());
      }
    }
    return scores;
  }

  /** b'Rb with the law's correlations: 1, ¾ within a species, ½ between species. */
  private double spread(double[] b) {
    double sum = 0;
    for (int i = 0; i < b.length; i++) {
      for (int j = 0; j < b.length; j++) {
        sum += b[i] * b[j] * correlation(i, j);
      }
    }
    return sum;
  }

  private double correlation(int i, int j) {
    boolean same = candidates.get(i).where.species().equals(candidates.get(j).where.species());
    return i == j ? 1 : same ? 0.75 : 0.5;
  }

  /** Share of the standard deviation of the first draws that is gone in those made once more. */
  private double narrowing(Scenario measured) {
    int draws = Math.min(AFRESH, cash.length);
    double[] again = new double[draws];
    Programme programme = Programme.of(measured);
    GradeNumbers grades = new GradeNumbers(measured.nursery());
    Spreads spreads = new Spreads();
    Workers.draw(
        draws,
        threads,
        () -> {
          Tally tally = new Tally(programme, grades);
          return (IntConsumer)
              draw -> {
                Keyed keyed = new Keyed(measured.plan().seed(), draw);
                tally.run(new DrawnLuck(keyed, measured.nursery().settings(), spreads, names));
                again[draw] = Arrays.stream(tally.flows()).sum();
              };
        },
        done -> {});
    double before = deviation(Arrays.copyOf(cash, draws));
    return before == 0 ? 0 : 1 - deviation(again) / before;
  }

  private static double deviation(double[] sample) {
    double mean = Arrays.stream(sample).average().orElse(0);
    double squares = Arrays.stream(sample).map(each -> (each - mean) * (each - mean)).sum();
    return Math.sqrt(squares / (sample.length - 1));
  }
}
