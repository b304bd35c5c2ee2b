package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.Sets;
import growingon.load.cell.Findings;
import growingon.load.list.OwnFile;
import growingon.load.own.ListReader;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.Site;
import growingon.load.own.row.ListRead;
import growingon.load.own.usual.UsualNursery;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a heading is understood as is read: a column that is named so changes what is known. */
class UnderstoodHeadingsTest {
  /** A cell that such a column may have, in a list of one lot. */
  private static final Map<String, String> CELLS =
      Map.ofEntries(
          Map.entry("lot", "A17"),
          Map.entry("form", "root ball"),
          Map.entry("arrived", "Mar 2023"),
          Map.entry("counted", "Jun 2026"),
          Map.entry("pot", "12L"),
          Map.entry("potted", "Mar 2026"),
          Map.entry("root work", "Feb 2025"),
          Map.entry("place", "Tunnel 1"),
          Map.entry("place detail", "Bay 4"),
          Map.entry("route", "slow"),
          Map.entry("last step", "potting"),
          Map.entry("training since", "Apr 2025"),
          Map.entry("hold to grade", "specimen"),
          Map.entry("not before", "Oct 2027"),
          Map.entry("supplier", "Nether Farm"),
          Map.entry("passport", "GB-1"),
          Map.entry("origin", "Italy"),
          Map.entry("from lot", "A3"),
          Map.entry("note", "good tops"),
          Map.entry("genus", "Acer"),
          Map.entry("variety", "Red Edge"),
          Map.entry("cultivar", "Red Edge"),
          Map.entry("common name", "Field maple"),
          Map.entry("rootstock", "seedling"),
          Map.entry("size", "60-80"),
          Map.entry("count unit", "pair"),
          Map.entry("clear stem", "180"),
          Map.entry("on order", "40"),
          Map.entry("age", "3"),
          Map.entry("habit", "bush"),
          Map.entry("plants per m2", "6"),
          Map.entry("quantity", "31"),
          Map.entry("kept", "2"),
          Map.entry("reserved", "12"),
          Map.entry("sold", "5"),
          Map.entry("lost", "5"),
          Map.entry("per pack", "3"),
          Map.entry("packs", "4"),
          Map.entry("unit cost", "4.50"),
          Map.entry("row cost", "90.00"),
          Map.entry("selling price", "45.00"),
          Map.entry("trunk spread %", "20%"),
          Map.entry("first %", "70%"),
          Map.entry("second %", "30%"),
          Map.entry("trunk mm", "22 mm"),
          Map.entry("trunk from mm", "20"),
          Map.entry("trunk to mm", "25"),
          Map.entry("gap mm", "150"),
          Map.entry("crown mm", "600"),
          Map.entry("height left mm", "1500"),
          Map.entry("girth cm", "12-14"),
          Map.entry("girth from cm", "12"),
          Map.entry("girth to cm", "14"),
          Map.entry("height cm", "150"),
          Map.entry("height x width", "150x60"),
          Map.entry("spacing cm", "40"));

  /** Of two bounds each needs the other. */
  private static final Map<String, String> WITH =
      Map.of(
          "trunk from mm", "trunk to mm",
          "trunk to mm", "trunk from mm",
          "girth from cm", "girth to cm",
          "girth to cm", "girth from cm",
          "per pack", "packs");

  /** What was there once is only reckoned with: its sales and losses must come to what is left. */
  private static final String RECKONED = "opening";

  private static final Set<String> NOT_ASKED = Set.of("?", "not read", "species", RECKONED);

  @TempDir Path folder;

  private static List<String[]> headings() throws IOException {
    String file =
        new String(
            OwnWords.class.getResourceAsStream("headings.csv").readAllBytes(),
            StandardCharsets.UTF_8);
    List<String[]> headings = new ArrayList<>();
    Set<String> known = new TreeSet<>();
    for (String line : file.lines().skip(1).toList()) {
      String[] cells = line.split(",");
      if (!line.contains("\"") && cells[1].equals("en") && !NOT_ASKED.contains(cells[2])) {
        if (known.add(cells[2])) {
          headings.add(new String[] {cells[0], cells[2]});
        }
      }
    }
    return headings;
  }

  private Set<Object> known(String heads, String cells) throws IOException {
    Path file = Files.writeString(folder.resolve("list.csv"), heads + "\n" + cells + "\n");
    var sheets = OwnFile.read(file, new Findings()).orElseThrow();
    ListRead read = ListReader.read(file, sheets, OwnWords.NONE, Site.USUAL);
    var nursery = new UsualNursery(read.lots(), "mine", "EUR", YearMonth.of(2026, 11), false);
    Set<Object> known = new TreeSet<>(java.util.Comparator.comparing(Object::toString));
    read.lots().forEach(lot -> known.addAll(nursery.stockRow(lot).entrySet()));
    read.lots().forEach(lot -> known.add("price " + lot.sellingPrice()));
    read.lots().forEach(lot -> known.add("own name " + lot.ownName()));
    read.questions().forEach(question -> known.add(question.question()));
    return known;
  }

  @Test
  void cells_areThereForAllThatHeadingsSay() throws IOException {
    assertThat(headings()).allSatisfy(each -> assertThat(CELLS).containsKey(each[1]));
  }

  @ParameterizedTest
  @MethodSource("headings")
  void heading_isRead(String heading, String ours) throws IOException {
    String with = WITH.getOrDefault(ours, "");
    String other = with.isEmpty() ? "" : "," + with;
    String its = with.isEmpty() ? "" : "," + CELLS.get(with);
    String count = Set.of("quantity", "packs").contains(ours) ? "" : ",Qty";
    String number = count.isEmpty() ? "" : ",20";
    String plant = ours.equals("genus") ? "campestre" : "Acer campestre";
    Set<Object> without = known("Species" + count + other, plant + number + its);
    Set<Object> read =
        known(
            "Species" + count + other + "," + heading,
            plant + number + its + "," + CELLS.get(ours));
    assertThat(Sets.symmetricDifference(read, without))
        .as("%s: %s", ours, CELLS.get(ours))
        .isNotEmpty();
  }
}
