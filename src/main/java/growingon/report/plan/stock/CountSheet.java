package growingon.report.plan.stock;

import growingon.project.history.Stood;
import growingon.project.lot.LotHistory;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.whole.WholeLot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A list to count the stock by: lots in the order of places, with cells to fill. Its headings are
 * those of the daybook but for place and expected, which the reader of the daybook knows and leaves
 * alone, so that the filled list can be read as one. It has no total, which would be a faulty line.
 */
public final class CountSheet {
  private final List<WholeLot> lots;
  private final Map<String, Integer> placeOrder = new HashMap<>();

  private CountSheet(Context context) {
    this.lots = context.whole().lots();
    context
        .inputs()
        .scenario()
        .nursery()
        .places()
        .keySet()
        .forEach(name -> placeOrder.put(name, placeOrder.size()));
  }

  public static Sheet of(Context context) {
    CountSheet sheet = new CountSheet(context);
    return FilledSheet.of(
        "Count sheet",
        List.of(
            "Walk the places in this order and fill in date, quantity and, where you measure, trunk"
                + " and spread of a handful of plants. Write a line for each grade or quality if you"
                + " count them apart, with the lot's name and the word counted.",
            "When it is filled in, copy this sheet as it is into a workbook of the nursery folder and"
                + " name the sheet daybook. If you keep a daybook already, copy the lines into it,"
                + " each column under the same heading. Lines left blank are passed over; place and"
                + " expected are only there to help you find and check, and are not read.",
            "Expected: plants alive at the plan's start, from the last count less the losses assumed"
                + " since."),
        sheet.table());
  }

  private Table table() {
    return TableOf.<WholeLot>table("count-sheet", "Count of the stock")
        .text("place", each -> place(each.history()).orElse("no place"))
        .text("lot", each -> each.history().lot().name())
        .column(
            "expected",
            "",
            Kind.PLANTS,
            each -> Plants.of(each.history().standingAtStart(), each.standingAtStart()))
        .column("date", "", Kind.TO_FILL, each -> null)
        .wide(12)
        .text("what", each -> "counted")
        .column("quantity", "", Kind.TO_FILL, each -> null)
        .wide(9)
        .column("grade", "", Kind.TO_FILL, each -> null)
        .wide(12)
        .column("quality", "", Kind.TO_FILL, each -> null)
        .wide(9)
        .column("trunk mm", "", Kind.TO_FILL, each -> null)
        .wide(8)
        .column("trunk spread %", "", Kind.TO_FILL, each -> null)
        .wide(9)
        .column("note", "", Kind.TO_FILL, each -> null)
        .wide(26)
        .of(inPlaceOrder());
  }

  /** Lots that are here already, by place, then in the order of the stock list. */
  private List<WholeLot> inPlaceOrder() {
    List<WholeLot> here = new ArrayList<>();
    for (WholeLot lot : lots) {
      boolean isHere = lot.history().lot().purchase().isEmpty() && lot.history().start() == 0;
      if (isHere && lot.standingAtStart() > 0) {
        here.add(lot);
      }
    }
    here.sort(
        Comparator.comparingInt(
            lot -> place(lot.history()).map(placeOrder::get).orElse(placeOrder.size())));
    return here;
  }

  /** Where it stands in the first month; where it is booked if nothing of it is left by then. */
  private static Optional<String> place(LotHistory lot) {
    Stood stood = lot.stood(0);
    return stood != null ? stood.place() : lot.lot().standing().place();
  }
}
