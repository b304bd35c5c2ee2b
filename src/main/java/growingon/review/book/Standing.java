package growingon.review.book;

import growingon.money.Accounts;
import growingon.nursery.Settings;
import growingon.project.Projection;
import growingon.project.history.Stood;
import growingon.project.lot.LotHistory;
import growingon.review.kept.KeptSale;
import growingon.whole.WholeLot;
import growingon.whole.WholePlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What is there: the lots as the daybook leaves them, projected on, and their money, in which what
 * the daybook says has taken the place of what was reckoned.
 */
public final class Standing {
  private final Bookkeeping daybook;
  private final Accounts accounts;
  private final List<OfLot> lots = new ArrayList<>();
  private final Map<String, OfLot> byName = new HashMap<>();

  /**
   * A lot.
   *
   * @param book what the daybook says
   * @param history what happened and will
   * @param whole the same in whole plants
   * @param money what it takes and brings
   */
  public record OfLot(
      Book book, LotHistory history, WholeLot whole, LotMoney money, double[] spentBefore) {
    public String name() {
      return book.lot.name();
    }

    /** Where it stands at the end of a month; nowhere without a place or when none is left. */
    public Optional<String> place(int month) {
      Stood stood = history.stood(Math.max(0, month));
      boolean isThere = stood != null && wholeAlive(month) > 0;
      return isThere ? stood.place() : Optional.empty();
    }

    /** Plants alive at the end of a month; as the plan begins for the month before it. */
    public double alive(int month) {
      double atStart = book.lot.purchase().isPresent() ? 0 : history.standingAtStart();
      return month < 0 ? atStart : history.standing(month);
    }

    /** Whole plants alive at the end of a month. */
    public int wholeAlive(int month) {
      int atStart = book.lot.purchase().isPresent() ? 0 : whole.standingAtStart();
      return month < 0 ? atStart : whole.standing(month);
    }

    /** What it sells over the whole plan, less what came back. */
    public List<KeptSale> netSales() {
      List<KeptSale> sales = KeptSale.of(history);
      for (CameBack back : book.spending.cameBack()) {
        sales = back.off(sales);
      }
      return sales;
    }

    /** All that was spent on it up to the end of a month, before the plan too. */
    public double costToDate(int month) {
      return spentBefore[0] + money.costsUpTo(month);
    }
  }

  public Standing(Bookkeeping daybook, Accounts accounts) {
    this.daybook = daybook;
    this.accounts = accounts;
    Settings settings = projection().scenario().nursery().settings();
    List<Book> books = daybook.inOrder();
    WholePlan plants = WholePlan.of(projection());
    for (int i = 0; i < books.size(); i++) {
      Book book = books.get(i);
      LotHistory history = projection().lots().get(i);
      LotMoney money = LotMoney.of(accounts.lots().get(i).ledger());
      money.correct(book.spending, daybook.through(), settings.hourlyRate(), history);
      double before = book.lot.unitCost() * history.quantity();
      OfLot lot = new OfLot(book, history, plants.lots().get(i), money, new double[] {before});
      lots.add(lot);
      byName.put(lot.name(), lot);
    }
    transferCosts();
  }

  /** Plants that joined another lot take their cost to date along. */
  private void transferCosts() {
    TreeSet<Book.Join> joins = new TreeSet<>(Comparator.comparingInt(Book.Join::number));
    Map<Book.Join, List<OfLot>> from = new HashMap<>();
    Map<Book.Join, List<OfLot>> to = new HashMap<>();
    for (OfLot lot : lots) {
      for (Book.Join join : lot.book().joinsOut.keySet()) {
        joins.add(join);
        from.computeIfAbsent(join, each -> new ArrayList<>()).add(lot);
      }
      for (Book.Join join : lot.book().joinsIn.keySet()) {
        to.computeIfAbsent(join, each -> new ArrayList<>()).add(lot);
      }
    }
    joins.forEach(join -> transfer(join, from.get(join), to.get(join)));
  }

  private static void transfer(Book.Join join, List<OfLot> from, List<OfLot> to) {
    double spent = 0;
    double before = 0;
    for (OfLot lot : from) {
      double part = lot.money().costsUpTo(join.month()) * join.share();
      lot.money().transfer(join.month(), -part);
      spent += part;
      double partBefore = lot.spentBefore()[0] * join.share();
      lot.spentBefore()[0] -= partBefore;
      before += partBefore;
    }
    for (OfLot lot : to) {
      double weight = lot.book().joinsIn.get(join);
      lot.money().transfer(join.month(), spent * weight);
      lot.spentBefore()[0] += before * weight;
    }
  }

  /** What happened, and from there what is expected. */
  public Projection projection() {
    return accounts.projection();
  }

  /** Its accounts, with the money that was really spent and taken. */
  public Accounts accounts() {
    return accounts;
  }

  /** One for each lot, in the order of the plan. */
  public List<OfLot> lots() {
    return lots;
  }

  Map<String, OfLot> byName() {
    return byName;
  }

  /** Offset of the daybook's last month within the plan, −1 for none. */
  public int through() {
    return daybook.through();
  }
}
