package growingon.review;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.nursery.record.Receipt;
import growingon.problem.Where;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.review.written.SharingOut;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SharingOutTest {
  @Test
  void saleOfTheDaybookPaidInPart_isTwoLinesAndItsHoursStandOnce() {
    Nurseries nursery = Nurseries.bare().lot(Lots.lot("A").quantity(20).arrived(2025, 3).build());
    LocalDate day = LocalDate.of(2026, 12, 4);
    Diary diary = new Diary().on(day.toString(), "A", What.SOLD, 8).hours(3);
    Receipt receipt =
        new Receipt(
            YearMonth.from(day),
            Optional.of(day),
            Optional.of("A"),
            Optional.empty(),
            Optional.empty(),
            5,
            100,
            new Where("receipts.csv", "", 2, ""));

    List<DaybookLine> lines =
        SharingOut.of(
                List.of(receipt),
                Diary.inputs(nursery.scenario(), diary.lines()),
                YearMonth.of(2027, 1))
            .lines();

    assertThat(lines)
        .extracting(DaybookLine::quantity)
        .containsExactly(OptionalDouble.of(5), OptionalDouble.of(3));
    assertThat(lines)
        .extracting(DaybookLine::amount)
        .containsExactly(OptionalDouble.of(100), OptionalDouble.empty());
    assertThat(lines.stream().mapToDouble(line -> line.hours().orElse(0)).sum()).isEqualTo(3);
  }
}
