package growingon.review;

import growingon.nursery.lot.Lot;
import growingon.nursery.market.Quality;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.review.book.Bookkeeping;
import growingon.review.book.Standing;
import growingon.review.book.Standing.OfLot;
import growingon.review.kept.AcrossDraws;
import growingon.review.kept.Expected;
import growingon.review.kept.KeptJudged;
import growingon.review.kept.KeptJudging;
import growingon.review.kept.KeptLot;
import growingon.review.kept.KeptSale;
import growingon.review.kept.KeptSpan;
import growingon.review.kept.KeptWithin;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Tells luck from more than luck, by figures that the grower's own sales do not change: deaths,
 * growth of what was measured, and price. Plants alive and sold are no such figures.
 */
final class LuckOrMore {
  /** Over a shorter time a trunk tells more of the measuring than of growth. */
  private static final int MONTHS_OF_GROWTH = 6;

  /** A trunk that was to grow less tells nothing. */
  private static final double LEAST_GROWTH_MM = 0.5;

  private final Bookkeeping daybook;
  private final Standing standing;
  private final Expected expected;
  private final Projection asPlanned;
  private final Horizon horizon;
  private final int through;
  private final List<LotReview> lots;
  private final Map<String, Priced> prices = new HashMap<>();

  /** Money of sales, and what the same plants cost by the kept plan's list. */
  private record Priced(double money, double atList) {
    Priced plus(Priced other) {
      return new Priced(money + other.money, atList + other.atList);
    }
  }

  /**
   * Judges.
   *
   * @param asPlanned the same lots from what is there, but grown as planned after the first
   *     measuring
   * @param lots the lots as reviewed, in the order of {@code standing}
   */
  LuckOrMore(
      Bookkeeping daybook,
      Standing standing,
      Expected expected,
      Projection asPlanned,
      List<LotReview> lots) {
    this.daybook = daybook;
    this.standing = standing;
    this.expected = expected;
    this.asPlanned = asPlanned;
    this.horizon = standing.projection().horizon();
    this.through = standing.through();
    this.lots = lots;
    daybook.lines().forEach(this::notePrice);
  }

  /**
   * All figures that can be judged, and what luck makes of them.
   *
   * @param judged lot by lot, deaths first
   * @param insideByLuck how many of them luck alone puts inside, of the draws as they are good or
   *     bad together; empty where the kept plan does not say it of each
   */
  record All(List<Judged> judged, Optional<AcrossDraws.Inside> insideByLuck) {
    static final All NONE = new All(List.of(), Optional.empty());
  }

  /** A figure, and which draws had it inside by luck where the kept plan says it. */
  private record Held(Judged judged, Optional<String> within) {}

  All all() {
    Map<String, List<Integer>> families = new LinkedHashMap<>();
    for (int i = 0; i < lots.size(); i++) {
      String root = standing.lots().get(i).book().root;
      families.computeIfAbsent(root, each -> new ArrayList<>()).add(i);
    }
    List<Held> held = new ArrayList<>();
    families.forEach((root, members) -> judge(root, members, held));
    return new All(held.stream().map(Held::judged).toList(), insideByLuck(held));
  }

  private Optional<AcrossDraws.Inside> insideByLuck(List<Held> held) {
    List<String> within = held.stream().flatMap(each -> each.within().stream()).toList();
    return held.isEmpty() || within.size() < held.size()
        ? Optional.empty()
        : AcrossDraws.count(within, expected.kept().draws());
  }

  private void judge(String root, List<Integer> members, List<Held> judged) {
    Optional<KeptLot> kept = expected.lot(root);
    Optional<KeptJudging> judging = kept.flatMap(KeptLot::judging);
    if (judging.isEmpty()) {
      return;
    }
    deaths(kept.get(), judging.get(), members).ifPresent(judged::add);
    members.forEach(each -> growth(kept.get(), judging.get(), each).ifPresent(judged::add));
    price(root, judging.get()).ifPresent(judged::add);
  }

  /** Deaths of a lot that the daybook says of, and that no plants of another lot joined. */
  private Optional<Held> deaths(KeptLot kept, KeptJudging judging, List<Integer> members) {
    double real = 0;
    boolean isSaid = true;
    for (int index : members) {
      OfLot lot = standing.lots().get(index);
      Whereabouts went = lots.get(index).balance();
      isSaid &= lot.book().saysDeaths() && lot.book().splitIn == 0 && lot.book().splitOut == 0;
      isSaid &= lot.book().arrivedLater == 0;
      real += went.died() + went.lost() - lot.book().stolen - went.found();
    }
    double came = standing.lots().get(members.get(0)).book().lot.quantity();
    if (!isSaid || kept.quantity() == 0) {
      return Optional.empty();
    }
    double scale = came / kept.quantity();
    double planned = expected.at(judging.died(), through) * scale;
    return judged(
        kept.name(),
        Judged.What.DEATHS,
        planned,
        Math.max(0, real),
        judging,
        figures -> expected.span(figures.deaths(), through).map(span -> span.times(scale)),
        figures -> expected.text(figures.deaths(), through));
  }

