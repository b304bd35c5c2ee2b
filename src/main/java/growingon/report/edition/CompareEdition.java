package growingon.report.edition;

import growingon.chance.Chances;
import growingon.chance.Quantiles;
import growingon.money.CashFlow;
import growingon.money.CashItem;
import growingon.nursery.Inputs;
import growingon.nursery.time.Horizon;
import growingon.plan.Planned;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.compare.CompareReport;
import growingon.report.compare.CompareReport.Side;
import growingon.report.model.Answer;
import growingon.report.model.Audience;
import growingon.report.model.Chart;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Odds;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Two plans side by side for a partner or a bank. Where they differ in one bought lot, the
 * difference of their cash soon after it came is its price, and that of their worth its gain. So
 * sales stand as amounts, worth as a share of all sales, and cash by its limit alone.
 */
final class CompareEdition {
  private static final double SOME_SALES = 1;

  /** What a bank knows the plans by. */
  private static final String FIRST = "first plan";

  private static final String SECOND = "second plan";

  private final Audience audience;
  private final Side first;
  private final Side second;
  private final Side firstSeen;
  private final Side secondSeen;
  private final List<Chart> charts;

  CompareEdition(Edition edition, Side first, Side second) {
    this.audience = edition.audience();
    this.first = first;
    this.second = second;
    this.firstSeen = seen(edition, first, FIRST);
    this.secondSeen = seen(edition, second, SECOND);
    // A bank sees no number of plants.
    this.charts =
        isForPartner() ? CompareReport.chartsWithoutMoney(firstSeen, secondSeen) : List.of();
  }

  private static Side seen(Edition edition, Side whole, String number) {
    Inputs inputs = edition.seen(whole.inputs());
    String label = edition.audience() == Audience.PARTNER ? whole.label() : number;
    return new Side(label, Planned.booked(inputs), List.of());
  }

  /**
   * What it is called.
   *
   * @param first name of the first plan
   * @param second that of the second
   */
  static String title(Audience audience, String first, String second) {
    return audience == Audience.PARTNER
        ? CompareReport.title(first, second)
        : CompareReport.title(FIRST, SECOND);
  }

  private boolean isForPartner() {
    return audience == Audience.PARTNER;
  }

  Report report() {
    List<Answer> answers =
        List.of(
            new Answer("Which is worth more", List.of(worth()), List.of(), List.of()),
            new Answer("Is there cash enough", cash(), List.of(), List.of()));
    return EditionReport.of(
        title(audience, first.label(), second.label()),
        secondSeen.inputs().scenario(),
        sheets(),
        charts,
        answers,
        leftOut(),
        first.currency());
  }

  private List<String> leftOut() {
    List<String> out = new ArrayList<>();
    out.add(
        isForPartner()
            ? "names of lots, and everything of single lots"
            : "names of plans and lots, species and grades");
    out.add("where the files differ, notes, suppliers and passports");
    out.add("hours, costs, and cash by month or season: its differences are prices paid");
    out.add("problems found, and names of files and folders");
    return out;
  }

  private List<Sheet> sheets() {
    List<Sheet> sheets = new ArrayList<>();
    Sheet summary = EditionReport.summary(leftOut(), List.of(cashTable(), sales()));
    sheets.add(summary.withCharts(charts.stream().map(Chart::name).toList()));
    if (isForPartner()) {
      Map<String, Table> tables = new LinkedHashMap<>();
      CompareReport.tables(firstSeen, secondSeen).forEach(table -> tables.put(table.name(), table));
      for (String name : List.of("sales", "plants-sold", "space-missing")) {
        Table table = tables.get("compare-" + name);
        sheets.add(FilledSheet.of(table.title(), List.of(), table));
      }
    }
    return sheets;
  }

  private String worth() {
    if (!first.hasCurrencyOf(second)) {
      return CompareReport.unlikeCurrencies(first, second);
    }
    double more = second.accounts().presentValue() - first.accounts().presentValue();
    double all = first.accounts().cash().total(CashItem.SALES);
    String by =
        all < SOME_SALES
            ? ""
            : ", by about %d %% of all sales of the other"
                .formatted(Math.max(1, Math.round(100 * Math.abs(more) / all)));
    String line =
        "%s is worth %s than %s in today's money, on the plan's line%s"
            .formatted(
                Phrases.sentence(secondSeen.label()),
                more >= 0 ? "more" : "less",
                firstSeen.label(),
                by);
    return line
        + CompareReport.moreOften(first, second).map("; it is worth more "::concat).orElse("")
        + ".";
  }

