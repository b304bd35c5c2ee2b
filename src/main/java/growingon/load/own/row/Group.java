package growingon.load.own.row;

import growingon.load.own.plant.PlantMatch;
import java.util.Optional;

/**
 * What the titles between the rows say of those below them.
 *
 * @param genus in lower case, empty if none
 * @param species if a title names one
 * @param size pot and form as a title has them, empty if none
 */
record Group(String genus, Optional<PlantMatch> species, String size) {}
