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
 * Habits of lists in German, French, Dutch, Italian and Spanish, each by itself: invented rows, and
 * what a careful person reads in them.
 */
class ListsFromElsewhereTest {
  @TempDir Path folder;

  private ListRead read(String... lines) throws IOException {
    Path file = Files.write(folder.resolve("list.csv"), List.of(lines));
    var sheets = OwnFile.read(file, new Findings()).orElseThrow();
    return ListReader.read(file, sheets, OwnWords.NONE, Site.USUAL);
  }

  private static List<String> lots(ListRead read) {
    return read.lots().stream().map(ListsFromElsewhereTest::line).toList();
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
            shown("cost", lot.unitCost(), lot.unitCost()),
            shown("price", lot.sellingPrice(), lot.sellingPrice()),
            lot.note())
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(" | "));
  }

  private static String shown(String what, OptionalDouble from, OptionalDouble to) {
    return from.isEmpty()
        ? ""
        : String.format(Locale.ROOT, "%s %.2f", what, from.getAsDouble())
            + (from.equals(to) ? "" : String.format(Locale.ROOT, "-%.2f", to.getAsDouble()));
  }

  private static List<String> asked(ListRead read) {
    return read.questions().stream()
        .filter(each -> !each.nod())
        .map(each -> each.row() + " " + each.column() + ": " + each.question())
        .toList();
  }

  @Test
  void wordsBesideTheRows_withoutAHeading_areRemarks() throws IOException {
    ListRead read =
        read(
            "soort;aantal;maat;;;",
            "haagbeuk;12;60/80;scheef;;",
            "beuk;7;80/100;;;een tafel ernaast",
            "totaal;19;;;;");
    assertThat(lots(read))
        .containsExactly("2 haagbeuk | 12 | height 70.00 | scheef", "3 beuk | 7 | height 90.00");
    assertThat(read.headings())
        .anyMatch(head -> head.heading().equals("D (no heading)") && head.is("note"));
  }

  @Test
  void rowThatARemarkSaysIsSoldOrderedOrDead_isNoStock() throws IOException {
    ListRead read =
        read(
            "soort;aantal;maat;opmerking",
            "haagbeuk;12;60/80;VERKOCHT fam. Ploeg",
            "beuk;7;80/100;verk. 12.04.25 aan Ploeg",
            "eik;9;80/100;besteld bij Onland, komt wk 10",
            "linde;8;80/100;commandé, pas encore reçu",
            "iep;6;80/100;se secó en agosto",
            "taxus baccata;5;60/80;dode tak",
            "veldesdoorn;4;60/80;niet verkocht voor 2027",
            "grove den;3;60/80;1 ex. verkocht, staat er nog",
            "jeneverbes;2;60/80;verkocht 1 st");
    assertThat(read.lots().stream().map(OwnLot::row)).containsExactly(7, 8, 9, 10);
    assertThat(read.notices())
        .extracting(MarkedText::toString)
        .contains(
            "5 rows with 42 plants are marked as sold, ordered or no stock and not read (rows 2, 3,"
                + " 4, 5, 6)");
    assertThat(asked(read))
        .contains(
            "9 quantity: is the number right? the note says: 1 ex. verkocht, staat er nog",
            "10 quantity: is the number right? the note says: verkocht 1 st");
  }

  @Test
  void rowThatComesAfterTheCount_isNoStockYet() throws IOException {
    ListRead read =
        read(
            "Giacenze al 02/02/2026;;",
            "pianta;quantità;arrivo",
            "carpino bianco;28;nov 2019",
            "leccio;22;mar 17",
            "tasso;45;ott 2018",
            "faggio;12;nov 2020",
            "olivo;60;mar 26");
    assertThat(read.lots().stream().map(OwnLot::row)).containsExactly(3, 4, 5, 6);
    assertThat(read.notices())
        .extracting(MarkedText::toString)
        .contains("1 row with 60 plants is to come after the count and not read (row 7)");
  }

  @Test
  void titleOlderThanMuchOfTheList_isNotTheDayOfTheCount() throws IOException {
    ListRead read =
        read(
            "Giacenze al 02/02/2020;;",
            "pianta;quantità;arrivo",
            "carpino bianco;28;nov 2021",
            "leccio;22;mar 22",
            "tasso;45;ott 2018");
    assertThat(read.lots().stream().map(OwnLot::row)).containsExactly(3, 4, 5);
  }

  private static List<String> headings(ListRead read) {
    return read.headings().stream()
        .map(head -> (head.heading() + " = " + head.ours() + " " + head.unit()).strip())
        .toList();
  }

  private static List<String> species(ListRead read) {
    return read.lots().stream().map(lot -> lot.taxon().orElse("? " + lot.standIn())).toList();
  }

  @Test
  void headings_withVatWeeksAndPoints_areUnderstood() throws IOException {
    ListRead read =
        read(
            "Nr.;Artikel;Anz.;gepfl. KW;Einst.;aankoop (excl);vraagprijs (6% btw incl.);P.V. TVAC;INGROSSO + IVA;Empl.;Status / Bem.",
            "F-1;Hainbuche;3;46/17;2,00;2,00;10,60;9,00;8,00;T1;schief",
            "F-2;Buche;4;12/21;3,00;3,00;21,20;9,00;8,00;T1;");
    assertThat(headings(read))
        .containsExactly(
            "Nr. = lot",
            "Artikel = species",
            "Anz. = quantity count",
            "gepfl. KW = arrived week",
            "Einst. = unit cost money",
            "aankoop (excl) = unit cost money",
            "vraagprijs (6% btw incl.) = selling price money incl VAT",
            "P.V. TVAC = selling price money incl VAT",
            "INGROSSO + IVA = selling price money",
            "Empl. = place",
            "Status / Bem. = note");
    assertThat(read.lots().get(0).arrived()).hasToString("Optional[2017-11]");
  }

  @Test
  void priceWithVat_whoseHeadingStatesTheRate_isReadWithoutIt() throws IOException {
    ListRead read =
        read("soort;aantal;vraagprijs (6% btw incl.)", "beuk;3;10,60", "haagbeuk;4;21,20");
    assertThat(read.lots())
        .extracting(lot -> lot.sellingPrice().getAsDouble())
        .containsExactly(10.0, 20.0);
  }

  @Test
  void priceOfWhichATitleSaysThatItIsWithVat_isNotReadBeforeTheRateIsKnown() throws IOException {
    ListRead read =
        read(
            "Preise in Fr. inkl. MwSt;;", "Baum;Stück;Preis", "Buche;3;10.60", "Hainbuche;4;21.20");
    assertThat(headings(read)).contains("Preis = selling price money incl VAT");
    assertThat(read.lots()).allMatch(lot -> lot.sellingPrice().isEmpty());
  }

  @Test
  void headings_inTwoRowsThatAreNotMerged_areReadAsOne() throws IOException {
    ListRead read =
        read(
            "espèce;variété / forme;Taille;;cond.;Quantité;;;arrivée;Prix HT;",
            ";;circ.;haut.;;total;rés.;dispo;;PA;PV",
            "Charme;tige;12/14;;MG;38;6;32;sem. 46/21;17,5;89",
            "Hêtre;'Dawyck';;200/250;M;7;;7;03/2021;22;145",
            "Orme;champêtre;;125/150;RN;30;;30;03/2024;1,9;9,8");
    assertThat(lots(read))
        .containsExactly(
            "3 Charme | 38 | trunk 47.75-55.70 | root ball | 2021-11 | cost 17.50 | price 89.00 | tige; 6 reserved; dispo 32",
            "4 Hêtre 'Dawyck' | 7 | height 225.00 | root ball | 2021-03 | cost 22.00 | price 145.00 | dispo 7",
            "5 Orme champêtre | 30 | height 137.50 | bare root | 2024-03 | cost 1.90 | price 9.80 | dispo 30");
    assertThat(species(read)).containsExactly("Carpinus betulus", "Fagus sylvatica", "Ulmus minor");
  }

  @Test
  void sizesOverNumberAndPrice_endWhereTheSizesEnd() throws IOException {
    ListRead read =
        read(
            ";entrada;C-1,3;;C-3;;Total;",
            "especie;;uds;€;uds;€;;",
            "Encina;oct-22;200;1,6;80;4,9;280;crece poco",
            "Haya;oct-23;;;28;6,5;28;",
            "Carpe;;-;;-;5;0;agotado",
            "TOTAL;;200;;108;;308;");
    assertThat(lots(read))
        .containsExactly(
            "3 Encina | 200 | 1.3 litre | 2022-10 | crece poco",
            "3 Encina | 80 | 3 litre | 2022-10 | crece poco",
            "4 Haya | 28 | 3 litre | 2023-10");
    assertThat(read.totals()).allMatch(total -> total.agrees());
  }

  @Test
  void ledger_withoutWhatIsLeft_isWorkedOut_andAskedWhereItDoesNotAddUp() throws IOException {
    ListRead read =
        read(
            "Désignation;Départ;Vendu;Mort;Reste",
            "charme;30;8;2;20",
            "hêtre;6;1;;5",
            "érable champêtre;4;1;1;",
            "if;24;10;;14",
            "mélèze;16;6;2;8",
            "pin sylvestre;15;5;;12",
            "aubépine;14;6;1;7");
    assertThat(read.lots())
        .extracting(lot -> lot.quantity().getAsInt())
        .containsExactly(20, 5, 2, 14, 8, 10, 7);
    assertThat(asked(read)).containsExactly("7 quantity: which number holds: 12 or 10?");
  }

  @Test
  void bundlesInTheUnit_andPricesForAHundred_areTakenApart() throws IOException {
    ListRead read =
        read(
            "Artikel;Menge;Einh.;EK",
            "Hainbuche;8;Bund à 25;48,00 %",
            "Feldahorn;4;Bund à 50;62,00 %",
            "Kiefer Pinus sylvestris;500;Stk;285,00 ‰");
    assertThat(lots(read))
        .containsExactly(
            "2 Hainbuche | 200 | cost 0.48",
            "3 Feldahorn | 200 | cost 0.62",
            "4 Kiefer Pinus sylvestris | 500 | cost 0.29");
  }

  @Test
  void titleThatSaysATreeARow_makesARowWithoutANumberOne() throws IOException {
    ListRead read =
        read(
            "Eine Zeile = ein Baum;;",
            "Nr.;Baum;Anz.",
            "F-1;Buche;",
            "F-2;Hainbuche;6",
            "F-3;Eibe;");
    assertThat(read.lots()).extracting(lot -> lot.quantity().getAsInt()).containsExactly(1, 6, 1);
    assertThat(read.notices())
        .extracting(MarkedText::toString)
        .contains("a row without a number is one plant, as your title says");
  }

  @Test
  void numbersAfterTheLotsThatAreTheirSum_areTotals() throws IOException {
    ListRead read =
        read(
            "aantal;soort;maat",
            "15;beuk;60/80",
            "8;haagbeuk;60/80",
            "23;stuks op de akker;",
            "7;linde;60/80",
            "30;alles gesamt;",
            ";;",
            "T1;tunnel froid;");
    assertThat(read.lots().stream().map(OwnLot::row)).containsExactly(2, 3, 5);
    assertThat(read.totals()).hasSize(2).allMatch(total -> total.agrees());
  }

  @Test
  void boxUnderAPotHeading_isNoHeight() throws IOException {
    ListRead read =
        read(
            "Baum;Stück;Höhe;Gefäss",
            "Buche;1;62;Holzkiste 50x40",
            "Eibe;1;45;Schale 60x40",
            "Feldahorn;1;50;Mörtelkübel 40 l",
            "Linde;1;50;Rosentopf 13x17",
            "Esche;1;10;Tray 6x9");
    assertThat(lots(read))
        .containsExactly(
            "2 Buche | 1 | height 62.00 | box 50x40x20 | Holzkiste 50x40",
            "3 Eibe | 1 | height 45.00 | box 60x40x8 | Schale 60x40",
            "4 Feldahorn | 1 | height 50.00 | 40 litre | Mörtelkübel",
            "5 Linde | 1 | height 50.00 | P13",
            "6 Esche | 1 | height 10.00 | plug | Tray 6x9");
  }

  @Test
  void trunks_byTheirWordsAndUnits_areTrunks() throws IOException {
    ListRead read =
        read(
            "Désignation;Calibre;Cont.;Nb;Remarques",
            "charme;trc 45;C20;3;",
            "if;trc 8 cm;C35;3;",
            "hêtre;trc 25/30;C12;3;",
            "érable champêtre;tige 12/14;motte;3;",
            "olivier;St 40/50 cm;C50;3;stamomtrek 40/50",
            "if;kegel 150;motte;3;");
    assertThat(read.lots())
        .extracting(lot -> shown("trunk", lot.trunkFromMm(), lot.trunkToMm()))
        .containsExactly(
            "trunk 45.00",
            "trunk 80.00",
            "trunk 25.00-30.00",
            "trunk 47.75-55.70",
            "trunk 159.15-198.94",
            "");
    assertThat(read.lots().get(5).heightCm()).hasValue(150);
  }

  @Test
  void trunkWithItsOwnUnit_isNoHeight() throws IOException {
    ListRead read = read("árbol;uds;Ø tronco;altura m", "Olivo;1;9,5 cm;0.5", "Haya;1;12 cm;0.55");
    assertThat(lots(read))
        .containsExactly(
            "2 Olivo | 1 | trunk 95.00 | height 50.00", "3 Haya | 1 | trunk 120.00 | height 55.00");
  }

  @Test
  void cultivarsAndShortenedNames_tellTheSpecies_andFalseFriendsDoNot() throws IOException {
    ListRead read =
        read(
            "plant;qty",
            "Genévrier 'Itoigawa';1",
            "genév. Itoigawa;1",
            "Pommier 'Evereste';1",
            "Acero giapp. Deshojo;1",
            "Jap. esdoorn zaailing;1",
            "Crat. laev. 'Paul's Sc.';1",
            "Bergföhre;1",
            "Acebuche;1",
            "Carpino nero;1",
            "Genévrier;1");
    assertThat(species(read))
        .containsExactly(
            "Juniperus chinensis",
            "Juniperus chinensis",
            "Malus",
            "Acer palmatum",
            "Acer palmatum",
            "Crataegus monogyna",
            "Pinus mugo",
            "Olea europaea",
            "? ",
            "? juniperus");
  }

  @Test
  void titlesOfGenusPlaceAndOthersTrees_holdForTheRowsBelow() throws IOException {
    ListRead read =
        read(
            "Artikel;Menge;Größe",
            "Carré du Moulin;;",
            "Acer – Ahorn;;",
            "A. campestre;4;60/80",
            "A. monspessulanum;5;60/80",
            "Pension (Kundenbäume);;",
            "Buche;3;60/80");
    assertThat(lots(read))
        .containsExactly(
            "4 A. campestre | 4 | height 70.00 | Carré du Moulin",
            "5 A. monspessulanum | 5 | height 70.00 | Carré du Moulin");
    assertThat(species(read)).containsExactly("Acer campestre", "? acer");
  }

  @Test
  void monthThatMayBeADay_isAsked() throws IOException {
    ListRead read = read("soort;aantal;sinds", "beuk;3;11/12", "eik;4;11/18");
    assertThat(asked(read))
        .containsExactly("2 arrived: which month and year? 11/12 may be a day too");
  }

  @Test
  void orderThatIsAwaited_isNoStock_whateverMonthStandsBesideIt() throws IOException {
    ListRead read =
        read(
            "especie;uds;plantación;notas",
            "Haya;3;03/2021;pedido a Brentasso",
            "Carpe;300;sem. 7/26;PEDIDO, sin recibir",
            "Tejo;250;sem. 8/26;commandé, pas encore reçu");
    assertThat(read.lots().stream().map(OwnLot::row)).containsExactly(2);
  }

  @Test
  void markForAsAbove_overAnEmptyCell_isNotWhatStandsFurtherUp() throws IOException {
    ListRead read =
        read(
            "árbol;uds;llegó;notas",
            "Haya;3;03/2021;torcido",
            "Carpe;4;05/2020;",
            "Tejo;5;íd.;íd.");
    assertThat(lots(read))
        .containsExactly(
            "2 Haya | 3 | 2021-03 | torcido",
            "3 Carpe | 4 | 2020-05",
            "4 Tejo | 5 | 2020-05 | íd.");
  }
}
