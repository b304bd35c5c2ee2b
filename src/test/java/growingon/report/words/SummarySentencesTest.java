package growingon.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.Scenario;
import growingon.nursery.market.Demand;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.time.MonthSpan;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Steps;
import growingon.report.MapleNursery;
import growingon.report.SmallNursery;
import growingon.report.figures.Context;
import growingon.report.plan.SummarySheet;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * What the Summary says, in nurseries whose figures can be worked out by hand: 100 ash, no losses,
 * seasons from November 2026.
 */
class SummarySentencesTest {
  private static Nurseries withLot(Lots lot) {
    return Nurseries.bare().lot(lot.build());
  }

  private static Lots ash() {
    return Lots.lot("ash 26").plantsPerM2(8);
  }

  private static Context context(Nurseries nursery) {
    return MapleNursery.context(nursery.scenario());
  }

  private static SaleWords sales(Nurseries nursery) {
    Context context = context(nursery);
    return new SaleWords(context);
  }

  private static String saleable(Nurseries nursery) {
    return String.join(" ", sales(nursery).saleable());
  }

  private static String space(Nurseries nursery) {
    return String.join(" ", new SpaceWords(context(nursery)).sentences());
  }

  private static String hours(Nurseries nursery) {
    return new HoursWords(context(nursery)).summary();
  }

  private static String orders(Nurseries nursery) {
    Context context = context(nursery);
    return String.join(" ", new OrderWords(context).sentences());
  }

  @Test
  void saleable_allIsSold() {
    assertThat(saleable(withLot(ash()).sellsAll("one", "any", 10)))
        .isEqualTo(
            "In 2026/27, the first full season, 100 plants can be sold: 100 ash any. The plan sells"
                + " them all, for GBP 1,000.");
  }

  @Test
  void saleable_someIsWanted() {
    Demand thirty = Nurseries.demandRow("one", "any", OptionalDouble.of(30), 10);
    SaleWords words = sales(withLot(ash()).demand(thirty));
    assertThat(String.join(" ", words.saleable()))
        .isEqualTo(
            "In 2026/27, the first full season, 100 plants can be sold: 100 ash any. The plan sells"
                + " 30 of them, for GBP 300.");
    assertThat(words.bySeason())
        .isEqualTo(
            "Sales expected: 2026/27 GBP 300, 2027/28 GBP 300 and 2028/29 GBP 300; in all GBP 900,"
                + " without VAT.");
  }

  @Test
  void saleable_partSeasonFirst_tellsTheSeasonAfter() {
    Nurseries nursery = withLot(ash()).seasonStart(Month.JULY).sellsAll("one", "any", 10);
    assertThat(saleable(nursery))
        .isEqualTo(
            "In 2026/27 from Nov, the season under way, 100 plants can be sold and 100 are sold, for"
                + " GBP 1,000. In 2027/28, the first full season, no plant is ready to be sold.");
  }

  @Test
  void saleable_onlyAPartSeason() {
    Nurseries nursery =
        withLot(ash()).seasons(1).seasonStart(Month.JULY).sellsAll("one", "any", 10);
    assertThat(saleable(nursery))
        .isEqualTo(
            "In 2026/27 from Nov, the only season, 100 plants can be sold: 100 ash any. The plan"
                + " sells them all, for GBP 1,000.");
  }

  @Test
  void sales_moreWantedThanReady() {
    Demand many = Nurseries.demandRow("one", "any", OptionalDouble.of(120), 10);
    assertThat(sales(withLot(ash()).seasons(1).demand(many)).bySeason())
        .isEqualTo(
            "Sales expected: 2026/27 GBP 1,000, without VAT. The demand table asks for 20 plants"
                + " more than are ready in time.");
  }

  @Test
  void sales_noDemandTable() {
    SaleWords words = sales(withLot(ash()));
    assertThat(words.bySeason())
        .isEqualTo("No sales are expected: the nursery has no demand table.");
    assertThat(String.join(" ", words.saleable()))
        .isEqualTo(
            "In 2026/27, the first full season, 100 plants can be sold: 100 ash any. The plan sells"
                + " none of them: the demand table asks for none.");
  }

