package growingon.write.workbook;

import growingon.report.model.InputBook;
import growingon.report.model.InputBook.Choice;
import growingon.report.model.InputBook.InputSheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/**
 * A hidden sheet with every list to choose from, and a name for each. What other sheets feed is
 * gathered by formulas, each word once: in a first column the number of the row in which it comes
 * for the first time, in a second the words without gaps.
 */
final class ChoiceLists {
  private static final String SHEET = "lists";
  private static final int LAST = InputSheetWriter.LAST_ROW;

  private final SteadyWorkbook book;
  private final InputBook described;
  private final Map<String, InputSheet> sheets = new HashMap<>();
  private final List<Gathered> lists = new ArrayList<>();

  ChoiceLists(SteadyWorkbook book, InputBook described) {
    this.book = book;
    this.described = described;
    described.sheets().forEach(sheet -> sheets.put(sheet.name(), sheet));
  }

  /** Name of the range in which a list stands. */
  static String nameOf(String choice) {
    return "list_" + choice.replace(' ', '_').toLowerCase(Locale.ROOT);
  }

  /**
   * A list with the values that its formulas have for the example rows.
   *
   * @param column its first column; words without a sheet take one, others two
   * @param source column of the sheet that feeds it, as $A
   * @param firsts for each row its number if its word comes for the first time, else null
   * @param words the words
   */
  private record Gathered(
      Choice choice, int column, String source, List<Integer> firsts, List<String> words) {
    boolean isFed() {
      return !choice.sheet().isEmpty();
    }
  }

  void write() {
    int column = 0;
    for (Choice choice : described.choices()) {
      Gathered list = gathered(choice, column);
      lists.add(list);
      name(list);
      column += list.isFed() ? 2 : 1;
    }
    SXSSFSheet sheet = book.createSheet(SHEET);
    for (int row = 0; row < LAST; row++) {
      Row target = sheet.createRow(row);
      for (Gathered list : lists) {
        write(list, target);
      }
    }
    book.setSheetHidden(book.getSheetIndex(sheet), true);
  }

  private Gathered gathered(Choice choice, int column) {
    if (choice.sheet().isEmpty()) {
      return new Gathered(choice, column, "", List.of(), choice.words());
    }
    InputSheet sheet = sheets.get(choice.sheet());
    int index =
        sheet.columns().stream().map(each -> each.heading()).toList().indexOf(choice.heading());
    List<Integer> firsts = new ArrayList<>();
    List<String> words = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (int row = 0; row < sheet.rows().size(); row++) {
      String word = sheet.rows().get(row).get(index);
      boolean first = !word.isEmpty() && seen.add(word.toLowerCase(Locale.ROOT));
      firsts.add(first ? row + 2 : null);
      if (first) {
        words.add(word);
      }
    }
    String letters = CellReference.convertNumToColString(index);
    return new Gathered(choice, column, letters, firsts, words);
  }

  /** Row 1 has what the list is of; the list begins in row 2, as the tables do. */
  private void write(Gathered list, Row row) {
    int number = row.getRowNum() + 1;
    if (number == 1) {
      row.createCell(list.column).setCellValue(list.choice.name());
    } else if (list.isFed()) {
      writeFirst(list, row.createCell(list.column), number);
      writeWord(list, row.createCell(list.column + 1), number);
    } else if (number - 2 < list.words.size()) {
      row.createCell(list.column).setCellValue(list.words.get(number - 2));
    }
  }

  private static void writeFirst(Gathered list, Cell cell, int number) {
    String sheet = "'" + list.choice.sheet() + "'!";
    String here = sheet + list.source + number;
    String above = sheet + list.source + "$2:" + list.source + number;
    cell.setCellFormula(
        "IF(%s=\"\",\"\",IF(COUNTIF(%s,%s)=1,ROW(),\"\"))".formatted(here, above, here));
    Integer value = number - 2 < list.firsts.size() ? list.firsts.get(number - 2) : null;
    if (value == null) {
      cell.setCellValue("");
    } else {
      cell.setCellValue(value);
    }
  }

  private static void writeWord(Gathered list, Cell cell, int number) {
    String firsts = range(list.column);
    String source =
        "'%s'!$%s$1:$%s$%d".formatted(list.choice.sheet(), list.source, list.source, LAST);
    int place = number - 1;
    cell.setCellFormula(
        "IF(%d>COUNT(%s),\"\",INDEX(%s,SMALL(%s,%d)))"
            .formatted(place, firsts, source, firsts, place));
    cell.setCellValue(place <= list.words.size() ? list.words.get(place - 1) : "");
  }

  /** Rows 2 to the last of a column of the lists. */
  private static String range(int column) {
    String letters = CellReference.convertNumToColString(column);
    return "$%s$2:$%s$%d".formatted(letters, letters, LAST);
  }

  private void name(Gathered list) {
    Name name = book.createName();
    name.setNameName(nameOf(list.choice.name()));
    String letters =
        CellReference.convertNumToColString(list.isFed() ? list.column + 1 : list.column);
    name.setRefersToFormula(
        list.isFed()
            ? "OFFSET(%s!$%s$2,0,0,MAX(1,COUNT(%s!%s)),1)"
                .formatted(SHEET, letters, SHEET, range(list.column))
            : "%s!$%s$2:$%s$%d".formatted(SHEET, letters, letters, list.words.size() + 1));
  }
}
