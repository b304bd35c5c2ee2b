package growingon.nursery.record;

import growingon.problem.Where;
import java.util.List;
import java.util.Map;

/**
 * What a nursery has written down of its past beside the daybook.
 *
 * @param lists stock lists of different months, today's among them
 * @param readings tagged plants and samples
 * @param measured how many trunks the mean of a row of the daybook is of, for the rows that say so
 * @param priors what was assumed before anything was learnt, by species and key of species.json; of
 *     growth the rate of its law, under "growth" and the condition
 * @param priorSures how sure that was, per cent, by the same keys
 * @param receipts what a till or the bookkeeping has of sales, in the order of the table
 */
public record PastRecords(
    List<StockList> lists,
    List<Reading> readings,
    Map<Where, Integer> measured,
    Map<String, Map<String, Double>> priors,
    Map<String, Map<String, Double>> priorSures,
    List<Receipt> receipts) {
  /** Nothing. */
  public static final PastRecords NONE =
      new PastRecords(List.of(), List.of(), Map.of(), Map.of(), Map.of(), List.of());

  public PastRecords {
    lists = List.copyOf(lists);
    readings = List.copyOf(readings);
    measured = Map.copyOf(measured);
    priors = Map.copyOf(priors);
    priorSures = Map.copyOf(priorSures);
    receipts = List.copyOf(receipts);
  }
}
