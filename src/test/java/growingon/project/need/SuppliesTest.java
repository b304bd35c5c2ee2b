package growingon.project.need;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import growingon.nursery.supply.Material;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Steps;
import growingon.project.history.Use;
import java.time.Month;
import org.junit.jupiter.api.Test;

/** What must be ordered, when and for how much, by hand. */
class SuppliesTest {
  /**
   * 25 plants: ties for all in November, stakes in December, pots in packs of ten at 2 each in
   * March, each ordered a month before. Nobody uses the canes.
   */
  private static Supplies supplies() {
    return Supplies.of(
        Nurseries.bare()
            .seasons(1)
            .leadMonths(1)
            .pot(Nurseries.roundPot("seven").with().pack(10).build())
            .material(new Material("stakes", "piece", 25, 30, 0, 0))
            .material(new Material("ties", "piece", 50, 12, 0, 0))
            .material(new Material("canes", "piece", 10, 5, 0, 0))
            .route(
                "r",
                Steps.onArrival("tie in").material("ties", 1).build(),
                Steps.in("stake", Month.DECEMBER, 0).material("stakes", 1).build(),
                Steps.in("pot", Month.MARCH, 0).pot("seven", null).build())
            .lot(Lots.lot("a").quantity(25).route("r").build())
            .project());
  }

  @Test
  void orders_standByMonthOfOrder_andAreLateWhereThatIsBeforeThePlan() {
    assertThat(supplies().orders())
        .extracting(
            each -> each.item().name(),
            Supplies.Order::orderMonth,
            Supplies.Order::needMonth,
            Supplies.Order::packs,
            Supplies.Order::late,
            Supplies.Order::cost)
        .containsExactly(
            tuple("ties", 0, 0, 1L, true, 12.0),
            tuple("stakes", 0, 1, 1L, false, 30.0),
            tuple("seven", 3, 4, 3L, false, 60.0));
  }

  @Test
  void itemsUsed_areThoseOfTheKindThatThePlanUses() {
    assertThat(supplies().used(Use.Kind.MATERIAL))
        .extracting(Supplies.Item::name)
        .containsExactly("stakes", "ties");
    assertThat(supplies().used(Use.Kind.POT)).extracting(Supplies.Item::name).contains("seven");
    assertThat(supplies().used(Use.Kind.COMPONENT)).isEmpty();
  }

  @Test
  void item_costsItsPacksInTheMonthOfNeed() {
    Supplies.Item pots = supplies().item(Use.Kind.POT, "seven");

    assertThat(pots.unitPrice()).isEqualTo(2);
    assertThat(pots.cost(3)).isZero();
    assertThat(pots.cost(4)).isEqualTo(60);
  }
}
