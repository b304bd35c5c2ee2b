package growingon.report.compare;

import growingon.report.build.TableOf;
import growingon.report.compare.CompareFigures.Pair;
import growingon.report.compare.CompareFigures.Topic;
import growingon.report.compare.CompareReport.Side;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
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
    TableOf<Pair> table =
        TableOf.<Pair>table(
                "compare-" + topic.name().toLowerCase(Locale.ROOT).replace(' ', '-'), topic.name())
            .note(
                "Only what differs%s, largest difference first; an empty cell: that plan has none."
                    .formatted(topic.kind() == Kind.PLANTS ? " by half a plant or more" : ""))
            .text("what", Pair::what);
    if (seasons) {
      table.column(Rows.season(), pair -> Rows.text(pair.season()));
    }
    return table
        .column(
            "first", first.label(), topic.unit(), topic.kind(), pair -> cell(topic, pair.before()))
        .column(
            "second", second.label(), topic.unit(), topic.kind(), pair -> cell(topic, pair.after()))
        .column("difference", topic.unit(), topic.kind(), pair -> cell(topic, pair.difference()))
        .of(topic.rows());
  }

  private static Object cell(Topic topic, Shown value) {
    return topic.kind() == Kind.PLANTS && !Pair.isNone(value)
        ? Plants.of(value.exact(), Math.round(value.shown()))
        : Rows.number(value.exact());
  }

  static Table reasons(List<Difference> reasons, Side first, Side second) {
    return TableOf.<Difference>table("compare-reasons", "Where the files differ")
        .note("Whatever differs in the figures comes from these.")
        .text("table", Difference::table)
        .text("subject", "of", each -> Rows.text(each.subject()))
        .text("what", Difference::what)
        .longText("first", first.label(), each -> Rows.text(each.from()))
        .longText("second", second.label(), each -> Rows.text(each.to()))
        .text("unit", each -> Rows.text(each.unit()))
        .of(reasons);
  }

  static List<String> sentences(boolean alike, Side first, Side second, List<Difference> reasons) {
    String both = "%s against %s".formatted(first.label(), second.label());
    if (alike) {
      return List.of(both + ": nothing differs, neither in the files nor in any figure.");
    }
    List<String> lines = new ArrayList<>();
    if (reasons.isEmpty()) {
      lines.add(both + ": no difference in their files.");
    }
    if (!first.hasCurrencyOf(second)) {
      lines.add(CompareReport.unlikeCurrencies(first, second));
    }
    return lines;
  }

  static List<String> reasonLines(List<Difference> reasons, int most, Phrases say) {
    List<String> lines = new ArrayList<>();
    reasons.stream().limit(most).forEach(each -> lines.add("Reason: " + said(each, say)));
    if (reasons.size() > most) {
      lines.add("Reason: %d more on the sheet Why.".formatted(reasons.size() - most));
    }
    return lines;
  }

  private static String said(Difference each, Phrases say) {
    String of = each.subject().isEmpty() ? "" : each.subject() + ", ";
    return "%s: %s%s from %s to %s"
            .formatted(
                each.table(),
                of,
                each.what(),
                orNone(say.value(each.from())),
                orNone(say.value(each.to())))
        + (each.unit().isEmpty() ? "." : " " + each.unit() + ".");
  }

  private static String orNone(String value) {
    return value.isEmpty() ? "none" : value;
  }

  /** The largest differences of a topic. */
  static List<String> lines(Topic topic, int most, Phrases say) {
    List<String> lines = new ArrayList<>();
    topic.rows().stream().limit(most).forEach(pair -> lines.add(line(topic, pair, say)));
    if (topic.rows().size() > most) {
      lines.add("%s: %d more.".formatted(topic.name(), topic.rows().size() - most));
    }
    return lines;
  }

  private static String line(Topic topic, Pair pair, Phrases say) {
    String season = pair.season().isEmpty() ? "" : " " + pair.season();
    return "%s: %s%s from %s to %s (%s) %s"
        .formatted(
            topic.name(),
            pair.what(),
            season,
            amount(topic, pair.before().shown(), say),
            amount(topic, pair.after().shown(), say),
            signed(topic, pair.difference().shown(), say),
            topic.unit());
  }

  private static String amount(Topic topic, double value, Phrases say) {
    if (Double.isNaN(value)) {
      return "none";
    }
    boolean tenths = Math.abs(value) < 10 || topic.kind() == Kind.SQUARE_METRES;
    return tenths && topic.kind() != Kind.PLANTS ? say.number(value) : say.whole(value);
  }

  private static String signed(Topic topic, double value, Phrases say) {
    return (value > 0 ? "+" : "") + amount(topic, value, say);
  }
}
