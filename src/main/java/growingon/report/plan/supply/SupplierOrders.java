package growingon.report.plan.supply;

import growingon.nursery.Inputs;
import growingon.nursery.time.Horizon;
import growingon.project.need.Supplies;
import growingon.report.build.FilledSheet;
import growingon.report.build.Picked;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.figures.PlantOrder;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What is to be ordered in the next twelve months, a block a supplier, ready to be printed or
 * pasted as an enquiry: own name, how many, when.
 */
public final class SupplierOrders {
  /** Names of the tables begin so, and end in the block's number. */
  static final String NAME = "enquiry";

  /** Key of the column that an enquiry without prices lacks. */
  static final String PRICE = "price";

  private static final int MOST_BLOCKS = 12;

  private final Inputs inputs;
  private final Supplies supplies;
  private final Horizon horizon;
  private final String currency;
  private final Phrases say;

  /** One line of a block. */
  private record Line(
      int orderIn, YearMonth needed, String what, long number, String unit, Double price) {}

  SupplierOrders(Context context) {
    this.say = context.say();
    this.inputs = context.inputs();
    this.supplies = context.accounts().supplies();
    this.horizon = inputs.scenario().horizon();
    this.currency = inputs.scenario().nursery().settings().currency();
  }

  /** A sheet of blocks. */
  public static Sheet sheet(Context context) {
    return FilledSheet.of(
        "Enquiries",
        List.of(
            Sentences.WITHOUT_VAT,
            "A block a supplier, to print or paste; plan --without-prices leaves out what you pay."),
        new SupplierOrders(context).tables().toArray(Table[]::new));
  }

  /** The blocks, by the first month of order; none where no supplier is named. */
  List<Table> tables() {
    Map<String, List<Line>> blocks = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    for (Supplies.Order order : supplies.orders()) {
      add(blocks, order.item().source().supplier(), line(order));
    }
    for (PlantOrder order : PlantOrder.of(inputs)) {
      add(blocks, order.lot().papers().supplier(), line(order));
    }
    List<Map.Entry<String, List<Line>>> inOrder =
        blocks.entrySet().stream()
            .sorted(Comparator.comparingInt(block -> first(block.getValue())))
            .limit(MOST_BLOCKS)
            .toList();
    List<Table> tables = new ArrayList<>();
    for (Map.Entry<String, List<Line>> block : inOrder) {
      tables.add(table(tables.size() + 1, block.getKey(), block.getValue()));
    }
    return tables;
  }

  private static void add(Map<String, List<Line>> blocks, String supplier, Line line) {
    if (!supplier.isEmpty() && line.orderIn() < Context.NEXT_MONTHS) {
      blocks.computeIfAbsent(supplier, each -> new ArrayList<>()).add(line);
    }
  }

  private static int first(List<Line> lines) {
    return lines.stream().mapToInt(Line::orderIn).min().orElse(0);
  }

  private Line line(Supplies.Order order) {
    Supplies.Item item = order.item();
    String each =
        item.packSize() == 1 && item.unit().equals("pots")
            ? "pots"
            : "packs of %s %s".formatted(say.number(item.packSize()), item.unit());
    return new Line(
        order.orderMonth(),
        horizon.month(order.needMonth()),
        item.name(),
        order.packs(),
        each,
        item.packPrice());
  }

  private static Line line(PlantOrder order) {
    return new Line(
        order.orderIn(),
        order.lot().arrived(),
        "%s (%s)".formatted(order.lot().species(), order.lot().name()),
        order.lot().quantity(),
        "plants",
        order.lot().purchase().get().unitPrice());
  }

  private Table table(int number, String supplier, List<Line> lines) {
    YearMonth by = horizon.month(first(lines));
    return TableOf.<Line>table(
            NAME + "-" + number, "To %s, by the end of %s".formatted(supplier, say.month(by)))
        .note("From %s.".formatted(inputs.scenario().nursery().settings().name()))
        .month("order in", line -> horizon.month(line.orderIn()))
        .text("what", Line::what)
        .column("number", "", Kind.COUNT, Line::number)
        .text("of", Line::unit)
        .month("needed in", Line::needed)
        .column(PRICE, "each", currency, Kind.MONEY_EACH, Line::price)
        .of(
            lines.stream()
                .sorted(Comparator.comparingInt(Line::orderIn).thenComparing(Line::needed))
                .toList());
  }

  /** The same report whose enquiries say no prices paid. */
  public static Report withoutPrices(Report report) {
    List<Sheet> sheets =
        report.sheets().stream()
            .map(
                sheet ->
                    sheet.withTables(
                        sheet.tables().stream().map(SupplierOrders::withoutPrices).toList()))
            .toList();
    return report.withSheets(sheets);
  }

  private static Table withoutPrices(Table table) {
    if (!table.name().startsWith(NAME + "-")) {
      return table;
    }
    return Picked.without(table, Set.of(PRICE));
  }
}
