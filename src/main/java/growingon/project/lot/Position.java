package growingon.project.lot;

import growingon.nursery.Nursery;
import growingon.nursery.Settings;
import growingon.nursery.place.Place;
import growingon.nursery.place.Spacing;
import growingon.nursery.supply.Pot;
import growingon.project.time.Calendar;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;

/**
 * Where a lot stands and how it is spaced there: its own place, the quarantine place while it is
 * apart, or its species' winter place.
 */
public final class Position {
  /** Months of winter that must be left for a lot to go in after the winter's first month. */
  private static final int WORTH_A_MOVE = 2;

  private static final int YEAR = 12;
  private static final double THIN_MM = 12;
  private static final double STOUT_MM = 30;

  /**
   * Plants a square metre that wait heeled in, by the mean trunk of the lot: under 12 mm, up to 30
   * mm, above. Common practice, no source.
   */
  private static final Spacing HEELED_IN_THIN = plants(60);

  private static final Spacing HEELED_IN = plants(20);
  private static final Spacing HEELED_IN_STOUT = plants(8);

  private final LotPlan plan;
  private final Calendar calendar;
  private final Optional<Place> apartPlace;
  private final Optional<Spacing> heeledIn;
  private final Spacing winterSpacing;
  private Optional<Place> own;
  private boolean winterPlaceIsOwn;
  private Optional<Place> heldIn;
  private Spacing ownSpacing;
  private boolean inWinterPlace;
  private Spot last;

  /** A move into or out of the winter place. */
  public record Move(Optional<Place> from, Optional<Place> to) {}

  Position(LotPlan plan, Surroundings where) {
    this.plan = plan;
    this.calendar = where.calendar();
    Nursery nursery = where.nursery();
    Settings settings = nursery.settings();
    this.apartPlace = where.apartPlace();
    OptionalDouble ownDensity = plan.lot.standing().heeledInPerM2();
    OptionalDouble density = ownDensity.isPresent() ? ownDensity : settings.heeledInPerM2();
    this.heeledIn =
        density.isPresent() ? Optional.of(plants(density.getAsDouble())) : Optional.empty();
    this.winterSpacing = new Spacing(settings.winterGapMm(), OptionalDouble.empty());
    this.own = plan.lot.standing().place().map(nursery.places()::get);
    this.winterPlaceIsOwn = plan.winterPlace.equals(own);
    this.heldIn = own;
    this.ownSpacing = plan.lot.standing().spacing().orElse(Spacing.NO_GAP);
  }

  /** The same so far, for a lot that goes on apart. */
  public Position(Position same) {
    this.plan = same.plan;
    this.calendar = same.calendar;
    this.apartPlace = same.apartPlace;
    this.heeledIn = same.heeledIn;
    this.winterSpacing = same.winterSpacing;
    takeOver(same);
  }

  /** Is from now on as another of the same lot is. */
  public void takeOver(Position same) {
    own = same.own;
    winterPlaceIsOwn = same.winterPlaceIsOwn;
    heldIn = same.heldIn;
    ownSpacing = same.ownSpacing;
    inWinterPlace = same.inWinterPlace;
    last = same.last;
  }

  private static Spacing plants(double perM2) {
    return new Spacing(0, OptionalDouble.of(perM2));
  }

  /** Its own place and spacing from now on; while it is apart, from its release. */
  public void standIn(Optional<Place> place, Optional<Spacing> spacing) {
    if (place.isPresent()) {
      own = place;
      winterPlaceIsOwn = plan.winterPlace.equals(own);
    }
    ownSpacing = spacing.orElse(ownSpacing);
  }

  /** Where it stands when its first month in the plan begins, as the calendar puts it. */
  public void begin(int month, boolean potted) {
    heldIn = own;
    inWinterPlace = wintersIn(month, potted);
  }

  /** Whether potted plants of its species stand in their winter place in a month. */
  private boolean wintersIn(int month, boolean potted) {
    return potted
        && plan.winterPlace.isPresent()
        && calendar.isWinter(month)
        && !plan.isApart(month)
        && !winterPlaceIsOwn;
  }

  /** Whether it may go into the winter place or back at the start of a month. */
  public boolean mayTurn(int month, boolean potted) {
    return inWinterPlace != wintersIn(month, potted);
  }

  /**
   * The first month on or after a month in which it may go into the winter place or back, or
   * another month if that comes first; of a lot that is apart no more.
   */
  public int staysUntil(int month, int other, boolean potted) {
    boolean mayEver = inWinterPlace || (potted && plan.winterPlace.isPresent());
    if (!mayEver) {
      return other;
    }
    int until = month;
    while (until < other && !mayTurn(until, potted) && until - month < YEAR) {
      until++;
    }
    return until;
  }

  /**
   * Goes into the winter place or back at the start of a month. A lot goes in when winter begins,
   * or later if two or more months of it are left; going out is at its end.
   *
   * @return the move made, if one was
   */
  public Optional<Move> turnOf(int month, boolean potted) {
    boolean winters = wintersIn(month, potted);
    if (inWinterPlace && !winters) {
      inWinterPlace = false;
      return winterPlaceIsOwn ? Optional.empty() : Optional.of(new Move(plan.winterPlace, own));
    }
    boolean begins = !calendar.isWinter(month - 1);
    if (!inWinterPlace && winters && (begins || isWorthAMove(month))) {
      inWinterPlace = true;
      boolean released = plan.isApart(month - 1);
      return Optional.of(new Move(released ? apartPlace.or(() -> heldIn) : own, plan.winterPlace));
    }
    return Optional.empty();
  }

  private boolean isWorthAMove(int month) {
    int left = 0;
    while (left < WORTH_A_MOVE && calendar.isWinter(month + left)) {
      left++;
    }
    return left == WORTH_A_MOVE;
  }

  /** Planted out it stands in its own place, in winter too. */
  public void plantedOut() {
    inWinterPlace = false;
  }

  /** The place in which it stands in a month. */
  public Optional<Place> in(int month) {
    if (plan.isApart(month)) {
      return apartPlace.or(() -> heldIn);
    }
    return inWinterPlace ? plan.winterPlace : own;
  }

  /** Whether the steps' own places and spacings hold in a month. */
  private Spacing spacing(int month, boolean potted, DoubleSupplier meanTrunkMm) {
    if (plan.isApart(month)) {
      return potted ? Spacing.NO_GAP : heeledIn.orElseGet(() -> byTrunk(meanTrunkMm));
    }
    return inWinterPlace ? winterSpacing : ownSpacing;
  }

  private static Spacing byTrunk(DoubleSupplier meanTrunkMm) {
    double trunk = meanTrunkMm.getAsDouble();
    if (trunk < THIN_MM) {
      return HEELED_IN_THIN;
    }
    return trunk <= STOUT_MM ? HEELED_IN : HEELED_IN_STOUT;
  }

  /**
   * How it stands in a month.
   *
   * @param meanTrunkMm mean trunk of the living plants; asked only of plants that wait heeled in
   */
  public Spot spot(int month, Optional<Pot> pot, DoubleSupplier meanTrunkMm) {
    Optional<Place> where = in(month);
    Spacing how = spacing(month, pot.isPresent(), meanTrunkMm);
    if (last == null || !last.isOf(pot, where, how)) {
      last = plan.spot(pot, where, how);
    }
    return last;
  }
}
