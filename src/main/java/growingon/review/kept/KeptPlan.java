package growingon.review.kept;

import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A plan as it was frozen: what a review compares with. Plain data, to be written to a file and
 * read back as it is; lists by month begin with the first month of the plan and hold a value for
 * each of its months. Money is plan currency without VAT.
 *
 * @param name of the plan
 * @param firstMonth first month, as 2026-11
 * @param seasons number of seasons
 * @param draws number of draws of the quantiles, 0 for none
 * @param seed of the draws
 * @param lots its lots in the order of the scenario
 * @param nursery quantiles of all lots together; every list empty where there were no draws
 * @param bands what lies in its quantiles; empty in older files, where it is luck alone
 * @param offers every offer that could be read then, taken or not
 */
public record KeptPlan(
    String name,
    String firstMonth,
    int seasons,
    int draws,
    long seed,
    List<KeptLot> lots,
    KeptChances nursery,
    Optional<KeptBands> bands,
    List<KeptOffer> offers) {
  private static final Pattern MONTH = Pattern.compile("\\d{4}-(0[1-9]|1[0-2])");
  private static final int MOST_SEASONS = 40;

  public KeptPlan {
    lots = List.copyOf(lots);
    offers = List.copyOf(offers);
    if (!MONTH.matcher(firstMonth).matches()) {
      throw new IllegalArgumentException("first month " + firstMonth);
    }
    if (seasons < 1 || seasons > MOST_SEASONS) {
      throw new IllegalArgumentException("%,d seasons".formatted(seasons));
    }
    lots.forEach(lot -> checkMonths(lot, seasons));
  }

  // The first season may be a part of one: it has a month at least.
  private static void checkMonths(KeptLot lot, int seasons) {
    int months = lot.living().size();
    if (months <= (seasons - 1) * 12 || months > seasons * 12) {
      throw new IllegalArgumentException(
          "%,d months of %s in %d seasons".formatted(months, lot.name(), seasons));
    }
  }

  /** What a plan may be held against at the end of a month. */
  public enum Figure {
    /** Plants alive. */
    PLANTS("plants alive"),
    /** Mean trunk, mm. */
    TRUNK("mean trunk"),
    /** Plants sold up to then. */
    SOLD("plants sold");

    private final String word;

    Figure(String word) {
      this.word = word;
    }

    @Override
    public String toString() {
      return word;
    }
  }

  /** Names of its lots. */
  public List<String> lotNames() {
    return lots.stream().map(KeptLot::name).toList();
  }

  /**
   * What its draws said of a lot at the end of a month; empty without draws, beyond the plan, or
   * where it has no such lot.
   */
  public Optional<Range> foreseen(String lot, Figure figure, YearMonth month) {
    int index = (int) ChronoUnit.MONTHS.between(first(), month);
    return find(lot).map(KeptLot::chances).flatMap(chances -> of(chances, figure).at(index));
  }

  private Optional<KeptLot> find(String lot) {
    return lots.stream().filter(each -> each.name().equals(lot)).findFirst();
  }

  private static KeptQuantiles of(KeptChances chances, Figure figure) {
    return switch (figure) {
      case PLANTS -> chances.living();
      case TRUNK -> chances.trunkMm();
      case SOLD -> chances.unitsSold();
    };
  }

  /**
   * Which of its draws had a figure of a lot from P10 to P90 of the other draws at the end of a
   * month, as in {@link KeptWithin}; empty in older files and beyond the plan.
   */
  public Optional<String> within(String lot, Figure figure, YearMonth month) {
    int index = (int) ChronoUnit.MONTHS.between(first(), month);
    return find(lot)
        .flatMap(KeptLot::judging)
        .flatMap(KeptJudging::within)
        .map(within -> of(within, figure))
        .filter(months -> index >= 0 && index < months.size())
        .map(months -> months.get(index));
  }

  private static List<String> of(KeptWithin within, Figure figure) {
    return switch (figure) {
      case PLANTS -> within.living();
      case TRUNK -> within.trunkMm();
      case SOLD -> within.unitsSold();
    };
  }

  /** Whether its P10 and P90 hold luck alone, as those of older files do. */
  public boolean isOfLuckAlone() {
    return bands.map(each -> each.of().equals(KeptBands.LUCK)).orElse(true);
  }

  /** Plants of a lot that it sells on its line up to the end of a month. */
  public double soldOnTheLine(String lot, YearMonth month) {
    int index = (int) ChronoUnit.MONTHS.between(first(), month);
    return find(lot).stream()
        .flatMap(each -> each.sales().stream())
        .filter(sale -> sale.month() <= index)
        .mapToDouble(KeptSale::units)
        .sum();
  }

  /** Plants that a lot of it starts with. */
  public double quantity(String lot) {
    return find(lot).map(KeptLot::quantity).orElse(0.0);
  }

  /** First month. */
  public YearMonth first() {
    return YearMonth.parse(firstMonth);
  }
}
