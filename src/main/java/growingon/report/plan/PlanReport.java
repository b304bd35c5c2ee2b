package growingon.report.plan;

import growingon.money.Accounts;
import growingon.nursery.Inputs;
import growingon.plan.Planned;
import growingon.problem.Problem;
import growingon.report.chart.Charts;
import growingon.report.figures.Context;
import growingon.report.model.Chart;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.SheetLimit;
import growingon.report.plan.bought.LotsBoughtSheet;
import growingon.report.plan.bought.SwingsSheet;
import growingon.report.plan.cash.CashSheet;
import growingon.report.plan.cash.LotAccountsSheet;
import growingon.report.plan.sale.SaleableSheet;
import growingon.report.plan.sale.SalesSheet;
import growingon.report.plan.sale.SellOrHoldSheet;
import growingon.report.plan.space.BenchSpaceSheet;
import growingon.report.plan.space.RoomSlips;
import growingon.report.plan.space.WeightsSheet;
import growingon.report.plan.stock.CountSheet;
import growingon.report.plan.stock.LabelsSheet;
import growingon.report.plan.stock.LotsSheet;
import growingon.report.plan.stock.StockSheet;
import growingon.report.plan.stock.StockValueSheet;
import growingon.report.plan.supply.MaterialsSheet;
import growingon.report.plan.supply.OrderSheet;
import growingon.report.plan.supply.PotsSheet;
import growingon.report.plan.supply.SubstrateSheet;
import growingon.report.plan.supply.SupplierOrders;
import growingon.report.plan.work.HoursSheet;
import growingon.report.plan.work.JobsSheet;
import growingon.report.plan.work.WallSheet;
import growingon.report.text.Phrases;
import growingon.report.words.Headlines;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts the report of a plan together: its sheets in order, charts, long tables and headlines. */
public final class PlanReport {
  /** Which charts stand on which sheet. */
  private static final Map<String, List<String>> CHARTS =
      Map.of(
          "Bench space", List.of(Charts.SPACE),
          "Cash", List.of(Charts.CASH),
          "Stock by season", List.of(Charts.STOCK),
          "Sales", List.of(Charts.SALES),
          "Hours", List.of(Charts.HOURS),
          "Pots", List.of(Charts.POTS),
          "Substrate", List.of(Charts.SUBSTRATE));

  private PlanReport() {}

  /**
   * Describes a plan.
   *
   * @param plan the plan worked out
   * @param problems everything found while reading; what the projection remarked is added
   */
  public static Report of(Planned plan, List<Problem> problems) {
    Inputs inputs = plan.inputs();
    Accounts accounts = plan.accounts();
    Phrases say = Phrases.of(inputs.scenario());
    Set<Problem> all = new LinkedHashSet<>(problems);
    all.addAll(accounts.projection().remarks());
    all.addAll(RoomSlips.of(accounts.space(), accounts.projection().horizon(), say));
    Context context = new Context(plan, List.copyOf(all));
    List<Chart> charts = Charts.of(context);
    SheetLimit limited = SheetLimit.of(sheets(context), SheetLimit.MOST_ROWS, say);
    List<Sheet> sheets = withCharts(limited.sheets(), charts);
    return Report.of(
            inputs.scenario().plan().name(),
            inputs.scenario().nursery().settings().name(),
            say,
            inputs.scenario().plan().firstMonth().toString())
        .sheets(sheets)
        .charts(charts)
        .extra(Stream.concat(LongTables.of(context).stream(), limited.tables().stream()).toList())
        .headlines(Headlines.of(context))
        .problems(context.problems())
        .answers(Answers.of(context, sheets))
        .build();
  }

  /** At most so many of a report's headlines, what lacks before what is sold. */
  public static List<String> headlines(Report report, int most) {
    return Headlines.fewer(report.headlines().stream().flatMap(String::lines).toList(), most);
  }

  /** Every sheet of both books. No sheet needs another, so they are made on all processors. */
  static List<Sheet> sheets(Context context) {
    List<Function<Context, Sheet>> makers =
        List.of(
            SummarySheet::of,
            JobsSheet::of,
            BenchSpaceSheet::of,
            OrderSheet::of,
            SupplierOrders::sheet,
            CashSheet::of,
            LotsBoughtSheet::of,
            SalesSheet::of,
            NotesSheet::of,
            LotsSheet::of,
            ChancesSheet::of,
            SwingsSheet::of,
            StockSheet::of,
            SaleableSheet::of,
            SellOrHoldSheet::of,
            HoursSheet::of,
            PotsSheet::of,
            SubstrateSheet::of,
            MaterialsSheet::of,
            WeightsSheet::of,
            LotAccountsSheet::of,
            StockValueSheet::of,
            CountSheet::of,
            WallSheet::of,
            LabelsSheet::of,
            AssumptionsSheet::of);
    List<Sheet> sheets =
        new ArrayList<>(makers.parallelStream().map(maker -> maker.apply(context)).toList());
    ListSheet.of(context).ifPresent(sheets::add);
    return BookDivision.of(sheets);
  }

  /** Adds to each sheet those of its charts that have something to show. */
  public static List<Sheet> withCharts(List<Sheet> sheets, List<Chart> charts) {
    Set<String> drawn = charts.stream().map(Chart::name).collect(Collectors.toSet());
    List<Sheet> list = new ArrayList<>();
    for (Sheet sheet : sheets) {
      Set<String> names = new LinkedHashSet<>(sheet.charts());
      names.addAll(CHARTS.getOrDefault(sheet.name(), List.of()));
      names.retainAll(drawn);
      list.add(sheet.withCharts(List.copyOf(names)));
    }
    return list;
  }
}
