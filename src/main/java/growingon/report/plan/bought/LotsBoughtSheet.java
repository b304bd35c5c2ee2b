package growingon.report.plan.bought;

import growingon.report.chart.ChanceCharts;
import growingon.report.figures.Context;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.words.BoughtWords;
import java.util.ArrayList;
import java.util.List;

/** The lots bought within the plan: whether each pays, how sure that is, how far one may go. */
public final class LotsBoughtSheet {
  /** Name of the table of what each gains. */
  public static final String GAINS = "bought-lots";

  /** Name of the table of how far one may go. */
  public static final String LIMITS = "bought-lot-limits";

  public static final String NAME = "Lots bought";

  private LotsBoughtSheet() {}

  /** Empty if nothing is bought within the plan. */
  public static Sheet of(Context context) {
    if (context.bought().isEmpty()) {
      return Sheet.of(NAME);
    }
    Sheet verdicts = LotVerdictsSheet.of(context);
    List<String> sentences = new ArrayList<>();
    context.bought().forEach(each -> sentences.add(new BoughtWords(context, each).bridge()));
    BoughtWords.together(context).ifPresent(sentences::add);
    sentences.addAll(verdicts.sentences());
    List<Table> tables = new ArrayList<>(BoughtLots.tables(context));
    tables.addAll(verdicts.tables());
    return new Sheet(NAME, sentences, tables, ChanceCharts.endings(context.bought()), false);
  }
}
