package growingon.report.plan;

import growingon.chance.Assumption;
import growingon.chance.Gamble;
import growingon.chance.Gamble.Swing;
import growingon.report.build.Columns;
import growingon.report.chart.ChanceCharts;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Sentences;
import java.util.List;

/** What each assumption moves, one at a time, for each lot bought within the plan. */
final class SwingsSheet {
  static final String NAME = "Swings";

  private static final String MORE_FIRSTS_GAIN_LESS =
      "More firsts can gain less: what is wanted of their grade sells no oftener for it, so that they"
          + " take the sales of plants that are there already, or stand unsold at the end.";

  private SwingsSheet() {}

  /** Empty without draws, without a lot bought, and where nothing is unsure. */
  static Sheet of(Context context) {
    List<Gamble> gambles = context.chances().map(each -> each.gambles()).orElse(List.of());
    if (gambles.stream().allMatch(each -> each.swings().isEmpty())) {
      return Sheet.of(NAME);
    }
    String note =
        "One assumption at a time is set to its P10 and P90, all others stay as planned; what differs"
            + " from season to season is set for all seasons at once to the P10 and P90 of its mean.";
    return new Sheet(
        NAME,
        sentences(gambles, note),
        List.of(table(context, gambles)),
        ChanceCharts.swings(gambles),
        false);
  }

  /** With a line that says why, where more firsts gain less. */
  private static List<String> sentences(List<Gamble> gambles, String note) {
    boolean inverted =
        gambles.stream()
            .flatMap(gamble -> gamble.swings().stream())
            .filter(swing -> swing.assumption() == Assumption.FIRSTS)
            .anyMatch(swing -> swing.gainAtHigh() < swing.gainAtLow());
    return inverted
        ? List.of(note, MORE_FIRSTS_GAIN_LESS, Sentences.WITHOUT_VAT)
        : List.of(note, Sentences.WITHOUT_VAT);
  }

  private static Table table(Context context, List<Gamble> gambles) {
    String currency = context.inputs().scenario().nursery().settings().currency();
    Rows rows = new Rows();
    for (Gamble gamble : gambles) {
      for (Swing swing : gamble.swings()) {
        rows.add(
            gamble.bought().lot().name(),
            swing.says(),
            swing.low(),
            swing.high(),
            swing.gainAtLow(),
            swing.gainAtLine(),
            swing.gainAtHigh(),
            swing.width(),
            swing.measured().map(Swing.Measured::gainAtLow).orElse(null),
            swing.measured().map(Swing.Measured::gainAtHigh).orElse(null),
            swing.measured().isPresent() ? swing.narrower() : null,
            swing.measured().isPresent() ? "by measuring" : null);
      }
    }
    return new Table(
        "swings",
        "What each assumption moves",
        List.of(
            "Gain of the lot, as on Lots bought; the widest swing first. Whole failure is no P10: it"
                + " has the chance that Lots bought names.",
            "Moves it by: from the least to the greatest of P10, plan's line and P90. Not known: the"
                + " same in all seasons. Measured: once 20 trunks were marked and read twice."),
        List.of(
            Rows.lot(),
            Column.of("assumption", "assumption", "", Kind.TEXT),
            Column.of("low", "at P10", "", Kind.TEXT),
            Column.of("high", "at P90", "", Kind.TEXT),
            Columns.belowNil(Column.of("gain_low", "gain at P10", currency, Kind.MONEY)),
            Columns.belowNil(Column.of("plan", "plan's line", currency, Kind.MONEY)),
            Columns.belowNil(Column.of("gain_high", "gain at P90", currency, Kind.MONEY)),
            Column.of("width", "moves it by", currency, Kind.MONEY),
            Columns.belowNil(Column.of("measured_low", "at P10, measured", currency, Kind.MONEY)),
            Columns.belowNil(Column.of("measured_high", "at P90, measured", currency, Kind.MONEY)),
            Column.of("narrower", "narrower by", "", Kind.SHARE),
            Column.of("mark", "can be narrowed", "", Kind.TEXT)),
        rows.list());
  }
}
