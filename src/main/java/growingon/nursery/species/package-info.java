/**
 * How species grow, how many of them die, and how sure that is; what they have from the library.
 * Start at {@link growingon.nursery.species.Species}.
 */
package growingon.nursery.species;
