package growingon.report.plan.cash;

import growingon.money.CashFlow;
import growingon.report.build.ColumnOf;
import growingon.report.model.Column;
import growingon.report.model.Column.Flag;
import growingon.report.model.Kind;
import java.util.Arrays;
import java.util.function.ToIntFunction;

/** The columns of what cash there is at months' ends, in every table of cash. */
final class CashEnds {
  private final double[] balances;
  private final String currency;

  CashEnds(CashFlow cash, String currency) {
    this.balances = cash.balances();
    this.currency = currency;
  }

  /** Cash at the end of the last month of a row. */
  <T> ColumnOf<T> atEnd(ToIntFunction<T> last) {
    return new ColumnOf<>(
        money("balance", "cash at its end"), row -> balances[last.applyAsInt(row)]);
  }

  /** The lowest cash at the end of any month of a row. */
  <T> ColumnOf<T> lowest(ToIntFunction<T> first, ToIntFunction<T> last) {
    return new ColumnOf<>(
        money("lowest", "lowest month end"),
        row ->
            Arrays.stream(balances, first.applyAsInt(row), last.applyAsInt(row) + 1)
                .min()
                .getAsDouble());
  }

  private Column money(String key, String heading) {
    return Column.of(key, heading, currency, Kind.MONEY).flagged(Flag.BELOW_ZERO);
  }
}
