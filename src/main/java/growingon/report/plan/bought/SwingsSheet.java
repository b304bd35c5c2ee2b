package growingon.report.plan.bought;

import growingon.chance.Gamble;
import growingon.chance.Gamble.Swing;
import growingon.chance.luck.Assumption;
import growingon.report.build.TableOf;
import growingon.report.chart.ChanceCharts;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Sentences;
import java.util.List;

/** What each assumption moves, one at a time, for each lot bought within the plan. */
public final class SwingsSheet {
  static final String NAME = "Swings";

  private static final String MORE_FIRSTS_GAIN_LESS =
      "More firsts can gain less: what is wanted of their grade sells no oftener for it, so that they"
          + " take the sales of plants that are there already, or stand unsold at the end.";

  private SwingsSheet() {}

  /** Empty without draws, without a lot bought, and where nothing is unsure. */
  public static Sheet of(Context context) {
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

  /** What one assumption moves of a lot. */
  private record Swung(Gamble gamble, Swing swing) {}

  private static List<Swung> swung(List<Gamble> gambles) {
    return gambles.stream()
        .flatMap(gamble -> gamble.swings().stream().map(swing -> new Swung(gamble, swing)))
        .toList();
  }

  private static Table table(Context context, List<Gamble> gambles) {
    String currency = context.inputs().scenario().nursery().settings().currency();
    return measured(
            currency,
            TableOf.<Swung>table("swings", "What each assumption moves")
                .note(
                    "Gain of the lot, as on Lots bought; the widest swing first. Whole failure is no P10: it"
                        + " has the chance that Lots bought names.")
                .note(
                    "Moves it by: from the least to the greatest of P10, plan's line and P90. Not known: the"
                        + " same in all seasons. Measured: once 20 trunks were marked and read twice.")
                .column(Rows.lot(), each -> each.gamble.bought().lot().name())
                .text("assumption", each -> each.swing.says())
                .text("low", "at P10", each -> each.swing.low())
                .text("high", "at P90", each -> each.swing.high())
                .column(
                    "gain_low", "gain at P10", currency, Kind.MONEY, each -> each.swing.gainAtLow())
                .belowNil()
                .column(
                    "plan", "plan's line", currency, Kind.MONEY, each -> each.swing.gainAtLine())
                .belowNil()
                .column(
                    "gain_high",
                    "gain at P90",
                    currency,
                    Kind.MONEY,
                    each -> each.swing.gainAtHigh())
                .belowNil()
                .column("width", "moves it by", currency, Kind.MONEY, each -> each.swing.width()))
        .of(swung(gambles));
  }

  /** What measuring would take off, where it would. */
  private static TableOf<Swung> measured(String currency, TableOf<Swung> table) {
    return table
        .column(
            "measured_low",
            "at P10, measured",
            currency,
            Kind.MONEY,
            each -> each.swing.measured().map(Swing.Measured::gainAtLow).orElse(null))
        .belowNil()
        .column(
            "measured_high",
            "at P90, measured",
            currency,
            Kind.MONEY,
            each -> each.swing.measured().map(Swing.Measured::gainAtHigh).orElse(null))
        .belowNil()
        .column(
            "narrower",
            "narrower by",
            "",
            Kind.SHARE,
            each -> each.swing.measured().isPresent() ? each.swing.narrower() : null)
        .text(
            "mark",
            "can be narrowed",
            each -> each.swing.measured().isPresent() ? "by measuring" : null);
  }
}
