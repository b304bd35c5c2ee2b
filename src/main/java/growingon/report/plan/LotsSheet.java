package growingon.report.plan;

import growingon.money.Accounts;
import growingon.money.LotAccount;
import growingon.nursery.Horizon;
import growingon.nursery.Papers;
import growingon.project.LotHistory;
import growingon.project.Reached;
import growingon.project.Stood;
import growingon.project.Use;
import growingon.report.build.Columns;
import growingon.report.figures.Context;
import growingon.report.figures.LotLife;
import growingon.report.figures.PottedPlants;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.report.text.Shown;
import growingon.whole.WholeLot;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/** Every lot: where it comes from, what becomes of it, and its line of life. */
public final class LotsSheet {
  /** Name of the table of when lots reach their grades. */
  public static final String GRADES = "lot-grades";

  private final Context context;
  private final Accounts accounts;
  private final Horizon horizon;
  private final String currency;
  private final List<LotHistory> lots;
  private final Phrases say;

  private LotsSheet(Context context) {
    this.say = context.say();
    this.context = context;
    this.accounts = context.accounts();
    this.horizon = accounts.projection().horizon();
    this.currency = context.inputs().scenario().nursery().settings().currency();
    this.lots = accounts.projection().lots();
  }

  public static Sheet of(Context context) {
    LotsSheet sheet = new LotsSheet(context);
    if (sheet.lots.isEmpty()) {
      return Sheet.of("Lots");
    }
    List<Table> tables = new ArrayList<>();
    tables.addAll(List.of(sheet.summary(), sheet.uses(), sheet.grades()));
    if (sheet.lots.stream().anyMatch(LotsSheet::hasPapers)) {
      tables.add(sheet.papers());
    }
    if (!context.bought().isEmpty()) {
      tables.addAll(BoughtLots.later(context));
    }
    tables.add(sheet.lives());
    return new Sheet("Lots", sheet.sentences(), tables, List.of(), false);
  }

