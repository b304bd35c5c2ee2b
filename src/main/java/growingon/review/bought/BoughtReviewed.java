package growingon.review.bought;

import growingon.money.CostKind;
import growingon.money.Finance;
import growingon.money.ListPrices;
import growingon.nursery.Nursery;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Quality;
import growingon.nursery.time.Horizon;
import growingon.project.history.GradedPlants;
import growingon.project.history.MonthStock;
import growingon.project.history.Sale;
import growingon.project.lot.LotHistory;
import growingon.review.book.GonePriced;
import growingon.review.book.LotMoney;
import growingon.review.book.Standing;
import growingon.review.book.Standing.OfLot;
import growingon.review.bought.BoughtReview.Payback;
import growingon.review.bought.BoughtReview.ToBeEven;
import growingon.review.kept.Expected;
import growingon.review.kept.KeptSale;
import growingon.review.kept.Range;
import growingon.whole.Shares;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Whether bought lots paid. */
public final class BoughtReviewed {
  private static final double HALF_A_PLANT = 0.5;
  private static final double NIL = 1e-9;

  private final Standing standing;
  private final Ahead ahead;
  private final Expected expected;
  private final Horizon horizon;
  private final Nursery nursery;
  private final int through;
  private final List<GonePriced> gone;

  /**
   * Looks at bought lots.
   *
   * @param gone plants of which no line says what became of them
   */
  public BoughtReviewed(Standing standing, Expected expected, Ahead ahead, List<GonePriced> gone) {
    this.gone = gone;
    this.standing = standing;
    this.ahead = ahead;
    this.expected = expected;
    this.horizon = standing.projection().horizon();
    this.nursery = standing.projection().scenario().nursery();
    this.through = standing.through();
  }

  /** Every lot bought within the plan that has come, in the order of the plan. */
  public List<BoughtReview> bought() {
    Map<String, List<OfLot>> families = new LinkedHashMap<>();
    for (OfLot lot : standing.lots()) {
      families.computeIfAbsent(lot.book().root, root -> new ArrayList<>()).add(lot);
    }
    List<List<OfLot>> come = families.values().stream().filter(this::hasCome).toList();
    if (come.isEmpty()) {
      return List.of();
    }
    GrownAsMeasured grown = new GrownAsMeasured(standing, expected, come);
    return come.stream().map(family -> bought(family, grown)).toList();
  }

  private boolean hasCome(List<OfLot> family) {
    Lot lot = family.get(0).book().lot;
    return lot.purchase().isPresent()
        && lot.quantity() > 0
        && horizon.offset(lot.arrived()) <= through;
  }

  private BoughtReview bought(List<OfLot> family, GrownAsMeasured grown) {
    Lot lot = family.get(0).book().lot;
    double[] flows = flows(family);
    double[] plannedFlows = plannedFlows(lot.name());
    Outlook outlook = outlook(family, flows);
    BoughtReview.Missing missing = missing(lot.name());
    return BoughtReview.of(
            lot,
            payback(flows, plannedFlows),
            outlook.verdict(missing, horizon),
            new BoughtReview.Money(
                runningSum(plannedFlows), runningSum(flows), plannedRange(lot.name())))
        .parts(family.stream().map(OfLot::name).toList())
        .isSeen(lot.quality().sure() >= 1)
        .landed(landed(family))
        .cashSoFar(cashSoFar(family))
        .resultSoFar(outlook.soFar())
        .resultToCome(outlook.toCome())
        .salesToCome(outlook.salesToCome())
        .standing(outlook.stands())
        .unitsToCome(outlook.unitsToCome())
        .wholeStanding(outlook.wholeStands())
        .wholeToCome(outlook.wholeToCome())
        .unsoldAtList(outlook.unsoldAtList())
        .likely(likely(family, outlook.soFar()))
        .planned(Arrays.stream(plannedFlows).sum())
        .toBeEven(toBeEven(outlook, family))
        .steps(Causes.steps(planned(lot.name()), real(family), grown.of(family), missing.plants()))
        .missing(missing)
        .build();
  }

