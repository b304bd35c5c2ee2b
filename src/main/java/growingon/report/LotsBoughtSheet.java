package growingon.report;

import java.util.ArrayList;
import java.util.List;

/** The lots bought within the plan: whether each pays, how sure that is, how far one may go. */
final class LotsBoughtSheet {
  static final String NAME = "Lots bought";

  private LotsBoughtSheet() {}

  /** Empty if nothing is bought within the plan. */
  static Sheet of(Context context) {
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
