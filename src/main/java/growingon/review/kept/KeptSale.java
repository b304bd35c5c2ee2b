package growingon.review.kept;

import growingon.project.lot.LotHistory;
import java.util.List;

/**
 * Plants of a lot sold in a month of a kept plan.
 *
 * @param month months after the plan's first, 0 for the first
 * @param grade name of the grade
 * @param quality first, second or third
 * @param units plants
 * @param money plan currency
 */
public record KeptSale(int month, String grade, String quality, double units, double money) {
  /** What a lot sells over the whole plan. */
  public static List<KeptSale> of(LotHistory history) {
    return history.sales().stream()
        .map(
            sale ->
                new KeptSale(
                    sale.month(),
                    sale.grade() < 0 ? "" : history.grades().get(sale.grade()).name(),
                    sale.quality().toString(),
                    sale.units(),
                    sale.money()))
        .toList();
  }
}
