/**
 * The projection: the month loop and all that takes part in it. What is set before it and what it
 * yields (plants, space, hours, pots, substrate, sales) has rooms of its own. Start at {@link
 * growingon.project.Projector}, which takes a {@link growingon.nursery.Scenario} and gives a {@link
 * growingon.project.Projection}. May use {@code nursery} and {@code growth}.
 */
package growingon.project;
