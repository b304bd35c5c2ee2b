package growingon.fit;

import growingon.fit.evidence.Evidence;
import growingon.fit.evidence.Interval;
import growingon.fit.evidence.LossSpan;
import growingon.fit.evidence.SpansByLot;
import growingon.fit.growth.SpeedFit;
import growingon.fit.past.Past;
import growingon.fit.past.Why;
import growingon.project.lot.LotHistory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What each record was used for, and why those that were not were left out. */
final class RecordRows {
  /** So great a share sold before it was ready is told of. */
  private static final double MUCH = 0.2;

  private final Past past;
  private final Set<String> soldWithoutGrade;
  private final Evidence evidence;
  private final SpeedFit.AtFirst atFirst;
  private final SpansByLot spansByLot;
  private final Map<String, Double> unready = new HashMap<>();

  /**
   * The rows of some evidence.
   *
   * @param soldWithoutGrade names of lots of which a sale says no grade
   * @param atFirst what was expected of it by the assumptions as they were
   */
  RecordRows(Past past, Set<String> soldWithoutGrade, Evidence evidence, SpeedFit.AtFirst atFirst) {
    this.past = past;
    this.soldWithoutGrade = soldWithoutGrade;
    this.evidence = evidence;
    this.atFirst = atFirst;
    this.spansByLot = new SpansByLot(evidence.spans());
    evidence.histories().forEach((name, history) -> unready.put(name, unreadyShare(history)));
  }

  List<RecordRow> rows() {
    List<RecordRow> rows = new ArrayList<>();
    for (int i = 0; i < evidence.intervals().size(); i++) {
      rows.add(row(i));
    }
    addLossOnly(rows);
    for (Past.Unused each : past.unused()) {
      rows.add(
          new RecordRow(
              each.subject(),
              "",
              "",
              each.month(),
              each.month(),
              Double.NaN,
              Double.NaN,
              Double.NaN,
              Double.NaN,
              Double.NaN,
              Double.NaN,
              Double.NaN,
              false,
              each.why() + " (" + each.where().column("") + ")"));
    }
    rows.sort(
        Comparator.comparing(RecordRow::subject)
            .thenComparing(RecordRow::from)
            .thenComparing(RecordRow::to)
            .thenComparing(RecordRow::why));
    return rows;
  }

  private RecordRow row(int index) {
    Interval each = evidence.intervals().get(index);
    List<LossSpan> spans =
        each.lot()
            .filter(lot -> !each.isTagged())
            .map(lot -> spansByLot.within(lot, each))
            .orElse(List.of());
    return new RecordRow(
        each.subject(),
        each.species(),
        each.condition(),
        past.horizon().month(each.from()),
        past.horizon().month(each.to()),
        each.first().meanMm(),
        each.second().meanMm(),
        atFirst.expected()[index],
        atFirst.deviations()[index],
        each.clock(),
        spans.stream().mapToDouble(LossSpan::gone).sum(),
        spans.stream().mapToDouble(LossSpan::sold).sum(),
        each.isUsed(),
        each.refused().orElseGet(() -> told(each)));
  }

  private static double unreadyShare(LotHistory history) {
    double sold = 0;
    for (int month = 0; month < history.months(); month++) {
      sold += history.sold(month);
    }
    return sold > 0 ? history.soldUnready() / sold : 0;
  }

  private String told(Interval interval) {
    List<String> told = new ArrayList<>();
    if (!interval.tells().isEmpty()) {
      told.add(interval.tells());
    }
    if (!interval.isTagged()) {
      if (unready.getOrDefault(interval.subject(), 0.0) > MUCH) {
        told.add(Why.soldUnready());
      }
      if (soldWithoutGrade.contains(interval.subject())) {
        told.add(Why.soldWithoutGrade());
      }
    }
    return String.join("; ", told);
  }

  /** Counts between which no trunk was measured tell of losses only. */
  private void addLossOnly(List<RecordRow> rows) {
    Map<String, List<Interval>> intervals =
        evidence.intervals().stream().collect(Collectors.groupingBy(Interval::subject));
    for (LossSpan span : evidence.spans()) {
      boolean isTold =
          intervals.getOrDefault(span.lot(), List.of()).stream()
              .anyMatch(each -> span.to() > each.from() && span.from() < each.to());
      if (!isTold) {
        rows.add(
            new RecordRow(
                span.lot(),
                span.species(),
                "",
                past.horizon().month(span.from()),
                past.horizon().month(span.to()),
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                span.gone(),
                span.sold(),
                false,
                span.refused().orElseGet(Why::noTrunk)));
      }
    }
  }
}
