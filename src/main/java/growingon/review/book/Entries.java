package growingon.review.book;

import growingon.money.CostKind;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Papers;
import growingon.nursery.lot.Purchase;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.problem.Problem;
import growingon.problem.advice.DaybookAdvice;
import growingon.project.known.MonthFacts.Way;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a line of the daybook enters into the books of lots. */
final class Entries {
  /** Fewer plants than this are the dust of dividing. */
  static final double DUST = 1e-6;

  /** Plants that were lost for such a reason did not die. */
  private static final String STOLEN = "stolen";

  /** An invoice within such a share of the price of its plants may be without their carriage. */
  private static final double NEAR_PLANTS_ALONE = 0.05;

  private final Map<String, Book> books;
  private final Map<String, Integer> firstArrival;
  private final List<Problem> faults;
  private final Map<String, DaybookLine> firstInvoice = new LinkedHashMap<>();
  private int joins;

  /**
   * Entries into some books.
   *
   * @param books by lot; a lot that is split off is added
   * @param firstArrival month in which the first plants of a lot came
   * @param faults what is wrong is added
   */
  Entries(Map<String, Book> books, Map<String, Integer> firstArrival, List<Problem> faults) {
    this.books = books;
    this.firstArrival = firstArrival;
    this.faults = faults;
  }

  /** Of the first line of each lot that says what its plants cost. */
  void checkInvoices() {
    firstInvoice.forEach(this::checkInvoice);
  }

  /** An amount that is about the price of the plants may be without their carriage. */
  private void checkInvoice(String lot, DaybookLine line) {
    Book book = books.get(lot);
    Optional<Purchase> planned = Optional.ofNullable(book).flatMap(each -> each.lot.purchase());
    if (planned.isEmpty() || book.spending.saysCarriage()) {
      return;
    }
    double plants = planned.get().unitPrice() * line.quantity().orElseThrow();
    double charges = planned.get().carriage() + planned.get().importCharges();
    double amount = line.amount().orElseThrow();
    boolean isNearPlants = Math.abs(amount - plants) <= NEAR_PLANTS_ALONE * plants;
    if (isNearPlants && Math.abs(amount - plants) < Math.abs(amount - plants - charges)) {
      faults.add(
          DaybookAdvice.invoiceWithoutCarriage(
              line.where().column("amount"), line.lot(), amount, charges));
    }
  }

  /** What happens to plants of a lot and leads to no other lot. */
  void happen(Book book, DaybookLine line, int month) {
    switch (line.what()) {
      case ARRIVED -> arrive(book, line, month);
      case RETURNED -> comeBack(book, line, month);
      case FOUND -> {
        book.note(Tally.Of.FOUND, line.quantity().orElseThrow());
        book.come(line, month, line.quantity().orElseThrow());
      }
      case DIED -> {
        noteDead(book, line, month);
        noteGone(book, Tally.Of.DIED, line);
        go(book, line, month, Way.DIED);
      }
      case CULLED -> {
        noteGone(book, Tally.Of.CULLED, line);
        go(book, line, month, Way.CULLED);
      }
      case LOST -> lose(book, line, month);
      case SOLD -> {
        noteLeaving(book, Tally.Of.SOLD, line, month);
        book.leave(line, month, true, line.amount());
      }
      case USED -> {
        noteLeaving(book, Tally.Of.USED, line, month);
        book.leave(line, month, false, OptionalDouble.empty());
      }
      default -> book.note();
    }
  }

  private void noteLeaving(Book book, Tally.Of of, DaybookLine line, int month) {
    checkAlive(book, line);
    noteLeft(book, month, of, line);
    book.note(Tally.Of.MONEY, month >= 0 ? line.amount().orElse(0) : 0);
  }

  private void lose(Book book, DaybookLine line, int month) {
    if (!line.reason().strip().toLowerCase(Locale.ROOT).startsWith(STOLEN)) {
      noteDead(book, line, month);
    } else if (month >= 0) {
      book.stolen += Math.min(line.quantity().orElseThrow(), book.alive);
    }
    noteGone(book, Tally.Of.LOST, line);
    go(book, line, month, Way.WENT);
  }

  private static void noteGone(Book book, Tally.Of of, DaybookLine line) {
    book.note(of, Math.min(line.quantity().orElseThrow(), book.alive));
  }

  /** Of what left before the plan only the number alive is known. */
  private static void noteLeft(Book book, int month, Tally.Of of, DaybookLine line) {
    double plants = line.quantity().orElseThrow();
    noteGone(book, month >= 0 ? of : Tally.Of.DIED, line);
    double found = month >= 0 ? Math.max(0, plants - book.alive) : 0;
    book.note(of, found);
    book.note(Tally.Of.FOUND, found);
  }

