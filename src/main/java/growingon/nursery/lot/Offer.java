package growingon.nursery.lot;

import growingon.nursery.number.Check;
import growingon.nursery.time.Horizon;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A lot that can be bought.
 *
 * @param name unique among offers and lots
 * @param take plants taken where there is no plan.json; 0 for none
 * @param currency code of the currency of prices
 * @param rate plan currency for one unit of it
 * @param breaks price breaks, least quantity rising
 * @param multiple sold in multiples of
 * @param most greatest quantity; empty for no limit
 * @param arrival month of arrival
 * @param orderBy month by the end of which it must be ordered, if stated
 * @param carriage for the whole order, offer currency
 * @param importCharges for the whole order, offer currency
 * @param lossSure how sure its loss is, 0 to 1
 * @param fails chance that it fails as a whole, 0 to 1
 * @param again how it comes again, if it does
 * @param lot the lot it becomes, with quantity 0 and without a purchase
 */
@RecordBuilder
public record Offer(
    String name,
    int take,
    String currency,
    double rate,
    List<PriceBreak> breaks,
    int multiple,
    OptionalInt most,
    YearMonth arrival,
    Optional<YearMonth> orderBy,
    double carriage,
    double importCharges,
    double lossSure,
    double fails,
    Optional<Again> again,
    Lot lot)
    implements OfferBuilder.With {
  /**
   * How an offer comes again: the same every so many seasons, each time an order of its own.
   *
   * @param seasons seasons from one arrival to the next
   * @param until last month in which it may arrive; empty for the end of the plan
   */
  public record Again(int seasons, Optional<YearMonth> until) {
    public Again {
      Check.that(seasons >= 1, "an offer comes again after a season or more", seasons);
      Objects.requireNonNull(until);
    }

    boolean allows(YearMonth month) {
      return until.map(last -> !month.isAfter(last)).orElse(true);
    }
  }

  /**
   * A price from a quantity upwards.
   *
   * @param least least quantity
   * @param unitPrice price of every plant from that quantity, offer currency
   */
  public record PriceBreak(int least, double unitPrice) {
    public PriceBreak {
      Check.that(least >= 1, "a least quantity is at least 1", least);
      Check.notNegative(unitPrice, "unit price");
    }
  }

  public Offer {
    Check.named(name, "an offer");
    Check.notNegative(take, "take of " + name);
    Check.positive(rate, "exchange rate of " + currency);
    breaks = List.copyOf(breaks);
    Check.that(!breaks.isEmpty(), "an offer needs a price", name);
    for (int i = 1; i < breaks.size(); i++) {
      Check.that(breaks.get(i).least() > breaks.get(i - 1).least(), "price breaks must rise", name);
    }
    Check.that(multiple >= 1, "a multiple is at least 1", multiple);
    Objects.requireNonNull(most);
    Objects.requireNonNull(arrival);
    Objects.requireNonNull(orderBy);
    Objects.requireNonNull(again);
    Check.notNegative(carriage, "carriage");
    Check.notNegative(importCharges, "import charges");
    Objects.requireNonNull(lot);
  }

  /**
   * The orders that it stands for within a plan, each an offer that comes once: itself under its
   * own name, then one for each time it comes again, named with the year of arrival.
   */
  public List<Offer> orders(Horizon horizon) {
    List<Offer> orders = new ArrayList<>(List.of(arriving(name, arrival)));
    again.ifPresent(
        recurs -> {
          YearMonth next = arrival.plusYears(recurs.seasons());
          while (horizon.offset(next) < horizon.months() && recurs.allows(next)) {
            orders.add(arriving(name + " " + next.getYear(), next));
            next = next.plusYears(recurs.seasons());
          }
        });
    return orders;
  }

  private Offer arriving(String newName, YearMonth month) {
    long later = ChronoUnit.MONTHS.between(arrival, month);
    return with()
        .name(newName)
        .arrival(month)
        .orderBy(orderBy.map(first -> first.plusMonths(later)))
        .lot(lot.arrivedIn(month).withQuantity(newName, 0, 0))
        .build();
  }

  /** The same offer of a lot with something else held back, or nothing. */
  public Offer withHold(Optional<Hold> hold) {
    return with().lot(lot.withHold(hold)).build();
  }

  /** Least quantity that can be bought. */
  public int least() {
    return breaks.get(0).least();
  }

  /** Whether a quantity can be bought: 0, or at least the least, a multiple, at most the most. */
  public boolean allows(int quantity) {
    return quantity == 0
        || (quantity >= least() && quantity % multiple == 0 && quantity <= most.orElse(quantity));
  }

  /** Price of one plant at a quantity, offer currency: the greatest break at or below it. */
  public double unitPrice(int quantity) {
    double price = breaks.get(0).unitPrice();
    for (PriceBreak step : breaks) {
      if (step.least() <= quantity) {
        price = step.unitPrice();
      }
    }
    return price;
  }

  /** The lot that a quantity of the offer becomes, costs in plan currency. */
  public Lot taken(int quantity) {
    Purchase purchase =
        new Purchase(
            unitPrice(quantity) * rate,
            carriage * rate,
            importCharges * rate,
            currency,
            lossSure,
            fails);
    return lot.with()
        .name(name)
        .quantity(quantity)
        .arrived(arrival)
        .counted(arrival)
        .purchase(Optional.of(purchase))
        .build();
  }

  /** An offer of a lot of which nothing else is said yet: what is not said has its usual value. */
  public static OfferBuilder named(String name, Lot lot) {
    return OfferBuilder.builder().name(name).lot(lot).rate(1).multiple(1).lossSure(1);
  }
}
