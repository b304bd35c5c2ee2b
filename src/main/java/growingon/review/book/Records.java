package growingon.review.book;

import growingon.nursery.lot.Papers;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.review.book.Standing.OfLot;
import growingon.review.book.Trace.Left;
import growingon.review.book.Trace.Moved;
import growingon.review.book.Trace.TracedLot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What the lines of the daybook say by themselves: losses, suspicions, traces. */
public final class Records {
  /** A reason that begins so may have to be notified. */
  private static final String NOTIFIABLE = "notifiable";

  private final Bookkeeping daybook;
  private final Standing standing;

  public Records(Bookkeeping daybook, Standing standing) {
    this.daybook = daybook;
    this.standing = standing;
  }

  private static boolean isNotifiable(String reason) {
    return reason.strip().toLowerCase(Locale.ROOT).startsWith(NOTIFIABLE);
  }

  private Optional<OfLot> lot(String name) {
    return Optional.ofNullable(standing.byName().get(name));
  }

  private Papers papers(String lot) {
    return lot(lot).map(each -> each.book().lot.papers()).orElse(Papers.NONE);
  }

  private record LossKey(String reason, String lot, What what) {}

  /** Losses by reason, lot and what happened, largest first. */
  public List<Loss> losses() {
    Map<LossKey, double[]> sums = new LinkedHashMap<>();
    for (DaybookLine line : daybook.lines()) {
      if (line.what() == What.DIED || line.what() == What.CULLED || line.what() == What.LOST) {
        LossKey key = new LossKey(line.reason().strip(), line.lot(), line.what());
        double[] sum = sums.computeIfAbsent(key, each -> new double[2]);
        sum[0] += line.quantity().orElseThrow();
        sum[1]++;
      }
    }
    List<Loss> losses = new ArrayList<>();
    sums.forEach((key, sum) -> losses.add(loss(key, sum)));
    losses.sort(
        Comparator.comparingDouble(Loss::plants)
            .reversed()
            .thenComparing(Loss::reason)
            .thenComparing(Loss::lot)
            .thenComparing(Loss::what));
    return losses;
  }

  private Loss loss(LossKey key, double[] sum) {
    return new Loss(
        key.reason(),
        lot(key.lot()).map(each -> each.book().lot.species()).orElse(""),
        papers(key.lot()).supplier(),
        key.lot(),
        key.what(),
        sum[0],
        (int) sum[1],
        isNotifiable(key.reason()));
  }

  /** Lines that may have to be notified, by date. */
  public List<Suspicion> suspicions() {
    return daybook.lines().stream()
        .filter(line -> isNotifiable(line.reason()))
        .map(
            line ->
                new Suspicion(
                    line.date(),
                    line.lot(),
                    papers(line.lot()).passport(),
                    lot(line.lot()).flatMap(each -> each.place(standing.through())),
                    line.where()))
        .toList();
  }

  /** Where the plants of each passport are, by passport. */
  public List<Trace> traces() {
    Map<String, List<Moved>> moves = new HashMap<>();
    Map<String, List<Left>> left = new HashMap<>();
    for (DaybookLine line : daybook.lines()) {
      if (line.toLot().isPresent() && line.quantity().isPresent()) {
        Moved moved = moved(line);
        moves.computeIfAbsent(line.lot(), lot -> new ArrayList<>()).add(moved);
        moves.computeIfAbsent(line.toLot().get(), lot -> new ArrayList<>()).add(moved);
      }
      left(line)
          .ifPresent(each -> left.computeIfAbsent(line.lot(), lot -> new ArrayList<>()).add(each));
    }
    Map<String, List<TracedLot>> traces = new TreeMap<>();
    for (OfLot lot : standing.lots()) {
      String passport = lot.book().lot.papers().passport();
      if (!passport.isEmpty()) {
        traces
            .computeIfAbsent(passport, each -> new ArrayList<>())
            .add(
                traced(
                    lot,
                    moves.getOrDefault(lot.name(), List.of()),
                    left.getOrDefault(lot.name(), List.of())));
      }
    }
    List<Trace> list = new ArrayList<>();
    traces.forEach((passport, lots) -> list.add(new Trace(passport, lots)));
    return list;
  }

  private static Moved moved(DaybookLine line) {
    return new Moved(
        line.date(),
        line.lot(),
        line.toLot().orElseThrow(),
        line.quantity().getAsDouble(),
        line.where());
  }

  private static Optional<Left> left(DaybookLine line) {
    if (line.what() != What.SOLD && line.what() != What.USED && line.what() != What.RETURNED) {
      return Optional.empty();
    }
    double sign = line.what() == What.RETURNED ? -1 : 1;
    return Optional.of(
        new Left(
            line.date(),
            line.what(),
            sign * line.quantity().orElseThrow(),
            line.grade(),
            line.quality(),
            line.customer(),
            line.where()));
  }

  private TracedLot traced(OfLot lot, List<Moved> moves, List<Left> left) {
    Papers papers = lot.book().lot.papers();
    int month = standing.through();
    return new TracedLot(
        lot.name(),
        lot.book().lot.species(),
        papers.supplier(),
        papers.origin(),
        lot.book().splitFrom,
        lot.place(month),
        lot.alive(month),
        lot.wholeAlive(month),
        moves,
        left);
  }
}
