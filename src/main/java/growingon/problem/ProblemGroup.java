package growingon.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Problems of one kind: the same fault of one column of one table, told once with the names and
 * rows that it is about.
 *
 * @param problems at least one
 */
public record ProblemGroup(List<Problem> problems) {
  private static final int NAMED = 5;
  private static final List<String> NAMES =
      List.of("pot", "mix", "component", "material", "place", "grade", "species", "route");
  private static final List<String> LOTS = List.of("stock", "offers", "daybook");

  public ProblemGroup {
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("a group has a problem");
    }
    problems = List.copyOf(problems);
  }

  /** Groups of problems: what must be done first is first, then those with most rows. */
  public static List<ProblemGroup> of(List<Problem> problems) {
    Map<String, List<Problem>> byKind = new LinkedHashMap<>();
    for (Problem problem : problems) {
      byKind.computeIfAbsent(kind(problem), each -> new ArrayList<>()).add(problem);
    }
    return byKind.values().stream()
        .map(ProblemGroup::new)
        .sorted(
            Comparator.comparing((ProblemGroup group) -> group.first().severity())
                .thenComparing(ProblemGroup::order)
                .thenComparing(group -> -group.problems.size()))
        .toList();
  }

  private static String kind(Problem problem) {
    Where where = problem.where();
    return String.join(
        "\u0000",
        problem.severity().toString(),
        problem.reason().toString(),
        where.file(),
        where.sheet(),
        where.column(),
        problem.sentence().marked());
  }

  private Problem first() {
    return problems.get(0);
  }

  /** Files and sheets, then headings, then unknown names, then values, then lots. */
  private int order() {
    Problem problem = first();
    if (problem.reason() == Reason.UNREADABLE || problem.where().row() == 0) {
      return 0;
    }
    if (problem.reason() == Reason.MISSING && problem.where().column().isEmpty()) {
      return 1;
    }
    if (problem.reason() == Reason.UNKNOWN_NAME) {
      int name = NAMES.indexOf(problem.where().column());
      return name < 0 ? 2 : 3 + name;
    }
    return LOTS.contains(table(problem.where())) ? 21 : 20;
  }

  private static String table(Where where) {
    String name = where.sheet().isEmpty() ? where.file() : where.sheet();
    return name.replaceFirst("\\.[^.]*$", "");
  }

  /** One sentence: where, what is wrong, the names and rows, what to do. */
  public String line() {
    Problem first = first();
    if (problems.size() == 1) {
      return first.toString();
    }
    Where where = new Where(first.where().file(), first.where().sheet(), 0, first.where().column());
    String about = about();
    String line =
        "%s times %s: %s%s%s"
            .formatted(
                MarkedText.number(problems.size()),
                where,
                first.sentence().marked(),
                about.isEmpty() ? "" : " (" + about + ")",
                first.remedy().isEmpty() ? "" : "; " + first.remedy().marked());
    return new MarkedText(line).toString();
  }

  /**
   * Problems of which those alike are told once, each row then being a notice behind it that asks
   * nothing more.
   */
  public static List<Problem> toldOnce(List<Problem> problems) {
    List<Problem> told = new ArrayList<>();
    for (ProblemGroup group : of(problems)) {
      if (group.problems.size() == 1) {
        told.add(group.first());
      } else {
        told.add(group.together());
        group.problems.forEach(each -> told.add(alone(each)));
      }
    }
    return told;
  }

  private Problem together() {
    Problem first = first();
    Where of = first.where();
    return new Problem(
        first.severity(),
        first.reason(),
        first.sentence(),
        new Where(of.file(), of.sheet(), 0, of.column()),
        new MarkedText("%s times: %s".formatted(MarkedText.number(problems.size()), about())),
        first.remedy());
  }

  private static Problem alone(Problem of) {
    return new Problem(
        Severity.NOTICE, of.reason(), of.sentence(), of.where(), of.found(), MarkedText.NONE);
  }

  /** Names and rows that it is about. */
  private String about() {
    return Stream.of(some(names(), ", "), some(rows(), ", "))
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining("; "));
  }

  private List<String> names() {
    Map<String, Long> times =
        problems.stream()
            .map(problem -> problem.found().marked())
            .filter(found -> !found.isEmpty())
            .collect(
                Collectors.groupingBy(found -> found, LinkedHashMap::new, Collectors.counting()));
    return times.entrySet().stream()
        .map(
            each ->
                each.getValue() > 1
                    ? each.getKey() + " " + MarkedText.number(each.getValue()) + " times"
                    : each.getKey())
        .toList();
  }

  private List<String> rows() {
    List<String> rows =
        new ArrayList<>(
            problems.stream()
                .map(problem -> problem.where().row())
                .filter(row -> row > 0)
                .distinct()
                .map(row -> Integer.toString(row))
                .toList());
    if (!rows.isEmpty()) {
      rows.set(0, (rows.size() == 1 ? "row " : "rows ") + rows.get(0));
    }
    return rows;
  }

  private static String some(List<String> all, String between) {
    if (all.size() <= NAMED + 1) {
      return String.join(between, all);
    }
    return String.join(between, all.subList(0, NAMED))
        + " and "
        + MarkedText.number(all.size() - NAMED)
        + " more";
  }
}
