package growingon.report.quick;

import growingon.money.Accounts;
import growingon.money.bought.BoughtLot;
import growingon.nursery.Quick;
import growingon.plan.Planned;
import growingon.report.model.Book;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.whole.WholeLot;
import growingon.whole.WholePlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.commons.text.WordUtils;

/** The answer to a quick sheet: its sentences as headlines, and a sheet before all others. */
public final class QuickAnswer {
  private static final String SHEET = "Answer";

  /** What one does next; the rest of the plan that the question stands for is details. */
  private static final Set<String> ACTED = Set.of("Jobs");

  /** Most characters of a line in the terminal. */
  private static final int WIDTH = 110;

  private QuickAnswer() {}

  /**
   * The report of a quick question.
   *
   * @param report the report of the plan that the question stands for
   * @param plan the plan worked out, with the question; it buys one lot
   */
  public static Report of(Report report, Planned plan) {
    Quick quick = plan.inputs().quick().orElseThrow();
    Accounts accounts = plan.accounts();
    BoughtLot bought = plan.bought().get(0);
    WholeLot whole = WholePlan.of(accounts.projection()).lot(bought.lot().name());
    QuickWords words = new QuickWords(quick, accounts, whole, bought, plan.chances());
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(
        new Sheet(
            SHEET,
            words.sentences(),
            List.of(QuickTables.seasons(accounts, whole), QuickTables.usual(quick)),
            List.of(),
            true));
    report.sheets().stream()
        .filter(each -> !each.name().equals("Summary"))
        .map(each -> ACTED.contains(each.name()) ? each : each.withBook(Book.DETAILS))
        .forEach(sheets::add);
    List<String> lines = new ArrayList<>(words.sentences());
    lines.addAll(words.usual());
    if (quick.besideTables()) {
      lines.add(
          "The quick sheet is filled in, so it was answered by itself; empty it to plan the tables.");
    }
    return Report.of(report.plan(), report.nursery(), report.say(), report.firstMonth())
        .sheets(sheets)
        .charts(report.charts())
        .extra(report.extra())
        .headlines(lines.stream().map(QuickAnswer::wrapped).toList())
        .problems(report.problems())
        .build();
  }

  /** A line of the terminal; what goes on in the next one stands further in. */
  private static String wrapped(String line) {
    return WordUtils.wrap(line, WIDTH, "\n      ", false);
  }
}