  private static void noteDead(Book book, DaybookLine line, int month) {
    book.noteDead(month, Math.min(line.quantity().orElseThrow(), book.alive));
  }

  private void comeBack(Book book, DaybookLine line, int month) {
    double plants = line.quantity().orElseThrow();
    if (month >= 0) {
      book.returned += plants;
      book.note(Tally.Of.MONEY, -line.amount().orElse(0));
      book.spending.takeBack(
          new CameBack(month, line.grade(), line.quality(), plants, line.amount().orElse(0)));
      if (line.amount().isEmpty()) {
        faults.add(DaybookAdvice.returnedWithoutRefund(line.where(), line.lot(), plants));
      }
    }
    book.note(Tally.Of.RETURNED, plants);
    book.come(line, month, plants);
  }

  /** Whether plants that came in a month are those that a lot begins with, rather than more. */
  boolean isBase(Book book, int month) {
    return book.splitFrom.isEmpty()
        && book.lot.purchase().isPresent()
        && firstArrival.get(book.lot.name()) == month;
  }

  private void arrive(Book book, DaybookLine line, int month) {
    line.amount().ifPresent(amount -> firstInvoice.putIfAbsent(line.lot(), line));
    if (isBase(book, month)) {
      book.note();
    } else {
      book.arrivedLater += month >= 0 ? line.quantity().orElseThrow() : 0;
      book.noteJoined(month, line.quantity().orElseThrow());
      book.note(Tally.Of.ARRIVED, line.quantity().orElseThrow());
      book.come(line, month, line.quantity().orElseThrow());
    }
  }

  private void go(Book book, DaybookLine line, int month, Way way) {
    checkAlive(book, line);
    book.go(line, month, way, line.quantity().orElseThrow());
  }

  private void checkAlive(Book book, DaybookLine line) {
    double plants = line.quantity().orElseThrow();
    if (plants > book.alive + DUST) {
      faults.add(
          DaybookAdvice.moreThanAlive(
              line.where(),
              plants,
              line.lot(),
              verb(line.what()),
              book.alive,
              book.rows(),
              book.lastRows()));
    }
  }

  private static String verb(What what) {
    return switch (what) {
      case DIED -> "died";
      case USED, LOST, CULLED, SOLD -> "are " + what;
      default -> "go to another lot";
    };
  }

  void toOtherLot(Book from, DaybookLine line, int month) {
    if (line.quantity().isEmpty()) {
      from.note();
      return;
    }
    checkAlive(from, line);
    double plants = Math.min(line.quantity().getAsDouble(), from.alive);
    double share = from.alive > 0 ? plants / from.alive : 0;
    from.noteSplit(line, month);
    Book to = books.get(line.toLot().get());
    if (to == null) {
      Book child = from.splitOff(from.lot.as(line.toLot().get(), papers(from.lot)), share);
      books.put(child.lot.name(), child);
      from.noteBooked(Tally.Of.SPLIT_OUT, plants);
      child.noteBooked(Tally.Of.SPLIT_IN, plants);
    } else {
      join(from, to, line, month, share, plants);
    }
  }

  private static Papers papers(Lot from) {
    Papers own = from.papers();
    return new Papers(own.supplier(), own.passport(), own.origin(), from.name(), "");
  }

  private void join(Book from, Book to, DaybookLine line, int month, double share, double plants) {
    from.note(Tally.Of.SPLIT_OUT, plants);
    to.note(Tally.Of.SPLIT_IN, plants);
    from.go(line, month, Way.WENT, plants);
    to.come(line, month, plants);
    to.noteJoined(month, plants);
    if (month >= 0) {
      from.splitOut += plants;
      to.splitIn += plants;
      Book.Join join = new Book.Join(joins++, month, share);
      from.joinsOut.put(join, 1.0);
      to.joinsIn.put(join, 1.0);
    }
  }

  static void bookMoney(Book book, DaybookLine line, int month) {
    line.hours().ifPresent(hours -> book.spending.work(JobKind.of(line), month, hours));
    if (line.amount().isEmpty()) {
      return;
    }
    double amount = line.amount().getAsDouble();
    switch (line.what()) {
      case SOLD, RETURNED -> {
        // Booked with the plants.
      }
      case USED -> book.spending.receive(month, amount);
      case ARRIVED -> book.spending.spend(CostKind.PLANTS, month, amount);
      default -> book.spending.spend(CostKind.named(line.reason()), month, amount);
    }
  }
}
