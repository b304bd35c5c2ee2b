package growingon.load.table.lot;

import growingon.load.table.Defined;
import growingon.load.table.market.GradesTable.LadderRead;
import growingon.load.table.route.RoutesTable.RouteRead;
import growingon.nursery.Settings;
import growingon.nursery.place.Place;
import growingon.nursery.species.Species;
import growingon.nursery.supply.Pot;
import growingon.nursery.time.Horizon;

/** What lots may name, and the plan they live in. */
public record Definitions(
    Settings settings,
    Horizon horizon,
    Defined<LadderRead> ladders,
    Defined<Pot> pots,
    Defined<Place> places,
    Defined<Species> species,
    Defined<RouteRead> routes) {}
