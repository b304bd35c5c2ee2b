package growingon.project.history;

/**
 * How a lot stands at the end of a business year.
 *
 * @param month offset of the year's last month
 * @param standing its plants
 */
public record YearEnd(int month, GradedPlants standing) {}
