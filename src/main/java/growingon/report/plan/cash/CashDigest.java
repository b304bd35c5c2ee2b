package growingon.report.plan.cash;

import growingon.money.Accounts;
import growingon.money.CashFlow;
import growingon.money.CashItem;
import growingon.nursery.time.Horizon;
import growingon.project.lot.LotHistory;
import growingon.report.build.TableOf;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Cash by month and season in three lines, for eyes that are not to learn what an hour or a plant
 * costs: what a month's sales or purchases owe to a single lot goes to the line of everything else.
 */
public final class CashDigest {
  private static final List<CashItem> BOUGHT =
      Stream.of(CashItem.values()).filter(CashItem::isBought).toList();

  /** Of a sum of which plants are less than this share nobody can tell what they cost. */
  private static final double MOSTLY = 0.5;

  private final CashFlow cash;
  private final Horizon horizon;
  private final String currency;
  private final CashEnds ends;
  private final List<LotHistory> lots;
  private final boolean salesOfOneLotShown;
  private final boolean purchaseOfOneLotShown;
  private final double[] sales;
  private final double[] bought;
  private final Phrases say;

  public CashDigest(Accounts accounts, boolean salesOfOneLotShown, boolean purchaseOfOneLotShown) {
    this.say = Phrases.of(accounts.projection().scenario());
    this.cash = accounts.cash();
    this.horizon = accounts.projection().horizon();
    this.currency = accounts.projection().scenario().nursery().settings().currency();
    this.ends = new CashEnds(cash, currency);
    this.lots = accounts.projection().lots();
    this.salesOfOneLotShown = salesOfOneLotShown;
    this.purchaseOfOneLotShown = purchaseOfOneLotShown;
    this.sales = new double[cash.months()];
    this.bought = new double[cash.months()];
    for (int month = 0; month < cash.months(); month++) {
      sales[month] = sales(month);
      bought[month] = bought(month);
    }
  }

  private double sales(int month) {
    Set<String> sellers = new HashSet<>();
    for (LotHistory lot : lots) {
      if (lot.sold(month) > 0) {
        sellers.add(lot.lot().name());
      }
    }
    return sellers.size() == 1 && !salesOfOneLotShown ? 0 : cash.get(CashItem.SALES, month);
  }

  private double bought(int month) {
    return BOUGHT.stream().mapToDouble(item -> cash.get(item, month)).sum();
  }

  /**
   * What is bought in some months; nil, to stand with everything else, where plants and their
   * carriage are most of it: then it would tell what they cost.
   */
  private double boughtWithin(int first, int last) {
    double all = Arrays.stream(bought, first, last + 1).sum();
    double plants = 0;
    for (int month = first; month <= last; month++) {
      plants += cash.get(CashItem.PLANTS, month) + cash.get(CashItem.CARRIAGE, month);
    }
    boolean mostlyPlants = Math.abs(plants) > MOSTLY * Math.abs(all);
    return mostlyPlants && !purchaseOfOneLotShown ? 0 : all;
  }

  public List<Table> tables() {
    return List.of(seasons(), months());
  }

  /**
   * Cash by season alone, for who sees work by month: both by month would tell what an hour costs.
   */
  public List<Table> bySeason() {
    return List.of(seasons());
  }

  /** Months that stand in a row, and what moves in them. */
  private record Months(Object label, int first, int last, double sold, double paid, double net) {
    double other() {
      return net - sold - paid;
    }
  }

  private Months row(Object label, int first, int last) {
    return new Months(
        label,
        first,
        last,
        Arrays.stream(sales, first, last + 1).sum(),
        boughtWithin(first, last),
        Arrays.stream(cash.flows(), first, last + 1).sum());
  }

  private TableOf<Months> columns(TableOf<Months> table) {
    return table
        .summed("sales", currency, Kind.MONEY, Months::sold)
        .summed("bought", currency, Kind.MONEY, Months::paid)
        .summed("other", "everything else", currency, Kind.MONEY, Months::other)
        .summed("net", "in less out", currency, Kind.MONEY, Months::net)
        .belowNil()
        .columns(List.of(ends.atEnd(Months::last)));
  }

  private Table seasons() {
    return columns(
            TableOf.<Months>table("cash-by-season", "Cash by season")
                .notes(notes())
                .column(Rows.season(), Months::label))
        .columns(List.of(ends.lowest(Months::first, Months::last)))
        .of(
            IntStream.range(0, horizon.seasons())
                .mapToObj(
                    season ->
                        row(
                            horizon.seasonLabel(season),
                            horizon.seasonFirst(season),
                            horizon.seasonLast(season)))
                .toList());
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Bought: plants, carriage, pots, substrate and materials, in the month in which they are"
            + " paid. Everything else: wages, places, care and other cash."
            + (purchaseOfOneLotShown && salesOfOneLotShown
                ? ""
                : " Sales that a month owes to a single lot are in there too, and purchases that are"
                    + " mostly plants."));
    notes.add("Out is shown below nil. " + Sentences.WITHOUT_VAT);
    return notes;
  }

  private Table months() {
    return columns(
            TableOf.<Months>table("cash", "Cash by month")
                .note(
                    "The plan opens with "
                        + say.money(cash.opening())
                        + ". "
                        + (purchaseOfOneLotShown && salesOfOneLotShown
                            ? ""
                            : "What stands with everything else is settled month by month here, so that"
                                + " totals may differ from those by season. ")
                        + Sentences.WITHOUT_VAT)
                .column(Rows.month(), Months::label))
        .of(
            IntStream.range(0, cash.months())
                .mapToObj(month -> row(horizon.month(month), month, month))
                .toList());
  }
}
