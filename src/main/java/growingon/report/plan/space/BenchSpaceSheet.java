package growingon.report.plan.space;

import growingon.money.Accounts;
import growingon.nursery.Nursery;
import growingon.nursery.time.Horizon;
import growingon.project.need.SpaceUse.PlaceMonth;
import growingon.report.build.ColumnOf;
import growingon.report.build.TableOf;
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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

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

  private static String label(Optional<String> place) {
    return place.orElse("without a place");
  }

  private static Column squareMetres(String key, String heading) {
    return Column.of(key, heading, "m²", Kind.SQUARE_METRES);
  }

  /** A spell of too much in a place. */
  private record Trouble(
      SpaceTrouble place, Spell spell, PlaceMonth worst, Optional<RoomElsewhere> room) {}

  /** One a spell, in order of time. */
  private List<Trouble> troubles() {
    List<Trouble> troubles = new ArrayList<>();
    for (SpaceTrouble trouble : SpaceTrouble.of(accounts)) {
      trouble.spells().forEach(spell -> troubles.add(trouble(trouble, spell)));
    }
    troubles.sort(Comparator.comparing(each -> each.spell.first()));
    return troubles;
  }

  private Trouble trouble(SpaceTrouble trouble, Spell spell) {
    return new Trouble(
        trouble,
        spell,
        accounts.space().months(trouble.name()).get(spell.worst()),
        trouble.place().map(each -> RoomElsewhere.of(each, spell.worst(), spell.most(), accounts)));
  }

  private Table overflow() {
    return TableOf.<Trouble>table("space-overflow", "Where it does not fit")
        .note(
            "Room: places that together could take what is too much in the worst month, of the same"
                + " condition and kind first; nothing is moved there by itself.")
        .column(Rows.place(), each -> label(each.place.name()))
        .text("kind", each -> each.place.place().map(place -> place.kind().toString()).orElse(null))
        .month("from", each -> horizon.month(each.spell.first()))
        .month("to", each -> horizon.month(each.spell.last()))
        .month("worst", "worst month", each -> horizon.month(each.spell.worst()))
        .column(squareMetres("needed", "needed then"), each -> each.worst.neededM2())
        .column(squareMetres("capacity", "there then"), each -> each.worst.capacityM2())
        .column(squareMetres("overflow", "too much then"), each -> each.worst.overflowM2())
        .aboveNil()
        .columns(room(Trouble::room))
        .of(troubles());
  }

  /** Where there is room for what is too much, and how much. */
  private static <T> List<ColumnOf<T>> room(Function<T, Optional<RoomElsewhere>> of) {
    return List.of(
        new ColumnOf<>(
            Column.of("most_room", "room in", "", Kind.TEXT),
            each -> of.apply(each).map(RoomElsewhere::names).map(Rows::text).orElse(null)),
        new ColumnOf<>(
            squareMetres("room", "free there"),
            each -> of.apply(each).map(RoomElsewhere::roomM2).filter(m2 -> m2 > 0).orElse(null)));
  }

  /** Room left by month and place, so many places to a table as fit on a page. */
  private List<Table> matrices(String name, String title, int months) {
    List<Optional<String>> places = accounts.space().places();
    List<Table> tables = new ArrayList<>();
    for (int from = 0; from < places.size(); from += ACROSS) {
      List<Optional<String>> some = places.subList(from, Math.min(places.size(), from + ACROSS));
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

  private Table matrix(String name, String title, List<Optional<String>> places, int months) {
    TableOf<Integer> table =
        TableOf.<Integer>table(name, title)
            .note("Square metres free; below nil: so many are missing. A closed place has nil.")
            .column(Rows.month(), horizon::month);
    List<String> keys = Rows.keys(places.stream().map(BenchSpaceSheet::label).toList());
    for (int i = 0; i < places.size(); i++) {
      List<PlaceMonth> free = accounts.space().months(places.get(i));
      table
          .column(
              squareMetres(keys.get(i), label(places.get(i))),
              month -> free.get(month).capacityM2() - free.get(month).neededM2())
          .belowNil();
    }
    return table.of(IntStream.range(0, months).boxed().toList());
  }

  private Table months() {
    return TableOf.<PlaceMonth>table("bench-space", "Needed and there, by place and month")
        .note(
            "Needed: plants standing after the month's work and before its losses and sales, times"
                + " the square metres of one: the larger of pot and crown, with its gap, as the"
                + " place is laid out, or by plants per m² where the stock list or route says so.")
        .note(
            "There: the square metres of the places table times its usable share, nil while closed."
                + " Months in which no whole plant stands in a place are left out.")
        .column(Rows.place(), each -> label(each.place()))
        .column(Rows.month(), each -> horizon.month(each.month()))
        .column("plants", "", Kind.PLANTS, plants::in)
        .column(squareMetres("needed", "needed"), PlaceMonth::neededM2)
        .column(squareMetres("capacity", "there"), PlaceMonth::capacityM2)
        .column(
            "used",
            "in use",
            "",
            Kind.SHARE,
            each -> each.capacityM2() > 0 ? each.neededM2() / each.capacityM2() : null)
        .column(squareMetres("overflow", "too much"), PlaceMonth::overflowM2)
        .aboveNil()
        .columns(room(this::room))
        .leavingOutParts()
        .of(inUse());
  }

  /** Months of places in which plants stand. */
  private List<PlaceMonth> inUse() {
    return accounts.space().places().stream()
        .flatMap(place -> accounts.space().months(place).stream())
        .filter(month -> month.plants() > 0)
        .toList();
  }

  private Optional<RoomElsewhere> room(PlaceMonth month) {
    return month
        .place()
        .map(nursery.places()::get)
        .filter(each -> month.overflowM2() > Phrases.NEGLIGIBLE)
        .map(each -> RoomElsewhere.of(each, month.month(), month.overflowM2(), accounts));
  }

  /** Place-months with weights, for the long tables. */
  public static Table placeMonths(Context context) {
    Accounts accounts = context.accounts();
    Horizon horizon = accounts.projection().horizon();
    PlacePlants plants = PlacePlants.of(context);
    return TableOf.<PlaceMonth>table("place-months", "Every place in every month")
        .note("Plants stand after the month's work; kg are of plants in pots.")
        .column(Rows.place(), each -> label(each.place()))
        .column(Rows.month(), each -> horizon.month(each.month()))
        .column("plants", "", Kind.PLANTS, plants::in)
        .column(squareMetres("needed", "needed"), PlaceMonth::neededM2)
        .column(squareMetres("capacity", "there"), PlaceMonth::capacityM2)
        .column(squareMetres("overflow", "too much"), PlaceMonth::overflowM2)
        .column("kg", "weight", "kg", Kind.KG, PlaceMonth::kg)
        .column("mean load", "kg/m²", Kind.NUMBER, PlaceMonth::meanKgPerM2)
        .column(
            "heaviest_load",
            "load of the heaviest lot",
            "kg/m²",
            Kind.NUMBER,
            PlaceMonth::heaviestKgPerM2)
        .text("heaviest lot", each -> Rows.text(each.heaviestLot()))
        .of(
            accounts.space().places().stream()
                .flatMap(place -> accounts.space().months(place).stream())
                .toList());
  }
}
