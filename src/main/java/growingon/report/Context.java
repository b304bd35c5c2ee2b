package growingon.report;

import growingon.chance.Chances;
import growingon.money.Accounts;
import growingon.money.BoughtLot;
import growingon.nursery.Inputs;
import growingon.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * What every sheet is made from.
 *
 * @param inputs what was read
 * @param accounts the plan's accounts, with its projection
 * @param bought what each lot bought within the plan is worth
 * @param chances how sure the plan is, where draws were made
 * @param problems everything found while reading and projecting
 */
record Context(
    Inputs inputs,
    Accounts accounts,
    List<BoughtLot> bought,
    Optional<Chances> chances,
    List<Problem> problems) {}
