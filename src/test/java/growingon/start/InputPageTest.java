package growingon.start;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.TableFormats;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The page of the input tables is what the program reads. After a change of a heading: {@code mvn
 * -q test -Dtest=InputPageTest -Dinputs.write=true}.
 */
class InputPageTest {
  private static final Path PAGE = Path.of("demo-data/README.md");
  private static final String BEGIN = "<!-- tables -->\n";
  private static final String END = "<!-- end of tables -->";

  @Test
  void page_ofTheInputTables_hasEveryHeadingThatIsRead() throws IOException {
    String page = Files.readString(PAGE);
    int from = page.indexOf(BEGIN) + BEGIN.length();
    int to = page.indexOf(END);
    String made = tables();
    if (Boolean.getBoolean("inputs.write")) {
      Files.writeString(PAGE, page.substring(0, from) + made + page.substring(to));
    } else {
      assertThat(page.substring(from, to)).isEqualTo(made);
    }
  }

  @Test
  void everyHeading_thatATableMustHave_isOnThePage() throws IOException {
    String page = Files.readString(PAGE);
    for (TableFormats.TableHeadings table : written()) {
      for (String heading : table.needed()) {
        assertThat(page).as(table.table()).contains("| " + heading + " | needed |");
      }
    }
  }

  /** Tables that a grower types; the quick sheet and what is asked explain themselves. */
  private static List<TableFormats.TableHeadings> written() {
    List<String> explained = HeadingNote.all().stream().map(HeadingNote::table).distinct().toList();
    return TableFormats.all().stream()
        .filter(table -> explained.contains(table.table()))
        .filter(table -> !table.table().equals("quick") && !table.table().equals("settings"))
        .toList();
  }

  private static String tables() {
    StringBuilder page = new StringBuilder();
    for (TableFormats.TableHeadings table : written()) {
      page.append("\n## ").append(table.table()).append("\n\n");
      page.append("| heading | if empty | what it is |\n| --- | --- | --- |\n");
      HeadingNote.all().stream()
          .filter(note -> note.table().equals(table.table()))
          .forEach(note -> page.append(line(table, note)));
    }
    page.append("\n## settings, or nursery.json\n\n| name | what it is |\n| --- | --- |\n");
    page.append(
        TableFormats.settings().stream()
            .map(each -> "| %s | %s |\n".formatted(each.name(), cell(each.says())))
            .collect(Collectors.joining()));
    return page.append('\n').toString();
  }

  private static String line(TableFormats.TableHeadings table, HeadingNote note) {
    String empty = table.needed().contains(note.heading()) ? "needed" : note.usual();
    return "| " + note.heading() + " | " + cell(empty) + " | " + cell(note.meaning()) + " |\n";
  }

  private static String cell(String text) {
    return text.replace("|", "\\|");
  }
}
