package growingon.review.written;

import growingon.nursery.Inputs;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Grade;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.nursery.record.DaybookLineBuilder;
import growingon.nursery.record.Receipt;
import growingon.nursery.time.Horizon;
import growingon.problem.Problem;
import growingon.problem.ProblemGroup;
import growingon.problem.advice.ReceiptAdvice;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import growingon.review.book.Bookkeeping;
import growingon.review.written.SharedReceipt.How;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Receipts as lines of the daybook. A receipt that the daybook has as a sale gives it its money,
 * where it has none. One that names a lot is of that lot. Any other is shared out to the oldest
 * lots of its species that had the grade and that can have lost so many plants by the counts. What
 * is left fits no lot.
 */
public final class SharingOut {
  private static final double HALF_A_PLANT = 0.5;
  private static final double NIL = 1e-9;

  /** What a line made of a receipt notes. */
  static final String NOTE = "by a receipt";

  private static final String NOTE_SHARED = "by a receipt, shared out";

  private final Map<String, LotHistory> histories = new LinkedHashMap<>();
  private final Horizon horizon;
  private final Rooms rooms = new Rooms();
  private final Map<Wanted, List<String>> candidates = new HashMap<>();
  private final List<DaybookLine> lines = new ArrayList<>();
  private final List<Sale> sales = new ArrayList<>();
  private final Map<YearMonth, List<Sale>> open = new HashMap<>();
  private final List<Sold> sold = new ArrayList<>();
  private final List<SharedReceipt> shared = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  /** A sale or a return of the daybook, of which receipts may have the money. */
  private static final class Sale {
    final DaybookLine line;
    double plantsLeft;
    double money;
    double plantsPaid;

    Sale(DaybookLine line) {
      this.line = line;
      this.plantsLeft = line.quantity().orElseThrow();
    }
  }

  /** What a receipt asks of a lot. */
  private record Wanted(String species, Optional<String> grade, int month) {}

  /** Plants of a lot that a receipt sold, and that may come back. */
  private static final class Sold {
    final Receipt receipt;
    final String lot;
    double plantsLeft;

    Sold(Receipt receipt, String lot, double plants) {
      this.receipt = receipt;
      this.lot = lot;
      this.plantsLeft = plants;
    }
  }

  private SharingOut(Projection projection, Bookkeeping daybook) {
    this.horizon = projection.horizon();
    for (LotHistory history : projection.lots()) {
      Lot lot = history.lot();
      histories.put(lot.name(), history);
      if (daybook.root(lot.name()).equals(Optional.of(lot.name()))) {
        rooms.start(lot.name(), start(lot), lot.quantity());
      }
    }
    for (DaybookLine line : daybook.lines()) {
      rooms.note(line, daybook.isBase(line));
      if (line.what() == What.SOLD || line.what() == What.RETURNED) {
        Sale sale = new Sale(line);
        sales.add(sale);
        open.computeIfAbsent(YearMonth.from(line.date()), each -> new ArrayList<>()).add(sale);
      } else {
        lines.add(line);
      }
    }
  }

  private static LocalDate start(Lot lot) {
    YearMonth month = lot.purchase().isPresent() ? lot.arrived() : lot.counted();
    return month.atDay(1);
  }

  /**
   * Shares receipts out, by what stands if nothing was sold but what is known.
   *
   * @param inputs the plan with its daybook, and with counts of later lists in it
   * @param today nothing of later months is known
   */
  public static SharingOut of(List<Receipt> receipts, Inputs inputs, YearMonth today) {
    Bookkeeping daybook = Bookkeeping.of(inputs, today);
    List<String> lots = daybook.lots().stream().map(Lot::name).toList();
    int last = inputs.scenario().horizon().months() - 1;
    Facts known = daybook.facts().soldOnlyAsKnown(lots, last);
    Projection there = Projector.project(inputs.scenario().withLots(daybook.lots()), known);
    SharingOut sharing = new SharingOut(there, daybook);
    receipts.stream()
        .sorted(Comparator.comparing(Receipt::date).thenComparing(each -> each.where().row()))
        .forEach(sharing::share);
    sharing.sales.forEach(sharing::line);
    return sharing;
  }

