package growingon.report.review;

import growingon.report.build.TableBuilder;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import growingon.review.Judged;
import growingon.review.Review;
import growingon.review.kept.KeptSpan;

/** Figures that the grower's own sales do not change, held against what luck had for likely. */
final class LuckTable {
  private LuckTable() {}

  static Table of(Review review) {
    TableBuilder table =
        TableBuilder.table("more-than-luck", "Luck, or more than luck")
            .note(
                "Deaths: died or went missing, theft left out. Growth: of the mean trunk up to the last"
                    + " measuring, had the plants that are there grown as planned. Price: money of the sales"
                    + " that say money and grade, as % of the list price of the kept plan, where that says how far prices spread. Outside luck is"
                    + " more than luck; outside luck and not knowing is more than foreseen.")
            .text("lot")
            .text("figure")
            .text("unit");
    for (String heading :
        new String[] {"planned", "real", "luck P10", "luck P90", "P10", "P90", "by chance %"}) {
      table.column(heading, "", Kind.NUMBER);
    }
    table.text("how to take it");
    review.judged().forEach(each -> row(table, each));
    return table.build();
  }

  private static void row(TableBuilder table, Judged each) {
    double factor = each.what() == Judged.What.PRICE ? 100 : 1;
    table.row(
        each.lot(),
        each.what().toString(),
        unit(each.what()),
        each.planned() * factor,
        each.real() * factor,
        each.luck().map(KeptSpan.At::p10).map(value -> value * factor).orElse(null),
        each.luck().map(KeptSpan.At::p90).map(value -> value * factor).orElse(null),
        each.all().p10() * factor,
        each.all().p90() * factor,
        each.outsideByLuck() * 100,
        each.take().toString());
  }

  private static String unit(Judged.What what) {
    return switch (what) {
      case DEATHS -> "plants";
      case GROWTH -> "mm";
      case PRICE -> "% of list";
    };
  }
}
