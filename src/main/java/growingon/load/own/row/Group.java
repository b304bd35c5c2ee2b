package growingon.load.own.row;

import growingon.load.own.plant.PlantMatch;
import java.util.Optional;

/**
 * What the titles between the rows say of those below them.
 *
 * @param genus in lower case, empty if none
 * @param species if a title names one
 * @param size pot and form as a title has them, empty if none
 * @param terms a title that says what is counted or priced, as price per 100, bundles of 25; empty
 *     if none
 */
record Group(String genus, Optional<PlantMatch> species, String size, String terms) {}
