package growingon.load.list;

import growingon.load.cell.Findings;
import growingon.problem.Where;
import growingon.problem.advice.ListAdvice;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What suppliers' lists offer, as far as it can be reckoned in the currency of the nursery.
 *
 * @param all every offer
 * @param currency of the nursery
 * @param site what is said of rates of exchange
 * @param file in which the last of them stands
 */
record OfferedPlants(List<Placed> all, String currency, SiteSaid site, String file) {
  /** More cannot be looked through by whoever buys, nor by a search. */
  private static final int MOST = 500;

  /** The offers that can be reckoned, as many as can be looked through. */
  List<Placed> bought(Findings findings) {
    if (all.size() > MOST) {
      findings.add(ListAdvice.tooManyOffers(Where.file(file), all.size(), MOST));
      return List.of();
    }
    rates()
        .forEach(
            code -> findings.add(ListAdvice.offersWithoutRate(Where.file(file), code, currency)));
    return all.stream().filter(offer -> isReckoned(offer.currency())).toList();
  }

  private boolean isReckoned(String code) {
    return code.isEmpty() || code.equals(currency) || site.exchanges(code);
  }

  /** Currencies of offers whose rate is not known. */
  Set<String> rates() {
    Set<String> codes = new TreeSet<>();
    all.stream().map(Placed::currency).filter(code -> !isReckoned(code)).forEach(codes::add);
    return codes;
  }
}
