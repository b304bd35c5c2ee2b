package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.command.SimulatedNursery.Counts;
import growingon.command.SimulatedNursery.Sales;
import growingon.command.SimulatedNursery.Shape;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Records as they should not be: what is learnt, what is refused, and in which words. */
class UntidyRecordsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 20);
  private static final Shape SHAPE =
      new Shape("n", 2, 2, 2, 8, true, Sales.WITH_GRADE, Counts.LISTS, false, false);
  private static final String FIRST = "earlier/stock 2024-11.csv";
  private static final String SECOND = "earlier/stock 2025-11.csv";
  private static final String NOW = "stock.csv";
  private static final String HEADINGS =
      "lot,species,form,quantity,arrived,counted,trunk mm,trunk spread %,pot,route\n";
  private static final String A_ROW = "(?m)^(Hazel of old A,Hazel,container),(\\d+),";

  @TempDir private Path folder;

  /** A change of the files of a nursery. */
  private interface Edit {
    void on(Path nursery) throws IOException;
  }

  private static Edit add(String file, String text) {
    return nursery -> {
      Path path = nursery.resolve(file);
      Files.createDirectories(path.getParent());
      Files.writeString(path, (Files.exists(path) ? Files.readString(path) : "") + text);
    };
  }

  private static Edit change(String file, String pattern, String to) {
    return nursery -> {
      String was = Files.readString(nursery.resolve(file));
      String now = was.replaceAll(pattern, to);
      assertThat(now.equals(was)).as("%s is changed", file).isFalse();
      Files.writeString(nursery.resolve(file), now);
    };
  }

  private static Edit all(Edit... edits) {
    return nursery -> {
      for (Edit edit : edits) {
        edit.on(nursery);
      }
    };
  }

  private static Edit everyList(String pattern, String to) {
    return all(change(FIRST, pattern, to), change(SECOND, pattern, to), change(NOW, pattern, to));
  }

  private static Arguments learns(String name, Edit edit, String... says) {
    return Arguments.of(name, edit, ExitCode.DONE, List.of(says));
  }

  private static Arguments refuses(String name, Edit edit, String... says) {
    return Arguments.of(name, edit, ExitCode.BAD_INPUT, List.of(says));
  }

  private static Stream<Arguments> untidy() {
    return Stream.of(
        learns(
            "a lot that is gone without a line",
            change(NOW, A_ROW, "$1,0,"),
            "no line says how; were they sold?"),
        learns("a lot that begins with none", change(FIRST, A_ROW, "$1,0,")),
        learns(
            "a lot whose trunks nobody measured at first",
            change(FIRST, "(?m)^(Hazel of old A.*-11),[\\d.]+,", "$1,,"),
            "Hazel of old A,Hazel,,2024-10,2025-10",
            "no trunk measured: deaths are used, growth is not"),
        learns(
            "a list without trunks",
            all(
                change(FIRST, ",trunk mm,trunk spread %", ""),
                change(FIRST, "(?m)(-11),[\\d.]+,[\\d.]+,", "$1,")),
            "no trunk measured: deaths are used, growth is not"),
        learns(
            "a list without numbers of a lot",
            change(FIRST, A_ROW, "$1,,"),
            "no number of plants, with which a lot could begin (stock 2024-11.csv, row 2)"),
        refuses(
            "today's list without a trunk",
            change(NOW, "(?m)^(Hazel of old A.*-11),[\\d.]+,", "$1,,"),
            "stock.csv, row 2, column trunk mm: the trunks are not stated"),
        learns(
            "a reading without a trunk",
            add("records.csv", "Hazel of old A 04,Hazel of old A,2026-10-26,\n"),
            "column trunk mm: no trunk is read in this row, so nothing is learnt from it; fill in"
                + " the trunk, or leave the row out where the plant is gone"),
        refuses(
            "two readings of a plant on a day",
            add("records.csv", "Hazel of old A 04,Hazel of old A,2026-10-25,14\n"),
            "a plant has one reading a day"),
        learns(
            "more sold than there are",
            add("daybook.csv", "2025-07-01,Hazel of old A,sold,900,thick,,,\n"),
            "more plants of Hazel of old A are sold than"),
        refuses(
            "a lot that nobody knows",
            add("daybook.csv", "2025-10-31,Hazel of old Z,counted,90,,15,10,\n"),
            "unknown lot (Hazel of old Z); the nearest known one is Hazel of old A"),
        learns(
            "a lot of two species",
            change(SECOND, "Hazel of old A,Hazel,", "Hazel of old A,Hazel red,"),
            "this lot was of the species Hazel on the list before, so the row is not used (Hazel of"
                + " old A); correct the species, or give another lot another name"),
        learns(
            "a name in other letters",
            change(NOW, "Hazel of old A", "hazel  of old a"),
            "\"hazel of old a, tagged\",Hazel,training pot,2025-10,2026-10"),
        learns(
            "a lot under another name",
            change(NOW, "Hazel of old A", "Hazel of older A"),
            "this lot is not on the next list, where a lot of the same species and arrival is new"),
        learns(
            "a lot under another name, as own words say",
            all(
                change(NOW, "Hazel of old A", "Hazel of older A"),
                change("daybook.csv", "Hazel of old A", "Hazel of older A"),
                change("records.csv", ",Hazel of old A,", ",Hazel of older A,"),
                add("own words.csv", "kind,yours,ours\nlot,Hazel of old A,Hazel of older A\n")),
            "Hazel of older A,Hazel,training pot,2024-10,2025-10"),
        learns("trunks above the final size", change("species.json", "\"D\": 90", "\"D\": 12")),
        learns(
            "no spreads at all",
            change(
                "species.json",
                "\"later loss %\"",
                "\"vigour spread %\": 0, \"year spread %\": 0, \"lot spread %\": 0, \"loss spread"
                    + " %\": 0, \"later loss %\"")),
        learns("no losses", change("species.json", "(loss %\"): \\d", "$1: 0")),
        learns("nothing but losses", change("species.json", "(loss %\"): \\d", "$1: 100")),
        learns(
            "figures taken as known",
            change(
                "species.json",
                "\"later loss %\"",
                "\"growth sure %\": 100, \"later loss sure %\": 100, \"later loss %\""),
            "Taken as known: its growth sure % is 100."),
        learns(
            "a list of long ago",
            add(
                "earlier/stock 1970-11.csv",
                HEADINGS
                    + "Hazel of old A,Hazel,container,90,1968-03,1970-11,10,10,7.5 litre,standing\n"),
            "too old: more than 37 seasons back (stock 1970-11.csv, row 2)"),
        learns(
            "a list to come",
            add(
                "earlier/stock 2027-11.csv",
                HEADINGS
                    + "Hazel of old A,Hazel,container,90,2018-03,2027-11,40,10,7.5"
                    + " litre,standing\n")),
        learns(
            "a lot on two lists of a month",
            add(
                "earlier/back field 2025-11.csv",
                HEADINGS
                    + "Hazel of old A,Hazel,container,90,2018-03,2025-11,20,10,7.5"
                    + " litre,standing\n"),
            "other plants or trunks than the row before it, but counted in the same month"),
        refuses(
            "a lot that came after its list",
            change(FIRST, "(Hazel of old A.*),2018-03", "$1,2025-03"),
            "the lot arrives after the month of this list, 2024-11 (2025-03); correct the month, or"
                + " leave the row out"),
        learns(
            "a lot that came in the month of its list",
            change(FIRST, "(Hazel of old A.*),2018-03", "$1,2024-11")),
        learns(
            "a nought too many",
            change(SECOND, A_ROW, "$1,9$2,"),
            "no line says how; were they sold?"),
        learns(
            "a kept plan that is broken",
            add("plans/kept/x.json", "{ \"name\": "),
            "x.json: this kept plan cannot be read and is not scored"),
        learns(
            "notes among the lists",
            add("earlier/notes.txt", "x"),
            "earlier/notes.txt: spreadsheets of this kind are not read"),
        learns("trunks all alike", change("records.csv", "(?m),[\\d.]+$", ",20")),
        learns(
            "girth classes of the trade",
            all(
                everyList("trunk mm,trunk spread %", "girth from cm,girth to cm"),
                everyList("(?m)-11,[\\d.]+,[\\d.]+,", "-11,6,8,"))),
        learns("the south", change("nursery.json", "\"north\"", "\"south\"")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource
  void untidy(String name, Edit edit, int code, List<String> says) throws IOException {
    Path nursery = new SimulatedNursery(SHAPE, 99).write(folder);
    edit.on(nursery);
    Path out = folder.resolve("out");

    Ran ran = Ran.on(TODAY, "fit", nursery.toString(), "--out", out.toString());

    assertThat(ran.code()).as(ran.err()).isEqualTo(code);
    StringBuilder told = new StringBuilder(ran.out() + ran.err());
    if (code == ExitCode.DONE) {
      told.append(Files.readString(out.resolve("problems.txt")));
      told.append(Files.readString(out.resolve("tables").resolve("fit-records.csv")));
      told.append(Files.readString(out.resolve("tables").resolve("fit-values.csv")));
    }
    assertThat(told.toString()).doesNotContain("NaN").doesNotContain("Exception");
    says.forEach(each -> assertThat(told.toString()).contains(each));
  }
}
