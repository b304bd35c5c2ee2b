package growingon.review.book;

import growingon.nursery.record.DaybookLine.What;

/**
 * Plants lost to one reason, of one lot.
 *
 * @param reason as the daybook says it, empty if it does not
 * @param species their species
 * @param supplier who they came from, empty if not said
 * @param lot their lot
 * @param what died, culled or lost
 * @param plants how many
 * @param lines how many lines of the daybook say so
 * @param isNotifiable whether the reason says that it may have to be notified
 */
public record Loss(
    String reason,
    String species,
    String supplier,
    String lot,
    What what,
    double plants,
    int lines,
    boolean isNotifiable) {}