  private Optional<Held> growth(KeptLot kept, KeptJudging judging, int index) {
    OfLot lot = standing.lots().get(index);
    int start = start(lot.book().lot, horizon);
    int last = lot.book().trunks().keySet().stream().mapToInt(month -> month).max().orElse(-1);
    double before = expected.at(kept.trunkMm(), start);
    double line = expected.at(kept.trunkMm(), last) - before;
    double real = lot.history().monthStock(Math.max(0, last)).meanTrunkMm();
    double planned = asPlanned.lots().get(index).monthStock(Math.max(0, last)).meanTrunkMm();
    double grown = planned - asPlanned.lots().get(index).monthStock(start).meanTrunkMm();
    boolean tells = line >= LEAST_GROWTH_MM && grown >= LEAST_GROWTH_MM && real > 0;
    if (last - start < MONTHS_OF_GROWTH || !tells) {
      return Optional.empty();
    }
    return judged(
        lot.name(),
        Judged.What.GROWTH,
        grown,
        real - planned + grown,
        judging,
        figures ->
            expected
                .span(figures.trunkMm(), last)
                .map(span -> less(span, before).times(grown / line)),
        figures -> expected.text(figures.trunkMm(), last));
  }

  private static KeptSpan.At less(KeptSpan.At span, double before) {
    return new KeptSpan.At(span.p10() - before, span.p90() - before, span.outside());
  }

  /** The month from whose end on a lot grows within the plan. */
  static int start(Lot lot, Horizon horizon) {
    YearMonth counted = lot.counted().isAfter(lot.arrived()) ? lot.counted() : lot.arrived();
    return Math.min(Math.max(0, horizon.offset(counted)), horizon.months() - 1);
  }

  private Optional<Held> price(String root, KeptJudging judging) {
    Priced priced = prices.getOrDefault(root, new Priced(0, 0));
    return priced.atList > 0
        ? judged(
            root,
            Judged.What.PRICE,
            planned(root, judging),
            priced.money / priced.atList,
            judging,
            figures -> expected.span(figures.price(), through),
            figures -> expected.text(figures.price(), through))
        : Optional.empty();
  }

  /** What the plan was to be paid by then, as a share of list price. */
  private double planned(String root, KeptJudging judging) {
    Priced sum = new Priced(0, 0);
    for (KeptSale sale : expected.lot(root).orElseThrow().sales()) {
      Double list = judging.list().get(KeptJudging.key(sale.grade(), sale.quality()));
      if (expected.isWithin(sale, through) && list != null) {
        sum = sum.plus(new Priced(sale.money(), list * sale.units()));
      }
    }
    return sum.atList > 0 ? sum.money / sum.atList : 1;
  }

  private Optional<Held> judged(
      String lot,
      Judged.What what,
      double planned,
      double real,
      KeptJudging judging,
      Function<KeptJudged, Optional<KeptSpan.At>> span,
      Function<KeptWithin, Optional<String>> draws) {
    Optional<KeptSpan.At> luck = judging.luck().flatMap(span);
    Optional<String> within =
        (luck.isPresent() ? judging.luckWithin() : judging.within()).flatMap(draws);
    return span.apply(judging.all())
        .map(all -> new Held(new Judged(lot, what, planned, real, luck, all), within));
  }

  /** A sale tells a price where the line says its money and its grade. */
  private void notePrice(DaybookLine line) {
    boolean isPriced = line.what() == What.SOLD && line.amount().isPresent();
    int month = horizon.offset(YearMonth.from(line.date()));
    if (!isPriced || line.grade().isEmpty() || month < 0 || month > through) {
      return;
    }
    daybook.root(line.lot()).flatMap(root -> list(root, line).map(list -> put(root, line, list)));
  }

  private Optional<Double> list(String root, DaybookLine line) {
    String quality = line.quality().orElse(Quality.FIRST).toString();
    return expected
        .lot(root)
        .flatMap(KeptLot::judging)
        .map(each -> each.list().get(KeptJudging.key(line.grade().orElseThrow(), quality)));
  }

  private Priced put(String root, DaybookLine line, double list) {
    double plants = line.quantity().orElseThrow();
    Priced priced = new Priced(line.amount().orElseThrow(), list * plants);
    return prices.merge(root, priced, Priced::plus);
  }
}
