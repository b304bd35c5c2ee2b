package growingon.project;

/**
 * How a lot stands at the end of a business year.
 *
 * @param month offset of the year's last month
 * @param standing [quality][0 = no grade, then grades from the lowest], kept plants in a fourth row
 */
public record YearEnd(int month, double[][] standing) {}
