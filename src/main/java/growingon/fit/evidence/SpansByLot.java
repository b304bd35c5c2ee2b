package growingon.fit.evidence;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Spans of losses by the lot that they are of: who looks for those of one looks at no others. */
public final class SpansByLot {
  private final Map<String, List<LossSpan>> spans;

  public SpansByLot(List<LossSpan> spans) {
    this.spans = spans.stream().collect(Collectors.groupingBy(LossSpan::lot));
  }

  /** The spans of a lot that share some time with an interval. */
  public List<LossSpan> within(String lot, Interval interval) {
    return spans.getOrDefault(lot, List.of()).stream()
        .filter(span -> span.to() > interval.from() && span.from() < interval.to())
        .toList();
  }
}
