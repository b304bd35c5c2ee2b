package growingon.report.compare;

import growingon.chance.Chances;
import growingon.money.Accounts;
import growingon.money.bought.BoughtLot;
import growingon.nursery.Inputs;
import growingon.nursery.Settings;
import growingon.plan.Planned;
import growingon.problem.Problem;
import growingon.report.model.Chart;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.whole.WholePlan;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Two plans side by side: only what differs, largest first, with the reasons. */
public final class CompareReport {
  /** So many of each kind are named in the terminal. */
  private static final int NAMED = 3;

  private CompareReport() {}

  /**
   * A plan worked out.
   *
   * @param label what it is called here; the two sides have different ones
   * @param plan the plan; draws, where there are any, are on the same luck as the other's
   * @param problems everything found while reading
   * @param whole its whole plants
   */
  public record Side(String label, Planned plan, List<Problem> problems, WholePlan whole) {
    /** A plan with its whole plants as they come. */
    public Side(String label, Planned plan, List<Problem> problems) {
      this(label, plan, problems, WholePlan.of(plan.accounts().projection()));
    }

    public Side {
      problems = List.copyOf(problems);
    }

    /** What was read. */
    public Inputs inputs() {
      return plan.inputs();
    }

    /** Its accounts. */
    public Accounts accounts() {
      return plan.accounts();
    }

    /** What each lot bought is worth. */
    public List<BoughtLot> bought() {
      return plan.bought();
    }

    /** How sure it is, where draws were made. */
    public Optional<Chances> chances() {
      return plan.chances();
    }

    /** Plan currency. */
    public String currency() {
      return settings().currency();
    }

    /** Whether amounts of both plans can be set against each other. */
    public boolean hasCurrencyOf(Side other) {
      return currency().equals(other.currency());
    }

    /** How amounts and months are said. */
    public Phrases say() {
      return Phrases.of(settings());
    }

    private Settings settings() {
      return inputs().scenario().nursery().settings();
    }
  }

  /** What the report of two plans is called. */
  public static String title(String first, String second) {
    return first + " against " + second;
  }

  /** That amounts of the plans are not set against each other. */
  public static String unlikeCurrencies(Side first, Side second) {
    return "Amounts are in %s in the first plan and in %s in the second; their differences say nothing."
        .formatted(first.currency(), second.currency());
  }

  /** Unit of amounts of both plans. */
  public static String currency(Side first, Side second) {
    return first.hasCurrencyOf(second) ? first.currency() : "each plan's own currency";
  }

  /** What differs, a table a topic. */
  public static List<Table> tables(Side first, Side second) {
    return new CompareFigures(first, second)
        .topics().stream().map(topic -> CompareTables.of(topic, first, second)).toList();
  }

  /** Charts of plants and space, which tell nothing of money. */
  public static List<Chart> chartsWithoutMoney(Side first, Side second) {
    return CompareCharts.withoutMoney(first, second);
  }

  /** In how many draws the second is worth more than the first on the same luck. */
  public static Optional<String> moreOften(Side first, Side second) {
    return new CompareVerdict(first, second).inDraws();
  }

  /** The report; amounts of plans in different currencies are not set against each other. */
  public static Report of(Side first, Side second) {
    List<Difference> reasons = new CompareReasons(first, second).list();
    CompareFigures figures = new CompareFigures(first, second);
    List<Table> tables = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    for (CompareFigures.Topic topic : figures.topics()) {
      tables.add(CompareTables.of(topic, first, second));
      lines.addAll(CompareTables.lines(topic, NAMED, second.say()));
    }
    Table why = CompareTables.reasons(reasons, first, second);
    boolean alike = reasons.isEmpty() && lines.isEmpty();
    List<String> sentences = new ArrayList<>();
    if (!alike && first.hasCurrencyOf(second)) {
      sentences.addAll(new CompareVerdict(first, second).sentences());
    }
    sentences.addAll(CompareTables.sentences(alike, first, second, reasons));
    sentences.addAll(CompareTables.reasonLines(reasons, 3 * NAMED, second.say()));
    List<String> headlines = new ArrayList<>(sentences);
    headlines.addAll(lines);
    List<Chart> charts = CompareCharts.of(first, second);
    return Report.of(
            title(first.label(), second.label()),
            first.inputs().scenario().nursery().settings().name(),
            first.say(),
            first.inputs().scenario().plan().firstMonth().toString())
        .sheets(sheets(sentences, tables, why, charts))
        .charts(charts)
        .headlines(headlines)
        .problems(problems(first, second))
        .build();
  }

  private static List<Sheet> sheets(
      List<String> sentences, List<Table> tables, Table why, List<Chart> charts) {
    List<Sheet> sheets = new ArrayList<>();
    List<String> names = charts.stream().map(Chart::name).toList();
    sheets.add(new Sheet("Summary", sentences, List.of(tables.get(0)), names, true));
    sheets.add(Sheet.of("Why", why));
    for (Table table : tables.subList(1, tables.size())) {
      sheets.add(Sheet.of(table.title(), table));
    }
    return sheets;
  }

  private static List<Problem> problems(Side first, Side second) {
    Set<Problem> problems = new LinkedHashSet<>(first.problems());
    problems.addAll(first.accounts().projection().remarks());
    problems.addAll(second.problems());
    problems.addAll(second.accounts().projection().remarks());
    return List.copyOf(problems);
  }
}
