package growingon.write.page;

import java.util.List;

/**
 * What report.html shows, from top to bottom; the template escapes every text of it but for style,
 * script and drawings, which this package makes itself.
 *
 * @param policy Content-Security-Policy: nothing may be loaded, only this style and script run
 * @param title of the window
 * @param heading of the page
 * @param subtitle nursery, first month and currency
 * @param leftOut what an edition leaves out, by kind
 * @param answers with their questions
 * @param first tables that stand right below the answers
 * @param charts in order
 * @param sections tables, sheet by sheet
 * @param hows answers that say how they came about
 * @param cautions tables of what to mind
 * @param files where the figures that are not on the page stand
 * @param style element
 * @param script element
 */
record ReportPage(
    String policy,
    String title,
    String heading,
    String subtitle,
    List<String> leftOut,
    List<Told> answers,
    List<Grid> first,
    List<Drawn> charts,
    List<Section> sections,
    List<Told> hows,
    List<Grid> cautions,
    String files,
    String style,
    String script) {
  /** An answer; {@code id} is where the page says how it came about. */
  record Told(String id, String question, List<String> sentences, List<String> how) {}

  /**
   * A chart.
   *
   * @param svg whether its pictures are SVG, or PNG in data URIs
   * @param wide for screens and paper
   * @param narrow for a telephone
   * @param words its figures in sentences
   */
  record Drawn(
      String id,
      String title,
      boolean svg,
      String wide,
      String narrow,
      String alternative,
      List<String> words) {}

  /**
   * The tables of a sheet, with how many there are in words.
   *
   * @param open whether it is open at first, and printed on a page of its own
   */
  record Section(
      String id,
      String name,
      String contents,
      List<String> sentences,
      List<Grid> grids,
      boolean open) {}

  /**
   * A table.
   *
   * @param width how small it must be set to fit on paper
   * @param heads empty if the table is too long for a page
   * @param totals empty if it has none
   */
  record Grid(
      String id,
      String title,
      String width,
      List<String> notes,
      List<Head> heads,
      List<List<Cell>> rows,
      List<Cell> totals) {}

  /** A column's heading. */
  record Head(String text, String css) {}

  /**
   * A cell.
   *
   * @param css class that says what kind of value it holds
   * @param sortAs what it is sorted by, null for its text
   * @param marked whether it calls for a look
   * @param header whether it names its row
   */
  record Cell(String text, String css, String sortAs, boolean marked, boolean header) {}
}
