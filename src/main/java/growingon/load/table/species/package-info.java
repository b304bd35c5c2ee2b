/**
 * The table of species and species.json, with what a row takes from the library. Start at {@link
 * growingon.load.table.species.SpeciesTable}.
 */
package growingon.load.table.species;
