/**
 * The domain: what the nursery has, as immutable records that cannot be wrong; species, routes,
 * places, lots and the like in rooms of their own. Start at {@link growingon.nursery.Scenario}, the
 * whole input of a projection. Units are in the names (mm, litres, minutes); shares are 0 to 1. May
 * use {@code problem}.
 */
package growingon.nursery;
