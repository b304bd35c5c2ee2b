package growingon.project.history;

/**
 * How the plants of a lot stood just before a count was taken, after what came and went.
 *
 * @param plants plants alive
 * @param meanTrunkMm their mean trunk, mm; 0 for none
 * @param trunkSpread their spread as a share of the mean
 */
public record BeforeCount(double plants, double meanTrunkMm, double trunkSpread) {}
