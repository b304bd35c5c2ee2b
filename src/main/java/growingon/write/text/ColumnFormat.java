package growingon.write.text;

import growingon.nursery.number.Writing;
import growingon.report.model.Column;
import growingon.report.model.Column.Flag;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.DoubleStream;

/**
 * How the numbers of a column are shown: as many decimals as they need and the kind allows. A whole
 * number in a column of decimals is padded with blanks, so that the points stand in line without a
 * row of ".0".
 */
public final class ColumnFormat {
  public static final String MONTH = "mmm yyyy";

  /** Keeps numbers off what stands right of them; an indent of the cell is not drawn everywhere. */
  private static final String MARGIN = "_0";

  /** The one sign for nil, which is quieter than a nought in a large table; below nil too. */
  private static final String NIL = "\"–\"" + MARGIN + ";\"–\"" + MARGIN;

  private static final String FIGURE_SPACE = "\u2007";
  private static final String POINT_SPACE = "\u2008";
  private static final double LARGE = 1000;
  private static final double LARGE_SHARE = 0.1;

  private static final double[] POWERS = {1, 10, 100};

  private final Column column;
  private final Map<Integer, String> formats = new HashMap<>();
  private final int places;
  private final double largest;
  private final double smallest;

  private ColumnFormat(Column column, double[] values) {
    this.column = column;
    this.largest = DoubleStream.of(values).max().orElse(0);
    this.smallest = DoubleStream.of(values).min().orElse(0);
    int allowed = allowed(column.kind(), Math.max(largest, -smallest));
    this.places =
        column.kind() == Kind.MONEY_EACH
            ? 2
            : DoubleStream.of(values)
                .mapToInt(each -> needed(scaled(each), allowed))
                .max()
                .orElse(0);
  }

  /** How the numbers of a column are written: decimals by its kind and its largest value. */
  public static ColumnFormat of(Table table, int column) {
    return new ColumnFormat(table.columns().get(column), Numbers.shown(table, column).toArray());
  }

  /** Format of one value, as a spreadsheet spells it; there are few, so each is spelt once. */
  public String of(double value) {
    boolean nought = isNought(value);
    int kind = (nought ? 1 : 0) + (column.flags(value) ? 2 : 0) + 4 * own(value);
    return formats.computeIfAbsent(kind, each -> spell(value));
  }

  private String spell(double value) {
    if (isNought(value)) {
      return NIL;
    }
    String shown = number(value) + (column.kind() == Kind.SHARE ? "%" : "") + MARGIN;
    return column.flags(value) ? marked(shown) : shown;
  }

  /** One value as text, padded so that the points of a column set to the right stand in line. */
  public String text(double value, Writing writing) {
    if (isNought(value)) {
      return "–";
    }
    int own = own(value);
    String number = writing.decimals(scaled(value), own);
    String padding =
        (own == 0 && places > 0 ? POINT_SPACE : "") + FIGURE_SPACE.repeat(places - own);
    return mark(value) + number + padding + (column.kind() == Kind.SHARE ? " %" : "");
  }

  /** Decimals that a value is shown with. */
  private int own(double value) {
    boolean even = column.kind() == Kind.MONEY_EACH || column.kind() == Kind.SHARE;
    return even ? places : needed(scaled(value), places);
  }

  private String mark(double value) {
    return !column.flags(value) ? "" : column.flag() == Flag.ABOVE_ZERO ? "▲ " : "▼ ";
  }

  /** Characters that the widest number takes. */
  public int characters(double sum) {
    int marks = (column.kind() == Kind.SHARE ? 1 : 0) + (column.flag() == Flag.NONE ? 0 : 2);
    int most = Math.max(characters(largest, sum), characters(smallest, sum));
    return most + (places > 0 ? places + 1 : 0) + marks;
  }

  private static int characters(double value, double sum) {
    double size = Math.max(Math.abs(value), Math.abs(sum));
    int digits = size < 10 ? 1 : (int) Math.floor(Math.log10(size) + 1e-9) + 1;
    return digits + (digits - 1) / 3 + (value < 0 || sum < 0 ? 1 : 0);
  }

  private String number(double value) {
    if (places == 0) {
      return "#,##0";
    }
    int own = own(value);
    String decimals = own == 0 ? "" : "." + "0".repeat(own);
    String point = own == 0 ? "_." : "";
    return "#,##0" + decimals + point + "_0".repeat(places - own);
  }

  /** A sign in front, so that a marked value shows in a black print too. */
  private String marked(String number) {
    return column.flag() == Flag.ABOVE_ZERO ? "\"▲ \"" + number : number + ";\"▼ \"-" + number;
  }

  /** Whether it is shown as nil. */
  private boolean isNought(double value) {
    return Math.abs(scaled(value)) < 0.5 / POWERS[places];
  }

  private double scaled(double value) {
    return column.kind() == Kind.SHARE ? value * 100 : value;
  }

  private static int allowed(Kind kind, double size) {
    return switch (kind) {
      case COUNT, PLANTS, MONEY -> 0;
      case SHARE -> size >= LARGE_SHARE ? 0 : 1;
      case MONEY_EACH -> 2;
      case LITRES, HOURS, SQUARE_METRES, KG, MM -> size >= LARGE ? 0 : 1;
      case NUMBER -> size >= LARGE ? 1 : 2;
      case TEXT, VALUE, LONG_TEXT, MONTH, TO_FILL -> 2;
    };
  }

  /** Decimals that a value has when it is rounded to at most so many. */
  private static int needed(double value, int most) {
    long rounded = Math.round(value * POWERS[most]);
    int places = most;
    while (places > 0 && rounded % 10 == 0) {
      rounded /= 10;
      places--;
    }
    return places;
  }
}
