package growingon.money;

import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Purchase;
import growingon.nursery.market.Quality;
import growingon.project.history.GradedPlants;
import growingon.project.history.Recorder;
import growingon.project.history.Use;
import growingon.project.history.Work;
import growingon.project.lot.Luck;
import java.util.Optional;

/**
 * Turns what happens to one lot into money: the one place that says what each happening costs. What
 * lies after the plan's last month is left out. All amounts are plan currency without VAT.
 */
public abstract class Booking implements Recorder {
  private final Tariff tariff;
  private final int months;
  private String chargedFor = "";
  private double[] charges = Tariff.NO_CHARGES;

  /** Books at the prices of a tariff. */
  public Booking(Tariff tariff) {
    this.tariff = tariff;
    this.months = tariff.months();
  }

  /** Books at the same prices. */
  protected Booking(Booking same) {
    this.tariff = same.tariff;
    this.months = same.months;
    this.chargedFor = same.chargedFor;
    this.charges = same.charges;
  }

  /** The lot is charged so much of a kind in a month. */
  public abstract void cost(CostKind kind, int month, double amount);

  /** So many hours were worked on the lot in a month; what they cost is told as a cost too. */
  public void hours(int month, double hours) {}

  /** So many plants brought so much money in a month. */
  public void receipts(int month, double plants, double money) {}

  /** The lot took so many square metres of a place in a month. */
  protected void takesSpace(int month, Optional<String> place, double m2) {}

  /** What the plants of a purchase cost is paid in a month: price, carriage and charges. */
  final void buy(Lot lot, double part, int month, double exchange) {
    if (lot.purchase().isPresent()) {
      Purchase purchase = lot.purchase().get();
      cost(CostKind.PLANTS, month, purchase.unitPrice() * lot.quantity() * part * exchange);
      double charges = purchase.carriage() + purchase.importCharges();
      cost(CostKind.CARRIAGE, month, charges * part * exchange);
    }
  }

  /** The same of a whole lot on the luck of a run. */
  public final void buy(Lot lot, int month, int season, Luck luck) {
    double exchange =
        lot.purchase().map(each -> luck.exchange(each.currency(), season)).orElse(1.0);
    buy(lot, 1, month, exchange);
  }

  @Override
  public void diedBefore(double plants) {
    // A death shows in what is sold and what stands.
  }

  @Override
  public void died(int month, double plants) {
    // A death shows in what is sold and what stands.
  }

  @Override
  public void culled(int month, double plants) {
    // A cull shows in what is sold and what stands.
  }

  @Override
  public void sold(int month, int row, int grade, Quality quality, double units, double money) {
    receipts(month, units, money);
    double selling = tariff.sellingCost(money);
    if (selling != 0) {
      cost(CostKind.SELLING, month, selling);
    }
  }

  @Override
  public void used(int month, Use.Kind kind, String item, double amount) {
    if (month < months) {
      cost(kindOf(kind), month, amount * tariff.unitPrice(kind, item));
    }
  }

  /** What a lot is charged for what it uses. */
  static CostKind kindOf(Use.Kind kind) {
    return switch (kind) {
      case POT -> CostKind.POTS;
      case COMPONENT -> CostKind.SUBSTRATE;
      case MATERIAL -> CostKind.MATERIALS;
    };
  }

  @Override
  public void freed(int month, String pot, double amount) {
    // Old pots that come back are no income of a lot.
  }

  @Override
  public void worked(int month, String job, double plants, double hours) {
    if (month < months) {
      if (job.equals(Work.SELLING)) {
        sellingLabour(month, hours * tariff.hourlyRate());
      }
      labour(month, hours);
    }
  }

  @Override
  public void cared(int month, double plants, double hours) {
    labour(month, hours);
  }

  private void labour(int month, double hours) {
    hours(month, hours);
    cost(CostKind.LABOUR, month, hours * tariff.hourlyRate());
  }

  /** So much of the month's labour, told as a cost next, was for selling. */
  protected void sellingLabour(int month, double amount) {}

  @Override
  public void paid(int month, double amount) {
    cost(CostKind.OTHER, month, -amount);
  }

  @Override
  public void stood(int month, Optional<String> place, double plants, double m2, double careCost) {
    cost(CostKind.CARE, month, careCost);
    takesSpace(month, place, m2);
    if (place.isPresent()) {
      cost(CostKind.PLACE, month, m2 * charges(place.get())[month]);
    }
  }

  /** What a square metre of a place is charged by month; a lot mostly stands where it stood. */
  private double[] charges(String place) {
    if (!place.equals(chargedFor)) {
      chargedFor = place;
      charges = tariff.chargesPerM2(place);
    }
    return charges;
  }

  @Override
  public void seasonEnded(int season, GradedPlants standing) {
    // What stands is worth something, but costs nothing.
  }
}
