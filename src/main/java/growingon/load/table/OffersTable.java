package growingon.load.table;

import growingon.load.cell.As;
import growingon.load.cell.Currency;
import growingon.load.cell.Groups;
import growingon.load.cell.Names;
import growingon.load.cell.Quantities;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.load.cell.Spacings;
import growingon.load.cell.Texts;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.nursery.Form;
import growingon.nursery.Hold;
import growingon.nursery.Lot;
import growingon.nursery.Offer;
import growingon.nursery.Offer.Again;
import growingon.nursery.Offer.PriceBreak;
import growingon.nursery.Papers;
import growingon.nursery.Potting;
import growingon.nursery.QualityShares;
import growingon.nursery.Standing;
import growingon.nursery.Trunks;
import growingon.problem.advice.DefinitionAdvice;
import growingon.problem.advice.PlanAdvice;
import growingon.problem.advice.ValueAdvice;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Lots that can be bought. Several rows with the same offer are price breaks: the first states
 * everything, the others only offer, least and unit price (or the same again).
 *
 * <pre>
 * offer                        name, unique among offers and lots
 * take                         whether it is taken where there is no plan.json [no]
 * quantity                     plants then taken
 * species, form, route         as in stock
 * unit price                   price of a plant from this least quantity upwards, in the currency
 * currency                     of prices and charges [the plan's]
 * least, multiple, most        what can be bought [1, 1, no limit]
 * arrival month                within the plan
 * again                        no, every season, every 2 seasons: an order of its own each time [no]
 * again until                  last month in which it may arrive [end of the plan]
 * carriage, import charges     for the whole order, in the currency [0]
 * trunk mm, trunk spread %     or a size class, as in stock (also "spread %")
 * usual trunk of               as in stock
 * first %, second %            how it is thought to sort [100, 0]
 * quality sure %               how sure that is [100]
 * loss sure %                  how sure its loss is [100]
 * fails %                      chance that it fails as a whole [0]
 * place, gap mm, plants per m2, crown mm, height left mm   as in stock
 * hold to grade, hold share %, hold which, not before                  as in stock
 * apart months, untouched, heeled in per m2                as in stock
 * pot                          it comes in [none]
 * ball kept %                  of its ball at its first potting [as its route says]
 * order by                     month by the end of which it must be ordered [arrival less lead months]
 * supplier, passport, origin, note                         [none]
 * </pre>
 */
public final class OffersTable {
  static final String OFFER = "offer";
  private static final String TAKE = "take";
  private static final String QUANTITY = "quantity";
  private static final String UNIT_PRICE = "unit price";
  private static final String CURRENCY = "currency";
  private static final String LEAST = "least";
  private static final String MULTIPLE = "multiple";
  private static final String MOST = "most";
  private static final String ARRIVAL = "arrival month";
  private static final String BALL_KEPT = "ball kept %";
  private static final String ORDER_BY = "order by";
  static final String AGAIN = "again";
  static final String AGAIN_UNTIL = "again until";
  private static final String CARRIAGE = "carriage";
  private static final String IMPORT_CHARGES = "import charges";
  private static final String QUALITY_SURE = "quality sure %";
  private static final String LOSS_SURE = "loss sure %";
  private static final String FAILS = "fails %";
  public static final TableFormat FORMAT =
      TableFormat.of(
              "offers", OFFER, LotCells.SPECIES, LotCells.FORM, UNIT_PRICE, ARRIVAL, LotCells.ROUTE)
          .with(
              TAKE,
              QUANTITY,
              CURRENCY,
              LEAST,
              MULTIPLE,
              MOST,
              ORDER_BY,
              AGAIN,
              AGAIN_UNTIL,
              CARRIAGE,
              IMPORT_CHARGES,
              LotCells.TRUNK,
              LotCells.TRUNK_SPREAD,
              LotCells.USUAL_TRUNK,
              LotCells.TRUNK_FROM,
              LotCells.TRUNK_TO,
              LotCells.GIRTH_FROM,
              LotCells.GIRTH_TO,
              LotCells.FIRST,
              LotCells.SECOND,
              QUALITY_SURE,
              LOSS_SURE,
              FAILS,
              StockTable.POT,
              BALL_KEPT,
              LotCells.PLACE,
              Spacings.GAP,
              Spacings.PLANTS,
              LotCells.CROWN,
              LotCells.HEIGHT_LEFT,
              LotCells.HOLD_GRADE,
              LotCells.HOLD_SHARE,
              LotCells.HOLD_WHICH,
              LotCells.NOT_BEFORE,
              LotCells.APART,
              LotCells.UNTOUCHED,
              LotCells.HEELED_IN,
              LotCells.SUPPLIER,
              LotCells.PASSPORT,
              LotCells.ORIGIN,
              LotCells.NOTE)
          .alias("spread %", LotCells.TRUNK_SPREAD)
          .understanding(TrunkCells.OTHER_HEADINGS);

  private static final Set<String> OF_A_BREAK = Set.of(OFFER, LEAST, UNIT_PRICE);

  private final Definitions known;

  private final LotChecks checks;
  private final TrunkCells trunkCells;
  private final Names lots;
  private final boolean planStatesTakes;
  private final Defined<Offer> offers;

  private OffersTable(
      Defined<Offer> offers,
      Definitions known,
      LotChecks checks,
      Names lots,
      boolean planStatesTakes) {
    this.offers = offers;
    this.known = known;
    this.checks = checks;
    this.trunkCells = new TrunkCells(known.settings().girthBaseFactor());
    this.lots = lots;
    this.planStatesTakes = planStatesTakes;
  }

  /**
   * Every offer.
   *
   * @param lots names of the stock list
   * @param planStatesTakes whether a plan.json says what is taken
   */
  public static Defined<Offer> read(
      Optional<Table> table,
      Definitions known,
      LotChecks checks,
      Names lots,
      boolean planStatesTakes) {
    Defined<Offer> offers = Defined.of(new Names("offer", FORMAT.name()), table);
    OffersTable reader = new OffersTable(offers, known, checks, lots, planStatesTakes);
    table.ifPresent(reader::addAll);
    return offers;
  }

  private void addAll(Table table) {
    table.rows().stream()
        .filter(row -> !row.has(OFFER))
        .forEach(row -> row.needs(OFFER, UNIT_PRICE));
    Groups.by(OFFER, table.rows()).forEach(this::add);
    trunkCells.remark();
  }

  private void add(String name, List<Row> rows) {
    Row main = rows.get(0);
    offers.names().add(name);
    main.needs(LotCells.SPECIES, LotCells.FORM, UNIT_PRICE, ARRIVAL, LotCells.ROUTE);
    if (lots.contains(name)) {
      main.fail(OFFER, where -> PlanAdvice.offerNamedLikeLot(where, name));
    }
    List<PriceBreak> breaks = breaks(name, rows);
    Optional<Offer> offer = offer(name, main, breaks);
    boolean fine = rows.stream().allMatch(Row::isAccepted);
    offer.filter(made -> fine).ifPresent(made -> offers.values().put(name, made));
  }

  private List<PriceBreak> breaks(String name, List<Row> rows) {
    Set<Integer> leasts = new HashSet<>();
    List<PriceBreak> breaks = new ArrayList<>();
    for (Row row : rows) {
      checkBreakRow(row, rows.get(0));
      int least = row.get(LEAST, Quantities.plants(Quantities.SOME), 1);
      double price = row.get(UNIT_PRICE, As.money(currency(rows.get(0)), Range.PRICE));
      if (!row.isFailed() && !leasts.add(least)) {
        row.fail(LEAST, where -> PlanAdvice.leastTwice(where, name, least));
      }
      boolean first = row == rows.get(0);
      PriceBreak made = new PriceBreak(Math.max(1, least), Math.max(0, price));
      breaks.add(made);
      if (!first) {
        row.accept(() -> made);
      }
    }
    breaks.sort(Comparator.comparingInt(PriceBreak::least));
    return breaks;
  }

  /** Rows after the first may say nothing else than it about the offer. */
  private static void checkBreakRow(Row row, Row main) {
    if (row == main) {
      return;
    }
    row.needs(UNIT_PRICE);
    for (String heading : row.headings()) {
      String here = row.cell(heading).shown();
      if (!OF_A_BREAK.contains(heading)
          && !Texts.key(here).equals(Texts.key(main.cell(heading).shown()))) {
        row.fail(heading, where -> ValueAdvice.otherwiseAbove(where, here));
      }
    }
  }

  private String currency(Row main) {
    return main.has(CURRENCY)
        ? Currency.code(main.cell(CURRENCY).shown()).orElse(known.settings().currency())
        : known.settings().currency();
  }

  private Optional<Offer> offer(String name, Row row, List<PriceBreak> breaks) {
    String currency = row.get(CURRENCY, As.currency(), known.settings().currency());
    As<Double> money = As.money(currency(row), Range.FROM_ZERO);
    Optional<Double> rate = rate(row, currency);
    boolean take = row.get(TAKE, As.YES_NO, false);
    int quantity = take ? row.get(QUANTITY, Quantities.plants()) : looked(row);
    int multiple = row.get(MULTIPLE, Quantities.plants(Quantities.SOME), 1);
    Optional<Integer> most = row.find(MOST, Quantities.plants(Quantities.SOME));
    YearMonth arrival = row.get(ARRIVAL, As.MONTH);
    Optional<YearMonth> orderBy = orderBy(row, arrival);
    Optional<Again> again = AgainCells.read(row, arrival);
    double carriage = row.get(CARRIAGE, money, 0.0);
    double importCharges = row.get(IMPORT_CHARGES, money, 0.0);
    double lossSure = row.get(LOSS_SURE, As.share(), 1.0);
    double fails = row.get(FAILS, As.share(), 0.0);
    Optional<Lot> lot = lot(name, row, arrival);
    checkMost(row, most, breaks);
    checkArrivalMonth(row, arrival, take && !planStatesTakes);
    Optional<Offer> offer =
        row.accept(
            () ->
                Offer.named(name, lot.orElseThrow())
                    .take(take ? quantity : 0)
                    .currency(currency)
                    .rate(rate.orElseThrow())
                    .breaks(distinct(breaks))
                    .multiple(multiple)
                    .most(most.map(OptionalInt::of).orElse(OptionalInt.empty()))
                    .arrival(arrival)
                    .orderBy(orderBy)
                    .carriage(carriage)
                    .importCharges(importCharges)
                    .lossSure(lossSure)
                    .fails(fails)
                    .again(again)
                    .build());
    offer.ifPresent(made -> checkWhole(row, made));
    return offer;
  }

  private static Optional<YearMonth> orderBy(Row row, YearMonth arrival) {
    Optional<YearMonth> orderBy = row.find(ORDER_BY, As.MONTH);
    orderBy
        .filter(month -> !row.isFailed() && month.isAfter(arrival))
        .ifPresent(
            month ->
                row.fail(
                    ORDER_BY,
                    where -> DefinitionAdvice.orderedAfterArrival(where, month, arrival)));
    return orderBy;
  }

  /** A row with a least that was there before has been reported, and makes no break. */
  private static List<PriceBreak> distinct(List<PriceBreak> breaks) {
    Set<Integer> leasts = new HashSet<>();
    return breaks.stream().filter(each -> leasts.add(each.least())).toList();
  }

  /** The quantity of an offer that is not taken is read for its faults only. */
  private static int looked(Row row) {
    row.find(QUANTITY, Quantities.plants());
    return 0;
  }

  private Optional<Double> rate(Row row, String currency) {
    String plans = known.settings().currency();
    if (currency.equals(plans) || plans.equals(Currency.UNKNOWN)) {
      return Optional.of(1.0);
    }
    Optional<Double> rate = Optional.ofNullable(known.settings().exchangeRates().get(currency));
    if (rate.isEmpty() && !currency.isEmpty()) {
      row.fail(CURRENCY, where -> PlanAdvice.noExchangeRate(where, currency));
    }
    return rate;
  }

  private static void checkMost(Row row, Optional<Integer> most, List<PriceBreak> breaks) {
    int least = breaks.get(0).least();
    most.filter(value -> !row.isFailed() && value < least)
        .ifPresent(
            value -> row.fail(MOST, where -> PlanAdvice.mostBelowLeast(where, value, least)));
  }

  private void checkArrivalMonth(Row row, YearMonth arrival, boolean taken) {
    if (row.isFailed() || known.horizon().contains(arrival)) {
      return;
    }
    YearMonth first = known.horizon().firstMonth();
    YearMonth last = known.horizon().month(known.horizon().months() - 1);
    String shown = row.cell(ARRIVAL).shown();
    if (taken) {
      row.fail(ARRIVAL, where -> PlanAdvice.arrivesOutsidePlan(where, shown, first, last));
    } else {
      row.remark(ARRIVAL, where -> PlanAdvice.offerOutsidePlan(where, shown, first, last));
    }
  }

  private void checkWhole(Row row, Offer offer) {
    Quantities.check(offer, offer.take(), row, QUANTITY);
    LotCells.checkArrival(
        row, ARRIVAL, offer.lot().form(), offer.arrival(), known.settings().hemisphere());
    if (known.horizon().contains(offer.arrival())) {
      checks.check(row, offer.lot());
    }
  }

  private Potting potting(Row row) {
    Optional<String> pot = row.findName(StockTable.POT, known.pots().names());
    Optional<Double> ballKept = row.find(BALL_KEPT, As.share());
    return new Potting(pot, Optional.empty(), Optional.empty(), As.optional(ballKept));
  }

  private Optional<Lot> lot(String name, Row row, YearMonth arrival) {
    String species = row.getName(LotCells.SPECIES, known.species().names());
    Form form = row.get(LotCells.FORM, As.word(Form.class));
    Optional<Trunks> trunks = trunkCells.read(row);
    double sure = row.get(QUALITY_SURE, As.share(), 1.0);
    Optional<QualityShares> quality = LotCells.quality(row, false, sure);
    Standing standing = StockTable.standing(row, known);
    String route = row.getName(LotCells.ROUTE, known.routes().names());
    Optional<Hold> hold = LotCells.hold(row, species, known.species(), known.ladders());
    YearMonth notBefore = LotCells.notBefore(row, form, arrival);
    int apart = LotCells.apart(row, arrival, known.settings());
    boolean untouched = row.get(LotCells.UNTOUCHED, As.YES_NO, false);
    Potting potting = potting(row);
    Papers papers =
        new Papers(
            LotCells.text(row, LotCells.SUPPLIER),
            LotCells.text(row, LotCells.PASSPORT),
            LotCells.text(row, LotCells.ORIGIN),
            "",
            LotCells.text(row, LotCells.NOTE));
    if (row.isFailed() || trunks.isEmpty() || quality.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Lot.named(name, species)
            .form(form)
            .arrived(arrival)
            .counted(arrival)
            .trunks(trunks.get())
            .quality(quality.get())
            .potting(potting)
            .standing(standing)
            .route(route)
            .hold(hold)
            .notBefore(notBefore)
            .apartMonths(apart)
            .untouched(untouched)
            .papers(papers)
            .build());
  }
}
