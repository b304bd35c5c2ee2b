package growingon.project.history;

import growingon.nursery.species.RootWorkYear;

/**
 * How the plants of a lot grew in a month.
 *
 * @param condition growing condition they stood in
 * @param years growth years of a plant of vigour 1, more than 0
 * @param afterRootWork how long ago their roots were cut
 * @param potBound whether they had stood in their pot for too long
 */
public record Grown(String condition, double years, RootWorkYear afterRootWork, boolean potBound) {}
