package growingon.review.book;

import growingon.nursery.market.Quality;
import growingon.problem.Where;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Where the plants of a passport are.
 *
 * @param passport the passport
 * @param lots the lots that have it
 */
public record Trace(String passport, List<TracedLot> lots) {
  public Trace {
    lots = List.copyOf(lots);
  }

  /**
   * A lot of a passport.
   *
   * @param lot its name
   * @param species its species
   * @param supplier who it came from, empty if not said
   * @param origin where it was grown, empty if not said
   * @param splitFrom the lot it was split off from, if it was
   * @param place where it stands now; nowhere without a place or when none is left
   * @param alive plants alive now
   * @param wholeAlive whole plants alive now
   * @param moves plants that came from or went to other lots
   * @param sales plants that left: sold or used
   */
  public record TracedLot(
      String lot,
      String species,
      String supplier,
      String origin,
      Optional<String> splitFrom,
      Optional<String> place,
      double alive,
      long wholeAlive,
      List<Moved> moves,
      List<Left> sales) {
    /** A lot of which the next whole plants are alive. */
    public TracedLot(
        String lot,
        String species,
        String supplier,
        String origin,
        Optional<String> splitFrom,
        Optional<String> place,
        double alive,
        List<Moved> moves,
        List<Left> sales) {
      this(
          lot, species, supplier, origin, splitFrom, place, alive, Math.round(alive), moves, sales);
    }

    public TracedLot {
      moves = List.copyOf(moves);
      sales = List.copyOf(sales);
    }
  }

  /**
   * Plants that went from one lot to another.
   *
   * @param date the day
   * @param from lot they left
   * @param to lot they went to
   * @param plants how many
   * @param where the row of the daybook
   */
  public record Moved(LocalDate date, String from, String to, double plants, Where where) {}

  /**
   * Plants that left the nursery.
   *
   * @param date the day
   * @param what sold or used, or returned, for which {@code plants} is negative
   * @param plants how many
   * @param grade their grade, if said
   * @param quality their quality, if said
   * @param customer code of the customer, empty if not said
   * @param where the row of the daybook
   */
  public record Left(
      LocalDate date,
      growingon.nursery.record.DaybookLine.What what,
      double plants,
      Optional<String> grade,
      Optional<Quality> quality,
      String customer,
      Where where) {}
}
