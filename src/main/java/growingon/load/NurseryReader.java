package growingon.load;

import growingon.load.cell.Findings;
import growingon.load.file.AnswersGiven;
import growingon.load.file.NurseryFiles;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.settings.PlanReader;
import growingon.load.settings.SettingsReader;
import growingon.load.source.RowCount;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.Defined;
import growingon.load.table.lot.Definitions;
import growingon.load.table.lot.LotChecks;
import growingon.load.table.lot.OffersTable;
import growingon.load.table.lot.Orders;
import growingon.load.table.lot.StockChecks;
import growingon.load.table.lot.StockTable;
import growingon.load.table.market.DemandTable;
import growingon.load.table.market.GradesTable;
import growingon.load.table.market.GradesTable.LadderRead;
import growingon.load.table.market.OtherCashTable;
import growingon.load.table.market.QualitiesTable;
import growingon.load.table.past.DaybookLots;
import growingon.load.table.past.DaybookTable;
import growingon.load.table.past.ReceiptsTable;
import growingon.load.table.past.RecordsTable;
import growingon.load.table.place.CareTable;
import growingon.load.table.place.HoursTable;
import growingon.load.table.place.PlacesTable;
import growingon.load.table.route.RoutesTable;
import growingon.load.table.route.RoutesTable.RouteRead;
import growingon.load.table.species.SpeciesTable;
import growingon.load.table.supply.ComponentsTable;
import growingon.load.table.supply.MaterialsTable;
import growingon.load.table.supply.MixesTable;
import growingon.load.table.supply.PotsTable;
import growingon.nursery.Inputs;
import growingon.nursery.Nursery;
import growingon.nursery.Plan;
import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.market.Demand;
import growingon.nursery.market.OtherCash;
import growingon.nursery.market.Quality;
import growingon.nursery.market.QualityRule;
import growingon.nursery.place.Care;
import growingon.nursery.place.Place;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.species.Species;
import growingon.nursery.supply.Component;
import growingon.nursery.supply.Material;
import growingon.nursery.supply.Mix;
import growingon.nursery.supply.Pot;
import growingon.nursery.time.Horizon;
import growingon.problem.advice.FileAdvice;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads the tables of a nursery in the order in which they name each other. */
final class NurseryReader {
  /** Tables that are missed where they are not there: others name what they define. */
  private static final Set<TableFormat> NAMED =
      Set.of(
          StockTable.FORMAT,
          OffersTable.FORMAT,
          SpeciesTable.FORMAT,
          RoutesTable.FORMAT,
          GradesTable.FORMAT,
          PotsTable.FORMAT,
          MixesTable.FORMAT,
          ComponentsTable.FORMAT,
          MaterialsTable.FORMAT,
          PlacesTable.FORMAT,
          DemandTable.FORMAT);

  private final NurseryFiles files;
  private final PlanReader planReader;
  private final Findings findings;
  private Optional<PastSources> sources = Optional.empty();
  private boolean withPast;

  NurseryReader(NurseryFiles files, PlanReader planReader, Findings findings) {
    this.files = files;
    this.planReader = planReader;
    this.findings = findings;
  }

  /**
   * Reads a nursery whose earlier lists may be what the plan begins with.
   *
   * @param withPast whether what was written down of earlier years is read too
   */
  NurseryReader in(PastSources past, boolean withPast) {
    sources = Optional.of(past);
    this.withPast = withPast;
    return this;
  }

  /** Everything that does not name a lot. */
  private record Base(
      Definitions known,
      Map<Quality, QualityRule> qualities,
      Defined<Component> components,
      Defined<Mix> mixes,
      Defined<Material> materials,
      List<Demand> demand,
      List<Care> care) {}

  /** Reads what names no lot; empty where something is wrong with it. */
  Optional<Nursery> around() {
    Settings settings = settings();
    Base base =
        base(
            settings,
            new Horizon(planReader.firstMonth(), planReader.seasons(), settings.seasonStart()));
    return findings.hasErrors() ? Optional.empty() : Optional.of(nursery(base, List.of()));
  }

