package growingon.report.review;

import growingon.report.build.TableOf;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import growingon.review.Judged;
import growingon.review.Review;
import growingon.review.kept.KeptSpan;
import java.util.function.ToDoubleFunction;

/** Figures that the grower's own sales do not change, held against what luck had for likely. */
final class LuckTable {
  private LuckTable() {}

  static Table of(Review review) {
    return TableOf.<Judged>table("more-than-luck", "Luck, or more than luck")
        .note(
            "Deaths: died or went missing, theft left out. Growth: of the mean trunk up to the last"
                + " measuring, had the plants that are there grown as planned. Price: money of the sales"
                + " that say money and grade, as % of the list price of the kept plan, where that says how far prices spread. Outside luck is"
                + " more than luck; outside luck and not knowing is more than foreseen.")
        .text("lot", Judged::lot)
        .text("figure", each -> each.what().toString())
        .text("unit", each -> unit(each.what()))
        .column("planned", "", Kind.NUMBER, each -> each.planned() * factor(each))
        .column("real", "", Kind.NUMBER, each -> each.real() * factor(each))
        .column("luck P10", "", Kind.NUMBER, each -> luck(each, KeptSpan.At::p10))
        .column("luck P90", "", Kind.NUMBER, each -> luck(each, KeptSpan.At::p90))
        .column("P10", "", Kind.NUMBER, each -> each.all().p10() * factor(each))
        .column("P90", "", Kind.NUMBER, each -> each.all().p90() * factor(each))
        .column("by chance %", "", Kind.NUMBER, each -> each.outsideByLuck() * 100)
        .text("how to take it", each -> each.take().toString())
        .of(review.judged());
  }

  /** Prices are told as % of list. */
  private static double factor(Judged each) {
    return each.what() == Judged.What.PRICE ? 100 : 1;
  }

  private static Double luck(Judged each, ToDoubleFunction<KeptSpan.At> edge) {
    return each.luck().map(at -> edge.applyAsDouble(at) * factor(each)).orElse(null);
  }

  private static String unit(Judged.What what) {
    return switch (what) {
      case DEATHS -> "plants";
      case GROWTH -> "mm";
      case PRICE -> "% of list";
    };
  }
}