  /** The daybook with all sales. */
  public List<DaybookLine> lines() {
    return lines;
  }

  /** What each receipt was taken for, in order of time. */
  public List<SharedReceipt> shared() {
    return shared;
  }

  /** What is to be asked: what fits no lot once, with each row as a notice. */
  public List<Problem> problems() {
    return ProblemGroup.toldOnce(problems);
  }

  private void share(Receipt receipt) {
    if (horizon.offset(receipt.month()) < 0) {
      note(receipt, How.BEFORE, Optional.empty(), receipt.plants(), receipt.amount());
    } else if (receipt.isCreditNote()) {
      takeBack(receipt);
    } else if (receipt.plants() == 0) {
      note(receipt, How.NONE, receipt.lot(), 0, receipt.amount());
    } else {
      sell(receipt);
    }
  }

  private void sell(Receipt receipt) {
    double left = matched(receipt, What.SOLD, receipt.plants());
    if (left > NIL && receipt.lot().isPresent()) {
      book(receipt, How.NAMED, receipt.lot().get(), left);
      return;
    }
    for (String lot : left > NIL ? candidates(receipt) : List.<String>of()) {
      if (left <= NIL) {
        break;
      }
      double plants = Math.min(left, Math.floor(rooms.left(lot, receipt.date()) + NIL));
      if (plants > NIL) {
        book(receipt, How.SHARED, lot, plants);
        left -= plants;
      }
    }
    if (left > NIL) {
      none(receipt, left, "so many of the species did not leave the lots that had the grade");
    }
  }

  /** Plants of a receipt that the daybook does not have. */
  private double matched(Receipt receipt, What what, double plants) {
    double left = plants;
    List<Sale> ofMonth = open.getOrDefault(receipt.month(), List.of());
    for (Sale sale : ofMonth) {
      boolean isSame = sale.line.what() == what && isOf(receipt, sale.line);
      if (left > NIL && sale.plantsLeft > NIL && isSame) {
        double part = Math.min(left, sale.plantsLeft);
        match(receipt, sale, part);
        left -= part;
      }
    }
    if (left < plants) {
      ofMonth.removeIf(sale -> sale.plantsLeft <= NIL);
    }
    return left;
  }

  private boolean isOf(Receipt receipt, DaybookLine line) {
    boolean sameLot =
        receipt.lot().isPresent()
            ? receipt.lot().get().equals(line.lot())
            : receipt.species().isPresent() && receipt.species().equals(species(line.lot()));
    boolean sameGrade =
        receipt.grade().isEmpty() || line.grade().isEmpty() || receipt.grade().equals(line.grade());
    return sameLot && sameGrade;
  }

  private Optional<String> species(String lot) {
    return Optional.ofNullable(histories.get(lot)).map(each -> each.lot().species());
  }

  private void match(Receipt receipt, Sale sale, double plants) {
    double signed = receipt.isCreditNote() ? -plants : plants;
    double amount = amount(receipt, signed);
    sale.plantsLeft -= plants;
    sale.plantsPaid += plants;
    sale.money += Math.abs(amount);
    note(receipt, How.IN_DAYBOOK, Optional.of(sale.line.lot()), signed, amount);
  }

  private static double amount(Receipt receipt, double plants) {
    return receipt.amount() * plants / receipt.plants();
  }

  /** A sale of the daybook: with its own money, else with that of receipts as far as they go. */
  private void line(Sale sale) {
    if (sale.line.amount().isPresent() || sale.plantsPaid < NIL) {
      lines.add(sale.line);
      return;
    }
    DaybookLineBuilder paid = sale.line.with().quantity(OptionalDouble.of(sale.plantsPaid));
    lines.add(paid.amount(OptionalDouble.of(sale.money)).build());
    if (sale.plantsLeft > NIL) {
      // The hours of the sale stand with the part that is paid.
      lines.add(
          sale.line
              .with()
              .quantity(OptionalDouble.of(sale.plantsLeft))
              .hours(OptionalDouble.empty())
              .build());
    }
  }

