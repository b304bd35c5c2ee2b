package growingon.project.lot;

import growingon.nursery.Nursery;
import growingon.nursery.place.Place;
import growingon.nursery.time.Horizon;
import growingon.project.time.Calendar;
import java.util.Optional;

/**
 * What all lots of a programme stand in: the nursery, its months, and where lots stand apart.
 *
 * @param nursery the nursery
 * @param horizon the months of the plan
 * @param calendar what each of them is
 * @param apartPlace the place for lots that stand apart, if there is one
 */
public record Surroundings(
    Nursery nursery, Horizon horizon, Calendar calendar, Optional<Place> apartPlace) {}
