package growingon.review.book;

import growingon.nursery.Inputs;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.history.Sale;
import growingon.project.lot.LotHistory;
import growingon.review.book.Standing.OfLot;
import growingon.review.kept.Expected;
import growingon.review.kept.KeptLot;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Plants gone without a line, with what they may have brought.
 *
 * @param gone the plants
 * @param root the lot of the plan that the lot was split off from, or the lot itself
 * @param species their species
 * @param planned what the plan had for the same time; empty of a lot that it did not have
 * @param worth what they brought if all of them were sold on the day of the count, the dearest
 *     grades first, at list price; plan currency
 */
public record GonePriced(
    Gone gone, String root, String species, Optional<Planned> planned, double worth) {
  /**
   * What a plan had.
   *
   * @param sold plants sold
   * @param lost plants that died or were culled
   */
  public record Planned(double sold, double lost) {}

  /** Two runs from what is there: as it is, and with all that is gone sold at list price. */
  private record Runs(Standing standing, Projection sold) {
    double worth(Gone gone, double share) {
      OfLot lot = standing.byName().get(gone.lot());
      double more = money(sold.lot(gone.lot()), gone.month()) - money(lot.history(), gone.month());
      return Math.max(0, more * share);
    }

    private static double money(LotHistory history, int month) {
      return history.sales().stream()
          .filter(sale -> sale.month() == month)
          .mapToDouble(Sale::money)
          .sum();
    }
  }

  /**
   * All plants gone without a line, in the order of their counts.
   *
   * @param inputs the plan with its daybook, which {@code daybook} is read from
   */
  public static List<GonePriced> of(
      Inputs inputs, YearMonth today, Bookkeeping daybook, Standing standing, Expected expected) {
    if (daybook.gone().isEmpty()) {
      return List.of();
    }
    Runs runs = new Runs(standing, sold(inputs, today, daybook, expected));
    List<GonePriced> all = new ArrayList<>();
    for (Gone gone : daybook.gone()) {
      double ofMonth =
          daybook.gone().stream()
              .filter(each -> each.lot().equals(gone.lot()) && each.month() == gone.month())
              .mapToDouble(Gone::plants)
              .sum();
      all.add(of(gone, runs, gone.plants() / ofMonth, expected));
    }
    return all;
  }

  private static Projection sold(
      Inputs inputs, YearMonth today, Bookkeeping daybook, Expected expected) {
    List<DaybookLine> lines = new ArrayList<>(inputs.daybook());
    daybook.gone().forEach(gone -> lines.add(sale(gone)));
    Bookkeeping other = Bookkeeping.of(inputs.withRecords(inputs.scenario(), lines), today);
    return Projector.projectKnown(inputs.scenario().withLots(other.lots()), other.facts(expected));
  }

  private static DaybookLine sale(Gone gone) {
    return DaybookLine.of(gone.counted(), gone.lot(), What.SOLD, gone.where())
        .quantity(OptionalDouble.of(gone.plants()))
        .build();
  }

  private static GonePriced of(Gone gone, Runs runs, double share, Expected expected) {
    OfLot lot = runs.standing.byName().get(gone.lot());
    int since =
        gone.since()
            .map(day -> runs.standing.projection().horizon().offset(YearMonth.from(day)))
            .orElse(-1);
    return new GonePriced(
        gone,
        lot.book().root,
        lot.book().lot.species(),
        expected.lot(lot.book().root).map(kept -> planned(kept, expected, since, gone.month())),
        runs.worth(gone, share));
  }

  private static Planned planned(KeptLot kept, Expected expected, int since, int until) {
    double atStart = expected.alive(kept, since);
    boolean comesWithin = kept.bought() && atStart == 0;
    double came = comesWithin ? kept.quantity() : atStart;
    double sold = expected.unitsUpTo(kept, until) - expected.unitsUpTo(kept, since);
    return new Planned(sold, came - sold - expected.alive(kept, until));
  }
}
