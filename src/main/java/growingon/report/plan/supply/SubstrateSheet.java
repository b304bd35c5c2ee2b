package growingon.report.plan.supply;

import growingon.nursery.Nursery;
import growingon.nursery.route.Step;
import growingon.nursery.supply.Mix;
import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.project.history.Happening;
import growingon.project.history.Use;
import growingon.project.lot.LotHistory;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Substrate: components used and bought, and the mixes they go into. */
public final class SubstrateSheet {
  private final Horizon horizon;
  private final Nursery nursery;
  private final Map<String, double[]> litresByMix = new LinkedHashMap<>();
  private final Phrases say;

  private SubstrateSheet(Projection projection) {
    this.say = Phrases.of(projection.scenario());
    this.horizon = projection.horizon();
    this.nursery = projection.scenario().nursery();
    nursery.mixes().keySet().forEach(mix -> litresByMix.put(mix, new double[horizon.seasons()]));
    projection.lots().forEach(this::add);
  }

  public static Sheet of(Context context) {
    SubstrateSheet sheet = new SubstrateSheet(context.accounts().projection());
    SupplyTables tables = new SupplyTables(context, Use.Kind.COMPONENT);
    return FilledSheet.of(
        "Substrate",
        List.of(Sentences.WITHOUT_VAT, sheet.howItCameAbout()),
        tables.bySeason(
            "substrate",
            "Components by season",
            "Litres, loose. On hand before + bags bought × litres in each − used = left. Bags are"
                + " bought when the store would run out."),
        sheet.mixes(),
        sheet.parts(),
        tables.byMonth("substrate-by-month", "Components by month"));
  }

  private String howItCameAbout() {
    return "Litres of a pot = its volume × its fill, less the ball that stays on; times (1 + firming)"
        + " / (1 − shrinkage) of the mix for what firming and mixing lose, and "
        + say.whole(100 * nursery.settings().wasteShare())
        + " % waste (setting waste); shared out by parts of the mix.";
  }

  private void add(LotHistory lot) {
    for (Happening done : lot.happenings()) {
      if (done.substrateLitres() > 0) {
        String mix = mix(lot, done.job()).orElseThrow();
        litresByMix.get(mix)[horizon.season(done.month())] += done.substrateLitres();
      }
    }
  }

  private Optional<String> mix(LotHistory lot, String job) {
    return nursery.routeOf(lot.lot()).steps().stream()
        .filter(step -> step.name().equals(job))
        .findFirst()
        .flatMap(Step::mix);
  }

  /** Litres of a mix in a season. */
  private record Mixed(int season, String mix, double litres) {}

  private List<Mixed> mixed() {
    List<Mixed> mixed = new ArrayList<>();
    for (int season = 0; season < horizon.seasons(); season++) {
      for (Map.Entry<String, double[]> mix : litresByMix.entrySet()) {
        if (mix.getValue()[season] > 0) {
          mixed.add(new Mixed(season, mix.getKey(), mix.getValue()[season]));
        }
      }
    }
    return mixed;
  }

  private Table mixes() {
    return TableOf.<Mixed>table("substrate-mixes", "Mixes by season")
        .note("Loose litres of all components, waste included.")
        .text("season", each -> horizon.seasonLabel(each.season))
        .text("mix", Mixed::mix)
        .summed("litres", "", Kind.LITRES, Mixed::litres)
        .of(mixed());
  }

  /** A component of a mix. */
  private record Part(Mix mix, String component) {}

  private Table parts() {
    return TableOf.<Part>table("substrate-parts", "What goes into a mix")
        .note(
            "Loose litres for a litre in the pot: all components together, before waste. Share:"
                + " of the loose volume, by the parts typed.")
        .text("mix", each -> each.mix.name())
        .column(
            "loose for one in the pot",
            "litres",
            Kind.NUMBER,
            each -> each.mix.looseLitresPerPottedLitre())
        .text("component", Part::component)
        .column("share", "", Kind.SHARE, each -> each.mix.share(each.component))
        .of(
            litresByMix.entrySet().stream()
                .filter(each -> Arrays.stream(each.getValue()).anyMatch(litres -> litres > 0))
                .map(each -> nursery.mixes().get(each.getKey()))
                .flatMap(mix -> mix.parts().keySet().stream().map(part -> new Part(mix, part)))
                .toList());
  }
}