  /** Lots of the species that had the grade, the oldest first. */
  private List<String> candidates(Receipt receipt) {
    int month = horizon.offset(receipt.month());
    if (receipt.species().isEmpty() || month >= horizon.months()) {
      return List.of();
    }
    return candidates.computeIfAbsent(
        new Wanted(receipt.species().get(), receipt.grade(), month), this::candidates);
  }

  private List<String> candidates(Wanted wanted) {
    return histories.values().stream()
        .filter(each -> each.lot().species().equals(wanted.species()))
        .filter(each -> wanted.grade().map(grade -> had(each, grade, wanted.month())).orElse(true))
        .map(LotHistory::lot)
        .sorted(Comparator.comparing(Lot::arrived).thenComparing(Lot::name))
        .map(Lot::name)
        .toList();
  }

  /** Whether a lot had plants of a grade or a higher one, in a month or just before it. */
  private static boolean had(LotHistory history, String grade, int month) {
    List<String> grades = history.grades().stream().map(Grade::name).toList();
    int lowest = grades.indexOf(grade);
    return lowest >= 0 && (has(history, lowest, month) || has(history, lowest, month - 1));
  }

  private static boolean has(LotHistory history, int lowest, int month) {
    if (month < Math.max(0, history.start())) {
      return false;
    }
    double plants = 0;
    for (int grade = lowest; grade < history.grades().size(); grade++) {
      plants += history.monthStock(month).standing().allOfGrade(grade);
    }
    return plants >= HALF_A_PLANT;
  }

  private void book(Receipt receipt, How how, String lot, double plants) {
    double amount = amount(receipt, plants);
    rooms.take(lot, receipt.date(), plants);
    note(receipt, how, Optional.of(lot), plants, amount);
    sold.add(new Sold(receipt, lot, plants));
    lines.add(line(receipt, how, lot, What.SOLD, plants, amount));
  }

  private static DaybookLine line(
      Receipt receipt, How how, String lot, What what, double plants, double amount) {
    return DaybookLine.of(receipt.date(), lot, what, receipt.where())
        .quantity(OptionalDouble.of(plants))
        .grade(receipt.grade())
        .amount(OptionalDouble.of(amount))
        .note(how == How.NAMED ? NOTE : NOTE_SHARED)
        .build();
  }

  /** Plants go back to the lot that they were last sold from. */
  private void takeBack(Receipt receipt) {
    double left = matched(receipt, What.RETURNED, -receipt.plants());
    if (left > NIL && receipt.lot().isPresent()) {
      comeBack(receipt, How.NAMED, receipt.lot().get(), left);
      return;
    }
    for (int i = sold.size() - 1; i >= 0 && left > NIL; i--) {
      Sold sale = sold.get(i);
      double plants = Math.min(left, sale.plantsLeft);
      if (plants > NIL && isLike(receipt, sale.receipt)) {
        comeBack(receipt, How.SHARED, sale.lot, plants);
        sale.plantsLeft -= plants;
        left -= plants;
      }
    }
    if (left > NIL) {
      none(receipt, -left, "no receipt before it sold so many of them");
    }
  }

  private static boolean isLike(Receipt one, Receipt other) {
    boolean sameGrade =
        one.grade().isEmpty() || other.grade().isEmpty() || one.grade().equals(other.grade());
    return one.species().isPresent() && one.species().equals(other.species()) && sameGrade;
  }

  private void comeBack(Receipt receipt, How how, String lot, double plants) {
    double amount = amount(receipt, -plants);
    rooms.take(lot, receipt.date(), -plants);
    note(receipt, how, Optional.of(lot), -plants, amount);
    lines.add(line(receipt, how, lot, What.RETURNED, plants, -amount));
  }

  private void none(Receipt receipt, double plants, String why) {
    note(receipt, How.NONE, Optional.empty(), plants, amount(receipt, plants));
    if (receipt.species().isPresent()) {
      problems.add(
          ReceiptAdvice.fitsNoLot(
              receipt.where().column("number"), Math.round(Math.abs(plants)), why));
    }
  }

  private void note(Receipt receipt, How how, Optional<String> lot, double plants, double amount) {
    shared.add(new SharedReceipt(receipt, how, lot, plants, amount));
  }
}
