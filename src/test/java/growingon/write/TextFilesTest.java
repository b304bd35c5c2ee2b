package growingon.write;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import growingon.nursery.number.Writing;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.write.text.CsvTables;
import growingon.write.text.Numbers;
import growingon.write.text.ProblemsText;
import growingon.write.text.SafeText;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.csv.CSVFormat;

class TextFilesTest {
  private static final Table TABLE =
      new Table(
          "all-kinds",
          "All kinds",
          List.of("A note."),
          List.of(
              Column.of("text", "Text", "", Kind.TEXT),
              Column.of("month", "Month", "", Kind.MONTH),
              Column.summed("plants", "Plants", "", Kind.PLANTS),
              Column.summed("money", "Money", "EUR", Kind.MONEY),
              Column.of("done", "Done", "", Kind.TO_FILL)),
          List.of(
              SampleReport.row(
                  "a, \"b\"", YearMonth.of(2027, 3), new Plants(2.75, 3), 0.1 + 0.2, null),
              SampleReport.row("=1+1", null, new Plants(1, 1), 1e21, null),
              SampleReport.row("é", null, null, Double.NaN, null)));

  @Example
  void csv_ofEveryKind_isPlainAndSafe() throws IOException {
    assertThat(csv(TABLE))
        .isEqualTo(
            "text,month,plants,money,done\r\n"
                + "\"a, \"\"b\"\"\",2027-03,3,0.30,\r\n"
                + "'=1+1,,1,1000000000000000000000.00,\r\n"
                + "é,,,,\r\n");
  }

  @Property
  void csv_ofAnyText_isReadBack(@ForAll String text) throws IOException {
    Table table =
        new Table(
            "t",
            "t",
            List.of(),
            List.of(Column.of("a", "a", "", Kind.TEXT), Column.of("b", "b", "", Kind.TEXT)),
            List.of(SampleReport.row(text, "end")));
    String written = csv(table);
    var records = CSVFormat.RFC4180.parse(new StringReader(written)).getRecords();
    String expected = new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    assertThat(records).hasSize(2);
    assertThat(records.get(1).get(0)).isEqualTo(SafeText.forCsv(expected));
    assertThat(records.get(1).get(1)).isEqualTo("end");
  }

  @Example
  void formulas_wherever_aSpreadsheetMightSeeThem_getAnApostrophe() throws IOException {
    assertThat(cell("=1+1")).isEqualTo("'=1+1");
    assertThat(cell("\uFF1D1+1")).isEqualTo("'\uFF1D1+1");
    assertThat(cell("\uFF0B1")).isEqualTo("'\uFF0B1");
    assertThat(cell("\uFF0D1")).isEqualTo("'\uFF0D1");
    assertThat(cell("\uFF20x")).isEqualTo("'\uFF20x");
    assertThat(cell("a;=1+1;b")).isEqualTo("\"a;'=1+1;b\"");
    assertThat(cell("a;@x;-1")).isEqualTo("\"a;'@x;'-1\"");
  }

  @Example
  void textWithASemicolon_isQuoted() throws IOException {
    assertThat(cell("2.4 m wire; 5 ml dressing")).isEqualTo("\"2.4 m wire; 5 ml dressing\"");
    assertThat(cell("wire and dressing")).isEqualTo("wire and dressing");
  }

  /** A cell as it stands in the file, with its quotes. */
  private static String cell(String text) throws IOException {
    Table table =
        new Table(
            "texts",
            "",
            List.of(),
            List.of(Column.of("a", "a", "", Kind.TEXT), Column.of("b", "b", "", Kind.TEXT)),
            List.of(SampleReport.row("begin", text)));
    String row = csv(table).split("\r\n")[1];
    return row.substring("begin,".length());
  }

  @Property
  void number_spelt_readsBackAsTheSame(@ForAll double number) {
    if (Double.isFinite(number)) {
      String plain = Numbers.plain(number);
      assertThat(Double.parseDouble(plain)).isEqualTo(number + 0.0);
      assertThat(plain).doesNotContain("E").doesNotEndWith(".0");
    }
  }

  @Example
  void number_thatNeedsFewDigits_getsFew() {
    // 2.0E-3 and 2.2E-322 are spelt with more digits than needed by Java before 19 (JDK-4511638).
    assertThat(Numbers.plain(2.0E-3)).isEqualTo("0.002");
    assertThat(Numbers.plain(1.0E23)).isEqualTo("1" + "0".repeat(23));
    assertThat(Numbers.plain(-0.0)).isEqualTo("0");
  }