  // 100 plants at 8 a m² need 12.5 m².

  @Test
  void space_onlyBenchTooSmall() {
    Nurseries nursery =
        withLot(ash().place("bench")).place(Nurseries.place("bench", PlaceKind.BENCH, 10));
    assertThat(space(nursery))
        .isEqualTo(
            "Bench is too small from Nov 2026 to Oct 2029, most in Nov 2026, by 2.5 m² (12.5 m²"
                + " needed, 10.0 m² there); no other place has room then.");
  }

  @Test
  void space_anotherBenchHasRoom() {
    Nurseries nursery =
        withLot(ash().place("bench"))
            .place(Nurseries.place("bench", PlaceKind.BENCH, 10))
            .place(Nurseries.place("ground", PlaceKind.STANDING_GROUND, 90))
            .place(Nurseries.place("back bench", PlaceKind.BENCH, 30));
    assertThat(space(nursery))
        .isEqualTo(
            "Bench is too small from Nov 2026 to Oct 2029, most in Nov 2026, by 2.5 m² (12.5 m²"
                + " needed, 10.0 m² there); back bench (30.0 m² free) could take it.");
  }

  @Test
  void space_severalPlacesTogetherCouldTakeIt_ofTheSameConditionAndKindFirst() {
    Nurseries nursery =
        withLot(ash().place("bench").plantsPerM2(2))
            .place(Nurseries.place("bench", PlaceKind.BENCH, 10))
            .place(Nurseries.place("bed", PlaceKind.FIELD_BED, 900))
            .place(Nurseries.place("tunnel", PlaceKind.TUNNEL, 30))
            .place(Nurseries.place("back bench", PlaceKind.BENCH, 15));
    assertThat(space(nursery))
        .endsWith("back bench (15.0 m² free) and tunnel (30.0 m² free) together could take it.");
    nursery.place(Nurseries.place("tunnel", PlaceKind.TUNNEL, 20));
    assertThat(space(nursery))
        .endsWith("back bench (15.0 m² free) and tunnel (20.0 m² free) could take 35.0 m² of it.");
  }

  @Test
  void space_quarantineFirst() {
    Nurseries nursery =
        withLot(ash().place("bench"))
            .lot(
                Lots.lot("new")
                    .plantsPerM2(10)
                    .heeledIn(10)
                    .place("bench")
                    .arrived(2027, 1)
                    .apart(1)
                    .build())
            .place(Nurseries.place("bench", PlaceKind.BENCH, 10))
            .place(Nurseries.place("nook", PlaceKind.QUARANTINE, 9));
    assertThat(space(nursery))
        .startsWith(
            "Nook is too small in Jan 2027, by 1.0 m² (10.0 m² needed, 9.0 m² there); no"
                + " other quarantine place has room then. Bench is too small");
  }

  @Test
  void space_everythingFits() {
    Nurseries nursery =
        withLot(ash().place("bench")).place(Nurseries.place("bench", PlaceKind.BENCH, 20));
    assertThat(space(nursery))
        .isEqualTo(
            "Everything fits: the fullest place is bench in Nov 2026, with 63 % of its 20.0 m² in"
                + " use.");
  }

  @Test
  void space_lotWithoutAPlace() {
    Nurseries nursery = withLot(ash()).place(Nurseries.place("bench", PlaceKind.BENCH, 20));
    assertThat(space(nursery))
        .isEqualTo(
            "Lots without a place need up to 12.5 m² (Nov 2026): give each a place in the stock"
                + " list.");
  }

  @Test
  void space_noPlacesTable() {
    assertThat(space(withLot(ash())))
        .isEqualTo("The nursery has no places table, so nothing can be said about space.");
  }

  // 60 minutes each for 100 plants are 100 hours.

  private static Nurseries wired() {
    return withLot(ash().route("wired"))
        .route("wired", Steps.every("wire", 1, Month.MARCH).minutes(60).build());
  }

  @Test
  void hours_shortInTwoYears() {
    assertThat(hours(wired().hoursAvailable(45)))
        .isEqualTo(
            "Hours are short in Mar 2028 and Mar 2029, most in Mar 2028, by 55"
                + " hours (100 needed, 45 available); wire takes most of them.");
  }

