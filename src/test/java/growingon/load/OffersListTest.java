package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.cell.Findings;
import growingon.load.list.OwnFile;
import growingon.load.own.ListReader;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.lot.Site;
import growingon.load.own.row.ListRead;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A supplier's list of 200 rows against what was written into it, cell by cell. */
class OffersListTest {
  private static final Path LISTS = Path.of("src/test/resources/own");
  private static final YearMonth FROM = YearMonth.of(2026, 11);

  /** Of a girth, in mm a cm: over π, times trunk at the base over trunk where girth is measured. */
  private static final double TRUNK = 10 / Math.PI * Site.USUAL.girthBaseFactor();

  @TempDir Path folder;

  private static ListRead read(Path file) {
    Findings findings = new Findings();
    return ListReader.readOffers(
        file, OwnFile.read(file, findings).orElseThrow(), OwnWords.NONE, Site.USUAL, FROM);
  }

  private ListRead read(String text) throws IOException {
    Path file = folder.resolve("offers.csv");
    Files.writeString(file, text);
    return read(file);
  }

  private record Row(CSVRecord expected, OwnLot found, List<String> wrong) {
    void same(String column, Object is) {
      if (!expected.get(column).equals(String.valueOf(is))) {
        wrong.add("%s, %s: %s".formatted(expected, column, is));
      }
    }

    void near(String column, OptionalDouble is, double within) {
      String should = expected.get(column);
      boolean alike =
          should.isEmpty()
              ? is.isEmpty()
              : is.isPresent() && Math.abs(is.getAsDouble() - Double.parseDouble(should)) <= within;
      if (!alike) {
        wrong.add("%s, %s: %s".formatted(expected, column, is));
      }
    }

    void whole(String column, OptionalInt is) {
      same(column, is.isPresent() ? is.getAsInt() : "");
    }

    void trunk() {
      String[] girth = expected.get("girth").split("-");
      boolean alike =
          girth.length < 2
              ? found.trunkFromMm().isEmpty()
              : Math.abs(found.trunkFromMm().orElse(0) - Double.parseDouble(girth[0]) * TRUNK)
                      < 0.01
                  && Math.abs(found.trunkToMm().orElse(0) - Double.parseDouble(girth[1]) * TRUNK)
                      < 0.01;
      if (!alike) {
        wrong.add("%s: trunk from %s".formatted(expected, found.trunkFromMm()));
      }
    }

    void compare() {
      same("own", found.ownName());
      same("library", found.taxon().orElse(""));
      String form = found.form().isEmpty() ? "container" : found.form();
      same("form", form);
      trunk();
      near("height", found.heightCm(), 0.01);
      // A pot P9 is about 0.5 litre, as the trade has it.
      near("litres", found.potLitres(), 0.1);
      near("price", found.unitCost(), 0.0001);
      whole("least", found.least());
      whole("multiple", found.multiple());
      whole("most", found.quantity());
      same("month", found.arrived().map(Object::toString).orElse(""));
      same("origin", found.origin());
    }
  }