  /**
   * Reads all of it.
   *
   * @param planName name of the plan if it states none
   * @param today nothing has happened after it
   */
  Loader.Reading read(String planName, Optional<Path> reportFolder, LocalDate today) {
    if (files.isEmpty() && !findings.hasErrors()) {
      findings.add(FileAdvice.nothingOfANursery(files.where()));
      return new Loader.Reading(Optional.empty(), findings, RowCount.NONE);
    }
    remarkMissing();
    Settings settings = settings();
    Horizon horizon =
        new Horizon(planReader.firstMonth(), planReader.seasons(), settings.seasonStart());
    Base base = base(settings, horizon);
    LotChecks checks = new LotChecks(base.known);
    PastReader past = new PastReader(base.known, withPast, findings);
    Defined<Lot> stock =
        past.readLists(table(StockTable.FORMAT), sources, checks, YearMonth.from(today)).lots();
    Defined<Offer> offers =
        OffersTable.read(
            table(OffersTable.FORMAT), base.known, checks, stock.names(), planReader.statesTakes());
    Plan plan = planReader.read(files.where(), planName, stock, offers, base.known, findings);
    planReader.remarkHoldsNotTaken(plan, offers, horizon);
    List<OtherCash> otherCash =
        OtherCashTable.read(
            table(OtherCashTable.FORMAT),
            settings.currency(),
            horizon,
            stock.names().and(Orders.of(offers, horizon).names()));
    StockChecks.check(stock, table(StockTable.FORMAT), findings);
    past.readPriors(table(SpeciesTable.FORMAT), files.species());
    DaybookLots lots =
        new DaybookLots(
            stock, table(StockTable.FORMAT), Orders.of(offers, horizon), table(OffersTable.FORMAT));
    past.tell(lots);
    List<DaybookLine> daybook = daybook(base, past, lots, offers, today);
    RowCount rows = RowCount.of(files.tables().all(), findings.problems());
    Optional<Inputs> inputs =
        findings.hasErrors()
            ? Optional.empty()
            : Optional.of(inputs(base, otherCash, stock, offers, plan, reportFolder, daybook));
    inputs
        .filter(read -> files.tables().find(AnswersGiven.OWN_WORDS).isEmpty() && !files.isUsual())
        .ifPresent(read -> remarkUnused(read.scenario().nursery(), stock, past.lots(), offers));
    return new Loader.Reading(inputs, findings, rows, past.records());
  }

  private List<DaybookLine> daybook(
      Base base, PastReader past, DaybookLots lots, Defined<Offer> offers, LocalDate today) {
    List<DaybookLine> daybook =
        DaybookTable.read(
            table(DaybookTable.FORMAT), base.known, lots, today, past.measured(), findings);
    past.readRecords(table(RecordsTable.FORMAT), lots.names(), offers, today);
    past.readReceipts(table(ReceiptsTable.FORMAT), lots, today);
    return daybook;
  }

  /** Where there are errors, what they have left out would seem to be used by nothing. */
  private void remarkUnused(
      Nursery nursery, Defined<Lot> stock, List<Lot> listed, Defined<Offer> offers) {
    List<Lot> lots = new ArrayList<>(stock.values().values());
    lots.addAll(listed);
    offers.values().values().forEach(offer -> lots.add(offer.lot()));
    Unused.remark(files.tables(), nursery, lots, findings);
  }

  private Optional<Table> table(TableFormat format) {
    return NAMED.contains(format)
        ? files.tables().findOrUnread(format)
        : files.tables().find(format);
  }

  /** Where there is a nursery.json, nobody looks for settings in a workbook. */
  private Optional<Table> settingsTable() {
    return files.settings().isPresent()
        ? files.tables().find(SettingsReader.FORMAT)
        : files.tables().findOrUnread(SettingsReader.FORMAT);
  }

  /** Without these there is nothing to plan. */
  private void remarkMissing() {
    if (table(StockTable.FORMAT).isEmpty() && table(OffersTable.FORMAT).isEmpty()) {
      findings.add(FileAdvice.missingLots(files.where()));
    }
    for (TableFormat format : List.of(RoutesTable.FORMAT, GradesTable.FORMAT)) {
      if (table(format).isEmpty()) {
        findings.add(FileAdvice.missingTable(files.where(), format.name()));
      }
    }
    if (table(SpeciesTable.FORMAT).isEmpty() && files.species().isEmpty()) {
      findings.add(FileAdvice.missingSpecies(files.where()));
    }
  }

  private Settings settings() {
    Row row = SettingsReader.row(files.settings(), settingsTable(), files.where(), findings);
    return SettingsReader.read(row, files.name(), table(HoursTable.FORMAT), findings);
  }

