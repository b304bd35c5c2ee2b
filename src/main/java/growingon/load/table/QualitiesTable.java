package growingon.load.table;

import growingon.load.cell.As;
import growingon.load.cell.Findings;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.load.cell.Rows;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.nursery.Quality;
import growingon.nursery.QualityRule;
import growingon.problem.advice.ValueAdvice;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What each quality fetches.
 *
 * <pre>
 * quality    first, second or third
 * price %    of the list price [100, 60, 20]; 0 if it is not sold
 * potted     whether it is potted; if not it is culled when the lot is sorted [yes, yes, no]
 * </pre>
 *
 * A quality without a row has the defaults.
 */
public final class QualitiesTable {
  private static final String QUALITY = "quality";
  private static final String PRICE = "price %";
  private static final String POTTED = "potted";
  public static final TableFormat FORMAT = TableFormat.of("qualities", QUALITY).with(PRICE, POTTED);

  private static final Map<Quality, QualityRule> SHIPPED =
      Map.of(
          Quality.FIRST, new QualityRule(1, true),
          Quality.SECOND, new QualityRule(0.6, true),
          Quality.THIRD, new QualityRule(0.2, false));

  private QualitiesTable() {}

  public static Map<Quality, QualityRule> read(Optional<Table> table, Findings findings) {
    Map<Quality, QualityRule> rules = new EnumMap<>(Quality.class);
    table.ifPresent(found -> found.rows().forEach(row -> add(row, rules)));
    for (Quality quality : Quality.values()) {
      if (!rules.containsKey(quality)) {
        rules.put(quality, rule(quality, Rows.none(FORMAT.name(), quality.toString(), findings)));
      }
    }
    return rules;
  }

  private static void add(Row row, Map<Quality, QualityRule> rules) {
    Quality quality = row.get(QUALITY, As.word(Quality.class));
    if (row.isFailed()) {
      return;
    }
    if (rules.containsKey(quality)) {
      row.fail(
          QUALITY, where -> ValueAdvice.defined(where, quality.toString(), quality.toString()));
    }
    QualityRule rule = rule(quality, row);
    row.accept(() -> rule).ifPresent(made -> rules.put(quality, made));
  }

  private static QualityRule rule(Quality quality, Row row) {
    QualityRule shipped = SHIPPED.get(quality);
    return new QualityRule(
        row.get(PRICE, As.percent(Range.of(0, 1000)), shipped.priceShare()),
        row.get(POTTED, As.YES_NO, shipped.potted()));
  }
}
