package growingon.write.workbook;

import growingon.report.model.Paper;
import growingon.write.text.SafeText;
import org.apache.poi.ss.usermodel.Footer;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Sheet;

/** The printed page: A4 or A3, one page wide, and how much of it the rows so far have filled. */
final class Page {
  private static final double POINTS_PER_INCH = 72;
  private static final double SIDE_MARGIN = 0.45;
  private static final double TOP_MARGIN = 0.5;
  private static final double BOTTOM_MARGIN = 0.65;
  private static final double SHORT_SIDE = 8.27;
  private static final double LONG_SIDE = 11.69;
  private static final double LONGEST_SIDE = 16.54;
  private static final double PIXELS_PER_INCH = 96;
  private static final double PIXELS_PER_CHARACTER = 7;

  private final boolean portrait;
  private final Paper paper;
  private final double scale;
  private double used;
  private double repeated;

  /**
   * A page.
   *
   * @param contentPixels width of the sheet's columns on the screen
   */
  Page(boolean portrait, Paper paper, double contentPixels) {
    this.portrait = portrait;
    this.paper = paper;
    this.scale = Math.min(1, widthPixels(portrait, paper) / contentPixels);
  }

  /** Width between the margins, in screen pixels at full size. */
  static double widthPixels(boolean portrait, Paper paper) {
    double side = portrait ? shortSide(paper) : longSide(paper);
    return (side - 2 * SIDE_MARGIN) * PIXELS_PER_INCH;
  }

  private static double longSide(Paper paper) {
    return paper == Paper.A3 ? LONGEST_SIDE : LONG_SIDE;
  }

  private static double shortSide(Paper paper) {
    return paper == Paper.A3 ? LONG_SIDE : SHORT_SIDE;
  }

  static double pixels(double characters) {
    return Math.round(characters * PIXELS_PER_CHARACTER + 5);
  }

  /** Share of full size at which the sheet prints. */
  double scale() {
    return scale;
  }

  /** Each page from the next one on begins with a row of so many points. */
  void repeat(double points) {
    repeated = points;
  }

  /** Counts a row of so many points as printed. */
  void add(double points) {
    used = used + points > height() ? repeated + points : used + points;
  }

  /** Points that are left of the page. */
  double left() {
    return height() - used;
  }

  /** Whether so many points more fit on the page. */
  boolean hasRoom(double points) {
    return used + points <= height();
  }

  /** Whether the page has nothing but what each page begins with. */
  boolean isFresh() {
    return used <= repeated;
  }

  void startNew() {
    used = repeated;
  }

  /** Points of a page at the scale it prints at. */
  double height() {
    double side = portrait ? longSide(paper) : shortSide(paper);
    return (side - TOP_MARGIN - BOTTOM_MARGIN) * POINTS_PER_INCH / scale;
  }

  /** Paper, margins and footer. */
  static void setUp(Sheet sheet, boolean portrait, Paper paper, String plan) {
    PrintSetup setup = sheet.getPrintSetup();
    setup.setPaperSize(paper == Paper.A3 ? PrintSetup.A3_PAPERSIZE : PrintSetup.A4_PAPERSIZE);
    setup.setLandscape(!portrait);
    sheet.setFitToPage(true);
    setup.setFitWidth((short) 1);
    setup.setFitHeight((short) 0);
    sheet.setMargin(PageMargin.LEFT, SIDE_MARGIN);
    sheet.setMargin(PageMargin.RIGHT, SIDE_MARGIN);
    sheet.setMargin(PageMargin.TOP, TOP_MARGIN);
    sheet.setMargin(PageMargin.BOTTOM, BOTTOM_MARGIN);
    sheet.setMargin(PageMargin.FOOTER, 0.3);
    footer(sheet.getFooter(), plan);
  }

  private static void footer(Footer footer, String plan) {
    // An ampersand begins a code there, for the sheet, the page, the pages; two stand for one.
    footer.setLeft(SafeText.forXml(plan).replace("&", "&&"));
    footer.setCenter("&A");
    footer.setRight("&P of &N");
  }
}
