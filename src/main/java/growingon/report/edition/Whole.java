package growingon.report.edition;

import growingon.chance.Chances;
import growingon.money.Accounts;
import growingon.money.bought.ValueJoin;
import growingon.nursery.Inputs;
import growingon.report.figures.Context;
import java.util.List;
import java.util.Optional;

/**
 * The plan as its grower sees it, with its draws: of these an edition tells odds and bands.
 *
 * @param inputs what was read
 * @param accounts the plan's accounts
 * @param join what the lots bought within it gain
 * @param chances the plan's own draws
 */
public record Whole(Inputs inputs, Accounts accounts, ValueJoin join, Chances chances) {
  Context context() {
    return new Context(inputs, accounts, join, Optional.of(chances), List.of());
  }
}
