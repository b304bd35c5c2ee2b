package growingon.fit.score;

/**
 * Scores of some figures together.
 *
 * @param plan the kept plan
 * @param figure which figure, or "all"
 * @param species of one species; empty for all
 * @param lead years ahead; empty for all
 * @param scored how many
 * @param inside how many lay from P10 to P90
 * @param low the share that should lie inside, or more: one in twenty of the plan's own draws had
 *     less; not a number where the file does not say it
 * @param high the share that should lie inside, or less: one in twenty had more
 * @param bias mean of seen over P50, less 1
 * @param score mean of twice the pinball losses, in plants or mm
 * @param meanError mean of |seen − P50|
 * @param verdict in words
 */
public record ForecastScore(
    String plan,
    String figure,
    String species,
    String lead,
    int scored,
    int inside,
    double low,
    double high,
    double bias,
    double score,
    double meanError,
    String verdict) {}