  /**
   * P10 to P90 of its result over the whole plan, from what is there on. Of a lot without a line it
   * is the plan's own.
   */
  private Optional<Range> likely(List<OfLot> family, double soFar) {
    if (family.stream().noneMatch(lot -> lot.book().isRecorded)) {
      return expected
          .lot(family.get(0).book().root)
          .flatMap(kept -> expected.range(kept.chances().result(), horizon.months() - 1));
    }
    List<Integer> indexes = family.stream().map(standing.lots()::indexOf).toList();
    return ahead.resultToCome(indexes).map(range -> range.plus(soFar));
  }

  /** A range for each month of the plan, empty unless the kept plan has one for all of them. */
  private List<Range> plannedRange(String lot) {
    return expected
        .lot(lot)
        .map(
            kept ->
                IntStream.range(0, horizon.months())
                    .mapToObj(month -> expected.range(kept.chances().result(), month))
                    .flatMap(Optional::stream)
                    .toList())
        .filter(ranges -> ranges.size() == horizon.months())
        .orElse(List.of());
  }

  private Outlook outlook(List<OfLot> family, double[] flows) {
    double soFar = LotMoney.upTo(flows, through);
    List<Sale> toCome =
        family.stream()
            .flatMap(lot -> lot.history().sales().stream())
            .filter(sale -> sale.month() > through)
            .toList();
    double unsold = 0;
    double stands = 0;
    long wholeStands = 0;
    long wholeToCome = 0;
    for (OfLot each : family) {
      unsold += standing.accounts().lot(each.name()).unsoldAtList();
      stands += saleable(each.history());
      wholeStands += wholeSaleable(each);
      wholeToCome += each.whole().sold() - each.whole().soldUpTo(through);
    }
    return new Outlook(
        soFar,
        Arrays.stream(flows).sum() - soFar,
        sum(toCome, Sale::money),
        sum(toCome, Sale::units),
        unsold,
        stands,
        wholeStands,
        wholeToCome,
        isYoung(family),
        toCome.stream().mapToInt(Sale::month).max().orElse(-1));
  }

  /** Added up one after another, as the months of the lots are. */
  private static double sum(List<Sale> sales, ToDoubleFunction<Sale> figure) {
    double sum = 0;
    for (Sale sale : sales) {
      sum += figure.applyAsDouble(sale);
    }
    return sum;
  }

  private double[] flows(List<OfLot> family) {
    double[] flows = new double[horizon.months()];
    for (OfLot lot : family) {
      for (int month = 0; month < flows.length; month++) {
        flows[month] += lot.money().result(month);
      }
    }
    return flows;
  }

  private double[] plannedFlows(String lot) {
    double[] flows = new double[horizon.months()];
    expected
        .lot(lot)
        .ifPresent(
            kept -> {
              for (int month = 0; month < flows.length; month++) {
                flows[month] =
                    expected.at(kept.result(), month)
                        - (month == 0 ? 0 : expected.at(kept.result(), month - 1));
              }
            });
    return flows;
  }

  private static List<Double> runningSum(double[] flows) {
    List<Double> sums = new ArrayList<>();
    double sum = 0;
    for (double flow : flows) {
      sum += flow;
      sums.add(sum);
    }
    return sums;
  }

  /** Plants alive now that are not kept. */
  private double saleable(LotHistory history) {
    MonthStock now = history.monthStock(through);
    return history.standing(through) - now.standing().kept();
  }

  /** Whether some of what stands and may be sold has no grade yet. */
  private boolean isYoung(List<OfLot> family) {
    double ungraded = 0;
    for (OfLot lot : family) {
      ungraded += lot.history().monthStock(through).standing().ofGrade(GradedPlants.NO_GRADE);
    }
    return ungraded > HALF_A_PLANT;
  }

  private long wholeSaleable(OfLot lot) {
    double kept = lot.history().monthStock(through).standing().kept();
    int alive = lot.whole().standing(through);
    return Shares.of(alive, kept, saleable(lot.history()))[1];
  }

  private static double landed(List<OfLot> family) {
    double landed = 0;
    for (OfLot lot : family) {
      int last = lot.money().months() - 1;
      landed +=
          lot.money().costUpTo(CostKind.PLANTS, last)
              + lot.money().costUpTo(CostKind.CARRIAGE, last);
    }
    return landed;
  }

  private double cashSoFar(List<OfLot> family) {
    Settings settings = nursery.settings();
    double cash = 0;
    for (OfLot lot : family) {
      double labour = lot.money().costUpTo(CostKind.LABOUR, through);
      cash +=
          LotMoney.upTo(lot.money().sales, through)
              - lot.money().costsUpTo(through)
              + labour * (1 - settings.paidShare())
              + lot.money().costUpTo(CostKind.PLACE, through);
    }
    return cash;
  }

