package growingon.report.plan.stock;

import growingon.money.Accounts;
import growingon.money.LotAccount;
import growingon.nursery.lot.Papers;
import growingon.nursery.time.Horizon;
import growingon.project.history.Reached;
import growingon.project.history.Stood;
import growingon.project.history.Use;
import growingon.project.lot.LotHistory;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.figures.LotLife;
import growingon.report.figures.PottedPlants;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.plan.bought.BoughtLots;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.report.text.Shown;
import growingon.whole.WholeLot;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

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

  /** A lot of the plan, its account and its whole plants. */
  private record OfPlan(LotHistory history, LotAccount account, WholeLot whole) {}

  private List<OfPlan> ofPlan() {
    return IntStream.range(0, lots.size())
        .mapToObj(
            i -> new OfPlan(lots.get(i), accounts.lots().get(i), context.whole().lots().get(i)))
        .toList();
  }

  private Table summary() {
    return TableOf.<OfPlan>table("lots", "Lots")
        .note(
            "At the start = lost or culled + sold + standing. At the start: as counted in the stock"
                + " list, or bought. Lost or culled: since that count.")
        .column(Rows.lot(), each -> each.history.lot().name())
        .column(species(), each -> each.history.lot().species())
        .summed(
            "started", "plants at the start", "", Kind.COUNT, each -> each.history.lot().quantity())
        .plants("lost", "lost or culled", each -> Plants.of(each.account.lost(), each.whole.lost()))
        .plants("sold", each -> Plants.of(each.account.sold(), each.whole.sold()))
        .plants(
            "standing",
            "standing at the end",
            each -> Plants.of(each.account.standing(), each.whole.standing()))
        .plants("kept", "of these kept", each -> Plants.of(each.account.kept(), each.whole.kept()))
        .text("place", "place at the end", each -> placeAtEnd(each.history, each.whole))
        .of(ofPlan());
  }

  private static Column species() {
    return Column.of("species", "species", "", Kind.TEXT);
  }

  private static boolean hasPapers(LotHistory lot) {
    return !lot.lot().papers().equals(Papers.NONE);
  }

  private Table papers() {
    return TableOf.<LotHistory>table("lot-papers", "Where lots come from")
        .note("As in the stock list and the offers; lots of which nothing is stated are left out.")
        .column(Rows.lot(), each -> each.lot().name())
        .column(species(), each -> each.lot().species())
        .month("arrived", each -> each.lot().arrived())
        .text("supplier", each -> Rows.text(each.lot().papers().supplier()))
        .text("passport", each -> Rows.text(each.lot().papers().passport()))
        .text("origin", each -> Rows.text(each.lot().papers().origin()))
        .text("from lot", each -> Rows.text(each.lot().papers().fromLot()))
        .text("form", each -> each.lot().form().toString())
        .longText("note", each -> Rows.text(each.lot().papers().note()))
        .of(lots.stream().filter(LotsSheet::hasPapers).toList());
  }

  private static String placeAtEnd(LotHistory lot, WholeLot whole) {
    Stood stood = lot.stood(lot.months() - 1);
    return stood == null || whole.standing() == 0 ? null : stood.place().orElse(null);
  }

  private Table uses() {
    return TableOf.<OfPlan>table("lots-use", "What each lot uses and earns")
        .note(
            "Over the whole plan. Costs: plants, carriage, pots, substrate and materials at the price"
                + " of one unit, all hours, care, the place charge, selling and other cash of the lot; Lot"
                + " accounts shows each."
                + " Result: sales less these costs. Plants standing at the end have no value here. "
                + Sentences.WITHOUT_VAT)
        .column(Rows.lot(), each -> each.history.lot().name())
        .summed(
            "pots",
            "",
            Kind.NUMBER,
            each ->
                new Shown(
                    used(each.history, Use.Kind.POT),
                    PottedPlants.of(context.whole().lot(each.history))))
        .summed(
            "litres",
            "substrate",
            "litres",
            Kind.LITRES,
            each -> used(each.history, Use.Kind.COMPONENT))
        .summed("hours", "work", "hours", Kind.HOURS, each -> each.account.hours())
        .summed("m2_months", "space", "m²-months", Kind.NUMBER, each -> each.account.m2Months())
        .summed("costs", currency, Kind.MONEY, each -> each.account.costs())
        .summed("sales", currency, Kind.MONEY, each -> each.account.sales())
        .summed("result", currency, Kind.MONEY, each -> each.account.result())
        .belowNil()
        .of(ofPlan());
  }

  private static double used(LotHistory lot, Use.Kind kind) {
    return lot.uses().stream().filter(use -> use.kind() == kind).mapToDouble(Use::amount).sum();
  }

  /** A grade that a lot comes to, or the dearest that it does not. */
  private record Coming(LotHistory lot, Reached reached, boolean isDearest) {}

  private List<Coming> coming() {
    List<Coming> coming = new ArrayList<>();
    for (LotHistory lot : lots) {
      int top = top(lot).orElse(-1);
      for (Reached reached : lot.reached()) {
        boolean dearest = reached.grade() == top && lot.lot().quantity() > 0;
        if (reached.firstTenth().isPresent() || dearest) {
          coming.add(new Coming(lot, reached, dearest));
        }
      }
    }
    return coming;
  }

  private Table grades() {
    return TableOf.<Coming>table(GRADES, "When each lot reaches its grades")
        .note(
            "The month by which a tenth, half (the middle plant) and nine tenths of the plants have"
                + " the trunk and the training, as if none were lost or sold; the plan's first month"
                + " where they have it already, empty where they do not within the plan.")
        .note("Dearest: the highest grade of its ladder that the demand table prices.")
        .column(Rows.lot(), each -> each.lot.lot().name())
        .column(species(), each -> each.lot.lot().species())
        .text("grade", each -> each.lot.grades().get(each.reached.grade()).name())
        .month("first tenth", each -> month(each.reached.firstTenth()))
        .month("middle", "middle plant", each -> month(each.reached.middle()))
        .month("last tenth", each -> month(each.reached.lastTenth()))
        .text("remark", each -> each.isDearest ? remark(each.reached) : null)
        .of(coming());
  }

  private static String remark(Reached reached) {
    return reached.middle().isPresent() ? "dearest" : "dearest; after the plan";
  }

  /** An event in the life of a lot. */
  private record Lived(LotHistory lot, LotLife.Event event) {}

  private List<Lived> lived() {
    List<Lived> lived = new ArrayList<>();
    for (LotHistory lot : lots) {
      LotLife.of(context.whole().lot(lot), horizon, say)
          .forEach(event -> lived.add(new Lived(lot, event)));
    }
    return lived;
  }

  private Table lives() {
    return TableOf.<Lived>table("line-of-life", "The line of life of each lot")
        .note(
            "Plants: those that arrive or stand at the start, that a step is done on after its losses,"
                + " or that stand at the end of the month or season.")
        .note(
            "Hours are all hours of the step, over all its months; received is what the season's"
                + " sales brought, without VAT.")
        .column(Rows.lot(), each -> each.lot.lot().name())
        .column(species(), each -> each.lot.lot().species())
        .column(Rows.month(), each -> horizon.month(each.event.month()))
        .text("event", each -> each.event.event())
        .column("plants", "", Kind.PLANTS, each -> each.event.plants())
        .text("place", "stands in", each -> each.event.place().orElse(null))
        .column("hours", "work", "hours", Kind.HOURS, each -> Rows.number(each.event.hours()))
        .column("received", currency, Kind.MONEY, each -> Rows.number(each.event.received()))
        .longText("what", "what happens", each -> Rows.text(each.event.what()))
        .of(lived());
  }
}