  private List<String> cash() {
    return List.of(cash(first, firstSeen.label()), cash(second, secondSeen.label()));
  }

  private static String cash(Side side, String label) {
    OptionalDouble limit = limit(side);
    String name = Phrases.sentence(label);
    if (limit.isEmpty()) {
      return name + ": no limit of cash is stated.";
    }
    String chance =
        chance(side).map(share -> "; some month falls below it %s".formatted(share)).orElse("");
    return "%s: cash is lowest in %s, %s the limit of %s on the plan's line%s."
        .formatted(
            name,
            side.say().month(horizon(side), side.accounts().cash().lowestMonth()),
            lowest(side) < limit.getAsDouble() ? "below" : "above",
            side.say().money(limit.getAsDouble()),
            chance);
  }

  private static Optional<String> chance(Side side) {
    return drawnLimit(side)
        .map(drawn -> Odds.in(drawn.chanceBelowLowest().getAsDouble(), drawn.draws()));
  }

  /** Its draws, where it has some and they are held against a limit of cash. */
  private static Optional<Chances> drawnLimit(Side side) {
    return side.chances().filter(drawn -> drawn.chanceBelowLowest().isPresent());
  }

  private static OptionalDouble limit(Side side) {
    return side.inputs().scenario().nursery().settings().lowestCash();
  }

  private static double lowest(Side side) {
    CashFlow cash = side.accounts().cash();
    return cash.balances()[cash.lowestMonth()];
  }

  private static Horizon horizon(Side side) {
    return side.accounts().projection().horizon();
  }

  /** A plan, by the name its reader knows it by. */
  private record Named(Side side, String label) {
    /** How the lowest cash stands to the limit. */
    String atLowest() {
      OptionalDouble limit = limit(side);
      return limit.isEmpty()
          ? "no limit stated"
          : lowest(side) < limit.getAsDouble() ? "below the limit" : "above the limit";
    }
  }

  private List<Named> both() {
    return List.of(new Named(first, firstSeen.label()), new Named(second, secondSeen.label()));
  }

  private Table cashTable() {
    return TableOf.<Named>table("cash-limit", "Cash against its limit")
        .note("Below it: of 100 draws, those in which some month falls below the limit.")
        .text("plan", Named::label)
        .month(
            "lowest in",
            each -> horizon(each.side).month(each.side.accounts().cash().lowestMonth()))
        .text("on the plan's line", Named::atLowest)
        .column(
            "below it %",
            "",
            Kind.COUNT,
            each ->
                drawnLimit(each.side)
                    .map(drawn -> Odds.whole(drawn.chanceBelowLowest().getAsDouble()))
                    .orElse(null))
        .of(both());
  }

  /** A season of a plan. */
  private record Season(Named plan, int season) {
    Horizon horizon() {
      return CompareEdition.horizon(plan.side);
    }

    double sales() {
      double sales = 0;
      for (int month = horizon().seasonFirst(season);
          month <= horizon().seasonLast(season);
          month++) {
        sales += plan.side.accounts().cash().get(CashItem.SALES, month);
      }
      return sales;
    }

    Optional<Quantiles> drawn() {
      return plan.side.chances().map(each -> each.sales().get(season));
    }
  }

  private static Stream<Season> seasons(Named plan) {
    return IntStream.range(0, horizon(plan.side).seasons())
        .mapToObj(season -> new Season(plan, season));
  }

  /**
   * Sales of each season of both plans: on the line, and what a tenth and nine tenths lie below.
   */
  private Table sales() {
    String currency = CompareReport.currency(first, second);
    return TableOf.<Season>table("sales-seasons", "Sales of each season")
        .note("P10 and P90: one draw in ten lies below, nine in ten. " + Sentences.WITHOUT_VAT)
        .text("plan", each -> each.plan.label)
        .text("season", each -> each.horizon().seasonLabel(each.season))
        .column("sales", currency, Kind.MONEY, Season::sales)
        .column("P10", currency, Kind.MONEY, each -> each.drawn().map(Quantiles::p10).orElse(null))
        .column("P90", currency, Kind.MONEY, each -> each.drawn().map(Quantiles::p90).orElse(null))
        .of(both().stream().flatMap(CompareEdition::seasons).toList());
  }
}