  @Test
  void listOf200Rows_isReadCellByCell() throws IOException {
    ListRead read = read(LISTS.resolve("penwick availability.csv"));
    Map<String, OwnLot> offers = new HashMap<>();
    read.lots().forEach(lot -> offers.put(Integer.toString(lot.row()), lot));
    List<String> wrong = new ArrayList<>();
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader text =
        Files.newBufferedReader(LISTS.resolve("penwick availability.expected.csv"))) {
      List<CSVRecord> expected = format.parse(text).getRecords();
      assertThat(offers).hasSize(expected.size()).hasSize(196);
      for (CSVRecord row : expected) {
        new Row(row, offers.get(row.get("row")), wrong).compare();
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(read.lots()).extracting(OwnLot::lot).doesNotHaveDuplicates();
  }

  @Test
  void rowsThatCannotBeBought_areToldAndLeftOut() {
    ListRead read = read(LISTS.resolve("penwick availability.csv"));
    assertThat(read.leftOut(read.asked()))
        .containsExactly("row 63 \"POA\"", "row 151 \"4.50 / 3.90\"");
    assertThat(read.accounts().get(0).gone()).isEqualTo(2);
  }

  @Test
  void headings_ofASupplier_areNotThoseOfAStockList() throws IOException {
    ListRead read =
        read("Pflanze;Größe;Preis;VPE;Mindestmenge;Verfügbar ab\nFeldahorn;C3;4,20;10;20;KW 12\n");
    assertThat(read.headings())
        .extracting(HeadingRead::ours)
        .containsExactly("species", "size", "unit cost", "multiple", "least", "arrived");
    OwnLot offer = read.lots().get(0);
    assertThat(offer.lot()).isEqualTo("Feldahorn C3");
    assertThat(offer.unitCost()).hasValue(4.2);
    assertThat(offer.quantity()).isEmpty();
    assertThat(offer.least()).hasValue(20);
    assertThat(offer.arrived()).contains(YearMonth.of(2027, 3));
  }

  @Test
  void month_withoutAYear_isTheNextOne() throws IOException {
    ListRead read =
        read(
            "Plant,Size,Price,Ready\nField maple,P9,2.10,now\nHornbeam,P9,2.10,March\n"
                + "Yew,P9,2.10,December\nBeech,P9,2.10,wk 3\nOak,P9,2.10,some day\n");
    assertThat(read.lots())
        .extracting(lot -> lot.arrived().map(Object::toString).orElse("asked"))
        .containsExactly("2026-11", "2027-03", "2026-12", "2027-01", "asked");
  }

  @Test
  void fewerThanCanBeBought_isAsked() throws IOException {
    ListRead read =
        read("Plant,Size,Price,MOQ,Available\nField maple,P9,2.10,20,12\nHornbeam,P9,2.10,20,40\n");
    assertThat(read.lots()).hasSize(1);
    assertThat(read.asked().get(0).row()).isEqualTo(2);
  }

  /** What a shop is to ask is not what a plant costs here, with or without VAT. */
  @Test
  void retailPrice_besideThatOfTheTrade_isANote() throws IOException {
    OwnLot lot =
        read("Plant,Pot,Available,Trade ea ex GST,RRP inc GST\nAcer campestre,10L,40,12.50,29.95\n")
            .lots()
            .get(0);
    assertThat(lot.unitCost()).hasValue(12.5);
    assertThat(lot.note()).isEqualTo("RRP inc GST 29.95");
  }

  @Test
  void retailPrice_alone_isTaken_withANod() throws IOException {
    ListRead read = read("Plant,Pot,Available,RRP\nAcer campestre,10L,40,29.95\n");
    assertThat(read.lots().get(0).unitCost()).hasValue(29.95);
    assertThat(read.headings().get(3).how()).isEqualTo(HeadingRead.How.LIKELY);
  }

  @Test
  void oneBreak_besideThePriceOfOne_isAPriceFromThere() throws IOException {
    OwnLot lot =
        read("Plant,Pot,Available,Price,10+ ea\nAcer campestre,10L,40,12.50,11.00\n").lots().get(0);
    assertThat(lot.unitCost()).hasValue(12.5);
    assertThat(lot.terms().breaks()).containsExactly(Map.entry(10, 11.0));
  }

  /** Week 6 from November 2026 on is that of 2027, whose Thursday is 11 February (ISO 8601). */
  @Test
  void weekAlone_isTheNext_withANod_andAPriceOfAThousandHoldsFromThere() throws IOException {
    ListRead read =
        read(
            "Plant,Available,Ready week,Price/100,Price/1000\nAcer campestre,9000,6,28.00,240.00\n");
    OwnLot lot = read.lots().get(0);
    assertThat(lot.arrived()).hasValue(YearMonth.of(2027, 2));
    assertThat(lot.unitCost()).hasValue(0.28);
    assertThat(lot.terms().breaks()).containsExactly(Map.entry(1000, 0.24));
    assertThat(read.questions())
        .anySatisfy(each -> assertThat(each.question()).startsWith("no year is written"));
  }
}
