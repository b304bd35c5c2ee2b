package growingon.fit.score;

import growingon.review.kept.KeptPlan.Figure;
import growingon.review.kept.Range;
import java.time.YearMonth;
import java.util.Optional;

/**
 * One figure that was foreseen and then seen.
 *
 * @param plan name of the kept plan
 * @param figure which
 * @param lot the lot
 * @param species its species
 * @param month the month at whose end it was seen
 * @param lead years from the plan's first month, 1 for the first
 * @param foreseen what the plan's draws said
 * @param seen what was seen
 * @param inside whether it lay from P10 to P90, within the error of measuring
 * @param pinball twice the mean of the three pinball losses
 * @param within which of the plan's draws were inside of the others, as it was kept; empty in older
 *     files
 */
public record Scored(
    String plan,
    Figure figure,
    String lot,
    String species,
    YearMonth month,
    int lead,
    Range foreseen,
    double seen,
    boolean inside,
    double pinball,
    Optional<String> within) {}