  @Test
  void hours_shortInOneMonth() {
    assertThat(hours(wired().seasons(2).hoursAvailable(45)))
        .isEqualTo(
            "Hours are short in Mar 2028, by 55 hours (100 needed, 45 available); wire takes most of"
                + " them.");
  }

  @Test
  void hours_enough() {
    assertThat(hours(wired().hoursAvailable(160)))
        .isEqualTo(
            "The hours suffice in every month; the busiest is Mar 2028, with 100 hours of 160"
                + " hours.");
  }

  @Test
  void hours_notStated() {
    assertThat(hours(wired()))
        .isEqualTo(
            "The nursery does not say how many hours it has; the plan needs most in Mar 2028, 100"
                + " hours.");
  }

  @Test
  void hours_noneNeeded() {
    assertThat(hours(withLot(ash()).hoursAvailable(10)))
        .isEqualTo("The plan needs no hours: neither its routes nor its care table state minutes.");
  }

  // 100 pots at 2 each.

  private static Nurseries potted(Steps step) {
    return withLot(ash().route("potted"))
        .pot(Nurseries.litrePot("3 litres", 3, 190))
        .route("potted", step.pot("3 litres", null).build());
  }

  @Test
  void orders_first() {
    assertThat(orders(potted(Steps.in("pot", Month.MARCH, 0))))
        .isEqualTo(
            "Order first, by the end of Feb 2027: 100 pots (3 litres), for GBP 200 together.");
  }

  @Test
  void orders_neededBeforeAnOrderCanCome() {
    assertThat(orders(potted(Steps.onArrival("pot"))))
        .isEqualTo(
            "Order first, by the end of Nov 2026: 100 pots (3 litres), for GBP 200 together. Some of"
                + " it is needed sooner than an order takes: see To order.");
  }

  @Test
  void orders_laterOnesComeToASum() {
    Nurseries nursery =
        potted(Steps.in("pot", Month.MARCH, 0))
            .lot(Lots.lot("later").arrived(2027, 5).plantsPerM2(8).route("potted").build());
    assertThat(orders(nursery.seasonStart(Month.JULY)))
        .isEqualTo(
            "Order first, by the end of Feb 2027: 100 pots (3 litres), for GBP 200 together. Up to"
                + " the end of 2027/28 orders of pots, substrate and materials come to GBP 400.");
  }

  @Test
  void orders_ofYoungPlants_areNamedApart() {
    Nurseries nursery =
        potted(Steps.in("pot", Month.MARCH, 0))
            .lot(
                Lots.lot("bought")
                    .arrived(2027, 5)
                    .plantsPerM2(8)
                    .route("potted")
                    .bought(7, 50)
                    .build());
    assertThat(orders(nursery.seasonStart(Month.JULY)))
        .endsWith(" come to GBP 400, those of young plants to GBP 750 landed.");
  }

  /** Larches in 10 litres at a close gap: heavier than the bench may carry, whatever the room. */
  @Test
  void space_placeThatCarriesTooMuch_isSaid() {
    Context context = SmallNursery.context();
    assertThat(String.join(" ", new SpaceWords(context).sentences()))
        .containsPattern(
            "Bench carries more than its 60 kg/m² .*, (most in .*, )?by .* kg/m² where .* stands; ");
    assertThat(new SpaceWords(context).headlines())
        .anyMatch(line -> line.startsWith("Too heavy: Bench "))
        .noneMatch(line -> line.startsWith("Too heavy: Ground"));
  }

  @Test
  void orders_nothingUsed() {
    assertThat(orders(withLot(ash())))
        .isEqualTo("Nothing has to be ordered: the plan uses no pots, substrate or materials.");
  }

  @Test
  void cash_lowestMonthWithoutALimit() {
    Context context = context(withLot(ash()).openingCash(1000).sellsAll("one", "any", 10));
    assertThat(new CashWords(context).summary())
        .isEqualTo(
            "Cash is lowest at the end of Nov 2026, at GBP 2,000; the plan opens with GBP 1,000 and"
                + " ends with GBP 2,000.");
  }

