package growingon.write.page;

import com.google.common.hash.Hashing;
import com.google.common.io.Resources;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import growingon.report.model.Answer;
import growingon.report.model.Audience;
import growingon.report.model.Chart;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.write.chart.ChartWords;
import growingon.write.chart.SvgPicture;
import growingon.write.page.ReportPage.Drawn;
import growingon.write.page.ReportPage.Grid;
import growingon.write.page.ReportPage.Section;
import growingon.write.page.ReportPage.Told;
import growingon.write.text.SafeText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Writes report.html: one file that holds everything, loads nothing and can be read without a
 * script. The template escapes every text; the page's policy lets nothing run but its own script,
 * known by its hash.
 */
public final class PageWriter {
  private static final Set<String> CAUTIONS = Set.of("cautions", "plant-health");

  private final Report report;
  private final Set<String> shown = new HashSet<>();

  private PageWriter(Report report) {
    this.report = report;
  }

  /**
   * A chart as the page holds it: SVG, or PNG in a data URI.
   *
   * @param wide for screens and paper
   * @param narrow for a telephone
   */
  public record Pictures(String wide, String narrow) {}

  /** Gives a chart drawn. */
  public interface DrawnCharts {
    Pictures of(Chart chart) throws IOException;
  }

  /** The page, in UTF-8, with charts and style inside it. */
  public static byte[] bytes(Report report, DrawnCharts charts) throws IOException {
    ReportPage page = new PageWriter(report).page(charts);
    StringOutput text = new StringOutput(1 << 20);
    JtereportGenerated.render(new OwaspHtmlTemplateOutput(text), null, page);
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** A picture in the page itself. */
  public static String dataUri(byte[] png) {
    return "data:image/png;base64," + Base64.getEncoder().encodeToString(png);
  }

  private ReportPage page(DrawnCharts charts) throws IOException {
    String style = resource("report.css");
    String script = resource("report.js");
    List<Told> answers = answers();
    List<Grid> cautions = grids(tables().stream().filter(PageWriter::isCaution).toList());
    List<Sheet> sheets = report.sheets().stream().filter(each -> !each.isEmpty()).toList();
    List<Grid> first = sheets.isEmpty() ? List.of() : grids(sheets.get(0).tables());
    return new ReportPage(
        policy(style, script),
        SafeText.forXml(report.plan() + " – " + report.nursery()),
        SafeText.forXml(report.isEdition() ? report.plan() : "Plan: " + report.plan()),
        SafeText.forXml(subtitle()),
        report.leftOut().stream().map(SafeText::forXml).toList(),
        answers,
        first,
        drawn(charts),
        sections(sheets.subList(Math.min(1, sheets.size()), sheets.size()), isForCustomer(report)),
        answers.stream().filter(each -> !each.how().isEmpty()).toList(),
        cautions,
        "The workbook, tables and figures.json beside this page hold the same figures"
            + (report.extra().isEmpty() ? "." : ", and the long monthly tables."),
        "<style>" + style + "</style>",
        "<script>" + script + "</script>");
  }

  private static String resource(String name) throws IOException {
    return Resources.toString(PageWriter.class.getResource(name), StandardCharsets.UTF_8);
  }

  private static String policy(String style, String script) {
    return "default-src 'none'; img-src data:; style-src '%s'; script-src '%s'; base-uri 'none'; form-action 'none'"
        .formatted(hash(style), hash(script));
  }

  private static String hash(String text) {
    byte[] hash = Hashing.sha256().hashString(text, StandardCharsets.UTF_8).asBytes();
    return "sha256-" + Base64.getEncoder().encodeToString(hash);
  }

  private String subtitle() {
    List<String> parts = new ArrayList<>(List.of(report.nursery()));
    if (!report.firstMonth().isEmpty()) {
      parts.add("from " + report.writing().longMonth(YearMonth.parse(report.firstMonth())));
    }
    if (!report.currency().isEmpty()) {
      parts.add("amounts in " + report.currency() + ", without VAT");
    }
    report.issue().ifPresent(parts::add);
    return String.join(" · ", parts);
  }

  /** The report's answers, or what its first sheet says. */
  private List<Told> answers() {
    List<Told> told = new ArrayList<>();
    for (Answer each : report.answers()) {
      told.add(
          new Told(
              "how-" + (told.size() + 1),
              SafeText.forXml(each.question()),
              each.sentences().stream().map(SafeText::forXml).toList(),
              each.how().stream().map(SafeText::forXml).toList()));
    }
    if (told.isEmpty()) {
      report.sheets().stream()
          .limit(1)
          .flatMap(sheet -> sheet.sentences().stream())
          .forEach(each -> told.add(new Told("", "", List.of(SafeText.forXml(each)), List.of())));
    }
    return told;
  }

  private List<Table> tables() {
    return report.sheets().stream().flatMap(sheet -> sheet.tables().stream()).toList();
  }

  private static boolean isCaution(Table table) {
    return CAUTIONS.contains(table.name());
  }

  /** Tables that have rows and are not on the page yet. */
  private List<Grid> grids(List<Table> tables) {
    return tables.stream()
        .filter(each -> !each.rows().isEmpty())
        .filter(each -> shown.add(each.name()))
        .map(table -> PageTables.grid(table, report.writing()))
        .toList();
  }

  private List<Drawn> drawn(DrawnCharts charts) throws IOException {
    List<Drawn> drawn = new ArrayList<>();
    for (Chart chart : report.charts()) {
      Pictures pictures = charts.of(chart);
      drawn.add(
          new Drawn(
              "c-" + chart.name(),
              SafeText.forXml(chart.title()),
              SvgPicture.suits(chart),
              pictures.wide(),
              pictures.narrow(),
              SafeText.forXml(ChartWords.alternative(chart)),
              ChartWords.figures(chart).stream().map(SafeText::forXml).toList()));
    }
    return drawn;
  }

  /** To a customer the tables are what the page is for. */
  private static boolean isForCustomer(Report report) {
    return report.reader().filter(Audience.CUSTOMER::equals).isPresent();
  }

  private List<Section> sections(List<Sheet> sheets, boolean open) {
    List<Section> sections = new ArrayList<>();
    for (Sheet sheet : sheets) {
      List<Grid> grids = grids(sheet.tables());
      if (!grids.isEmpty() || !sheet.sentences().isEmpty()) {
        sections.add(
            new Section(
                "s-" + (sections.size() + 1),
                SafeText.forXml(sheet.name()),
                contents(sheet),
                sheet.sentences().stream().map(SafeText::forXml).toList(),
                grids,
                open));
      }
    }
    return sections;
  }

  private String contents(Sheet sheet) {
    List<Table> filled = sheet.tables().stream().filter(each -> !each.rows().isEmpty()).toList();
    int rows = filled.stream().mapToInt(each -> each.rows().size()).sum();
    return filled.isEmpty()
        ? ""
        : "%s, %s"
            .formatted(
                report.say().counted(filled.size(), "table", "tables"),
                report.say().counted(rows, "row", "rows"));
  }
}
