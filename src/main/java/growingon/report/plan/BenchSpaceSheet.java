package growingon.report.plan;

import growingon.money.Accounts;
import growingon.nursery.Horizon;
import growingon.nursery.Nursery;
import growingon.nursery.Place;
import growingon.project.SpaceUse.PlaceMonth;
import growingon.report.build.Columns;
import growingon.report.figures.Context;
import growingon.report.figures.PlacePlants;
import growingon.report.figures.SpaceTrouble;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Spell;
import growingon.report.words.RoomElsewhere;
import growingon.report.words.SpaceWords;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Space needed and there, by place and month, and where it does not fit. */
public final class BenchSpaceSheet {
  /** As many places as are legible side by side on A4 landscape. */
  private static final int ACROSS = 10;

  private final Accounts accounts;
  private final PlacePlants plants;
  private final Horizon horizon;
  private final Nursery nursery;

  private BenchSpaceSheet(Context context) {
    this.accounts = context.accounts();
    this.plants = PlacePlants.of(context);
    this.horizon = accounts.projection().horizon();
    this.nursery = accounts.projection().scenario().nursery();
  }

  public static Sheet of(Context context) {
    if (context.inputs().scenario().nursery().places().isEmpty()) {
      return Sheet.of("Bench space");
    }
    BenchSpaceSheet sheet = new BenchSpaceSheet(context);
    List<Table> tables = new ArrayList<>();
    tables.add(sheet.overflow());
    tables.addAll(
        sheet.matrices("room-next", "Room left in the next twelve months", Context.NEXT_MONTHS));
    tables.addAll(
        sheet.matrices("room-left", "Room left, by month and place", sheet.horizon.months()));
    tables.add(sheet.months());
    List<String> sentences = new SpaceWords(context).sentences();
    return new Sheet("Bench space", sentences, tables, List.of(), false);
  }

  private static String label(String place) {
    return place.isEmpty() ? "without a place" : place;
  }

  private static Column squareMetres(String key, String heading) {
    return Column.of(key, heading, "m²", Kind.SQUARE_METRES);
  }

  /** One row a spell, in order of time. */
  private Table overflow() {
    List<List<Object>> rows = new ArrayList<>();
    for (SpaceTrouble trouble : SpaceTrouble.of(accounts)) {
      trouble.spells().forEach(spell -> rows.add(row(trouble, spell)));
    }
    rows.sort(Comparator.comparing(row -> (YearMonth) row.get(2)));
    return new Table(
        "space-overflow",
        "Where it does not fit",
        List.of(
            "Room: places that together could take what is too much in the worst month, of the same"
                + " condition and kind first; nothing is moved there by itself."),
        List.of(
            Rows.place(),
            Column.of("kind", "kind", "", Kind.TEXT),
            Column.of("from", "from", "", Kind.MONTH),
            Column.of("to", "to", "", Kind.MONTH),
            Column.of("worst", "worst month", "", Kind.MONTH),
            squareMetres("needed", "needed then"),
            squareMetres("capacity", "there then"),
            Columns.aboveNil(squareMetres("overflow", "too much then")),
            Column.of("most_room", "room in", "", Kind.TEXT),
            squareMetres("room", "free there")),
        rows);
  }

  private List<Object> row(SpaceTrouble trouble, Spell spell) {
    PlaceMonth worst = accounts.space().months(trouble.name()).get(spell.worst());
    Optional<RoomElsewhere> room =
        trouble.place().map(each -> RoomElsewhere.of(each, spell.worst(), spell.most(), accounts));
    return Arrays.asList(
        label(trouble.name()),
        trouble.place().map(place -> place.kind().toString()).orElse(null),
        horizon.month(spell.first()),
        horizon.month(spell.last()),
        horizon.month(spell.worst()),
        worst.neededM2(),
        worst.capacityM2(),
        worst.overflowM2(),
        room.map(RoomElsewhere::names).map(Rows::text).orElse(null),
        room.map(RoomElsewhere::roomM2).filter(m2 -> m2 > 0).orElse(null));
  }

  /** Room left by month and place, so many places to a table as fit on a page. */
  private List<Table> matrices(String name, String title, int months) {
    List<String> places = accounts.space().places();
    List<Table> tables = new ArrayList<>();
    for (int from = 0; from < places.size(); from += ACROSS) {
      List<String> some = places.subList(from, Math.min(places.size(), from + ACROSS));
      boolean first = tables.isEmpty();
      tables.add(
          matrix(
              first ? name : name + "-" + (tables.size() + 1),
              first ? title : title + ", continued",
              some,
              Math.min(months, horizon.months())));
    }
    return tables;
  }

