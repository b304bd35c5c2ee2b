package growingon.load;

import growingon.load.GradesTable.LadderRead;
import growingon.load.RoutesTable.RouteRead;
import growingon.nursery.Horizon;
import growingon.nursery.Place;
import growingon.nursery.Pot;
import growingon.nursery.Settings;
import growingon.nursery.Species;

/** What lots may name, and the plan they live in. */
record Definitions(
    Settings settings,
    Horizon horizon,
    Defined<LadderRead> ladders,
    Defined<Pot> pots,
    Defined<Place> places,
    Defined<Species> species,
    Defined<RouteRead> routes) {}
