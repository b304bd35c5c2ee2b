package growingon.load.own;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.own.sheet.SheetCell;
import growingon.load.own.text.CountText;
import growingon.load.own.text.MoneyText;
import growingon.load.own.text.MonthText;
import growingon.load.own.text.Read;
import java.time.YearMonth;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers, months and prices as growers write them. */
class CellTextsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '^',
      value = {
        "1,200|1200|",
        "1.200|1200|",
        "approx 50|50|about",
        "75?|75|about",
        "50+|50|about",
        "300 (ish)|300|about",
        "300 ish|300|about",
        "ca. 40|40|about",
        "~ 30|30|about",
        "2 doz|24|",
        "3 pr|6|",
        "3 Paar|6|",
        "2 x 84|168|",
        "2 trays of 84|168|",
        "2 Bd à 84|168|",
        "75.00|75|",
        "5 of 9|5|nod",
        "9→7|7|nod",
        "9 (1 lame)|9|about",
        "50-60|50|nod",
        "4+1|5|nod",
        "7 + 2 (a name)|9|nod",
        "10, all promised to the Hall|10|nod",
        "18. 3 sold, to be collected|18|nod",
        "2 - £280 each|2|nod",
        "5   £65|5|nod",
        "unos 90|90|about",
        "1.250,00|1250|",
        "1,250.00|1250|",
        "3 trays (60)||ask",
        "due||ask",
        "-5||ask",
        "40-||ask",
        "4O||ask",
        "2.5||ask",
        "12 pcs|12|",
        "1 250|1250|"
      })
  void number_asGrowersWriteIt_isRead(String text, Integer plants, String how) {
    Read<Integer> read = CountText.of(SheetCell.of(text));
    assertThat(read.value()).as(text).isEqualTo(Optional.ofNullable(plants));
    String found =
        read.about() ? "about" : !read.nod().isEmpty() ? "nod" : read.isAsked() ? "ask" : null;
    assertThat(found).as(text).isEqualTo(how);
  }

  @ParameterizedTest
  @CsvSource({
    "14 Nov 26,2026-11",
    "14-Nov-26,2026-11",
    "Nov 2024,2024-11",
    "Mar-24,2024-03",
    "Feb 25,2025-02",
    "03.2025,2025-03",
    "10/23,2023-10",
    "12/2021,2021-12",
    "2024-03,2024-03",
    "wk 12 2024,2024-03",
    "KW 12/24,2024-03",
    "KW 12/2024,2024-03",
    "14/11/26,2026-11",
    "15.11.2023,2023-11",
    "Frühj. 2024,2024-04",
    "Mrz 24,2024-03",
    "Okt 23,2023-10",
    "autumn 2025,2025-10",
    "2024,2024-03",
    "Herbst 2024,2024-10",
    "März 2022,2022-03",
    "déc 2021,2021-12",
    "printemps 2023,2023-04",
    "winter 2023,ask",
    "last year,ask",
    "30/02/2024,ask",
    "02/11/2024,ask",
    "00/00/00,none",
    "?,none",
    "March,ask",
    "13/23,ask",
    "20240315,2024-03",
    "ottobre 2023,2023-10",
    "mei 2024,2024-05",
    "45352,2024-03",
    "Easter 19,2019-04",
    "Ostern 2024,2024-03",
    "Pfingsten 2024,2024-05",
    "Xmas 22,2022-12",
    "Noël 2023,2023-12",
    "Paddy's day 24,2024-03",
    "1st wk Sept 23,2023-09",
    "Ende März 2024,2024-03",
    "fin mars 2024,2024-03",
    "last May,ask",
    "this week,ask"
  })
  void month_asGrowersWriteIt_isRead(String text, String expected) {
    Read<YearMonth> read = new MonthText(Optional.empty(), false).of(SheetCell.of(text));
    String found = read.isAsked() ? "ask" : read.value().map(YearMonth::toString).orElse("none");
    assertThat(found).as(text).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "£32.50|32.5|GBP",
        "1.250,00|1250.0|",
        "1,250.00|1250.0|",
        "6,50|6.5|",
        ".45|0.45|",
        "12,-|12.0|",
        "8-|8.0|",
        "£4 each|4.0|GBP",
        "€ 12,50|12.5|EUR",
        "12,50 €|12.5|EUR",
        "POA||",
        "a. Anfr.||",
        "nil||",
        "-||",
        "12.50 ono|12.5|",
        "45p|0.45|GBP"
      })
  void price_asGrowersWriteIt_isRead(String text, Double amount, String currency) {
    Read<MoneyText> read = MoneyText.of(SheetCell.of(text));
    assertThat(read.isAsked()).as(text).isFalse();
    assertThat(read.value().map(MoneyText::amount)).as(text).isEqualTo(Optional.ofNullable(amount));
    assertThat(read.value().map(MoneyText::currency).orElse(""))
        .isEqualTo(currency == null ? "" : currency);
  }
}