  private Base base(Settings settings, Horizon horizon) {
    String currency = settings.currency();
    Map<Quality, QualityRule> qualities =
        QualitiesTable.read(table(QualitiesTable.FORMAT), findings);
    Defined<LadderRead> ladders = GradesTable.read(table(GradesTable.FORMAT));
    openIfMissing(ladders.names(), GradesTable.FORMAT);
    Defined<Pot> pots = PotsTable.read(table(PotsTable.FORMAT), currency);
    Defined<Component> components = ComponentsTable.read(table(ComponentsTable.FORMAT), currency);
    Defined<Mix> mixes = MixesTable.read(table(MixesTable.FORMAT), components);
    Defined<Material> materials = MaterialsTable.read(table(MaterialsTable.FORMAT), currency);
    Defined<Place> places = PlacesTable.read(table(PlacesTable.FORMAT), currency, findings);
    Defined<Species> species =
        SpeciesTable.read(
            table(SpeciesTable.FORMAT),
            files.species(),
            ladders.names(),
            places,
            settings,
            conditions(pots, places),
            findings);
    Defined<RouteRead> routes =
        RoutesTable.read(
            table(RoutesTable.FORMAT),
            new RoutesTable.Known(pots, mixes, places, materials, settings.hemisphere()));
    openIfMissing(routes.names(), RoutesTable.FORMAT);
    return new Base(
        new Definitions(settings, horizon, ladders, pots, places, species, routes),
        qualities,
        components,
        mixes,
        materials,
        DemandTable.read(table(DemandTable.FORMAT), species, ladders, settings, horizon, findings),
        CareTable.read(table(CareTable.FORMAT), currency));
  }

  /** A needed table that is missing has been reported, and its names need not be again. */
  private void openIfMissing(Names names, TableFormat format) {
    if (table(format).isEmpty()) {
      names.leaveOpen();
    }
  }

  /** Growing conditions that plants may come into by their pot or place. */
  private static Set<String> conditions(Defined<Pot> pots, Defined<Place> places) {
    return Stream.concat(
            pots.values().values().stream().map(Pot::condition),
            places.values().values().stream().map(Place::condition))
        .flatMap(Optional::stream)
        .collect(Collectors.toSet());
  }

  /** A lot that holds what the plan says, where it says something. */
  private static Lot holding(Lot lot, String offer, Plan plan) {
    return plan.held(lot.name(), offer).map(said -> lot.withHold(said.hold())).orElse(lot);
  }

  private Inputs inputs(
      Base base,
      List<OtherCash> otherCash,
      Defined<Lot> stock,
      Defined<Offer> offers,
      Plan plan,
      Optional<Path> reportFolder,
      List<DaybookLine> daybook) {
    Definitions known = base.known;
    Nursery nursery = nursery(base, Orders.ofEach(otherCash, offers, known.horizon()));
    List<Offer> within =
        offers.values().values().stream()
            .filter(offer -> known.horizon().contains(offer.arrival()))
            .map(offer -> offer.withHold(holding(offer.lot(), offer.name(), plan).hold()))
            .toList();
    return new Inputs(
        new Scenario(nursery, plan, lots(known.horizon(), stock, offers, plan)),
        within,
        findings.assumptions(),
        stock.values().size(),
        reportFolder,
        daybook,
        Optional.empty());
  }

  private static Nursery nursery(Base base, List<OtherCash> otherCash) {
    Definitions known = base.known;
    return new Nursery(
        known.settings(),
        known.species().values(),
        GradesTable.fine(known.ladders()),
        base.qualities,
        RoutesTable.fine(known.routes()),
        known.pots().values(),
        base.components.values(),
        base.mixes.values(),
        base.materials.values(),
        known.places().values(),
        base.demand,
        base.care,
        otherCash);
  }

  /** The lots in stock, then those that the plan takes of the offers. */
  private static List<Lot> lots(
      Horizon horizon, Defined<Lot> stock, Defined<Offer> offers, Plan plan) {
    List<Lot> lots = new ArrayList<>();
    stock.values().values().forEach(lot -> lots.add(holding(lot, lot.name(), plan)));
    for (Offer offer : offers.values().values()) {
      for (Offer order : offer.orders(horizon)) {
        int quantity = plan.taken(order.name(), offer.name());
        if (quantity > 0) {
          lots.add(holding(order.taken(quantity), offer.name(), plan));
        }
      }
    }
    return lots;
  }
}
