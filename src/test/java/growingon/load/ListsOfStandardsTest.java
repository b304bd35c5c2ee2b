package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.cell.Findings;
import growingon.load.list.OwnFile;
import growingon.load.own.ListReader;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.lot.Site;
import growingon.load.own.row.ListRead;
import growingon.load.own.usual.UsualNursery;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole lists, invented, of standards, container trees and what was dug up from a field. */
class ListsOfStandardsTest {
  @TempDir Path folder;

  private ListRead read(String list) throws IOException {
    Path file = Files.writeString(folder.resolve("list.csv"), list);
    var sheets = OwnFile.read(file, new Findings()).orElseThrow();
    return ListReader.read(file, sheets, OwnWords.NONE, Site.USUAL);
  }

  private static List<Object> each(ListRead read, Function<OwnLot, Object> of) {
    return read.lots().stream().map(of).toList();
  }

  /** Trunk = girth / pi, times the usual base factor of 1.25. */
  private static long trunkMm(double girthCm) {
    return Math.round(girthCm * 10 / Math.PI * 1.25);
  }

  /** Girth classes of standards are by 2 cm (BS 3936-1); H is Hochstamm, but a height if alone. */
  @Test
  void standards_haveAGirth_whereverTheLetterStands() throws IOException {
    ListRead read =
        read(
            """
            Art / Sorte;Qualität;Stk.
            Acer campestre;H 3xv mDb 12-14;24
            Prunus avium;H 10-12;17
            Carpinus betulus;Sol 3xv H 125-150 C20;60
            """);
    assertThat(each(read, lot -> Math.round(lot.trunkToMm().orElse(0))))
        .containsExactly(trunkMm(14), trunkMm(12), 0L);
    assertThat(each(read, lot -> lot.heightCm().orElse(0))).containsExactly(0.0, 0.0, 137.5);
    assertThat(each(read, lot -> lot.pot())).containsExactly("", "", "20 litre");
  }

  @Test
  void countOfMonths_isWhenTheyCame() throws IOException {
    ListRead read =
        read(
            """
            Art;Stk.;Zugang
            Acer campestre;24;KW 12/24
            Prunus avium;17;Frühj. 2025
            Taxus baccata;60;Herbst 23
            Quercus robur;35;
            """);
    assertThat(each(read, lot -> lot.arrived().map(Object::toString).orElse("")))
        .containsExactly("2024-03", "2025-04", "2023-10", "");
    assertThat(each(read, lot -> lot.quantity().orElse(0))).containsExactly(24, 17, 60, 35);
  }

  @Test
  void vessels_areAskedForWhatTheyHold() throws IOException {
    ListRead read =
        read(
            """
            What,How many,Pot
            Field maple,7,airpot 20
            Hawthorn,1,mortar tub
            Larch x5,5,P9s
            Yew - old hedge,9,ground
            Pino silvestre,250,M-14
            """);
    assertThat(each(read, lot -> lot.pot())).containsExactly("20 litre", "", "P9", "", "14 cm pot");
    assertThat(read.questions())
        .filteredOn(question -> question.column().equals("pot") && !question.nod())
        .extracting(question -> question.row() + " " + question.question())
        .containsExactly("3 how many litres is it? type as 45 litre, or none");
    assertThat(each(read, OwnLot::called))
        .containsExactly("Field maple", "Hawthorn", "Larch", "Yew", "Pino silvestre");
  }

  @Test
  void headingNotUnderstood_isOfferedWhatItsWordsSay_butNoNumberOverWords() throws IOException {
    ListRead read =
        read(
            """
            Plant,Qty,Cost to us,Riporte
            Field maple,7,12.50,north
            Hawthorn,1,9.00,south
            """);
    assertThat(read.headings())
        .filteredOn(head -> head.is("?"))
        .extracting(head -> head.heading() + " " + head.choices())
        .containsExactly("Cost to us [unit cost]", "Riporte []");
  }

  @Test
  void wordsBesideTheList_areNotReadWithoutALine() throws IOException {
    ListRead read =
        read(
            """
            Plant,Qty,,
            Field maple,7,,
            Hawthorn,1,,check labels
            Yew,4,,2 promised
            """);
    assertThat(read.notices())
        .extracting(Object::toString)
        .containsExactly(
            "what stands beside the list without a heading is not read (2 rows, as in row 3,"
                + " \"check labels\"); a heading such as note makes it a part of the list");
  }

