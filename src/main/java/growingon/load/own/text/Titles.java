package growingon.load.own.text;

import growingon.load.own.sheet.SheetCell;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/** What stands above a list: the month of the count. */
public final class Titles {
  private static final int LONGEST_DATE = 4;

  private Titles() {}

  /** The month that a title names with its year. */
  public static Optional<YearMonth> month(SheetCell cell) {
    if (cell.date().isPresent()) {
      return cell.date().map(YearMonth::from);
    }
    List<String> words = List.of(cell.text().strip().split("[\\s\\p{Z}]+"));
    for (int length = Math.min(LONGEST_DATE, words.size()); length > 0; length--) {
      for (int i = 0; i + length <= words.size(); i++) {
        String part =
            String.join(" ", words.subList(i, i + length)).replaceAll("^[(,]+|[),.]+$", "");
        Read<YearMonth> read =
            new MonthText(Optional.empty(), false).of(SheetCell.of(part.isEmpty() ? "-" : part));
        if (read.value().isPresent() && !read.about()) {
          return read.value();
        }
      }
    }
    return Optional.empty();
  }
}
