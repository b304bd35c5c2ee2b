package growingon.load.settings;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.SmallNursery;
import growingon.nursery.Inputs;
import growingon.nursery.Plan.PlannedHold;
import growingon.nursery.lot.Hold;
import growingon.nursery.lot.Hold.Which;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.OtherCash;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a plan says of holds and orders, and offers that come again. */
class PlannedHoldsTest {
  @TempDir private Path folder;

  @BeforeEach
  void layOut() throws IOException {
    SmallNursery.copyTidy(folder);
  }

  private void plan(String keys) throws IOException {
    Files.writeString(
        folder.resolve("plan.json"),
        "{\"name\": \"first plan\", \"first month\": \"2026-11\", \"seasons\": 4,\n" + keys + "}");
  }

  private Inputs load() {
    return SmallNursery.inputs(folder);
  }

  private Lot lot(String name) {
    return load().scenario().lots().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void hold_takesThePlaceOfWhatTheTableSays() throws IOException {
    plan(
        "\"hold\": {\"old rowans\": {\"share %\": 0},"
            + " \"12\": {\"grade\": \"Bench\", \"share %\": 50, \"which\": \"best\"}}");

    assertThat(lot("Old rowans").hold()).isEmpty();
    assertThat(lot("12").hold()).contains(new Hold("bench", 0.5, Which.BEST));
    assertThat(load().scenario().plan().holds())
        .containsEntry("Old rowans", new PlannedHold(Optional.empty(), false));
  }

  @Test
  void holdWithoutShare_holdsAllOfThem() throws IOException {
    plan("\"hold\": {\"12\": {\"grade\": \"bench\", \"advised\": true}}");

    assertThat(load().scenario().plan().holds())
        .isEqualTo(Map.of("12", new PlannedHold(Optional.of(new Hold("bench", 1)), true)));
  }

  @Test
  void holdOfAnOffer_isThatOfTheLotItBecomes() throws IOException {
    plan(
        "\"take\": {\"spring liners\": 200}, \"hold\": {\"spring liners\": {\"grade\": \"bench\"}}");

    assertThat(lot("spring liners").hold()).contains(new Hold("bench", 1));
  }

  @Test
  void hold_isListedAmongTheAssumptions() throws IOException {
    plan("\"hold\": {\"12\": {\"grade\": \"bench\", \"share %\": 50}}");

    assertThat(load().assumptions())
        .filteredOn(each -> each.subject().equals("hold of 12"))
        .extracting(each -> each.what() + " " + each.value())
        .containsExactly("share % 50", "advised no", "grade bench", "which alike");
  }

  @Test
  void holdOfAnUnknownLot_namesTheNearest() throws IOException {
    plan("\"hold\": {\"Old rowan\": {\"share %\": 0}}");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: plan.json, line 2, key Old rowan: unknown lot or"
                + " offer (Old rowan); the nearest known one is Old rowans");
  }

  @Test
  void holdToAGradeOfAnotherLadder_namesTheNearest() throws IOException {
    plan("\"hold\": {\"12\": {\"grade\": \"benches\"}}");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: plan.json, line 2, key grade: unknown grade of the ladder small trees (benches); the"
                + " nearest known one is bench");
  }

  @Test
  void holdWithoutGrade_isAsked() throws IOException {
    plan("\"hold\": {\"12\": {\"share %\": 40}}");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: plan.json, line 2, key share %: what is held needs a grade from which it is"
                + " sold; name a grade, or write \"share %\": 0 to hold none");
  }

  @Test
  void holdOfAnOfferNotTaken_isWarnedOf() throws IOException {
    plan("\"take\": {}, \"hold\": {\"spring liners\": {\"grade\": \"bench\"}}");

    assertThat(SmallNursery.problems(folder))
        .contains(
            "warning: plan.json, line 2, key hold: the plan says what is held of the offer spring"
                + " liners, which it does not take; take it, or leave the hold out");
  }

  @Test
  void ordered_areOffersThatAreTaken() throws IOException {
    plan("\"take\": {\"spring liners\": 200}, \"ordered\": [\"Spring liners\"]");

    assertThat(load().scenario().plan().ordered()).containsExactly("spring liners");
  }

  @Test
  void orderedButNotTaken_isAnError() throws IOException {
    plan("\"take\": {}, \"ordered\": [\"spring liners\"]");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: plan.json, line 2, key ordered: the offer spring liners is ordered but not"
                + " taken; name it under take with its number, or leave it out here");
  }

  private void again(String often, String until) throws IOException {
    Path file = folder.resolve("offers.csv");
    SmallNursery.change(file, "arrival month,carriage", "arrival month,again,again until,carriage");
    SmallNursery.change(file, "2027-02,35", "2027-02," + often + "," + until + ",35");
    SmallNursery.change(file, "200,,,,,,,", "200,,,,,,,,,");
    SmallNursery.change(file, "2027-11,600", "2027-11,,,600");
  }

  private List<String> lots() {
    return load().scenario().lots().stream()
        .map(lot -> lot.name() + " " + lot.arrived() + " " + lot.quantity())
        .filter(lot -> lot.startsWith("spring"))
        .toList();
  }

  @Test
  void offerThatComesAgain_isAnOrderOfItsOwnEachTime() throws IOException {
    plan("\"take\": {\"spring liners\": 200}");
    again("every season", "");

    assertThat(lots())
        .containsExactly(
            "spring liners 2027-02 200",
            "spring liners 2028 2028-02 200",
            "spring liners 2029 2029-02 200",
            "spring liners 2030 2030-02 200");
    assertThat(lot("spring liners 2028").purchase().orElseThrow().carriage()).isEqualTo(35);
    assertThat(lot("spring liners 2028").notBefore()).isEqualTo(YearMonth.of(2028, 8));
  }

  @Test
  void offerThatComesAgainUntilAMonth_countsThatMonthIn() throws IOException {
    plan("\"take\": {\"spring liners\": 200}");
    again("every season", "2028-02");

    assertThat(lots())
        .containsExactly("spring liners 2027-02 200", "spring liners 2028 2028-02 200");
  }

  @Test
  void oneOrderOfAnOffer_mayBeNamedByItself() throws IOException {
    plan(
        "\"take\": {\"spring liners\": 200, \"spring liners 2029\": 50},"
            + " \"hold\": {\"spring liners 2029\": {\"grade\": \"bench\"}}");
    again("every 2 seasons", "");

    assertThat(lots())
        .containsExactly("spring liners 2027-02 200", "spring liners 2029 2029-02 50");
    assertThat(lot("spring liners 2029").hold()).isPresent();
    assertThat(lot("spring liners").hold()).isEmpty();
  }

  @Test
  void otherCashOfAnOfferThatComesAgain_isThatOfEachOrder() throws IOException {
    plan("\"take\": {\"spring liners\": 200}");
    again("every season", "2028-02");
    Files.writeString(
        folder.resolve("other cash.csv"),
        "month,what,amount,lot\nevery month,spraying,-5,spring liners\n");

    assertThat(load().scenario().nursery().otherCash())
        .extracting(OtherCash::lot)
        .containsExactly(Optional.of("spring liners"), Optional.of("spring liners 2028"));
  }

  @Test
  void againInOtherWords_isAsked() throws IOException {
    again("sometimes", "");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: offers.csv, row 2, column again: it must be said how often the offer comes"
                + " again (sometimes); write no, every season, or every 2 seasons");
  }
}
