package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.Assumption;
import growingon.nursery.Inputs;
import growingon.nursery.market.Quality;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.problem.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The diary of the small nursery, typed as one comes to type it. */
class DaybookTest {
  @TempDir private Path folder;

  @BeforeEach
  void layOut() throws IOException {
    SmallNursery.copyTidy(folder);
    SmallNursery.copy("daybook", folder);
  }

  private List<DaybookLine> lines() {
    return inputs().daybook();
  }

  private Inputs inputs() {
    Loader.Reading reading = SmallNursery.read(folder);
    assertThat(reading.inputs()).as("%s", reading.findings().problems()).isPresent();
    return reading.inputs().get();
  }

  @Test
  void lines_inAnyOrder_areGivenByDate() {
    assertThat(lines())
        .extracting(line -> line.date() + " " + line.lot() + " " + line.what())
        .containsExactly(
            "2026-11-20 12 counted",
            "2026-11-20 Yews counted",
            "2027-01-28 spring liners arrived",
            "2027-01-29 spring liners died",
            "2027-03-02 Yews split",
            "2027-03-15 Yews B sold",
            "2027-04-02 12 moved",
            "2027-04-03 spring liners released",
            "2027-04-05 Yews moved",
            "2027-04-06 12 spent");
  }

  @Test
  void lineWithoutALot_isOfTheNurseryWhereMoneyWasSpent_andAnErrorElsewhere() throws IOException {
    Files.writeString(
        folder.resolve("daybook.csv"),
        "date,lot,what,quantity,amount\n2026-11-20,,spent,,268\n2026-11-21,,died,3,\n");
    Loader.Reading reading = SmallNursery.read(folder);
    assertThat(reading.findings().problems())
        .extracting(Object::toString)
        .contains("daybook.csv, row 3, column lot: this value is missing; fill it in")
        .noneMatch(each -> each.contains("row 2"));
    Files.writeString(
        folder.resolve("daybook.csv"), "date,lot,what,quantity,amount\n2026-11-20,,spent,,268\n");
    assertThat(lines()).singleElement().matches(DaybookLine::isOfNoLot);
  }

  @Test
  void line_ofEveryColumn_isReadWhole() {
    assertThat(lines().get(5))
        .isEqualTo(
            DaybookLine.of(
                    LocalDate.of(2027, 3, 15),
                    "Yews B",
                    What.SOLD,
                    new Where("daybook.csv", "", 2, ""))
                .quantity(OptionalDouble.of(3))
                .grade(Optional.of("bench"))
                .quality(Optional.of(Quality.SECOND))
                .amount(OptionalDouble.of(66.5))
                .customer("K12")
                .build());
    assertThat(lines().get(0).trunkMm()).hasValue(15.5);
    assertThat(lines().get(0).trunkSpread()).hasValue(0.17);
    assertThat(lines().get(3).reason()).isEqualTo("dried out");
    assertThat(lines().get(4).toLot()).contains("Yews B");
    assertThat(lines().get(4).hours()).hasValue(1.5);
  }

  @Test
  void lineToCount_leftBlank_isPassedOverWithANotice() throws IOException {
    assertThat(SmallNursery.problems(folder))
        .containsExactly("notice: daybook.csv: 1 row to count was left blank and is passed over");

    Files.writeString(
        folder.resolve("daybook.csv"),
        "date,lot,what,quantity,note\n2026-11-20,12,counted,,\n,Yews,counted,,all there?\n");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "notice: daybook.csv: 2 rows to count were left blank and are passed over");
    assertThat(lines()).isEmpty();
  }

  @Test
  void daybook_isNoAssumptionOfThePlan() {
    assertThat(inputs().assumptions()).extracting(Assumption::table).doesNotContain("daybook");
  }

  @Test
  void nurseryWithoutADaybook_hasNoLinesAndHearsNothing() throws IOException {
    Files.delete(folder.resolve("daybook.csv"));

    assertThat(lines()).isEmpty();
    assertThat(SmallNursery.problems(folder)).isEmpty();
  }

  @Test
  void lots_ofTheSamePassportOrNone_mayJoin() throws IOException {
    Files.writeString(
        folder.resolve("daybook.csv"),
        """
        date,lot,what,quantity,to lot
        2027-03-01,12,split,90,strong rowans
        2027-03-02,12,moved,5,strong rowans
        2027-03-03,12,split,3,Old rowans
        2027-03-04,strong rowans,moved,4,Old rowans
        """);

    assertThat(SmallNursery.problems(folder)).isEmpty();
  }

  @Test
  void newNames_thatDifferInANumberOrALetter_areNoSlips() throws IOException {
    Files.writeString(
        folder.resolve("daybook.csv"),
        """
        date,lot,what,quantity,to lot
        2027-03-01,Yews,split,20,Yews A
        2027-03-01,Yews,split,20,Yews B
        2027-03-01,12,split,20,13
        2027-03-01,Yews,split,2,Yew
        """);

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "warning: daybook.csv, row 5, column to lot: this split makes a new lot whose name is"
                + " nearly that of the lot Yews (Yew); if Yews is meant, write it so");
  }

  @Test
  void passport_handedOnByAJoin_staysWithTheLot() throws IOException {
    Files.writeString(
        folder.resolve("daybook.csv"),
        """
        date,lot,what,quantity,to lot
        2027-03-03,12,split,3,Old rowans
        2027-03-04,spring liners,moved,4,Old rowans
        """);

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: daybook.csv, row 3, column to lot: a lot has one passport, but spring liners"
                + " has UP-78 by offers.csv, row 2 and Old rowans has UP-77 by daybook.csv, row 2"
                + " (Old rowans); keep them as separate lots");
  }

  @Test
  void offer_thatCameLate_isNotThereBefore() throws IOException {
    Files.writeString(
        folder.resolve("daybook.csv"),
        """
        date,lot,what,quantity
        2027-03-09,spring liners,arrived,100
        2027-02-27,spring liners,died,2
        """);

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: daybook.csv, row 3, column date: the lot spring liners is not there before"
                + " 2027-03-09 (2027-02-27); correct the date, or the arrival of the lot");
  }
}