  @Test
  void cash_belowWhatIsAllowed() {
    Lots bought = ash().arrived(2027, 2).notBefore(2027, 5).bought(12, 0);
    Context context =
        context(withLot(bought).openingCash(1000).lowestCash(0).sellsAll("one", "any", 15));
    assertThat(new CashWords(context).summary())
        .isEqualTo(
            "Cash is lowest at the end of Feb 2027, at GBP -200, below the GBP 0 allowed from Feb to"
                + " Apr 2027; the plan opens with GBP 1,000 and ends with GBP 1,300.");
  }

  @Test
  void cash_unsoldAtTheEnd() {
    Demand none =
        new Demand(
            Optional.empty(),
            "one",
            "any",
            Optional.of("2040/41"),
            MonthSpan.ALL_YEAR,
            OptionalDouble.empty(),
            10,
            0,
            0,
            0);
    Context context = context(withLot(ash().kept(10)).demand(none).horizonValue(0.5));
    assertThat(new CashWords(context).unsold())
        .isEqualTo(
            "90 plants unsold at the end, worth GBP 900 at list, counted at 50 % of that, less"
                + " what selling costs, in its last month; 10 more are kept.");
  }

  @Test
  void bought_pays() {
    // 100 sold at 10 in the month in which they are paid: 1,000 less 400 and carriage 50. Thirds
    // fetch 2, so s usable in all bring 200 + 800 s, which covers 450 from s = 0.3125.
    Context context = context(withLot(ash().bought(4, 50)).sellsAll("one", "any", 10));
    assertThat(String.join(" ", new BoughtWords(context, context.bought().get(0)).sentences()))
        .isEqualTo(
            "Ash 26 (100 ash, GBP 450 landed) pays: with it the nursery has GBP 550 more than"
                + " without it; the money is back in Nov 2026. It sells 100 plants for GBP 1,000 and"
                + " costs GBP 450 with pots, work and space. The most you can pay is GBP 10.00 a plant"
                + " landed (now GBP 4.50); at least 32 in 100 must be usable (100 expected); a plant must"
                + " fetch GBP 4.50 on average (GBP 10.00 expected). It needs no more space or hours"
                + " than there are.");
  }

  @Test
  void bought_paysOnlyWithMoreSpace() {
    Nurseries nursery =
        withLot(ash().place("bench").bought(4, 50).notBefore(2027, 3))
            .place(Nurseries.place("bench", PlaceKind.BENCH, 10))
            .sellsAll("one", "any", 10);
    Context context = context(nursery);
    assertThat(String.join(" ", new BoughtWords(context, context.bought().get(0)).sentences()))
        .endsWith("It pays only with 2.5 m² more in bench (Nov–Mar).");
  }

  @Test
  void bought_doesNotPay() {
    Context context = context(withLot(ash().bought(4, 50)));
    BoughtWords words = new BoughtWords(context, context.bought().get(0));
    assertThat(String.join(" ", words.sentences()))
        .isEqualTo(
            "Ash 26 is not back by 2028/29: 100 plants, GBP 0 at list, stand then. 100 still unsold"
                + " after 13 seasons: look at the demand. Ash 26 (100 ash, GBP 450 landed) does not"
                + " pay: with it the nursery has GBP 450 less than without it, judged at the end of"
                + " 2038/39, the last season run; the money is not back by then. Within the plan it"
                + " sells 0 plants for GBP 0 and costs GBP 450 with pots, work and space; 100 plants unsold at the end,"
                + " worth GBP 0 at list. Even as a gift it would not pay (now GBP 4.50 a plant landed); more"
                + " than 100 in 100 must be usable (100 expected); none of its plants is sold within"
                + " the plan. It needs no more space or hours than there are.");
    assertThat(words.headline())
        .isEqualTo(
            "Ash 26 does not pay: GBP 450 lost, judged at the end of 2038/39, the last season run; not"
                + " even a gift would pay.");
  }

  @Test
  void summary_noLots_saysSo() {
    Scenario empty = Nurseries.bare().lots(List.of()).scenario();
    assertThat(SummarySheet.of(MapleNursery.context(empty)).sentences())
        .containsExactly(
            "There is no lot in this plan: the stock list is empty and no offer is taken.");
  }
}
