package growingon.report.plan.space;

import growingon.nursery.place.LiftFrom;
import growingon.nursery.place.Place;
import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.project.history.Stood;
import growingon.project.lot.LotHistory;
import growingon.project.need.SpaceUse;
import growingon.project.need.SpaceUse.PlaceMonth;
import growingon.project.pot.Lifting;
import growingon.project.pot.Weight;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Cautions;
import growingon.report.text.Phrases;
import growingon.report.words.Overload;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a plant of each lot weighs, how it may be lifted, and what the places have to carry. */
public final class WeightsSheet {
  private final Projection projection;
  private final SpaceUse space;
  private final Horizon horizon;
  private final Map<String, Place> places;
  private final List<Overload> overloads;
  private final Phrases say;

  private WeightsSheet(Context context) {
    this.say = context.say();
    this.projection = context.accounts().projection();
    this.space = context.accounts().space();
    this.horizon = projection.horizon();
    this.places = projection.scenario().nursery().places();
    this.overloads = Overload.of(context.accounts());
  }

  public static Sheet of(Context context) {
    WeightsSheet sheet = new WeightsSheet(context);
    return FilledSheet.of(
        "Weights",
        List.of(
            "Over %s kg from a bench or %s kg from the ground: two people or a trolley. Over %s or %s"
                    .formatted(
                        sheet.say.whole(Lifting.firstKg(LiftFrom.BENCH)),
                        sheet.say.whole(Lifting.firstKg(LiftFrom.GROUND)),
                        sheet.say.whole(Lifting.secondKg(LiftFrom.BENCH)),
                        sheet.say.whole(Lifting.secondKg(LiftFrom.GROUND)))
                + " kg: mind who lifts. The values are those of HSE guidance INDG143 for men and"
                + " women, for one lift close to the body; a place lifts from bench or ground as the"
                + " places table says.",
            Cautions.LIFTING,
            Cautions.BENCH_LOADS),
        sheet.weights(),
        sheet.loads());
  }

  private Table weights() {
    return TableOf.<Weighed>table("weights", "One plant of each lot")
        .note(
            "Now, and in the month in which it is heaviest. Mix: its litres in the pot × wet kg"
                + " a litre × (1 + firming) / (1 − shrinkage). Lifted ball: "
                + say.number(Weight.LIFTED_KG_PER_LITRE)
                + " kg a litre. Wood:"
                + " π/4 × trunk² × height left, at 1 kg a litre. Plants not in pots are not"
                + " weighed.")
        .text("lot", each -> each.lot.lot().name())
        .text("when", each -> each.when)
        .month("month", each -> horizon.month(each.stood.month()))
        .text("place", each -> each.place.map(Place::name).orElse("no place"))
        .text("lifted from", each -> each.from().toString())
        .text("pot", each -> each.stood.pot())
        .column("mix", "kg", Kind.KG, each -> each.stood.weight().mixKg())
        .column("lifted ball", "kg", Kind.KG, each -> each.stood.weight().ballKg())
        .column("empty pot", "kg", Kind.KG, each -> each.stood.weight().potKg())
        .column("wood", "kg", Kind.KG, each -> each.stood.weight().woodKg())
        .column("one plant", "kg", Kind.KG, each -> each.stood.weight().kg())
        .text("lifting", each -> words(Lifting.of(each.stood.weight().kg(), each.from())))
        .column("load", "kg/m²", Kind.KG, each -> each.stood.kgPerM2())
        .of(weighed());
  }

  /** What stands of a lot, at one time of two. */
  private record Weighed(LotHistory lot, String when, Stood stood, Optional<Place> place) {
    LiftFrom from() {
      return Lifting.lower(place, place);
    }
  }

  private List<Weighed> weighed() {
    List<Weighed> weighed = new ArrayList<>();
    projection.lots().forEach(lot -> addLot(weighed, lot));
    return weighed;
  }

  private void addLot(List<Weighed> weighed, LotHistory lot) {
    Stood now = null;
    Stood heaviest = null;
    for (int month = lot.start(); month < lot.months(); month++) {
      Stood stood = lot.stood(month);
      if (stood != null) {
        now = now == null ? stood : now;
        heaviest =
            heaviest == null || stood.weight().kg() > heaviest.weight().kg() ? stood : heaviest;
      }
    }
    if (heaviest == null || heaviest.weight().kg() == 0) {
      return;
    }
    if (now.weight().kg() > 0 && now != heaviest) {
      weighed.add(weighed(lot, lot.start() > 0 ? "on arrival" : "now", now));
    }
    weighed.add(weighed(lot, now == heaviest ? "now and heaviest" : "heaviest", heaviest));
  }

  private Weighed weighed(LotHistory lot, String when, Stood stood) {
    return new Weighed(lot, when, stood, stood.place().map(places::get));
  }

  private static String words(Lifting lifting) {
    return switch (lifting) {
      case TWO_PEOPLE -> "two people or a trolley";
      case NOT_FOR_EVERYONE -> "mind who lifts";
      case NOTHING_LIFTED, ONE_PERSON -> null;
    };
  }

  private Table loads() {
    return TableOf.<PlaceMonth>table("loads", "Load of each place in its heaviest month")
        .note(
            "Kg on a square metre where the heaviest lot stands, and on average over the area in"
                + " use, against the limit of the places table.")
        .text("place", each -> place(each).name())
        .text("kind", each -> place(each).kind().toString())
        .month("month", each -> horizon.month(each.month()))
        .text("heaviest lot", PlaceMonth::heaviestLot)
        .column("load there", "kg/m²", Kind.KG, PlaceMonth::heaviestKgPerM2)
        .column("mean load", "kg/m²", Kind.KG, PlaceMonth::meanKgPerM2)
        .text("limit", each -> limit(each))
        .text("note", each -> overLimit(place(each)))
        .of(heaviest());
  }

  private Place place(PlaceMonth month) {
    return places.get(month.place().orElseThrow());
  }

  private String limit(PlaceMonth month) {
    OptionalDouble limit = place(month).kgPerM2();
    return limit.isPresent() ? say.whole(limit.getAsDouble()) + " kg/m²" : "no limit given";
  }

  /** The heaviest month of each place. */
  private List<PlaceMonth> heaviest() {
    return places.values().stream()
        .flatMap(
            place ->
                space.months(place).stream()
                    .filter(month -> month.heaviestKgPerM2() > 0)
                    .max(
                        Comparator.comparingDouble(PlaceMonth::heaviestKgPerM2)
                            .thenComparing(PlaceMonth::month, Comparator.reverseOrder()))
                    .stream())
        .toList();
  }

  private String overLimit(Place place) {
    return overloads.stream()
        .filter(each -> each.place().equals(place))
        .map(each -> "over the limit " + say.when(each.spells(), horizon))
        .findFirst()
        .orElse(null);
  }
}