  private List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    List<String> late = lots.stream().filter(this::isLate).map(each -> each.lot().name()).toList();
    if (late.isEmpty()) {
      return sentences;
    }
    sentences.add(
        "In %s the middle plant does not reach the dearest grade by %s, the end of the plan: %s. A"
                .formatted(
                    say.counted(late.size(), "lot", "lots"),
                    say.month(horizon, horizon.months() - 1),
                    Phrases.list(late, 8, "lots"))
            + " longer plan shows more of what such lots earn.");
    return sentences;
  }

  private OptionalInt top(LotHistory lot) {
    return accounts.topPricedGrade(lot.lot());
  }

  private OptionalInt middleAtTop(LotHistory lot) {
    OptionalInt top = top(lot);
    return top.isEmpty() ? top : lot.reached().get(top.getAsInt()).middle();
  }

  private boolean isLate(LotHistory lot) {
    return lot.lot().quantity() > 0 && top(lot).isPresent() && middleAtTop(lot).isEmpty();
  }

  private YearMonth month(OptionalInt offset) {
    return offset.isPresent() ? horizon.month(offset.getAsInt()) : null;
  }

  private Table summary() {
    Rows rows = new Rows();
    for (int i = 0; i < lots.size(); i++) {
      LotHistory lot = lots.get(i);
      LotAccount account = accounts.lots().get(i);
      WholeLot whole = context.whole().lots().get(i);
      rows.add(
          lot.lot().name(),
          lot.lot().species(),
          lot.lot().quantity(),
          Plants.of(account.lost(), whole.lost()),
          Plants.of(account.sold(), whole.sold()),
          Plants.of(account.standing(), whole.standing()),
          Plants.of(account.kept(), whole.kept()),
          placeAtEnd(lot, whole));
    }
    return new Table(
        "lots",
        "Lots",
        List.of(
            "At the start = lost or culled + sold + standing. At the start: as counted in the stock"
                + " list, or bought. Lost or culled: since that count."),
        List.of(
            Rows.lot(),
            species(),
            Column.summed("started", "plants at the start", "", Kind.COUNT),
            Column.summed("lost", "lost or culled", "", Kind.PLANTS),
            Column.summed("sold", "sold", "", Kind.PLANTS),
            Column.summed("standing", "standing at the end", "", Kind.PLANTS),
            Column.summed("kept", "of these kept", "", Kind.PLANTS),
            Column.of("place", "place at the end", "", Kind.TEXT)),
        rows.list());
  }

  private static Column species() {
    return Column.of("species", "species", "", Kind.TEXT);
  }

  private static boolean hasPapers(LotHistory lot) {
    return !lot.lot().papers().equals(Papers.NONE);
  }

  private Table papers() {
    Rows rows = new Rows();
    for (LotHistory lot : lots) {
      Papers papers = lot.lot().papers();
      if (hasPapers(lot)) {
        rows.add(
            lot.lot().name(),
            lot.lot().species(),
            lot.lot().arrived(),
            Rows.text(papers.supplier()),
            Rows.text(papers.passport()),
            Rows.text(papers.origin()),
            Rows.text(papers.fromLot()),
            lot.lot().form().toString(),
            Rows.text(papers.note()));
      }
    }
    return new Table(
        "lot-papers",
        "Where lots come from",
        List.of(
            "As in the stock list and the offers; lots of which nothing is stated are left out."),
        List.of(
            Rows.lot(),
            species(),
            Column.of("arrived", "arrived", "", Kind.MONTH),
            Column.of("supplier", "supplier", "", Kind.TEXT),
            Column.of("passport", "passport", "", Kind.TEXT),
            Column.of("origin", "origin", "", Kind.TEXT),
            Column.of("from_lot", "from lot", "", Kind.TEXT),
            Column.of("form", "form", "", Kind.TEXT),
            Column.of("note", "note", "", Kind.LONG_TEXT)),
        rows.list());
  }

  private static String placeAtEnd(LotHistory lot, WholeLot whole) {
    Stood stood = lot.stood(lot.months() - 1);
    return stood == null || whole.standing() == 0 ? null : Rows.text(stood.place());
  }

  private Table uses() {
    List<List<Object>> rows = new ArrayList<>();
    for (int i = 0; i < lots.size(); i++) {
      rows.add(use(lots.get(i), accounts.lots().get(i)));
    }
    return new Table(
        "lots-use",
        "What each lot uses and earns",
        List.of(
            "Over the whole plan. Costs: plants, carriage, pots, substrate and materials at the price"
                + " of one unit, all hours, care, the place charge, selling and other cash of the lot; Lot"
                + " accounts shows each."
                + " Result: sales less these costs. Plants standing at the end have no value here. "
                + Sentences.WITHOUT_VAT),
        List.of(
            Rows.lot(),
            Column.summed("pots", "pots", "", Kind.NUMBER),
            Column.summed("litres", "substrate", "litres", Kind.LITRES),
            Column.summed("hours", "work", "hours", Kind.HOURS),
            Column.summed("m2_months", "space", "m²-months", Kind.NUMBER),
            Column.summed("costs", "costs", currency, Kind.MONEY),
            Column.summed("sales", "sales", currency, Kind.MONEY),
            Columns.belowNil(Column.summed("result", "result", currency, Kind.MONEY))),
        rows);
  }

  private List<Object> use(LotHistory lot, LotAccount account) {
    return Arrays.asList(
        lot.lot().name(),
        new Shown(used(lot, Use.Kind.POT), PottedPlants.of(context.whole().lot(lot))),
        used(lot, Use.Kind.COMPONENT),
        account.hours(),
        account.m2Months(),
        account.costs(),
        account.sales(),
        account.result());
  }

  private static double used(LotHistory lot, Use.Kind kind) {
    return lot.uses().stream().filter(use -> use.kind() == kind).mapToDouble(Use::amount).sum();
  }

  private Table grades() {
    Rows rows = new Rows();
    for (LotHistory lot : lots) {
      int top = top(lot).orElse(-1);
      for (Reached reached : lot.reached()) {
        boolean dearest = reached.grade() == top && lot.lot().quantity() > 0;
        if (reached.firstTenth().isPresent() || dearest) {
          rows.add(
              lot.lot().name(),
              lot.lot().species(),
              lot.grades().get(reached.grade()).name(),
              month(reached.firstTenth()),
              month(reached.middle()),
              month(reached.lastTenth()),
              dearest ? remark(reached) : null);
        }
      }
    }
    return new Table(
        GRADES,
        "When each lot reaches its grades",
        List.of(
            "The month by which a tenth, half (the middle plant) and nine tenths of the plants have"
                + " the trunk and the training, as if none were lost or sold; the plan's first month"
                + " where they have it already, empty where they do not within the plan.",
            "Dearest: the highest grade of its ladder that the demand table prices."),
        List.of(
            Rows.lot(),
            species(),
            Column.of("grade", "grade", "", Kind.TEXT),
            Column.of("first_tenth", "first tenth", "", Kind.MONTH),
            Column.of("middle", "middle plant", "", Kind.MONTH),
            Column.of("last_tenth", "last tenth", "", Kind.MONTH),
            Column.of("remark", "remark", "", Kind.TEXT)),
        rows.list());
  }

  private static String remark(Reached reached) {
    return reached.middle().isPresent() ? "dearest" : "dearest; after the plan";
  }

  private Table lives() {
    Rows rows = new Rows();
    for (LotHistory lot : lots) {
      for (LotLife.Event event : LotLife.of(context.whole().lot(lot), horizon, say)) {
        rows.add(
            lot.lot().name(),
            lot.lot().species(),
            horizon.month(event.month()),
            event.event(),
            event.plants(),
            Rows.text(event.place()),
            Rows.number(event.hours()),
            Rows.number(event.received()),
            Rows.text(event.what()));
      }
    }
    return new Table(
        "line-of-life",
        "The line of life of each lot",
        List.of(
            "Plants: those that arrive or stand at the start, that a step is done on after its losses,"
                + " or that stand at the end of the month or season.",
            "Hours are all hours of the step, over all its months; received is what the season's"
                + " sales brought, without VAT."),
        List.of(
            Rows.lot(),
            species(),
            Rows.month(),
            Column.of("event", "event", "", Kind.TEXT),
            Column.of("plants", "plants", "", Kind.PLANTS),
            Column.of("place", "stands in", "", Kind.TEXT),
            Column.of("hours", "work", "hours", Kind.HOURS),
            Column.of("received", "received", currency, Kind.MONEY),
            Column.of("what", "what happens", "", Kind.LONG_TEXT)),
        rows.list());
  }
}
