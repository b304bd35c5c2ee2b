package growingon.load.table;

import growingon.load.table.GradesTable.LadderRead;
import growingon.load.table.RoutesTable.RouteRead;
import growingon.nursery.Horizon;
import growingon.nursery.Place;
import growingon.nursery.Pot;
import growingon.nursery.Settings;
import growingon.nursery.Species;

/** What lots may name, and the plan they live in. */
public record Definitions(
    Settings settings,
    Horizon horizon,
    Defined<LadderRead> ladders,
    Defined<Pot> pots,
    Defined<Place> places,
    Defined<Species> species,
    Defined<RouteRead> routes) {}
