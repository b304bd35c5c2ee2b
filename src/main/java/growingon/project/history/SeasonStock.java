package growingon.project.history;

/**
 * How a lot stands at the end of a season.
 *
 * @param season index of the season
 * @param standing its plants
 * @param ready those that could be sold at that moment
 * @param meanTrunkMm mean trunk of the living plants, mm
 */
public record SeasonStock(
    int season, GradedPlants standing, GradedPlants ready, double meanTrunkMm) {}
