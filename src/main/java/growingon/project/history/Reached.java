package growingon.project.history;

import java.util.OptionalInt;

/**
 * When a lot's plants reach a grade, trunk and training together, as they would stand without sales
 * and losses.
 *
 * @param grade index of the grade
 * @param firstTenth month offset by which a tenth is there
 * @param middle month by which half is there
 * @param lastTenth month by which nine tenths are there
 */
public record Reached(
    int grade, OptionalInt firstTenth, OptionalInt middle, OptionalInt lastTenth) {}
