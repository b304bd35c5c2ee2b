package growingon.nursery;

import java.util.List;
import java.util.Objects;

/**
 * Everything read for a plan.
 *
 * @param scenario what is to be projected
 * @param offers every offer, taken or not
 * @param assumptions every value used and where it came from
 * @param stockRows rows of the stock list that were read
 */
public record Inputs(
    Scenario scenario, List<Offer> offers, List<Assumption> assumptions, int stockRows) {
  public Inputs {
    Objects.requireNonNull(scenario);
    offers = List.copyOf(offers);
    assumptions = List.copyOf(assumptions);
  }
}