  @Test
  void trainedTrees_areReadInTheirShapes() throws IOException {
    ListRead read =
        read(
            """
            Baum;Form;Abmessung;Container;Anzahl;Feld/Reihe
            Pinus sylvestris 'Watereri';Gartenbonsai;H 125, B 160;C160;3;A-3
            Fagus sylvatica;Heckenelement 200x100x40;;mDb;25;B-2
            Taxus baccata Kugel;;Ø 80;C45;12;A-5
            Malus (M26);;150-200;C15;85;A-5
            Pinus nigra - ausgegraben;;;30x30x20;14;A-5
            """);
    assertThat(each(read, lot -> lot.heightCm().orElse(0)))
        .containsExactly(125.0, 200.0, 0.0, 175.0, 0.0);
    assertThat(each(read, lot -> lot.pot()))
        .containsExactly("160 litre", "", "45 litre", "15 litre", "box 30x30x20");
    assertThat(each(read, OwnLot::called))
        .containsExactly(
            "Pinus sylvestris", "Fagus sylvatica", "Taxus baccata", "Malus", "Pinus nigra");
    assertThat(each(read, OwnLot::place)).containsExactly("A-3", "B-2", "A-5", "A-5", "A-5");
  }

  @Test
  void numberAlive_isTheNumber() throws IOException {
    ListRead read = read("Tree,No. alive\nField maple,48\nHornbeam,150\n");
    assertThat(each(read, lot -> lot.quantity().orElse(0))).containsExactly(48, 150);
  }

  /** 12 inches are 30 cm; a list that numbers its rows says nothing of how many there are. */
  @Test
  void trainedTreesOneARow_areNumberedNotCounted() throws IOException {
    ListRead read =
        read(
            """
            No,Species,Height cm,Pot,Age est.,Paid,Current value
            1,Japanese black pine,65,training box 40x30x15,25,450,1200
            2,Trident maple,48,60 x 40 wooden box,20,£380,£900
            3,Satsuki,40,12 inch clay,15,,350
            4,Shimpaku juniper x 3,35,"8"" pot",12,90 each,180 ea
            5,Scots pine,90,grow bag,60+,1100,-
            6,Hawthorn,70,ground,?,dug,500
            """);
    assertThat(each(read, lot -> lot.quantity().orElse(0))).containsExactly(1, 1, 1, 3, 1, 1);
    assertThat(each(read, lot -> lot.unitCost().orElse(0)))
        .containsExactly(450.0, 380.0, 0.0, 90.0, 1100.0, 0.0);
    assertThat(each(read, lot -> lot.heightCm().orElse(0)))
        .containsExactly(65.0, 48.0, 40.0, 35.0, 90.0, 70.0);
    assertThat(each(read, lot -> lot.pot()))
        .containsExactly("box 40x30x15", "box 60x40x20", "30 cm pot", "20 cm pot", "", "");
    assertThat(read.questions())
        .filteredOn(question -> !question.nod())
        .extracting(question -> question.row() + " " + question.found())
        .containsExactly("6 grow bag", "7 dug");
  }

  @Test
  void potsUnderAHeadingOfPlaces_andARoughTrunk_areRead() throws IOException {
    ListRead read =
        read(
            """
            Tree,No alive,Base mm,Standing,Got,Gave each,Ticket
            Field maple,12,50ish,35L airpot,Mar 24,16.50,£90
            Hornbeam,9,40,C15,autumn 2024,8,£60
            All,21,,,,,
            """);
    assertThat(each(read, lot -> lot.quantity().orElse(0))).containsExactly(12, 9);
    assertThat(each(read, lot -> lot.trunkToMm().orElse(0))).containsExactly(50.0, 40.0);
    assertThat(each(read, lot -> lot.pot())).containsExactly("35 litre", "15 litre");
    assertThat(each(read, lot -> lot.arrived().map(Object::toString).orElse("")))
        .containsExactly("2024-03", "2024-10");
    assertThat(each(read, lot -> lot.unitCost().orElse(0))).containsExactly(16.5, 8.0);
    assertThat(each(read, lot -> lot.sellingPrice().orElse(0))).containsExactly(90.0, 60.0);
    assertThat(read.totals()).allMatch(total -> total.agrees()).hasSize(1);
  }

