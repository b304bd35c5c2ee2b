package growingon.load.table.lot;

import growingon.load.cell.Currency;
import growingon.load.cell.Range;
import growingon.load.row.As;
import growingon.load.row.Groups;
import growingon.load.row.Heading;
import growingon.load.row.Names;
import growingon.load.row.Quantities;
import growingon.load.row.Row;
import growingon.load.row.Spacings;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.Defined;
import growingon.nursery.lot.Form;
import growingon.nursery.lot.Hold;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.lot.Offer.Again;
import growingon.nursery.lot.Offer.PriceBreak;
import growingon.nursery.lot.Papers;
import growingon.nursery.lot.Potting;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.lot.Standing;
import growingon.nursery.lot.Trunks;
import growingon.problem.advice.DefinitionAdvice;
import growingon.problem.advice.PlanAdvice;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Lots that can be bought. Several rows with the same offer are price breaks: the first states
 * everything, the others only offer, least and unit price (or the same again). Its columns say what
 * they are; trunks are stated as in stock.
 */
public final class OffersTable {
  public static final Heading<String> OFFER =
      Heading.text("offer")
          .means(
              "Your name for a lot that you could buy; several rows with one name are price breaks");
  private static final Heading<Boolean> TAKE =
      Heading.yesNo("take").usual(false).means("Whether you take it");
  private static final Heading<Integer> QUANTITY =
      Heading.number("quantity", Quantities.plants()).means("Plants that you take");
  static final Heading<Double> UNIT_PRICE =
      Heading.money("unit price").means("Price of one plant, in the offer's currency");
  private static final Heading<String> CURRENCY =
      Heading.text("currency", As.currency())
          .expert()
          .means(
              "Currency of its prices; empty: that of the sheet settings, which needs an exchange rate for any other");
  static final Heading<Integer> LEAST =
      Heading.number("least", Quantities.plants(Quantities.SOME))
          .usual(1)
          .means("Fewest you may order at this price");
  private static final Heading<Integer> MULTIPLE =
      Heading.number("multiple", Quantities.plants(Quantities.SOME))
          .expert()
          .usual(1)
          .means("Sold in lots of so many");
  private static final Heading<Integer> MOST =
      Heading.number("most", Quantities.plants(Quantities.SOME))
          .expert()
          .means("Most there are; empty: no limit");
  private static final Heading<YearMonth> ARRIVAL =
      Heading.month("arrival month").means("When they would come, from this month on");
  private static final Heading<Double> BALL_KEPT =
      Heading.number("ball kept %", As.share())
          .expert()
          .means(
              "Share of the ball that stays on when they are first potted; empty: as the route says");
  private static final Heading<YearMonth> ORDER_BY =
      Heading.month("order by")
          .expert()
          .means(
              "Month by the end of which it must be ordered; empty: the months that orders take before arrival");
  static final Heading<Integer> AGAIN =
      Heading.text("again", AgainCells.seasonsBetween())
          .expert()
          .usual(0)
          .means(
              "no, every season, or every 2 seasons: bought again each time, as an order of its own");
  static final Heading<YearMonth> AGAIN_UNTIL =
      Heading.month("again until")
          .expert()
          .means("Last month in which it may arrive again; empty: the end of the plan");
  private static final Heading<Double> CARRIAGE =
      Heading.money("carriage").usual(0.0).means("For the whole order");
  private static final Heading<Double> IMPORT_CHARGES =
      Heading.money("import charges").expert().usual(0.0).means("For the whole order");
  private static final Heading<Double> QUALITY_SURE =
      Heading.number("quality sure %", As.share())
          .expert()
          .usual(1.0)
          .means("How sure you are of firsts and seconds: 100 for certain");
  private static final Heading<Double> LOSS_SURE =
      Heading.number("loss sure %", As.share())
          .expert()
          .usual(1.0)
          .means("How sure you are of its losses");
  private static final Heading<Double> FAILS =
      Heading.number("fails %", As.share())
          .expert()
          .usual(0.0)
          .means("Chance that the whole lot fails");
  public static final TableFormat FORMAT =
      TableFormat.of(
              "offers",
              OFFER.needed(),
              TAKE,
              QUANTITY,
              LotCells.SPECIES.needed(),
              LotCells.FORM.means("How they come").needed(),
              UNIT_PRICE.needed(),
              ARRIVAL.needed(),
              LotCells.ROUTE.means("What would be done with them").needed(),
              LotCells.TRUNK,
              LotCells.FIRST.means("How many in 100 you think are firsts"),
              LotCells.SECOND,
              CARRIAGE,
              LotCells.PLACE.means("Where they would stand at first"),
              LEAST,
              LotCells.NOTE,
              Spacings.PLANTS.means("How many stand on a square metre; needed in the ground"),
              MULTIPLE,
              MOST,
              ORDER_BY,
              AGAIN,
              AGAIN_UNTIL,
              CURRENCY,
              IMPORT_CHARGES,
              LotCells.SUPPLIER.means("Who offers them"),
              LotCells.TRUNK_SPREAD.means("How unlike the trunks are").also("spread %"),
              LotCells.USUAL_TRUNK,
              LotCells.TRUNK_FROM,
              LotCells.TRUNK_TO,
              LotCells.GIRTH_FROM,
              LotCells.GIRTH_TO,
              QUALITY_SURE,
              LOSS_SURE,
              FAILS,
              StockTable.POT.expert().means("Pot they come in; empty if they come without"),
              BALL_KEPT,
              Spacings.GAP.means("Free space between pots or crowns"),
              LotCells.CROWN,
              LotCells.HEIGHT_LEFT.means("Height of the wood after reduction, for its weight"),
              LotCells.HOLD_GRADE,
              LotCells.HOLD_SHARE,
              LotCells.HOLD_WHICH,
              LotCells.NOT_BEFORE.means("First month in which any is sold"),
              LotCells.APART,
              LotCells.UNTOUCHED,
              LotCells.HEELED_IN,
              LotCells.PASSPORT,
              LotCells.ORIGIN.means("Country or region they come from"))
          .understanding(TrunkCells.OTHER_HEADINGS);

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
    List<PriceBreak> breaks = OfferBreaks.read(name, rows, currency(main));
    Optional<Offer> offer = offer(name, main, breaks);
    boolean fine = rows.stream().allMatch(Row::isAccepted);
    offer.filter(made -> fine).ifPresent(made -> offers.values().put(name, made));
  }

  private String currency(Row main) {
    return main.has(CURRENCY)
        ? Currency.code(main.cell(CURRENCY).shown()).orElse(known.settings().currency())
        : known.settings().currency();
  }

  private Optional<Offer> offer(String name, Row row, List<PriceBreak> breaks) {
    String currency = row.get(CURRENCY, known.settings().currency());
    As<Double> money = As.money(currency(row), Range.FROM_ZERO);
    Optional<Double> rate = rate(row, currency);
    boolean take = row.get(TAKE);
    int quantity = take ? row.get(QUANTITY) : looked(row);
    int multiple = row.get(MULTIPLE);
    Optional<Integer> most = row.find(MOST);
    YearMonth arrival = row.get(ARRIVAL);
    Optional<YearMonth> orderBy = orderBy(row, arrival);
    Optional<Again> again = AgainCells.read(row, arrival);
    double carriage = row.get(CARRIAGE.reading(money));
    double importCharges = row.get(IMPORT_CHARGES.reading(money));
    double lossSure = row.get(LOSS_SURE);
    double fails = row.get(FAILS);
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
                    .breaks(OfferBreaks.distinct(breaks))
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
    Optional<YearMonth> orderBy = row.find(ORDER_BY);
    orderBy
        .filter(month -> !row.isFailed() && month.isAfter(arrival))
        .ifPresent(
            month ->
                row.fail(
                    ORDER_BY,
                    where -> DefinitionAdvice.orderedAfterArrival(where, month, arrival)));
    return orderBy;
  }

  /** The quantity of an offer that is not taken is read for its faults only. */
  private static int looked(Row row) {
    row.find(QUANTITY);
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
    Quantities.check(offer, offer.take(), row, QUANTITY.name());
    LotCells.checkArrival(
        row, ARRIVAL.name(), offer.lot().form(), offer.arrival(), known.settings().hemisphere());
    if (known.horizon().contains(offer.arrival())) {
      checks.check(row, offer.lot());
    }
  }

  private Potting potting(Row row) {
    Optional<String> pot = row.findName(StockTable.POT, known.pots().names());
    Optional<Double> ballKept = row.find(BALL_KEPT);
    return new Potting(pot, Optional.empty(), Optional.empty(), As.optional(ballKept));
  }

  private Optional<Lot> lot(String name, Row row, YearMonth arrival) {
    String species = row.getName(LotCells.SPECIES, known.species().names());
    Form form = row.get(LotCells.FORM);
    Optional<Trunks> trunks = trunkCells.read(row);
    double sure = row.get(QUALITY_SURE);
    Optional<QualityShares> quality = LotCells.quality(row, false, sure);
    Standing standing = StockTable.standing(row, known);
    String route = row.getName(LotCells.ROUTE, known.routes().names());
    Optional<Hold> hold = LotCells.hold(row, species, known.species(), known.ladders());
    YearMonth notBefore = LotCells.notBefore(row, form, arrival);
    int apart = LotCells.apart(row, arrival, known.settings());
    boolean untouched = row.get(LotCells.UNTOUCHED);
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
