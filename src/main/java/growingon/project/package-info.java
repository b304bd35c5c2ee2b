/**
 * The projection: representative plants, the month loop, and what it yields (plants, space, hours,
 * pots, substrate, sales). Start at {@link growingon.project.Projector}, which takes a {@link
 * growingon.nursery.Scenario} and gives a {@link growingon.project.Projection}. May use {@code
 * nursery} and {@code growth}.
 */
package growingon.project;