  @Test
  void place_whoseNameSaysItsSides_isThatLarge() throws IOException {
    ListRead read =
        read("Plant,Qty,Pot,Place\nHornbeam,20,C10,Big tunnel (24 x 6 m)\nYew,5,C10,Yard\n");
    var usual = new UsualNursery(read.lots(), "mine", "EUR", YearMonth.of(2026, 11), false);
    assertThat(usual.tables().get("places"))
        .extracting(row -> row.get("square metres"))
        .startsWith("144");
  }

  @Test
  void plantsAboveTheHeadings_areSaidToBeLeftOut() throws IOException {
    ListRead read =
        read(
            """
            Stock of the yard
            Acer campestre,10L,120,Tunnel 1
            Species,Pot,Qty,Place
            Tilia cordata,C25,40,Tunnel 1
            """);
    assertThat(read.lots()).hasSize(1);
    assertThat(read.notices())
        .extracting(Object::toString)
        .anyMatch(notice -> notice.contains("row 2 above the headings"));
  }

  /** Codes are no plants where another column of names has them. */
  @Test
  void codesBesideDescriptions_areLots() throws IOException {
    ListRead read =
        read(
            """
            Item,Description,Loc,On hand,Committed,Avg cost,List,Last count
            ACERBUE7,Acer buergerianum #7,H3,112,40,18.25,64.00,10/1/2026
            CARPBET15,Carpinus betulus #15,F1,45,,41.00,140.00,9/28/2026
            """);
    assertThat(each(read, OwnLot::lot)).containsExactly("ACERBUE7", "CARPBET15");
    assertThat(each(read, OwnLot::called)).containsExactly("Acer buergerianum", "Carpinus betulus");
    assertThat(each(read, lot -> lot.unitCost().orElse(0))).containsExactly(18.25, 41.0);
    assertThat(each(read, lot -> lot.sellingPrice().orElse(0))).containsExactly(64.0, 140.0);
    assertThat(each(read, lot -> lot.stated().counted().orElseThrow().toString()))
        .containsExactly("2026-10", "2026-09");
    assertThat(each(read, lot -> lot.arrived().isPresent())).containsExactly(false, false);
  }

  @Test
  void quality_namedForARow_isThatOfAllItsPlants_withANod() throws IOException {
    ListRead read =
        read("Pianta,Vaso,Pezzi,Scelta\nAcer campestre,20 l,24,1a\nAcer campestre,20 l,6,2a\n");
    assertThat(each(read, lot -> lot.stated().cells().toString()))
        .containsExactly("{}", "{first %=0, second %=100}");
    assertThat(read.questions())
        .anySatisfy(question -> assertThat(question.question()).isEqualTo("2a are seconds"));
  }

  /** Serrula is another cherry than serrulata, and no shortened word: it is taken with a nod. */
  @Test
  void genusAlone_orAnEpithetThatMayBeAnothers_wantsANod() throws IOException {
    ListRead read =
        read(
            """
            Plant,Qty
            Liquidambar 'Worplesdon',12
            Prunus serrula,30
            Prunus serrul.,8
            Carp. bet.,40
            """);
    assertThat(each(read, lot -> lot.taxon().orElse("")))
        .containsExactly(
            "Liquidambar styraciflua", "Prunus serrulata", "Prunus serrulata", "Carpinus betulus");
    assertThat(read.questions())
        .extracting(question -> question.row() + " " + question.question())
        .containsExactly(
            "2 Liquidambar is read as Liquidambar styraciflua",
            "3 Prunus serrula is read as Prunus serrulata");
  }

  @Test
  void centimetresUnderAPotHeading_areItsWidth() throws IOException {
    ListRead read = read("Variety|Units|Pot dia\nAcer griseum|48|30cm\nPinus mugo|330|17 cm\n");
    assertThat(each(read, OwnLot::pot)).containsExactly("30 cm pot", "17 cm pot");
    assertThat(each(read, lot -> lot.heightCm().isPresent())).containsExactly(false, false);
  }

  /** Gattung, Art, Sorte: genus, epithet and cultivar; frei is what is left of what is in store. */
  @Test
  void nameInThreeColumns_isOneName() throws IOException {
    ListRead read =
        read(
            """
            Artikel-Nr.;Gattung;Art;Sorte;Güte;Lager;Reserviert;frei
            10011;Acer;campestre;'Elsrijk';H 3xv mDB 14-16;48;12;36
            10090;Pinus;sylvestris;'Watereri';Co 30 l 80-100;31;;31
            """);
    assertThat(each(read, OwnLot::ownName))
        .containsExactly("Acer campestre 'Elsrijk'", "Pinus sylvestris 'Watereri'");
    assertThat(each(read, lot -> lot.quantity().orElse(0))).containsExactly(48, 31);
    assertThat(each(read, OwnLot::pot)).containsExactly("", "30 litre");
    assertThat(each(read, OwnLot::note)).containsExactly("12 reserved; frei 36; 3xv", "frei 31");
  }

