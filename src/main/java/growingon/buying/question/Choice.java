package growingon.buying.question;

import growingon.nursery.lot.Hold;
import growingon.nursery.lot.Offer;
import java.util.List;
import java.util.Optional;

/** One thing that is decided now. Its value is a number, 0 where nothing is done. */
public sealed interface Choice {
  /** Name of the offer or lot. */
  String name();

  /** Name of the grade ladder of its lots: only lots of a ladder meet in the market. */
  String ladder();

  /**
   * How many plants of an offer are taken: the value is their number, the same of each order.
   *
   * @param offer the offer
   * @param orders the orders that it stands for and that are not placed yet
   */
  record Take(Offer offer, List<Offer> orders, String ladder) implements Choice {
    public Take {
      orders = List.copyOf(orders);
    }

    @Override
    public String name() {
      return offer.name();
    }
  }

  /**
   * What is held of a lot, or of the lots of an offer: the value is an index into the holds, the
   * first of which is what is held as given.
   *
   * @param name of the lot or offer
   * @param ofOffer whether it is an offer's
   * @param holds what may be held
   */
  record Holding(String name, boolean ofOffer, List<Optional<Hold>> holds, String ladder)
      implements Choice {
    public Holding {
      holds = List.copyOf(holds);
    }

    /** What a value stands for. */
    public Optional<Hold> hold(int value) {
      return holds.get(value);
    }
  }
}
