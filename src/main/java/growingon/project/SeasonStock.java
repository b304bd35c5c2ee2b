package growingon.project;

/**
 * How a lot stands at the end of a season; arrays by quality (first, second, third).
 *
 * @param season index of the season
 * @param standing [quality][0 = no grade, then grades from the lowest], kept plants in a fourth row
 * @param ready [quality][grade] plants that could be sold at that moment
 * @param meanTrunkMm mean trunk of the living plants, mm
 */
public record SeasonStock(int season, double[][] standing, double[][] ready, double meanTrunkMm) {}