  @Test
  void listOfSingleTrees_isOneARow_whateverTheyAreInsuredFor() throws IOException {
    ListRead read =
        read(
            """
            ID,Species,Trunk Ø base (cm),Pot,Acquired,Acquired from,Insurance value
            T001,Scots pine,9,mica 40cm,Apr 2021,a neighbour,950
            T002,Japanese maple,5.2,30L,Nov 2023,a closing sale,700
            """);
    assertThat(each(read, lot -> lot.quantity().orElse(0))).containsExactly(1, 1);
    assertThat(each(read, lot -> lot.trunkFromMm().orElse(0))).containsExactly(90.0, 52.0);
    assertThat(each(read, OwnLot::pot)).containsExactly("40 cm pot", "30 litre");
    assertThat(each(read, OwnLot::supplier)).containsExactly("a neighbour", "a closing sale");
  }

  /** 180 + 100 − 40 − 2 = 238; the lines are numbered, and no places. */
  @Test
  void stockOfTheYear_addsUpWithWhatWasBought() throws IOException {
    ListRead read =
        read(
            """
            Line,Plant name,Spec,Opening stock,Purchases,Sales to date,Wastage,Closing stock,Target price
            1,Acer campestre,C12 100-125,240,0,60,4,176,18.50
            2,Betula pendula,C12 150-175,180,100,40,2,238,17.00
            3,Carpinus betulus,C20 175-200,90,0,22,0,68,42.00
            4,Quercus ilex,C25 150-175,0,60,0,0,60,75.00
            5,Sorbus aucuparia,C12 150-175,120,0,30,6,80,44.00
            """);
    assertThat(each(read, lot -> lot.quantity().orElse(0))).startsWith(176, 238, 68, 60);
    assertThat(each(read, OwnLot::place)).containsOnly("");
    assertThat(each(read, OwnLot::note)).startsWith("60 sold; 4 lost", "40 sold; 2 lost");
    assertThat(each(read, lot -> lot.sellingPrice().orElse(0))).startsWith(18.5, 17.0);
    // 120 − 30 − 6 = 84, and 80 are said to be left.
    assertThat(read.questions()).anySatisfy(question -> assertThat(question.row()).isEqualTo(6));
  }

  @Test
  void heightsInMetres_areWholeCentimetres() throws IOException {
    ListRead read = read("Baum;Höhe m;Anzahl;im Topf seit\nRotbuche;2,2;3;Mai 2024\n");
    assertThat(read.lots().get(0).heightCm()).hasValue(220);
  }

  /** What somebody wrote down walking round: marks, words before months, pence, two pots. */
  @Test
  void wordsAroundMonthsAndMarksBeforeNames_areUnderstood() throws IOException {
    ListRead read =
        read(
            """
            Kind,How big,How many,Since
            #Field maple,10 litre,112,potted March 26
            Hornbeam,60-90cm,400,bought bare root Nov 24 @ 85p
            *Hawthorn,25mm,38,planted spring 23
            Yew,15L and 25L,42,2021
            """);
    assertThat(each(read, OwnLot::ownName))
        .containsExactly("Field maple", "Hornbeam", "Hawthorn", "Yew");
    assertThat(each(read, lot -> lot.arrived().map(Object::toString).orElse("")))
        .containsExactly("", "2024-11", "2023-04", "2021-03");
    assertThat(each(read, lot -> lot.potted().map(Object::toString).orElse("")))
        .containsExactly("2026-03", "", "", "");
    assertThat(each(read, OwnLot::pot)).containsExactly("10 litre", "", "", "");
    assertThat(read.questions())
        .extracting(question -> question.row() + " " + question.question())
        .contains(
            "2 2026-03 is when they were potted",
            "3 2024-11 is when they came",
            "5 15 or 25 litres?");
  }

  @Test
  void pence_areHundredthsOfAPound() {
    assertThat(growingon.load.own.text.BoughtText.of("in Mar 26 @ 85p").cost()).hasValue(0.85);
    assertThat(growingon.load.own.text.BoughtText.of("in Mar 26 @ 1.35").cost()).hasValue(1.35);
  }
}
