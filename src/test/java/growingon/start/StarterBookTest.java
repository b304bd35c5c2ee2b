package growingon.start;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.load.TableFormats;
import growingon.load.TableFormats.Column;
import growingon.load.TableFormats.TableHeadings;
import growingon.nursery.Assumption;
import growingon.nursery.Inputs;
import growingon.problem.Loaded;
import growingon.report.model.InputBook;
import growingon.report.model.InputBook.InputColumn;
import growingon.report.model.InputBook.InputSheet;
import growingon.write.folder.NurseryFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The workbook to type over says what is read, in the same words. */
class StarterBookTest {
  private static final YearMonth NOVEMBER = YearMonth.of(2026, 11);

  @TempDir private Path temp;

  private Inputs inputs(YearMonth month) throws IOException {
    Path folder = temp.resolve(month.toString());
    NurseryFolder.write(
        StartedNursery.workbook(month, List.of()),
        StartedNursery.WORKBOOK,
        StartedNursery.plan(),
        StartedNursery.PLAN,
        folder);
    Loaded<Inputs> loaded = Loader.load(folder, new LoadOptions(month.atDay(1)));
    assertThat(loaded.problems()).isEmpty();
    return loaded.value().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026-03", "2026-11", "2027-02", "2027-03", "2031-07"})
  void examples_inAnyMonth_loadWithoutAProblem(String month) throws IOException {
    assertThat(inputs(YearMonth.parse(month)).scenario().lots()).hasSize(5);
  }

  @Test
  void headings_areExactlyThoseThatAreRead() {
    Map<String, InputSheet> sheets =
        StartedNursery.workbook(NOVEMBER, List.of()).sheets().stream()
            .collect(Collectors.toMap(InputSheet::name, each -> each));
    for (TableHeadings table : TableFormats.all()) {
      List<String> laidOut =
          sheets.get(table.table()).columns().stream().map(InputColumn::heading).toList();

      assertThat(laidOut)
          .as(table.table())
          .doesNotHaveDuplicates()
          .containsExactlyElementsOf(table.columns().stream().map(Column::heading).toList());
    }
    assertThat(sheets).hasSameSizeAs(TableFormats.all());
  }

  @Test
  void usualValues_inTheNotes_areThoseThatTheReaderAssumes() throws IOException {
    Map<String, HeadingNote> notes =
        HeadingNote.all().stream()
            .collect(Collectors.toMap(note -> note.table() + "/" + note.heading(), note -> note));
    int compared = 0;
    for (Assumption value : inputs(NOVEMBER).assumptions()) {
      HeadingNote note = notes.get(value.table() + "/" + value.what());
      boolean plain =
          note != null && note.usual().matches("[0-9.]+|yes|no|January|December|square");
      if (plain && value.source().equals("default")) {
        assertThat(value.value()).as("%s", value).isEqualTo(note.usual());
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(100);
  }

  @Test
  void settings_holdARowForAnExchangeRate() {
    InputSheet settings =
        StartedNursery.workbook(NOVEMBER, List.of()).sheets().stream()
            .filter(sheet -> sheet.name().equals("settings"))
            .findFirst()
            .orElseThrow();

    assertThat(settings.rows())
        .contains(
            List.of(
                "exchange rate GBP",
                "",
                "Plan currency for ONE unit of the foreign currency that the name ends in; a row"
                    + " for each [none]"));
  }

  @Test
  void closedColumns_haveNoExampleInThem() {
    for (InputSheet sheet : StartedNursery.workbook(NOVEMBER, List.of()).sheets()) {
      for (int i = 0; i < sheet.columns().size(); i++) {
        int column = i;
        if (sheet.columns().get(i).expert()) {
          assertThat(sheet.rows()).as(sheet.name()).allMatch(row -> row.get(column).isEmpty());
        }
      }
    }
  }

  @Test
  void lists_areThereForEveryColumnThatNamesOne() {
    InputBook book = StartedNursery.workbook(NOVEMBER, List.of());
    List<String> lists = book.choices().stream().map(InputBook.Choice::name).toList();
    Optional<String> missing =
        book.sheets().stream()
            .flatMap(sheet -> sheet.columns().stream())
            .map(InputColumn::choice)
            .filter(choice -> !choice.isEmpty() && !lists.contains(choice))
            .findAny();

    assertThat(missing).isEmpty();
  }
}
