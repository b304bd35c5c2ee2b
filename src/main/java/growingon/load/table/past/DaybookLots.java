package growingon.load.table.past;

import growingon.load.cell.Nearest;
import growingon.load.cell.Texts;
import growingon.load.row.Names;
import growingon.load.source.Table;
import growingon.load.table.Defined;
import growingon.load.table.lot.Definitions;
import growingon.load.table.lot.LotCells;
import growingon.load.table.lot.OffersTable;
import growingon.load.table.lot.StockTable;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.problem.MarkedText;
import growingon.problem.Where;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The lots that a daybook may speak of: those of the stock list, offers, and those that it splits
 * off itself; with since when each is there, its species and its passport.
 */
public final class DaybookLots {
  private final Names names = new Names("lot", StockTable.FORMAT.name());
  private final Set<String> fromOffers = new HashSet<>();
  private final Set<String> arrived = new HashSet<>();
  private final Set<String> made = new HashSet<>();
  private final Map<String, Start> starts = new HashMap<>();
  private final Map<String, String> species = new HashMap<>();
  private final Map<String, Passport> passports = new HashMap<>();

  /**
   * Since when a lot is there.
   *
   * @param first first day
   * @param shown as far as it is known: a month or a day, marked
   */
  private record Start(LocalDate first, String shown) {
    static Start in(YearMonth month) {
      return new Start(month.atDay(1), MarkedText.month(month));
    }

    static Start on(LocalDate date) {
      return new Start(date, MarkedText.day(date));
    }

    static Start earlier(Start one, Start other) {
      return other.first.isBefore(one.first) ? other : one;
    }
  }

  /** A passport and the row by which a lot has it. */
  record Passport(String code, Where where) {}

  /** Two passports that would meet in one lot. */
  record Clash(Passport from, Passport to) {}

  /** Two species that would meet in one lot. */
  record Unlike(String from, String to) {}

  public DaybookLots(
      Defined<Lot> stock,
      Optional<Table> stockTable,
      Defined<Offer> offers,
      Optional<Table> offersTable) {
    stock.names().all().forEach(names::add);
    offers.names().all().forEach(names::add);
    fromOffers.addAll(offers.names().all());
    if (stock.names().isOpen() || offers.names().isOpen()) {
      names.leaveOpen();
    }
    Map<String, Where> stockRows = rows(stockTable, StockTable.LOT.name());
    Map<String, Where> offerRows = rows(offersTable, OffersTable.OFFER.name());
    stock.values().values().forEach(lot -> add(lot, stockRows));
    offers.values().values().forEach(offer -> add(offer.lot(), offerRows));
  }

  private static Map<String, Where> rows(Optional<Table> table, String heading) {
    Map<String, Where> rows = new HashMap<>();
    table.ifPresent(
        found ->
            found
                .rows()
                .forEach(
                    row -> rows.putIfAbsent(Texts.key(row.cell(heading).shown()), row.where())));
    return rows;
  }

  private void add(Lot lot, Map<String, Where> rows) {
    starts.put(lot.name(), Start.in(lot.arrived()));
    species.put(lot.name(), lot.species());
    if (!lot.papers().passport().isEmpty()) {
      Where where = rows.getOrDefault(Texts.key(lot.name()), Where.NOWHERE);
      passports.put(lot.name(), new Passport(lot.papers().passport(), where));
    }
  }

  /** A lot of an earlier list, which may be there no more; it was there when it was listed. */
  public void addEarlier(Lot lot) {
    if (names.add(lot.name())) {
      starts.put(lot.name(), Start.in(lot.arrived()));
      species.put(lot.name(), lot.species());
    }
  }

  /** A lot had or has another name too. */
  public void alsoCalled(String other, String lot) {
    names.addOther(other, lot);
  }

  /** Names of all of them. */
  public Names names() {
    return names;
  }

  /** Plants are split off to a lot; one that was not there before is made by it. */
  void split(String to, Optional<LocalDate> date) {
    if (names.add(to)) {
      made.add(to);
    }
    names.find(to).filter(made::contains).ifPresent(lot -> startOn(lot, date));
  }

  /** The lot that a name which is new may have been meant for. */
  Optional<String> nearlyNamed(String name) {
    return names.isOpen() || names.contains(name)
        ? Optional.empty()
        : Nearest.slip(name, names.all());
  }

  /** Plants of a lot arrive: an offer's month was only a plan, the stock list's is what was. */
  void arrive(String name, Optional<LocalDate> date) {
    names.find(name).filter(fromOffers::contains).ifPresent(lot -> come(lot, date));
  }

  private void come(String offer, Optional<LocalDate> date) {
    if (arrived.add(offer)) {
      starts.remove(offer);
    }
    startOn(offer, date);
  }

  private void startOn(String lot, Optional<LocalDate> date) {
    date.ifPresent(day -> starts.merge(lot, Start.on(day), Start::earlier));
  }

  /** Since when a lot is there, if that is after a date. */
  Optional<String> startAfter(String lot, LocalDate date) {
    return Optional.ofNullable(starts.get(lot))
        .filter(start -> date.isBefore(start.first))
        .map(Start::shown);
  }

  /** The species of a lot, where it is known. */
  Optional<String> species(String lot) {
    return Optional.ofNullable(species.get(lot));
  }

  /** Grades that plants of a lot may have. */
  Names grades(String lot, Definitions known) {
    return LotCells.grades(species.getOrDefault(lot, ""), known.species(), known.ladders());
  }

  /** The species of two lots, where both are known and differ. */
  Optional<Unlike> unlike(String from, String to) {
    String mine = species.get(from);
    String theirs = species.get(to);
    return mine == null || theirs == null || mine.equals(theirs)
        ? Optional.empty()
        : Optional.of(new Unlike(mine, theirs));
  }

  /**
   * Plants of a lot go to another, which takes their species and passport if it has none yet.
   *
   * @param where the row that says so
   * @return the passports of the two, if they differ
   */
  Optional<Clash> join(String from, String to, Where where) {
    Optional.ofNullable(species.get(from)).ifPresent(found -> species.putIfAbsent(to, found));
    Passport mine = passports.get(from);
    if (mine == null) {
      return Optional.empty();
    }
    Passport theirs = passports.putIfAbsent(to, new Passport(mine.code, where));
    return theirs == null || theirs.code.equals(mine.code)
        ? Optional.empty()
        : Optional.of(new Clash(mine, theirs));
  }
}
