package growingon.review;

import growingon.nursery.Inputs;
import growingon.nursery.record.PastRecords;
import growingon.problem.Problem;
import growingon.problem.Severity;
import growingon.review.book.GonePriced;
import growingon.review.book.Loss;
import growingon.review.book.Suspicion;
import growingon.review.book.Trace;
import growingon.review.bought.BoughtReview;
import growingon.review.bought.GambleKind;
import growingon.review.kept.AcrossDraws;
import growingon.review.kept.KeptPlan;
import growingon.review.written.SharedReceipt;
import growingon.review.written.WrittenDown;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/**
 * What really happened against the plan.
 *
 * @param today the month of which it was asked
 * @param firstMonth first month of the plan
 * @param through the daybook's last month within the plan: all figures are those of its end; the
 *     month before the plan if the daybook says nothing within it
 * @param lastDate the last day that the daybook speaks of; empty if it says nothing
 * @param keptName name of the kept plan that it is compared with; empty if there is none and the
 *     plan is used as the files give it now
 * @param sources what it rests on
 * @param lots each lot, those split off by the daybook after the one they came from
 * @param nursery all lots together
 * @param ofNoLot what no lot cost, of which the accounts of lots know nothing
 * @param bought each lot bought within the plan that has come by the end of {@code through}
 * @param withoutAPrice lots new on a list, of which no offer says what was paid: no verdict is
 *     given
 * @param kinds how the bought lots came out by supplier, species, and seen or unseen
 * @param judged figures held against the kept plan's draws: luck, or more than luck
 * @param insideByLuck how many of them luck alone puts inside, by the kept plan's draws; empty
 *     where these do not say it
 * @param losses losses by reason and lot, largest first
 * @param suspicions lines that may have to be notified, by date
 * @param traces where the plants of each passport are
 * @param gone plants that counts did not find and of which no line says what became of them
 * @param receipts what each receipt was taken for, in order of time
 * @param faults what is wrong in the records, each with its row
 */
public record Review(
    YearMonth today,
    YearMonth firstMonth,
    YearMonth through,
    Optional<LocalDate> lastDate,
    Optional<String> keptName,
    Sources sources,
    List<LotReview> lots,
    Together nursery,
    OfNoLot ofNoLot,
    List<BoughtReview> bought,
    List<String> withoutAPrice,
    List<GambleKind> kinds,
    List<Judged> judged,
    Optional<AcrossDraws.Inside> insideByLuck,
    List<Loss> losses,
    List<Suspicion> suspicions,
    List<Trace> traces,
    List<GonePriced> gone,
    List<SharedReceipt> receipts,
    List<Problem> faults) {
  /**
   * What a review rests on.
   *
   * @param lines lines of the daybook up to then
   * @param counts counts among them
   * @param lists months of the stock lists: the first is what the plan begins with, the others are
   *     counts; at most one where nobody kept a later one
   * @param receipts rows of receipts
   */
  public record Sources(int lines, int counts, List<YearMonth> lists, int receipts) {
    public Sources {
      lists = List.copyOf(lists);
    }

    /** Whether nothing but the daybook speaks. */
    public boolean isDaybookAlone() {
      return lists.size() < 2 && receipts == 0;
    }
  }

  /**
   * All lots together.
   *
   * @param alive plants alive
   * @param unitsSold plants sold up to then
   * @param sales money of sales up to then
   * @param hours hours worked up to then
   * @param costs all costs up to then
   * @param result sales less costs up to then
   */
  public record Together(
      Compared alive,
      Compared unitsSold,
      Compared sales,
      Compared hours,
      Compared costs,
      Compared result) {}

  /**
   * What was spent on no lot, but on the whole nursery, up to the daybook's last month.
   *
   * @param cost money and all hours at the hourly rate; planned is the other cash of no lot
   * @param hours hours by the daybook
   */
  public record OfNoLot(Compared cost, double hours) {}

  /** Whether there is anything to look back on: a line, a later stock list or a receipt. */
  public static boolean canLookBack(Inputs inputs, PastRecords past, YearMonth today) {
    return !inputs.daybook().isEmpty()
        || !past.receipts().isEmpty()
        || WrittenDown.of(inputs, past, today).listMonths().size() > 1;
  }

  /**
   * Reviews a plan.
   *
   * @param inputs the plan with its daybook
   * @param today the month of which it is asked; nothing of later months is known in it
   * @param kept the plan as it was kept; if there is none, the plan is taken as the inputs give it
   * @return what happened, and what is wrong in the records
   */
  public static Review of(Inputs inputs, YearMonth today, Optional<KeptPlan> kept) {
    return of(inputs, today, kept, 1);
  }

  /**
   * The same on so many threads; their number changes nothing but the time.
   *
   * @param threads how many threads draw what may still happen
   */
  public static Review of(Inputs inputs, YearMonth today, Optional<KeptPlan> kept, int threads) {
    return of(inputs, PastRecords.NONE, today, kept, threads);
  }

  /**
   * The same with what is written down beside the daybook: stock lists of different months, of
   * which each after the one that the plan begins with is a count, and receipts.
   */
  public static Review of(
      Inputs inputs, PastRecords past, YearMonth today, Optional<KeptPlan> kept, int threads) {
    return new Reviewing(inputs, past, today, kept, threads).review();
  }

  /** Money of receipts that fit no lot; the plan had none. */
  public Compared receiptsOfNoLot() {
    return new Compared(0, WrittenDown.ofNoLot(receipts), true, Optional.empty());
  }

  /** What the whole nursery pays beside its lots, less what it takes beside them. */
  public Compared costsOfNoLotLessReceipts() {
    return ofNoLot.cost().less(receiptsOfNoLot());
  }

  /** What is to be put right; what is alike once, without the notices of each row. */
  public List<Problem> asked() {
    return faults.stream().filter(each -> each.severity() != Severity.NOTICE).toList();
  }

  public Review {
    lots = List.copyOf(lots);
    bought = List.copyOf(bought);
    withoutAPrice = List.copyOf(withoutAPrice);
    kinds = List.copyOf(kinds);
    judged = List.copyOf(judged);
    losses = List.copyOf(losses);
    suspicions = List.copyOf(suspicions);
    traces = List.copyOf(traces);
    gone = List.copyOf(gone);
    receipts = List.copyOf(receipts);
    faults = List.copyOf(faults);
  }
}
