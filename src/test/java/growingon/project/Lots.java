package growingon.project;

import growingon.nursery.lot.Form;
import growingon.nursery.lot.Hold;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Papers;
import growingon.nursery.lot.Potting;
import growingon.nursery.lot.Purchase;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.lot.Standing;
import growingon.nursery.lot.Trunks;
import growingon.nursery.place.Spacing;
import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalDouble;

/** A lot to be built up in a test: 100 ash, all 10 mm, arrived in the first month, route "none". */
public final class Lots {
  private final String name;
  private String species = "ash";
  private Form form = Form.CONTAINER;
  private int quantity = 100;
  private YearMonth arrived = Nurseries.NOV_2026;
  private YearMonth counted;
  private Trunks trunks = new Trunks.Measured(10, 0);
  private QualityShares quality = QualityShares.ALL_FIRSTS;
  private Potting potting = Potting.NONE;
  private Optional<String> place = Optional.empty();
  private Optional<Spacing> spacing = Optional.empty();
  private double crownMm;
  private double heightMm = 600;
  private String route = "none";
  private Optional<String> lastStep = Optional.empty();
  private Optional<YearMonth> training = Optional.empty();
  private Optional<Hold> hold = Optional.empty();
  private int kept;
  private YearMonth notBefore;
  private int apart;
  private boolean untouched;
  private OptionalDouble heeledIn = OptionalDouble.empty();
  private double unitCost;
  private Optional<Purchase> purchase = Optional.empty();
  private Papers papers = Papers.NONE;

  private Lots(String name) {
    this.name = name;
  }

  public static Lots lot(String name) {
    return new Lots(name);
  }

  /** A lot of field-grown maples bought in February 2027 and sorted when it is potted. */
  public static Lots boughtMaples(String name) {
    return lot(name)
        .species("maple")
        .quantity(120)
        .trunks(21, 0.22)
        .quality(0.55, 0.3, false)
        .arrived(2027, 2)
        .bought(14, 120)
        .place("ground")
        .route("field tree");
  }

  /** Elms that have stood in seven-litre pots since March 2026. */
  public static Lots pottedElms(String name) {
    return lot(name)
        .species("elm")
        .quantity(90)
        .trunks(14, 0.15)
        .arrived(2026, 3)
        .pot("7 litre")
        .place("ground")
        .route("liner");
  }

  public Lots species(String value) {
    species = value;
    return this;
  }

  public Lots form(Form value) {
    form = value;
    return this;
  }

  public Lots quantity(int value) {
    quantity = value;
    return this;
  }

  public Lots arrived(int year, int month) {
    arrived = YearMonth.of(year, month);
    return this;
  }

  public Lots counted(int year, int month) {
    counted = YearMonth.of(year, month);
    return this;
  }

  public Lots trunks(double mean, double spread) {
    trunks = new Trunks.Measured(mean, spread);
    return this;
  }

  public Lots sizeClass(double from, double to) {
    trunks = new Trunks.SizeClass(from, to);
    return this;
  }

  public Lots quality(double first, double second, boolean sorted) {
    quality = new QualityShares(first, second, sorted, 1);
    return this;
  }

  public Lots pot(String pot) {
    potting = new Potting(Optional.of(pot), potting.potted(), potting.rootWork());
    return this;
  }

  public Lots potted(int year, int month) {
    potting =
        new Potting(potting.pot(), Optional.of(YearMonth.of(year, month)), potting.rootWork());
    return this;
  }

  public Lots rootWork(int year, int month) {
    potting = new Potting(potting.pot(), potting.potted(), Optional.of(YearMonth.of(year, month)));
    return this;
  }

  public Lots place(String value) {
    place = Optional.of(value);
    return this;
  }

  public Lots gap(double mm) {
    spacing = Optional.of(new Spacing(mm, OptionalDouble.empty()));
    return this;
  }

  public Lots plantsPerM2(double plants) {
    spacing = Optional.of(new Spacing(0, OptionalDouble.of(plants)));
    return this;
  }

  public Lots crown(double mm) {
    crownMm = mm;
    return this;
  }

  public Lots height(double mm) {
    heightMm = mm;
    return this;
  }

  public Lots route(String value) {
    route = value;
    return this;
  }

  public Lots lastStep(String value) {
    lastStep = Optional.of(value);
    return this;
  }

  public Lots trainingSince(int year, int month) {
    training = Optional.of(YearMonth.of(year, month));
    return this;
  }

  public Lots hold(String grade, double share) {
    hold = Optional.of(new Hold(grade, share));
    return this;
  }

  public Lots kept(int value) {
    kept = value;
    return this;
  }

  public Lots notBefore(int year, int month) {
    notBefore = YearMonth.of(year, month);
    return this;
  }

  public Lots apart(int months) {
    apart = months;
    return this;
  }

  public Lots untouched() {
    untouched = true;
    return this;
  }

  public Lots heeledIn(double plantsPerM2) {
    heeledIn = OptionalDouble.of(plantsPerM2);
    return this;
  }

  public Lots unitCost(double value) {
    unitCost = value;
    return this;
  }

  public Lots bought(double unitPrice, double carriage) {
    purchase = Optional.of(new Purchase(unitPrice, carriage, 0, "GBP", 1, 0));
    return this;
  }

  /** Bought, with a loss that is only so sure and a chance that the whole lot fails. */
  public Lots bought(double unitPrice, double carriage, double lossSure, double fails) {
    purchase = Optional.of(new Purchase(unitPrice, carriage, 0, "GBP", lossSure, fails));
    return this;
  }

  /** Not sorted, and its shares only so sure. */
  public Lots unseen(double first, double second, double sure) {
    quality = new QualityShares(first, second, false, sure);
    return this;
  }

  public Lots papers(Papers value) {
    papers = value;
    return this;
  }

  public Lot build() {
    YearMonth since = arrived.isAfter(Nurseries.NOV_2026) ? arrived : Nurseries.NOV_2026;
    return Lot.named(name, species)
        .form(form)
        .quantity(quantity)
        .arrived(arrived)
        .counted(counted == null ? since : counted)
        .trunks(trunks)
        .quality(quality)
        .potting(potting)
        .standing(new Standing(place, spacing, crownMm, heightMm, heeledIn))
        .route(route)
        .lastStep(lastStep)
        .trainingSince(training)
        .hold(hold)
        .kept(kept)
        .notBefore(notBefore == null ? arrived : notBefore)
        .apartMonths(apart)
        .untouched(untouched)
        .unitCost(unitCost)
        .purchase(purchase)
        .papers(papers)
        .build();
  }
}
