package growingon.load.table.market;

import growingon.load.cell.Cell;
import growingon.load.cell.Range;
import growingon.load.row.As;
import growingon.load.row.Groups;
import growingon.load.row.Heading;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.Defined;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Ladder;
import growingon.problem.advice.DefinitionAdvice;
import growingon.problem.advice.ValueAdvice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Grade ladders, one grade a row.
 *
 * <pre>
 * ladder                  name of the ladder
 * grade                   name of the grade, unique on its ladder
 * rank                    whole number, lowest grade lowest, unique on its ladder
 * least trunk mm          must not fall up the ladder
 * least training months   whole months since training started [0]
 * wait months             a plant thick enough that lacks at most so much training waits [12]
 * </pre>
 */
public final class GradesTable {
  private static final Range LEAST = Range.FROM_ZERO.usually(0, Range.TRUNK.usualMost());

  public static final Heading<String> LADDER =
      Heading.text("ladder").means("Name of the ladder; species name it");
  private static final Heading<String> GRADE =
      Heading.named("grade").means("Name of a saleable class");
  private static final Heading<Integer> RANK =
      Heading.number("rank", As.whole(Range.ANY)).means("Its place on the ladder, lowest 1");
  private static final Heading<Double> LEAST_TRUNK =
      Heading.number("least trunk mm", As.number(LEAST))
          .means("Trunk from which a plant is of this grade");
  private static final Heading<Integer> TRAINING =
      Heading.number("least training months", As.whole(Range.of(0, 1200)))
          .usual(0)
          .means("Months of training it must have");
  private static final Heading<Integer> WAIT =
      Heading.number("wait months", As.whole(Range.of(0, 1200)))
          .expert()
          .usual(12)
          .means("A plant thick enough that lacks so much training waits for this grade");
  public static final TableFormat FORMAT =
      TableFormat.of(
              "grades",
              LADDER.needed(),
              GRADE.needed(),
              RANK.needed(),
              LEAST_TRUNK.needed(),
              TRAINING,
              WAIT)
          .about(LADDER, GRADE);

  private GradesTable() {}

  public static Defined<LadderRead> read(Optional<Table> table) {
    Defined<LadderRead> ladders = Defined.of(new Names("ladder", FORMAT.name()), table);
    table.ifPresent(
        found -> {
          found.rows().forEach(row -> row.needs(LADDER, GRADE, RANK, LEAST_TRUNK));
          Groups.by(LADDER, found.rows()).forEach((name, rows) -> add(ladders, name, rows));
        });
    return ladders;
  }

  private static void add(Defined<LadderRead> ladders, String name, List<Row> rows) {
    ladders.names().add(name);
    Names grades = new Names("grade of the ladder " + name, FORMAT.name());
    Set<Integer> ranks = new HashSet<>();
    List<Ranked> ranked = new ArrayList<>();
    for (Row row : rows) {
      grade(row, grades, ranks).ifPresent(grade -> ranked.add(new Ranked(grade, row)));
    }
    ranked.sort(Comparator.comparingInt(each -> each.grade.rank()));
    checkTrunks(ranked);
    boolean whole = rows.stream().allMatch(Row::isAccepted);
    List<Grade> sorted = ranked.stream().map(Ranked::grade).toList();
    ladders
        .values()
        .put(
            name,
            new LadderRead(
                grades, whole ? Optional.of(new Ladder(name, sorted)) : Optional.empty()));
  }

  private record Ranked(Grade grade, Row row) {}

  private static Optional<Grade> grade(Row row, Names grades, Set<Integer> ranks) {
    String name = row.get(GRADE);
    int rank = row.get(RANK);
    double leastTrunk = row.get(LEAST_TRUNK);
    int training = row.get(TRAINING);
    int wait = row.get(WAIT);
    if (!name.isEmpty() && !grades.add(name)) {
      row.fail(GRADE, where -> ValueAdvice.defined(where, name, name));
    }
    if (!row.isFailed() && !ranks.add(rank)) {
      row.fail(RANK, where -> DefinitionAdvice.rankTwice(where, rank));
    }
    return row.accept(() -> new Grade(name, rank, leastTrunk, training, wait));
  }

  private static void checkTrunks(List<Ranked> ranked) {
    for (int i = 1; i < ranked.size(); i++) {
      Ranked lower = ranked.get(i - 1);
      Ranked upper = ranked.get(i);
      if (upper.grade.leastTrunkMm() < lower.grade.leastTrunkMm()) {
        upper.row.fail(
            LEAST_TRUNK,
            where ->
                DefinitionAdvice.trunkFallsUpLadder(
                    where,
                    Cell.Number.plain(upper.grade.leastTrunkMm()),
                    lower.grade.name(),
                    lower.grade.leastTrunkMm()));
      }
    }
  }

  /**
   * A ladder as read.
   *
   * @param grades names of its grades, also of faulty rows
   * @param ladder the ladder, if all its rows are fine
   */
  public record LadderRead(Names grades, Optional<Ladder> ladder) {}

  /** The ladders that are fine. */
  public static Map<String, Ladder> fine(Defined<LadderRead> read) {
    Map<String, Ladder> ladders = new LinkedHashMap<>();
    read.values().forEach((name, each) -> each.ladder().ifPresent(l -> ladders.put(name, l)));
    return ladders;
  }
}
