package growingon.start;

import growingon.report.InputBook;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;

/** The folder that a grower starts from: the workbook's description and the plan's text. */
public final class StartedNursery {
  /** Name of the workbook. */
  public static final String WORKBOOK = "nursery.xlsx";

  /** Name of the plan. */
  public static final String PLAN = "plan.json";

  /** The months of the example rows suit plans that begin in this month or the eleven after. */
  private static final YearMonth EXAMPLES_FROM = YearMonth.of(2026, 3);

  private StartedNursery() {}

  /**
   * The workbook.
   *
   * @param thisMonth the month it is; the months of the example rows are moved by whole years, so
   *     that the stock has arrived by then and the offers have not
   */
  public static InputBook workbook(YearMonth thisMonth) {
    int months = (int) ChronoUnit.MONTHS.between(EXAMPLES_FROM, thisMonth);
    return new StarterBook(Math.floorDiv(months, 12)).book();
  }

  /** The plan. */
  public static String plan() {
    return Resource.text("plan.json");
  }
}
