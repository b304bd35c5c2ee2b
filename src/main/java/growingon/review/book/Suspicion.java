package growingon.review.book;

import growingon.problem.Where;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A line whose reason begins with "notifiable": ask the plant health service before moving plants.
 * No diagnosis is named.
 *
 * @param date the day
 * @param lot the lot
 * @param passport its passport, empty if not said
 * @param place where it stands now, if in a place
 * @param where the row of the daybook
 */
public record Suspicion(
    LocalDate date, String lot, String passport, Optional<String> place, Where where) {}
