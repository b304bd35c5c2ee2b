package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.cell.Findings;
import growingon.load.list.OwnFile;
import growingon.load.own.ListReader;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.Question;
import growingon.load.own.lot.Site;
import growingon.load.own.row.ListRead;
import growingon.load.own.usual.UsualNursery;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What lists state in columns of the stock table stands in its rows, or is asked, or noted. */
class StatedCellsTest {
  @TempDir Path folder;

  private ListRead read(String list) throws IOException {
    Path file = Files.writeString(folder.resolve("list.csv"), list);
    var sheets = OwnFile.read(file, new Findings()).orElseThrow();
    return ListReader.read(file, sheets, OwnWords.NONE, Site.USUAL);
  }

  private List<Map<String, String>> rows(String list) throws IOException {
    ListRead read = read(list);
    var usual = new UsualNursery(read.lots(), "mine", "EUR", YearMonth.of(2026, 11), false);
    return read.lots().stream().map(usual::stockRow).toList();
  }

  private static String ours(ListRead read, String heading) {
    return read.headings().stream()
        .filter(each -> each.heading().equals(heading))
        .map(HeadingRead::ours)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void firstsAndSeconds_areSharesWhereTheyAddUpToAHundred() throws IOException {
    assertThat(rows("Species,Qty,Firsts,Seconds\nAcer campestre,120,80,20\nTilia,50,90,10\n"))
        .extracting(row -> row.get("first %") + " " + row.get("second %"))
        .containsExactly("80 20", "90 10");
  }

  @Test
  void firstsAndSeconds_arePlantsWhereTheyAddUpToTheNumber() throws IOException {
    assertThat(rows("Species,Qty,Firsts,Seconds\nAcer campestre,120,90,30\nTilia cordata,3,1,2\n"))
        .extracting(row -> row.get("first %") + " " + row.get("second %"))
        .containsExactly("75 25", "33.33 66.67");
  }

  @Test
  void seconds_alone_areAskedUnlessOneReadingCannotBe() throws IOException {
    ListRead open = read("Species,Qty,Seconds\nAcer campestre,120,20\nTilia cordata,50,5\n");
    assertThat(ours(open, "Seconds")).isEqualTo("?");
    assertThat(open.headings()).anySatisfy(this::isChosenFromBoth);
    ListRead plants = read("Species,Qty,Seconds\nAcer campestre,420,120\nTilia cordata,50,5\n");
    assertThat(ours(plants, "Seconds")).isEqualTo("number of seconds");
    ListRead shares = read("Species,Qty,Seconds\nAcer campestre,12,20\nTilia cordata,50,5\n");
    assertThat(ours(shares, "Seconds")).isEqualTo("second %");
    ListRead said = read("Species,Qty,Seconds %\nAcer campestre,120,20\nTilia cordata,50,5\n");
    assertThat(ours(said, "Seconds %")).isEqualTo("second %");
  }

  private void isChosenFromBoth(HeadingRead heading) {
    assertThat(heading.choices()).containsExactly("number of seconds", "second %");
  }

  @Test
  void shares_mayBePartsOfOne_orHaveTheirSign() throws IOException {
    assertThat(rows("Species,Qty,Firsts\nAcer campestre,120,0.8\nTilia cordata,50,0.95\n"))
        .extracting(row -> row.get("first %") + " " + row.get("second %"))
        .containsExactly("80 20", "95 5");
    assertThat(rows("Species,Qty,Firsts\nAcer campestre,120,80%\nTilia cordata,50,95 %\n"))
        .extracting(row -> row.get("first %"))
        .containsExactly("80", "95");
  }

  /** 10,000 cm² in a square metre: at 50 cm each way 4 stand there, at 80 by 50 cm 2.5. */
  @Test
  void spacing_isFromTrunkToTrunk() throws IOException {
    List<Map<String, String>> rows =
        rows("Species,Qty,Spacing cm\nAcer campestre,120,50\nTilia,50,80x50\nFagus,9,close\n");
    assertThat(rows).extracting(row -> row.get("plants per m2")).containsExactly("4", "2.5", "9");
    assertThat(rows.get(2).get("note")).isEqualTo("Spacing cm close");
  }

  @Test
  void spacingOfPots_takesThePlaceOfTheGap() throws IOException {
    List<Map<String, String>> rows =
        rows("Species,Qty,Pot,Per m2\nAcer campestre,120,10L,6\nTilia cordata,50,10L,\n");
    assertThat(rows.get(0)).containsEntry("plants per m2", "6").doesNotContainKey("gap mm");
    assertThat(rows.get(1)).containsEntry("gap mm", "80").doesNotContainKey("plants per m2");
  }

  @Test
  void months_areTaken_andWhatCannotBeIsAsked() throws IOException {
    String list =
        """
        Species,Qty,Pot,Bought,Counted,Ready,Last root pruned
        Acer campestre,120,10L,Mar 2024,Jun 2026,Mar 2027,Feb 2025
        Tilia cordata,50,10L,Mar 2025,Jan 2025,now,
        """;
    List<Map<String, String>> rows = rows(list);
    assertThat(rows.get(0))
        .containsEntry("counted", "2026-06")
        .containsEntry("not before", "2027-03")
        .containsEntry("root work", "2025-02");
    assertThat(rows.get(1)).doesNotContainKeys("counted", "not before", "root work");
    assertThat(read(list).questions())
        .extracting(Question::column, Question::found)
        .contains(org.assertj.core.groups.Tuple.tuple("counted", "Jan 2025"));
  }

  @Test
  void plantsCountedBeforeTheUsualArrival_hadComeByThen() throws IOException {
    assertThat(rows("Species,Qty,Counted\nAcer campestre,120,Jun 2025\n").get(0))
        .containsEntry("arrived", "2025-06")
        .containsEntry("counted", "2025-06");
  }

  @Test
  void columnOfMonthsWithoutAMonth_isAsked() throws IOException {
    ListRead read = read("Species,Qty,Ready\nAcer campestre,120,40\nTilia cordata,50,25\n");
    assertThat(ours(read, "Ready")).isEqualTo("?");
    assertThat(read.headings())
        .anySatisfy(each -> assertThat(each.choices()).containsExactly("not before", "note"));
  }

  @Test
  void whatOnlyTheTablesKnow_isNoted() throws IOException {
    assertThat(rows("Species,Qty,Route,Last job\nAcer campestre,120,slow,wired\n").get(0))
        .containsEntry("note", "Route slow; Last job wired")
        .containsEntry("route", "lift and pot");
  }

  /** 1 ft = 0.3048 m, so at 5 ft each way 1 / 1.524² stand on a square metre. */
  @Test
  void spacing_mayBeInFeet_orIsNoted() throws IOException {
    assertThat(rows("Species,Qty,Centres\nAcer campestre,120,5'\nTilia cordata,50,1.2 m\n"))
        .extracting(row -> row.get("plants per m2"))
        .containsExactly("0.4306", "0.6944");
  }

  @Test
  void howOftenTransplanted_isNotWhen() throws IOException {
    assertThat(rows("Art,Stück,Verpfl.,Zuletzt verpflanzt\nAcer campestre,9,3,03/24\n").get(0))
        .containsEntry("root work", "2024-03")
        .containsEntry("note", "Verpfl. 3");
  }

  @Test
  void monthOfTheCount_inATitle_isThatOfEveryLotThatSaysNone() throws IOException {
    List<Map<String, String>> rows =
        rows(
            """
            Stock at 1 July 2026
            Species,Qty,Bought,Last counted
            Acer campestre,120,Mar 2024,
            Tilia cordata,50,Mar 2024,Oct 2026
            """);
    assertThat(rows).extracting(row -> row.get("counted")).containsExactly("2026-07", "2026-10");
  }
}
