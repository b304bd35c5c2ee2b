package growingon.report.build;

import growingon.report.model.Sheet;
import growingon.report.model.Table;
import java.util.List;
import java.util.stream.Stream;

/** A sheet of those tables that have rows; without any, its sentences have nothing to be about. */
public final class FilledSheet {
  private FilledSheet() {}

  public static Sheet of(String name, List<String> sentences, Table... tables) {
    List<Table> filled = Stream.of(tables).filter(table -> !table.inFull().isEmpty()).toList();
    List<String> said = filled.isEmpty() ? List.<String>of() : sentences;
    return new Sheet(name, said, filled, List.of(), false);
  }

  /** The same, printed upright: for tables of much text. */
  public static Sheet upright(String name, List<String> sentences, Table... tables) {
    Sheet sheet = of(name, sentences, tables);
    return new Sheet(name, sheet.sentences(), sheet.tables(), List.of(), true);
  }
}
