package growingon.report.plan;

import growingon.nursery.Horizon;
import growingon.nursery.LiftFrom;
import growingon.nursery.Place;
import growingon.project.Lifting;
import growingon.project.LotHistory;
import growingon.project.Projection;
import growingon.project.SpaceUse;
import growingon.project.SpaceUse.PlaceMonth;
import growingon.project.Stood;
import growingon.project.Weight;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableBuilder;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import growingon.report.words.Overload;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a plant of each lot weighs, how it may be lifted, and what the places have to carry. */
final class WeightsSheet {
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

  static Sheet of(Context context) {
    WeightsSheet sheet = new WeightsSheet(context);
    return FilledSheet.of(
        "Weights",
        List.of(
            "Over %s kg from a bench or %s kg from the ground: two people or a trolley. Over %s or %s"
                    .formatted(
                        kg(Lifting.firstKg(LiftFrom.BENCH)),
                        kg(Lifting.firstKg(LiftFrom.GROUND)),
                        kg(Lifting.secondKg(LiftFrom.BENCH)),
                        kg(Lifting.secondKg(LiftFrom.GROUND)))
                + " kg: mind who lifts. The values are those of HSE guidance INDG143 for men and"
                + " women, for one lift close to the body; a place lifts from bench or ground as the"
                + " places table says.",
            Sentences.LIFTING,
            Sentences.BENCH_LOADS),
        sheet.weights(),
        sheet.loads());
  }

  private static String kg(double value) {
    return String.format(Locale.ENGLISH, "%.0f", value);
  }

  private Table weights() {
    TableBuilder table =
        TableBuilder.table("weights", "One plant of each lot")
            .note(
                "Now, and in the month in which it is heaviest. Mix: its litres in the pot × wet kg"
                    + " a litre × (1 + firming) / (1 − shrinkage). Lifted ball: "
                    + say.number(Weight.LIFTED_KG_PER_LITRE)
                    + " kg a litre. Wood:"
                    + " π/4 × trunk² × height left, at 1 kg a litre. Plants not in pots are not"
                    + " weighed.")
            .text("lot")
            .text("when")
            .month("month")
            .text("place")
            .text("lifted from")
            .text("pot")
            .column("mix", "kg", Kind.KG)
            .column("lifted ball", "kg", Kind.KG)
            .column("empty pot", "kg", Kind.KG)
            .column("wood", "kg", Kind.KG)
            .column("one plant", "kg", Kind.KG)
            .text("lifting")
            .column("load", "kg/m²", Kind.KG);
    for (LotHistory lot : projection.lots()) {
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
      addLot(table, lot, now, heaviest);
    }
    return table.build();
  }

  private void addLot(TableBuilder table, LotHistory lot, Stood now, Stood heaviest) {
    if (heaviest == null || heaviest.weight().kg() == 0) {
      return;
    }
    if (now.weight().kg() > 0 && now != heaviest) {
      add(table, lot, lot.start() > 0 ? "on arrival" : "now", now);
    }
    add(table, lot, now == heaviest ? "now and heaviest" : "heaviest", heaviest);
  }

  private void add(TableBuilder table, LotHistory lot, String when, Stood stood) {
    Optional<Place> place = Optional.ofNullable(places.get(stood.place()));
    LiftFrom from = Lifting.lower(place, place);
    table.row(
        lot.lot().name(),
        when,
        horizon.month(stood.month()),
        place.map(Place::name).orElse("no place"),
        from.toString(),
        stood.pot(),
        stood.weight().mixKg(),
        stood.weight().ballKg(),
        stood.weight().potKg(),
        stood.weight().woodKg(),
        stood.weight().kg(),
        words(Lifting.of(stood.weight().kg(), from)),
        stood.kgPerM2());
  }

  private static String words(Lifting lifting) {
    return switch (lifting) {
      case TWO_PEOPLE -> "two people or a trolley";
      case NOT_FOR_EVERYONE -> "mind who lifts";
      case NOTHING_LIFTED, ONE_PERSON -> null;
    };
  }

  private Table loads() {
    TableBuilder table =
        TableBuilder.table("loads", "Load of each place in its heaviest month")
            .note(
                "Kg on a square metre where the heaviest lot stands, and on average over the area in"
                    + " use, against the limit of the places table.")
            .text("place")
            .text("kind")
            .month("month")
            .text("heaviest lot")
            .column("load there", "kg/m²", Kind.KG)
            .column("mean load", "kg/m²", Kind.KG)
            .text("limit")
            .text("note");
    for (Place place : places.values()) {
      space.months(place.name()).stream()
          .filter(month -> month.heaviestKgPerM2() > 0)
          .max(
              Comparator.comparingDouble(PlaceMonth::heaviestKgPerM2)
                  .thenComparing(PlaceMonth::month, Comparator.reverseOrder()))
          .ifPresent(month -> addLoad(table, place, month));
    }
    return table.build();
  }

  private String overLimit(Place place) {
    return overloads.stream()
        .filter(each -> each.place().equals(place))
        .map(each -> "over the limit " + say.when(each.spells(), horizon))
        .findFirst()
        .orElse(null);
  }

  private void addLoad(TableBuilder table, Place place, PlaceMonth month) {
    OptionalDouble limit = place.kgPerM2();
    table.row(
        place.name(),
        place.kind().toString(),
        horizon.month(month.month()),
        month.heaviestLot(),
        month.heaviestKgPerM2(),
        month.meanKgPerM2(),
        limit.isPresent() ? kg(limit.getAsDouble()) + " kg/m²" : "no limit given",
        overLimit(place));
  }
}