  private Table matrix(String name, String title, List<String> places, int months) {
    List<Column> columns = new ArrayList<>(List.of(Rows.month()));
    List<String> keys = Rows.keys(places.stream().map(BenchSpaceSheet::label).toList());
    for (int i = 0; i < places.size(); i++) {
      columns.add(Columns.belowNil(squareMetres(keys.get(i), label(places.get(i)))));
    }
    Rows rows = new Rows();
    for (int month = 0; month < months; month++) {
      List<Object> row = new ArrayList<>(List.of(horizon.month(month)));
      for (String place : places) {
        PlaceMonth each = accounts.space().months(place).get(month);
        row.add(each.capacityM2() - each.neededM2());
      }
      rows.add(row);
    }
    return new Table(
        name,
        title,
        List.of("Square metres free; below nil: so many are missing. A closed place has nil."),
        columns,
        rows.list());
  }

  private Table months() {
    Rows rows = new Rows();
    for (String place : accounts.space().places()) {
      accounts.space().months(place).stream()
          .filter(month -> month.plants() > 0)
          .forEach(month -> rows.add(row(place, month)));
    }
    List<List<Object>> inFull = rows.list();
    return new Table(
        "bench-space",
        "Needed and there, by place and month",
        List.of(
            "Needed: plants standing after the month's work and before its losses and sales, times"
                + " the square metres of one: the larger of pot and crown, with its gap, as the"
                + " place is laid out, or by plants per m² where the stock list or route says so.",
            "There: the square metres of the places table times its usable share, nil while closed."
                + " Months in which no whole plant stands in a place are left out."),
        List.of(
            Rows.place(),
            Rows.month(),
            Column.of("plants", "plants", "", Kind.PLANTS),
            squareMetres("needed", "needed"),
            squareMetres("capacity", "there"),
            Column.of("used", "in use", "", Kind.SHARE),
            Columns.aboveNil(squareMetres("overflow", "too much")),
            Column.of("most_room", "room in", "", Kind.TEXT),
            squareMetres("room", "free there")),
        Rows.withPlants(inFull),
        inFull);
  }

  private List<Object> row(String name, PlaceMonth month) {
    boolean over = month.overflowM2() > Phrases.NEGLIGIBLE;
    Optional<Place> place = Optional.ofNullable(nursery.places().get(name));
    Optional<RoomElsewhere> room =
        place
            .filter(each -> over)
            .map(each -> RoomElsewhere.of(each, month.month(), month.overflowM2(), accounts));
    return Arrays.asList(
        label(name),
        horizon.month(month.month()),
        plants.in(month),
        month.neededM2(),
        month.capacityM2(),
        month.capacityM2() > 0 ? month.neededM2() / month.capacityM2() : null,
        month.overflowM2(),
        room.map(RoomElsewhere::names).map(Rows::text).orElse(null),
        room.map(RoomElsewhere::roomM2).filter(m2 -> m2 > 0).orElse(null));
  }

  /** Place-months with weights, for the long tables. */
  static Table placeMonths(Context context) {
    Accounts accounts = context.accounts();
    Horizon horizon = accounts.projection().horizon();
    PlacePlants plants = PlacePlants.of(context);
    Rows rows = new Rows();
    for (String place : accounts.space().places()) {
      for (PlaceMonth month : accounts.space().months(place)) {
        rows.add(
            label(place),
            horizon.month(month.month()),
            plants.in(month),
            month.neededM2(),
            month.capacityM2(),
            month.overflowM2(),
            month.kg(),
            month.meanKgPerM2(),
            month.heaviestKgPerM2(),
            Rows.text(month.heaviestLot()));
      }
    }
    return new Table(
        "place-months",
        "Every place in every month",
        List.of("Plants stand after the month's work; kg are of plants in pots."),
        List.of(
            Rows.place(),
            Rows.month(),
            Column.of("plants", "plants", "", Kind.PLANTS),
            squareMetres("needed", "needed"),
            squareMetres("capacity", "there"),
            squareMetres("overflow", "too much"),
            Column.of("kg", "weight", "kg", Kind.KG),
            Column.of("mean_load", "mean load", "kg/m²", Kind.NUMBER),
            Column.of("heaviest_load", "load of the heaviest lot", "kg/m²", Kind.NUMBER),
            Column.of("heaviest_lot", "heaviest lot", "", Kind.TEXT)),
        rows.list());
  }
}
