package growingon.review.book;

import growingon.nursery.market.Quality;
import growingon.review.kept.KeptSale;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Plants sold that came back: what is sold is net of them.
 *
 * @param month offset of the month
 * @param grade their grade, if said
 * @param quality their quality, if said
 * @param plants how many
 * @param money paid back, plan currency
 */
record CameBack(
    int month, Optional<String> grade, Optional<Quality> quality, double plants, double money) {
  CameBack times(double share) {
    return new CameBack(month, grade, quality, plants * share, money * share);
  }

  private boolean isOf(KeptSale sale) {
    return sale.month() <= month
        && grade.map(sale.grade()::equals).orElse(true)
        && quality.map(Quality::toString).map(sale.quality()::equals).orElse(true);
  }

  /**
   * Takes them off sales: off those that they can have been of, by the plants of each. Sales of
   * which no plant is left are none; what money is left of them came in besides.
   */
  List<KeptSale> off(List<KeptSale> sales) {
    double units = sales.stream().filter(this::isOf).mapToDouble(KeptSale::units).sum();
    double paid = sales.stream().filter(this::isOf).mapToDouble(KeptSale::money).sum();
    if (units <= 0) {
      return sales;
    }
    double left = 1 - Math.min(1, plants / units);
    double refunded = Math.min(money, paid);
    List<KeptSale> net = new ArrayList<>();
    for (KeptSale sale : sales) {
      if (!isOf(sale)) {
        net.add(sale);
      } else if (left > 0) {
        double off = refunded * (paid > 0 ? sale.money() / paid : 0);
        net.add(
            new KeptSale(
                sale.month(),
                sale.grade(),
                sale.quality(),
                sale.units() * left,
                sale.money() - off));
      }
    }
    return net;
  }
}
