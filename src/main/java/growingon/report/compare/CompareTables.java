package growingon.report.compare;

import growingon.report.compare.CompareFigures.Pair;
import growingon.report.compare.CompareFigures.Topic;
import growingon.report.compare.CompareReport.Side;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Labels;
import growingon.report.text.Plants;
import growingon.report.text.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Tables and sentences of a comparison. */
final class CompareTables {
  private CompareTables() {}

  static Table of(Topic topic, Side first, Side second) {
    boolean seasons = topic.rows().stream().anyMatch(row -> !row.season().isEmpty());
    List<Column> columns = new ArrayList<>();
    columns.add(Column.of("what", "what", "", Kind.TEXT));
    if (seasons) {
      columns.add(Rows.season());
    }
    columns.add(Column.of("first", first.label(), topic.unit(), topic.kind()));
    columns.add(Column.of("second", second.label(), topic.unit(), topic.kind()));
    columns.add(Column.of("difference", "difference", topic.unit(), topic.kind()));
    Rows rows = new Rows();
    for (Pair pair : topic.rows()) {
      List<Object> cells = new ArrayList<>();
      cells.add(pair.what());
      if (seasons) {
        cells.add(Rows.text(pair.season()));
      }
      cells.add(cell(topic, pair.before()));
      cells.add(cell(topic, pair.after()));
      cells.add(cell(topic, pair.difference()));
      rows.add(cells);
    }
    return new Table(
        "compare-" + topic.name().toLowerCase(Locale.ROOT).replace(' ', '-'),
        topic.name(),
        List.of(
            "Only what differs%s, largest difference first; an empty cell: that plan has none."
                .formatted(topic.kind() == Kind.PLANTS ? " by half a plant or more" : "")),
        columns,
        rows.list());
  }

  private static Object cell(Topic topic, Shown value) {
    return topic.kind() == Kind.PLANTS && !Pair.isNone(value)
        ? Plants.of(value.exact(), Math.round(value.shown()))
        : Rows.number(value.exact());
  }

  static Table reasons(List<Difference> reasons, Side first, Side second) {
    Rows rows = new Rows();
    reasons.forEach(
        each ->
            rows.add(
                each.table(),
                Rows.text(each.subject()),
                each.what(),
                Rows.text(each.from()),
                Rows.text(each.to()),
                Rows.text(each.unit())));
    return new Table(
        "compare-reasons",
        "Where the files differ",
        List.of("Whatever differs in the figures comes from these."),
        List.of(
            Column.of("table", "table", "", Kind.TEXT),
            Column.of("subject", "of", "", Kind.TEXT),
            Column.of("what", "what", "", Kind.TEXT),
            Column.of("first", first.label(), "", Kind.LONG_TEXT),
            Column.of("second", second.label(), "", Kind.LONG_TEXT),
            Column.of("unit", "unit", "", Kind.TEXT)),
        rows.list());
  }

  static List<String> sentences(
      boolean alike, Side first, Side second, List<Difference> reasons, boolean unlikeCurrencies) {
    String both = "%s against %s".formatted(first.label(), second.label());
    if (alike) {
      return List.of(both + ": nothing differs, neither in the files nor in any figure.");
    }
    List<String> lines = new ArrayList<>();
    if (reasons.isEmpty()) {
      lines.add(both + ": no difference in their files.");
    }
    if (unlikeCurrencies) {
      lines.add(
          "Amounts are in %s in the first plan and in %s in the second; their differences say nothing."
              .formatted(first.currency(), second.currency()));
    }
    return lines;
  }

  static List<String> reasonLines(List<Difference> reasons, int most) {
    List<String> lines = new ArrayList<>();
    reasons.stream().limit(most).forEach(each -> lines.add("Reason: " + said(each)));
    if (reasons.size() > most) {
      lines.add("Reason: %d more on the sheet Why.".formatted(reasons.size() - most));
    }
    return lines;
  }

  private static String said(Difference each) {
    String of = each.subject().isEmpty() ? "" : each.subject() + ", ";
    return "%s: %s%s from %s to %s"
            .formatted(each.table(), of, each.what(), orNone(each.from()), orNone(each.to()))
        + (each.unit().isEmpty() ? "." : " " + each.unit() + ".");
  }

  private static String orNone(String value) {
    return value.isEmpty() ? "none" : value;
  }

  /** The largest differences of a topic. */
  static List<String> lines(Topic topic, int most) {
    List<String> lines = new ArrayList<>();
    topic.rows().stream().limit(most).forEach(pair -> lines.add(line(topic, pair)));
    if (topic.rows().size() > most) {
      lines.add("%s: %d more.".formatted(topic.name(), topic.rows().size() - most));
    }
    return lines;
  }

  private static String line(Topic topic, Pair pair) {
    String season = pair.season().isEmpty() ? "" : " " + pair.season();
    return "%s: %s%s from %s to %s (%s) %s"
        .formatted(
            topic.name(),
            pair.what(),
            season,
            amount(topic, pair.before().shown()),
            amount(topic, pair.after().shown()),
            signed(topic, pair.difference().shown()),
            topic.unit());
  }

  private static String amount(Topic topic, double value) {
    if (Double.isNaN(value)) {
      return "none";
    }
    boolean tenths = Math.abs(value) < 10 || topic.kind() == Kind.SQUARE_METRES;
    return tenths && topic.kind() != Kind.PLANTS ? Labels.number(value) : Labels.whole(value);
  }

  private static String signed(Topic topic, double value) {
    return (value > 0 ? "+" : "") + amount(topic, value);
  }
}