  private Payback payback(double[] flows, double[] plannedFlows) {
    OptionalInt month = Finance.payback(flows);
    Payback.State state = Payback.State.NEVER;
    if (month.isPresent()) {
      state = month.getAsInt() <= through ? Payback.State.REACHED : Payback.State.EXPECTED;
    }
    boolean isPlanned = Arrays.stream(plannedFlows).anyMatch(flow -> flow != 0);
    return new Payback(
        state, named(month), isPlanned ? named(Finance.payback(plannedFlows)) : Optional.empty());
  }

  private Optional<YearMonth> named(OptionalInt month) {
    return month.isPresent() ? Optional.of(horizon.month(month.getAsInt())) : Optional.empty();
  }

  private Optional<ToBeEven> toBeEven(Outlook outlook, List<OfLot> family) {
    double price =
        outlook.unitsToCome() > NIL
            ? outlook.salesToCome() / outlook.unitsToCome()
            : listPrice(family);
    double missing = outlook.costsToCome() - outlook.soFar();
    if (outlook.soFar() >= 0 || missing <= 0 || price <= 0 || outlook.wholeStands() == 0) {
      return Optional.empty();
    }
    double plants = Math.ceil(missing / price - NIL);
    return Optional.of(
        new ToBeEven(
            (int) Math.min(Integer.MAX_VALUE, plants), price, plants <= outlook.wholeStands()));
  }

  /** Mean list price of what stands now and has one; else of the lowest grade that has one. */
  private double listPrice(List<OfLot> family) {
    ListPrices prices = new ListPrices(nursery);
    double plants = 0;
    double money = 0;
    double lowest = 0;
    for (OfLot lot : family) {
      MonthStock now = lot.history().monthStock(through);
      for (int grade = lot.history().grades().size() - 1; grade >= 0; grade--) {
        double price =
            prices.of(lot.book().lot, lot.history().grades().get(grade).name()).orElse(0);
        lowest = price > 0 ? price : lowest;
        for (Quality quality : Quality.values()) {
          double share = nursery.qualities().get(quality).priceShare();
          double ofCell = now.standing().of(quality, grade);
          plants += price * share > 0 ? ofCell : 0;
          money += ofCell * price * share;
        }
      }
    }
    return plants > HALF_A_PLANT ? money / plants : lowest;
  }

  /** Plants of a lot, and of those split off, of which no line says what became of them. */
  private BoughtReview.Missing missing(String root) {
    List<GonePriced> own = gone.stream().filter(each -> each.root().equals(root)).toList();
    return new BoughtReview.Missing(
        own.stream().mapToDouble(each -> each.gone().plants()).sum(),
        own.stream().mapToDouble(GonePriced::worth).sum());
  }

  private Trading planned(String lot) {
    int last = horizon.months() - 1;
    return expected
        .lot(lot)
        .map(
            kept -> {
              double hours = expected.costUpTo(kept, CostKind.LABOUR, last);
              double sales = expected.salesUpTo(kept, last);
              double result = expected.at(kept.result(), last);
              List<KeptSale> within =
                  kept.sales().stream().filter(sale -> expected.isWithin(sale, last)).toList();
              double living = expected.unitsUpTo(kept, last) + expected.at(kept.living(), last);
              return Trading.of(sales - result - hours, hours, living, within);
            })
        .orElseGet(() -> Trading.of(0, 0, 0, List.of()));
  }

  private Trading real(List<OfLot> family) {
    int last = horizon.months() - 1;
    double hours = 0;
    double result = 0;
    double living = 0;
    List<KeptSale> sales = new ArrayList<>();
    for (OfLot lot : family) {
      hours += lot.money().costUpTo(CostKind.LABOUR, last);
      result += LotMoney.upTo(lot.money().sales, last) - lot.money().costsUpTo(last);
      living += lot.history().standing(last);
      sales.addAll(lot.netSales());
    }
    double money = sales.stream().mapToDouble(KeptSale::money).sum();
    double sold = sales.stream().mapToDouble(KeptSale::units).sum();
    return Trading.of(money - result - hours, hours, living + sold, sales);
  }
}