  @Example
  void figures_ofTheSample_holdEveryTableAndSeriesAtFullPrecision() throws IOException {
    Report report = SampleReport.report();
    JsonNode figures = new ObjectMapper().readTree(json(report));

    assertThat(figures.get("made by").asText()).isEqualTo("growing-on planner");
    assertThat(figures.get("first month").asText()).isEqualTo("2026-11");
    assertThat(names(figures.get("tables")))
        .containsExactlyElementsOf(ReportFiles.tables(report).stream().map(Table::name).toList());
    for (Table table : ReportFiles.tables(report)) {
      assertHolds(figures.get("tables").get(table.name()), table);
    }
    assertThat(names(figures.get("charts")))
        .containsExactlyElementsOf(report.charts().stream().map(chart -> chart.name()).toList());
    report
        .charts()
        .forEach(
            chart -> {
              JsonNode written = figures.get("charts").get(chart.name());
              for (int s = 0; s < chart.series().size(); s++) {
                JsonNode values = written.get("series").get(s).get("values");
                List<Double> back = new ArrayList<>();
                values.forEach(value -> back.add(value.asDouble()));
                assertThat(back).isEqualTo(chart.series().get(s).values());
              }
            });
  }

  private static void assertHolds(JsonNode written, Table table) {
    assertThat(written.get("rows")).hasSize(table.inFull().size());
    for (int r = 0; r < table.inFull().size(); r++) {
      int place = 0;
      for (int c = 0; c < table.columns().size(); c++) {
        Object cell = table.inFull().get(r).get(c);
        JsonNode value = written.get("rows").get(r).get(place++);
        if (table.columns().get(c).kind() == Kind.PLANTS) {
          JsonNode whole = written.get("rows").get(r).get(place++);
          assertThat(whole.asLong()).isEqualTo(cell == null ? 0 : ((Plants) cell).whole());
        }
        if (cell == null) {
          assertThat(value.isNull()).isTrue();
        } else if (cell instanceof Plants plants) {
          assertThat(value.doubleValue()).isEqualTo(plants.exact());
        } else if (cell instanceof Number number) {
          assertThat(value.doubleValue()).isEqualTo(number.doubleValue());
        } else {
          assertThat(value.asText()).isEqualTo(cell.toString());
        }
      }
    }
  }

  private static List<String> names(JsonNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  @Example
  void figures_ofASmallReport_areLaidOutARowOnALine() throws IOException {
    Report report = reportOf(List.of(Sheet.of("Sheet", TABLE)), List.of());
    assertThat(json(report))
        .isEqualTo(
            """
            {
              "made by" : "growing-on planner",
              "plan" : "plan",
              "nursery" : "nursery",
              "currency" : "EUR",
              "first month" : "2026-11",
              "files" : { },
              "sheets" : [
                { "name" : "Sheet", "sentences" : [ ], "tables" : ["all-kinds"], "charts" : [ ] }
              ],
              "tables" : {
                "all-kinds" : {
                  "title" : "All kinds",
                  "notes" : [
                    "A note."
                  ],
                  "columns" : [
                    { "key" : "text", "heading" : "Text", "unit" : "", "kind" : "text", "total" : false },
                    { "key" : "month", "heading" : "Month", "unit" : "", "kind" : "month", "total" : false },
                    { "key" : "plants", "heading" : "Plants", "unit" : "", "kind" : "plants", "total" : true },
                    { "key" : "plants_whole", "heading" : "Plants, whole", "unit" : "", "kind" : "plants", "total" : true },
                    { "key" : "money", "heading" : "Money", "unit" : "EUR", "kind" : "money", "total" : true },
                    { "key" : "done", "heading" : "Done", "unit" : "", "kind" : "to fill", "total" : false }
                  ],
                  "rows" : [
                    ["a, \\"b\\"","2027-03",2.75,3,0.30000000000000004,null],
                    ["=1+1",null,1,1,1.0E21,null],
                    ["é",null,null,null,null,null]
                  ]
                }
              },
              "charts" : { }
            }
            """);
  }

  @Example
  void problems_ofTheSample_standByGravityWithTheirNumber() {
    assertThat(new String(ProblemsText.bytes(SampleReport.report()), StandardCharsets.UTF_8))
        .isEqualTo(
            """
            Problems found while making the plan: with the ridge lot

            1 warning
              stock.xlsx, sheet stock, row 7, column pot: the lot stands in another pot than its last step names (round 3 litres); correct the pot or the last step

            2 notices
              no waste is given; 5 % is taken
              stock.xlsx, sheet stock, row 9, column unit cost: no cost to date is given; 0 is taken

            """);
  }

  @Example
  void problems_whenThereAreNone_saysNone() {
    Report report = reportOf(List.of(), List.of());
    assertThat(new String(ProblemsText.bytes(report), StandardCharsets.UTF_8))
        .isEqualTo("Problems found while making the plan: plan\n\nnone\n");
  }

  private static Report reportOf(List<Sheet> sheets, List<Table> extra) {
    return Report.of("plan", "nursery", new Phrases("EUR", Writing.USUAL), "2026-11")
        .sheets(sheets)
        .extra(extra)
        .build();
  }

  private static String csv(Table table) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CsvTables.write(table, out);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static String json(Report report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    FiguresJson.write(report, out);
    return out.toString(StandardCharsets.UTF_8);
  }
}
