package growingon.write;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import growingon.report.model.Chart;
import growingon.report.model.Chart.Mark;
import growingon.report.model.Chart.Series;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.write.folder.FileList;
import growingon.write.text.Numbers;
import growingon.write.text.RowsOnLines;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;

/**
 * Writes figures.json: every table and every chart by name, in the order of the report, at full
 * precision.
 *
 * <pre>{@code
 * { "made by": "growing-on planner",
 *   "made on": "2026-11-03", "for": "bank" in an edition,
 *   "plan", "nursery", "currency": text, "first month": "2026-11",
 *   "files": { NAME: SHA-256 of it, see {@link FileList} },
 *   "sheets": [ { "name", "sentences": [text], "tables": [name], "charts": [name] } ],
 *   "tables": { NAME: { "title", "notes": [text],
 *       "columns": [ { "key", "heading", "unit", "kind", "total": true or false } ],
 *       "rows": [ [a value for each column] ] } },
 *   "charts": { NAME: { "title", "subtitle", "kind", "unit", "categories": [month or label],
 *       "series": [ { "name", "role", "group", "colour", "values": [a number a category] } ],
 *       "marks": [ { "kind", "label", "group", "at", "value" } ] } } }
 * }</pre>
 *
 * <p>Values: text, months as "2027-03", numbers with the fewest digits that read back as the same
 * number; shares are 0 to 1; null where there is nothing. A column of plants stands twice: expected
 * numbers at full precision under its key, and whole plants as they are printed under its key and
 * {@code _whole}. Rows of less than a whole plant, which are printed nowhere, are here too. Units:
 * money in the plan's currency without VAT; the rest as the column or chart says.
 */
final class FiguresJson {

  private final JsonGenerator out;

  private FiguresJson(JsonGenerator out) {
    this.out = out;
  }

  static void write(Report report, OutputStream to) throws IOException {
    JsonFactory factory =
        JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();
    try (JsonGenerator out = factory.createGenerator(to)) {
      out.setPrettyPrinter(new RowsOnLines());
      new FiguresJson(out).report(report);
      out.writeRaw('\n');
    }
  }

  private void report(Report report) throws IOException {
    out.writeStartObject();
    out.writeStringField(FileList.MADE_BY, FileList.PROGRAM);
    if (report.madeOn().isPresent()) {
      out.writeStringField("made on", report.madeOn().get().toString());
    }
    if (report.reader().isPresent()) {
      out.writeStringField(FileList.FOR, word(report.reader().get()));
    }
    out.writeStringField(FileList.PLAN, report.plan());
    out.writeStringField("nursery", report.nursery());
    out.writeStringField("currency", report.currency());
    out.writeStringField("first month", report.firstMonth());
    out.writeObjectFieldStart(FileList.FILES);
    out.writeEndObject();
    out.writeArrayFieldStart("sheets");
    for (Sheet sheet : report.sheets()) {
      sheet(sheet);
    }
    out.writeEndArray();
    out.writeObjectFieldStart("tables");
    for (Table table : ReportFiles.tables(report)) {
      table(table);
    }
    out.writeEndObject();
    out.writeObjectFieldStart("charts");
    for (Chart chart : report.charts()) {
      chart(chart);
    }
    out.writeEndObject();
    out.writeEndObject();
  }

  private void sheet(Sheet sheet) throws IOException {
    out.writeStartObject();
    out.writeStringField("name", sheet.name());
    texts("sentences", sheet.sentences());
    texts("tables", sheet.tables().stream().map(Table::name).toList());
    texts("charts", sheet.charts());
    out.writeEndObject();
  }

  private void table(Table table) throws IOException {
    out.writeObjectFieldStart(table.name());
    out.writeStringField("title", table.title());
    texts("notes", table.notes());
    out.writeArrayFieldStart("columns");
    for (Column column : table.columns()) {
      column(column, "", "");
      if (column.kind() == Kind.PLANTS) {
        column(column, "_whole", ", whole");
      }
    }
    out.writeEndArray();
    out.writeArrayFieldStart("rows");
    for (List<Object> row : table.inFull()) {
      row(table, row);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void row(Table table, List<Object> row) throws IOException {
    out.writeStartArray();
    for (int i = 0; i < row.size(); i++) {
      value(row.get(i));
      if (table.columns().get(i).kind() == Kind.PLANTS) {
        whole(row.get(i));
      }
    }
    out.writeEndArray();
  }

  private void whole(Object cell) throws IOException {
    if (cell == null) {
      out.writeNull();
    } else {
      number(Numbers.shown(cell));
    }
  }

  private void column(Column column, String keyEnding, String headingEnding) throws IOException {
    out.writeStartObject();
    out.writeStringField("key", column.key() + keyEnding);
    out.writeStringField("heading", column.heading() + headingEnding);
    out.writeStringField("unit", column.unit());
    out.writeStringField("kind", word(column.kind() == Kind.VALUE ? Kind.TEXT : column.kind()));
    out.writeBooleanField("total", column.total());
    out.writeEndObject();
  }

  private void chart(Chart chart) throws IOException {
    out.writeObjectFieldStart(chart.name());
    out.writeStringField("title", chart.title());
    out.writeStringField("subtitle", chart.subtitle());
    out.writeStringField("kind", word(chart.kind()));
    out.writeStringField("unit", chart.unit());
    texts("categories", chart.categories());
    out.writeArrayFieldStart("series");
    for (Series series : chart.series()) {
      series(series);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("marks");
    for (Mark mark : chart.marks()) {
      mark(mark);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void mark(Mark mark) throws IOException {
    out.writeStartObject();
    out.writeStringField("kind", word(mark.kind()));
    out.writeStringField("label", mark.label());
    out.writeStringField("group", mark.group());
    out.writeFieldName("at");
    number(mark.at());
    out.writeFieldName("value");
    number(mark.value());
    out.writeEndObject();
  }

  private void series(Series series) throws IOException {
    out.writeStartObject();
    out.writeStringField("name", series.name());
    out.writeStringField("role", word(series.role()));
    out.writeStringField("group", series.group());
    out.writeNumberField("colour", series.colour());
    out.writeFieldName("values");
    values(series.values());
    out.writeEndObject();
  }

  private void texts(String name, List<String> texts) throws IOException {
    out.writeFieldName(name);
    values(texts);
  }

  private void values(List<?> values) throws IOException {
    out.writeStartArray();
    for (Object value : values) {
      value(value);
    }
    out.writeEndArray();
  }

  private void value(Object value) throws IOException {
    if (Numbers.isNumber(value)) {
      number(Numbers.exact(value));
    } else if (value == null) {
      out.writeNull();
    } else {
      out.writeString(value.toString());
    }
  }

  private void number(double number) throws IOException {
    if (!Double.isFinite(number)) {
      out.writeNull();
    } else if (Numbers.isWhole(number)) {
      out.writeNumber((long) number);
    } else {
      out.writeNumber(number);
    }
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
