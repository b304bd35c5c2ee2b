package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.cell.Findings;
import growingon.load.list.OwnFile;
import growingon.load.own.ListReader;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.lot.Site;
import growingon.load.own.row.ListRead;
import growingon.problem.MarkedText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Habits of those who write their lists between two jobs, each by itself: invented rows, and what a
 * careful person reads in them.
 */
class ListsFromTheYardTest {
  @TempDir Path folder;

  private ListRead read(String... lines) throws IOException {
    Path file = Files.write(folder.resolve("list.csv"), List.of(lines));
    var sheets = OwnFile.read(file, new Findings()).orElseThrow();
    return ListReader.read(file, sheets, OwnWords.NONE, Site.USUAL);
  }

  private static List<String> lots(ListRead read) {
    return read.lots().stream().map(ListsFromTheYardTest::line).toList();
  }

  private static String line(OwnLot lot) {
    return Stream.of(
            lot.row() + " " + lot.ownName(),
            lot.quantity().isPresent() ? "" + lot.quantity().getAsInt() : "",
            shown("trunk", lot.trunkFromMm(), lot.trunkToMm()),
            shown("height", lot.heightCm(), lot.heightCm()),
            lot.pot(),
            lot.form(),
            lot.place(),
            lot.arrived().map(Object::toString).orElse(""),
            lot.note())
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(" | "));
  }

  private static String shown(String what, OptionalDouble from, OptionalDouble to) {
    return from.isEmpty()
        ? ""
        : String.format(Locale.ROOT, "%s %.1f", what, from.getAsDouble())
            + (from.equals(to) ? "" : String.format(Locale.ROOT, "-%.1f", to.getAsDouble()));
  }

  @Test
  void list_aboveOneWithMoreHeadings_isNoTitle() throws IOException {
    ListRead read =
        read(
            "FIELD,,,,",
            "Plant,No,Row,Came,",
            "Hornbeam,40,1,Nov 23,",
            "Beech,25,2,Feb 24,",
            ",,,,",
            "POTS,,,,",
            "No,Plant,Bench,Trade,Retail",
            "12,Yew C15,W1,38,75",
            "8,Holm oak C35,W2,95,180");
    assertThat(lots(read))
        .containsExactly(
            "3 Hornbeam | 40 | FIELD | 2023-11 | Row 1",
            "4 Beech | 25 | FIELD | 2024-02 | Row 2",
            "8 Yew C15 | 12 | 15 litre | W1 | Retail 75",
            "9 Holm oak C35 | 8 | 35 litre | W2 | Retail 180");
  }

  /** 30.48 cm a foot and 2.54 cm an inch; trunk = girth / pi, times the usual base factor. */
  @Test
  void tape_inFeetAndInches_isReadByTheColumn() throws IOException {
    ListRead read =
        read(
            "Tag,Tree,\"Girth \"\" (tape)\",Ht,Qty",
            "1,Hornbeam,11 1/4,5'6\",3",
            "2,Hornbeam,7-3/4,6 ft 6,3",
            "3,Hornbeam,\"10 1/2\"\"\",2ft 6,3",
            "4,Hornbeam,1' 3\",18in,3",
            "5,Hornbeam,28 cm,12-15in,3",
            "6,Hornbeam,~8,5ft+,3",
            "7,Ginkgo,2.5 cal,9',3");
    assertThat(lots(read))
        .containsExactly(
            "2 Hornbeam | 3 | trunk 113.7 | height 167.6",
            "3 Hornbeam | 3 | trunk 78.3 | height 198.1",
            "4 Hornbeam | 3 | trunk 106.1 | height 76.2",
            "5 Hornbeam | 3 | trunk 151.6 | height 45.7",
            "6 Hornbeam | 3 | trunk 111.4 | height 34.3",
            "7 Hornbeam | 3 | trunk 80.9 | height 152.4",
            "8 Ginkgo | 3 | trunk 63.5 | height 274.3");
  }

  @Test
  void girths_thatAFileOfTextHasAsDates_areClasses() throws IOException {
    ListRead read =
        read(
            "Plant,Qty,Girth",
            "Hornbeam,24,12-14",
            "Hornbeam,16,10-Dec",
            "Hornbeam,9,08-Okt",
            "Hornbeam,9,06-août",
            "Hornbeam,9,Aug-06");
    assertThat(lots(read))
        .containsExactly(
            "2 Hornbeam | 24 | trunk 47.7-55.7",
            "3 Hornbeam | 16 | trunk 39.8-47.7",
            "4 Hornbeam | 9 | trunk 31.8-39.8",
            "5 Hornbeam | 9 | trunk 23.9-31.8",
            "6 Hornbeam | 9 | trunk 23.9-31.8");
    assertThat(read.questions()).hasSize(4).allMatch(question -> question.nod());
  }

  @Test
  void numbers_toldInWords_areReadWithANod() throws IOException {
    ListRead read =
        read(
            "Plant,How many",
            "Hornbeam,24 - 3 dead",
            "Beech,60 less 5 sold",
            "Holm oak,60 weniger 5 verkauft",
            "Holm oak,\"set 40, took 27\"",
            "Hornbeam,60 done 51 alive",
            "Yew,6 or 7",
            "Yew,15/20",
            "Yew,8 big 12 small",
            "Olive,1 + 1 in town",
            "Box,half a tray of 40",
            "Hornbeam,ten",
            "Hornbeam,zwölf",
            "Beech,all gone",
            "Beech,a few");
    assertThat(read.lots().stream().map(lot -> lot.quantity().orElse(-1)))
        .containsExactly(21, 55, 55, 27, 51, 6, 15, 20, 2, 20, 10, 12);
    assertThat(read.questions().stream().filter(question -> question.nod())).hasSize(8);
    assertThat(read.questions().stream().filter(question -> !question.choices().isEmpty()))
        .extracting(question -> question.question() + " " + question.usual())
        .containsExactly("which number holds: 6 or 7? 6", "which number holds: 15 or 20? 15");
    assertThat(read.asked()).singleElement().matches(lot -> lot.row() == 15);
  }

  @Test
  void rows_thatTheirNoteSaysAreNotHere_areNoStock() throws IOException {
    ListRead read =
        read(
            "Plant,Qty,In,Note",
            "Hornbeam,24,Nov 23,dead wood on two",
            "Beech,100,due 12/24,deposit paid",
            "Holm oak,50,,ordered for Jan 27",
            "Holm oak,50,Nov 23,ordered from Lowick",
            "Yew,40,Nov 23,\"not taken yet, don't count\"",
            "Yew,12,Nov 23,verkauft an Herrn Lenz",
            "TO COME NOV,,,",
            "Olive,6,,");
    assertThat(lots(read))
        .containsExactly(
            "2 Hornbeam | 24 | 2023-11 | dead wood on two",
            "5 Holm oak | 50 | 2023-11 | ordered from Lowick");
    assertThat(read.notices())
        .extracting(MarkedText::toString)
        .contains(
            "5 rows with 208 plants are marked as sold, ordered or no stock and not read (rows 3,"
                + " 4, 6, 7, 9)");
  }

  @Test
  void trees_oneARow_thatAreDeadOrMoved_areGoneAndTold() throws IOException {
    ListRead read =
        read(
            "Tag,Tree,Girth,Notes",
            "101,Hornbeam,12,",
            "102,Hornbeam,14,DEAD - Jan ice",
            "103,Hornbeam,16,dead wood. mine.",
            "104,Beech,18,stolen!!",
            "105,Beech,18,\"moved to pot, see bench list\"",
            "trees,2,,",
            "stakes needed,25,,");
    assertThat(lots(read))
        .containsExactly(
            "2 Hornbeam | 1 | trunk 47.7", "4 Hornbeam | 1 | trunk 63.7 | dead wood. mine.");
    assertThat(read.notices())
        .extracting(MarkedText::toString)
        .contains(
            "3 rows with 3 plants are marked as sold, ordered or no stock and not read (rows 3, 5,"
                + " 6)",
            "what is no plant is not read (row 8)");
    assertThat(read.totals()).singleElement().matches(total -> total.agrees());
  }

  @Test
  void totals_underOtherWords_areNoPlants() throws IOException {
    ListRead read =
        read(
            "Plant,Worked,Qty,Sell",
            "Hornbeam,2019,24,5",
            "Beech,2020,30,6",
            "LATER,,,",
            "Yew,2021,10,7",
            "Olive,2021,11,8",
            ",older,54,",
            "rough total,,75,",
            "Less: provision for losses,,,-30",
            "\"Seedlings in the cold frame not counted.\",,,");
    assertThat(lots(read)).hasSize(4);
    assertThat(read.totals().stream().map(total -> total.stated() + " " + total.read()))
        .containsExactly("54 54", "75 75");
    assertThat(read.notices())
        .extracting(MarkedText::toString)
        .contains("what stands below your total is not read (row 9)");
  }

  @Test
  void numbersCarriedForward_areThoseThatAreThere() throws IOException {
    ListRead read =
        read(
            "Plant,B/fwd 1.4.25,Bought,Sold,Losses,C/fwd 31.3.26",
            "Hornbeam,22,0,6,1,15",
            "Beech,12,6,5,0,13",
            "Holm oak,9,0,9,0,0");
    assertThat(read.lots().stream().map(lot -> lot.quantity().orElse(-1))).containsExactly(15, 13);
  }

  @Test
  void beds_sideBySide_areThePlaceAndTheMonthOfTheirLists() throws IOException {
    ListRead read =
        read(
            "OUTSIDE BEDS,,,,",
            "Bed A  (lined out Mar 24),,,Bed B  (Nov 24),",
            "what,no.,,what,no.",
            "Hornbeam 8-10,22,,Yew 60-80 rb,30",
            "Beech 8-10,11,,Holly 80-100,4");
    assertThat(read.lots().stream().map(lot -> lot.place() + " " + lot.arrived().orElseThrow()))
        .containsExactly("Bed A 2024-03", "Bed A 2024-03", "Bed B 2024-11", "Bed B 2024-11");
    assertThat(read.counted()).isEmpty();
  }

  @Test
  void rootstocks_thatBearNothingYet_areTheirOwnLots() throws IOException {
    ListRead read =
        read(
            "Scion,On,Worked,No.,Ht",
            "Fagus Dawyck Gold,seedling beech,Feb 19,7,6-7ft",
            "do. - 2 tier,do.,do.,4,5ft",
            "UNDERSTOCKS,,,,",
            ",Quince A,,75,",
            ",P. thunb.,,90,12in");
    assertThat(lots(read))
        .containsExactly(
            "2 Fagus Dawyck Gold | 7 | height 198.1 | on seedling beech; Feb 19",
            "3 Fagus Dawyck Gold - 2 tier | 4 | height 152.4 | on seedling beech; Feb 19",
            "5 Quince A | 75",
            "6 P. thunb. | 90 | height 30.5");
    assertThat(read.lots().get(3).taxon()).contains("Pinus thunbergii");
    assertThat(read.questions()).hasSize(2).allMatch(question -> question.nod());
  }

  @Test
  void marks_behindAWordOrBeforeAnEpithet_standForTheGenusAbove() throws IOException {
    ListRead read =
        read(
            "Plant,Qty",
            "Beech,60",
            "copper do.,14",
            "Juniper shimpaku,8",
            "\"\"\"    squamata\",6",
            "Ligustrum jap. half std,9",
            "Crat. Crimson Cloud,12");
    assertThat(
            read.lots().stream()
                .map(lot -> lot.ownName() + ": " + lot.taxon().orElse("? " + lot.standIn())))
        .containsExactly(
            "Beech: Fagus sylvatica",
            "copper Beech: Fagus sylvatica",
            "Juniper shimpaku: ? juniperus",
            "Juniper squamata: ? juniperus",
            "Ligustrum jap. half std: ? ligustrum",
            "Crat. Crimson Cloud: ? crataegus");
  }

  @Test
  void pricesOfTreesAlike_areEachWhereTheNoteSaysSo() throws IOException {
    ListRead read =
        read(
            "Tag #,Tree,Girth,Paid,Asking,Notes",
            "118-121,Hornbeam,8,24,525,\"4 alike, each\"",
            "122-123,Hornbeam,14,24,525,",
            "124,Juniper,12,30,NFS,");
    assertThat(read.lots().stream().map(lot -> lot.unitCost().orElse(-1)))
        .containsExactly(24.0, 12.0, 30.0);
    assertThat(read.questions().stream().filter(question -> !question.nod()))
        .extracting(question -> question.row() + " " + question.question())
        .containsExactly("4 are these to be sold? type 0 if not");
  }

  @Test
  void currency_isTheOneThatIsNamed_andNoPartOfACode() throws IOException {
    assertThat(
            read("Prices AUD. Min. order $500,,", "Code,Plant,Qty", "OLEEUR1,Olive,6").currencies())
        .containsExactly("AUD");
  }

  @Test
  void lowClass_inALargePot_isAGirthOrAHeight() throws IOException {
    ListRead read = read("Plant,Qty", "Olea eur. 40-50 C130,3", "Ilex cren 60-80 c10,4");
    assertThat(lots(read))
        .containsExactly(
            "2 Olea eur. 40-50 C130 | 3 | 130 litre",
            "3 Ilex cren 60-80 c10 | 4 | height 70.0 | 10 litre");
    assertThat(read.questions())
        .extracting(question -> question.question().strip())
        .containsExactly("is 40-50 a girth or a height?");
  }

  @Test
  void chartOfBenches_isAListOfItsCells() throws IOException {
    ListRead read =
        read(
            "WHAT IS ON THE BENCHES (11 Oct 2025),,",
            ",Bench 1,Bench 2",
            ",\"door end, shade\",",
            "front,Jap maple Deshojo 4 x 15L 30mm,Hornbeam H3 12 x 15L 40/50mm",
            "2,\"Box 30 x 2L, poor\",Olive 2 x 70L 1 x 110L",
            "3,3 olives 45L,\"  \"\" (old) 5 x 20L\"",
            "4,EMPTY,\"Blackthorn 4, weak, 5L\"",
            "5,-,\"2 yews 30L SOLD, collecting Sat\"",
            "back,res. Mr Tallis - 2 hornbeam 50L,Yew 8 10",
            "count,39,24",
            "NB 20 field maple coming in Nov,,");
    assertThat(lots(read))
        .containsExactly(
            "4 Jap maple Deshojo | 4 | trunk 30.0 | 15 litre | Bench 1",
            "5 Box | 30 | 2 litre | Bench 1 | poor",
            "6 olives | 3 | 45 litre | Bench 1",
            "9 hornbeam | 2 | 50 litre | Bench 1 | res. Mr Tallis",
            "4 Hornbeam | 12 | trunk 40.0-50.0 | 15 litre | Bench 2",
            "5 Olive | 2 | 70 litre | Bench 2",
            "5 Olive | 1 | 110 litre | Bench 2",
            "6 Olive (old) | 5 | 20 litre | Bench 2",
            "7 Blackthorn | 4 | 5 litre | Bench 2 | weak");
    assertThat(read.asked()).singleElement().matches(lot -> lot.ownName().equals("Yew"));
    assertThat(read.lots().get(4).lot()).isEqualTo("H3");
    assertThat(read.totals().stream().map(total -> total.stated() + " " + total.read()))
        .containsExactly("39 39", "24 24");
    assertThat(read.notices())
        .extracting(MarkedText::toString)
        .contains(
            "is read as a chart: each cell is a lot, and stands where the heading above it says; no"
                + " plants are row 3 \"door end, shade\", row 7 \"EMPTY\", row 11 \"NB 20 field"
                + " maple coming in Nov\"",
            "1 row with 2 plants is marked as sold, ordered or no stock and not read (row 8)");
  }

  @Test
  void listWithASuppliersTerms_asksWhoseItIs() throws IOException {
    ListRead read =
        read(
            "Week 28. E & OE. Min. order $500 ex GST.,,,,,",
            "Code,Plant,Cal. (mm),Bag / pot,Avail.,Trade ea ex GST,10+ ea,RRP inc GST",
            "A1,Trident maple,40-50,45L,12,98,92,195",
            "A2,Field Maple,,200mm,36,18.50,17,36.95",
            "A3,Hinoki,,150mm tube,30,34,31,69.95");
    assertThat(lots(read))
        .containsExactly(
            "3 Trident maple | 12 | trunk 40.0-50.0 | 45 litre | 10+ ea 92",
            "4 Field Maple | 36 | 20 cm pot | 10+ ea 17",
            "5 Hinoki | 30 | 15 cm pot | 10+ ea 31");
    assertThat(read.questions().get(0))
        .matches(question -> question.plants() == 78)
        .matches(
            question ->
                question
                    .question()
                    .equals(
                        "do these plants stand in your nursery, or does a supplier offer them?"));
    assertThat(read.notices().get(0).toString()).contains("is what a supplier writes");
  }

  @Test
  void arrival_beforeBooksThatOpenedWithNone_isAsked() throws IOException {
    ListRead read =
        read(
            "Plant,Acquired,B/fwd 1.4.25,Bought,Sold,C/fwd 31.3.26",
            "Hornbeam,Nov 21,22,0,6,16",
            "Crab apple,Nov 24,0,15,2,13",
            "Beech,Nov 25,0,15,0,15");
    assertThat(read.lots().stream().map(lot -> lot.arrived().map(Object::toString).orElse("")))
        .containsExactly("2021-11", "", "2025-11");
    assertThat(read.questions().stream().filter(question -> question.column().equals("arrived")))
        .singleElement()
        .matches(
            question ->
                question
                    .question()
                    .equals("none were there by B/fwd 1.4.25; which month and year?"));
  }

  @Test
  void remark_ofWhenAndForHowMuchTheyCame_isReadWithANod() throws IOException {
    ListRead read =
        read(
            "Plant,Qty,Ht,Remarks",
            "Quince A,75,60-80 br,in Mar 26 @ 1.60",
            "Hornbeam,140,60-80 rb,came Oct 25 from Low Holme @ 2.10",
            "Beech,20,,in good order");
    assertThat(lots(read))
        .containsExactly(
            "2 Quince A | 75 | height 70.0 | bare root | 2026-03 | in Mar 26 @ 1.60",
            "3 Hornbeam | 140 | height 70.0 | root ball | 2025-10 | came Oct 25 from Low Holme @ 2.10",
            "4 Beech | 20 | in good order");
    assertThat(read.lots().stream().map(lot -> lot.unitCost().orElse(-1)))
        .containsExactly(1.6, 2.1, -1.0);
    assertThat(read.questions()).hasSize(4).allMatch(question -> question.nod());
  }
}
