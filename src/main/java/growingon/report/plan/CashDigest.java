package growingon.report.plan;

import growingon.money.Accounts;
import growingon.money.CashFlow;
import growingon.money.CashItem;
import growingon.nursery.Horizon;
import growingon.project.LotHistory;
import growingon.report.build.Columns;
import growingon.report.model.Column;
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

/**
 * Cash by month and season in three lines, for eyes that are not to learn what an hour or a plant
 * costs: what a month's sales or purchases owe to a single lot goes to the line of everything else.
 */
public final class CashDigest {
  private static final List<CashItem> BOUGHT =
      List.of(
          CashItem.PLANTS,
          CashItem.CARRIAGE,
          CashItem.POTS,
          CashItem.SUBSTRATE,
          CashItem.MATERIALS);

  /** Of a sum of which plants are less than this share nobody can tell what they cost. */
  private static final double MOSTLY = 0.5;

  private final CashFlow cash;
  private final Horizon horizon;
  private final String currency;
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

  private List<Column> columns(Column when, Column... last) {
    List<Column> columns = new ArrayList<>(List.of(when));
    columns.add(Column.summed("sales", "sales", currency, Kind.MONEY));
    columns.add(Column.summed("bought", "bought", currency, Kind.MONEY));
    columns.add(Column.summed("other", "everything else", currency, Kind.MONEY));
    columns.add(Columns.belowNil(Column.summed("net", "in less out", currency, Kind.MONEY)));
    columns.add(Columns.belowNil(Column.of("balance", "cash at its end", currency, Kind.MONEY)));
    columns.addAll(List.of(last));
    return columns;
  }

  private Table seasons() {
    double[] balances = cash.balances();
    Rows rows = new Rows();
    for (int season = 0; season < horizon.seasons(); season++) {
      int first = horizon.seasonFirst(season);
      int last = horizon.seasonLast(season);
      List<Object> row = new ArrayList<>(List.of(horizon.seasonLabel(season)));
      row.addAll(lines(first, last));
      row.add(balances[last]);
      row.add(Arrays.stream(balances, first, last + 1).min().getAsDouble());
      rows.add(row);
    }
    return new Table(
        "cash-by-season",
        "Cash by season",
        notes(),
        columns(
            Rows.season(),
            Columns.belowNil(Column.of("lowest", "lowest month end", currency, Kind.MONEY))),
        rows.list());
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
    double[] balances = cash.balances();
    Rows rows = new Rows();
    for (int month = 0; month < cash.months(); month++) {
      List<Object> row = new ArrayList<>(List.of(horizon.month(month)));
      row.addAll(lines(month, month));
      row.add(balances[month]);
      rows.add(row);
    }
    String opening = say.money(cash.opening());
    return new Table(
        "cash",
        "Cash by month",
        List.of(
            "The plan opens with "
                + opening
                + ". "
                + (purchaseOfOneLotShown && salesOfOneLotShown
                    ? ""
                    : "What stands with everything else is settled month by month here, so that"
                        + " totals may differ from those by season. ")
                + Sentences.WITHOUT_VAT),
        columns(Rows.month()),
        rows.list());
  }

  private List<Object> lines(int first, int last) {
    double sold = Arrays.stream(sales, first, last + 1).sum();
    double paid = boughtWithin(first, last);
    double net = Arrays.stream(cash.flows(), first, last + 1).sum();
    return List.of(sold, paid, net - sold - paid, net);
  }
}
