package growingon.report.edition;

import growingon.nursery.Inputs;
import growingon.nursery.Plan;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.lot.Papers;
import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Inputs without what an edition is not to show. */
final class Anonymous {
  private final Edition edition;
  private final Inputs read;
  private final Scenario scenario;
  private final Aliases aliases;

  Anonymous(Edition edition, Inputs read) {
    this.edition = edition;
    this.read = read;
    this.scenario = read.scenario();
    this.aliases =
        new Aliases(
            Stream.concat(
                    scenario.lots().stream().map(Lot::name),
                    read.offers().stream().map(Offer::name))
                .toList());
  }

  Inputs inputs() {
    List<Lot> lots = new ArrayList<>();
    scenario.lots().forEach(lot -> lots.add(lot.as(aliases.of(lot.name()), papers(lot))));
    List<Offer> offers =
        edition.costs() ? read.offers().stream().map(this::offer).toList() : List.of();
    return new Inputs(
        new Scenario(scenario.nursery(), plan(), lots), offers, List.of(), read.stockRows());
  }

  private Papers papers(Lot lot) {
    return edition.costs() ? new Papers(lot.papers().supplier(), "", "", "", "") : Papers.NONE;
  }

  private Plan plan() {
    Plan plan = scenario.plan();
    String name = Edition.planName(edition.audience(), plan, Phrases.of(scenario));
    return plan.with().name(name).take(Map.of()).draws(0).holds(Map.of()).ordered(Set.of()).build();
  }

  private Offer offer(Offer offer) {
    String alias = aliases.of(offer.name());
    return Offer.named(alias, offer.lot().as(alias, papers(offer.lot())))
        .take(offer.take())
        .currency(offer.currency())
        .rate(offer.rate())
        .breaks(offer.breaks())
        .multiple(offer.multiple())
        .most(offer.most())
        .arrival(offer.arrival())
        .orderBy(offer.orderBy())
        .carriage(offer.carriage())
        .importCharges(offer.importCharges())
        .lossSure(offer.lossSure())
        .fails(offer.fails())
        .build();
  }
}
