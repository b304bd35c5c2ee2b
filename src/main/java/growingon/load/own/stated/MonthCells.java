package growingon.load.own.stated;

import growingon.load.own.heading.ColumnFacts;
import growingon.load.own.heading.HeadedCells.Filled;
import growingon.load.own.text.MonthText;
import growingon.load.own.text.Read;
import growingon.load.own.text.Units;
import java.time.YearMonth;

/**
 * Reads cells of months as their columns show.
 *
 * @param south whether seasons are those of the southern hemisphere
 */
record MonthCells(ColumnFacts facts, boolean south) {
  /** Months as those of a cell's column are written. */
  MonthText of(Filled cell) {
    return new MonthText(facts.dayFirst(cell.head().column()), south);
  }

  Read<YearMonth> read(Filled cell) {
    return cell.head().unit().equals(Units.WEEK)
        ? of(cell).ofWeek(cell.cell())
        : of(cell).of(cell.cell());
  }
}
